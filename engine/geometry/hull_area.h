// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "base/vector.h"

namespace seamward {

/// The area in square meters of the convex hull of points (meters) as they are seen along `normal`, of any length but 0.
/// O(n log n) (Andrew 1979, by CGAL's ch_graham_andrew).
[[nodiscard]] double hull_area(std::span<const Point> points, const Vector& normal);

}  // namespace seamward
