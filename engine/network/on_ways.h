// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "network/network.h"

namespace seamward {

/// For each link of a network whether it lies on some way in: on a path from a start to an end that repeats no space and has
/// neither starts nor ends in its middle. No space may be start and end at once. Linear.
[[nodiscard]] std::vector<bool> links_on_ways(const Network& network, const Roles& roles);

}  // namespace seamward
