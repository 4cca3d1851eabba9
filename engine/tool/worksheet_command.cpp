// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/worksheet_command.h"

#include "base/text.h"
#include "tool/plan_words.h"

namespace seamward {

bool run_worksheet(const WorksheetRequest& request, const Console& console, const RunContext& context) {
    const Job job = read_job(request.job, context);
    const PlanSettings settings = plan_settings(request, job);
    const Plan plan = make_plan(job, settings, context);
    const std::string title = printable(heading(job, request.job));
    if (plan.feasible) {
        print_worksheet(job, title, settings, plan, console);
    } else {
        console.out << console.bold(title) << '\n';
        print_no_plan(job, settings, plan, console);
    }
    return plan.feasible;
}

}  // namespace seamward
