// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/survey.h"
#include "sweep/lot_row.h"

namespace seamward {

/// A gap as something that leaks, without a cost.
[[nodiscard]] LeakingDetail detail_of(const Gap& gap);

/// Ids with spaces between.
[[nodiscard]] std::string ids_in_turn(const std::vector<std::string>& ids);
[[nodiscard]] std::string gap_ids(const Survey& survey, const std::vector<GapIndex>& gaps);

}  // namespace seamward
