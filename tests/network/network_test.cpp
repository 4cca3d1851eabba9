// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/network.h"

#include <gtest/gtest.h>

#include <vector>

#include "tests/support/survey_builder.h"

namespace seamward::test {
namespace {

SurveyBuilder small_house() {
    SurveyBuilder house;
    house.outdoors("yard")
        .cavity("wall")
        .living("kitchen")
        .space("drain", SpaceKind::cavity, true)
        .space("unit-2", SpaceKind::living, true);
    house.slot("screed", "yard", "wall", 1.2)
        .slot("sink", "wall", "kitchen", 2.5)
        .slot("vent", "wall", "yard", 5)
        .slot("shut", "drain", "kitchen", 0);
    return house;
}

TEST(Network, ListsTheWaysOutOfEachSpaceWithParallelGaps) {
    const SurveyBuilder house = small_house();
    const Network network = make_network(house.survey(), [](const Gap& gap) { return !is_shut(gap.shape); });
    ASSERT_EQ(network.space_count(), 5U);
    ASSERT_EQ(network.links().size(), 3U);
    std::vector<std::string> out_of_wall;
    for (const Arc& arc : network.arcs(house["wall"])) {
        out_of_wall.push_back(house.survey()[network.links()[arc.link].gap].id + " to " + house.survey()[arc.to].id);
    }
    EXPECT_EQ(out_of_wall, (std::vector<std::string>{"screed to yard", "sink to kitchen", "vent to yard"}));
    EXPECT_TRUE(network.arcs(house["drain"]).empty());
    EXPECT_EQ(network.links()[1].width, 0.0025);
}

TEST(Network, OfNoSpacesIsEmpty) {
    const Network network(0, {});
    EXPECT_EQ(network.space_count(), 0U);
    EXPECT_TRUE(network.links().empty());
}

TEST(Roles, OutdoorsAndSourcesStartAndLivingSpacesEndAndNeitherStandsBetween) {
    const SurveyBuilder house = small_house();
    const Roles roles(house.survey(), {});
    const auto role = [&](const std::string& id) {
        return std::string(roles.starts(house[id]) ? "start " : "") + (roles.ends(house[id]) ? "end " : "") +
               (roles.passable(house[id]) ? "middle" : "");
    };
    EXPECT_EQ(role("yard"), "start ");
    EXPECT_EQ(role("wall"), "middle");
    EXPECT_EQ(role("kitchen"), "end ");
    EXPECT_EQ(role("drain"), "start ");
    EXPECT_EQ(role("unit-2"), "start end ");
    EXPECT_EQ(roles.start_spaces().size(), 3U);
    EXPECT_EQ(roles.end_spaces().size(), 2U);
}

TEST(Roles, ChosenEndsReplaceLivingSpacesButThoseStillBlockTheMiddle) {
    const SurveyBuilder house = small_house();
    const std::vector<SpaceIndex> to{house["wall"]};
    const Roles roles(house.survey(), to);
    EXPECT_TRUE(roles.ends(house["wall"]));
    EXPECT_TRUE(roles.passable(house["wall"]));
    EXPECT_FALSE(roles.ends(house["kitchen"]));
    EXPECT_FALSE(roles.passable(house["kitchen"]));
}

TEST(Roles, EveryKindOfSpaceIsPassableUnlessItStartsOrIsLivedIn) {
    SurveyBuilder house;
    house.space("garage", SpaceKind::attached).space("cells", SpaceKind::harborage).space("attic", SpaceKind::cavity, true);
    const Roles roles(house.survey(), {});
    EXPECT_TRUE(roles.passable(house["garage"]));
    EXPECT_TRUE(roles.passable(house["cells"]));
    EXPECT_FALSE(roles.passable(house["attic"]));
}

}  // namespace
}  // namespace seamward::test
