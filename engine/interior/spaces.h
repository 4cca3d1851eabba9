// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "base/run_context.h"
#include "interior/passages.h"

namespace seamward {

/// A body of air: where it is widest, and what was found to belong to it.
struct Body {
    std::uint32_t seed = 0;  ///< a stand in it
    double volume = 0;       ///< cubic meters, of cells whose middles belong to it
};

/// The stands of a model shared out among bodies of air. Between two bodies lie the narrowest places on the ways from one to the
/// other, as watersheds lie between the valleys of a land.
struct Bodies {
    std::vector<Body> list;
    std::vector<std::int32_t> of;  ///< for each stand its body, or -1: no ball gets there from one
    std::vector<std::uint32_t>
        joined;  ///< passages that together lead within each body from any stand to any other, the widest way
    std::vector<std::uint32_t> between;  ///< passages from one body to another, all of them led
};

/// What makes air a body of its own. Lengths in meters.
struct BodyRules {
    double roomy = 12.5e-3;      ///< air in which a ball of this radius is at home, on both sides of a narrower place
    double least_volume = 1e-3;  ///< cubic meters; less is a widening of a joint
    double thin_cavity = 6e-3;   ///< or a ball of this radius, where it can move `sheet` both ways
    double sheet = 0.12;         ///< and where it is this much wider than the way in:
    double widening = 1.25;
};

/// `seeds`: stands that are told to be bodies of their own, whatever is between them (rooms that somebody named). They become the
/// first bodies, in this order. O(p log p) for p passages, and the balls that have to be led.
[[nodiscard]] Bodies find_bodies(Passages& passages, const std::vector<std::uint32_t>& seeds, const BodyRules& rules,
                                 const RunContext& run);

}  // namespace seamward
