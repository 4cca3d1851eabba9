// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "base/run_context.h"
#include "catalog/tables.h"
#include "paths/entry_path.h"

namespace seamward {

/// Which entry paths are wanted.
struct TraceSettings {
    /// Keep the paths whose every gap lets one of these through; none: every path counts.
    std::vector<Pest> pests;
    /// Where paths end; none: at every living space.
    std::vector<SpaceIndex> to;
    std::size_t top = 10;
};

/// An entry path with its place in the order.
struct RankedPath {
    EntryPath path;
    double pinch = 0;  ///< meters, as stated
    GapIndex pinch_gap;
    bool maybe = false;  ///< only the uncertainty of some width lets the pests asked for through
};

/// The pinch of the best path to one space where paths end.
struct RoomPinch {
    SpaceIndex space;
    std::optional<double> pinch;  ///< meters; nothing: no way in
    bool maybe = false;           ///< no path of that pinch is sure: all of them say `maybe`
};

struct Trace {
    std::vector<RankedPath> paths;  ///< best first
    std::vector<RoomPinch> rooms;   ///< in the order of the survey; spaces where paths start are left out
};

/// The best entry paths in the order of PathKey. Sizes are taken as stated; a gap that lets a pest through only with
/// its plus_minus added counts too, and the paths that need it say `maybe`. Shut gaps are no way through.
[[nodiscard]] Trace trace(const Survey& survey, const TraceSettings& settings, const RunContext& context);

/// Which of `pests` get through every gap of a path at its stated size; positions in `pests`.
[[nodiscard]] std::vector<std::size_t> open_to(const Survey& survey, const EntryPath& path, std::span<const Pest> pests);

/// The same with plus_minus added to every clear width.
[[nodiscard]] std::vector<std::size_t> perhaps_open_to(const Survey& survey, const EntryPath& path, std::span<const Pest> pests);

/// For each room of a trace with the ends `to`, which pests have any way into it at its stated sizes; positions in `pests`.
[[nodiscard]] std::vector<std::vector<std::size_t>> rooms_open_to(const Survey& survey, std::span<const SpaceIndex> to,
                                                                  std::span<const RoomPinch> rooms, std::span<const Pest> pests);

}  // namespace seamward
