// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/trace_command.h"

#include "base/text.h"
#include "tool/find_ids.h"

namespace seamward {

void run_trace(const TraceRequest& request, const Console& console, const RunContext& context) {
    const Job job = read_job(request.job, context);
    const TraceSettings settings = trace_settings(job, request.pests, request.to, request.top);
    const Trace result = trace(job.survey, settings, context);
    if (request.json)
        console.out << trace_answer(job, settings, result);
    else
        print_trace_table(job, printable(heading(job, request.job)), settings, result, console);
}

}  // namespace seamward
