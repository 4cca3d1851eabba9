// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/survey.h"

#include <cmath>

namespace seamward {

double distance(const Point& a, const Point& b) {
    // Coordinates are those of buildings: no squares overflow, and std::hypot would take four times as long.
    const double x = a.x - b.x;
    const double y = a.y - b.y;
    const double z = a.z - b.z;
    return std::sqrt(x * x + y * y + z * z);
}

}  // namespace seamward
