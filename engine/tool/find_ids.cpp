// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/find_ids.h"

#include <algorithm>

#include "base/nearest_word.h"
#include "base/text.h"
#include "catalog/shipped.h"
#include "job_file/id_index.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

const char* where_listed(const std::string& option) {
    if (option == "--pest" || option == "--against") return "docs/catalog.md lists the animals";
    return option == "--gap" ? "the house file and the job file list the gaps"
                             : "the house file and the job file list the spaces";
}

}  // namespace

void fail_unknown(const std::string& option, const std::string& id, const std::vector<std::string_view>& known) {
    std::string mend = suggestion(id, known);
    if (id.find(',') != std::string::npos) mend = "repeat " + option + " for each one";
    if (mend.empty()) mend = where_listed(option);
    throw WrongUsage(option + ": unknown id " + in_quotes(id) + "; " + mend);
}

namespace {

/// A profile of the job's own goes before the catalog's.
Pest find_pest(const Job& job, const std::string& option, const std::string& id) {
    const auto own = std::find_if(job.pests.begin(), job.pests.end(), [&](const Pest& pest) { return pest.id == id; });
    if (own != job.pests.end()) return *own;
    if (const Pest* shipped = shipped_pests().find(id)) return *shipped;
    std::vector<std::string_view> known = shipped_pests().ids();
    for (const Pest& pest : job.pests) known.emplace_back(pest.id);
    fail_unknown(option, id, known);
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
        fail_unknown("--to", id, known);
    }
    return found;
}

}  // namespace

std::vector<Pest> pests_asked_for(const Job& job, const std::string& option, const std::vector<std::string>& ids) {
    std::vector<Pest> pests;
    for (const std::string& id : ids) pests.push_back(find_pest(job, option, id));
    return pests;
}

TraceSettings trace_settings(const Job& job, const std::vector<std::string>& pests, const std::vector<std::string>& to,
                             std::size_t top) {
    TraceSettings settings;
    settings.top = top;
    settings.pests = pests_asked_for(job, "--pest", pests);
    settings.to = find_spaces(job, to);
    return settings;
}

}  // namespace seamward
