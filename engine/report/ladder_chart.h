// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "report/price_ladder.h"

namespace seamward {

/// The steps as an SVG with a text for those who do not see it: price from left to right, width of what is kept out upward, a
/// level line for each animal. The group of step I has the class `step` and `data-step` I, counted from 1.
void ladder_chart(PageWriter& page, const std::vector<PriceStep>& steps);

}  // namespace seamward
