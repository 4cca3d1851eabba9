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
    /// What of its place the house's file leaves to the tables: how high it is, where along its wall, how far its pieces are
    /// apart.
    bool height_usual = false, along_usual = false, spacing_usual = false;
};

/// The middle of a body of air: a figure in a plane, inside of which straight lines meet no solid. A wall cavity's stands in the
/// wall, an attic's lies over the ceilings. `frame` carries the figure's x to u and y to v, at n = 0.
struct MiddleSurface {
    Frame frame;
    Figure figure;  ///< an empty outline: the space has no solids, or lines in it are free (outdoors)
};

/// How a house is built, as far as it is known.
struct BuiltOf {
    std::vector<std::string> cladding;  ///< outermost layers of its outside walls; empty: not known
    std::string foundation;             ///< `slab`, `crawl-space`, `basement`; empty: not known
    std::vector<std::string> has;       ///< words of catalog/provisions.h: what it is known to have ...
    std::vector<std::string> without;   ///< ... and what it is known not to have
};

/// A house as it was described: its air, its gaps and its solids. Meters; x east, y north, z up, z = 0 on the ground floor.
struct House {
    std::string name;
    Survey survey;
    std::vector<GapPlace> places;        ///< one for each gap of the survey, in its order
    std::vector<MiddleSurface> middles;  ///< one for each space of the survey, in its order
    std::vector<Part> parts;
    std::vector<SpaceArea> vented;  ///< attic and crawl space, whether or not they have vents
    BuiltOf built_of;
    bool grade_usual = true;         ///< the file does not say how high the floor lies over the yard
    Loop outline;                    ///< outer face of the framing, counterclockwise, in the plan
    std::vector<std::string> walls;  ///< names of the walls along it, the first from its first corner on
};

}  // namespace seamward
