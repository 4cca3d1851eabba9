// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/plan_command.h"

#include "base/quantity.h"
#include "base/text.h"
#include "tool/find_ids.h"
#include "tool/wrong_usage.h"

namespace seamward {

bool run_plan(const PlanRequest& request, const Console& console, const RunContext& context) {
    PlanSettings settings;
    if (!request.budget.empty()) {
        const Parsed<Money> budget = parse_money(request.budget);
        if (!budget) throw WrongUsage("--budget: " + budget.fault.what + "; " + budget.fault.mend);
        settings.budget = *budget;
    }
    if (request.nominal) settings.sizing = Sizing::stated;
    settings.explain = request.explain;
    const Job job = read_job(request.job, context);
    settings.against = request.against.empty() ? job.pests : pests_asked_for(job, "--against", request.against);
    if (settings.against.empty())
        throw WrongUsage(
            "there is nothing to plan against: the job lists no animals; name one with --against, or list pests in the job");
    if (!request.prices.empty()) settings.prices = read_prices(request.prices, request.prices);
    const Plan plan = make_plan(job, settings, context);
    if (request.json)
        console.out << plan_answer(job, settings, plan);
    else
        print_plan_table(job, printable(heading(job, request.job)), settings, plan, console);
    return plan.feasible;
}

}  // namespace seamward
