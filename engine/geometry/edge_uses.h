// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include "base/survey.h"

namespace seamward {

using Corners = std::array<std::uint32_t, 3>;  ///< of a triangle: positions of points

/// An edge, or a stretch of one, as a side of one triangle.
struct EdgeUse {
    std::uint32_t low = 0, high = 0;  ///< its ends, low < high
    std::uint32_t triangle = 0;
    bool forward = false;  ///< the triangle runs from low to high

    friend constexpr auto operator<=>(const EdgeUse&, const EdgeUse&) = default;
};

/// All sides of triangles that have three different corners, sorted. O(n) for points of few triangles each.
[[nodiscard]] std::vector<EdgeUse> edge_uses(std::size_t points, std::span<const Corners> triangles);

/// Cuts the edges of an odd number of triangles where ends of other such edges lie within `tolerance` (meters) of them. So
/// edges that touch along their length fall into stretches with the same ends. O(n log n).
void cut_where_they_touch(std::vector<EdgeUse>& uses, std::span<const Point> points, double tolerance);

/// Calls visit(uses of one edge) edge by edge.
template <class Visit>
void for_each_edge(std::span<const EdgeUse> uses, Visit visit) {
    for (std::size_t first = 0, last = 0; first < uses.size(); first = last) {
        while (last < uses.size() && uses[last].low == uses[first].low && uses[last].high == uses[first].high) ++last;
        visit(uses.subspan(first, last - first));
    }
}

}  // namespace seamward
