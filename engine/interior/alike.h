// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "interior/measure.h"

namespace seamward {

/// Measures all openings, each as one or, where several share its mouth, as these. Those that look like another, as the holes of
/// a screen and the vents along an eave do, are measured by the way of the ball through the first of their look, moved: led anew
/// from end to end, and bounded by the own mouth; where that does not prove the width, like the first.
[[nodiscard]] std::vector<std::vector<MeasuredOpening>> measure_all(const Passages& passages, const Bodies& bodies,
                                                                    const WaysHome& home, const Openings& openings,
                                                                    const RunContext& run);

}  // namespace seamward
