// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/inner_way.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/house/ways.h"

namespace seamward::test {
namespace {

TEST(InnerWay, IsStraightWhereNothingStandsBetween) {
    const Figure square{box(0, 0, 4, 3), {}};
    const Way way = shortest_inside(square, {0.5, 0.5}, {3.5, 2.5}, 0.015);
    EXPECT_EQ(way, (Way{{0.5, 0.5}, {3.5, 2.5}}));
    EXPECT_EQ(shortest_inside(square, {1, 1}, {1, 1}, 0.015).size(), 2U);
}

TEST(InnerWay, GoesRoundAWindowOffItsCorners) {
    const Figure wall{box(0, 0, 4, 3), {{{1, 1}, {1, 2.5}, {3, 2.5}, {3, 1}}}};
    const Way way = shortest_inside(wall, {0.5, 1.5}, {3.5, 1.5}, 0.015);
    expect_inside(wall, way);
    ASSERT_EQ(way.size(), 4U);  // below: it is 0.5 m down and 1 m up
    for (const std::size_t i : {1U, 2U}) EXPECT_NEAR(distance_to_edges(wall, way[i]), 0.015 * std::numbers::sqrt2, 1e-12);
    EXPECT_NEAR(way[1].y, 0.985, 1e-12);
    EXPECT_NEAR(way[2].y, 0.985, 1e-12);
    EXPECT_NEAR(length_of(way), 2 + 2 * std::hypot(0.5, 0.5), 0.06);
}

TEST(InnerWay, TurnsRoundTheCornersOfAnL) {
    const Figure corner{{{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 3}, {0, 3}}, {}};
    const Way way = shortest_inside(corner, {2.9, 0.9}, {0.9, 2.9}, 0.01);
    expect_inside(corner, way);
    ASSERT_EQ(way.size(), 3U);
    EXPECT_NEAR(way[1].x, 0.99, 1e-12);
    EXPECT_NEAR(way[1].y, 0.99, 1e-12);
}

TEST(InnerWay, KeepsToTheMiddleOfANarrowPassage) {
    const Figure neck{{{0, 0}, {2, 0}, {2, 1}, {1.002, 1}, {1.002, 2}, {2, 2}, {2, 3}, {0, 3}, {0, 2}, {1, 2}, {1, 1}, {0, 1}},
                      {}};
    const Way way = shortest_inside(neck, {0.2, 0.5}, {1.8, 2.5}, 0.015);
    expect_inside(neck, way);
    ASSERT_EQ(way.size(), 4U);
    for (const std::size_t i : {1U, 2U}) EXPECT_NEAR(way[i].x, 1.001, 1e-12);
    EXPECT_NEAR(length_of(way), 1 + 2 * std::hypot(0.8, 0.5), 0.01);
}

TEST(InnerWay, MovesItsEndsInside) {
    const Figure square{box(0, 0, 4, 3), {}};
    const Way out = shortest_inside(square, {-0.02, 1}, {4.01, 3.01}, 0.015);
    expect_inside(square, out);
    EXPECT_NEAR(out.front().x, 0.015, 1e-12);
    EXPECT_NEAR(out.front().y, 1, 1e-12);
    EXPECT_NEAR(out.back().x, 3.985, 1e-12);
    EXPECT_NEAR(out.back().y, 2.985, 1e-12);
    const Way on_edge = shortest_inside(square, {0, 1}, {4, 0}, 0.015);
    expect_inside(square, on_edge);
    const Figure with_hole{box(0, 0, 4, 3), {box(1, 1, 2, 2)}};
    const Way from_hole = shortest_inside(with_hole, {1.9, 1.4}, {3, 1.4}, 0.015);
    expect_inside(with_hole, from_hole);
    EXPECT_NEAR(from_hole.front().x, 2.015, 1e-12);
}

TEST(InnerWay, FindsTheNearestPlaceInside) {
    const Figure square{box(0, 0, 4, 3), {}};
    EXPECT_EQ(nearest_inside(square, {1, 2}, 0.1), (Point2{1, 2}));
    const std::optional<Point2> moved = nearest_inside(square, {1, 5}, 0.1);
    ASSERT_TRUE(moved);
    EXPECT_NEAR(moved->x, 1, 1e-12);
    EXPECT_NEAR(moved->y, 2.9, 1e-12);
    EXPECT_FALSE(nearest_inside(Figure{}, {1, 1}, 0.1));
    EXPECT_FALSE(nearest_inside(square, {std::nan(""), 1}, 0.1));
    // Narrower than twice the margin: in its middle.
    const std::optional<Point2> thin = nearest_inside(Figure{box(0, 0, 4, 0.01), {}}, {2, 1}, 0.1);
    ASSERT_TRUE(thin);
    EXPECT_NEAR(thin->x, 2, 1e-12);
    EXPECT_NEAR(thin->y, 0.005, 1e-12);
    // Where a door stands at the nearest edge: beside or over it.
    const Figure wall{box(0, 0, 4, 3), {box(1, -1, 2, 1)}};
    const std::optional<Point2> beside = nearest_inside(wall, {1.2, -0.1}, 0.1);
    ASSERT_TRUE(beside);
    EXPECT_TRUE(inside(wall, *beside));
    EXPECT_GT(distance_to_edges(wall, *beside), 0.09);
}

/// A figure with many sides is searched piece by piece. The long slope passes near the start, but what lies ahead of it is a post
/// 2 m off; the slope itself is met after 8 m.
TEST(InnerWay, LooksAheadToTheNearestOfManySides) {
    Figure triangle{{{0, 0}, {10, 0}, {0, 10}}, {box(3, 0.9, 3.2, 1.1)}};
    Loop round;
    for (int i = 0; i < 300; ++i) {
        const double angle = 2 * std::numbers::pi * i / 300;
        round.push_back({2 + 0.5 * std::cos(angle), 5 + 0.5 * std::sin(angle)});
    }
    triangle.holes.push_back(round);
    EXPECT_NEAR(room_ahead(triangle, {1, 1}, {1, 0}), 2, 1e-12);
    triangle.holes.erase(triangle.holes.begin());
    EXPECT_NEAR(room_ahead(triangle, {1, 1}, {1, 0}), 8, 1e-12);
}

TEST(InnerWay, DoesNotCareWhichWayRoundLoopsRun) {
    const Loop outline = box(0, 0, 4, 3), hole = box(1, 0.2, 2, 2.5);
    const Way way = shortest_inside({outline, {hole}}, {0.5, 1}, {3.5, 1}, 0.015);
    const Loop turned_outline(outline.rbegin(), outline.rend()), turned_hole(hole.rbegin(), hole.rend());
    const Figure turned{turned_outline, {turned_hole}};
    expect_inside(turned, way);
    EXPECT_NEAR(length_of(shortest_inside(turned, {0.5, 1}, {3.5, 1}, 0.015)), length_of(way), 1e-12);
}

/// A door reaches down to the foot of the wall, and windows may touch each other.
TEST(InnerWay, AllowsHolesThatOverlapTheOutlineAndEachOther) {
    const Figure door{box(0, 0, 6, 3), {box(2, 0, 3, 2), box(3, 1, 4, 2.2), box(4.5, -0.5, 5, 2.5)}};
    const Way way = shortest_inside(door, {1, 0.5}, {5.5, 0.5}, 0.015);
    ASSERT_GT(way.size(), 3U);
    for (std::size_t i = 1; i < way.size(); ++i) {
        for (int part = 0; part <= 100; ++part) {
            const Point2 p = way[i - 1] + (way[i] - way[i - 1]) * (part / 100.0);
            EXPECT_TRUE(inside(door, p)) << p.x << ", " << p.y;
        }
    }
    EXPECT_LT(length_of(way), 8.6);
}

TEST(InnerWay, IsStraightWhereThereIsNoWay) {
    const Figure cut{box(0, 0, 4, 3), {box(1, -1, 2, 4)}};
    EXPECT_EQ(shortest_inside(cut, {0.5, 1}, {3, 1}, 0.015), (Way{{0.5, 1}, {3, 1}}));
    EXPECT_EQ(shortest_inside(Figure{}, {0, 1}, {3, 1}, 0.015), (Way{{0, 1}, {3, 1}}));
    EXPECT_EQ(shortest_inside({{{0, 0}, {1, 1}}, {}}, {0, 1}, {3, 1}, 0.015), (Way{{0, 1}, {3, 1}}));
}

TEST(InnerWay, StandsRepeatedPointsSpikesAndNumbersThatAreNone) {
    const double none = std::nan("");
    const Figure odd{{{0, 0}, {0, 0}, {4, 0}, {4, 0}, {4, 3}, {2, 3}, {2, 0.5}, {2, 3}, {0, 3}, {0, 0}, {none, 1}},
                     {{{1, 1}}, {{3, 1}, {3, 1}, {3, 1}}, {}}};
    const Way way = shortest_inside(odd, {1, 2.5}, {3, 2.5}, 0.015);
    EXPECT_EQ(way.size(), 3U);  // under the spike
    EXPECT_LT(way[1].y, 0.5);
    EXPECT_GT(way[1].y, 0.4);
    EXPECT_EQ(shortest_inside(odd, {none, 1}, {3, 2.5}, 0.015).size(), 2U);
    EXPECT_EQ(shortest_inside(odd, {1, 2.5}, {3, 2.5}, 0).size(), 3U);
}

}  // namespace
}  // namespace seamward::test
