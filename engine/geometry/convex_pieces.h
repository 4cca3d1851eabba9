// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "base/plane.h"

namespace seamward {

/// Whether a counterclockwise loop is convex but for corners that lie up to `slack` meters inside of the line of an edge.
[[nodiscard]] bool is_convex(const Loop& loop, double slack);

/// Convex polygons that fill a figure, at most four times as many as need be, counterclockwise; numbers of corners count through
/// the outline and then the holes. Convex means is_convex() with twice the slack. Constrained Delaunay triangulation, then the
/// longest diagonals go first that leave both of their ends convex (Hertel and Mehlhorn 1983). Nothing when edges cross.
/// O(n log n), and more only for figures with many corners that just miss being straight.
[[nodiscard]] std::optional<std::vector<std::vector<std::uint32_t>>> convex_pieces(const Figure& figure, double slack);

}  // namespace seamward
