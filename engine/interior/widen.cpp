// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/widen.h"

#include <algorithm>

namespace seamward {

namespace {

constexpr std::size_t most_places = 4;
constexpr std::size_t most_corners = 6;  // to a side
constexpr int turns = 5;

/// From a place to a way and on along it to its end.
struct Branch {
    double radius = 0;
    Point tightest;
    std::vector<Point> corners;  ///< the place itself left out
};

/// The widest branch from a place to one of the next corners of a line, and along the rest of it.
Branch widest_branch(const Clearance& clearance, const Stand& from, const std::vector<Point>& line, double tolerance) {
    std::vector<Nearest> rest(line.size());  // what is nearest to the line from each corner on, or nothing
    double radius = from.clearance;
    Nearest tight{radius, Nearest::none, {}, {}};
    for (std::size_t i = line.size(); i-- > 0;) {
        if (i + 1 < line.size()) {
            const Nearest near = clearance.tree().nearest(line[i], line[i + 1], radius);
            if (near.found()) {
                tight = near;
                radius = near.distance;
            }
        }
        rest[i] = tight;
    }
    Branch best;
    for (std::size_t i = 0; i < std::min(line.size(), most_corners); ++i) {
        if (rest[i].distance <= best.radius) continue;
        const ClearWay way = clearance.way(from.at, line[i], from.clearance, 1 - tolerance, turns);
        const double here = std::min(way.clearance, rest[i].distance);
        if (here <= best.radius) continue;
        best = {here, way.clearance <= rest[i].distance ? way.tightest : rest[i].on_query, way.corners};
        best.corners.insert(best.corners.end(), line.begin() + static_cast<std::ptrdiff_t>(i), line.end());
        if (here >= from.clearance * (1 - 2 * tolerance)) break;
    }
    return best;
}

/// The segment of the way that is nearest to a point.
std::size_t nearest_segment(const ThroatWay& way, const Point& to) {
    std::size_t best = 0;
    double least = 1e300;
    for (std::size_t i = 0; i + 1 < way.corners.size(); ++i) {
        const Vector along = way.corners[i + 1] - way.corners[i];
        const double size = dot(along, along);
        const double part = size > 0 ? std::clamp(dot(to - way.corners[i], along) / size, 0.0, 1.0) : 0;
        const double d = distance(way.corners[i] + along * part, to);
        if (d >= least) continue;
        least = d;
        best = i;
    }
    return best;
}

}  // namespace

bool widen(const Clearance& clearance, std::vector<Stand> places, double tolerance, ThroatWay& way) {
    if (way.corners.size() < 2) return false;
    std::stable_sort(places.begin(), places.end(), [](const Stand& a, const Stand& b) { return a.clearance > b.clearance; });
    if (places.size() > most_places) places.resize(most_places);
    const double before = way.radius;
    for (const Stand& place : places) {
        if (place.clearance <= way.radius * (1 + 2 * tolerance)) break;
        const std::size_t split = nearest_segment(way, way.tightest);
        const auto middle = way.corners.begin() + static_cast<std::ptrdiff_t>(split) + 1;
        const std::vector<Point> back(std::make_reverse_iterator(middle), way.corners.rend()), on(middle, way.corners.end());
        const Branch first = widest_branch(clearance, place, back, tolerance);
        if (first.radius <= way.radius * (1 + tolerance)) continue;
        const Branch second = widest_branch(clearance, place, on, tolerance);
        if (second.radius <= way.radius * (1 + tolerance)) continue;
        way.corners.assign(first.corners.rbegin(), first.corners.rend());
        way.corners.push_back(place.at);
        way.corners.insert(way.corners.end(), second.corners.begin(), second.corners.end());
        way.radius = std::min({first.radius, second.radius, place.clearance});
        way.tightest = place.clearance <= way.radius   ? place.at
                       : first.radius <= second.radius ? first.tightest
                                                       : second.tightest;
    }
    return way.radius > before;
}

}  // namespace seamward
