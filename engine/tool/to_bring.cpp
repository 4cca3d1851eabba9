// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/to_bring.h"

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

std::string packs_text(const Purchase& purchase, const PriceBook& prices) {
    const Material& material = *prices.find(purchase.material);
    std::string count;
    if (purchase.cases > 0) count = std::to_string(purchase.cases) + " x case of " + std::to_string(material.in_case);
    const std::string unit = material.unit == "piece" ? "" : " " + material.unit;
    if (purchase.units > 0) count += (count.empty() ? "" : " and ") + std::to_string(purchase.units) + " x" + unit;
    return count + " " + material.name;
}

Kit kit_of(const Plan& plan) {
    Kit kit;
    for (const PlanStep& step : plan.steps) {
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
