// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/owner_part.h"

namespace seamward {

OwnerPart owner_part(const Plan& plan, const PriceBook& prices) {
    OwnerPart part;
    std::vector<Need> needs;
    for (const PlanStep& step : plan.steps) {
        if (!step.owner) {
            ++part.hired_steps;
            part.hired = part.hired + step.option.cost;
            continue;
        }
        ++part.steps;
        part.minutes += step.option.minutes;
        needs.insert(needs.end(), step.option.needs.begin(), step.option.needs.end());
    }
    part.materials = to_buy(needs, prices);
    for (const Purchase& purchase : part.materials) part.to_buy = part.to_buy + purchase.cost;
    return part;
}

}  // namespace seamward
