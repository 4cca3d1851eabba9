// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/cell_shares.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>
#include <utility>

#include "geometry/plane3.h"
#include "graph/flow.h"

namespace seamward {

namespace {

constexpr double roomy = 0.9;  // of the cap: a portal as wide as that is no mouth, but within a cell that reaches into two bodies
constexpr double wider = 1.03;   // a cell where a ball larger by this fits begins to widen
constexpr double favor = 0.99;   // of its area counts what lies next to the second body: joints with parallel faces part there
constexpr double grain = 1e-10;  // square meters that areas are counted in

constexpr std::uint32_t nowhere = 0xffffffff;

}  // namespace

CellShares::CellShares(const Passages& passages, const Bodies& bodies)
    : passages_(passages), complex_(passages.air().complex), is_hole_(complex_.portals.size()), along_(complex_.portals.size()) {
    const std::size_t cells = complex_.cells.size();
    body_.assign(cells, -1);
    room_.assign(cells, 0);
    kept_.assign(cells, 0);
    const auto look = [&](std::uint32_t cell, std::uint32_t stand) {
        if (bodies.of[stand] < 0 || passages[stand].clearance <= room_[cell]) return;
        room_[cell] = passages[stand].clearance;
        body_[cell] = bodies.of[stand];
    };
    for (std::uint32_t cell = 0; cell < cells; ++cell) {
        if (passages.air().solid[cell]) continue;
        look(cell, passages.middle_of(cell));
        for (const std::uint32_t portal : passages.air().portals_of(cell)) look(cell, portal);
    }
    climb();
    for (const Body& body : bodies.list) {
        if (!passages.is_portal(body.seed)) kept_[body.seed - complex_.portals.size()] = 1;
    }
    settle();
    part();
}

bool CellShares::is_border(std::uint32_t portal) const {
    const std::int32_t a = body_[complex_.portals[portal].front], b = body_[complex_.portals[portal].back];
    const double clearance = passages_[portal].clearance;
    return a >= 0 && b >= 0 && a != b && clearance >= passages_.least() && clearance < passages_.clearance().cap() * roomy;
}

bool CellShares::is_sharp(std::uint32_t portal) const {
    const double wide = wider * passages_[portal].clearance;
    return room_[complex_.portals[portal].front] > wide && room_[complex_.portals[portal].back] > wide;
}

/// A cell goes with the widest one that one comes to from it by going on to wider ones: what is narrow at the edge of a room is
/// of the room, whichever ball got there first.
void CellShares::climb() {
    constexpr double higher = 1.05;
    std::vector<std::uint32_t> up(body_.size());
    for (std::uint32_t cell = 0; cell < body_.size(); ++cell) {
        up[cell] = cell;
        if (body_[cell] < 0) continue;
        double best = higher * room_[cell];
        for (const std::uint32_t i : passages_.air().portals_of(cell)) {
            const Portal& portal = complex_.portals[i];
            const std::uint32_t next = portal.front == cell ? portal.back : portal.front;
            if (body_[next] < 0 || passages_[i].clearance < 0.97 * room_[cell] || room_[next] <= best) continue;
            best = room_[next];
            up[cell] = next;
        }
    }
    std::vector<std::int32_t> settled(body_.size());
    for (std::uint32_t cell = 0; cell < body_.size(); ++cell) {
        std::uint32_t top = cell;
        while (up[top] != top) top = up[top];  // rooms only grow on the way
        settled[cell] = body_[top];
    }
    body_ = std::move(settled);
}

/// Of two bodies the first takes the cells of a joint up to where it widens into the second, so that the joint is not cut here
/// and there.
void CellShares::settle() {
    std::vector<double> level(body_.size(),
                              passages_.clearance().cap());  // of the narrowest portal that a cell was taken through
    std::vector<std::uint32_t> open;
    for (std::uint32_t i = 0; i < complex_.portals.size(); ++i) {
        if (is_border(i)) open.push_back(i);
    }
    while (!open.empty()) {
        const std::uint32_t portal = open.back();
        open.pop_back();
        if (!is_border(portal)) continue;
        std::uint32_t from = complex_.portals[portal].front, to = complex_.portals[portal].back;
        if (body_[from] > body_[to]) std::swap(from, to);
        const double through = std::min(level[from], passages_[portal].clearance);
        if (kept_[to] || room_[to] >= passages_.clearance().cap() * roomy || room_[to] > wider * through) continue;
        body_[to] = body_[from];
        level[to] = through;
        for (const std::uint32_t next : passages_.air().portals_of(to)) {
            if (is_border(next)) open.push_back(next);
        }
    }
}

/// Looks around each border, the widest first, for the cells that are no wider: both ways to where either body widens.
void CellShares::part() {
    std::vector<std::uint32_t> borders;
    for (std::uint32_t i = 0; i < complex_.portals.size(); ++i) {
        if (is_border(i)) borders.push_back(i);
    }
    std::stable_sort(borders.begin(), borders.end(),
                     [&](std::uint32_t a, std::uint32_t b) { return passages_[a].clearance > passages_[b].clearance; });
    place_.assign(complex_.cells.size(), nowhere);
    std::vector<char> taken(complex_.cells.size(), 0);
    std::vector<double> level(complex_.cells.size(), 0);  // of the narrowest portal that a cell is taken through
    for (const std::uint32_t border : borders) {
        for (const std::uint32_t cell : {complex_.portals[border].front, complex_.portals[border].back})
            level[cell] = std::max(level[cell], passages_[border].clearance);
    }
    for (const std::uint32_t border : borders) {
        if (!is_border(border)) continue;
        const Portal& portal = complex_.portals[border];
        const std::int32_t first = std::min(body_[portal.front], body_[portal.back]),
                           second = std::max(body_[portal.front], body_[portal.back]);
        std::vector<std::uint32_t> zone;
        const auto take = [&](std::uint32_t cell, double through) {
            if (taken[cell] || kept_[cell] || (body_[cell] != first && body_[cell] != second)) return;
            const double most = std::max(level[cell], through);
            if (room_[cell] >= passages_.clearance().cap() * roomy || room_[cell] > wider * most) return;
            taken[cell] = 1;
            level[cell] = most;
            zone.push_back(cell);
        };
        take(portal.front, 0);
        take(portal.back, 0);
        for (std::size_t k = 0; k < zone.size(); ++k) {
            const std::uint32_t cell = zone[k];
            for (const std::uint32_t i : passages_.air().portals_of(cell)) {
                const double clearance = passages_[i].clearance;
                if (clearance < passages_.least()) continue;
                const Portal& p = complex_.portals[i];
                take(p.front == cell ? p.back : p.front, std::min(level[cell], clearance));
            }
        }
        if (!zone.empty()) part_zone(zone, first, second);
    }
}

void CellShares::part_zone(const std::vector<std::uint32_t>& zone, std::int32_t first, std::int32_t second) {
    std::vector<std::int32_t> before;
    for (std::uint32_t k = 0; k < zone.size(); ++k) {
        place_[zone[k]] = k + 2;
        before.push_back(body_[zone[k]]);
    }
    cut_zone(zone, first, second);
    join_along(zone);
    const bool holes = are_holes(zone);
    for (std::size_t k = 0; k < zone.size(); ++k) {
        place_[zone[k]] = nowhere;
        if (!holes) body_[zone[k]] = before[k];
    }
    if (!holes) return;
    for (const std::uint32_t cell : zone) {
        for (const std::uint32_t i : passages_.air().portals_of(cell)) is_hole_[i] = is_border(i);
    }
}

/// Whether the borders in and around some cells are several holes in one plane, and the cells too thin for a ball of their size
/// to roll from one to the other between what stands on both sides.
bool CellShares::are_holes(const std::vector<std::uint32_t>& zone) {
    constexpr double flat = 1e-6;  // meters off the plane
    std::optional<Plane3> plane;
    std::uint32_t one = nowhere;
    bool several = false;
    double widest = 0, thick = 0;
    const auto farthest = [&](std::span<const Point> corners) {
        double most = 0;
        for (const Point& p : corners) most = std::max(most, std::abs(plane->height_of(p)));
        return most;
    };
    for (const std::uint32_t cell : zone) {
        for (const std::uint32_t i : passages_.air().portals_of(cell)) {
            if (!is_border(i)) continue;
            const std::span<const Point> corners = complex_.corners_of(complex_.portals[i]);
            if (!plane) {
                const Vector area = doubled_area(corners), normal = area * (1 / length(area));
                plane = Plane3{normal, dot(normal, {corners[0].x, corners[0].y, corners[0].z})};
                one = along_.find(i);
            }
            if (farthest(corners) > flat) return false;
            several = several || along_.find(i) != one;
            widest = std::max(widest, passages_[i].clearance);
        }
    }
    if (!several) return false;
    for (const std::uint32_t cell : zone) {
        for (const std::uint32_t i : passages_.air().portals_of(cell)) {
            if (passages_[i].clearance >= passages_.least())
                thick = std::max(thick, farthest(complex_.corners_of(complex_.portals[i])));
        }
    }
    return thick < 2 * widest;
}

/// Parts cells by the least cut between what is beside them of the two bodies.
void CellShares::cut_zone(const std::vector<std::uint32_t>& zone, std::int32_t first, std::int32_t second) {
    constexpr std::uint32_t to_second = 0, to_first = 1;  // the cut that is told lies next to the source
    std::vector<FlowEdge> edges;
    for (const std::uint32_t cell : zone) {
        for (const std::uint32_t i : passages_.air().portals_of(cell)) {
            if (passages_[i].clearance < passages_.least()) continue;
            const Portal& p = complex_.portals[i];
            const std::uint32_t next = p.front == cell ? p.back : p.front;
            const bool within = place_[next] != nowhere;
            if (within && p.front != cell) continue;  // once is enough
            if (!within && body_[next] != first && body_[next] != second) continue;
            const std::uint32_t other = within ? place_[next] : body_[next] == first ? to_first : to_second;
            const double area = length(doubled_area(complex_.corners_of(p))) / 2 * (other == to_second ? favor : 1);
            const auto capacity = static_cast<std::int64_t>(std::llround(area / grain)) + 1;
            edges.push_back({place_[cell], other, capacity, capacity});
        }
    }
    GrowingFlow flow(static_cast<std::uint32_t>(zone.size()) + 2, to_second, to_first, edges);
    flow.open(edges.size());
    for (std::uint32_t k = 0; k < zone.size(); ++k) body_[zone[k]] = flow.on_source_side(k + 2) ? second : first;
}

/// Joins the portals within cells and around them that a ball goes between.
void CellShares::join_along(const std::vector<std::uint32_t>& zone) {
    std::vector<std::uint32_t> portals;
    for (const std::uint32_t cell : zone) {
        portals.clear();
        for (const std::uint32_t i : passages_.air().portals_of(cell)) {
            const Portal& p = complex_.portals[i];
            const bool is_within = place_[p.front] != nowhere && place_[p.back] != nowhere;
            if (passages_[i].clearance >= passages_.least() && (is_within || is_border(i))) portals.push_back(i);
        }
        join_in_cell(cell, portals);
    }
}

void CellShares::join_in_cell(std::uint32_t cell, const std::vector<std::uint32_t>& portals) {
    constexpr double as_wide = 0.6;
    for (std::size_t i = 0; i < portals.size(); ++i) {
        for (std::size_t j = i + 1; j < portals.size(); ++j) {
            const std::uint32_t a = along_.find(portals[i]), b = along_.find(portals[j]);
            const Stand &from = passages_[portals[i]], &to = passages_[portals[j]];
            const double ball = std::min(from.clearance, to.clearance);
            if (a == b || room_[cell] > wider * ball) continue;
            if (!passages_.clearance().tree().is_near(from.at, to.at, as_wide * ball))
                along_.join(std::min(a, b), std::max(a, b));
        }
    }
}

}  // namespace seamward
