// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "interior/throat.h"

namespace seamward {

/// Looks for a wider way through an opening, by places in its mouth or in a cut that shuts it where a larger ball fits than the
/// one that the way was led for: from each place, the widest first, to stands nearby in air of the two bodies. Whether the way
/// became wider. `tolerance`: a fraction of the radius.
bool widen(const Passages& passages, const Bodies& bodies, const WaysHome& home, const Openings& openings, std::size_t which,
           std::vector<Stand> places, double tolerance, ThroatWay& way);

}  // namespace seamward
