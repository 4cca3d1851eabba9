// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "base/survey.h"
#include "catalog/features.h"

namespace seamward {

/// Where one stands to work on a gap, in the order of a walk: round the house, up the ladder, in.
enum class WorkZone : std::uint8_t { outside_low, outside_high, roof, attached, crawl_space, hidden, rooms };

/// "outside, from the ground", "outside, from a ladder", "on the roof", "garage and porches", "crawl space", "attic and other
/// hidden spaces", "rooms".
[[nodiscard]] const char* zone_words(WorkZone zone);

/// The zone of a gap, by its spaces, its height and the kind of its feature. How high a person works from the ground is in the
/// table of cautions for places. Outdoors comes before attached spaces, these before rooms. `ground`: height of the yard, meters.
[[nodiscard]] WorkZone zone_of(const Gap& gap, const Survey& survey, double ground);

/// The gaps in working order: zone by zone; outside clockwise round the house as seen from above, from the north on; inside room
/// by room in the order of the survey; ties by position in the survey. O(n log n).
[[nodiscard]] std::vector<GapIndex> in_working_order(const Survey& survey, std::span<const GapIndex> gaps);

/// What the gap's feature is placed on, or nothing where nobody knows.
[[nodiscard]] std::optional<Host> host_of(const Gap& gap);

/// The height of the yard as far as the survey tells: 0, or of the lowest gap that leads outdoors where that is lower, or where
/// all are so high up that the survey has another zero.
[[nodiscard]] double ground_height(const Survey& survey);

}  // namespace seamward
