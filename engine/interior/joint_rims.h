// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "interior/contacts.h"
#include "interior/rim_air.h"

namespace seamward {

/// A straight stretch of the rim of a contact that comes out in one space.
struct RimRun {
    Point from, to;
    std::size_t space = 0;
    Vector out;  ///< of length 1, into the air

    [[nodiscard]] double length() const { return distance(from, to); }
    [[nodiscard]] Point middle() const { return from + (to - from) * 0.5; }
};

/// Where the rim of a contact comes out in the air, in which space: looked at every 10 mm, its ends found to 0.1 mm.
[[nodiscard]] std::vector<RimRun> rim_runs(const Contact& contact, const RimAir& air, const std::vector<std::size_t>& space_of);

}  // namespace seamward
