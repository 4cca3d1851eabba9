// SPDX-License-Identifier: GPL-3.0-or-later
// The tree against all triangles one by one.
#include "geometry/triangle_tree.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <set>

namespace seamward::test {
namespace {

using Triangle = TriangleTree::Triangle;

/// Triangles in a house of 20 m, large and tiny ones, some flat along an axis, some doubled, some without area.
std::vector<Triangle> random_triangles(std::size_t count, const Point& at, std::mt19937& random) {
    std::uniform_real_distribution<double> place(-10, 10), part(-1, 1);
    std::vector<Triangle> list;
    while (list.size() < count) {
        const double size = std::pow(10.0, 2 * part(random) - 1);  // 1 mm to 1 m
        const Point middle{at.x + place(random), at.y + place(random), at.z + place(random)};
        Triangle t;
        for (Point& p : t) p = middle + Vector{size * part(random), size * part(random), size * part(random)};
        if (list.size() % 5 == 1) t[0].z = t[1].z = t[2].z;
        if (list.size() % 7 == 2) t[2] = t[1];
        if (list.size() % 11 == 3) t = list.back();
        list.push_back(t);
    }
    return list;
}

double square(Vector v) { return dot(v, v); }

class TreeOf : public testing::TestWithParam<std::size_t> {
protected:
    std::mt19937 random{static_cast<std::uint32_t>(GetParam())};
    std::uniform_real_distribution<double> wide{-13, 13}, part{0, 1};
    const Point origin{4e5, -3e5, 250};  // as of land surveys, in meters
    const std::vector<Triangle> triangles = random_triangles(GetParam(), origin, random);
    const TriangleTree tree{triangles};

    Point somewhere() { return {origin.x + wide(random), origin.y + wide(random), origin.z + wide(random)}; }
    /// In a triangle or hardly off it.
    Point beside() {
        const Triangle& t = triangles[random() % triangles.size()];
        const double a = part(random), b = (1 - a) * part(random);
        return t[0] + (t[1] - t[0]) * a + (t[2] - t[0]) * b + Vector{1e-4 * part(random), 0, 1e-4 * part(random)};
    }
};

TEST_P(TreeOf, NearestIsThatOfAll) {
    for (int turn = 0; turn < 400; ++turn) {
        const Point p = turn % 2 == 0 ? somewhere() : beside();
        double least = 1e300;
        for (const Triangle& t : triangles) least = std::min(least, square(nearest_of(t, p) - p));
        const Nearest found = tree.nearest(p, 100);
        ASSERT_TRUE(found.found());
        EXPECT_EQ(found.distance, std::sqrt(least));
        EXPECT_EQ(square(found.on_triangle - p), least);
        EXPECT_EQ(distance(triangles[found.triangle], p), found.distance);
        // Nothing is as near as half of that; then what was asked for comes back.
        if (least > 0) {
            const Nearest none = tree.nearest(p, found.distance * 0.5);
            EXPECT_FALSE(none.found());
            EXPECT_EQ(none.distance, found.distance * 0.5);
        }
    }
}

TEST_P(TreeOf, AroundMissesNone) {
    for (int turn = 0; turn < 200; ++turn) {
        const Point p = turn % 2 == 0 ? somewhere() : beside();
        const double reach = std::pow(10.0, -4 + 5 * part(random));
        std::set<std::uint32_t> met;
        tree.around(p, reach, [&](std::uint32_t i) { return met.insert(i).second; });
        for (std::uint32_t i = 0; i < triangles.size(); ++i) {
            EXPECT_TRUE(distance(triangles[i], p) >= reach || met.contains(i)) << i;
        }
        int asked = 0;
        tree.around(p, 1e3, [&](std::uint32_t) { return ++asked < 2; });
        EXPECT_EQ(asked, std::min<int>(2, static_cast<int>(triangles.size())));
    }
}

/// A segment's distance lies under that of each of its points, and above the nearest of them by no more than half a step.
TEST_P(TreeOf, NearestOfASegmentIsThatOfItsPoints) {
    for (int turn = 0; turn < 150; ++turn) {
        const Point a = turn % 2 == 0 ? somewhere() : beside();
        Point b = turn % 3 == 0 ? somewhere() : a + Vector{part(random), part(random), part(random)} * 0.02;
        if (turn % 5 == 1) b.x = a.x;  // along planes of the axes
        if (turn % 10 == 1) b.y = a.y;
        if (turn % 50 == 7) b = a;
        const Nearest found = tree.nearest(a, b, 100);
        ASSERT_TRUE(found.found());
        EXPECT_NEAR(distance(found.on_triangle, found.on_query), found.distance, 1e-9);
        EXPECT_NEAR(distance(triangles[found.triangle], found.on_query), found.distance, 1e-9);
        constexpr int steps = 500;
        double least = 1e300;
        for (int k = 0; k <= steps; ++k) least = std::min(least, tree.nearest(a + (b - a) * (double(k) / steps), 100).distance);
        EXPECT_LE(found.distance, least + 1e-9);
        EXPECT_GE(found.distance, least - distance(a, b) / steps / 2 - 1e-9);
        const Nearest enough = tree.nearest(a, b, 100, found.distance + 0.1);
        EXPECT_LT(enough.distance, found.distance + 0.1);
    }
}

TEST_P(TreeOf, CrossingSegmentsTouch) {
    int crossed = 0;
    for (const Triangle& t : triangles) {
        const Vector n = cross(t[1] - t[0], t[2] - t[0]);
        if (square(n) < 1e-12) continue;
        const Point in = t[0] + (t[1] - t[0]) * 0.3 + (t[2] - t[0]) * 0.4;
        const Vector up = n * (1 / std::sqrt(square(n)));
        EXPECT_LT(tree.nearest(in + up * -1, in + up * 2, 1).distance, 1e-9);
        ++crossed;
    }
    EXPECT_TRUE(crossed > 0 || triangles.size() < 10);
}

TEST_P(TreeOf, AboveMeetsWhatAnUprightLineMeets) {
    for (int turn = 0; turn < 300; ++turn) {
        const Point p = turn % 2 == 0 ? somewhere() : beside();
        std::set<std::uint32_t> met;
        tree.above(p, [&](std::uint32_t i, bool upward) {
            met.insert(i);
            EXPECT_EQ(upward, cross(triangles[i][1] - triangles[i][0], triangles[i][2] - triangles[i][0]).z > 0);
        });
        for (std::uint32_t i = 0; i < triangles.size(); ++i) {
            const Triangle& t = triangles[i];
            const Vector n = cross(t[1] - t[0], t[2] - t[0]);
            if (std::abs(n.z) < 1e-9) continue;
            const double up = dot(n, t[0] - p) / n.z;
            const Point on = p + Vector{0, 0, up};
            const double off = std::sqrt(square(nearest_of(t, on) - on));
            const bool clearly_not = off > 1e-6 || up < -1e-6;
            EXPECT_FALSE(clearly_not && met.contains(i)) << i;
        }
        // What is clearly within is met.
        for (std::uint32_t i = 0; i < triangles.size(); ++i) {
            const Triangle& t = triangles[i];
            const Vector n = cross(t[1] - t[0], t[2] - t[0]);
            if (std::abs(n.z) < 1e-6) continue;
            const Point in = t[0] + (t[1] - t[0]) * 0.3 + (t[2] - t[0]) * 0.4;
            if (distance(in, p) > 0.5) continue;
            bool seen = false;
            tree.above(in + Vector{0, 0, -0.1}, [&](std::uint32_t k, bool) { seen = seen || k == i; });
            EXPECT_TRUE(seen);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, TreeOf, testing::Values(1, 2, 3, 4, 5, 17, 400, 3000));

/// Segments in the plane of a roof: whether they cross a triangle of it is a matter of rounding, and their distance is not.
TEST(TriangleTree, SegmentsInThePlaneOfATriangle) {
    std::mt19937 random(5);
    std::uniform_real_distribution<double> place(-1, 1);
    for (int turn = 0; turn < 3000; ++turn) {
        const double angle = turn % 3 == 0 ? 0 : place(random) * 3, pitch = turn % 3 == 2 ? place(random) : 5.0 / 12;
        const Vector u{std::cos(angle), std::sin(angle), 0},
            v = Vector{-std::sin(angle), std::cos(angle), 0} + Vector{0, 0, pitch};
        const Point origin{10 * place(random), 10 * place(random), 2};
        const auto at = [&](double x, double y) { return origin + u * x + v * y; };
        const double x = place(random), y = place(random);
        const std::vector<Triangle> roof{{at(0, 0), at(1.2, 0.1), at(0.9, -0.4)}};
        const TriangleTree tree(roof);
        const Point a = at(x - 0.3, y), b = at(x + 0.3 * place(random), y + 0.6);
        constexpr int steps = 400;
        double least = 1e300;
        for (int k = 0; k <= steps; ++k) least = std::min(least, distance(roof[0], a + (b - a) * (double(k) / steps)));
        const double found = tree.nearest(a, b, 100).distance;
        EXPECT_LE(found, least + 1e-9);
        EXPECT_GE(found, least - distance(a, b) / steps / 2 - 1e-9);
    }
}

/// One part that was left at the origin of the map does not make the boxes around the house coarse.
TEST(TriangleTree, OneFarOffDoesNotMatter) {
    std::mt19937 random(6);
    std::vector<Triangle> triangles = random_triangles(500, {4e5, 5e6, 200}, random);
    triangles.push_back({Point{0, 0, 0}, Point{1, 0, 0}, Point{0, 1, 0}});
    const TriangleTree tree(triangles);
    std::size_t met = 0;
    const Point p = triangles[3][0];
    tree.around(p, 1e-3, [&](std::uint32_t) { return ++met > 0; });
    EXPECT_GE(met, 1U);
    EXPECT_LT(met, 20U);
    EXPECT_EQ(tree.nearest({0.2, 0.2, 1}, 5).distance, 1);
}

TEST(TriangleTree, EmptyOneHasNothing) {
    const TriangleTree tree({});
    EXPECT_FALSE(tree.nearest({0, 0, 0}, 5).found());
    EXPECT_EQ(tree.nearest({0, 0, 0}, 5).distance, 5);
    EXPECT_FALSE(tree.nearest({0, 0, 0}, {1, 0, 0}, 5).found());
}

/// All middles in one place: halves by number, and no walk deeper than there is room for.
TEST(TriangleTree, ManyAtOnePlace) {
    std::vector<Triangle> same(5000, Triangle{Point{0, 0, 0}, Point{1, 0, 0}, Point{0, 1, 0}});
    for (std::size_t i = 0; i < 64; ++i) {  // each far smaller and nearer than the last
        const double size = std::pow(0.5, static_cast<double>(i));
        same.push_back({Point{5 + size, 0, 0}, Point{5 + size, size / 4, 0}, Point{5 + size, 0, size / 4}});
    }
    const TriangleTree tree(std::move(same));
    EXPECT_EQ(tree.nearest({0.2, 0.2, 1}, 5).distance, 1);
    EXPECT_NEAR(tree.nearest({5, 0, 0}, 5).distance, 0, 1e-15);
    EXPECT_EQ(tree.nearest({0.2, 0.2, 2}, {0.2, 0.2, 0.5}, 5).distance, 0.5);
}

}  // namespace
}  // namespace seamward::test
