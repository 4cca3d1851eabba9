// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/work_order.h"

#include <gtest/gtest.h>

#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

using test::SurveyBuilder;

SurveyBuilder house() {
    SurveyBuilder build;
    build.outdoors("yard").space("garage", SpaceKind::attached).cavity("attic").cavity("wall").living("kitchen").living("bath");
    return build;
}

std::vector<std::string> ids_in_order(const Survey& survey) {
    std::vector<GapIndex> all;
    for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) all.push_back({i});
    std::vector<std::string> ids;
    for (const GapIndex gap : in_working_order(survey, all)) ids.push_back(survey[gap].id);
    return ids;
}

TEST(WorkOrder, ZonesFollowTheWalk) {
    SurveyBuilder build = house();
    build.slot("bath-light", "attic", "bath", 1).slot("kitchen-light", "attic", "kitchen", 1);
    build.slot("plate", "wall", "attic", 1).slot("stair", "garage", "attic", 1);
    build.slot("eave", "yard", "attic", 1).at(0, 5, 2.4).slot("screed", "yard", "wall", 1).at(0, 5, 0.1);
    build.slot("boot", "yard", "attic", 1).at(3, 3, 3.5);
    build.last().feature = "vent-pipe-boot";
    EXPECT_EQ(ids_in_order(build.survey()),
              (std::vector<std::string>{"screed", "eave", "boot", "stair", "plate", "kitchen-light", "bath-light"}));
}

TEST(WorkOrder, RoundTheHouseClockwiseFromNorth) {
    SurveyBuilder build = house();
    build.slot("west", "yard", "wall", 1).at(-5, 0, 0).slot("south", "yard", "wall", 1).at(0, -5, 0);
    build.slot("east", "yard", "wall", 1).at(5, 0, 0).slot("north", "yard", "wall", 1).at(0.001, 5, 0);
    EXPECT_EQ(ids_in_order(build.survey()), (std::vector<std::string>{"north", "east", "south", "west"}));
}

TEST(WorkOrder, HeightCountsFromTheYard) {
    SurveyBuilder build = house();
    build.slot("low", "yard", "wall", 1).at(0, 0, 100).slot("high", "yard", "wall", 1).at(0, 0, 102.2);
    const double ground = ground_height(build.survey());
    EXPECT_EQ(ground, 100);
    EXPECT_EQ(zone_of(build.survey().gaps[0], build.survey(), ground), WorkZone::outside_low);
    EXPECT_EQ(zone_of(build.survey().gaps[1], build.survey(), ground), WorkZone::outside_high);
    EXPECT_STREQ(zone_words(WorkZone::outside_high), "outside, from a ladder");
}

// "Work higher than 2.1 m over the ground" is a ladder's (site_cautions.yaml): 2.1 m is not.
TEST(WorkOrder, AsHighAsAPersonReachesIsWorkedFromTheGround) {
    SurveyBuilder build = house();
    build.slot("low", "yard", "wall", 1).at(0, 0, 0).slot("edge", "yard", "wall", 1).at(0, 0, 2.1);
    build.slot("over", "yard", "wall", 1).at(0, 0, 2.101);
    EXPECT_EQ(zone_of(build.survey().gaps[1], build.survey(), 0), WorkZone::outside_low);
    EXPECT_EQ(zone_of(build.survey().gaps[2], build.survey(), 0), WorkZone::outside_high);
}

// One gap 6 m up says nothing of where the ground is; names tell of places at the roof.
TEST(WorkOrder, TheLowestGapIsNoGround) {
    SurveyBuilder build = house();
    build.slot("gable", "yard", "wall", 1).at(0, 0, 6).slot("ridge", "yard", "wall", 1).slot("sole", "yard", "wall", 1);
    build.slot("up", "yard", "attic", 1);
    const Survey& survey = build.survey();
    EXPECT_EQ(ground_height(survey), 0);
    EXPECT_EQ(zone_of(survey.gaps[0], survey, 0), WorkZone::outside_high);
    EXPECT_EQ(zone_of(survey.gaps[1], survey, 0), WorkZone::outside_high);
    EXPECT_EQ(zone_of(survey.gaps[2], survey, 0), WorkZone::outside_low);
    EXPECT_EQ(zone_of(survey.gaps[3], survey, 0), WorkZone::outside_high) << "into the attic";
    SurveyBuilder sunk = house();
    sunk.slot("well", "yard", "wall", 1).at(0, 0, -1.2);
    EXPECT_EQ(ground_height(sunk.survey()), -1.2);
}

TEST(WorkOrder, UnknownHeightsAreWorkedFromTheGround) {
    SurveyBuilder build = house();
    build.slot("somewhere", "yard", "wall", 1);
    EXPECT_EQ(zone_of(build.survey().gaps[0], build.survey(), ground_height(build.survey())), WorkZone::outside_low);
}

}  // namespace
}  // namespace seamward
