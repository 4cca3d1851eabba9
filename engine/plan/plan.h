// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/run_context.h"
#include "catalog/prices.h"
#include "job_file/job.h"
#include "materials/options.h"
#include "materials/quantities.h"
#include "materials/wrong_closings.h"
#include "paths/entry_path.h"
#include "plan/chances.h"
#include "plan/cheapest_closing.h"
#include "plan/departures.h"
#include "plan/walk.h"

namespace seamward {

/// What a plan is to do.
struct PlanSettings {
    std::vector<Pest> against;
    Sizing sizing = Sizing::with_plus_minus;
    std::optional<Money> budget;
    PriceBook prices = shipped_prices();
    bool explain = false;  ///< work out chances too
    Date date = today();   ///< day of the work; seasons and dates go by it
};

/// A way in and the smallest clear width along it, as gaps count in the plan.
struct OpenWay {
    EntryPath path;
    double pinch = 0;  ///< meters
    GapIndex pinch_gap;
    std::size_t pest = 0;  ///< position in PlanSettings::against
};

/// One gap to be treated.
struct PlanStep {
    GapIndex gap;
    Option option;
    WalkStop stop;
    double widest_open_after = 0;  ///< pinch of the best way still open to an animal planned against, meters; 0: there is none
    bool waits = false;            ///< until an animal that lives in the house is gone: stands in a departure's `last`
    bool owner = false;            ///< an owner can do it safely, from the ground

    /// What can hurt somebody at this step: the treatment's, then the place's.
    [[nodiscard]] std::vector<Message> cautions() const;
};

/// A gap that stops an animal by less than the margin of that animal's size.
struct MarginalStop {
    GapIndex gap;
    std::size_t pest = 0;    ///< position in PlanSettings::against
    double share_short = 0;  ///< so much smaller an animal would get through, as a share of its size
};

/// A treatment or a gap that the plan does not touch, and why.
struct RefusedGap {
    GapIndex gap;
    Refusal refusal;
};

/// What it takes to leave no way in as wide as `width` or wider, by full closings alone.
struct LadderRung {
    double width = 0;  ///< meters
    Money cost;
    std::vector<GapIndex> gaps;
};

/// Why the ladder ends before everything is shut.
struct LadderStop {
    double width = 0;  ///< pinch of a way in along gaps that cannot be closed, meters
    GapIndex gap;      ///< where that is
    Message why;
};

/// What a budget buys.
struct BudgetResult {
    bool reaches_all = false;  ///< the whole plan costs no more than the budget
    Money full_cost;           ///< of the whole plan
    Money still_to_pay;        ///< the least for the rest, after these steps
    std::optional<OpenWay> left_open;
    bool proven = true;  ///< that nothing within the budget does better
};

/// How likely some way in is open to each animal planned against, before the steps and after them.
struct PlanChances {
    std::vector<PestChance> before, after;
};

/// The gaps worth measuring for one animal: those that a way left by the steps depends on; where none is left, those of now.
[[nodiscard]] inline const std::vector<WorthMeasuring>& worth_measuring(const PlanChances& chances, std::size_t animal) {
    return chances.after[animal].open.chance > 0 ? chances.after[animal].measure : chances.before[animal].measure;
}

/// What to close, with what and in which order, and why nothing cheaper will do.
struct Plan {
    bool feasible = true;
    Money cost;  ///< sum of the steps' costs
    double minutes = 0;
    std::vector<PlanStep> steps;        ///< in working order, those that wait last
    std::vector<Departure> departures;  ///< of the animals that live in the house
    std::vector<Message> before;        ///< what to settle or to know before the work begins
    std::uint32_t ladder_settings = 0;
    Proof proof;  ///< of the whole plan, whatever the budget; its routes' animals are positions in PlanSettings::against
    std::vector<LadderRung> ladder;
    std::size_t rungs_left_out = 0;  ///< between those of the ladder, where it has very many
    std::optional<LadderStop> ladder_stop;
    std::vector<Purchase> materials;
    std::vector<RefusedGap> refused;
    std::vector<MarginalStop> marginal;
    std::optional<OpenWay> open_way;        ///< where there is no plan: a way in that cannot be closed
    std::vector<Message> open_way_reasons;  ///< why not, gap by gap
    std::optional<BudgetResult> budget;
    std::optional<PlanChances> chances;        ///< nothing: not asked for, or they cannot be told, see open_chances()
    std::vector<Message> vent_doubts;          ///< vents that lose air to a mesh, where nobody can tell whether enough is left
    std::vector<WrongClosing> wrong_closings;  ///< to open again: what was closed there must not be; `notes` has them too, first
    std::vector<Message> notes;                ///< what else should be looked at
    std::vector<Message> last_checks;          ///< what has to be checked when the work is done, and by whom
};

/// Plans against all of `settings.against`. Treatments that would starve a vent are refused on the way. Deterministic.
[[nodiscard]] Plan make_plan(const Job& job, const PlanSettings& settings, const RunContext& context);

}  // namespace seamward
