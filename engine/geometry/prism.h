// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <span>
#include <vector>

#include "base/solid.h"
#include "base/vector.h"
#include "geometry/remainder.h"

namespace seamward {

/// A height over the plane of a frame: out + along * u + up * v, in meters. A flat one has no slope.
struct Height {
    double out = 0, along = 0, up = 0;

    [[nodiscard]] constexpr double at(Point2 p) const { return out + along * p.x + up * p.y; }
};

/// How the two ends of a wall slant: a corner at u = `left` stands at u = left + left_slant * n at height n, likewise right.
/// Corners of the ends above v = `lift_above` (under a sloped roof) also rise by `lift` * n.
struct Slant {
    double left = 0, left_slant = 0;
    double right = 0, right_slant = 0;
    double left_lift = 0, right_lift = 0;
    double lift_above = 1e9;

    /// How far in the left end comes, and how far out the right one goes at least, over all heights between two; no farther than
    /// where they stand at n = 0.
    [[nodiscard]] constexpr double left_reach(double back, double front) const {
        return left + std::max({0.0, left_slant * back, left_slant * front});
    }
    [[nodiscard]] constexpr double right_reach(double back, double front) const {
        return right + std::min({0.0, right_slant * back, right_slant * front});
    }
};

/// A plane figure pulled straight through heights from its back to its front. Between two heights next to each other lies one
/// level; each level may bound a gap all around (a pipe in the hole of one layer of a wall).
struct Prism {
    Frame frame;
    Loop outline;                        ///< either way round
    std::vector<GapIndex> gap_of_edge;   ///< empty, or one for each edge of the outline
    std::vector<Loop> cuts;              ///< what is taken away, may cross the outline
    std::vector<GapIndex> gap_of_cut;    ///< one for each cut
    std::vector<Height> heights;         ///< two or more, rising
    std::vector<GapIndex> gap_of_level;  ///< empty, or one fewer than heights
    GapIndex gap_of_back, gap_of_front;  ///< what the two ends bound
    Slant slant;
};

/// The solid's closed mesh, faces outward, with the gap that each triangle bounds; `mesh` and `bounds` get it added. A prism of
/// which the cuts leave nothing adds nothing.
void add_prism(const Prism& prism, TriangleMesh& mesh, std::vector<GapIndex>& bounds);

}  // namespace seamward
