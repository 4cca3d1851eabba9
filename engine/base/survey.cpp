// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/survey.h"

#include <cmath>

namespace seamward {

double distance(const Point& a, const Point& b) { return std::hypot(a.x - b.x, a.y - b.y, a.z - b.z); }

}  // namespace seamward
