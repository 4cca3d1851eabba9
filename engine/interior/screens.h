// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "interior/measure.h"

namespace seamward {

/// Openings that are the meshes of one screen.
struct Screen {
    std::vector<std::size_t> openings;  ///< positions, the widest first; one that is no screen stands alone
    double area = 0;                    ///< square meters around all of them; 0 for one that stands alone
};

/// Puts openings together that are alike, in one and the same part, and no farther from each other than they are wide: five or
/// more are a screen. In the order of their first openings.
[[nodiscard]] std::vector<Screen> find_screens(const std::vector<Opening>& openings, const std::vector<Measured>& measured);

}  // namespace seamward
