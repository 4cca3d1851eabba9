// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/ball_ways.h"

#include <algorithm>
#include <cmath>
#include <random>

#include "base/vector.h"

namespace seamward::test {
namespace {

void include(Box& box, const Point& p) {
    box.lowest = {std::min(box.lowest.x, p.x), std::min(box.lowest.y, p.y), std::min(box.lowest.z, p.z)};
    box.highest = {std::max(box.highest.x, p.x), std::max(box.highest.y, p.y), std::max(box.highest.z, p.z)};
}

template <class Points>
Box box_of(const Points& points) {
    constexpr double far = 1e300;
    Box box{{far, far, far}, {-far, -far, -far}};
    for (const Point& p : points) include(box, p);
    return box;
}

bool farther_apart(const Box& a, const Box& b, double by) {
    return a.lowest.x - b.highest.x > by || b.lowest.x - a.highest.x > by || a.lowest.y - b.highest.y > by ||
           b.lowest.y - a.highest.y > by || a.lowest.z - b.highest.z > by || b.lowest.z - a.highest.z > by;
}

/// Points inside of both segments that are nearest to each other, or no less than the truth where an end is nearer: for those
/// ends others look.
double between_lines(const Point& a, const Point& b, const Point& c, const Point& d) {
    const Vector u = b - a, v = d - c, w = a - c;
    const double uu = dot(u, u), uv = dot(u, v), vv = dot(v, v), uw = dot(u, w), vw = dot(v, w);
    const double area = uu * vv - uv * uv;
    if (area <= 1e-14 * uu * vv) return 1e300;  // parallel: an end is as near as anything
    const double s = (uv * vw - vv * uw) / area, t = (uu * vw - uv * uw) / area;
    if (s < 0 || s > 1 || t < 0 || t > 1) return 1e300;
    return length((a + u * s) - (c + v * t));
}

double to_segment(const Point& p, const Point& a, const Point& b) {
    const Vector along = b - a;
    const double whole = dot(along, along);
    const double share = whole > 0 ? std::clamp(dot(p - a, along) / whole, 0.0, 1.0) : 0;
    return length(p - (a + along * share));
}

bool crosses(const Point& a, const Point& b, const std::array<Point, 3>& t) {
    const Vector normal = cross(t[1] - t[0], t[2] - t[0]);
    const double above = dot(a - t[0], normal), below = dot(b - t[0], normal);
    if ((above > 0) == (below > 0)) return false;
    const Point p = a + (b - a) * (above / (above - below));
    return dot(cross(t[1] - t[0], p - t[0]), normal) >= 0 && dot(cross(t[2] - t[1], p - t[1]), normal) >= 0 &&
           dot(cross(t[0] - t[2], p - t[2]), normal) >= 0;
}

}  // namespace

StraightWays::StraightWays(std::span<const ModelPart> parts) : distance_(parts), box_(box_of(std::vector<Point>{})) {
    for (const ModelPart& part : parts) {
        for (const auto& [a, b, c] : part.mesh.triangles) {
            const std::array corners{part.mesh.points[a], part.mesh.points[b], part.mesh.points[c]};
            triangles_.push_back({corners, box_of(corners)});
            for (const Point& p : corners) include(box_, p);
        }
    }
}

double StraightWays::to(const Point& a, const Point& b, double at_most) const {
    // Nearest to a triangle's inside is one of the ends; else an edge is as near.
    double least = std::min(distance_.to(a, at_most), distance_.to(b, at_most));
    const Box way = box_of(std::array{a, b});
    for (const Triangle& triangle : triangles_) {
        if (farther_apart(way, triangle.box, least)) continue;
        const auto& t = triangle.corners;
        if (crosses(a, b, t)) return 0;
        for (std::size_t i = 0; i < 3; ++i) {
            const Point &c = t[i], &d = t[(i + 1) % 3];
            least = std::min({least, to_segment(c, a, b), between_lines(a, b, c, d)});
        }
    }
    return least;
}

BallWays::BallWays(const StraightWays& ways, double radius, std::vector<Point> places) {
    constexpr int strewn = 150;
    const double around = 20 * radius;
    std::mt19937 engine(1);
    const auto between = [&](double low, double high) {
        return low - around + (high - low + 2 * around) * (static_cast<double>(engine()) / 4294967295.0);
    };
    const auto& [low, high] = ways.box();
    for (int i = 0; i < strewn; ++i) {
        const double x = between(low.x, high.x), y = between(low.y, high.y), z = between(low.z, high.z);
        if (ways.to({x, y, z}, {x, y, z}, radius) >= radius) places.push_back({x, y, z});
    }
    group_.resize(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) group_[i] = i;
    for (std::size_t i = 0; i < places.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            if (group_[i] == group_[j] || ways.to(places[i], places[j], radius) < radius) continue;
            std::replace(group_.begin(), group_.end(), std::size_t{group_[i]}, group_[j]);
        }
    }
}

}  // namespace seamward::test
