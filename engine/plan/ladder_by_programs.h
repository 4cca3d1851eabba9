// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "network/cut.h"

namespace seamward {

/// The ladder of cut_ladder() where some living spaces are sources too, so that no single flow tells it: one plan for each width.
[[nodiscard]] CutLadder ladder_by_programs(std::span<const Roles> roles, std::size_t space_count,
                                           std::span<const PricedLink> links);

}  // namespace seamward
