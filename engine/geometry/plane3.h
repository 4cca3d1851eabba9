// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/vector.h"

namespace seamward {

/// The points p with dot(normal, p) = offset.
struct Plane3 {
    Vector normal;      ///< of length 1
    double offset = 0;  ///< meters

    /// How far a point is on the side that the normal points to, in meters.
    [[nodiscard]] constexpr double height_of(const Point& p) const { return dot(normal, {p.x, p.y, p.z}) - offset; }
};

}  // namespace seamward
