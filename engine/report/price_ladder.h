// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "report/page_writer.h"

namespace seamward {

/// What one price keeps out.
struct PriceStep {
    double width = 0;  ///< no way in as wide or wider is left, meters
    Money cost;
    std::vector<GapIndex> gaps;
    std::vector<std::size_t> kept_out;  ///< positions in ReportFacts::animals: those whose slit is no smaller than `width`
};

/// The ladder of the plan, prices rising.
[[nodiscard]] std::vector<PriceStep> price_steps(const ReportFacts& facts);

/// The figure `ladder`: a chart, a table of the steps that keep one more animal out, one of all steps, and a slider for the
/// script. Nothing where the plan has no ladder.
void price_ladder(PageWriter& page);

}  // namespace seamward
