// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "interior/throat.h"

namespace seamward {

/// The nearest stand of a body, by its passages and by its cell, where a ball of `radius` (meters) fits, of the first of its
/// cells from a mouth on that have any; Openings::none where there is none close by.
[[nodiscard]] std::uint32_t stand_beside(const Passages& passages, const Bodies& bodies, const Openings& openings,
                                         const Opening& opening, std::int32_t body, double radius);

/// Leads a way on from its last corner to a stand; false where a ball of `least` (meters) does not get there.
[[nodiscard]] bool lead_on(const Passages& passages, std::uint32_t to, double least, ThroatWay& way);

/// The way of a ball straight through the widest place of an opening's mouth and on to a stand of either body; without corners
/// where there is none.
[[nodiscard]] ThroatWay way_through_mouth(const Passages& passages, const Bodies& bodies, const Openings& openings,
                                          const Opening& opening, double tolerance);

}  // namespace seamward
