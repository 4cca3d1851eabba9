// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "plan/plan.h"

namespace seamward {

/// What of a plan an owner can do safely from the ground, and what is left for hire.
struct OwnerPart {
    std::size_t steps = 0, hired_steps = 0;
    double minutes = 0;               ///< at a technician's pace
    std::vector<Purchase> materials;  ///< whole packs for the owner's steps
    Money to_buy;                     ///< of these
    Money hired;                      ///< sum of the other steps' costs
};

[[nodiscard]] OwnerPart owner_part(const Plan& plan, const PriceBook& prices);

}  // namespace seamward
