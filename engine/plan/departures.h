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
    std::optional<InSeason> season;    ///< in which its last way must not be shut

    [[nodiscard]] bool waits() const { return !last.empty(); }
    /// The first day on which the last way may be closed, when all nights from `date` on are quiet.
    [[nodiscard]] Date close_from(Date date) const;
};

/// For each animal that still lives in the house: its main way out, and which of the closings have to wait until it is gone. The
/// main way is the widest by which it gets from its space to outdoors now, through `Occupant::way` where that is stated; among
/// equally wide ones one with the fewest closings. An animal whose way is not known could use any gap of its space: all closings
/// along it wait then. Nothing waits where it still has a way out when all closings are done, and for animals that the table
/// shuts in or out as it comes. O(animals * gaps * log gaps).
[[nodiscard]] std::vector<Departure> departures_of(const Job& job, std::span<const TreatedGap> closings, Date date);

}  // namespace seamward
