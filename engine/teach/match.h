// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "teach/answers.h"

namespace seamward {

/// What a finding tells of.
struct Matched {
    std::optional<std::size_t> place;  ///< position in DrillRound::places; nothing: of none of them
    std::optional<GapIndex> gap;       ///< of that place, or one that is no part of the drill
    bool again = false;                ///< another finding tells of this place already
};

/// How far a point is from the opening of a gap, in meters: from a line as long as a slot for those that run along a wall, from
/// the middle else. Infinite where the survey does not say where the gap is.
[[nodiscard]] double distance_to(const Job& job, GapIndex gap, const Point& from);

/// The place or gap that is meant. A point means the nearest place within reach (drill_scores.yaml, near), of equally near ones
/// the first; without one, the nearest other gap of the job within reach.
[[nodiscard]] Matched match(const DrillRound& round, const FoundAt& where);

/// One for each finding, in their order. A place goes to one finding: to one that names it by number or id, else to the nearest
/// point, then the first; the others tell of it again.
[[nodiscard]] std::vector<Matched> match_findings(const DrillRound& round, std::span<const PlaceAnswer> findings);

}  // namespace seamward
