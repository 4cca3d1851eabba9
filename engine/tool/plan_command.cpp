// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/plan_command.h"

#include "base/quantity.h"
#include "base/text.h"
#include "tool/wrong_usage.h"

namespace seamward {

bool run_plan(const PlanRequest& request, const Console& console, const RunContext& context) {
    std::optional<Money> budget;
    if (request.budget) {
        const Parsed<Money> parsed = parse_money(*request.budget);
        if (!parsed)
            throw WrongUsage("--budget: " + parsed.fault.what +
                             "; in a shell, money goes in single quotes, since it takes $4 for a name: --budget '$400'");
        budget = *parsed;
    }
    const Job job = read_job(request.job, context);
    PlanSettings settings = plan_settings(request, job);
    settings.budget = budget;
    settings.explain = request.explain;
    const Plan plan = make_plan(job, settings, context);
    if (request.json)
        console.out << plan_answer(job, settings, plan, request.diy);
    else
        print_plan_table(job, printable(heading(job, request.job)), settings, plan, request.diy, console);
    return plan.feasible;
}

}  // namespace seamward
