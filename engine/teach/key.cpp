// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/key.h"

#include <algorithm>
#include <cmath>

#include "catalog/passage.h"
#include "catalog/prices.h"
#include "catalog/shipped.h"
#include "materials/duty_rules.h"
#include "materials/options.h"
#include "materials/ventilation.h"
#include "plan/work_order.h"

namespace seamward {

namespace {

/// Whether two openings are one, meters.
constexpr double same_opening = 1e-6;
/// A width that is no more than this above a gauge is told by it, as field_check() tells it, meters.
constexpr double same_thickness = 5e-6;

/// How many of the animals that get through a gap a treatment stops.
std::size_t stopped_by(const Gap& gap, double opening, bool gnawed, const std::vector<Pest>& animals,
                       const std::vector<std::size_t>& passes) {
    Gap treated = gap;
    close_gap(treated, opening);
    return static_cast<std::size_t>(std::count_if(passes.begin(), passes.end(), [&](std::size_t i) {
        const Pest& animal = animals[i];
        return !(gnawed && animal.gnaws) && !lets_through(treated, animal.size, Sizing::with_plus_minus);
    }));
}

/// Whether a mesh leaves too little air behind it, or perhaps does.
bool starves(const Job& job, GapIndex gap, double opening) {
    const Duty duty = job.survey[gap].duty;
    if (duty != Duty::vent && duty != Duty::combustion_air) return false;
    Survey after = job.survey;
    close_gap(after.gaps[gap.value], opening);
    const auto bad = [](const VentCheck& check) { return check.starved; };
    const std::vector<VentCheck> vents = check_ventilation(job.survey, after, job.vented);
    const std::vector<VentCheck> burners = check_combustion_air(job.survey, after, job.inputs);
    return std::any_of(vents.begin(), vents.end(), bad) ||
           std::any_of(burners.begin(), burners.end(), [](const VentCheck& check) { return check.starved || check.doubtful; });
}

PlaceState state_of(const Gap& gap, const DutyRuling& ruling, bool passed) {
    const bool shut = is_shut(gap.shape) && gap.evidence.plus_minus == 0;
    if (shut) return PlaceState::tight;
    if (!ruling.may_close) return PlaceState::stays_open;
    return passed ? PlaceState::open : PlaceState::narrow;
}

PlaceKey key_of(const DrillRound& round, GapIndex index, double ground) {
    const Gap& gap = round.job.survey[index];
    const std::vector<Pest>& animals = round.drill.animals;
    const DutyRuling ruling = ruling_on(gap, round.job.survey);
    PlaceKey key;
    key.width = clear_width(gap.shape);
    key.plus_minus = gap.evidence.plus_minus;
    for (std::size_t i = 0; i < animals.size(); ++i) {
        if (lets_through(gap, animals[i].size, Sizing::with_plus_minus)) key.passes.push_back(i);
    }
    key.state = state_of(gap, ruling, !key.passes.empty());
    if (!key.due()) return key;
    std::size_t most = 0;
    for (const Option& option : options_for(gap, round.job.survey, shipped_prices(), ground).options) {
        if (option.treatment == stated_closing || (option.opening > 0 && starves(round.job, index, option.opening))) continue;
        const std::size_t stopped = stopped_by(gap, option.opening, option.gnawed, animals, key.passes);
        if (option.gnawed && stopped < stopped_by(gap, option.opening, false, animals, key.passes)) key.gnawed = true;
        if (stopped > most) key.right.clear();
        most = std::max(most, stopped);
        if (stopped == most && stopped > 0) key.right.push_back({option.treatment, option.opening});
    }
    // A vent within the limits may stay as it is: a finer mesh than it has is a choice, not a duty.
    const bool torn = ruling.keeps_area && key.width > ruling.widest_opening + same_opening;
    key.leave = !ruling.may_close && (key.right.empty() || (ruling.keeps_area && !torn));
    return key;
}

}  // namespace

std::vector<PlaceKey> drill_key(const DrillRound& round) {
    const double ground = ground_height(round.job.survey);
    std::vector<PlaceKey> key;
    key.reserve(round.places.size());
    for (const DrillPlace& place : round.places) key.push_back(place.gap ? key_of(round, *place.gap, ground) : PlaceKey{});
    return key;
}

bool is_right(const PlaceKey& key, std::string_view treatment, double opening) {
    if (treatment == leave_open) return key.leave;
    const Treatment* row = shipped_treatments().find(treatment);
    const bool mesh_by_size = row != nullptr && row->leaves_mesh() && !(row->opening > 0);
    return std::any_of(key.right.begin(), key.right.end(), [&](const RightTreatment& right) {
        return mesh_by_size ? right.opening > 0 && std::abs(right.opening - opening) <= same_opening : right.id == treatment;
    });
}

bool read_on_tape(double width) {
    return !shipped_gauges().rows.empty() && width > shipped_gauges().rows.back().thickness + same_thickness;
}

double width_slack(const PlaceKey& key, const WidthTolerance& tolerance) {
    return std::max({tolerance.share * key.width, tolerance.least, key.plus_minus, read_on_tape(key.width) ? tape_mark : 0});
}

}  // namespace seamward
