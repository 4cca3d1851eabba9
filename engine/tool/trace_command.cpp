// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/trace_command.h"

#include <algorithm>

#include "base/nearest_word.h"
#include "base/text.h"
#include "catalog/shipped.h"
#include "job_file/id_index.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

[[noreturn]] void fail_unknown(const std::string& option, const std::string& id, std::vector<std::string_view> known) {
    std::string mend = suggestion(id, known);
    if (id.find(',') != std::string::npos) mend = "repeat " + option + " for each one";
    if (mend.empty()) mend = option == "--pest" ? "docs/catalog.md lists the animals" : "the job file lists the spaces";
    throw WrongUsage(option + ": unknown id " + in_quotes(id) + "; " + mend);
}

/// A profile of the job's own goes before the catalog's.
Pest find_pest(const Job& job, const std::string& id) {
    const auto own = std::find_if(job.pests.begin(), job.pests.end(), [&](const Pest& pest) { return pest.id == id; });
    if (own != job.pests.end()) return *own;
    if (const Pest* shipped = shipped_pests().find(id)) return *shipped;
    std::vector<std::string_view> known = shipped_pests().ids();
    for (const Pest& pest : job.pests) known.emplace_back(pest.id);
    fail_unknown("--pest", id, std::move(known));
}

std::vector<SpaceIndex> find_spaces(const Job& job, const std::vector<std::string>& ids) {
    if (ids.empty()) return {};
    IdIndex index(job.survey.spaces.size());
    for (const Space& space : job.survey.spaces) index.add(space.id);
    std::vector<SpaceIndex> found;
    for (const std::string& id : ids) {
        if (const auto position = index.find(id)) {
            found.push_back({*position});
            continue;
        }
        std::vector<std::string_view> known;
        for (const Space& space : job.survey.spaces) known.emplace_back(space.id);
        fail_unknown("--to", id, std::move(known));
    }
    return found;
}

}  // namespace

void run_trace(const TraceRequest& request, const Console& console, const RunContext& context) {
    const Job job = read_job(request.job, context);
    TraceSettings settings;
    settings.top = request.top;
    for (const std::string& id : request.pests) settings.pests.push_back(find_pest(job, id));
    settings.to = find_spaces(job, request.to);
    const Trace result = trace(job.survey, settings, context);
    if (request.json)
        console.out << trace_answer(job, settings, result);
    else
        print_trace_table(job, printable(heading(job, request.job)), settings, result, console);
}

}  // namespace seamward
