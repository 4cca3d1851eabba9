// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/straight_skeleton.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <random>
#include <utility>

#include "geometry/remainder.h"
#include "tests/support/random_loops.h"

namespace seamward::test {
namespace {

/// How far a point lies to the left of the line of an edge.
double off_edge(const Loop& outline, std::size_t edge, Point2 p) {
    const Point2 along = outline[(edge + 1) % outline.size()] - outline[edge];
    return cross(along, p - outline[edge]) / std::hypot(along.x, along.y);
}

std::size_t corners_of(const SkeletonFace& face) { return face.outline.size(); }

/// What holds for any skeleton: a face for each edge that begins with it, distances from its line, and faces that fill the
/// polygon with their corners in common.
void expect_skeleton_of(const Loop& outline, const std::vector<SkeletonFace>& faces) {
    ASSERT_EQ(faces.size(), outline.size());
    double area = 0;
    std::map<std::pair<std::pair<double, double>, std::pair<double, double>>, int> edges;
    for (std::size_t e = 0; e < faces.size(); ++e) {
        const SkeletonFace& face = faces[e];
        ASSERT_EQ(face.outline.size(), face.distances.size());
        ASSERT_GE(face.outline.size(), 3U);
        EXPECT_EQ(face.outline[0], outline[e]);
        EXPECT_EQ(face.outline[1], outline[(e + 1) % outline.size()]);
        EXPECT_EQ(face.distances[0], 0);
        EXPECT_EQ(face.distances[1], 0);
        EXPECT_TRUE(is_simple(face.outline)) << e;
        EXPECT_GT(doubled_area(face.outline), 0);
        area += doubled_area(face.outline) / 2;
        for (std::size_t i = 0; i < face.outline.size(); ++i) {
            const Point2 a = face.outline[i], b = face.outline[(i + 1) % face.outline.size()];
            EXPECT_NEAR(face.distances[i], off_edge(outline, e, a), 1e-9) << e << ' ' << i;
            EXPECT_EQ((++edges[{{a.x, a.y}, {b.x, b.y}}]), 1);
        }
    }
    EXPECT_NEAR(area, doubled_area(outline) / 2, 1e-9);
    std::size_t border = 0;
    for (const auto& [edge, count] : edges) border += edges.contains({edge.second, edge.first}) ? 0 : 1;
    EXPECT_EQ(border, outline.size());
}

TEST(StraightSkeleton, OfASquareIsAPyramid) {
    const Loop square{{0, 0}, {6, 0}, {6, 6}, {0, 6}};
    const auto faces = straight_skeleton(square);
    expect_skeleton_of(square, faces);
    for (const SkeletonFace& face : faces) {
        ASSERT_EQ(corners_of(face), 3U);
        EXPECT_NEAR(face.outline[2].x, 3, 1e-12);
        EXPECT_NEAR(face.outline[2].y, 3, 1e-12);
        EXPECT_NEAR(face.distances[2], 3, 1e-12);
    }
}

TEST(StraightSkeleton, OfARectangleHasARidge) {
    const Loop rectangle{{1, 2}, {11, 2}, {11, 8}, {1, 8}};
    const auto faces = straight_skeleton(rectangle);
    expect_skeleton_of(rectangle, faces);
    EXPECT_EQ(corners_of(faces[0]), 4U);
    EXPECT_EQ(corners_of(faces[1]), 3U);
    EXPECT_NEAR(faces[1].outline[2].x, 8, 1e-12);
    EXPECT_NEAR(faces[3].outline[2].x, 4, 1e-12);
    EXPECT_NEAR(faces[0].distances[2], 3, 1e-12);
}

/// The wing's ridge of an L meets the main one where the valley ends.
TEST(StraightSkeleton, OfAnLHasAValley) {
    const Loop corner{{0, 0}, {10, 0}, {10, 4}, {4, 4}, {4, 9}, {0, 9}};
    const auto faces = straight_skeleton(corner);
    expect_skeleton_of(corner, faces);
    for (const SkeletonFace& face : faces) {
        for (const double distance : face.distances) EXPECT_LE(distance, 2 + 1e-12);
    }
    const auto holds = [&](std::size_t face, Point2 p) {
        return std::any_of(faces[face].outline.begin(), faces[face].outline.end(),
                           [&](Point2 q) { return std::hypot(p.x - q.x, p.y - q.y) < 1e-9; });
    };
    for (const std::size_t face : {0U, 2U, 3U, 5U}) EXPECT_TRUE(holds(face, {2, 2})) << face;
    EXPECT_TRUE(holds(1, {8, 2}));
    EXPECT_TRUE(holds(4, {2, 7}));
}

class RandomSkeleton : public testing::TestWithParam<unsigned> {};

TEST_P(RandomSkeleton, FillsThePolygon) {
    std::mt19937 random(GetParam());
    for (int round = 0; round < 60; ++round) {
        SCOPED_TRACE(round);
        Loop loop;
        switch (round % 3) {
            case 0: loop = random_rectilinear(random, 4 + pick(random, 16), 0.8); break;
            case 1: loop = random_star(random, 5 + pick(random, 14), 0.8); break;
            default: loop = random_convex(random, 3 + pick(random, 10), 0.8); break;
        }
        expect_skeleton_of(loop, straight_skeleton(loop));
        if (HasFailure()) return;
    }
}

/// In a convex polygon rain runs to the nearest edge.
TEST_P(RandomSkeleton, GivesEachPlaceOfAConvexPolygonToItsNearestEdge) {
    std::mt19937 random(100 + GetParam());
    for (int round = 0; round < 20; ++round) {
        const Loop loop = random_convex(random, 3 + pick(random, 10), 0.8);
        const auto faces = straight_skeleton(loop);
        for (int probe = 0; probe < 100; ++probe) {
            const Point2 p{uniform(random, -6, 6), uniform(random, -6, 6)};
            if (!is_inside(loop, p)) continue;
            std::vector<std::pair<double, std::size_t>> near;
            for (std::size_t e = 0; e < loop.size(); ++e) near.emplace_back(off_edge(loop, e, p), e);
            std::sort(near.begin(), near.end());
            if (near[1].first - near[0].first < 1e-6) continue;
            for (std::size_t e = 0; e < loop.size(); ++e) EXPECT_EQ(is_inside(faces[e].outline, p), e == near[0].second);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomSkeleton, testing::Range(1U, 5U));

TEST(StraightSkeleton, RefusesWhatHasNone) {
    EXPECT_THROW((void)straight_skeleton({{0, 0}, {4, 4}, {4, 0}, {0, 4}}), std::logic_error);
}

}  // namespace
}  // namespace seamward::test
