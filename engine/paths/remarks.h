// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "job_file/job.h"
#include "paths/trace.h"

namespace seamward {

/// What whoever made the survey should look at again before trusting an answer, each a sentence for people: no start or
/// no end for a way in, rooms without a gap, spaces that nothing leads into, gaps between two rooms, gaps that are
/// closed with what must not be there, closings that an animal of the job gnaws through, a slot wider than long.
/// O(spaces + gaps).
[[nodiscard]] std::vector<Message> remarks_on(const Job& job, const TraceSettings& settings);

/// Those of them that say why fewer ways in are known than there may be: no start, no end, and joints of a model that nobody
/// measured. O(spaces + gaps).
[[nodiscard]] std::vector<Message> remarks_on_what_is_unknown(const Job& job);

/// How many of the gaps on the paths told have a width that was assumed, as a sentence; nothing when none has.
[[nodiscard]] std::optional<Message> remark_on_widths(const Survey& survey, const Trace& trace);

/// A room whose air a room shares through openings from room to room.
struct SharedAir {
    SpaceIndex with;
    double width = 0;  ///< meters; the smallest of those openings
};

/// For each of the rooms, the one that through openings from living space to living space makes it open to wider ways in than
/// its own, if there is one. O((spaces + gaps) log spaces), times the pests asked for.
[[nodiscard]] std::vector<std::optional<SharedAir>> shared_air(const Survey& survey, const TraceSettings& settings,
                                                               std::span<const RoomPinch> rooms);

/// The positions of the pests without any way to where paths end (the spaces `to`, or all living spaces), even if widths are
/// larger by their `plus_minus`. Empty where no path can begin or end.
[[nodiscard]] std::vector<std::size_t> pests_kept_out(const Survey& survey, std::span<const SpaceIndex> to,
                                                      std::span<const Pest> pests);

}  // namespace seamward
