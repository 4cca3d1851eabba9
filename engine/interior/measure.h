// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "base/shapes.h"
#include "interior/openings.h"

namespace seamward {

/// An opening, measured. Meters.
struct Measured {
    double width = 0;    ///< of the largest ball that was led through, its diameter
    double at_most = 0;  ///< no larger ball gets through
    double length = 0;   ///< of the mouth, along its middle
    double depth = 0;    ///< along the way of the ball, as far as it is hardly wider than at its narrowest
    Shape shape;
    Point at;                              ///< where the ball is held tightest
    std::vector<Point> through;            ///< the way of its middle, from body to body
    std::array<std::uint32_t, 2> parts{};  ///< that hold it there
    Point low, high;                       ///< of the box around the mouth
};

/// Measures an opening anew, exactly: all that went before was to find it. The width lies between the ball that was led through
/// and the largest that fits into any portal of the mouth.
[[nodiscard]] Measured measure(const Passages& passages, const Bodies& bodies, const WaysHome& home, const Openings& openings,
                               std::size_t which);

}  // namespace seamward
