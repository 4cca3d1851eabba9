// SPDX-License-Identifier: GPL-3.0-or-later
#include "adapt/way_line.h"

#include <array>
#include <cmath>

namespace seamward::viewer {

namespace {

constexpr int pieces_per_leg = 24;
constexpr double same_place = 1e-6;  ///< meters

Point mixed(const Point& a, const Point& b, double share) {
    return {std::lerp(a.x, b.x, share), std::lerp(a.y, b.y, share), std::lerp(a.z, b.z, share)};
}

/// One leg of the curve, from p[1] to p[2], by the pyramid of Barry and Goldman with knots at the roots of distances.
std::vector<Point> leg(const std::array<Point, 4>& p) {
    std::array<double, 4> knot{};
    for (std::size_t i = 1; i < 4; ++i) knot[i] = knot[i - 1] + std::sqrt(distance(p[i - 1], p[i]));
    std::vector<Point> line;
    for (int piece = 0; piece <= pieces_per_leg; ++piece) {
        const double t = std::lerp(knot[1], knot[2], static_cast<double>(piece) / pieces_per_leg);
        const auto between = [&](const Point& a, const Point& b, std::size_t from, std::size_t to) {
            return mixed(a, b, (t - knot[from]) / (knot[to] - knot[from]));
        };
        const Point a = between(p[0], p[1], 0, 1);
        const Point b = between(p[1], p[2], 1, 2);
        const Point c = between(p[2], p[3], 2, 3);
        line.push_back(between(between(a, b, 0, 2), between(b, c, 1, 3), 1, 2));
    }
    return line;
}

/// The point as far beyond `end` as `before` is on this side of it.
Point mirrored(const Point& before, const Point& end) { return mixed(before, end, 2); }

}  // namespace

std::vector<std::vector<Point>> smooth_legs(std::span<const Point> stops) {
    std::vector<Point> apart;  // no two in a row in one place
    for (const Point& stop : stops) {
        if (apart.empty() || distance(apart.back(), stop) > same_place) apart.push_back(stop);
    }
    std::vector<std::vector<Point>> legs;
    std::size_t at = 0;  // in `apart`
    for (std::size_t i = 1; i < stops.size(); ++i) {
        if (at + 1 == apart.size() || distance(apart[at], stops[i]) <= same_place) {
            legs.emplace_back();
            continue;
        }
        const Point& from = apart[at];
        const Point& to = apart[at + 1];
        const Point before = at > 0 ? apart[at - 1] : mirrored(to, from);
        const Point after = at + 2 < apart.size() ? apart[at + 2] : mirrored(from, to);
        legs.push_back(leg({before, from, to, after}));
        ++at;
    }
    return legs;
}

std::vector<std::vector<Point>> dashes(std::span<const Point> line, double length) {
    std::vector<std::vector<Point>> all;
    double gone = 0;  // meters from the start
    bool drawing = false;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const double piece = distance(line[i - 1], line[i]);
        double done = 0;  // meters of this piece
        while (done < piece) {
            const auto number = static_cast<long long>(std::floor((gone + done) / length));
            const double next = std::min(piece, (static_cast<double>(number) + 1) * length - gone);
            const double end = next > done ? next : piece;  // rounding must not stand still
            if (number % 2 == 0) {
                if (!drawing) all.push_back({mixed(line[i - 1], line[i], done / piece)});
                all.back().push_back(mixed(line[i - 1], line[i], end / piece));
            }
            drawing = number % 2 == 0;
            done = end;
        }
        gone += piece;
    }
    return all;
}

WayLine way_line(const Survey& survey, const EntryPath& path, const PictureFrame& frame) {
    WayLine way;
    std::vector<Point> points;
    for (std::size_t step = 0; step < path.gaps.size(); ++step) {
        const Gap& gap = survey[path.gaps[step]];
        if (!gap.at) continue;
        way.stops.push_back({step, frame.to_scene(*gap.at)});
        points.push_back(way.stops.back().at);
    }
    const std::vector<std::vector<Point>> lines = smooth_legs(points);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        way.legs.push_back({lines[i], way.stops[i].step + 1 == way.stops[i + 1].step});
    }
    return way;
}

}  // namespace seamward::viewer
