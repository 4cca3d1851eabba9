// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/path_order.h"

#include <gtest/gtest.h>

#include "paths/trace.h"
#include "tests/support/brute_force.h"
#include "tests/support/survey_builder.h"

namespace seamward::test {
namespace {

std::vector<std::string> order_of(const Survey& survey) {
    std::vector<std::string> ids;
    for (const RankedPath& ranked : trace(survey, {}, RunContext()).paths) {
        std::string text;
        for (const GapIndex gap : ranked.path.gaps) text += (text.empty() ? "" : " ") + survey[gap].id;
        ids.push_back(text);
    }
    return ids;
}

SurveyBuilder yard_wall_room() {
    SurveyBuilder house;
    house.outdoors("yard").cavity("wall").cavity("attic").living("room");
    return house;
}

TEST(PathOrder, LargerPinchFirst) {
    SurveyBuilder house = yard_wall_room();
    house.slot("a", "yard", "room", 1.0).slot("b", "yard", "room", 1.1);
    EXPECT_EQ(order_of(house.survey()), (std::vector<std::string>{"b", "a"}));
}

TEST(PathOrder, ThenTheNextSmallestClearWidth) {
    SurveyBuilder house = yard_wall_room();
    house.slot("in", "yard", "wall", 1.0)
        .slot("x", "wall", "room", 3)
        .slot("y", "wall", "room", 4)
        .slot("up", "wall", "attic", 9)
        .slot("down", "attic", "room", 3.5);
    EXPECT_EQ(order_of(house.survey()), (std::vector<std::string>{"in y", "in up down", "in x"}));
}

TEST(PathOrder, AListThatHasRunOutTiesAndFewerGapsGoFirst) {
    SurveyBuilder house = yard_wall_room();
    house.slot("z", "yard", "room", 2).slot("a", "yard", "wall", 2).slot("b", "wall", "room", 8);
    EXPECT_EQ(order_of(house.survey()), (std::vector<std::string>{"z", "a b"}));
}

TEST(PathOrder, ThenTheShorterWhereEveryGapHasAPosition) {
    SurveyBuilder house = yard_wall_room();
    house.slot("in", "yard", "wall", 2).at(0, 0, 0);
    house.slot("a-far", "wall", "room", 2).at(3, 4, 0);
    house.slot("b-near", "wall", "room", 2).at(3, 3.9, 0);
    EXPECT_EQ(order_of(house.survey()), (std::vector<std::string>{"in b-near", "in a-far"}));
}

TEST(PathOrder, APathWithoutAllPositionsComesAfterEqualOnesWithThem) {
    SurveyBuilder house = yard_wall_room();
    house.slot("in", "yard", "wall", 2).at(0, 0, 0);
    house.slot("a-lost", "wall", "room", 2);
    house.slot("b-far", "wall", "room", 2).at(50, 0, 0);
    EXPECT_EQ(order_of(house.survey()), (std::vector<std::string>{"in b-far", "in a-lost"}));
}

TEST(PathOrder, ThenTheListOfGapIds) {
    SurveyBuilder house = yard_wall_room();
    house.slot("b", "yard", "wall", 2).slot("a", "yard", "wall", 2).slot("10", "wall", "room", 2).slot("9", "wall", "room", 2);
    EXPECT_EQ(order_of(house.survey()), (std::vector<std::string>{"a 10", "a 9", "b 10", "b 9"}));
}

TEST(PathOrder, EqualLengthsInAnotherUnitAreEqual) {
    SurveyBuilder house = yard_wall_room();
    house.slot("b", "yard", "room", 0);
    house.last().shape = Slot{0.0254 / 16, 1};
    house.slot("a", "yard", "room", 1.5875);
    EXPECT_EQ(order_of(house.survey()), (std::vector<std::string>{"a", "b"}));
}

TEST(PinchGap, IsTheFirstOfEqualsFromTheStart) {
    SurveyBuilder house = yard_wall_room();
    house.slot("wide", "yard", "attic", 5).slot("one", "attic", "wall", 2).slot("two", "wall", "room", 2);
    const Trace result = trace(house.survey(), {}, RunContext());
    ASSERT_EQ(result.paths.size(), 1U);
    EXPECT_EQ(house.survey()[result.paths[0].pinch_gap].id, "one");
}

TEST(PathKey, KnowsTheLengthThroughTheGapsInNanometers) {
    SurveyBuilder house = yard_wall_room();
    house.slot("in", "yard", "wall", 2).at(0, 0, 0);
    house.slot("up", "wall", "attic", 2).at(0, 3, 4);
    house.slot("down", "attic", "room", 2).at(0.5, 3, 4);
    const EntryPath path = all_paths(house.survey(), {}, [](const Gap&) { return true; }).at(0);
    EXPECT_EQ(PathKey(house.survey(), path).length(), std::optional<std::int64_t>(5'500'000'000));
}

}  // namespace
}  // namespace seamward::test
