// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

namespace seamward {

/// A house file of models/, which is carried in the program.
struct ShippedPlan {
    std::string_view id;  ///< its name without ending
    std::string_view text;
};

[[nodiscard]] std::span<const ShippedPlan> shipped_plans();

}  // namespace seamward
