// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/to_bring.h"

#include <algorithm>

#include "catalog/shipped.h"

namespace seamward {

namespace {

void add_new(std::vector<std::string>& list, const std::vector<std::string>& more) {
    for (const std::string& one : more) {
        if (std::find(list.begin(), list.end(), one) == list.end()) list.push_back(one);
    }
}

}  // namespace

Message packs_text(const Purchase& purchase, const PriceBook& prices) {
    const Material& material = *prices.find(purchase.material);
    const Message name = as_named(material.name), unit = as_named(material.unit);
    const Message cases = as_it_stands(purchase.cases), units = as_it_stands(purchase.units),
                  in_case = as_it_stands(material.in_case);
    const bool pieces = material.unit == "piece";
    if (purchase.units == 0) return message("{} x case of {} {}", {cases, in_case, name});
    if (purchase.cases == 0) return pieces ? message("{} x {}", {units, name}) : message("{} x {} {}", {units, unit, name});
    return pieces ? message("{} x case of {} and {} x {}", {cases, in_case, units, name})
                  : message("{} x case of {} and {} x {} {}", {cases, in_case, units, unit, name});
}

Kit kit_of(std::span<const PlanStep> steps) {
    Kit kit;
    for (const PlanStep& step : steps) {
        const Treatment* treatment = shipped_treatments().find(step.option.treatment);
        if (treatment == nullptr) continue;
        add_new(kit.tools, treatment->tools);
        add_new(kit.protection, treatment->protection);
    }
    return kit;
}

std::vector<Purchase> packs_for_departures(const Plan& plan, const PriceBook& prices) {
    std::vector<Need> needs;
    for (const Departure& departure : plan.departures) {
        if (departure.removal == nullptr || departure.removal->material.empty() || !departure.waits()) continue;
        if (departure.removal->by != Removal::By::one_way || departure.device) needs.push_back({departure.removal->material, 1});
    }
    return to_buy(needs, prices);
}

}  // namespace seamward
