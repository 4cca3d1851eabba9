// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/plane.h"
#include "base/solid.h"
#include "base/survey.h"
#include "base/vector.h"
#include "base/vented.h"

namespace seamward {

/// Where a gap is, and the way through it.
struct GapPlace {
    GapIndex gap;
    /// From a point inside `between[0]` through the middle of the opening to a point inside `between[1]`, each no farther in than
    /// it takes to get past what stands right before the opening; two points or more, and no solid on the way. Of several alike,
    /// the first piece. Empty: the gap has no solids (it was added by hand).
    std::vector<Point> through;
    std::string feature{};  ///< id of the line of the house's list of features that makes it; empty: no such line does
};

/// The middle of a body of air: a figure in a plane, inside of which straight lines meet no solid. A wall cavity's stands in the
/// wall, an attic's lies over the ceilings. `frame` carries the figure's x to u and y to v, at n = 0.
struct MiddleSurface {
    Frame frame;
    Figure figure;  ///< an empty outline: the space has no solids, or lines in it are free (outdoors)
};

/// A house as it was described: its air, its gaps and its solids. Meters; x east, y north, z up, z = 0 on the ground floor.
struct House {
    std::string name;
    Survey survey;
    std::vector<GapPlace> places;        ///< one for each gap of the survey, in its order
    std::vector<MiddleSurface> middles;  ///< one for each space of the survey, in its order
    std::vector<Part> parts;
    std::vector<SpaceArea> vented;  ///< attic and crawl space, whether or not they have vents
};

}  // namespace seamward
