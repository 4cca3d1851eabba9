// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "base/run_context.h"
#include "paths/entry_path.h"

namespace seamward {

/// An entry path through a gap with the largest pinch, among those found first, in the order of entry paths on both sides of the
/// gap; it ends at one of `to`, at any living space when there are none. Nothing where no entry path has that gap. The beginnings
/// are tried in their order, `most_beginnings` at the most.
[[nodiscard]] std::optional<EntryPath> way_through(const Survey& survey, GapIndex gap, std::span<const SpaceIndex> to,
                                                   const RunContext& context);

/// Beyond these, a way is told that may not have the largest pinch.
inline constexpr std::size_t most_beginnings = 400;

}  // namespace seamward
