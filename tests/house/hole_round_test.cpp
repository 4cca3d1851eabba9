// SPDX-License-Identifier: GPL-3.0-or-later
// Holes round parts leave the stated width at corners too, and what goes through plates clears what stands on them.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "house/cutter.h"
#include "house/framing.h"
#include "tests/house/plain_house.h"

namespace seamward::test {
namespace {

double distance(const Loop& loop, Point2 p) {
    double least = 1e9;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 a = loop[i], along = loop[(i + 1) % loop.size()] - a;
        const Point2 off = a + along * std::clamp(dot(p - a, along) / dot(along, along), 0.0, 1.0) - p;
        least = std::min(least, std::sqrt(dot(off, off)));
    }
    return least;
}

/// Diameter of the largest ball in the gap whose middle lies between two points.
double widest_ball(const Loop& part, const Loop& hole, Point2 from, Point2 to) {
    constexpr int steps = 2000;
    double widest = 0;
    for (int i = 0; i <= steps; ++i) {
        const Point2 p = from + (to - from) * (static_cast<double>(i) / steps);
        widest = std::max(widest, 2 * std::min(distance(part, p), distance(hole, p)));
    }
    return widest;
}

TEST(HoleRound, IsNowhereWiderThanStatedAndNowhereNarrower) {
    const Loop plate = rectangle({-0.15, 0.2}, {0.15, 0.35}), pipe = around_circle({0.3, 0.1}, 0.03, pipe_sides);
    for (const Loop& part : {plate, pipe}) {
        for (const double width : {0.0003, 0.003, 0.0064, 0.012, 0.025, 0.045}) {
            const Loop hole = hole_round(part, width);
            for (const Point2 corner : part) EXPECT_GE(distance(hole, corner), width - 1e-12) << width;
            for (const Point2 corner : hole) {
                // A ball is largest where two sides of the hole meet, on the way to the part's nearest corner.
                const Point2 nearest = *std::min_element(part.begin(), part.end(), [&](Point2 a, Point2 b) {
                    return dot(a - corner, a - corner) < dot(b - corner, b - corner);
                });
                const double widest = widest_ball(part, hole, corner, nearest);
                EXPECT_LE(widest, width + 2.1e-5) << width;
                EXPECT_GE(widest, width * 0.999) << width;
            }
        }
    }
}

TEST(HoleRound, WithoutWidthIsThePartItself) {
    const Loop plate = rectangle({-0.15, 0.2}, {0.15, 0.35}), pipe = around_circle({0.3, 0.1}, 0.03, pipe_sides);
    EXPECT_EQ(hole_round(plate, 0), plate);
    EXPECT_EQ(hole_round(pipe, 0), pipe);
}

TEST(HolesThroughPlates, KeepClearOfRimAndBlocking) {
    PlainHouse plain;
    plain.foundation = "{kind: crawl-space}";
    plain.more =
        "walls: [south, east, north, west]\nfeatures:\n"
        "  - {id: up, type: top-plate-hole, on: south, along: 3 m, gap: 16 mm}\n"
        "  - {id: down, type: bottom-plate-hole, on: south, along: 5 m, gap: 16 mm}\n";
    const House house = plain.build();
    ASSERT_EQ(house.survey.gaps.size(), 2u);
    for (const Gap& gap : house.survey.gaps) {
        ASSERT_TRUE(gap.at.has_value()) << gap.id;
        EXPECT_GT(gap.at->y - 0.008, framing::stud) << gap.id;
        EXPECT_LT(gap.at->y + 0.008, PlainHouse::studs) << gap.id;
    }
}

}  // namespace
}  // namespace seamward::test
