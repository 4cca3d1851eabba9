// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "house/house.h"

namespace seamward {

/// The line that an animal takes along a path: through the middle of each gap, and between two gaps along the middle surface of
/// the space, round openings that stand in it. It begins a step before the first gap and ends a step into the last space, toward
/// its middle surface where it has one. `spaces[i]` and `spaces[i + 1]` are the sides of `gaps[i]`, so there is one space more.
/// A space without a middle surface is crossed straight. A gap that was added by hand is passed at its point; one without a
/// point is left out. Meters; no point stands twice in a row.
[[nodiscard]] std::vector<Point> route(const House& house, std::span<const GapIndex> gaps, std::span<const SpaceIndex> spaces);

}  // namespace seamward
