// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "base/survey.h"

namespace seamward {

/// A gap with what is to be put over it: the clear opening of a mesh, or 0 for a full closing.
struct TreatedGap {
    GapIndex gap;
    double opening = 0;  ///< meters
};

/// A mesh that must not be used: it takes too much air from a vented space or from an appliance.
struct StarvingMesh {
    GapIndex gap;
    double opening = 0;
    std::string why;  ///< with the numbers
    std::string source;
};

/// Of the meshes among `treated` those over openings of spaces that get too little air once all of it is done. Floor areas and
/// inputs of appliances are not known here, so a loss that a rule would forgive is not forgiven. See check_ventilation.
[[nodiscard]] std::vector<StarvingMesh> starving_meshes(const Survey& survey, std::span<const TreatedGap> treated);

}  // namespace seamward
