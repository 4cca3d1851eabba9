// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/treatment_name.h"

#include "catalog/shipped.h"

namespace seamward {

Message treatment_name(std::string_view id) {
    const Treatment* treatment = shipped_treatments().find(id);
    return treatment != nullptr ? as_named(treatment->name) : Message("closed at the price of the survey");
}

}  // namespace seamward
