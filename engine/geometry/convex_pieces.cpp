// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/convex_pieces.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>
#include <utility>

#include "geometry/remainder.h"

namespace seamward {

namespace {

constexpr std::uint32_t none = 0xffffffff;

/// Whether the way p, a, q turns left at a, or right by so little that a lies within the slack of the straight way.
bool turns_left(Point2 p, Point2 a, Point2 q, double slack) {
    const double turn = cross(a - p, q - a);
    if (turn > 0) return true;
    const Point2 across = q - p;
    return dot(a - p, q - a) > 0 && -turn <= slack * std::sqrt(dot(across, across));
}

/// Polygons made of half-edges, each next to the one that runs the other way in its neighbor.
class Polygons {
public:
    Polygons(std::vector<Point2> corners, const std::vector<std::array<std::uint32_t, 3>>& triangles)
        : corners_(std::move(corners)), gone_(3 * triangles.size(), false), twin_(3 * triangles.size(), none) {
        for (const auto& triangle : triangles) {
            const auto base = static_cast<std::uint32_t>(origin_.size());
            for (std::uint32_t i = 0; i < 3; ++i) {
                origin_.push_back(triangle[i]);
                next_.push_back(base + (i + 1) % 3);
                previous_.push_back(base + (i + 2) % 3);
            }
        }
        pair_up();
    }

    void merge(double slack) {
        std::vector<std::pair<double, std::uint32_t>> diagonals;
        for (std::uint32_t h = 0; h < origin_.size(); ++h) {
            if (twin_[h] == none || h > twin_[h]) continue;
            const Point2 along = corners_[origin_[next_[h]]] - corners_[origin_[h]];
            diagonals.emplace_back(-dot(along, along), h);
        }
        std::sort(diagonals.begin(), diagonals.end());
        for (const auto& [length, h] : diagonals)
            if (stays_convex(h, slack) && stays_convex(twin_[h], slack)) take_out(h);
    }

    [[nodiscard]] std::vector<std::vector<std::uint32_t>> list() const {
        std::vector<std::vector<std::uint32_t>> out;
        std::vector<bool> seen = gone_;
        for (std::uint32_t start = 0; start < origin_.size(); ++start) {
            if (seen[start]) continue;
            std::vector<std::uint32_t>& loop = out.emplace_back();
            for (std::uint32_t h = start; !seen[h]; h = next_[h]) {
                seen[h] = true;
                loop.push_back(origin_[h]);
            }
        }
        return out;
    }

private:
    void pair_up() {
        std::vector<std::array<std::uint32_t, 3>> ends;  // lower, higher, half-edge
        for (std::uint32_t h = 0; h < origin_.size(); ++h) {
            const std::uint32_t from = origin_[h], to = origin_[next_[h]];
            ends.push_back({std::min(from, to), std::max(from, to), h});
        }
        std::sort(ends.begin(), ends.end());
        for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
            if (ends[i][0] != ends[i + 1][0] || ends[i][1] != ends[i + 1][1]) continue;
            twin_[ends[i][2]] = ends[i + 1][2];
            twin_[ends[i + 1][2]] = ends[i][2];
        }
    }

    /// Whether the corner at which a half-edge begins is convex without it.
    [[nodiscard]] bool stays_convex(std::uint32_t h, double slack) const {
        const std::uint32_t out = next_[twin_[h]];
        return turns_left(corners_[origin_[previous_[h]]], corners_[origin_[h]], corners_[origin_[next_[out]]], slack);
    }

    void take_out(std::uint32_t h) {
        const std::uint32_t t = twin_[h];
        link(previous_[h], next_[t]);
        link(previous_[t], next_[h]);
        gone_[h] = gone_[t] = true;
    }

    void link(std::uint32_t from, std::uint32_t to) {
        next_[from] = to;
        previous_[to] = from;
    }

    std::vector<Point2> corners_;
    std::vector<bool> gone_;
    std::vector<std::uint32_t> origin_, next_, previous_, twin_;
};

}  // namespace

bool is_convex(const Loop& loop, double slack) {
    const std::size_t n = loop.size();
    if (n < 3) return false;
    bool strict = true;
    int turns = 0;  // of the edges between leftward and rightward
    for (std::size_t i = 0; i < n; ++i) {
        const Point2 a = loop[i], b = loop[(i + 1) % n], c = loop[(i + 2) % n];
        if (!turns_left(a, b, c, slack)) return false;
        strict = strict && cross(b - a, c - b) > 0;
        turns += (b.x < a.x) != (c.x < b.x) ? 1 : 0;
    }
    if (turns > 2 && strict) return false;
    if (strict) return true;
    // Corners that hardly miss may add up.
    for (std::size_t i = 0; i < n; ++i) {
        const Point2 a = loop[i], along = loop[(i + 1) % n] - a;
        const double least = -slack * std::sqrt(dot(along, along));
        for (const Point2 p : loop)
            if (cross(along, p - a) < least) return false;
    }
    return true;
}

std::optional<std::vector<std::vector<std::uint32_t>>> convex_pieces(const Figure& figure, double slack) {
    std::vector<Point2> corners = figure.outline;
    for (const Loop& hole : figure.holes) corners.insert(corners.end(), hole.begin(), hole.end());
    std::vector<std::array<std::uint32_t, 3>> triangles;
    try {
        triangles = triangulate(figure);
    } catch (const std::logic_error&) {
        return std::nullopt;
    }
    const Polygons apart(corners, triangles);
    for (const double allowed : {slack, slack / 2, 0.0}) {
        Polygons polygons = apart;
        polygons.merge(allowed);
        std::vector<std::vector<std::uint32_t>> pieces = polygons.list();
        const bool all_convex = std::all_of(pieces.begin(), pieces.end(), [&](const std::vector<std::uint32_t>& piece) {
            Loop loop;
            for (const std::uint32_t corner : piece) loop.push_back(corners[corner]);
            return is_convex(loop, 2 * slack);
        });
        if (all_convex) return pieces;
    }
    return apart.list();
}

}  // namespace seamward
