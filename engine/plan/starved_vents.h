// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "base/survey.h"
#include "base/vented.h"
#include "plan/treated_gap.h"

namespace seamward {

/// A mesh that must not be used: it takes too much air from a vented space or from an appliance.
struct StarvingMesh {
    GapIndex gap;
    double opening = 0;
    Message why;  ///< with the numbers
    Message source;
};

/// What the vents of a job are checked by.
struct VentLimits {
    std::span<const SpaceArea> floors;
    std::span<const SpaceInput> inputs;
};

/// Of the meshes among `treated` those over openings of spaces that get too little air once all of it is done, see
/// check_ventilation(). Where floor or input is not known nothing can be refused: `doubts` gets what should be told.
[[nodiscard]] std::vector<StarvingMesh> starving_meshes(const Survey& survey, std::span<const TreatedGap> treated,
                                                        const VentLimits& limits, std::vector<Message>& doubts);

}  // namespace seamward
