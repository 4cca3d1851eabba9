// SPDX-License-Identifier: GPL-3.0-or-later
// What a completion statement has to say of what is open: wrong closings, ways back, gaps left, and what plans say.
#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "tests/support/survey_builder.h"
#include "tool/completion_command.h"

namespace seamward {
namespace {

using namespace std::chrono;

Pest mouse() { return *shipped_pests().find("house-mouse"); }

void close(Job& job, std::uint32_t gap, const std::string& with, double opening = 0) {
    Gap& of = job.survey.gaps[gap];
    job.closed.push_back({{gap}, with, of.shape, 2026y / June / 1, std::nullopt, of.evidence.plus_minus});
    close_gap(of, opening);
}

/// A bat lived in the attic, which leads into no room. The kitchen's only gap is shut.
Job bat_job() {
    test::SurveyBuilder build;
    build.outdoors("yard").cavity("attic").cavity("wall").living("kitchen");
    build.slot("eave", "yard", "attic", 20).slot("ridge", "yard", "attic", 12).slot("sink", "wall", "kitchen", 8);
    build.slot("crack", "yard", "wall", 4).slot("crack-2", "yard", "wall", 3);
    build.last().name = "crack";
    Job job;
    job.survey = build.survey();
    job.pests = {mouse()};
    close(job, 2, "metal-wool-and-bead");
    job.occupied = {{{1}, *shipped_pests().find("bat"), "", GapIndex{1}, 2026y / June / 2}};
    return job;
}

PlanSettings settings_for(const Job& job) {
    PlanSettings settings;
    settings.against = job.pests;
    settings.date = 2026y / June / 20;
    return settings;
}

Completion judged(const Job& job) { return completion(job, settings_for(job), RunContext()); }

/// The statement as one text.
std::string statement(const Job& job) {
    const PlanSettings settings = settings_for(job);
    const Completion all = completion(job, settings, RunContext());
    std::string text;
    for (const PageLine& line : completion_statement({job, "the house", settings, all, true}))
        text += line.lead + line.text + '\n';
    return text;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST(CompletionStatement, AWrongClosingHoldsItBack) {
    Job job = bat_job();
    ASSERT_TRUE(judged(job).complete());
    job.survey.gaps[3].duty = Duty::combustion_air;
    job.checks = {{CheckMade::What::combustion_safety, 2026y / June / 2, "a"},
                  {CheckMade::What::co_alarms, 2026y / June / 2, "a"}};
    ASSERT_TRUE(judged(job).complete());
    close(job, 3, "");
    const Completion all = judged(job);
    ASSERT_EQ(all.reasons.size(), 1U);
    EXPECT_EQ(all.reasons[0].english(),
              "crack is written down as closed. It must stay open: an appliance breathes here; closed, its fumes come into the "
              "house. Open it again");
    ASSERT_EQ(all.wrong_closings.size(), 1U);
    EXPECT_EQ(statement(job), "");
    const Plan plan = make_plan(job, settings_for(job), RunContext());
    EXPECT_TRUE(plan.steps.empty());
    ASSERT_EQ(plan.wrong_closings.size(), 1U);
    EXPECT_EQ(plan.notes.at(0), all.reasons[0]);
}

TEST(CompletionStatement, ADrainAndAHatchAreJudgedByTheirRulings) {
    Job job = bat_job();
    job.survey.gaps[3].duty = Duty::drain;
    job.survey.gaps[4].duty = Duty::operable;
    close(job, 3, "bead");
    close(job, 4, "foam");
    const Completion all = judged(job);
    ASSERT_EQ(all.reasons.size(), 2U);
    EXPECT_TRUE(has(all.reasons[0].english(), "It must stay open: water leaves here"));
    EXPECT_TRUE(has(all.reasons[1].english(),
                    "crack is written down as closed with foam. That must not be there: it must go on opening"));
}

TEST(CompletionStatement, TellsTheWayBackOfAnAnimalThatIsGone) {
    Job job = bat_job();
    Completion all = judged(job);
    ASSERT_EQ(all.ways_back.size(), 1U);
    EXPECT_EQ(all.ways_back[0].gaps, std::vector<GapIndex>{{1}});
    EXPECT_TRUE(has(statement(job), "its way is still open: ridge; close it too, or it comes back"));
    close(job, 1, "bead");
    all = judged(job);
    ASSERT_EQ(all.ways_back.size(), 1U);
    EXPECT_EQ(all.ways_back[0].gaps, std::vector<GapIndex>{{0}});
    EXPECT_TRUE(has(statement(job), "the way that it was seen to use is closed, but another is open: eave; close it too"));
    job.occupied[0].way.reset();
    EXPECT_TRUE(has(statement(job), "its way is still open: eave; close it too"));
    job.survey.gaps[0].duty = Duty::drain;
    EXPECT_TRUE(has(statement(job), "its way is still open: eave; it must not be closed"));
    close(job, 0, "");
    EXPECT_TRUE(judged(job).ways_back.empty());
}

TEST(CompletionStatement, ListsWhatElseIsOpen) {
    Job job = bat_job();
    EXPECT_EQ(judged(job).also_open, (std::vector<GapIndex>{{0}, {1}, {3}, {4}}));
    EXPECT_TRUE(has(statement(job),
                    "Surveyed and left open, because nothing that it is about gets from there into the rooms:\n"
                    "  - eave; ridge; crack (2).\n"));
    // What must stay open stands above; what has a mesh was closed.
    job.survey.gaps[0].duty = Duty::drain;
    close(job, 1, "mesh", 5e-3);
    EXPECT_EQ(judged(job).also_open, (std::vector<GapIndex>{{3}, {4}}));
    EXPECT_EQ(judged(job).left_open.at(0).gaps, std::vector<GapIndex>{{0}});
}

/// Two gaps into the kitchen, one shut with something that a mouse gnaws through, the other open.
Job gnawed_job() {
    test::SurveyBuilder build;
    build.outdoors("yard").living("kitchen");
    build.slot("cable", "yard", "kitchen", 8).slot("sink", "yard", "kitchen", 8);
    Job job;
    job.survey = build.survey();
    job.pests = {mouse(), *shipped_pests().find("bark-scorpion")};
    close(job, 0, "bead");
    return job;
}

// A plan counts what is closed as shut; whoever gnaws through it is told apart.
TEST(CompletionStatement, SaysWhatThePlanSays) {
    const Job job = gnawed_job();
    const Completion all = judged(job);
    const Plan plan = make_plan(job, settings_for(job), RunContext());
    ASSERT_TRUE(all.left.has_value());
    EXPECT_EQ(all.left->cost, plan.cost);
    EXPECT_EQ(all.left->steps.size(), plan.steps.size());
    EXPECT_EQ(plan.steps.size(), 1U);
    EXPECT_EQ(all.animals.at(0).gnawed, std::vector<GapIndex>{{0}});
    EXPECT_EQ(all.animals.at(0).gaps_on_ways, 2U);
    EXPECT_TRUE(all.animals.at(1).gnawed.empty());
}

TEST(CompletionStatement, AnAnimalThatGnawsIsNotShutOutByWhatThePlanCountsAsShut) {
    Job job = gnawed_job();
    close(job, 1, "metal-wool-and-bead");
    const Completion all = judged(job);
    EXPECT_FALSE(all.animals.at(0).shut);
    EXPECT_TRUE(all.animals.at(0).left.steps.empty());
    EXPECT_TRUE(all.animals.at(1).shut);
    EXPECT_FALSE(all.complete());
}

}  // namespace
}  // namespace seamward
