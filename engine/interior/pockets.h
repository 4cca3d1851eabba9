// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "interior/openings.h"

namespace seamward {

/// Narrow air that leads nowhere: a slot that ends, or comes out in the space that it began in; or air shut in on all sides.
/// Meters.
struct Pocket {
    std::optional<std::size_t> space;  ///< that it opens to; none: it is shut in
    double width = 0;                  ///< of the largest ball in its mouth, its diameter; of shut-in air the largest anywhere
    double depth = 0;                  ///< from its mouth to the place farthest from it; 0 where it is shut in
    double volume = 0;                 ///< cubic meters
    Point at;                          ///< in its mouth; of shut-in air where the largest ball fits
    std::array<std::uint32_t, 2> parts{};  ///< on two sides of it there
};

/// Pockets narrower than what makes a space (the rules' `roomy`), the largest first. Narrow is what lies between surfaces that
/// face each other, within 60 degrees: the corners of rooms are none. What is shallower than five times its width is left out,
/// and so is what hangs together with narrow air that joins two bodies: that is part of a gap. `space_of`: for each body its
/// space.
[[nodiscard]] std::vector<Pocket> find_pockets(const Passages& passages, const Bodies& bodies, const Openings& openings,
                                               const std::vector<std::size_t>& space_of, double roomy, const RunContext& run);

}  // namespace seamward
