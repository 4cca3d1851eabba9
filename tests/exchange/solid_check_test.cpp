// SPDX-License-Identifier: GPL-3.0-or-later
// The judge of solids judges rightly: closed forms of boxes, and one fault of each kind.
#include "tests/support/solid_check.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/exchange/sample_parts.h"

namespace seamward::test {
namespace {

TEST(SolidCheck, ABoxIsAsLargeAsItIs) {
    const SolidFacts facts = facts_of(box({1, -2, 3}, {1.5, 1, 5}));
    EXPECT_TRUE(facts.closed);
    EXPECT_EQ(facts.self_intersects, false);
    EXPECT_EQ(facts.flat, 0U);
    EXPECT_TRUE(facts.bounds_a_volume);
    EXPECT_NEAR(facts.volume, 0.5 * 3 * 2, 1e-12);
    EXPECT_NEAR(facts.area, 2 * (0.5 * 3 + 3 * 2 + 2 * 0.5), 1e-12);
    EXPECT_EQ(facts.shell_volumes.size(), 1U);
    EXPECT_EQ(facts.bounds.lowest.x, 1);
    EXPECT_EQ(facts.bounds.lowest.y, -2);
    EXPECT_EQ(facts.bounds.lowest.z, 3);
    EXPECT_EQ(facts.bounds.highest.x, 1.5);
    EXPECT_EQ(facts.bounds.highest.y, 1);
    EXPECT_EQ(facts.bounds.highest.z, 5);
    EXPECT_EQ(fault_of_solid(box({1, -2, 3}, {1.5, 1, 5})), "");
}

TEST(SolidCheck, ABoxWithAHoleIsOneShell) {
    const TriangleMesh mesh = tube({0, 0, 0}, {4, 3, 2}, 0.5);
    const SolidFacts facts = facts_of(mesh);
    EXPECT_EQ(fault_of_solid(mesh), "");
    EXPECT_EQ(facts.shell_volumes.size(), 1U);
    EXPECT_NEAR(facts.volume, (4 * 3 - 3 * 2) * 2, 1e-12);
    EXPECT_NEAR(facts.area, 2 * (4 * 3 - 3 * 2) + 2 * (4 + 3) * 2 + 2 * (3 + 2) * 2, 1e-12);
}

TEST(SolidCheck, ShellsAreCountedAndMeasured) {
    const TriangleMesh mesh = joined(box({0, 0, 0}, {1, 1, 1}), joined(box({2, 0, 0}, {4, 1, 1}), box({5, 0, 0}, {6, 3, 1})));
    const SolidFacts facts = facts_of(mesh);
    EXPECT_EQ(fault_of_solid(mesh), "");
    ASSERT_EQ(facts.shell_volumes.size(), 3U);
    EXPECT_NEAR(facts.shell_volumes[0], 1, 1e-12);
    EXPECT_NEAR(facts.shell_volumes[1], 2, 1e-12);
    EXPECT_NEAR(facts.shell_volumes[2], 3, 1e-12);
    EXPECT_NEAR(facts.volume, 6, 1e-12);
}

TEST(SolidCheck, FindsAMissingTriangle) {
    for (std::size_t i = 0; i < 12; ++i) {
        TriangleMesh mesh = box({0, 0, 0}, {1, 1, 1});
        mesh.triangles.erase(mesh.triangles.begin() + static_cast<std::ptrdiff_t>(i));
        EXPECT_FALSE(facts_of(mesh).closed) << i;
        EXPECT_EQ(facts_of(mesh).self_intersects, false) << i;
        EXPECT_FALSE(facts_of(mesh).bounds_a_volume) << i;
        EXPECT_EQ(fault_of_solid(mesh), "it is not closed") << i;
    }
    EXPECT_FALSE(facts_of({}).closed);
}

TEST(SolidCheck, FindsATriangleThatFacesTheOtherWay) {
    TriangleMesh mesh = box({0, 0, 0}, {1, 1, 1});
    std::swap(mesh.triangles[3][0], mesh.triangles[3][1]);
    EXPECT_FALSE(facts_of(mesh).closed);
}

TEST(SolidCheck, PointsInOnePlaceDoNotClose) {
    TriangleMesh mesh = box({0, 0, 0}, {1, 1, 1});
    mesh.points.push_back(mesh.points[mesh.triangles[0][0]]);
    mesh.triangles[0][0] = 8;
    EXPECT_FALSE(facts_of(mesh).closed);
}

TEST(SolidCheck, ATriangleWithOneCornerTwiceDoesNotClose) {
    TriangleMesh mesh = box({0, 0, 0}, {1, 1, 1});
    mesh.points.push_back({3, 3, 3});
    mesh.points.push_back({4, 3, 3});
    mesh.triangles.push_back({8, 9, 9});  // 8 to 9, 9 to 9, 9 to 8
    const SolidFacts facts = facts_of(mesh);
    EXPECT_FALSE(facts.closed);
    EXPECT_FALSE(facts.self_intersects.has_value());
    EXPECT_EQ(facts.flat, 1U);
}

TEST(SolidCheck, FindsAThirdTriangleAtAnEdge) {
    TriangleMesh mesh = box({0, 0, 0}, {1, 1, 1});
    mesh.triangles.push_back(mesh.triangles[0]);
    EXPECT_FALSE(facts_of(mesh).closed);
    EXPECT_FALSE(facts_of(mesh).self_intersects.has_value());
    // Two boxes that share the points of an edge.
    TriangleMesh two = joined(box({0, 0, 0}, {1, 1, 1}), box({1, 1, 0}, {2, 2, 1}));
    for (auto& corners : two.triangles) {
        for (auto& corner : corners) corner = corner == 8 ? 3 : corner == 12 ? 7 : corner;
    }
    EXPECT_NE(fault_of_solid(two), "");
}

TEST(SolidCheck, FindsSolidsThatFaceInward) {
    const TriangleMesh mesh = turned(box({0, 0, 0}, {1, 2, 3}));
    EXPECT_TRUE(facts_of(mesh).closed);
    EXPECT_NEAR(facts_of(mesh).volume, -6, 1e-12);
    EXPECT_EQ(fault_of_solid(mesh), "it is inside out");
    const TriangleMesh half = joined(box({0, 0, 0}, {1, 2, 3}), turned(box({2, 0, 0}, {3, 1, 1})));
    EXPECT_NEAR(facts_of(half).volume, 5, 1e-12);
    EXPECT_NE(fault_of_solid(half), "");
    EXPECT_NE(fault_of_solid(half, true), "");
}

TEST(SolidCheck, TellsHollowsFromShellsInEachOther) {
    const TriangleMesh outer = box({0, 0, 0}, {3, 3, 3});
    const TriangleMesh inner = box({1, 1, 1}, {2, 2, 2});
    const TriangleMesh hollow = joined(outer, turned(inner));
    EXPECT_NEAR(facts_of(hollow).volume, 26, 1e-12);
    EXPECT_EQ(fault_of_solid(hollow, true), "");
    EXPECT_EQ(fault_of_solid(hollow), "one of its shells is inside out");
    EXPECT_EQ(fault_of_solid(joined(outer, inner), true), "its shells lie in one another without being hollows");
}

TEST(SolidCheck, FindsSelfIntersections) {
    const TriangleMesh crossing = joined(box({0, 0, 0}, {2, 2, 2}), box({1, 1, 1}, {3, 3, 3}));
    EXPECT_TRUE(facts_of(crossing).closed);
    EXPECT_EQ(facts_of(crossing).self_intersects, true);
    EXPECT_EQ(fault_of_solid(crossing), "it intersects itself");
    TriangleMesh pushed_through = box({0, 0, 0}, {1, 1, 1});
    pushed_through.points[0] = {0.5, 0.5, 1.5};
    EXPECT_EQ(fault_of_solid(pushed_through), "it intersects itself");
}

/// Predicates are exact: a nanometer apart is apart, and faces, edges and corners that touch do touch.
TEST(SolidCheck, TellsTouchingFromAlmostTouching) {
    const TriangleMesh left = box({0.1, 0.1, 0.1}, {0.3, 0.7, 0.9});
    EXPECT_EQ(facts_of(joined(left, box({0.3, 0.2, 0.2}, {0.5, 0.4, 0.4}))).self_intersects, true);
    EXPECT_EQ(facts_of(joined(left, box({0.3, 0.7, 0.1}, {0.5, 0.9, 0.9}))).self_intersects, true);
    EXPECT_EQ(facts_of(joined(left, box({0.3, 0.7, 0.9}, {0.5, 0.9, 1.1}))).self_intersects, true);
    EXPECT_EQ(facts_of(joined(left, box({0.3 + 1e-9, 0.2, 0.2}, {0.5, 0.4, 0.4}))).self_intersects, false);
}

TEST(SolidCheck, FindsFlatTriangles) {
    TriangleMesh mesh = box({0, 0, 0}, {1, 1, 1});
    // A point in the middle of an edge; the triangle between it and the edge has no area.
    mesh.points.push_back({0, 0, 0.5});
    mesh.triangles[0] = {0, 8, 6};
    mesh.triangles.push_back({8, 4, 6});
    mesh.triangles.push_back({0, 4, 8});
    const SolidFacts facts = facts_of(mesh);
    EXPECT_TRUE(facts.closed);
    EXPECT_EQ(facts.flat, 1U);
    EXPECT_EQ(facts.self_intersects, true);
    EXPECT_NEAR(facts.volume, 1, 1e-12);
    EXPECT_EQ(fault_of_solid(mesh), "1 of its triangles have no area");
}

TEST(SolidCheck, JudgesNothingWithCornersThatAreNoPoints) {
    TriangleMesh mesh = box({0, 0, 0}, {1, 1, 1});
    mesh.triangles[4][1] = 8;
    EXPECT_FALSE(facts_of(mesh).closed);
    EXPECT_FALSE(facts_of(mesh).self_intersects.has_value());
    EXPECT_NE(fault_of_solid(mesh), "");
}

TEST(SolidCheck, PointsThatNoTriangleUsesAreNotInTheBounds) {
    TriangleMesh mesh = box({0, 0, 0}, {1, 1, 1});
    mesh.points.push_back({9, 9, 9});
    EXPECT_EQ(facts_of(mesh).bounds.highest.x, 1);
    EXPECT_EQ(fault_of_solid(mesh), "");
}

}  // namespace
}  // namespace seamward::test
