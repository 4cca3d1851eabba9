// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "network/cut.h"

namespace seamward {

/// The ladder of cut_ladder() where some living spaces are sources too, so that no single flow tells it: one plan for a width. Of
/// many widths 48 are looked at, evenly by their number, the widest and the narrowest among them; `left_out` counts the others.
[[nodiscard]] CutLadder ladder_by_programs(std::span<const Roles> roles, std::size_t space_count,
                                           std::span<const PricedLink> links);

}  // namespace seamward
