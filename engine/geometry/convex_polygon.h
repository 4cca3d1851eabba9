// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>
#include <vector>

#include "geometry/plane3.h"

namespace seamward {

/// A flat convex polygon in space, its corners in order.
using ConvexPolygon = std::vector<Point>;

/// How far a polygon reaches to both sides of a plane.
struct Reach {
    double low = 0, high = 0;
};

inline Reach reach(const ConvexPolygon& polygon, const Plane3& plane) {
    Reach r{1e300, -1e300};
    for (const Point& p : polygon) {
        const double d = plane.height_of(p);
        r.low = std::min(r.low, d);
        r.high = std::max(r.high, d);
    }
    return r;
}

/// The parts of a polygon before and behind a plane; corners within `tolerance` of it belong to both. Either may come out empty.
inline void split(const ConvexPolygon& polygon, const Plane3& plane, double tolerance, ConvexPolygon& front,
                  ConvexPolygon& back) {
    front.clear();
    back.clear();
    const std::size_t n = polygon.size();
    double d = plane.height_of(polygon[0]);
    for (std::size_t i = 0; i < n; ++i) {
        const Point& p = polygon[i];
        const Point& q = polygon[i + 1 < n ? i + 1 : 0];
        const double next = plane.height_of(q);
        if (d >= -tolerance) front.push_back(p);
        if (d <= tolerance) back.push_back(p);
        if ((d > tolerance && next < -tolerance) || (d < -tolerance && next > tolerance)) {
            const Point cut = p + (q - p) * (d / (d - next));
            front.push_back(cut);
            back.push_back(cut);
        }
        d = next;
    }
    if (front.size() < 3) front.clear();
    if (back.size() < 3) back.clear();
}

/// Twice the area as a vector along the normal.
inline Vector doubled_area(std::span<const Point> polygon) {
    Vector sum;
    for (std::size_t i = 1; i + 1 < polygon.size(); ++i) {
        sum = sum + cross(polygon[i] - polygon[0], polygon[i + 1] - polygon[0]);
    }
    return sum;
}

/// Where a segment goes through a polygon, or past it by no more than `beside` meters, as a fraction of the segment; nothing
/// where it does not, or lies in its plane.
inline std::optional<double> crossing(std::span<const Point> polygon, const Point& a, const Point& b, double beside = 0) {
    const Vector normal = doubled_area(polygon);
    const double before = dot(normal, a - polygon[0]), after = dot(normal, b - polygon[0]);
    if ((before < 0) == (after < 0)) return {};
    const double part = before / (before - after);
    const Point at = a + (b - a) * part;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vector inward = cross(normal, polygon[i + 1 < polygon.size() ? i + 1 : 0] - polygon[i]);
        if (dot(inward, at - polygon[i]) < (beside > 0 ? -beside * length(inward) : 0)) return {};
    }
    return part;
}

inline Point middle_of(const Point* corners, std::size_t count) {
    Vector weighted;
    double whole = 0;
    for (std::size_t i = 1; i + 1 < count; ++i) {
        const Vector a = corners[i] - corners[0], b = corners[i + 1] - corners[0];
        const double area = length(cross(a, b));
        weighted = weighted + (a + b) * (area / 3);
        whole += area;
    }
    if (whole > 0) return corners[0] + weighted * (1 / whole);
    Vector sum;
    for (std::size_t i = 0; i < count; ++i) sum = sum + (corners[i] - corners[0]);
    return corners[0] + sum * (1.0 / static_cast<double>(count));
}

}  // namespace seamward
