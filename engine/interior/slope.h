// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "interior/passages.h"

namespace seamward {

/// Where a ball comes to that has room to grow.
struct Slope {
    static constexpr std::uint32_t none = 0xffffffff;
    std::uint32_t top = none;    ///< a stand, or `none` where the ball cannot grow: in the middle of a joint
    double clearance = 0;        ///< meters; of the ball that was led there
    std::vector<Point> corners;  ///< over these
};

/// Goes from a stand to where a ball of radius `wanted` (meters) is at home, away from what is nearest at each step. A stand in a
/// mouth is held from opposite sides there, so the way starts a radius before and behind the portal. O(1) questions for
/// distances.
[[nodiscard]] Slope slope_from(const Passages& passages, std::uint32_t stand, double wanted);

/// Where a ball of radius `ball` (meters) comes to from a portal, straight off to both its sides: a portal along a whole wall has
/// one stand, and a way that leads there along the wall in a thin cell is narrow, though in front of the portal all is open.
[[nodiscard]] std::vector<Slope> straight_off(const Passages& passages, std::uint32_t portal, double ball);

}  // namespace seamward
