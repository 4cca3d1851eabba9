// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/found_survey.h"

#include <gtest/gtest.h>

#include <cmath>

#include "base/text.h"

namespace seamward::test {
namespace {

Found one_gap() {
    Found found;
    found.spaces = {{"outdoors", SpaceKind::outdoors, {}, {}, {}}, {"den", SpaceKind::living, 30.0, {1, 1, 1}, {"Den", "Nook"}}};
    FoundGap gap;
    gap.id = "gap-1";
    gap.name = "between a\nwall and\ta\x01 slab ";
    gap.between = {0, 1};
    gap.width = 0.00123456789012;
    gap.at_most = 0.0012350;
    gap.shape = Slot{gap.width, 2.5};
    gap.depth = 0.1;
    gap.at = {1.00000000049, -0.0000000001, 2};
    found.gaps = {gap};
    return found;
}

TEST(FoundSurvey, HasWhatWasFound) {
    const Survey survey = found_survey(one_gap());
    ASSERT_EQ(survey.spaces.size(), 2U);
    EXPECT_EQ(survey.spaces[0].id, "outdoors");
    EXPECT_TRUE(survey.spaces[0].starts_paths());
    EXPECT_EQ(survey.spaces[1].name, "Den and Nook");
    EXPECT_TRUE(survey.spaces[1].is_living());
    ASSERT_EQ(survey.gaps.size(), 1U);
    const Gap& gap = survey.gaps[0];
    EXPECT_EQ(gap.name, "between a wall and a? slab");
    EXPECT_EQ(gap.between[1].value, 1U);
    EXPECT_EQ(gap.evidence.how, Evidence::How::modeled);
    EXPECT_EQ(gap.depth, 0.1);
}

TEST(FoundSurvey, RoundsToWholeNanometers) {
    const Survey survey = found_survey(one_gap());
    EXPECT_EQ(clear_width(survey.gaps[0].shape), 0.001234568);
    EXPECT_EQ(survey.gaps[0].at->x, 1.0);
    EXPECT_EQ(survey.gaps[0].at->y, 0.0);
    EXPECT_FALSE(std::signbit(survey.gaps[0].at->y));
}

/// The bound above holds after rounding.
TEST(FoundSurvey, PlusMinusReachesTheBound) {
    Found found = one_gap();
    for (const double over : {0.0, 1e-12, 0.9e-6, 1e-6, 1.1e-6, 0.003}) {
        found.gaps[0].at_most = found.gaps[0].width + over;
        const Gap gap = found_survey(found).gaps[0];
        EXPECT_GE(clear_width(gap.shape) + gap.evidence.plus_minus, found.gaps[0].at_most - 1e-15) << over;
        EXPECT_LE(clear_width(gap.shape) + gap.evidence.plus_minus, found.gaps[0].at_most + 1.01e-6) << over;
    }
}

/// A model in a national grid is further from its origin than a job file can say.
TEST(FoundSurvey, FarAwayPlacesAreLeftOut) {
    Found found = one_gap();
    found.gaps[0].at = {400'000, 5'500'000, 120};
    EXPECT_FALSE(found_survey(found).gaps[0].at.has_value());
}

TEST(FoundSurvey, OpeningsOfAMeshAreOneGap) {
    Found found = one_gap();
    found.gaps[0].openings = 40;
    EXPECT_EQ(found_survey(found).gaps[0].count, 40U);
    found.gaps[0].shape = Mesh{0.0057, {}};
    EXPECT_EQ(found_survey(found).gaps[0].count, 1U);
}

TEST(FoundSurvey, JointsAreSlotsOfNoWidthAfterTheGaps) {
    Found found = one_gap();
    found.joints.push_back({"joint-1",
                            "joint between a sill and a slab",
                            {0, 1},
                            {0, 1},
                            3.00000000049,
                            0.1,
                            {1, 2, 0},
                            {{1, 2, 0}, {1, 2.12344, 0}},
                            {}});
    const Survey survey = found_survey(found);
    ASSERT_EQ(survey.gaps.size(), 2U);
    const Gap& gap = survey.gaps[1];
    EXPECT_EQ(gap.id, "joint-1");
    EXPECT_TRUE(is_shut(gap.shape));
    EXPECT_EQ(std::get<Slot>(gap.shape).length, 3.0);
    EXPECT_EQ(gap.evidence.how, Evidence::How::modeled);
    EXPECT_EQ(gap.evidence.plus_minus, 0);
    EXPECT_EQ(gap.depth, 0.1);
    EXPECT_EQ(gap.at->y, 2.0);
    const std::vector<GapPlace> places = found_places(found);
    ASSERT_EQ(places.size(), 2U);
    EXPECT_TRUE(places[0].through.empty());
    ASSERT_EQ(places[1].through.size(), 2U);
    EXPECT_EQ(places[1].through[1].y, 2.1234);
}

TEST(OneLine, CutsAfterAWholeLetter) {
    std::string longest;
    for (int i = 0; i < 3000; ++i) longest += "ß";
    const std::string cut = one_line("x" + longest);
    EXPECT_LE(cut.size(), 403U);
    EXPECT_TRUE(is_utf8(cut));
    EXPECT_TRUE(cut.ends_with("ß..."));
    EXPECT_EQ(one_line(" \n \t"), "");
    EXPECT_EQ(one_line("\xFF\xFE"), "??");
}

}  // namespace
}  // namespace seamward::test
