// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include "base/plane.h"

namespace seamward {

/// What is left of a polygon once others are cut out of it, with where each edge comes from.
struct CutFigure {
    Figure figure;
    /// For each edge of the outline and then of the holes, in order: the number of the cut that made it, or -1 - k for edge k of
    /// the polygon itself. Edge k runs from corner k of its loop to the next.
    std::vector<std::int32_t> cut_of_edge;
};

/// The pieces of `outline` outside of all `cuts`, in no order that depends on anything but the input. Loops may run either way
/// round, cuts may overlap each other, touch or cross the outline; corners that lie on an edge within rounding are taken to lie
/// on it when exactly collinear. New corners (crossings) are worked out exactly and rounded to doubles once. A piece hangs
/// together by more than single points; where it touches itself in a point, a loop of it passes there twice. Pieces of less than
/// a square micrometer are left out. O(n log n) for n corners in all, plus faces times cuts whose boxes hold them.
[[nodiscard]] std::vector<CutFigure> remainder(const Loop& outline, std::span<const Loop> cuts);

/// Triangles that fill a figure, counterclockwise; numbers of corners count through the outline and then the holes.
/// Constrained Delaunay; no corner is added. A place that loops pass twice has two corners, and each triangle takes the one
/// between whose edges it lies. Throws std::logic_error when the figure's edges cross.
[[nodiscard]] std::vector<std::array<std::uint32_t, 3>> triangulate(const Figure& figure);

/// Whether a point is inside of a loop; points on its edges may count either way.
[[nodiscard]] bool is_inside(const Loop& loop, Point2 at);

/// Whether no two edges of a loop meet but neighbors at their corner. O(n log n).
[[nodiscard]] bool is_simple(const Loop& loop);

}  // namespace seamward
