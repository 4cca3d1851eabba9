// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "base/plane.h"
#include "base/solid.h"

namespace seamward {

/// Where a level plane at height `z` cuts a mesh: loops with the solid on their left, holes the other way round. A corner at that
/// height counts as above it, so a face that lies in the plane is cut just below. Of an open mesh, chains whose ends lie within
/// `bridge` of each other are closed and others left out. Lengths in meters. O(n log n).
[[nodiscard]] std::vector<Loop> level_section(const TriangleMesh& mesh, double z, double bridge = 1e-3);

/// What of a mesh lies below a height, open there.
[[nodiscard]] TriangleMesh below_level(const TriangleMesh& mesh, double z);

/// What fills the air between faces of cut solids that look at each other over less than `across` meters: the cavities of walls,
/// which a floor plan does not show. Quadrilaterals, counterclockwise. O(n^2) in edges of about the same direction.
[[nodiscard]] std::vector<Loop> filled_cavities(const std::vector<Loop>& loops, double across);

}  // namespace seamward
