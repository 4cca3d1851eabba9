// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/treatment_name.h"

#include "catalog/shipped.h"

namespace seamward {

std::string treatment_name(const std::string& id) {
    const Treatment* treatment = shipped_treatments().find(id);
    return treatment != nullptr ? treatment->name : "closed at the price of the survey";
}

}  // namespace seamward
