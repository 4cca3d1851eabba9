// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "job_file/job.h"
#include "paths/trace.h"
#include "plan/plan.h"

namespace seamward::viewer {

/// A gap that can be closed, and with what.
struct OfferedClosing {
    GapIndex gap;
    int number = 0;                ///< in the list and in the picture, from 1
    bool planned = false;          ///< a step of the plan; the others may be closed as well
    bool waits = false;            ///< a step of the plan that waits until an animal is gone
    double widest_open_after = 0;  ///< of a step of the plan, as in PlanStep
    WalkStop stop;
    std::vector<Option> options;   ///< cheapest first; never empty
    std::vector<Refusal> refused;  ///< treatments that would fit and must not be used here
    std::size_t usual =
        0;  ///< position in `options`: the plan's; of others the cheapest that shuts it against all planned against

    /// Position in ClosingsPlan::offers.
    [[nodiscard]] std::size_t place() const { return static_cast<std::size_t>(number) - 1; }
    /// The position of a treatment in `options`; nothing where it is not offered.
    [[nodiscard]] std::optional<std::size_t> find(const std::string& treatment) const;
    /// The cheapest that shuts the gap and, where `gnawing`, resists that; as a rung of the ladder takes it. Nothing: none does.
    [[nodiscard]] std::optional<std::size_t> full_closing(bool gnawing) const;
    /// What can hurt somebody at that treatment: its own, then the place's.
    [[nodiscard]] std::vector<Message> cautions(std::size_t option) const;
};

/// The plan of a job with everything else that can be closed there.
struct ClosingsPlan {
    std::shared_ptr<const Job> job;
    PlanSettings settings;
    Plan plan;
    std::vector<OfferedClosing> offers;  ///< the steps of the plan in their order, then all others in working order
    std::vector<int> of_gap;             ///< position in `offers` by gap; -1: it cannot be closed
    /// Where there is no plan against all: for each animal planned against whether there is one against it alone.
    std::vector<bool> alone;
    /// Pinch of the widest way in for anything, as in ClosingsOutlook: as the house stands, after each rung of the ladder, and
    /// after all steps.
    double widest_now = 0, widest_after_plan = 0;
    std::vector<double> widest_after_rung;

    [[nodiscard]] const Survey& survey() const { return job->survey; }
    /// Whether one of the animals planned against that get through a gap gnaws.
    [[nodiscard]] bool gnawed_at(GapIndex gap) const;
    /// The position of the option that a rung of the ladder takes at a gap.
    [[nodiscard]] std::size_t rung_option(const OfferedClosing& offer) const {
        return offer.full_closing(gnawed_at(offer.gap)).value_or(offer.usual);
    }
};

/// Plans against all of these; none: the ladder and what can be closed, with no steps. O(gaps) beyond make_plan().
[[nodiscard]] ClosingsPlan plan_closings(std::shared_ptr<const Job> job, std::vector<Pest> against, const RunContext& context);

/// A closing that is ticked.
struct TickedClosing {
    GapIndex gap;
    double opening = 0;   ///< as in Option
    bool gnawed = false;  ///< likewise
};

/// How one animal would stand to the house.
struct AnimalOutlook {
    Pest pest;
    bool planned_against = false;
    std::optional<RankedPath> way;  ///< its best way in that is left, widths as stated; nothing: no way in is left
    std::vector<GapIndex> gnaws;    ///< ticked closings on that way that it gnaws through
};

/// The house as it would be with all that is ticked.
struct ClosingsOutlook {
    std::vector<AnimalOutlook> animals;  ///< the job's in its order, then others planned against
    double widest = 0;                   ///< pinch of the widest way left, gaps counted as in the plan, meters; 0: none is left
    std::vector<Departure> departures;
    std::vector<Message> air_doubts;  ///< vents that lose air, where nobody can tell whether enough is left
};

/// An animal that gnaws through a closing finds the gap as it was before. O(animals * a trace).
[[nodiscard]] ClosingsOutlook look_ahead(const ClosingsPlan& plan, const std::vector<TickedClosing>& ticked,
                                         const RunContext& context);

}  // namespace seamward::viewer
