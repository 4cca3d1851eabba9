// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/completion_command.h"

#include "base/text.h"

namespace seamward {

void run_completion(const CompletionRequest& request, const Console& console, const RunContext& context) {
    const Job job = read_job(request.job, context);
    const PlanSettings settings = plan_settings(request, job);
    const Completion judged = completion(job, settings, context);
    const JudgedJob answer{job, printable(heading(job, request.job)), settings, judged, !request.prices};
    if (request.json)
        console.out << completion_answer(answer);
    else
        print_completion(answer, console);
}

}  // namespace seamward
