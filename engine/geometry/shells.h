// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "geometry/clean_part.h"
#include "geometry/edge_uses.h"

namespace seamward {

/// Turns the triangles of a part so that its shells agree in themselves and face outward, as clean_part() says. Points are
/// farther than `tolerance` (meters) from each other and each triangle has three of them. Sets `faults` but for what was left
/// out.
void turn_shells(std::span<const Point> points, std::span<Corners> triangles, double tolerance, PartFaults& faults);

}  // namespace seamward
