// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/doubled_parts.h"

#include <algorithm>
#include <optional>

#include "geometry/edge_uses.h"
#include "geometry/weld.h"

namespace seamward {

namespace {

/// A part without what may differ between doubles: order, the way round, and points that coincide.
struct Plain {
    std::vector<Point> points;       ///< those that triangles use
    std::vector<Corners> triangles;  ///< each with rising corners, sorted, none twice
};

void sort_triangles(std::vector<Corners>& triangles) {
    for (Corners& corners : triangles) std::sort(corners.begin(), corners.end());
    std::sort(triangles.begin(), triangles.end());
    triangles.erase(std::unique(triangles.begin(), triangles.end()), triangles.end());
}

Plain plain_of(const TriangleMesh& part, double tolerance) {
    const Welded welded = weld(part.points, tolerance);
    std::vector<std::uint32_t> number(welded.points.size(), PointGrid::none);
    Plain plain;
    for (const Corners& given : part.triangles) {
        Corners corners{};
        bool usable = true;
        for (std::size_t i = 0; i < 3; ++i) {
            corners[i] = given[i] < welded.number.size() ? welded.number[given[i]] : PointGrid::none;
            usable = usable && corners[i] != PointGrid::none;
        }
        if (!usable || corners[0] == corners[1] || corners[1] == corners[2] || corners[2] == corners[0]) continue;
        for (std::uint32_t& corner : corners) {
            if (number[corner] == PointGrid::none) {
                number[corner] = static_cast<std::uint32_t>(plain.points.size());
                plain.points.push_back(welded.points[corner]);
            }
            corner = number[corner];
        }
        plain.triangles.push_back(corners);
    }
    sort_triangles(plain.triangles);
    return plain;
}

/// The middle of the box around points: doubles have it in one place, within the tolerance.
Point middle_of(const std::vector<Point>& points) {
    Point low = points.front(), high = points.front();
    for (const Point& p : points) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
    }
    return {(low.x + high.x) / 2, (low.y + high.y) / 2, (low.z + high.z) / 2};
}

bool are_same(const Plain& one, const Plain& other, double tolerance) {
    if (one.points.size() != other.points.size() || one.triangles.size() != other.triangles.size()) return false;
    PointGrid grid(tolerance, one.points.size());
    for (const Point& p : one.points) grid.add(p);
    std::vector<std::uint32_t> match;
    std::vector<bool> taken(one.points.size(), false);
    for (const Point& p : other.points) {
        std::optional<std::pair<double, std::uint32_t>> best;
        grid.near(p, [&](std::uint32_t i, double square) {
            if (!taken[i] && (!best || std::pair(square, i) < *best)) best = {square, i};
        });
        if (!best) return false;
        taken[best->second] = true;
        match.push_back(best->second);
    }
    std::vector<Corners> triangles = other.triangles;
    for (Corners& corners : triangles)
        for (std::uint32_t& corner : corners) corner = match[corner];
    sort_triangles(triangles);
    return triangles == one.triangles;
}

}  // namespace

std::vector<DoubledPart> find_doubled_parts(std::span<const TriangleMesh> parts, double tolerance) {
    std::vector<DoubledPart> doubled;
    PointGrid middles(2 * tolerance, parts.size());  // each middle is off by the tolerance along every axis at most
    struct Kept {
        std::size_t part, points, triangles;
    };
    std::vector<Kept> kept;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const Plain plain = plain_of(parts[i], tolerance);
        if (plain.triangles.empty()) continue;
        const Point middle = middle_of(plain.points);
        std::vector<std::size_t> candidates;
        middles.near(middle, [&](std::uint32_t k, double) {
            if (kept[k].points == plain.points.size() && kept[k].triangles == plain.triangles.size())
                candidates.push_back(kept[k].part);
        });
        std::sort(candidates.begin(), candidates.end());
        candidates.erase(std::unique(candidates.begin(), candidates.end()), candidates.end());
        const auto same = std::find_if(candidates.begin(), candidates.end(),
                                       [&](std::size_t k) { return are_same(plain_of(parts[k], tolerance), plain, tolerance); });
        if (same != candidates.end()) {
            doubled.push_back({i, *same});
            continue;
        }
        kept.push_back({i, plain.points.size(), plain.triangles.size()});
        middles.add(middle);
    }
    return doubled;
}

}  // namespace seamward
