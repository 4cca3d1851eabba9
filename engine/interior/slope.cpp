// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/slope.h"

#include <algorithm>

namespace seamward {

namespace {

constexpr int steps = 10;
constexpr double stride = 0.5;      // radii
constexpr double as_wide = 0.9999;  // of the stand's clearance: a ball that has to get through all the way

/// The nearest stands of a cell where a ball is at home.
std::vector<std::uint32_t> homes_near(const Passages& passages, const Point& at, double ball) {
    constexpr std::size_t most = 4;
    const Air& air = passages.air();
    const std::uint32_t cell = air.complex.cell_at(at);
    if (air.solid[cell]) return {};
    std::vector<std::pair<double, std::uint32_t>> near;
    const auto look = [&](std::uint32_t stand) {
        if (passages[stand].clearance >= ball) near.emplace_back(distance(passages[stand].at, at), stand);
    };
    look(passages.middle_of(cell));
    for (const std::uint32_t portal : air.portals_of(cell)) look(portal);
    const std::size_t count = std::min(most, near.size());
    std::partial_sort(near.begin(), near.begin() + static_cast<std::ptrdiff_t>(count), near.end());
    std::vector<std::uint32_t> homes;
    for (std::size_t i = 0; i < count; ++i) homes.push_back(near[i].second);
    return homes;
}

class Ascent {
public:
    Ascent(const Passages& passages, const Stand& start, double wanted)
        : passages_(passages), start_(start), ball_(as_wide * start.clearance), wanted_(wanted) {}

    Slope from(Point at) const {
        const Clearance& clearance = passages_.clearance();
        std::vector<Point> way{start_.at};
        Slope best;
        for (int i = 0; i < steps; ++i) {
            const Nearest near = clearance.tree().nearest(at, clearance.cap());
            if (near.distance < ball_ || !is_clear(way.back(), at)) break;
            way.push_back(at);
            if (near.distance >= wanted_) {
                take_best(way, best);
                if (best.clearance >= wanted_ * as_wide) break;
            }
            if (!near.found()) break;
            at = at + (at - near.on_triangle) * stride;
        }
        best.clearance = ball_;
        return best;
    }

private:
    /// Of the stands that one comes to straight from the end of a way the one to which the largest ball gets.
    void take_best(std::vector<Point> way, Slope& best) const {
        const TriangleTree& tree = passages_.clearance().tree();
        for (const std::uint32_t top : homes_near(passages_, way.back(), wanted_)) {
            const double least = std::max(ball_, best.clearance);
            const double through = tree.nearest(way.back(), passages_[top].at, wanted_, least).distance;
            if (through < ball_ || through <= best.clearance) continue;
            way.push_back(passages_[top].at);
            best = {top, through, corners_of(way)};
            way.pop_back();
        }
    }

    [[nodiscard]] bool is_clear(const Point& from, const Point& to) const {
        return !passages_.clearance().tree().is_near(from, to, ball_);
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

Vector normal_of(std::span<const Point> corners) {
    const Vector normal = doubled_area(corners);
    const double size = length(normal);
    return size > 0 ? normal * (1 / size) : Vector{};
}

}  // namespace

Slope slope_from(const Passages& passages, std::uint32_t stand, double wanted) {
    const Stand& start = passages[stand];
    const Ascent ascent(passages, start, wanted);
    if (!passages.is_portal(stand)) return ascent.from(start.at);
    const CellComplex& complex = passages.air().complex;
    const std::span<const Point> corners = complex.corners_of(complex.portals[stand]);
    const Vector normal = normal_of(corners) * start.clearance;
    if (!(dot(normal, normal) > 0)) return {};
    Slope best;
    for (const double sign : {1.0, -1.0}) {
        Slope slope = ascent.from(start.at + normal * sign);
        if (slope.top == Slope::none) continue;
        if (best.top == Slope::none || passages[slope.top].clearance > passages[best.top].clearance) best = std::move(slope);
    }
    return best;
}

std::vector<Slope> straight_off(const Passages& passages, std::uint32_t portal, double ball) {
    const TriangleTree& tree = passages.clearance().tree();
    const CellComplex& complex = passages.air().complex;
    const Vector normal = normal_of(complex.corners_of(complex.portals[portal]));
    const Point& start = passages[portal].at;
    std::vector<Slope> ways;
    for (const double sign : {1.0, -1.0}) {
        const std::size_t before = ways.size();
        for (const double off : {1.5, 3.0, 6.0}) {  // radii
            const Point at = start + normal * (sign * off * ball);
            if (ways.size() > before || tree.is_near(start, at, ball)) break;
            for (const std::uint32_t home : homes_near(passages, at, ball)) {
                if (home != portal && !tree.is_near(at, passages[home].at, ball)) ways.push_back({home, ball, {at}});
            }
        }
    }
    return ways;
}

}  // namespace seamward
