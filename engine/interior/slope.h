// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "interior/passages.h"

namespace seamward {

/// Where a ball comes to that has room to grow.
struct Slope {
    static constexpr std::uint32_t none = 0xffffffff;
    std::uint32_t top = none;  ///< a stand, or `none` where the ball cannot grow: in the middle of a joint
    double clearance = 0;      ///< meters; of the ball that was led there
    std::vector<Point> corners;  ///< over these
};

/// Goes from a stand to where a ball larger by `rise` (a factor) is at home, away from what is nearest at each step. A stand in a
/// mouth is held from opposite sides there, so the way starts a radius before and behind the portal. O(1) questions for distances.
[[nodiscard]] Slope slope_from(const Passages& passages, std::uint32_t stand, double rise);

}  // namespace seamward
