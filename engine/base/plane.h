// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace seamward {

/// A point of a plane, in meters: along u and v of a frame, or x and y of a plan.
struct Point2 {
    double x = 0, y = 0;

    friend constexpr Point2 operator+(Point2 a, Point2 b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr Point2 operator-(Point2 a, Point2 b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr Point2 operator*(Point2 a, double by) { return {a.x * by, a.y * by}; }
    friend constexpr bool operator==(Point2, Point2) = default;
};

[[nodiscard]] constexpr double dot(Point2 a, Point2 b) { return a.x * b.x + a.y * b.y; }
[[nodiscard]] constexpr double cross(Point2 a, Point2 b) { return a.x * b.y - a.y * b.x; }

/// A simple polygon; its last corner joins its first.
using Loop = std::vector<Point2>;

/// A polygon with holes: the outline counterclockwise, holes clockwise.
struct Figure {
    Loop outline;
    std::vector<Loop> holes;
};

/// Twice the area inside of a loop, positive when it runs counterclockwise.
[[nodiscard]] constexpr double doubled_area(const Loop& loop) {
    double sum = 0;
    for (std::size_t i = 0; i < loop.size(); ++i) sum += cross(loop[i], loop[i + 1 < loop.size() ? i + 1 : 0]);
    return sum;
}

}  // namespace seamward
