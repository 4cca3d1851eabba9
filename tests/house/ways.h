// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

#include "base/plane.h"

/// Ways inside of figures, judged without the code that finds them.
namespace seamward::test {

using Way = std::vector<Point2>;

inline double between(Point2 a, Point2 b) { return std::hypot(a.x - b.x, a.y - b.y); }

inline double length_of(const Way& way) {
    double sum = 0;
    for (std::size_t i = 1; i < way.size(); ++i) sum += between(way[i - 1], way[i]);
    return sum;
}

inline Loop box(double left, double bottom, double right, double top) {
    return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

inline std::vector<Loop> loops_of(const Figure& figure) {
    std::vector<Loop> loops{figure.outline};
    loops.insert(loops.end(), figure.holes.begin(), figure.holes.end());
    return loops;
}

/// Calls `visit(a, b)` with the ends of every edge.
template <class Visit>
void for_each_edge(const Figure& figure, Visit&& visit) {
    for (const Loop& loop : loops_of(figure)) {
        for (std::size_t i = 0; i < loop.size(); ++i) visit(loop[i], loop[(i + 1) % loop.size()]);
    }
}

/// Angle sums instead of crossing numbers, so that a fault of one is not repeated by the other.
inline bool winds_round(const Loop& loop, Point2 p) {
    double sum = 0;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 a = loop[i] - p, b = loop[(i + 1) % loop.size()] - p;
        sum += std::atan2(cross(a, b), dot(a, b));
    }
    return std::abs(sum) > std::numbers::pi;
}

inline bool inside(const Figure& figure, Point2 p) {
    return winds_round(figure.outline, p) &&
           std::none_of(figure.holes.begin(), figure.holes.end(), [&](const Loop& hole) { return winds_round(hole, p); });
}

/// Whether two segments cross, by solving for both parameters.
inline bool crosses(Point2 a, Point2 b, Point2 p, Point2 q) {
    const Point2 along = b - a, step = q - p;
    const double turn = cross(step, along);
    if (turn == 0) return false;
    const double at = cross(a - p, along) / turn, where = cross(a - p, step) / turn;
    return at >= 0 && at <= 1 && where >= 0 && where <= 1;
}

/// Every corner inside, and no part across an edge.
inline void expect_inside(const Figure& figure, const Way& way) {
    ASSERT_GE(way.size(), 2U);
    for (const Point2 p : way) EXPECT_TRUE(inside(figure, p)) << p.x << ", " << p.y;
    for (std::size_t i = 1; i < way.size(); ++i) {
        for_each_edge(figure, [&](Point2 a, Point2 b) {
            EXPECT_FALSE(crosses(a, b, way[i - 1], way[i]))
                << way[i - 1].x << ", " << way[i - 1].y << " to " << way[i].x << ", " << way[i].y;
        });
    }
}

inline double distance_to_edges(const Figure& figure, Point2 p) {
    double nearest = std::numeric_limits<double>::infinity();
    for_each_edge(figure, [&](Point2 a, Point2 b) {
        const double at = std::clamp(dot(p - a, b - a) / dot(b - a, b - a), 0.0, 1.0);
        nearest = std::min(nearest, between(a + (b - a) * at, p));
    });
    return nearest;
}

}  // namespace seamward::test
