// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "base/survey.h"
#include "catalog/tables.h"

namespace seamward {

/// The gaps that lie on a way in which is open to one of the animals, as wide as plus_minus allows; without animals, on any way
/// along gaps that are not shut. Rising. O(animals * gaps).
[[nodiscard]] std::vector<GapIndex> leaking_gaps(const Survey& survey, const std::vector<Pest>& animals);

}  // namespace seamward
