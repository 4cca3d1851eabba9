// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/wrong_closings.h"

#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

/// A louver that an appliance breathes through, a hatch, and a crack that nothing restricts; 10 mm each.
Job open_job() {
    test::SurveyBuilder build;
    build.outdoors("yard").space("garage", SpaceKind::attached).cavity("attic").living("kitchen");
    build.slot("louver", "yard", "garage", 10);
    build.last().duty = Duty::combustion_air;
    build.slot("hatch", "attic", "kitchen", 10);
    build.last().duty = Duty::operable;
    build.slot("crack", "yard", "kitchen", 10);
    Job job;
    job.survey = build.survey();
    return job;
}

/// As the job file would say it.
void close(Job& job, std::uint32_t gap, const std::string& with, double opening = 0) {
    Gap& of = job.survey.gaps[gap];
    job.closed.push_back({{gap}, with, of.shape, std::nullopt, std::nullopt, 0});
    close_gap(of, opening);
}

std::vector<WrongClosing> closed_with(std::uint32_t gap, const std::string& with, double opening = 0) {
    Job job = open_job();
    close(job, gap, with, opening);
    return wrong_closings(job);
}

TEST(WrongClosings, WhatAnApplianceBreathesThroughMustStayOpen) {
    for (const char* with : {"", "bead", "foam"}) {
        const std::vector<WrongClosing> wrong = closed_with(0, with);
        ASSERT_EQ(wrong.size(), 1U) << with;
        EXPECT_TRUE(wrong[0].stays_open);
        EXPECT_EQ(wrong[0].why.english(), "an appliance breathes here; closed, its fumes come into the house");
        EXPECT_FALSE(wrong[0].source.empty());
    }
    EXPECT_EQ(wrong_closing_text(open_job().survey, closed_with(0, "")[0]).english(),
              "louver is written down as closed. It must stay open: an appliance breathes here; closed, its fumes come into the "
              "house. Open it again");
}

// The table of duties wants a mesh of 1/4 in or more there.
TEST(WrongClosings, AMeshThatTheRulingAllowsIsNone) {
    EXPECT_TRUE(closed_with(0, "mesh", 6.5e-3).empty());
    EXPECT_EQ(closed_with(0, "mesh", 5e-3).size(), 1U);
    EXPECT_TRUE(closed_with(0, "mesh", 12e-3).empty()) << "as coarse as the gap: nothing is held back";
}

TEST(WrongClosings, AHatchMustGoOnOpening) {
    const std::vector<WrongClosing> wrong = closed_with(1, "foam");
    ASSERT_EQ(wrong.size(), 1U);
    EXPECT_FALSE(wrong[0].stays_open);
    EXPECT_TRUE(
        wrong_closing_text(open_job().survey, wrong[0])
            .english()
            .ends_with(". That must not be there: it must go on opening: whoever looks after what is behind it gets in here. "
                       "Open it again"));
    EXPECT_TRUE(closed_with(1, "weatherstrip").empty());
    EXPECT_TRUE(closed_with(1, "").empty()) << "of an unknown kind: a weatherstrip may close it";
}

/// Lint catches on it, and a wire's jacket is no match for it, whatever holds back fire.
TEST(WrongClosings, MetalWoolAtADryersCollarAndAtARatedBox) {
    Job job;
    test::SurveyBuilder build;
    build.cavity("wall").cavity("dryer-duct").living("laundry");
    build.slot("collar", "dryer-duct", "laundry", 3);
    build.last().shape = Ring{0.003, 0.102};
    build.last().feature = "dryer-outlet";
    build.slot("box", "wall", "laundry", 3);
    build.last().feature = "outlet";
    build.last().substrates = {"fire-rated"};
    job.survey = build.survey();
    const auto wrong = [&](std::uint32_t gap, const char* with) {
        Job closed = job;
        close(closed, gap, with);
        return wrong_closings(closed).size();
    };
    EXPECT_EQ(wrong(0, "metal-wool"), 1U);
    EXPECT_EQ(wrong(0, "metal-wool-and-bead"), 1U);
    EXPECT_EQ(wrong(0, "bead"), 0U);
    EXPECT_EQ(wrong(1, "metal-wool-and-fire-sealant"), 1U);
    EXPECT_EQ(wrong(1, "fire-sealant"), 0U);
}

TEST(WrongClosings, WhatNothingRestrictsMayBeClosed) {
    for (const char* with : {"", "bead", "foam"}) EXPECT_TRUE(closed_with(2, with).empty()) << with;
}

TEST(WrongClosings, WhatTheSurveyForbidsMustStayOpen) {
    Job job = open_job();
    job.survey.gaps[2].closing.never = "the wall drains there";
    close(job, 2, "mesh", 5e-3);
    ASSERT_EQ(wrong_closings(job).size(), 1U);
    EXPECT_EQ(wrong_closings(job)[0].source, "the survey");
    job.survey.gaps[2].closing.mesh_allowed = true;
    EXPECT_TRUE(wrong_closings(job).empty());
}

TEST(WrongClosings, OneThatDidNotHoldIsOpenAlready) {
    Job job = open_job();
    close(job, 0, "bead");
    job.closed[0].callback = Callback{};
    EXPECT_TRUE(wrong_closings(job).empty());
    job.closed[0].callback->mended = Date{};
    EXPECT_EQ(wrong_closings(job).size(), 1U);
}

// The joint under a screed is a slot; a row of the table asks for that. Shut or meshed, the gap is none.
TEST(WrongClosings, AreJudgedByTheGapAsItWasFound) {
    Job job = open_job();
    Gap& joint = job.survey.gaps[2];
    joint.feature = "weep-screed";
    close(job, 2, "bead");
    EXPECT_TRUE(wrong_closings(job).empty());
    job = open_job();
    job.survey.gaps[2].feature = "weep-screed";
    close(job, 2, "mesh", 5e-3);
    ASSERT_EQ(wrong_closings(job).size(), 1U);
    EXPECT_NE(wrong_closings(job)[0].why.english().find("behind the drain line only"), std::string::npos);
}

}  // namespace
}  // namespace seamward
