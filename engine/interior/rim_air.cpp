// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/rim_air.h"

#include <algorithm>

namespace seamward {

namespace {

constexpr double farthest_look = 0.05;   // meters: beyond the thin cells along a floor or a wall
constexpr double nearest_look = 0.2e-3;  // meters
constexpr double touching = 1e-9;        // meters

}  // namespace

RimAir::RimAir(const Passages& passages, const Bodies& bodies) : passages_(passages), bodies_(bodies) {
    share_cells();
    flood();
}

void RimAir::share_cells() {
    const Air& air = passages_.air();
    body_.assign(air.complex.cells.size(), nobody);
    const auto look = [&](std::uint32_t cell, std::uint32_t stand) {
        const std::int32_t body = bodies_.of[stand];
        if (body < 0 || passages_[stand].clearance < passages_.least() || body_[cell] == body) return;
        body_[cell] = body_[cell] == nobody ? body : several;
    };
    for (std::uint32_t cell = 0; cell < body_.size(); ++cell) {
        if (air.solid[cell]) continue;
        look(cell, passages_.middle_of(cell));
        for (const std::uint32_t portal : air.portals_of(cell)) look(cell, portal);
    }
}

/// Air that is too narrow for any ball goes with the nearest that is not, counted in cells.
void RimAir::flood() {
    const Air& air = passages_.air();
    std::vector<std::uint32_t> open;
    for (std::uint32_t cell = 0; cell < body_.size(); ++cell) {
        if (body_[cell] != nobody) open.push_back(cell);
    }
    for (std::size_t at = 0; at < open.size(); ++at) {
        const std::uint32_t cell = open[at];
        for (const std::uint32_t i : air.portals_of(cell)) {
            const Portal& portal = air.complex.portals[i];
            const std::uint32_t next = portal.front == cell ? portal.back : portal.front;
            if (air.solid[next] || body_[next] != nobody) continue;
            body_[next] = body_[cell] == several ? of_nearest_stand(cell, passages_[i].at) : body_[cell];
            open.push_back(next);
        }
    }
}

/// Where there is room for a ball, narrower places nearby are ways out of that room.
std::int32_t RimAir::of_nearest_stand(std::uint32_t cell, const Point& to) const {
    constexpr double as_wide = 0.9;
    const std::span<const std::uint32_t> portals = passages_.air().portals_of(cell);
    double widest = passages_[passages_.middle_of(cell)].clearance;
    for (const std::uint32_t portal : portals) widest = std::max(widest, passages_[portal].clearance);
    const double enough = as_wide * std::min(widest, passages_.clearance().at(to));
    std::int32_t body = nobody;
    double nearest = 1e300;
    const auto look = [&](std::uint32_t stand) {
        const double off = distance(passages_[stand].at, to);
        if (bodies_.of[stand] < 0 || passages_[stand].clearance < enough || off >= nearest) return;
        nearest = off;
        body = bodies_.of[stand];
    };
    look(passages_.middle_of(cell));
    for (const std::uint32_t portal : portals) look(portal);
    return body;
}

/// Cells along floors and walls reach through the gaps there, and so into two bodies: a look to where there is more room tells
/// on which side one is.
std::int32_t RimAir::look_on(const Point& from, const Vector& onward) const {
    const Air& air = passages_.air();
    Point at = from;
    for (double reach = farthest_look; reach > nearest_look; reach /= 2) {
        if (air.tree.is_near(from, from + onward * reach, touching)) continue;
        at = from + onward * (reach * 0.9);
        break;
    }
    const std::uint32_t cell = air.complex.cell_at(at);
    if (!air.solid[cell] && body_[cell] >= 0) return body_[cell];
    return of_nearest_stand(air.solid[cell] ? air.complex.cell_at(from) : cell, at);
}

std::optional<std::int32_t> RimAir::body_at(const Point& at, const Vector& onward, std::uint32_t side) const {
    const std::uint32_t cell = passages_.air().complex.cell_at(at, side);
    if (passages_.air().solid[cell] || body_[cell] == nobody) return std::nullopt;
    const std::int32_t body = body_[cell] == several ? look_on(at, onward) : body_[cell];
    return body >= 0 ? std::optional(body) : std::nullopt;
}

}  // namespace seamward
