// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "interior/throat.h"

namespace seamward {

/// Tries to lead a way through places where a larger ball fits than the one that it was led for: from each place, the widest
/// first, to the corners of the way on both sides of its narrowest place. Whether it became wider. `tolerance`: a fraction of the
/// radius.
bool widen(const Clearance& clearance, std::vector<Stand> places, double tolerance, ThroatWay& way);

}  // namespace seamward
