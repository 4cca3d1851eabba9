// SPDX-License-Identifier: GPL-3.0-or-later
// A second opinion on polygons by CGAL's Boolean operations with exact numbers, in a library of its own: link
// seamward_solid_support.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "base/plane.h"

namespace seamward::test {

/// One piece of what is left of a polygon: joined by more than single points.
struct ExactPiece {
    double area = 0;  ///< square meters, rounded once
    std::size_t holes = 0;
};

/// What is left of a polygon without others, by General_polygon_set_2; pieces by area, smallest first.
[[nodiscard]] std::vector<ExactPiece> exact_remainder(const Loop& outline, std::span<const Loop> cuts);

/// The area in which pieces differ from what is exactly left of a polygon without others, in square meters. Infinity when some
/// loop of a piece crosses or touches itself.
[[nodiscard]] double area_of_difference(std::span<const Figure> pieces, const Loop& outline, std::span<const Loop> cuts);

/// What keeps triangles from filling a figure without overlaps, corners counted through the outline and then the holes. Areas
/// are added up exactly. One sentence, or empty.
[[nodiscard]] std::string fault_of_tiling(const Figure& figure, std::span<const std::array<std::uint32_t, 3>> triangles);

}  // namespace seamward::test
