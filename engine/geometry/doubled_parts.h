// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "base/solid.h"

namespace seamward {

/// A part that stands in the place of an earlier one, triangle for triangle.
struct DoubledPart {
    std::size_t part = 0;
    std::size_t same_as = 0;  ///< before `part`, and itself no double
};

/// Parts that repeat an earlier one: the same points within `tolerance` (meters), and between them the same triangles, in any
/// order and either way round. Points of one part that are within the tolerance of each other count as one. Parts without
/// triangles repeat nothing. In the order of the parts. O(n log n) for n triangles in all.
[[nodiscard]] std::vector<DoubledPart> find_doubled_parts(std::span<const TriangleMesh> parts, double tolerance = 1e-5);

}  // namespace seamward
