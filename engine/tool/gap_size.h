// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/survey.h"

namespace seamward {

/// A length for somebody with a tape: `29 ft 6 in (9.00 m)` to the nearest inch; below one foot `7 7/8 in (200 mm)`, to the
/// nearest 1/16.
[[nodiscard]] std::string tape_text(double meters);

/// `at 4.50 m, 9.00 m, 0.05 m (14 ft 9 in, 29 ft 6 in, 2 in)`; z is up.
[[nodiscard]] std::string place_text(const Point& point);

/// The size of a gap for whoever works on it, in parts that are read one by one: `2 pieces, each 5/64 in (2 mm) wide`,
/// `up to 3/32 in (2.2 mm)`, `around 5/8 in (16 mm)`, `not measured: measure first`.
[[nodiscard]] std::vector<std::string> gap_size(const Gap& gap);

}  // namespace seamward
