// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/room_places.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

namespace seamward::viewer {

namespace {

/// How far a point lies inside of a figure: the distance to its border; negative outside.
double depth_in(const Figure& figure, Point2 at) {
    double nearest = std::numeric_limits<double>::max();
    bool inside = false;
    const auto pass = [&](const Loop& loop) {
        for (std::size_t i = 0, j = loop.size() - 1; i < loop.size(); j = i++) {
            const Point2 from = loop[j];
            const Point2 step = loop[i] - from;
            if ((loop[i].y > at.y) != (from.y > at.y) && at.x < from.x + (at.y - from.y) / step.y * step.x) inside = !inside;
            const double size = dot(step, step);
            const double share = size > 0 ? std::clamp(dot(at - from, step) / size, 0.0, 1.0) : 0;
            const Point2 off = at - (from + step * share);
            nearest = std::min(nearest, std::hypot(off.x, off.y));
        }
    };
    pass(figure.outline);
    for (const Loop& hole : figure.holes) pass(hole);
    return inside ? nearest : -nearest;
}

}  // namespace

std::vector<Point> room_places(const MiddleSurface& room, const HouseFrame& frame) {
    constexpr double over_floor = 0.12;  // where a room's middle surface lies
    constexpr int pieces = 24;           // of the longer side of its plan
    constexpr double apart = 0.5;        // meters
    constexpr std::size_t most = 24;
    const Loop& loop = room.figure.outline;
    if (loop.size() < 3 || doubled_area(loop) == 0) return {};
    Point2 low = loop.front();
    Point2 high = low;
    for (const Point2 at : loop) {
        low = {std::min(low.x, at.x), std::min(low.y, at.y)};
        high = {std::max(high.x, at.x), std::max(high.y, at.y)};
    }
    struct Spot {
        Point2 at;
        double depth;
    };
    std::vector<Spot> spots;
    const double step = std::max(high.x - low.x, high.y - low.y) / pieces;
    for (double y = low.y + step / 2; y < high.y; y += step) {
        for (double x = low.x + step / 2; x < high.x; x += step) {
            const double depth = depth_in(room.figure, {x, y});
            if (depth > 0) spots.push_back({{x, y}, depth});
        }
    }
    std::ranges::stable_sort(spots, std::ranges::greater(), &Spot::depth);
    std::vector<Spot> chosen;
    for (const Spot& spot : spots) {
        const auto near = [&](const Spot& other) { return std::hypot(spot.at.x - other.at.x, spot.at.y - other.at.y) < apart; };
        if (chosen.size() < most && std::ranges::none_of(chosen, near)) chosen.push_back(spot);
    }
    std::vector<Point> places;
    for (const Spot& spot : chosen)
        places.push_back(frame.to_scene(room.frame.at(spot.at.x, spot.at.y, 0) + Vector{0, 0, -over_floor}));
    return places;
}

}  // namespace seamward::viewer
