// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "job_file/job.h"
#include "plan/work_order.h"

namespace seamward {

/// One gap as it is worked on in the walk.
struct WalkStop {
    GapIndex gap;
    WorkZone zone = WorkZone::outside_low;
    std::vector<Message> cautions;                    ///< of the place
    std::uint32_t ladder_first = 0, ladder_last = 0;  ///< settings of the ladder, counted from 1; 0: none
    bool two_people = false;
    bool trade =
        false;  ///< at gas, service equipment, a flue or the air of an appliance, as far as anybody can tell: no owner's work
};

/// The walk to some gaps, in working order.
struct Walk {
    std::vector<WalkStop> stops;
    std::vector<Message> before;  ///< what to settle or to know before the work begins; empty when there is no stop
    std::uint32_t ladder_settings = 0;
};

/// Plans the walk: gaps in the order given, which keeps zones together. Along a wall one setting of the ladder serves gaps that
/// lie within its reach; a slot that is longer takes several. O(gaps).
[[nodiscard]] Walk walk_to(const Job& job, std::span<const GapIndex> gaps);

/// Whether an owner can work there from the ground: outside low, in the garage or in rooms, and not at a ceiling or above reach.
/// Where neither place nor type is known: no.
[[nodiscard]] bool from_the_ground(const Gap& gap, WorkZone zone, double ground);

}  // namespace seamward
