// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "house/house.h"
#include "offscreen/draw_picture.h"

namespace seamward::viewer::test {

/// A closed box, its corners counterclockwise seen from outside.
[[nodiscard]] TriangleMesh box(const Point& low, const Point& high);

/// A house of boxes, 8 m by 6 m: ground, slab, four walls of two skins, a ceiling, a flat roof, one room. Its gaps: 0 `screed`
/// from the yard through the south wall's outer skin, 1 `plate` up into the attic, 2 `can` down into the kitchen, 3 `sweep` from
/// the yard straight into the kitchen, 4 `vent`, closed.
[[nodiscard]] House box_house();

/// The way through gaps of that house and the spaces between them, straight from gap to gap.
[[nodiscard]] DrawnPath way_through(const House& house, std::vector<std::uint32_t> gaps);

/// Both ways of that house: screed, plate, can; and sweep.
[[nodiscard]] std::vector<DrawnPath> both_ways(const House& house);

}  // namespace seamward::viewer::test
