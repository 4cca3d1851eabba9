// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/last_checks.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace seamward {

namespace {

/// Features of the table that belong to a flue, a chimney or an appliance's air.
constexpr std::array<std::string_view, 6> of_flues{"combustion-air-opening", "flue-collar",   "flue-shaft-top",
                                                   "chimney-framing",        "chimney-joint", "chimney-cap"};

}  // namespace

Message where_fuel_burns(const Job& job) {
    for (const Gap& gap : job.survey.gaps) {
        const bool made_of_flue = std::any_of(gap.substrates.begin(), gap.substrates.end(),
                                              [](const std::string& word) { return word == "flue" || word == "chimney"; });
        const bool of_flue = made_of_flue || std::find(of_flues.begin(), of_flues.end(), gap.feature) != of_flues.end();
        if (of_flue || gap.duty == Duty::combustion_air) return gap.called();
    }
    return job.inputs.empty() ? Message() : job.survey[job.inputs.front().space].called();
}

std::vector<Message> last_checks(const Job& job) {
    std::vector<Message> checks;
    const Message where = where_fuel_burns(job);
    if (where.empty()) return checks;
    checks.push_back(message(
        "Fuel is burned in this house ({}): a tighter house can starve a flue of draft. After the last closing a licensed "
        "person tests the appliances for draft, spillage and carbon monoxide. The work is not complete before that (common "
        "practice; NFPA 54 as a gas company's guide gives it)",
        {where}));
    checks.emplace_back("Check that carbon monoxide alarms are there and work, by the local code (common practice)");
    return checks;
}

}  // namespace seamward
