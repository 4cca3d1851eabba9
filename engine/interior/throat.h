// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <vector>

#include "interior/openings.h"
#include "interior/section.h"

namespace seamward {

/// The way of the largest ball through an opening.
struct ThroatWay {
    double radius = 0;  ///< meters
    Point tightest;
    std::vector<Point> corners;           ///< the way of its middle, from one body to the other, from room to room
    std::array<std::uint32_t, 2> ends{};  ///< stands, on its way from the one body to the other
    std::vector<std::uint32_t> portals;   ///< that it leads through
};

/// Looks for that way among the stands around the widest passage of the opening, each placed anew as well as can be
/// (`tolerance`, a fraction of the radius). It keeps out of the mouths of other openings.
[[nodiscard]] ThroatWay widest_way(const Passages& passages, const Bodies& bodies, const WaysHome& home, const Openings& openings,
                                   std::size_t which, double tolerance);

/// A passage that leads beside gates, and the radius in meters of the ball that gets through.
struct Beside {
    std::uint32_t passage = 0;
    double clearance = 0;
};

/// The same around another passage, where gates are shut: a way through none of them, or one without corners where there is none.
/// `widest`: the radius in meters of the ball that gets through the widest of them, for which there is room where the way ends.
[[nodiscard]] ThroatWay widest_way_beside(const Passages& passages, const Bodies& bodies, const WaysHome& home,
                                          const Openings& openings, std::size_t which, const Beside& start, double tolerance,
                                          const std::vector<Gate>& gates, double widest);

/// Leads a way on from its last corner, at a stand, to where a ball of the cap's size is at home, along the widest way there.
void lead_home(const Passages& passages, const WaysHome& home, std::uint32_t from, double tolerance, ThroatWay& way);

}  // namespace seamward
