// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/planning.h"

#include "base/date.h"
#include "tool/find_ids.h"
#include "tool/wrong_usage.h"

namespace seamward {

PlanSettings plan_settings(const Planning& planning, const Job& job) {
    PlanSettings settings = settings_of_any_job(planning, job);
    if (settings.against.empty())
        throw WrongUsage(
            "there is nothing to plan against: the job lists no animals; name one with --against, or list pests in the job");
    return settings;
}

PlanSettings settings_of_any_job(const Planning& planning, const Job& job) {
    PlanSettings settings;
    if (planning.nominal) settings.sizing = Sizing::stated;
    if (planning.date) {
        const Parsed<Date> date = parse_date(*planning.date);
        if (!date) throw WrongUsage("--on: " + date.fault.what + "; " + date.fault.mend);
        settings.date = *date;
    }
    settings.against = planning.against.empty() ? job.pests : pests_asked_for(job, "--against", planning.against);
    if (planning.prices) {
        if (planning.prices->empty()) throw WrongUsage("--prices: no file is named");
        settings.prices = read_prices(*planning.prices, *planning.prices);
    }
    return settings;
}

}  // namespace seamward
