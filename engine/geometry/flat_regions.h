// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "base/survey.h"
#include "geometry/edge_uses.h"
#include "geometry/flat_facets.h"

namespace seamward {

/// The triangles of a part, sorted into flat faces that hang together by edges.
struct FlatRegions {
    std::vector<Plane3> planes;            ///< one for each region; its normal points outside
    std::vector<std::uint32_t> triangles;  ///< region by region, the first of each its largest
    std::vector<std::uint32_t> starts;     ///< where each region starts in them, and their number at the end
    /// For each triangle the one beside it along the sides from corner 0, 1 and 2 to the next, if they are of the same region.
    std::vector<Corners> beside;

    static constexpr std::uint32_t none = 0xffffffff;

    [[nodiscard]] std::span<const std::uint32_t> triangles_of(std::size_t region) const {
        return std::span(triangles).subspan(starts[region], starts[region + 1] - starts[region]);
    }
    /// The loops around a region: corners in order, the region on their left, holes the other way round.
    [[nodiscard]] std::vector<std::vector<std::uint32_t>> borders_of(std::size_t region, std::span<const Corners> corners) const;
};

/// Grows regions as flat_facets() says, largest triangles first. What is not in one: triangles lower than `least_height`
/// that lie in no plane of a neighbor. Lengths in meters. O(n log n).
[[nodiscard]] FlatRegions flat_regions(std::span<const Point> points, std::span<const Corners> triangles, double tolerance,
                                       double least_height);

/// A loop without the corners that lie within `tolerance` (meters) of the straight line between those that stay (Ramer 1972,
/// Douglas and Peucker 1973). Empty when fewer than three stay. O(n log n) as a rule.
[[nodiscard]] std::vector<std::uint32_t> straightened(std::span<const std::uint32_t> loop, std::span<const Point> points,
                                                      double tolerance);

}  // namespace seamward
