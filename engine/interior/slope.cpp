// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/slope.h"

#include <algorithm>

namespace seamward {

namespace {

constexpr int steps = 10;
constexpr double stride = 0.5;     // radii
constexpr double as_wide = 0.98;   // of the stand's clearance: a ball that has to get through all the way

/// The widest stand of the cell that a point lies in.
std::uint32_t best_of_cell(const Passages& passages, const Point& at) {
    const Air& air = passages.air();
    const std::uint32_t cell = air.complex.cell_at(at);
    if (air.solid[cell]) return Slope::none;
    std::uint32_t best = passages.middle_of(cell);
    for (const std::uint32_t portal : air.portals_of(cell)) {
        if (passages[portal].clearance > passages[best].clearance) best = portal;
    }
    return best;
}

Slope ascend(const Passages& passages, const Stand& start, Point at, double rise) {
    const Clearance& clearance = passages.clearance();
    const TriangleTree& tree = clearance.tree();
    const double ball = as_wide * start.clearance;
    const auto is_clear = [&](const Point& from, const Point& to) { return !tree.nearest(from, to, ball).found(); };
    std::vector<Point> corners;
    Point from = start.at;
    for (int i = 0; i < steps; ++i) {
        const Nearest near = tree.nearest(at, clearance.cap());
        const double radius = near.found() ? near.distance : clearance.cap();
        if (radius < ball || !is_clear(from, at)) return {};
        if (radius >= rise * start.clearance) {
            const std::uint32_t top = best_of_cell(passages, at);
            if (top != Slope::none && passages[top].clearance >= rise * start.clearance && is_clear(at, passages[top].at))
                {
                if (distance(at, start.at) > 0) corners.push_back(at);
                return {top, ball, std::move(corners)};
            }
        }
        if (!near.found() || radius <= 0) return {};
        if (distance(at, start.at) > 0) corners.push_back(at);
        from = at;
        at = at + (at - near.on_triangle) * stride;
    }
    return {};
}

}  // namespace

Slope slope_from(const Passages& passages, std::uint32_t stand, double rise) {
    const Stand& start = passages[stand];
    if (!passages.is_portal(stand)) return ascend(passages, start, start.at, rise);
    const CellComplex& complex = passages.air().complex;
    const std::span<const Point> corners = complex.corners_of(complex.portals[stand]);
    Vector normal = doubled_area({corners.begin(), corners.end()});
    const double size = length(normal);
    if (!(size > 0)) return {};
    normal = normal * (start.clearance / size);
    Slope best;
    for (const double sign : {1.0, -1.0}) {
        Slope slope = ascend(passages, start, start.at + normal * sign, rise);
        if (slope.top == Slope::none) continue;
        if (best.top == Slope::none || passages[slope.top].clearance > passages[best.top].clearance) best = std::move(slope);
    }
    return best;
}

}  // namespace seamward
