// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>
#include <limits>
#include <span>

#include "base/vector.h"

namespace seamward {

/// A place on a line with corners.
struct PlaceOnLine {
    std::size_t leg = 0;                                   ///< it lies between this corner and the next
    double part = 0;                                       ///< of the leg, from 0 to 1
    double distance = std::numeric_limits<double>::max();  ///< meters from the point that was asked about
};

/// The place on a line that is nearest to a point, the first of several; far from everything where the line has no legs. O(n).
[[nodiscard]] inline PlaceOnLine nearest_on(std::span<const Point> corners, const Point& p) {
    PlaceOnLine best;
    for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
        const Vector along = corners[i + 1] - corners[i];
        const double size = dot(along, along);
        const double part = size > 0 ? std::clamp(dot(p - corners[i], along) / size, 0.0, 1.0) : 0;
        const double off = distance(corners[i] + along * part, p);
        if (off < best.distance) best = {i, part, off};
    }
    return best;
}

}  // namespace seamward
