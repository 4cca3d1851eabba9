// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "provisions/audit.h"

namespace seamward {

/// For each finding its way: of the n-th with that rule the n-th of Audit::ways; null where it is of a provision.
[[nodiscard]] std::vector<const WayIn*> ways_of_findings(const Audit& audit);

}  // namespace seamward
