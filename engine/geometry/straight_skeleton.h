// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "base/plane.h"

namespace seamward {

/// The part of a plan that belongs to one edge of its outline: rain that falls there runs off over that edge.
struct SkeletonFace {
    /// A polygon, counterclockwise. Its first side is the edge.
    Loop outline;
    /// For each corner the distance from the edge's line, in meters: 0 for the first two.
    std::vector<double> distances;
};

/// The straight skeleton of a simple polygon that runs counterclockwise: a face for each edge, in their order. Neighbors share
/// their corners exactly. CGAL Straight_skeleton_2 (Felkel and Obdrzalek 1998, with exact predicates).
/// Throws std::logic_error when the polygon has no skeleton.
[[nodiscard]] std::vector<SkeletonFace> straight_skeleton(const Loop& outline);

}  // namespace seamward
