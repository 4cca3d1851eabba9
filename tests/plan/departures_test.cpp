// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/departures.h"

#include <gtest/gtest.h>

#include <random>

#include "catalog/passage.h"
#include "catalog/shipped.h"
#include "plan/plan.h"
#include "tests/support/random_survey.h"
#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

using test::SurveyBuilder;

constexpr Date in_june{std::chrono::year(2026), std::chrono::June, std::chrono::day(10)};
constexpr Date in_november{std::chrono::year(2026), std::chrono::November, std::chrono::day(10)};

/// An attic with a wide and a narrow way out, over a kitchen. Widths in millimeters; a mouse needs 6.
SurveyBuilder attic() {
    SurveyBuilder build;
    build.outdoors("yard").cavity("attic").cavity("wall").living("kitchen");
    build.slot("ridge", "yard", "attic", 20).slot("eave", "yard", "attic", 12).slot("light", "attic", "kitchen", 15);
    build.slot("plate", "wall", "attic", 25).slot("screed", "yard", "wall", 7).slot("sink", "wall", "kitchen", 3);
    return build;
}

Job job_with(const SurveyBuilder& build, const std::string& animal, const std::string& space) {
    Job job;
    job.survey = build.survey();
    Occupant occupant;
    occupant.space = build[space];
    occupant.animal = *shipped_pests().find(animal);
    job.occupied = {occupant};
    return job;
}

std::vector<TreatedGap> closings(std::initializer_list<std::uint32_t> gaps) {
    std::vector<TreatedGap> all;
    for (const std::uint32_t gap : gaps) all.push_back({{gap}, 0});
    return all;
}

TEST(Departures, TheWidestWayOutWaits) {
    const Job job = job_with(attic(), "bat", "attic");
    const auto departures = departures_of(job, closings({0, 1, 4}), in_november);
    ASSERT_EQ(departures.size(), 1U);
    EXPECT_EQ(departures[0].last, std::vector<GapIndex>{{0}});
    EXPECT_EQ(departures[0].device, GapIndex{0});
    EXPECT_FALSE(departures[0].season);
    EXPECT_EQ(date_text(departures[0].close_from), "2026-11-17");
}

TEST(Departures, NothingWaitsWhereAWayOutStays) {
    const Job job = job_with(attic(), "house-mouse", "attic");
    const auto departures = departures_of(job, closings({0, 1}), in_november);
    ASSERT_EQ(departures.size(), 1U);
    EXPECT_TRUE(departures[0].last.empty()) << "the mouse still gets out past the screed";
    EXPECT_TRUE(departures[0].way_known);
    const Job with_bat = job_with(attic(), "bat", "attic");
    EXPECT_FALSE(departures_of(with_bat, closings({0, 1, 4}), in_november)[0].last.empty());
}

TEST(Departures, AWayThatWasSeenGoesBeforeTheWidest) {
    Job job = job_with(attic(), "house-mouse", "attic");
    job.occupied[0].way = GapIndex{4};
    auto departures = departures_of(job, closings({0, 1, 4}), in_november);
    EXPECT_EQ(departures[0].last, std::vector<GapIndex>{{4}});
    EXPECT_FALSE(departures[0].device) << "mice are trapped";
    departures = departures_of(job, closings({0, 1, 3, 4}), in_november);
    EXPECT_EQ(departures[0].last, (std::vector<GapIndex>{{3}, {4}})) << "all along that way, from inside out";
}

TEST(Departures, OnlyClosingsThatStopTheAnimalWait) {
    const Job job = job_with(attic(), "house-mouse", "attic");
    // A mesh of 15 mm over the ridge lets the mouse out; the table's ellipse passes at 6 mm.
    const std::vector<TreatedGap> meshed{{{0}, 0.015}, {{1}, 0}, {{4}, 0}};
    EXPECT_TRUE(departures_of(job, meshed, in_november)[0].last.empty());
    const std::vector<TreatedGap> fine{{{0}, 0.003}, {{1}, 0}, {{4}, 0}};
    EXPECT_EQ(departures_of(job, fine, in_november)[0].last, std::vector<GapIndex>{{0}});
}

TEST(Departures, AnAnimalWithoutAKnownWayKeepsAllAroundIt) {
    Job job = job_with(attic(), "norway-rat", "wall");  // no gap of the survey lets it out: it needs 13 mm
    job.survey.gaps[0].shape = Slot{0.008, 1};
    job.survey.gaps[1].shape = Slot{0.008, 1};
    const auto departures = departures_of(job, closings({0, 3, 4}), in_november);
    EXPECT_FALSE(departures[0].way_known);
    EXPECT_EQ(departures[0].last, (std::vector<GapIndex>{{3}, {4}}))
        << "it came in somewhere: any of them may be wider than it looks";
}

TEST(Departures, SmallAnimalsAndThoseThatLeftHoldNothingBack) {
    EXPECT_FALSE(departures_of(job_with(attic(), "bark-scorpion", "attic"), closings({0, 1, 4}), in_november)[0].waits());
    Job job = job_with(attic(), "bat", "attic");
    job.occupied[0].left = in_june;
    EXPECT_TRUE(departures_of(job, closings({0, 1, 4}), in_november).empty());
}

TEST(Departures, AnUnknownAnimalIsTreatedLikeAWildOne) {
    Job job = job_with(attic(), "bat", "attic");
    job.occupied[0].animal.id = "unicorn";
    const auto departures = departures_of(job, closings({0, 1, 4}), in_june);
    EXPECT_EQ(departures[0].removal, nullptr);
    EXPECT_TRUE(departures[0].waits());
    EXPECT_FALSE(departures[0].device);
}

// Arizona Game and Fish, as a news report of 2024 gives it: no exclusion of bats from May to September.
TEST(Departures, InSeasonTheLastHoleIsRefusedWithTheDate) {
    Job job = job_with(attic(), "bat", "attic");
    job.site.state = "AZ";
    job.pests = {*shipped_pests().find("bat")};
    PlanSettings settings;
    settings.against = job.pests;
    settings.date = in_june;
    for (Gap& gap : job.survey.gaps) gap.closing.cost = Money{1000};
    job.survey.gaps[2].closing = {{}, "a light that stays"};
    const Plan plan = make_plan(job, settings, RunContext());
    ASSERT_EQ(plan.steps.size(), 3U);
    EXPECT_EQ(job.survey[plan.steps.back().gap].id, "ridge");
    EXPECT_TRUE(plan.steps.back().waits);
    EXPECT_FALSE(plan.steps[0].waits);
    const auto refused =
        std::find_if(plan.refused.begin(), plan.refused.end(), [](const RefusedGap& one) { return one.gap == GapIndex{0}; });
    ASSERT_NE(refused, plan.refused.end());
    EXPECT_NE(refused->refusal.why.english().find("not before 2026-10-08"), std::string::npos) << refused->refusal.why.english();
    EXPECT_NE(refused->refusal.source.english().find("Arizona Game and Fish"), std::string::npos)
        << refused->refusal.source.english();
    settings.date = in_november;
    const Plan later = make_plan(job, settings, RunContext());
    EXPECT_EQ(later.cost, plan.cost);
    EXPECT_TRUE(later.steps.back().waits) << "the device and the quiet nights still come first";
    EXPECT_EQ(later.refused.size() + 1, plan.refused.size());
}

// Seven quiet nights from April 27 would end on May 4, in the season that begins on May 1.
TEST(Departures, QuietNightsDoNotRunIntoASeason) {
    Job job = job_with(attic(), "bat", "attic");
    job.site.state = "AZ";
    const auto from = [&](Date date) { return departures_of(job, closings({0, 1, 4}), date)[0]; };
    const Departure late = from(Date(std::chrono::year(2026), std::chrono::April, std::chrono::day(27)));
    EXPECT_EQ(date_text(late.begin), "2026-10-01");
    EXPECT_EQ(date_text(late.close_from), "2026-10-08");
    EXPECT_TRUE(late.season);
    const Departure in_time = from(Date(std::chrono::year(2026), std::chrono::April, std::chrono::day(23)));
    EXPECT_EQ(date_text(in_time.close_from), "2026-04-30");
    EXPECT_FALSE(in_time.season);
}

TEST(Departures, WhatLeavesLaterIsStillThere) {
    Job job = job_with(attic(), "bat", "attic");
    job.occupied[0].left = in_november;
    EXPECT_EQ(departures_of(job, closings({0, 1, 4}), in_june).size(), 1U);
    EXPECT_TRUE(departures_of(job, closings({0, 1, 4}), in_november).empty());
}

// Only what is surely wide enough is a way out: 3 mm give or take 10 may let nobody out.
TEST(Departures, DoubtfulWidthsAreNoWayOut) {
    SurveyBuilder build = attic();
    build.slot("crack", "yard", "attic", 3);
    build.last().evidence.plus_minus = 0.01;
    const Job job = job_with(build, "bat", "attic");
    const auto departures = departures_of(job, closings({0, 1, 4}), in_november);
    EXPECT_EQ(departures[0].last, std::vector<GapIndex>{{0}});
    Job narrow = job;  // the ridge itself is in doubt, and nothing else is there
    narrow.survey.gaps[0].evidence.plus_minus = 0.018;
    narrow.survey.gaps[1].shape = narrow.survey.gaps[4].shape = Slot{0.003, 1};
    EXPECT_EQ(departures_of(narrow, closings({0, 1, 4}), in_november)[0].last, std::vector<GapIndex>{{0}})
        << "it came in somehow";
}

TEST(Departures, AWayThatIsTooSmallIsNotBelieved) {
    SurveyBuilder build = attic();
    build.slot("pin", "yard", "attic", 1);
    Job job = job_with(build, "bat", "attic");
    job.occupied[0].way = GapIndex{6};
    const auto departures = departures_of(job, closings({0, 1, 4}), in_november);
    EXPECT_FALSE(departures[0].way_passes);
    EXPECT_EQ(departures[0].last, std::vector<GapIndex>{{0}});
}

// A bat and a mouse behind one hole: it waits for the bat's season too.
TEST(Departures, OneHoleWaitsForAllBehindIt) {
    Job job = job_with(attic(), "bat", "attic");
    job.site.state = "AZ";
    job.occupied.push_back(job.occupied[0]);
    job.occupied[1].animal = *shipped_pests().find("house-mouse");
    const auto departures = departures_of(job, closings({0, 1, 4}), in_june);
    ASSERT_EQ(departures.size(), 2U);
    EXPECT_EQ(date_text(departures[1].begin), "2026-06-10") << "traps at once";
    EXPECT_EQ(date_text(departures[1].close_from), "2026-10-08");
    job.occupied[1] = job.occupied[0];
    EXPECT_EQ(departures_of(job, closings({0, 1, 4}), in_june).size(), 1U) << "listed twice";
}

/// Whether it passes at the least width that the gap can have.
bool surely_passes(Gap gap, const Pest& animal) {
    gap.shape = widened(gap.shape, -std::min(gap.evidence.plus_minus, clear_width(gap.shape)));
    if (gap.covered)
        gap.covered->shape = widened(gap.covered->shape, -std::min(gap.covered->plus_minus, clear_width(gap.covered->shape)));
    return lets_through(gap, animal.size, Sizing::stated);
}

/// Whether the animal surely gets from its space to outdoors, by plain search.
bool gets_out(const Survey& survey, const Occupant& occupant) {
    std::vector<SpaceIndex> waiting{occupant.space};
    std::vector<bool> seen(survey.spaces.size(), false);
    seen[occupant.space.value] = true;
    for (std::size_t i = 0; i < waiting.size(); ++i) {
        const SpaceIndex here = waiting[i];
        if (survey[here].kind == SpaceKind::outdoors) return true;
        if (i > 0 && survey[here].is_living()) continue;
        for (const Gap& gap : survey.gaps) {
            if (gap.between[0] != here && gap.between[1] != here) continue;
            const SpaceIndex there = gap.between[0] == here ? gap.between[1] : gap.between[0];
            if (seen[there.value] || !surely_passes(gap, occupant.animal)) continue;
            seen[there.value] = true;
            waiting.push_back(there);
        }
    }
    return false;
}

// No order of the steps that do not wait shuts an animal in that could get out before: property of 2,000 random jobs.
TEST(Departures, NobodyIsShutInBeforeTheStepsThatWait) {
    std::mt19937 random(20261126);
    int shut_in_by_all = 0;
    for (int round = 0; round < 2000; ++round) {
        Job job;
        job.survey = test::random_survey(
            {.spaces = 7, .gaps = 14, .outdoors_share = 0.2, .source_share = 0, .shapes = round % 2 == 0}, 7000 + round);
        for (Gap& gap : job.survey.gaps) gap.closing.cost = Money{100 + static_cast<int>(random() % 900)};
        const Pest mouse = *shipped_pests().find("house-mouse");
        job.pests = {mouse};
        Occupant occupant;
        occupant.animal = mouse;
        occupant.space = {static_cast<std::uint32_t>(random() % job.survey.spaces.size())};
        if (job.survey[occupant.space].kind == SpaceKind::outdoors) continue;
        const GapIndex seen{static_cast<std::uint32_t>(random() % job.survey.gaps.size())};
        if (surely_passes(job.survey[seen], mouse)) occupant.way = seen;
        job.occupied = {occupant};
        PlanSettings settings;
        settings.against = job.pests;
        settings.date = in_november;
        const Plan plan = make_plan(job, settings, RunContext());
        if (!plan.feasible || !gets_out(job.survey, occupant)) continue;
        Survey now = job.survey;
        bool waiting_began = false;
        for (const PlanStep& step : plan.steps) {
            waiting_began = waiting_began || step.waits;
            EXPECT_EQ(step.waits, waiting_began) << "steps that wait are last";
            if (step.waits) continue;
            close_gap(now.gaps[step.gap.value], step.option.opening);
            EXPECT_TRUE(gets_out(now, occupant)) << "round " << round << " way " << occupant.way.has_value();
        }
        for (const PlanStep& step : plan.steps) close_gap(now.gaps[step.gap.value], step.option.opening);
        EXPECT_EQ(!gets_out(now, occupant), waiting_began) << "round " << round;
        shut_in_by_all += waiting_began ? 1 : 0;
    }
    EXPECT_GT(shut_in_by_all, 100) << "the property must have been asked";
}

}  // namespace
}  // namespace seamward
