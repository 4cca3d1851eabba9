// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/model.h"
#include "interior/find.h"
#include "provisions/audit.h"

namespace seamward {

/// Of a job with a described house that was read with its solids; no parts where it has none.
[[nodiscard]] GapParts parts_of_house(const Job& job);

/// Of a survey that was made from what was found (`found_survey`): its gaps, then its joints.
[[nodiscard]] GapParts parts_of_found(const Found& found);

/// Of a survey over a model: the two parts nearest to each gap's place that are no farther away than its clear width and
/// `reach`. O(gaps x log triangles).
[[nodiscard]] GapParts parts_near(const Survey& survey, const Model& model);

}  // namespace seamward
