// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/mouth_way.h"

#include <algorithm>

namespace seamward {

std::uint32_t stand_beside(const Passages& passages, const Bodies& bodies, const Openings& openings, const Opening& opening,
                           std::int32_t body, double radius) {
    constexpr std::size_t most_cells = 32;
    const Air& air = passages.air();
    const Point& at = passages[opening.mouth[0]].at;
    const Portal& mouth = air.complex.portals[opening.mouth[0]];
    std::vector<std::uint32_t> cells{openings.body_of_cell[mouth.front] == body ? mouth.front : mouth.back};
    std::uint32_t best = Openings::none;
    const auto look = [&](std::uint32_t stand) {
        if (passages[stand].clearance < radius || bodies.of[stand] != body || openings.body_at(passages, stand) != body) return;
        if (best == Openings::none || distance(passages[stand].at, at) < distance(passages[best].at, at)) best = stand;
    };
    for (std::size_t k = 0; k < cells.size() && best == Openings::none; ++k) {
        look(passages.middle_of(cells[k]));
        for (const std::uint32_t portal : air.portals_of(cells[k])) {
            look(portal);
            const Portal& p = air.complex.portals[portal];
            const std::uint32_t next = p.front == cells[k] ? p.back : p.front;
            if (cells.size() == most_cells || openings.body_of_cell[next] != body || passages[portal].clearance < radius)
                continue;
            if (std::ranges::find(cells, next) == cells.end()) cells.push_back(next);
        }
    }
    return best;
}

bool lead_on(const Passages& passages, std::uint32_t to, double least, ThroatWay& way) {
    constexpr int turns = 5;
    constexpr double exact = 5e-4, less = 1e-3;  // of the radius
    const ClearWay on =
        passages.clearance().way(way.corners.back(), passages[to].at, {way.radius, 1 - exact, turns, least * (1 - less)});
    if (on.clearance < least) return false;
    if (on.clearance < way.radius) {
        way.radius = on.clearance;
        way.tightest = on.tightest;
    }
    way.corners.insert(way.corners.end(), on.corners.begin(), on.corners.end());
    way.corners.push_back(passages[to].at);
    return true;
}

ThroatWay way_through_mouth(const Passages& passages, const Bodies& bodies, const Openings& openings, const Opening& opening,
                            double tolerance) {
    constexpr int effort = 240;
    constexpr double to_each_side = 1.5;  // radii
    constexpr double nearly = 0.97;       // of the radius: stands are placed a little roughly
    const CellComplex& complex = passages.air().complex;
    const std::uint32_t widest =
        std::ranges::max(opening.mouth, {}, [&](std::uint32_t portal) { return passages[portal].clearance; });
    const std::span<const Point> corners = complex.corners_of(complex.portals[widest]);
    const Stand place = passages.clearance()
                            .highest(ConvexPolygon(corners.begin(), corners.end()),
                                     {.tolerance = tolerance, .effort = effort, .floor = passages[widest].clearance * nearly})
                            .stand;
    if (place.clearance < passages.least()) return {};
    Vector normal = doubled_area(corners);
    normal = normal * (1 / length(normal));
    const Point& front = complex.cells[complex.portals[widest].front].middle;
    if ((dot(normal, front - corners[0]) > 0) != (openings.body_of_cell[complex.portals[widest].front] == opening.second))
        normal = normal * -1;  // toward the second body
    ThroatWay way{place.clearance, place.at, {}, {}, {widest}};
    for (const bool second : {false, true}) {
        const Point off = place.at + normal * ((second ? 1 : -1) * to_each_side * place.clearance);
        const Nearest near = passages.clearance().tree().nearest(place.at, off, way.radius);
        if (near.found()) {
            way.radius = near.distance;
            way.tightest = near.on_query;
        }
        if (way.radius < passages.least()) return {};
        way.corners.push_back(off);
    }
    way.corners.insert(way.corners.begin() + 1, place.at);
    way.ends = {stand_beside(passages, bodies, openings, opening, opening.first, nearly * way.radius),
                stand_beside(passages, bodies, openings, opening, opening.second, nearly * way.radius)};
    if (way.ends[0] == Openings::none || way.ends[1] == Openings::none) return {};
    for (const std::uint32_t end : {way.ends[1], way.ends[0]}) {
        if (!lead_on(passages, end, passages.least(), way)) return {};
        std::reverse(way.corners.begin(), way.corners.end());
    }
    return way;
}

}  // namespace seamward
