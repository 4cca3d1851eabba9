// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "interior/spaces.h"

namespace seamward {

/// Where two parts touch or run into each other, with no gap between them, and the line of contact comes out in the air of two
/// spaces: shut as drawn, and a place that can open. Meters.
struct Joint {
    std::array<std::uint32_t, 2> parts{};  ///< the first has the smaller number
    std::array<std::size_t, 2> between{};  ///< spaces, the smaller number first
    double length = 0;                     ///< of the shorter of its two mouths
    double depth = 0;                      ///< from mouth to mouth, the median along both
    Point at;                              ///< in the middle of `along`
    std::vector<Point> through;  ///< from the air of the first space over `at` and the other mouth to that of the second
    std::vector<Point> along;    ///< its mouth in the first space, the longest piece of it
};

/// All of them, by falling length. `space_of`: for each body its space. A contact of two parts that hangs together and comes out
/// in several spaces makes a joint between any two that face each other across it: of the mouths in other spaces, that of the one
/// is nearest to some of that of the other. Mouths shorter than 5 mm are left out.
///
/// Where the surfaces are curved, a mouth is as long as their facets are. O(n log n) for n facets of buildings, and the length of
/// all contacts over 10 mm.
[[nodiscard]] std::vector<Joint> find_joints(const Passages& passages, const Bodies& bodies,
                                             const std::vector<std::size_t>& space_of, const RunContext& run);

}  // namespace seamward
