// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/completion.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "catalog/shipped.h"
#include "tests/support/brute_force.h"
#include "tests/support/random_survey.h"
#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

using namespace std::chrono;
using test::SurveyBuilder;

Pest beetle() {
    Pest pest;
    pest.id = pest.name = "beetle";
    pest.size = {1e-3, 2e-3};
    return pest;
}

void close(Job& job, std::uint32_t gap, const std::string& with, std::optional<Date> date) {
    Gap& of = job.survey.gaps[gap];
    job.closed.push_back({{gap}, with, of.shape, date, std::nullopt, of.evidence.plus_minus});
    close_gap(of, 0);
}

Completion judged(const Job& job, Sizing sizing = Sizing::with_plus_minus) {
    PlanSettings settings;
    settings.against = job.pests;
    settings.sizing = sizing;
    settings.date = 2026y / June / 20;
    return completion(job, settings, RunContext());
}

/// Two gaps in a row, both closed; a louver that an appliance breathes through, and both checks after the work.
Job done_job() {
    SurveyBuilder build;
    build.outdoors("yard").cavity("wall").cavity("attic").space("closet", SpaceKind::attached).living("kitchen");
    build.slot("screed", "yard", "wall", 2).slot("sink", "wall", "kitchen", 2).slot("louver", "yard", "closet", 8);
    build.last().duty = Duty::combustion_air;
    Job job;
    job.survey = build.survey();
    job.pests = {beetle()};
    close(job, 0, "bead", 2026y / June / 1);
    close(job, 1, "bead", 2026y / June / 2);
    job.checks = {{CheckMade::What::combustion_safety, 2026y / June / 2, "somebody licensed"},
                  {CheckMade::What::co_alarms, 2026y / June / 3, "somebody licensed"}};
    return job;
}

/// The only reason that holds the statement back; empty: there is none.
std::string reason(const Job& job) {
    const Completion all = judged(job);
    EXPECT_LE(all.reasons.size(), 1U);
    EXPECT_EQ(all.complete(), all.reasons.empty());
    return all.reasons.empty() ? "" : all.reasons.front().english();
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST(Completion, IsReachedWhenNothingIsLeft) {
    const Completion all = judged(done_job());
    EXPECT_TRUE(all.complete());
    ASSERT_EQ(all.animals.size(), 1U);
    EXPECT_TRUE(all.animals[0].shut);
    EXPECT_TRUE(all.animals[0].rests_on.empty()) << "either closing does";
    EXPECT_TRUE(all.burns_fuel);
    ASSERT_EQ(all.left_open.size(), 1U);
    EXPECT_EQ(all.left_open[0].gaps, std::vector<GapIndex>{{2}});
    EXPECT_FALSE(all.left.has_value());
}

TEST(Completion, AnOpenWayHoldsItBack) {
    Job job = done_job();
    for (const ClosedGap& closed : job.closed) job.survey.gaps[closed.gap.value].shape = closed.before;
    job.closed.clear();
    EXPECT_TRUE(has(reason(job), "beetle still has a way in"));
    const AnimalOutcome outcome = judged(job).animals.at(0);
    EXPECT_FALSE(outcome.shut);
    EXPECT_EQ(outcome.gaps_on_ways, 2U);
    EXPECT_NEAR(outcome.widest->pinch, 2e-3, 1e-12);
    EXPECT_EQ(outcome.widest->pinch_gap, GapIndex{0});
    EXPECT_TRUE(outcome.left.feasible);
    EXPECT_EQ(outcome.left.steps.size(), 1U);
}

TEST(Completion, PlusMinusMayLeaveAWay) {
    Job job = done_job();
    job.survey.gaps[2].between[1] = SpaceIndex{4};
    job.survey.gaps[2].shape = Slot{0.9e-3, 1};
    job.survey.gaps[2].evidence.plus_minus = 0.2e-3;
    EXPECT_TRUE(has(reason(job), "beetle still has a way in"));
    EXPECT_TRUE(judged(job, Sizing::stated).complete());
}

TEST(Completion, AClosingThatDidNotHoldHoldsItBack) {
    Job job = done_job();
    job.closed[0].callback = Callback{2026y / June / 10, "it pulled off", std::nullopt};
    job.survey.gaps[0].shape = job.closed[0].before;
    EXPECT_TRUE(has(reason(job), "screed did not hold (called back 2026-06-10: it pulled off) and is not mended"));
    EXPECT_EQ(judged(job).animals[0].rests_on, std::vector<GapIndex>{{1}});
    job.closed[0].callback->mended = 2026y / June / 12;
    close_gap(job.survey.gaps[0], 0);
    job.checks[0].date = job.checks[1].date = 2026y / June / 12;
    EXPECT_EQ(reason(job), "");
}

TEST(Completion, AnAnimalThatLivesThereHoldsItBack) {
    Job job = done_job();
    job.occupied = {{{2}, *shipped_pests().find("bat"), "droppings", std::nullopt, std::nullopt}};
    EXPECT_EQ(reason(job), "Bat in attic (seen: droppings) is not known to be gone");
    job.occupied[0].left = 2026y / June / 1;
    EXPECT_EQ(reason(job), "");
    // Small animals are shut in or out as it comes; of one that the table does not know nobody can say so.
    job.occupied = {{{2}, *shipped_pests().find("bark-scorpion"), "", std::nullopt, std::nullopt}};
    EXPECT_EQ(reason(job), "");
    job.occupied = {{{2}, beetle(), "", std::nullopt, std::nullopt}};
    EXPECT_EQ(reason(job), "beetle in attic is not known to be gone");
}

TEST(Completion, EachCheckHoldsItBack) {
    for (const std::size_t which : {0U, 1U}) {
        Job job = done_job();
        job.checks[which].date = 2026y / June / 1;
        EXPECT_TRUE(has(reason(job), "on 2026-06-01, before the last closing (sink, 2026-06-02)")) << reason(job);
        job.checks.push_back({static_cast<CheckMade::What>(which), 2026y / June / 5, "again"});
        EXPECT_EQ(reason(job), "");
        job.checks = {job.checks[1 - which]};
        EXPECT_TRUE(has(reason(job), which == 0 ? "not written down that the appliances were tested"
                                                : "not written down that the carbon monoxide alarms"))
            << reason(job);
    }
    Job job = done_job();
    job.checks.clear();
    job.survey.gaps[2].duty = Duty::none;
    EXPECT_EQ(reason(job), "") << "no fuel, no check";
    job.inputs = {{{3}, 40'000}};
    EXPECT_EQ(judged(job).reasons.size(), 2U) << "something burns in the closet";
}

TEST(Completion, AClosingOfAnUnknownDayLeavesTheChecksInDoubt) {
    Job job = done_job();
    job.closed[0].date.reset();
    const Completion all = judged(job);
    ASSERT_EQ(all.reasons.size(), 2U);
    for (const Message& one : all.reasons)
        EXPECT_TRUE(has(one.english(), "screed was closed on a day that is not written down")) << one.english();
    EXPECT_EQ(all.undated, std::vector<GapIndex>{{0}});
}

// A mouse after the last closing has come in somewhere; a scorpion may have been inside all along.
TEST(Completion, WhatWasSeenAfterTheLastClosingCounts) {
    Job job = done_job();
    job.sightings = {{{4}, *shipped_pests().find("house-mouse"), 2026y / June / 2, 1},
                     {{4}, *shipped_pests().find("bark-scorpion"), 2026y / June / 9, 2}};
    EXPECT_EQ(reason(job), "") << "the mouse was there on the day of the work";
    EXPECT_EQ(judged(job).seen_since, std::vector<std::uint32_t>{1});
    job.sightings[0].date = 2026y / June / 3;
    EXPECT_TRUE(has(reason(job), "House mouse was seen in kitchen on 2026-06-03, after the last closing (2026-06-02)"))
        << reason(job);
    job.sightings[0].date.reset();
    EXPECT_EQ(reason(job), "") << "nobody knows when";
}

TEST(Completion, ASurveyWithoutEndsProvesNothing) {
    Job job = done_job();
    job.survey.spaces[0].kind = SpaceKind::cavity;
    EXPECT_TRUE(has(reason(job), "no outdoors or source space"));
    job = done_job();
    job.survey.spaces[4].kind = SpaceKind::cavity;
    EXPECT_TRUE(has(reason(job), "no living space"));
}

TEST(Completion, DaysAfterThatOfThePageHoldItBack) {
    Job job = done_job();
    job.checks[1].date = 2026y / June / 21;
    EXPECT_TRUE(has(reason(job), "2026-06-20, comes before days that the job has: the alarms looked at on 2026-06-21"));
    job = done_job();
    job.occupied = {{{2}, *shipped_pests().find("bat"), "", std::nullopt, 2027y / June / 1}};
    EXPECT_TRUE(has(reason(job), "Bat gone on 2027-06-01"));
    job = done_job();
    job.closed[0].date = 2026y / July / 1;
    job.checks[0].date = job.checks[1].date = 2026y / July / 1;
    EXPECT_TRUE(has(reason(job), "screed closed on 2026-07-01"));
}

TEST(Completion, LooksAgainWhenTheFirstClosingIsDue) {
    Job job = done_job();
    const auto years = static_cast<int>(shipped_treatments().find("bead")->years);
    ASSERT_GT(years, 1);
    Completion all = judged(job);
    EXPECT_EQ(all.reinspect->date, months_after(2026y / June / 1, 12 * years));
    EXPECT_EQ(all.reinspect->gap, GapIndex{0});
    // After a callback no later than in a year, whatever was closed.
    job.closed[1].callback = Callback{2026y / June / 10, "it pulled off", 2026y / June / 12};
    all = judged(job);
    EXPECT_EQ(all.reinspect->date, 2027y / June / 10);
    EXPECT_EQ(all.reinspect->gap, GapIndex{1});
    // What is due before that stays first.
    job.closed[0].date = months_after(2027y / January / 1, -12 * years);
    all = judged(job);
    EXPECT_EQ(all.reinspect->date, 2027y / January / 1);
    EXPECT_EQ(all.reinspect->gap, GapIndex{0});
    job = done_job();
    for (ClosedGap& closed : job.closed) closed.with.clear();
    all = judged(job);
    EXPECT_FALSE(all.reinspect.has_value());
    EXPECT_EQ(all.undated.size(), 2U);
}

TEST(Completion, CallbacksThatAreNotMendedComeFirst) {
    Job job = done_job();
    close(job, 2, "", 2026y / June / 1);
    job.closed[0].callback = Callback{2026y / June / 14, "a", 2026y / June / 15};
    job.closed[1].callback = Callback{2026y / June / 10, "b", std::nullopt};
    job.closed[2].callback = Callback{2026y / June / 16, "c", 2026y / June / 17};
    EXPECT_EQ(judged(job).callbacks, (std::vector<std::uint32_t>{1, 2, 0}));
}

TEST(Completion, WhatIsGnawedThroughDoesNotShut) {
    Job job = done_job();
    ASSERT_TRUE(shipped_treatments().find("bead")->gnawed);
    job.pests[0].gnaws = true;
    const Completion all = judged(job);
    const AnimalOutcome& outcome = all.animals.at(0);
    EXPECT_FALSE(outcome.shut);
    EXPECT_EQ(outcome.gnawed, (std::vector<GapIndex>{{0}, {1}}));
    EXPECT_TRUE(outcome.left.steps.empty()) << "a plan counts what is closed as shut";
}

/// Also where a mesh was put over the gap.
bool gets_through(const Gap& gap, const Pest& pest) {
    Gap behind = gap;
    if (gap.covered) {
        behind.shape = gap.covered->shape;
        behind.evidence.plus_minus = gap.covered->plus_minus;
    }
    return test::gets_through(gap, pest, true) && test::gets_through(behind, pest, true);
}

// Each closing opened again in its turn, and every path walked.
TEST(Completion, RestsOnTheClosingsThatLetTheAnimalInWhenOpenedAgain) {
    std::mt19937_64 random(20261130);
    int shut = 0, open = 0, needed = 0, idle = 0;
    for (int round = 0; round < 400; ++round) {
        const Survey found = test::random_survey({.spaces = 7, .gaps = 12, .shapes = true}, random());
        Job job;
        job.survey = found;
        job.pests = {beetle()};
        job.pests[0].size = {7e-3, 10e-3};
        for (std::uint32_t i = 0; i < found.gaps.size(); ++i) {
            if (random() % 4 == 0) continue;
            const Gap before = job.survey.gaps[i];
            close_gap(job.survey.gaps[i], random() % 3 == 0 ? 6e-3 : 0);
            job.closed.push_back({{i}, "", before.shape, std::nullopt, std::nullopt, before.evidence.plus_minus});
        }
        const auto ways = [&](const Survey& survey) {
            return test::all_paths(survey, {}, [&](const Gap& gap) { return gets_through(gap, job.pests[0]); });
        };
        const Completion all = judged(job);
        const AnimalOutcome& outcome = all.animals.at(0);
        const std::vector<EntryPath> left = ways(job.survey);
        ASSERT_EQ(outcome.shut, left.empty()) << round;
        if (!outcome.shut) {
            ++open;
            std::vector<GapIndex> on;
            for (const EntryPath& way : left) on.insert(on.end(), way.gaps.begin(), way.gaps.end());
            std::sort(on.begin(), on.end());
            on.erase(std::unique(on.begin(), on.end()), on.end());
            EXPECT_EQ(outcome.gaps_on_ways, on.size()) << round;
            EXPECT_TRUE(std::find(left.begin(), left.end(), outcome.widest->path) != left.end()) << round;
            continue;
        }
        ++shut;
        std::vector<GapIndex> expected;
        for (const ClosedGap& closed : job.closed) {
            Survey again = job.survey;
            again.gaps[closed.gap.value] = found.gaps[closed.gap.value];
            if (!ways(again).empty()) expected.push_back(closed.gap);
        }
        EXPECT_EQ(outcome.rests_on, expected) << round;
        needed += static_cast<int>(expected.size());
        idle += static_cast<int>(job.closed.size() - expected.size());
    }
    EXPECT_GT(shut, 50);
    EXPECT_GT(open, 50);
    EXPECT_GT(needed, 50);
    EXPECT_GT(idle, 50);
}

}  // namespace
}  // namespace seamward
