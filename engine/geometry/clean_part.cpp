// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/clean_part.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

#include "base/vector.h"
#include "geometry/edge_uses.h"
#include "geometry/shells.h"
#include "geometry/weld.h"

namespace seamward {

namespace {

constexpr std::uint32_t none = PointGrid::none;

/// The triangles that have three corners, between welded points.
std::vector<Corners> with_three_corners(const TriangleMesh& part, const Welded& welded) {
    std::vector<Corners> triangles;
    triangles.reserve(part.triangles.size());
    for (const Corners& given : part.triangles) {
        Corners corners{};
        bool usable = true;
        for (std::size_t i = 0; i < 3; ++i) {
            corners[i] = given[i] < welded.number.size() ? welded.number[given[i]] : none;
            usable = usable && corners[i] != none;
        }
        const auto [a, b, c] = corners;
        if (usable && a != b && b != c && c != a) triangles.push_back(corners);
    }
    return triangles;
}

/// Sets of triangles on the same corners.
class Doubles {
public:
    explicit Doubles(const std::vector<Corners>& triangles) : first_(triangles.size()) {
        std::vector<std::pair<Corners, std::uint32_t>> sorted;
        sorted.reserve(triangles.size());
        for (std::uint32_t t = 0; t < triangles.size(); ++t) {
            sorted.emplace_back(triangles[t], t);
            std::sort(sorted.back().first.begin(), sorted.back().first.end());
        }
        std::sort(sorted.begin(), sorted.end());
        doubled_.assign(triangles.size(), false);
        for (std::size_t i = 0; i < sorted.size(); ++i) {
            const bool again = i > 0 && sorted[i].first == sorted[i - 1].first;
            const std::uint32_t t = sorted[i].second;
            first_[t] = again ? first_[sorted[i - 1].second] : t;
            if (again) doubled_[first_[t]] = true;
        }
    }

    [[nodiscard]] bool any() const { return std::find(doubled_.begin(), doubled_.end(), true) != doubled_.end(); }
    [[nodiscard]] bool is_first(std::uint32_t t) const { return first_[t] == t; }
    [[nodiscard]] bool is_doubled(std::uint32_t t) const { return doubled_[t]; }  ///< and the first of them

private:
    std::vector<std::uint32_t> first_;
    std::vector<bool> doubled_;
};

/// Doubled triangles that hang together, judged by the edges around them.
class Membranes {
public:
    Membranes(std::span<const Point> points, const std::vector<Corners>& singles, const std::vector<bool>& doubled)
        : leader_(singles.size()), to_part_(singles.size(), 0) {
        std::iota(leader_.begin(), leader_.end(), 0U);
        const std::vector<EdgeUse> uses = edge_uses(points.size(), singles);
        const auto is_doubled = [&](const EdgeUse& use) { return doubled[use.triangle]; };
        const auto for_each_border = [&](auto visit) {
            for_each_edge(uses, [&](std::span<const EdgeUse> edge) {
                const auto first = std::find_if(edge.begin(), edge.end(), is_doubled);
                if (first != edge.end()) visit(edge, first->triangle);
            });
        };
        for_each_border([&](std::span<const EdgeUse> edge, std::uint32_t first) {
            for (const EdgeUse& use : edge)
                if (is_doubled(use)) leader_[leader(use.triangle)] = leader(first);
        });
        for_each_border([&](std::span<const EdgeUse> edge, std::uint32_t first) {
            const auto inner = static_cast<std::size_t>(std::count_if(edge.begin(), edge.end(), is_doubled));
            const std::size_t others = edge.size() - inner;
            if (others == 0 && inner > 1) return;
            const double length_of_edge = length(points[edge[0].high] - points[edge[0].low]);
            to_part_[leader(first)] += others > 0 && others % 2 == 0 ? length_of_edge : -length_of_edge;
        });
    }

    /// Whether most of the border is edges that are closed without the membrane: it parts two bodies.
    [[nodiscard]] bool parts_bodies(std::uint32_t t) { return to_part_[leader(t)] > 0; }

private:
    std::uint32_t leader(std::uint32_t t) {
        while (leader_[t] != t) t = leader_[t] = leader_[leader_[t]];
        return t;
    }

    std::vector<std::uint32_t> leader_;
    std::vector<double> to_part_;  ///< meters of border that speak for it, less those against
};

void drop_doubles(std::span<const Point> points, std::vector<Corners>& triangles) {
    const Doubles doubles(triangles);
    if (!doubles.any()) return;
    std::vector<Corners> singles;
    std::vector<bool> doubled;
    for (std::uint32_t t = 0; t < triangles.size(); ++t) {
        if (!doubles.is_first(t)) continue;
        singles.push_back(triangles[t]);
        doubled.push_back(doubles.is_doubled(t));
    }
    Membranes membranes(points, singles, doubled);
    triangles.clear();
    for (std::uint32_t t = 0; t < singles.size(); ++t)
        if (!doubled[t] || !membranes.parts_bodies(t)) triangles.push_back(singles[t]);
}

/// Slivers hold their shell together and go only when it is turned. The edges of their neighbors still touch.
void drop_slivers(std::span<const Point> points, std::vector<Corners>& triangles, double least_height) {
    std::erase_if(triangles, [&](const Corners& corners) {
        const Vector u = points[corners[1]] - points[corners[0]], v = points[corners[2]] - points[corners[0]], w = v - u;
        const double longest = std::max({dot(u, u), dot(v, v), dot(w, w)});
        const Vector doubled_area = cross(u, v);
        return !(dot(doubled_area, doubled_area) > least_height * least_height * longest);
    });
}

TriangleMesh compact(const std::vector<Point>& points, std::vector<Corners> triangles) {
    std::vector<std::uint32_t> number(points.size(), none);
    for (const Corners& corners : triangles)
        for (const std::uint32_t corner : corners) number[corner] = 0;
    TriangleMesh mesh;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (number[i] == none) continue;
        number[i] = static_cast<std::uint32_t>(mesh.points.size());
        mesh.points.push_back(points[i]);
    }
    for (Corners& corners : triangles)
        for (std::uint32_t& corner : corners) corner = number[corner];
    mesh.triangles = std::move(triangles);
    return mesh;
}

}  // namespace

CleanPart clean_part(const TriangleMesh& part, double tolerance) {
    CleanPart out;
    const Welded welded = weld(part.points, tolerance);
    std::vector<Corners> triangles = with_three_corners(part, welded);
    out.faults.degenerate = part.triangles.size() - triangles.size();
    std::size_t before = triangles.size();
    drop_doubles(welded.points, triangles);
    out.faults.doubled = before - triangles.size();
    turn_shells(welded.points, triangles, tolerance, out.faults);
    before = triangles.size();
    drop_slivers(welded.points, triangles, tolerance / 10);
    out.faults.degenerate += before - triangles.size();
    out.mesh = compact(welded.points, std::move(triangles));
    return out;
}

}  // namespace seamward
