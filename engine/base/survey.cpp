// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/survey.h"

#include <array>
#include <cmath>

namespace seamward {

double distance(const Point& a, const Point& b) {
    // Coordinates are those of buildings: no squares overflow, and std::hypot would take four times as long.
    const double x = a.x - b.x;
    const double y = a.y - b.y;
    const double z = a.z - b.z;
    return std::sqrt(x * x + y * y + z * z);
}

const char* duty_words(Duty duty) {
    constexpr std::array words{"none",           "drain",         "weep",          "vent",           "exhaust",
                               "combustion air", "flood opening", "relief outlet", "movement joint", "door or hatch"};
    return words.at(static_cast<std::size_t>(duty));
}

}  // namespace seamward
