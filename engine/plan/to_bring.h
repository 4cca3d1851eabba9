// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "base/message.h"
#include "plan/plan.h"

namespace seamward {

/// `2 x roll copper wool`, `1 x case of 12 and 3 x cartridge polyurethane sealant`: whole packs, without their price.
[[nodiscard]] Message packs_text(const Purchase& purchase, const PriceBook& prices);

/// Tools and protection of all steps, each once, in the order in which they first come up.
struct Kit {
    std::vector<std::string> tools, protection;
};
[[nodiscard]] Kit kit_of(std::span<const PlanStep> steps);

/// Whole packs of devices and traps for the animals that steps wait for: one for each animal that takes one.
[[nodiscard]] std::vector<Purchase> packs_for_departures(const Plan& plan, const PriceBook& prices);

}  // namespace seamward
