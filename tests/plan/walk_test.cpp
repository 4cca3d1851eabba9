// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/walk.h"

#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "plan/owner_part.h"
#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

using test::SurveyBuilder;

Walk walk_of(const Job& job) {
    std::vector<GapIndex> all;
    for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) all.push_back({i});
    return walk_to(job, in_working_order(job.survey, all));
}

SurveyBuilder house() {
    SurveyBuilder build;
    build.outdoors("yard").cavity("attic").cavity("crawl-space").cavity("wall").living("kitchen");
    return build;
}

const WalkStop& stop_of(const Walk& walk, const Job& job, const std::string& id) {
    for (const WalkStop& stop : walk.stops) {
        if (job.survey[stop.gap].id == id) return stop;
    }
    throw std::out_of_range(id);
}

bool says(const std::vector<Message>& lines, const std::string& text) {
    return std::any_of(lines.begin(), lines.end(),
                       [&](const Message& line) { return line.english().find(text) != std::string::npos; });
}

// One setting serves what lies within 1.5 m of its first gap: gaps at 0, 1, 1.4 | 2.0, 3.4 | 6 m along the north wall, the slots
// 0.1 m long; an eave slot of 4 m takes three settings of its own (4 / 1.5 = 2.67).
TEST(Walk, LadderMovesAreCounted) {
    SurveyBuilder build = house();
    int count = 0;
    for (const double x : {0.0, 1.0, 1.4, 2.0, 3.4, 6.0}) {
        build.slot("g" + std::to_string(count++), "yard", "attic", 2).at(x, 5, 2.6);
        build.last().shape = Slot{0.002, 0.1};
    }
    build.slot("low", "yard", "wall", 2).at(0, 5, 0.1);
    Job job;
    job.survey = build.survey();
    EXPECT_EQ(walk_of(job).ladder_settings, 3U);
    build.slot("eave", "yard", "attic", 2).at(0, -5, 2.6);
    build.last().shape = Slot{0.002, 4};
    job.survey = build.survey();
    const Walk walk = walk_of(job);
    EXPECT_EQ(walk.ladder_settings, 6U);
    const WalkStop& eave = stop_of(walk, job, "eave");
    EXPECT_EQ(eave.ladder_last - eave.ladder_first, 2U);
    EXPECT_EQ(stop_of(walk, job, "low").ladder_first, 0U);
}

TEST(Walk, HighLaddersTakeTwoPeople) {
    SurveyBuilder build = house();
    build.slot("low", "yard", "wall", 2).at(0, 5, 0);
    build.slot("eave", "yard", "attic", 2).at(0, 5, 2.6).slot("gable", "yard", "attic", 2).at(5, 0, 3.7);
    Job job;
    job.survey = build.survey();
    const Walk walk = walk_of(job);
    EXPECT_FALSE(stop_of(walk, job, "eave").two_people);
    EXPECT_TRUE(stop_of(walk, job, "gable").two_people);
    EXPECT_TRUE(says(stop_of(walk, job, "gable").cautions, "Two people"));
    EXPECT_TRUE(says(stop_of(walk, job, "eave").cautions, "3 ft (0.9 m)"));
    EXPECT_TRUE(stop_of(walk, job, "low").cautions.empty());
}

TEST(Walk, PlacesHaveTheirCautions) {
    SurveyBuilder build = house();
    build.slot("boot", "yard", "attic", 2).at(2, 2, 4);
    build.last().feature = "vent-pipe-boot";
    build.slot("joist", "crawl-space", "wall", 2).slot("plate", "wall", "attic", 2);
    Job job;
    job.survey = build.survey();
    job.site.roof = Site::Roof::tile;
    const Walk walk = walk_of(job);
    EXPECT_EQ(stop_of(walk, job, "boot").zone, WorkZone::roof);
    EXPECT_TRUE(says(stop_of(walk, job, "boot").cautions, "Tiles break"));
    EXPECT_EQ(stop_of(walk, job, "joist").zone, WorkZone::crawl_space);
    EXPECT_TRUE(says(stop_of(walk, job, "joist").cautions, "second person outside"));
    EXPECT_TRUE(says(stop_of(walk, job, "plate").cautions, "140 F"));
}

TEST(Walk, WhatToSettleBefore) {
    SurveyBuilder build = house();
    build.slot("low", "yard", "wall", 2);
    Job job;
    job.survey = build.survey();
    job.site.gates = "code at the gate";
    job.site.pets = "a dog";
    job.site.occupancy = Site::Occupancy::tenant;
    job.site.built = 1962;
    Walk walk = walk_of(job);
    for (const char* text : {"Gates: code at the gate", "Pets: a dog", "tenant", "Built in 1962: Paint", "asbestos"})
        EXPECT_TRUE(says(walk.before, text)) << text;
    job.site.built = 1984;
    walk = walk_of(job);
    EXPECT_FALSE(says(walk.before, "lead")) << "lead paint was banned in 1978";
    EXPECT_TRUE(says(walk.before, "asbestos"));
    job.site.built = 2004;
    EXPECT_FALSE(says(walk_of(job).before, "asbestos"));
    job.site.built.reset();
    EXPECT_TRUE(says(walk_of(job).before, "nobody has said when"));
    EXPECT_FALSE(says(walk_of(job).before, "Droppings"));
    job.occupied.push_back({build["attic"], *shipped_pests().find("house-mouse"), "", {}, {}});
    EXPECT_TRUE(says(walk_of(job).before, "Droppings"));
    EXPECT_TRUE(walk_to(job, {}).before.empty());
}

TEST(OwnerPart, WhatIsReachedFromTheGround) {
    SurveyBuilder build = house();
    build.slot("low", "yard", "wall", 2).at(0, 5, 0).slot("shelf", "wall", "kitchen", 2).at(1, 1, 1.2);
    build.slot("high", "wall", "kitchen", 2).at(1, 1, 2.5).slot("light", "attic", "kitchen", 2).at(1, 1, 2.0);
    build.last().feature = "recessed-light";
    build.slot("plate", "wall", "attic", 2);
    const Survey& survey = build.survey();
    const auto reached = [&](std::size_t i) { return from_the_ground(survey.gaps[i], zone_of(survey.gaps[i], survey, 0), 0); };
    EXPECT_TRUE(reached(0));
    EXPECT_TRUE(reached(1));
    EXPECT_FALSE(reached(2)) << "over the head";
    EXPECT_FALSE(reached(3)) << "in the ceiling";
    EXPECT_FALSE(reached(4)) << "in the attic";
}

// What nobody gave a type is judged by its name, and what nobody can place is no owner's.
TEST(OwnerPart, NamesTellOfTrades) {
    SurveyBuilder build = house();
    for (const char* id : {"gas riser", "electrical panel knockout", "Light over the door", "lightest crack", "furnace flue",
                           "sole plate", "twilight joint"})
        build.slot(id, "wall", "kitchen", 2).at(1, 1, 0.3);
    build.slot("somewhere", "wall", "kitchen", 2);
    build.slot("closet", "yard", "crawl-space", 8).at(0, 0, 0.2);
    build.last().duty = Duty::combustion_air;
    build.slot("pipe", "crawl-space", "kitchen", 2).at(1, 1, 0.3);
    Job job;
    job.survey = build.survey();
    const Walk walk = walk_of(job);
    EXPECT_TRUE(stop_of(walk, job, "gas riser").trade);
    EXPECT_TRUE(says(stop_of(walk, job, "gas riser").cautions, "lines and valves"));
    EXPECT_TRUE(stop_of(walk, job, "electrical panel knockout").trade);
    EXPECT_TRUE(stop_of(walk, job, "Light over the door").trade);
    EXPECT_TRUE(stop_of(walk, job, "furnace flue").trade);
    EXPECT_FALSE(stop_of(walk, job, "sole plate").trade);
    EXPECT_FALSE(stop_of(walk, job, "twilight joint").trade) << "no word of it begins so";
    EXPECT_TRUE(stop_of(walk, job, "pipe").trade) << "into the air of an appliance";
    EXPECT_TRUE(from_the_ground(job.survey.gaps[5], WorkZone::rooms, 0));
    EXPECT_FALSE(from_the_ground(job.survey.gaps[7], WorkZone::rooms, 0)) << "nobody knows where";
}

// Of the steps of a plan, the owner's and the hired ones are all, and the prices add up to the plan's.
TEST(OwnerPart, AddsUpToThePlan) {
    const Job job = read_job(std::string(SEAMWARD_SOURCE_FOLDER) + "/scenarios/demo.yaml", RunContext());
    PlanSettings settings;
    settings.against = job.pests;
    const Plan plan = make_plan(job, settings, RunContext());
    const OwnerPart part = owner_part(plan, settings.prices);
    EXPECT_EQ(part.steps + part.hired_steps, plan.steps.size());
    EXPECT_GT(part.steps, 0U);
    EXPECT_GT(part.hired_steps, 0U);
    Money of_owner;
    for (const PlanStep& step : plan.steps) {
        if (!step.owner) continue;
        of_owner = of_owner + step.option.cost;
        EXPECT_TRUE(shipped_treatments().find(step.option.treatment)->owner);
        EXPECT_EQ(step.stop.ladder_first, 0U);
    }
    EXPECT_EQ(of_owner + part.hired, plan.cost);
}

}  // namespace
}  // namespace seamward
