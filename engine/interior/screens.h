// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "interior/measure.h"

namespace seamward {

/// Openings side by side, the meshes of a screen or the slots of a louver.
struct Screen {
    std::vector<std::size_t> openings;  ///< positions, the widest first; one that is no screen stands alone
    double area = 0;                    ///< square meters around all of them; 0 for one that stands alone
};

/// Puts openings together that are as wide and as long as each other, are held by the same part or two, and are no farther apart
/// than they are wide: five or more are a screen. In the order of their first openings.
[[nodiscard]] std::vector<Screen> find_screens(const std::vector<Opening>& openings,
                                               const std::vector<MeasuredOpening>& measured);

}  // namespace seamward
