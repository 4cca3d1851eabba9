// SPDX-License-Identifier: GPL-3.0-or-later
#include "adapt/way_line.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <set>
#include <utility>

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

std::vector<Point> straight(const Point& from, const Point& to) {
    std::vector<Point> line;
    if (distance(from, to) <= same_place) return line;
    for (int piece = 0; piece <= pieces_per_leg; ++piece)
        line.push_back(mixed(from, to, static_cast<double>(piece) / pieces_per_leg));
    return line;
}

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
    double left = length;  // meters of this dash, or of this gap between two
    bool drawing = true;
    bool begun = false;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const double piece = distance(line[i - 1], line[i]);
        double done = 0;  // meters of this piece
        while (piece - done > length * 1e-9) {
            const double end = std::min(piece, done + left);
            if (drawing) {
                if (!begun) all.push_back({mixed(line[i - 1], line[i], done / piece)});
                all.back().push_back(mixed(line[i - 1], line[i], end / piece));
                begun = true;
            }
            left -= end - done;
            done = end;
            if (left > length * 1e-9) continue;
            left = length;
            drawing = !drawing;
            begun = false;
        }
    }
    return all;
}

std::vector<std::vector<Point>> joint_lines(const Survey& survey, std::span<const RankedPath> paths, const RankedPath* but,
                                            const PictureFrame& frame) {
    std::set<std::pair<GapIndex, GapIndex>> told;
    std::vector<std::vector<Point>> lines;
    const auto add = [&](const EntryPath& path, bool draw) {
        std::optional<GapIndex> last;  // the gap before, if it has a position
        for (const GapIndex gap : path.gaps) {
            if (!survey[gap].at) {
                last.reset();
                continue;
            }
            if (last && told.insert(std::minmax(*last, gap)).second && draw) {
                lines.push_back({frame.to_scene(*survey[*last].at), frame.to_scene(*survey[gap].at)});
            }
            last = gap;
        }
    };
    if (but != nullptr) add(but->path, false);
    for (const RankedPath& ranked : paths) add(ranked.path, true);
    return lines;
}

WayLine way_line(const Survey& survey, const EntryPath& path, const PictureFrame& frame) {
    WayLine way;
    std::vector<Point> run;  // stops without a missing one between them
    const auto end_run = [&] {
        for (std::vector<Point>& line : smooth_legs(run)) way.legs.push_back({std::move(line), true});
        run.clear();
    };
    for (std::size_t step = 0; step < path.gaps.size(); ++step) {
        const Gap& gap = survey[path.gaps[step]];
        if (!gap.at) continue;
        const Point at = frame.to_scene(*gap.at);
        if (!way.stops.empty() && way.stops.back().step + 1 != step) {
            end_run();
            way.legs.push_back({straight(way.stops.back().at, at), false});
        }
        way.stops.push_back({step, at});
        run.push_back(at);
    }
    end_run();
    return way;
}

}  // namespace seamward::viewer
