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

void close_gap(Gap& gap, double opening) {
    if (opening > 0 && (is_shut(gap.shape) || opening >= clear_width(gap.shape))) return;
    const Mesh* mesh = std::get_if<Mesh>(&gap.shape);
    gap.covered.reset();
    if (opening > 0) gap.covered = Covered{gap.shape, gap.evidence.plus_minus};
    gap.shape = Mesh{opening, mesh != nullptr ? mesh->area : std::nullopt};
    gap.evidence.plus_minus = 0;
}

}  // namespace seamward
