// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

#include "base/survey.h"

namespace seamward {

/// A direction or a step in space, in meters unless it is a unit vector.
struct Vector {
    double x = 0, y = 0, z = 0;

    friend constexpr Vector operator+(Vector a, Vector b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
    friend constexpr Vector operator-(Vector a, Vector b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
    friend constexpr Vector operator*(Vector a, double by) { return {a.x * by, a.y * by, a.z * by}; }
};

[[nodiscard]] constexpr Point operator+(const Point& p, Vector by) { return {p.x + by.x, p.y + by.y, p.z + by.z}; }
[[nodiscard]] constexpr Vector operator-(const Point& to, const Point& from) {
    return {to.x - from.x, to.y - from.y, to.z - from.z};
}
[[nodiscard]] constexpr double dot(Vector a, Vector b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
[[nodiscard]] constexpr Vector cross(Vector a, Vector b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
[[nodiscard]] inline double length(Vector a) { return std::sqrt(dot(a, a)); }

/// A right-handed frame in space: unit vectors along a wall or floor (u, v) and out of it (n).
struct Frame {
    Point origin;
    Vector u{1, 0, 0}, v{0, 1, 0}, n{0, 0, 1};

    [[nodiscard]] constexpr Point at(double along, double up, double out) const {
        return origin + (u * along + v * up + n * out);
    }
};

}  // namespace seamward
