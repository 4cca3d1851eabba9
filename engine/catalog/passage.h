// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/survey.h"
#include "catalog/tables.h"

namespace seamward {

/// Sizes that differ by less than this count as equal: a picometer, far below anything measured and far above
/// what rounding leaves of sums such as 1.2 mm + 0.3 mm.
inline constexpr double passage_tolerance = 1e-12;

/// Whether an animal of that size gets through an opening:
/// a slot when slit <= width and hole <= length; a ring like a slot as long as its mid circumference; a hole when
/// hole <= diameter; a square mesh of clear opening s when sqrt((slit^2 + hole^2) / 2) <= s, its cross-section
/// taken as an ellipse turned to the diagonal. Nothing gets through an opening that is shut.
[[nodiscard]] bool passes(const PassageSize& pest, const Shape& opening);

/// How wide a gap counts: as its survey states it, or as wide as it may be.
enum class Sizing : std::uint8_t { stated, with_plus_minus };

/// Whether an animal gets through a gap; where a mesh was put over it, through both.
[[nodiscard]] bool lets_through(const Gap& gap, const PassageSize& pest, Sizing sizing);

/// The clear width that a gap counts with, in meters.
[[nodiscard]] double counted_width(const Gap& gap, Sizing sizing);

}  // namespace seamward
