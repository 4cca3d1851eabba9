// SPDX-License-Identifier: GPL-3.0-or-later
// What is outside of an outside wall.
#include <gtest/gtest.h>

#include "tests/house/plain_house.h"

namespace seamward::test {
namespace {

/// The kind of the space that a hole at that height leads to from the wall's air.
SpaceKind outside_of_hole(const std::string& up, const std::string& story) {
    PlainHouse plain;
    plain.stories = "[{height: 2.5 m}, {height: 2.5 m}]";
    plain.rooms = "[{id: room, at: [2 m, 2 m]}, {id: upper, at: [2 m, 2 m], story: 2}]";
    plain.more = "features: [{id: hole, type: outside-hole, on: wall-1, along: 2.3 m, up: " + up + ", story: " + story + "}]\n";
    const House house = plain.build(Make::survey);
    const Gap& gap = house.survey.gaps.at(0);
    return house.survey[gap.between[0]].kind;
}

/// Plates end at 2.513 m; the deck lies 0.11 m over them, 0.2 m less at 0.6 m out, and the fascia is 0.16 m high: the soffit
/// hangs at 2.263 m over the floor of the story under the roof. The story below has no eave and leads outdoors at any height.
TEST(WallSides, OnlyTheUppermostStoryLeadsIntoTheEave) {
    EXPECT_EQ(outside_of_hole("2 m", "2"), SpaceKind::outdoors);
    EXPECT_EQ(outside_of_hole("2.35 m", "2"), SpaceKind::cavity);
    EXPECT_EQ(outside_of_hole("2 m", "1"), SpaceKind::outdoors);
    EXPECT_EQ(outside_of_hole("2.35 m", "1"), SpaceKind::outdoors);
}

}  // namespace
}  // namespace seamward::test
