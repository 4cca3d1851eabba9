// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/slope.h"

#include <algorithm>

namespace seamward {

namespace {

constexpr int steps = 10;
constexpr double stride = 0.5;     // radii
constexpr double as_wide = 0.999;  // of the stand's clearance: a ball that has to get through all the way

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

class Ascent {
public:
    Ascent(const Passages& passages, const Stand& start, double rise)
        : passages_(passages), start_(start), ball_(as_wide * start.clearance), wanted_(rise * start.clearance) {}

    Slope from(Point at) const {
        const Clearance& clearance = passages_.clearance();
        std::vector<Point> way{start_.at};
        for (int i = 0; i < steps; ++i) {
            const Nearest near = clearance.tree().nearest(at, clearance.cap());
            if (near.distance < ball_ || !is_clear(way.back(), at)) return {};
            way.push_back(at);
            if (near.distance >= wanted_) {
                const std::uint32_t top = best_of_cell(passages_, at);
                if (top != Slope::none && passages_[top].clearance >= wanted_ && is_clear(at, passages_[top].at)) {
                    way.push_back(passages_[top].at);
                    return {top, ball_, corners_of(way)};
                }
            }
            if (!near.found()) return {};
            at = at + (at - near.on_triangle) * stride;
        }
        return {};
    }

private:
    [[nodiscard]] bool is_clear(const Point& from, const Point& to) const {
        return !passages_.clearance().tree().nearest(from, to, ball_).found();
    }

    /// What lies between the ends of a way, without the corners that can be cut off.
    [[nodiscard]] std::vector<Point> corners_of(const std::vector<Point>& way) const {
        std::vector<Point> corners;
        for (std::size_t at = 0; at + 1 < way.size();) {
            std::size_t next = way.size() - 1;
            while (next > at + 1 && !is_clear(way[at], way[next])) --next;
            if (next + 1 < way.size()) corners.push_back(way[next]);
            at = next;
        }
        return corners;
    }

    const Passages& passages_;
    Stand start_;
    double ball_, wanted_;
};

}  // namespace

Slope slope_from(const Passages& passages, std::uint32_t stand, double rise) {
    const Stand& start = passages[stand];
    const Ascent ascent(passages, start, rise);
    if (!passages.is_portal(stand)) return ascent.from(start.at);
    const CellComplex& complex = passages.air().complex;
    const std::span<const Point> corners = complex.corners_of(complex.portals[stand]);
    Vector normal = doubled_area({corners.begin(), corners.end()});
    const double size = length(normal);
    if (!(size > 0)) return {};
    normal = normal * (start.clearance / size);
    Slope best;
    for (const double sign : {1.0, -1.0}) {
        Slope slope = ascent.from(start.at + normal * sign);
        if (slope.top == Slope::none) continue;
        if (best.top == Slope::none || passages[slope.top].clearance > passages[best.top].clearance) best = std::move(slope);
    }
    return best;
}

}  // namespace seamward
