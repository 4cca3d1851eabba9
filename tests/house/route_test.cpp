// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/route.h"

#include <gtest/gtest.h>

#include "tests/house/ways.h"

namespace seamward::test {
namespace {

/// A yard, the cavity of a wall that runs along x at y = 0 with a window in it, and a room beyond it.
struct SmallHouse {
    House house;
    SpaceIndex yard{0}, wall{1}, room{2};
    GapIndex bibb{0}, outlet{1};

    SmallHouse() {
        for (const char* id : {"yard", "wall", "room"}) {
            Space space;
            space.id = id;
            house.survey.spaces.push_back(space);
        }
        house.survey.spaces[0].kind = SpaceKind::outdoors;
        house.survey.spaces[2].kind = SpaceKind::living;
        house.middles.resize(3);
        house.middles[1] = {{{0, 0, 0}, {1, 0, 0}, {0, 0, 1}, {0, -1, 0}}, {box(0, 0, 6, 2.5), {box(2, 0.5, 4, 2)}}};
        house.middles[2] = {{{0, 0, 1.2}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}}, {box(0, 0.1, 6, 4), {}}};
        add("bibb", yard, wall, {{1, -0.06, 0.6}, {1, -0.03, 0.6}});
        add("outlet", wall, room, {{5, 0.04, 0.6}, {5, 0.07, 0.6}});
    }

    GapIndex add(const char* id, SpaceIndex from, SpaceIndex to, std::vector<Point> through) {
        Gap gap;
        gap.id = id;
        gap.between = {from, to};
        house.survey.gaps.push_back(gap);
        const GapIndex index{static_cast<std::uint32_t>(house.survey.gaps.size() - 1)};
        house.places.push_back({index, std::move(through)});
        return index;
    }

    [[nodiscard]] std::vector<Point> from_yard_to_room() const {
        return route(house, std::vector{bibb, outlet}, std::vector{yard, wall, room});
    }
};

void expect_at(const Point& p, double x, double y, double z) {
    EXPECT_NEAR(p.x, x, 1e-9);
    EXPECT_NEAR(p.y, y, 1e-9);
    EXPECT_NEAR(p.z, z, 1e-9);
}

TEST(Route, GoesThroughEachGapAndRoundTheWindow) {
    const SmallHouse small;
    const std::vector<Point> line = small.from_yard_to_room();
    ASSERT_EQ(line.size(), 11U);
    expect_at(line[0], 1, -0.56, 0.6);  // half a meter before the gap
    expect_at(line[1], 1, -0.06, 0.6);
    expect_at(line[2], 1, -0.03, 0.6);
    expect_at(line[3], 1, 0, 0.6);  // straight to the middle of the wall
    expect_at(line[4], 1.985, 0, 0.485);
    expect_at(line[5], 4.015, 0, 0.485);
    expect_at(line[6], 5, 0, 0.6);
    expect_at(line[7], 5, 0.04, 0.6);
    expect_at(line[8], 5, 0.07, 0.6);
    expect_at(line[9], 5, 0.67, 0.6);   // on into the room
    expect_at(line[10], 5, 0.67, 1.2);  // and up to its middle
}

TEST(Route, TurnsAWayThatRunsTheOtherWay) {
    const SmallHouse small;
    const std::vector<Point> there = small.from_yard_to_room();
    const std::vector<Point> back =
        route(small.house, std::vector{small.outlet, small.bibb}, std::vector{small.room, small.wall, small.yard});
    ASSERT_EQ(back.size(), there.size());
    for (std::size_t i = 2; i + 1 < there.size(); ++i) {
        const Point& p = back[there.size() - 1 - i];
        if (i < 9) expect_at(p, there[i].x, there[i].y, there[i].z);
    }
    expect_at(back.back(), 1, -0.66, 0.6);
}

TEST(Route, CrossesASpaceWithoutAMiddleStraight) {
    SmallHouse small;
    small.house.middles[1].figure = {};
    const std::vector<Point> line = small.from_yard_to_room();
    ASSERT_EQ(line.size(), 7U);
    expect_at(line[2], 1, -0.03, 0.6);
    expect_at(line[3], 5, 0.04, 0.6);
    small.house.middles.clear();
    expect_at(small.from_yard_to_room().back(), 5, 0.67, 0.6);  // nothing says what the room's middle is
}

TEST(Route, PassesOneGapFromTheYardIntoARoom) {
    SmallHouse small;
    const GapIndex sweep = small.add("sweep", small.yard, small.room, {{1, -0.1, 0.01}, {1, 0.15, 0.01}});
    const std::vector<Point> line = route(small.house, std::vector{sweep}, std::vector{small.yard, small.room});
    ASSERT_EQ(line.size(), 5U);
    expect_at(line[0], 1, -0.6, 0.01);
    expect_at(line[3], 1, 0.75, 0.01);
    expect_at(line[4], 1, 0.75, 1.01);  // a meter toward the middle, no more
}

TEST(Route, StopsAtTheFarWallOfASmallRoom) {
    SmallHouse small;
    small.house.middles[2].figure = {box(0, 0.1, 6, 0.4), {}};
    const std::vector<Point> line = small.from_yard_to_room();
    expect_at(line.back(), 5, 0.385, 1.2);
}

TEST(Route, GoesNoFartherThanTheMiddle) {
    SmallHouse small;
    const GapIndex drain = small.add("drain", small.wall, small.room, {{3, 2, 0.9}, {3, 2, 1.1}});
    const std::vector<Point> line =
        route(small.house, std::vector{small.bibb, drain}, std::vector{small.yard, small.wall, small.room});
    expect_at(line.back(), 3, 2, 1.2);  // 0.1 m up, and not on to 1.7
    expect_at(line[line.size() - 2], 3, 2, 1.1);
}

/// A cavity is narrow: a line that ends in it stops at its middle.
TEST(Route, EndsInTheMiddleOfAWall) {
    const SmallHouse small;
    const std::vector<Point> line = route(small.house, std::vector{small.bibb}, std::vector{small.yard, small.wall});
    ASSERT_EQ(line.size(), 4U);
    expect_at(line[2], 1, -0.03, 0.6);
    expect_at(line[3], 1, 0, 0.6);
}

TEST(Route, MovesEndsIntoTheMiddleSurface) {
    SmallHouse small;
    // A hole in the bottom plate ends below the figure.
    small.house.places[1].through = {{5, 0, -0.01}, {5, 0, -0.1}};
    const std::vector<Point> line = small.from_yard_to_room();
    ASSERT_GE(line.size(), 7U);
    expect_at(line[3], 1, 0, 0.6);
    expect_at(line[4], 5, 0, 0.015);  // below the window, nothing to go round
    expect_at(line[5], 5, 0, -0.01);
    expect_at(line[6], 5, 0, -0.1);
}

TEST(Route, PassesAGapAddedByHandAtItsPoint) {
    SmallHouse small;
    small.house.places[1].through.clear();
    small.house.survey.gaps[1].at = Point{5, 0.05, 0.6};
    std::vector<Point> line = small.from_yard_to_room();
    ASSERT_GE(line.size(), 8U);
    expect_at(line[7], 5, 0.05, 0.6);
    small.house.survey.gaps[1].at.reset();
    line = small.from_yard_to_room();
    ASSERT_EQ(line.size(), 3U);  // where the second gap is nobody knows
    expect_at(line.back(), 1, -0.03, 0.6);
    small.house.places[0].through.clear();
    EXPECT_TRUE(small.from_yard_to_room().empty());
}

TEST(Route, GoesStraightPastAGapThatIsNowhere) {
    SmallHouse small;
    const GapIndex door = small.add("door", small.room, small.yard, {{3, 3.9, 0.6}, {3, 4.2, 0.6}});
    small.house.places[1].through.clear();
    const std::vector<Point> line = route(small.house, std::vector{small.bibb, small.outlet, door},
                                          std::vector{small.yard, small.wall, small.room, small.yard});
    ASSERT_EQ(line.size(), 6U);
    expect_at(line[2], 1, -0.03, 0.6);
    expect_at(line[3], 3, 3.9, 0.6);
    expect_at(line[5], 3, 4.8, 0.6);
}

TEST(Route, IsNothingWithoutGaps) {
    const SmallHouse small;
    EXPECT_TRUE(route(small.house, {}, std::vector{small.yard}).empty());
    EXPECT_TRUE(route(small.house, {}, {}).empty());
}

TEST(Route, RepeatsNoPoint) {
    SmallHouse small;
    small.house.places[0].through = {{1, -0.06, 0.6}, {1, -0.06, 0.6}, {1, 0, 0.6}, {1, 0, 0.6}};
    const std::vector<Point> line = small.from_yard_to_room();
    for (std::size_t i = 1; i < line.size(); ++i) EXPECT_GT(distance(line[i - 1], line[i]), 1e-9) << i;
    expect_at(line[0], 1, -0.56, 0.6);
}

}  // namespace
}  // namespace seamward::test
