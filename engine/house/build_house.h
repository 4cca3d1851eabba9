// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>

#include "house/description.h"
#include "house/house.h"

namespace seamward {

/// What is to come out of a description.
enum class Make : std::uint8_t {
    gaps,    ///< spaces and gaps; ways through gaps as far as they are plain: nothing leads them round what stands before them
    survey,  ///< spaces, gaps, ways through them
    solids   ///< the same, and parts with their meshes
};

/// Builds a described house. `widths` are clear widths in meters that were measured since, by the ids of gaps. Throws BadInput
/// with the places of the description for all that does not fit together. O(n log n) in corners, for each panel.
[[nodiscard]] House build_house(const HouseDescription& described, const std::map<std::string, double>& widths, Make make,
                                const RunContext& context);

}  // namespace seamward
