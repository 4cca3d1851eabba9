// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "catalog/removals.h"
#include "job_file/job.h"
#include "plan/treated_gap.h"

namespace seamward {

/// How an animal that lives in the house leaves it before its last way out is shut.
struct Departure {
    std::size_t occupant = 0;          ///< position in Job::occupied
    const Removal* removal = nullptr;  ///< of the table; null: it has no row for this animal
    std::vector<GapIndex> last;        ///< closings that wait until it is gone; empty: none shuts it in, or none has to wait
    std::optional<GapIndex> device;    ///< where a one-way device goes: of `last` the one nearest to outdoors
    bool way_known = true;             ///< whether the survey has any way out that it passes
    bool way_passes = true;            ///< whether it passes the gap that it was seen to use, as measured
    std::optional<InSeason> season;    ///< that the work would fall into: its last way must not be shut then
    Date begin{};       ///< the first day for device or traps: all quiet nights from then on are outside of seasons
    Date close_from{};  ///< the first day for what waits, when all those nights are quiet; also those of others that wait at the
                        ///< same gap

    [[nodiscard]] bool waits() const { return !last.empty(); }
};

/// For each animal that lives in the house on that day: its main way out, and which of the closings have to wait until it is
/// gone. The main way is the widest by which it surely gets from its space to outdoors now, through `Occupant::way` where that is
/// stated and large enough; among equally wide ones one with the fewest closings. Where no gap is surely wide enough, those count
/// that may be. An animal whose way is not known could use any gap of its space: all closings along it wait then. Nothing waits
/// where it surely still has a way out when all closings are done, and for animals that the table shuts in or out as it comes. An
/// animal that is listed twice in a space counts once. O(animals * gaps * log gaps).
[[nodiscard]] std::vector<Departure> departures_of(const Job& job, std::span<const TreatedGap> closings, Date date);

/// The gaps by which an animal may get from its space to outdoors as the house stands to it, from inside: through
/// `Occupant::way` where that is open, else its widest way. What it gnaws through is open. Empty: it gets out nowhere.
/// O(gaps * log gaps).
[[nodiscard]] std::vector<GapIndex> open_way_out(const Job& job, const Occupant& occupant);

}  // namespace seamward
