// SPDX-License-Identifier: GPL-3.0-or-later
// Entries worked out by hand: walls as resistors, chains as a gambler's purse.
#include "plan/sightings.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

using test::SurveyBuilder;

Pest beetle() {
    Pest pest;
    pest.id = "beetle";
    pest.size = {1e-3, 2e-3};
    return pest;
}

/// A slot wide enough for the beetle; its length in meters is its rate.
void slot(SurveyBuilder& build, const std::string& id, const std::string& a, const std::string& b, double rate) {
    std::get<Slot>(build.slot(id, a, b, 5).last().shape).length = rate;
}

Job job_of(const SurveyBuilder& build, const std::vector<std::pair<std::string, std::uint32_t>>& seen) {
    Job job;
    job.survey = build.survey();
    job.pests = {beetle()};
    for (const auto& [room, count] : seen) job.sightings.push_back({build[room], beetle(), std::nullopt, count});
    return job;
}

/// What is told of the only animal.
SightingsOfPest told(const Job& job, const std::vector<PlanStep>& steps = {}) {
    const std::vector<SightingsOfPest> all = explain_sightings(job, steps, Sizing::with_plus_minus);
    EXPECT_EQ(all.size(), 1U);
    return all.at(0);
}

double share_of(const Job& job, const SightingsOfPest& of, const std::string& gap) {
    for (const EntryShare& entry : of.entries) {
        if (job.survey[entry.gap].id == gap) return entry.share;
    }
    return 0;
}

TEST(MouthLength, OfEachShape) {
    Gap gap;
    gap.shape = Slot{2e-3, 9};
    EXPECT_NEAR(mouth_length(gap), 9, 1e-12);
    gap.shape = Hole{0.01};
    gap.count = 30;
    EXPECT_NEAR(mouth_length(gap), 30 * std::numbers::pi * 0.01, 1e-12);
    gap.count = 1;
    gap.shape = Ring{2e-3, 0.02};
    EXPECT_NEAR(mouth_length(gap), std::numbers::pi * 0.022, 1e-12);
    gap.shape = Mesh{5e-3, 0.04};
    EXPECT_NEAR(mouth_length(gap), 0.8, 1e-12);
    gap.shape = Mesh{5e-3, std::nullopt};
    EXPECT_NEAR(mouth_length(gap), 0.02, 1e-12);
    gap.shape = Slot{8e-3, 3};
    close_gap(gap, 2e-3);
    EXPECT_NEAR(mouth_length(gap), 3, 1e-12) << "a mesh over a slot is as long as the slot";
    Gap doubtful;
    doubtful.shape = Hole{0};
    doubtful.evidence.plus_minus = 4e-3;
    EXPECT_NEAR(mouth_length(doubtful), std::numbers::pi * 4e-3, 1e-12);
}

// Two resistors in a row conduct ab / (a + b); in parallel they add up. The current that enters through a gap is its share.
TEST(Sightings, AreSharedAsCurrentThroughResistors) {
    SurveyBuilder build;
    build.outdoors("yard").cavity("wall").cavity("attic").living("kitchen");
    slot(build, "screed", "yard", "wall", 2);
    slot(build, "bibb", "yard", "wall", 4);
    slot(build, "sink", "wall", "kitchen", 3);
    slot(build, "eave", "yard", "attic", 1);
    slot(build, "light", "attic", "kitchen", 1);
    slot(build, "door", "yard", "kitchen", 0.5);
    const Job job = job_of(build, {{"kitchen", 1}});
    const SightingsOfPest of = told(job);
    const double wall = 6.0 * 3 / 9;  // 2
    const double attic = 0.5;
    const double all = wall + attic + 0.5;
    EXPECT_NEAR(share_of(job, of, "bibb"), wall * 4 / 6 / all, 1e-12);
    EXPECT_NEAR(share_of(job, of, "screed"), wall * 2 / 6 / all, 1e-12);
    EXPECT_NEAR(share_of(job, of, "eave"), attic / all, 1e-12);
    EXPECT_NEAR(share_of(job, of, "door"), 0.5 / all, 1e-12);
    ASSERT_EQ(of.entries.size(), 4U) << "gaps inside are no entries";
    EXPECT_EQ(job.survey[of.entries[0].gap].id, "bibb");
    EXPECT_EQ(job.survey[of.entries[2].gap].id, "eave") << "of equal shares the first of the survey";
    EXPECT_EQ(of.cut_share, 0);
}

// A purse of 1, a bank of n - 1, odds r: the chance to break the bank is (1 - 1/r) / (1 - r^-n).
double gambler(double odds, int n) { return odds == 1 ? 1.0 / n : (1 - 1 / odds) / (1 - std::pow(odds, -n)); }

TEST(Sightings, AlongAChainAreAGamblersRuin) {
    for (const double odds : {0.5, 1.0, 1.3, 3.0}) {
        for (int spaces = 1; spaces <= 9; ++spaces) {
            // yard, s1 ... sn, street: each gap `odds` times the one before. Seen at s_j, it came from either end.
            SurveyBuilder build;
            build.outdoors("s0");
            for (int i = 1; i <= spaces; ++i) build.cavity("s" + std::to_string(i));
            build.outdoors("s" + std::to_string(spaces + 1));
            for (int i = 0; i <= spaces; ++i)
                slot(build, "g" + std::to_string(i), "s" + std::to_string(i), "s" + std::to_string(i + 1),
                     100 * std::pow(odds, i));
            for (int seen = 1; seen <= spaces; ++seen) {
                const Job job = job_of(build, {{"s" + std::to_string(seen), 3}});
                const double left = gambler(odds, seen);
                const double right = std::pow(odds, spaces) * gambler(1 / odds, spaces + 1 - seen);
                EXPECT_NEAR(share_of(job, told(job), "g0"), left / (left + right), 1e-9) << odds << ' ' << spaces << ' ' << seen;
            }
        }
    }
}

SurveyBuilder two_rooms() {
    SurveyBuilder build;
    build.outdoors("yard").cavity("wall").living("kitchen").living("hall").living("bath");
    slot(build, "screed", "yard", "wall", 1);
    slot(build, "sink", "wall", "kitchen", 1);
    slot(build, "outlet", "wall", "hall", 2);
    slot(build, "door", "yard", "hall", 0.5);
    return build;
}

TEST(Sightings, OfSeveralRoomsAreWeightedByTheirCount) {
    const SurveyBuilder build = two_rooms();
    const Job job = job_of(build, {{"kitchen", 3}, {"hall", 1}, {"bath", 2}, {"yard", 4}, {"kitchen", 1}});
    const SightingsOfPest of = told(job);
    // All of the kitchen's came by the screed; of the hall's 1 * 2/4 against 0.5 by the door.
    EXPECT_NEAR(share_of(job, of, "screed"), (4 + 0.5) / 5, 1e-12);
    EXPECT_NEAR(share_of(job, of, "door"), 0.5 / 5, 1e-12);
    EXPECT_EQ(of.seen, 11U);
    EXPECT_EQ(of.explained, 5U);
    ASSERT_EQ(of.unexplained.size(), 1U);
    EXPECT_EQ(of.unexplained[0].room, build["bath"]);
    EXPECT_EQ(of.unexplained[0].count, 2U);
    ASSERT_EQ(of.at_starts.size(), 1U);
    EXPECT_EQ(of.at_starts[0].count, 4U);
    ASSERT_EQ(of.rooms.size(), 4U);
    EXPECT_EQ(of.rooms[0].count, 4U);
}

TEST(Sightings, WithinAnInnerSpaceTakeTheWalkUp) {
    // To the hall and back counts as seen in the wall on the way; the door only leads to the hall, which ends the walk.
    const Job job = job_of(two_rooms(), {{"wall", 1}});
    EXPECT_NEAR(share_of(job, told(job), "screed"), 1, 1e-12);
}

TEST(Sightings, AnEntryThatTheStepsCloseIsCut) {
    const Job job = job_of(two_rooms(), {{"hall", 1}});
    PlanStep step;
    step.gap = {3};
    SightingsOfPest of = told(job, {step});
    EXPECT_NEAR(of.cut_share, 0.5, 1e-12);
    // Behind the screed both ways on have to be closed; a mesh that lets the beetle through closes nothing.
    PlanStep sink, outlet;
    sink.gap = {1};
    outlet.gap = {2};
    EXPECT_NEAR(told(job, {step, sink}).cut_share, 0.5, 1e-12);
    EXPECT_NEAR(told(job, {step, sink, outlet}).cut_share, 1, 1e-12);
    outlet.option.opening = 4e-3;
    of = told(job, {step, sink, outlet});
    EXPECT_NEAR(of.cut_share, 0.5, 1e-12);
    for (const EntryShare& entry : of.entries) EXPECT_EQ(entry.cut, entry.gap == GapIndex{3});
}

TEST(Sightings, AnEntryThatIsCutFurtherInIsNotClosed) {
    const Job job = job_of(two_rooms(), {{"hall", 1}});
    PlanStep door, sink, outlet;
    door.gap = {3};
    sink.gap = {1};
    outlet.gap = {2};
    const SightingsOfPest of = told(job, {door, sink, outlet});
    ASSERT_EQ(of.entries.size(), 2U);
    for (const EntryShare& entry : of.entries) {
        EXPECT_TRUE(entry.cut);
        EXPECT_EQ(entry.closed, entry.gap == GapIndex{3});
    }
    for (const EntryShare& entry : told(job).entries) EXPECT_FALSE(entry.closed);
}

// No way leads to the bath. The hall's door is the widest way into any room, until it is closed.
TEST(Sightings, UnexplainedOnesMayHaveComeThroughAnotherRoom) {
    Job job = job_of(two_rooms(), {{"bath", 1}});
    job.survey.gaps[3].shape = Slot{9e-3, 0.5};
    SightingsOfPest of = told(job);
    ASSERT_TRUE(of.other_room.has_value());
    EXPECT_EQ(of.other_room->way.pinch_gap, GapIndex{3});
    EXPECT_EQ(job.survey[of.other_room->way.path.to()].id, "hall");
    EXPECT_NEAR(of.other_room->way.pinch, 9e-3, 1e-12);
    EXPECT_TRUE(of.other_room->still);
    using namespace std::chrono;
    job.closed.push_back({{3}, "", job.survey.gaps[3].shape, Date(2026y / March / 20), std::nullopt, 0});
    close_gap(job.survey.gaps[3], 0);
    job.sightings[0].date = 2026y / March / 19;
    of = told(job);
    EXPECT_EQ(of.other_room.value().way.pinch_gap, GapIndex{3});
    EXPECT_FALSE(of.other_room->still);
    job.sightings[0].date.reset();
    EXPECT_NE(told(job).other_room.value().way.pinch_gap, GapIndex{3});
    EXPECT_FALSE(told(job_of(two_rooms(), {{"hall", 1}})).other_room.has_value()) << "that is explained";
}

TEST(Sightings, WhatIsGnawedThroughCutsNothing) {
    Job job = job_of(two_rooms(), {{"hall", 1}});
    PlanStep step;
    step.gap = {3};
    step.option.gnawed = true;
    EXPECT_NEAR(told(job, {step}).cut_share, 0.5, 1e-12);
    job.sightings[0].pest.gnaws = true;
    EXPECT_NEAR(told(job, {step}).cut_share, 0, 1e-12);
}

TEST(Sightings, BeforeAClosingMetTheOpenGap) {
    using namespace std::chrono;
    Job job = job_of(two_rooms(), {{"hall", 1}});
    job.closed.push_back({{0}, "", job.survey.gaps[0].shape, Date(2026y / March / 20), std::nullopt, 0});
    close_gap(job.survey.gaps[0], 0);
    EXPECT_EQ(share_of(job, told(job), "screed"), 0) << "of an unknown day: as the house stands";
    job.sightings[0].date = 2026y / March / 21;
    EXPECT_EQ(share_of(job, told(job), "screed"), 0);
    job.sightings[0].date = 2026y / March / 20;
    const SightingsOfPest of = told(job);
    EXPECT_NEAR(share_of(job, of, "screed"), 0.5, 1e-12);
    EXPECT_NEAR(of.cut_share, 0.5, 1e-12) << "it is closed by now";
}

// The neighbor's unit is a room and a source: ways end there and begin there, but none leads through.
TEST(Sightings, ARoomMayBeASourceToo) {
    SurveyBuilder build;
    build.outdoors("yard").space("neighbor", SpaceKind::living, true).cavity("wall").living("kitchen");
    slot(build, "window", "yard", "neighbor", 1);
    slot(build, "party", "neighbor", "wall", 1);
    slot(build, "sink", "wall", "kitchen", 1);
    slot(build, "screed", "yard", "wall", 2);
    slot(build, "door", "neighbor", "kitchen", 0.25);
    Job job = job_of(build, {{"kitchen", 1}});
    SightingsOfPest of = told(job);
    EXPECT_NEAR(share_of(job, of, "party"), 0.25, 1e-12);
    EXPECT_NEAR(share_of(job, of, "screed"), 0.5, 1e-12);
    EXPECT_NEAR(share_of(job, of, "door"), 0.25, 1e-12);
    EXPECT_EQ(share_of(job, of, "window"), 0);
    // Back into the neighbor's own rooms is no way in.
    PlanStep sink;
    sink.gap = {2};
    EXPECT_NEAR(told(job, {sink}).cut_share, 0.25, 1e-12) << "the screed still leads to the neighbor";
    job.sightings[0].room = build["neighbor"];
    of = told(job);
    EXPECT_NEAR(share_of(job, of, "window"), 1 / 1.5, 1e-12);
    EXPECT_NEAR(share_of(job, of, "screed"), 0.5 / 1.5, 1e-12);
    EXPECT_EQ(share_of(job, of, "party"), 0);
}

TEST(Sightings, IslandsInsideAreNoTrouble) {
    SurveyBuilder build = two_rooms();
    build.cavity("chase").cavity("duct");
    slot(build, "joint", "chase", "duct", 1);
    const Job job = job_of(build, {{"duct", 1}, {"hall", 1}});
    const SightingsOfPest of = told(job);
    EXPECT_EQ(of.explained, 1U);
    ASSERT_EQ(of.unexplained.size(), 1U);
    EXPECT_EQ(of.unexplained[0].room, build["duct"]);
}

TEST(Sightings, NoneAreTold) {
    EXPECT_TRUE(explain_sightings(job_of(two_rooms(), {}), {}, Sizing::stated).empty());
    const Job nowhere = job_of(SurveyBuilder().living("kitchen"), {{"kitchen", 2}});
    const SightingsOfPest of = told(nowhere);
    EXPECT_TRUE(of.entries.empty());
    EXPECT_EQ(of.explained, 0U);
    EXPECT_EQ(of.unexplained.at(0).count, 2U);
}

}  // namespace
}  // namespace seamward
