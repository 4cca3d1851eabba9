// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/widen.h"

#include <algorithm>
#include <unordered_set>

namespace seamward {

namespace {

constexpr std::size_t most_places = 8;
constexpr std::size_t most_exits = 32;   // to a side
constexpr std::size_t most_seen = 8000;  // stands around a place
constexpr int turns = 5;

/// Stands around a place that are air of one body or the other and where the ball fits, the nearest first.
std::array<std::vector<std::uint32_t>, 2> exits_around(const Passages& passages, const Bodies& bodies, const Openings& openings,
                                                       std::size_t which, const Stand& place) {
    const Opening& opening = openings.list[which];
    const Air& air = passages.air();
    std::array<std::vector<std::uint32_t>, 2> exits;
    std::unordered_set<std::uint32_t> seen;
    std::vector<std::uint32_t> cells{air.complex.cell_at(place.at)};
    const auto look = [&](std::uint32_t stand) {
        if (!seen.insert(stand).second || passages[stand].clearance < 0.99 * place.clearance) return;
        const std::int32_t body = bodies.of[stand];
        if (body != openings.body_at(passages, stand)) return;
        if (body == opening.first) exits[0].push_back(stand);
        if (body == opening.second) exits[1].push_back(stand);
    };
    std::unordered_set<std::uint32_t> known(cells.begin(), cells.end());
    for (std::size_t k = 0; k < cells.size() && seen.size() < most_seen; ++k) {
        look(passages.middle_of(cells[k]));
        for (const std::uint32_t portal : air.portals_of(cells[k])) {
            const bool is_elsewhere = openings.is_border[portal] != 0 && openings.at_portal[portal] != which;
            if (is_elsewhere || passages[portal].clearance < 0.6 * place.clearance) continue;
            look(portal);
            const Portal& p = air.complex.portals[portal];
            const std::uint32_t next = p.front == cells[k] ? p.back : p.front;
            if (known.insert(next).second) cells.push_back(next);
        }
    }
    for (std::vector<std::uint32_t>& side : exits) {
        std::sort(side.begin(), side.end(), [&](std::uint32_t a, std::uint32_t b) {
            const double x = distance(passages[a].at, place.at), y = distance(passages[b].at, place.at);
            return x != y ? x < y : a < b;
        });
        if (side.size() > most_exits) side.resize(most_exits);
    }
    return exits;
}

/// From a place to one of the exits of a side and home from there; a radius of 0 where none can be reached.
ThroatWay branch(const Passages& passages, const WaysHome& home, const Stand& place, const std::vector<std::uint32_t>& exits,
                 double wider_than, double tolerance) {
    ThroatWay best;
    for (const std::uint32_t exit : exits) {
        const double least = std::max(best.radius, wider_than);
        const ClearWay out =
            passages.clearance().way(place.at, passages[exit].at, {place.clearance, 1 - tolerance, turns, least});
        if (out.clearance <= least) continue;
        ThroatWay way{std::min(out.clearance, place.clearance), out.tightest, out.corners, {exit, exit}, {}};
        way.corners.push_back(passages[exit].at);
        lead_home(passages, home, exit, tolerance, way);
        if (way.radius > least) best = std::move(way);
        if (best.radius >= place.clearance * (1 - 2 * tolerance)) break;
    }
    return best;
}

}  // namespace

bool widen(const Passages& passages, const Bodies& bodies, const WaysHome& home, const Openings& openings, std::size_t which,
           std::vector<Stand> places, double tolerance, ThroatWay& way) {
    std::stable_sort(places.begin(), places.end(), [](const Stand& a, const Stand& b) { return a.clearance > b.clearance; });
    if (places.size() > most_places) places.resize(most_places);
    bool wider = false;
    for (const Stand& place : places) {
        const double least = way.radius * (1 + 2 * tolerance);
        if (place.clearance <= least) break;
        const auto exits = exits_around(passages, bodies, openings, which, place);
        ThroatWay first = branch(passages, home, place, exits[0], least, tolerance);
        if (first.radius <= least) continue;
        ThroatWay second = branch(passages, home, place, exits[1], least, tolerance);
        if (second.radius <= least) continue;
        std::reverse(first.corners.begin(), first.corners.end());
        first.corners.push_back(place.at);
        first.corners.insert(first.corners.end(), second.corners.begin(), second.corners.end());
        first.ends[1] = second.ends[1];
        if (second.radius < first.radius) {
            first.radius = second.radius;
            first.tightest = second.tightest;
        }
        if (first.radius >= place.clearance) first.tightest = place.at;
        first.portals = way.portals;
        way = std::move(first);
        wider = true;
    }
    return wider;
}

}  // namespace seamward
