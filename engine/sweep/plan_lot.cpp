// SPDX-License-Identifier: GPL-3.0-or-later
#include <map>

#include "base/diagnostics.h"
#include "base/measure_text.h"
#include "plan/plan.h"
#include "sweep/detail_rows.h"
#include "sweep/leaking_gaps.h"
#include "sweep/lot_work.h"

namespace seamward {

namespace {

PlanSettings plan_settings(const Job& job, const SweepSettings& settings) {
    PlanSettings asked;
    asked.against = settings.against.empty() ? job.pests : animals_for(job, settings);
    asked.prices = settings.prices;
    asked.date = settings.date;
    if (asked.against.empty())
        throw BadInput({{"",
                         {},
                         "there is nothing to plan against: the job lists no animals",
                         "name one with --against, or list pests in the job"}});
    return asked;
}

}  // namespace

void plan_lot(const Job& job, const SweepSettings& settings, const RunContext& context, LotRow& row) {
    const PlanSettings asked = plan_settings(job, settings);
    const Plan plan = make_plan(job, asked, context);
    const std::vector<GapIndex> leaking = leaking_gaps(job.survey, asked.against);
    row.result = !plan.feasible ? LotResult::no_plan : plan.steps.empty() ? LotResult::shut : LotResult::open;
    std::map<GapIndex, Money> costs;
    if (plan.feasible) {
        std::vector<std::string> closings;
        for (const PlanStep& step : plan.steps) {
            costs[step.gap] = costs[step.gap] + step.option.cost;
            closings.push_back(job.survey[step.gap].id + ':' + step.option.treatment);
        }
        row.cells = {plan.cost,
                     plan.minutes,
                     double(plan.steps.size()),
                     ids_in_turn(closings),
                     std::string(plan.proof.kind == Proof::Kind::flow ? "flow" : "bound"),
                     plan.proof.lower_bound};
    } else {
        row.cells.resize(6);
    }
    row.cells.emplace_back(double(plan.refused.size()));
    if (plan.open_way) {
        row.cells.emplace_back(answer_millimeters(plan.open_way->pinch));
        row.cells.emplace_back(job.survey[plan.open_way->pinch_gap].id);
        row.cells.emplace_back(gap_ids(job.survey, plan.open_way->path.gaps));
    } else {
        row.cells.resize(10);
    }
    row.cells.emplace_back(double(leaking.size()));
    for (const GapIndex gap : leaking) {
        row.details.push_back(detail_of(job.survey[gap]));
        const auto cost = costs.find(gap);
        if (cost != costs.end()) row.details.back().cost = cost->second;
    }
}

}  // namespace seamward
