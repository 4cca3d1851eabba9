// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/quantities.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

#include "materials/joints.h"

namespace seamward {

namespace {

/// Printed tables of yields are rounded by less than this.
constexpr double table_rounding = 0.02;
/// Of a unit or a step: what sums of sizes leave of rounding, far below anything cut or poured.
constexpr double whole_tolerance = 1e-9;

double whole_steps_up(double amount, double step) { return std::ceil(amount / step - whole_tolerance); }

double bead_volume(const Shape& shape, const Piece& piece) {
    const double width = bead_width(piece.width);
    if (std::holds_alternative<Hole>(shape)) return round_bead(width, joint_depth(width));
    return rectangular_bead(width, joint_depth(width), piece.length);
}

Purchase cheapest(const Need& need, const Material& material) {
    const auto units = static_cast<std::uint64_t>(whole_steps_up(need.amount, material.holds));
    Purchase best{need.material, need.amount, 0, units, material.price * static_cast<std::int64_t>(units)};
    if (material.in_case == 0) return best;
    // The cost is linear in the number of cases up to the last that is filled, so the least is at one of its ends.
    const std::uint64_t full = units / material.in_case;
    for (const std::uint64_t cases : {full, full + (units % material.in_case != 0 ? 1U : 0U)}) {
        const std::uint64_t held = cases * material.in_case;
        const std::uint64_t single = units > held ? units - held : 0;
        const Money cost =
            material.case_price * static_cast<std::int64_t>(cases) + material.price * static_cast<std::int64_t>(single);
        if (cost < best.cost) best = {need.material, need.amount, cases, single, cost};
    }
    return best;
}

}  // namespace

double rectangular_bead(double width, double depth, double length) { return width * depth * length; }
double fillet_bead(double leg, double other_leg, double length) { return leg * other_leg / 2 * length; }
double round_bead(double diameter, double length) { return std::numbers::pi / 4 * diameter * diameter * length; }
double bead_reach(double volume, double volume_per_meter) { return volume / volume_per_meter; }

bool yield_is_possible(double width, double depth, double length, double volume) {
    return rectangular_bead(width, depth, length) <= volume * (1 + table_rounding);
}

Piece piece_of(const Shape& shape, double unstated) {
    if (const auto* slot = std::get_if<Slot>(&shape))
        return {slot->width, slot->length, slot->width * slot->length, slot->length, slot->width};
    if (const auto* hole = std::get_if<Hole>(&shape))
        return {hole->diameter, std::numbers::pi * hole->diameter, round_bead(hole->diameter, 1), hole->diameter, hole->diameter};
    if (const auto* ring = std::get_if<Ring>(&shape)) {
        const double outer = ring->around + 2 * ring->width;
        return {ring->width, mid_circumference(*ring), ring->width * mid_circumference(*ring), outer, outer};
    }
    const auto& mesh = std::get<Mesh>(shape);
    const double side = mesh.area ? std::sqrt(*mesh.area) : unstated;
    return {mesh.opening, 4 * side, side * side, side, side};
}

CutSize cut_over(const Piece& piece, double overlap, double step) {
    const auto side = [&](double clear) { return whole_steps_up(clear + 2 * overlap, step) * step; };
    return {side(piece.across), side(piece.up)};
}

Need taken(const Take& take, const Shape& shape, const Piece& piece, std::optional<double> depth) {
    const auto rim = [&] {
        const CutSize cut = cut_over(piece, take.overlap, take.step);
        return 2 * (cut.across + cut.up);
    };
    switch (take.as) {
        case Take::As::bead: return {take.material, bead_volume(shape, piece)};
        case Take::As::rod: {
            const JointFigure* rod = backer_rod(piece.width);
            return rod != nullptr ? Need{rod->id, piece.length} : Need{take.material, 0};
        }
        case Take::As::fill: return {take.material, piece.area * std::min(take.depth, depth.value_or(take.depth))};
        case Take::As::cut: {
            const CutSize cut = cut_over(piece, take.overlap, take.step);
            return {take.material, cut.across * cut.up};
        }
        case Take::As::rim: return {take.material, fillet_bead(bead_width(0), bead_width(0), rim())};
        case Take::As::along: return {take.material, whole_steps_up(rim(), take.every)};
        case Take::As::length: return {take.material, piece.length};
        case Take::As::piece:
        case Take::As::whole: return {take.material, 1};
    }
    return {};
}

std::vector<Purchase> to_buy(const std::vector<Need>& totals, const PriceBook& prices) {
    std::vector<Need> sums;
    for (const Need& need : totals) {
        const auto same = std::find_if(sums.begin(), sums.end(), [&](const Need& sum) { return sum.material == need.material; });
        if (same == sums.end())
            sums.push_back(need);
        else
            same->amount += need.amount;
    }
    std::vector<Purchase> list;
    for (const Need& need : sums) {
        const Material* material = prices.find(need.material);
        if (material == nullptr) throw std::invalid_argument("the price book has no " + need.material);
        list.push_back(cheapest(need, *material));
    }
    return list;
}

}  // namespace seamward
