// SPDX-License-Identifier: GPL-3.0-or-later
// Segments through polygons against triangles of a fan, by their barycentric coordinates.
#include "geometry/convex_polygon.h"

#include <gtest/gtest.h>

#include <numbers>
#include <random>

namespace seamward::test {
namespace {

/// A random convex polygon on a random plane: points of a circle, in order.
ConvexPolygon some_polygon(std::mt19937_64& random) {
    std::uniform_real_distribution<double> any(-1, 1);
    Vector u{any(random), any(random), any(random)};
    const Vector w{any(random), any(random), any(random)};
    u = u * (1 / length(u));
    Vector v = cross(u, w);
    v = v * (1 / length(v));
    const Point middle{any(random), any(random), any(random)};
    ConvexPolygon polygon;
    const int corners = 3 + static_cast<int>(random() % 6);
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * std::numbers::pi * (i + 0.4 * any(random)) / corners;
        polygon.push_back(middle + u * std::cos(angle) + v * std::sin(angle));
    }
    return polygon;
}

/// Whether a point in the plane of a triangle lies in it.
bool is_in(const Point& a, const Point& b, const Point& c, const Point& p) {
    const Vector normal = cross(b - a, c - a);
    const double size = dot(normal, normal);
    const double s = dot(normal, cross(b - a, p - a)) / size, t = dot(normal, cross(p - a, c - a)) / size;
    return s >= 0 && t >= 0 && s + t <= 1;
}

TEST(ConvexPolygonCrossing, AgreesWithTheTrianglesOfAFan) {
    std::mt19937_64 random(11);
    std::uniform_real_distribution<double> any(-2, 2);
    int through = 0, past = 0;
    for (int i = 0; i < 4000; ++i) {
        const ConvexPolygon polygon = some_polygon(random);
        const Point a{any(random), any(random), any(random)}, b{any(random), any(random), any(random)};
        const std::optional<double> part = crossing(polygon, a, b);
        const Vector normal = doubled_area(polygon);
        const double before = dot(normal, a - polygon[0]), after = dot(normal, b - polygon[0]);
        bool expected = (before < 0) != (after < 0);
        if (expected) {
            const Point at = a + (b - a) * (before / (before - after));
            bool inside = false;
            for (std::size_t k = 1; k + 1 < polygon.size(); ++k) {
                inside = inside || is_in(polygon[0], polygon[k], polygon[k + 1], at);
            }
            expected = inside;
        }
        ASSERT_EQ(part.has_value(), expected) << i;
        (expected ? through : past) += 1;
        if (part) {
            EXPECT_NEAR(dot(normal, a + (b - a) * *part - polygon[0]), 0, 1e-9);
        }
    }
    EXPECT_GT(through, 300);
    EXPECT_GT(past, 300);
}

TEST(ConvexPolygonCrossing, ForgivesWhatPassesCloseBy) {
    const ConvexPolygon square{{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}};
    const Point above{-1e-9, 0.5, 1}, below{-1e-9, 0.5, -1};
    EXPECT_FALSE(crossing(square, above, below));
    EXPECT_FALSE(crossing(square, above, below, 1e-10));
    ASSERT_TRUE(crossing(square, above, below, 1e-8));
    EXPECT_DOUBLE_EQ(*crossing(square, above, below, 1e-8), 0.5);
    EXPECT_FALSE(crossing(square, {0.5, 0.5, 1}, {0.5, 0.5, 2}, 1e-8));
}

}  // namespace
}  // namespace seamward::test
