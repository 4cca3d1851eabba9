// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "interior/measure.h"

namespace seamward {

/// Meters along the way of a ball, both ways from where it is held tightest, as far as a ball larger by a tenth does not fit
/// there nor right beside; straight across the cut where that is shorter and nothing is in the way.
[[nodiscard]] double depth_of(const Clearance& clearance, const std::vector<Point>& way, const Point& at, double radius,
                              const std::optional<MeasuredOpening::Cut>& cut);

/// Where an opening has another one's depth, measures its own: of thousands of holes that look alike few are asked for it.
void settle_depth(const Clearance& clearance, MeasuredOpening& opening);

}  // namespace seamward
