// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "plan/plan.h"

namespace seamward {

/// What a plan would still do, and for how much.
struct WorkLeft {
    bool feasible = true;
    std::vector<PlanStep> steps;
    Money cost;
};

/// Whether one animal is shut out, and what that rests on.
struct AnimalOutcome {
    std::size_t pest = 0;  ///< position in PlanSettings::against
    bool shut = false;     ///< no way in is left along the surveyed gaps
    std::vector<GapIndex>
        rests_on;                  ///< of the closings that hold those any one of which, opened again as it was found, lets it in
    std::size_t gaps_on_ways = 0;  ///< gaps that lie on some open way
    std::optional<OpenWay> widest;
    std::vector<GapIndex> gnawed;  ///< closings on open ways that it gnaws through
    /// What the plan against it alone would do in the house as it stands; nothing when it is shut out. A plan counts what is
    /// closed as shut, also what is gnawed through.
    WorkLeft left;
};

/// When somebody should look at the closings again.
struct Reinspection {
    Date date;
    GapIndex gap;
    Message why;
};

/// Gaps that stay open on purpose, by reason.
struct LeftOpen {
    Message why, source;
    std::vector<GapIndex> gaps;
};

/// How an animal that lived in the house and is gone may come back.
struct WayBack {
    std::uint32_t occupant = 0;       ///< position in Job::occupied
    std::vector<GapIndex> gaps;       ///< from its space to outdoors
    std::vector<GapIndex> may_close;  ///< of these the ones that are not there to stay open
    bool as_seen = false;             ///< through the gap that it was seen to use
};

/// Where the work stands: whether it is complete, or what keeps it from that.
struct Completion {
    std::vector<Message> reasons;  ///< why there is no completion statement, for people; empty: there may be one
    std::vector<AnimalOutcome> animals;
    std::optional<WorkLeft> left;          ///< what the plan against all animals would do, where several are not shut out
    std::vector<std::uint32_t> callbacks;  ///< positions in Job::closed, those that are not mended first, then the latest first
    std::optional<Reinspection> reinspect;
    std::vector<GapIndex> undated;  ///< closings that hold, of which nobody knows since when or for how long
    bool burns_fuel = false;
    std::optional<CheckMade> combustion_safety, co_alarms;  ///< the latest of each kind
    std::vector<WrongClosing> wrong_closings;
    std::vector<WayBack> ways_back;
    std::vector<LeftOpen> left_open;
    std::vector<GapIndex> also_open;        ///< all other gaps that are neither shut nor closed, in the order of the survey
    std::vector<std::uint32_t> seen_since;  ///< sightings of small animals after the last closing, positions in Job::sightings

    [[nodiscard]] bool complete() const { return reasons.empty(); }
};

/// Judges the house as it stands. An animal is shut out when no way in is left at the widths of `settings.sizing`; what was
/// closed with something that it gnaws through is open to it. Deterministic.
[[nodiscard]] Completion completion(const Job& job, const PlanSettings& settings, const RunContext& context);

}  // namespace seamward
