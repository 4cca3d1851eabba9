// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "network/network.h"

namespace seamward {

inline constexpr double no_way = -1;

/// For every space the pinch of the best path that ends there, in meters: the widest bottleneck from any start,
/// through passable spaces only. `no_way` where no path leads; infinite for spaces that paths start from.
/// One maximum spanning forest: expected O(links + spaces log spaces log(links / spaces)).
[[nodiscard]] std::vector<double> pinches(const Network& network, const Roles& roles);

}  // namespace seamward
