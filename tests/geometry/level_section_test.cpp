// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/level_section.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/plain_solids.h"

namespace seamward {
namespace {

using test::box_mesh;

double area_of(const std::vector<Loop>& loops) {
    double area = 0;
    for (const Loop& loop : loops) area += doubled_area(loop) / 2;
    return area;
}

TEST(LevelSection, BoxIsCutToItsPlan) {
    const auto loops = level_section(box_mesh({1, 2, 0}, {4, 4, 3}), 1.2);
    ASSERT_EQ(loops.size(), 1U);
    EXPECT_NEAR(area_of(loops), 6, 1e-12);  // counterclockwise
    EXPECT_TRUE(level_section(box_mesh({1, 2, 0}, {4, 4, 3}), 3.1).empty());
}

TEST(LevelSection, HollowSolidHasItsHoleTheOtherWayRound) {
    TriangleMesh hollow = box_mesh({0, 0, 0}, {4, 4, 4});
    const TriangleMesh air = box_mesh({1, 1, 1}, {2, 2, 2});
    hollow.points.insert(hollow.points.end(), air.points.begin(), air.points.end());
    for (const auto& [a, b, c] : air.triangles) hollow.triangles.push_back({8 + a, 8 + c, 8 + b});
    EXPECT_NEAR(area_of(level_section(hollow, 1.5)), 15, 1e-12);
    EXPECT_NEAR(area_of(level_section(hollow, 0.5)), 16, 1e-12);
}

TEST(LevelSection, CornersAtItsHeightDoNotOpenLoops) {
    // Corners and level faces at the very height of the cut, in many places.
    const TriangleMesh ring = test::ring_mesh(24, 12, 2, 0.5);
    for (const Point& corner : ring.points) {
        for (const Loop& loop : level_section(ring, corner.z)) EXPECT_GE(loop.size(), 3U);
    }
    const double radius = 2, thick = 0.5;
    const double whole = std::abs(area_of(level_section(ring, 0)));
    EXPECT_NEAR(whole, std::numbers::pi * ((radius + thick) * (radius + thick) - (radius - thick) * (radius - thick)), 0.6);
    EXPECT_TRUE(level_section(box_mesh({0, 0, 0}, {1, 1, 1}), 0).empty());  // it lies above
    EXPECT_NEAR(area_of(level_section(box_mesh({0, 0, 0}, {1, 1, 1}), 1)), 1, 1e-12);
}

TEST(LevelSection, OpenMeshesKeepWhatCloses) {
    TriangleMesh open = box_mesh({0, 0, 0}, {1, 1, 1});
    open.triangles.resize(4);  // bottom and top only
    EXPECT_TRUE(level_section(open, 0.5).empty());
    open = box_mesh({0, 0, 0}, {1, 1, 1});
    open.triangles.pop_back();
    EXPECT_TRUE(level_section(open, 0.5, 1e-3).empty());
    EXPECT_EQ(level_section(open, 0.5, 2).size(), 1U);
}

TEST(BelowLevel, KeepsTheLowerPartOpenAtTheCut) {
    const TriangleMesh lower = below_level(box_mesh({0, 0, 0}, {2, 1, 3}), 1.2);
    double area = 0, top = 0;
    for (const auto& [a, b, c] : lower.triangles)
        area += length(cross(lower.points[b] - lower.points[a], lower.points[c] - lower.points[a])) / 2;
    for (const Point& p : lower.points) top = std::max(top, p.z);
    EXPECT_NEAR(area, 2 + 1.2 * 6, 1e-12);  // floor and four sides
    EXPECT_EQ(top, 1.2);
}

TEST(FilledCavities, AirBetweenLayersIsFilledAndRoomsAreNot) {
    const auto cut = [](double low_y, double high_y, double low_x = 0, double high_x = 5) {
        return level_section(box_mesh({low_x, low_y, 0}, {high_x, high_y, 3}), 1.2).front();
    };
    const std::vector<Loop> wall{cut(0, 0.02), cut(0.11, 0.12)};
    EXPECT_NEAR(area_of(filled_cavities(wall, 0.2)), 5 * 0.09, 1e-9);
    EXPECT_TRUE(filled_cavities(wall, 0.08).empty());
    const std::vector<Loop> apart{cut(0, 0.02), cut(2, 2.02)};
    EXPECT_TRUE(filled_cavities(apart, 0.2).empty());
    // Only where both stand: a layer that ends halfway.
    const std::vector<Loop> half{cut(0, 0.02), cut(0.11, 0.12, 3, 9)};
    EXPECT_NEAR(area_of(filled_cavities(half, 0.2)), 2 * 0.09, 1e-9);
}

}  // namespace
}  // namespace seamward
