// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "report/drawing_views.h"

namespace seamward {

/// Rooms of a described house whose floor is at that height.
[[nodiscard]] std::vector<PlanRoom> rooms_of_story(const DrawnHouse& house, double floor);

/// Whether a part is the leaf of a door that a plan of that floor draws open.
[[nodiscard]] bool is_leaf_with_sign(const DrawnHouse& house, const Part& part, double floor);

/// Doors of a story as signs. The house file does not say which way a door turns: it opens into the house, or into the smaller of
/// two rooms, and turns at the end that is nearer to a wall.
[[nodiscard]] std::vector<PlanOpening> openings_of_story(const DrawnHouse& house, double floor,
                                                         const std::vector<PlanRoom>& rooms);

/// Whether a point lies inside of a figure.
[[nodiscard]] bool is_within(const Figure& figure, Point2 at);
/// From a point to the nearest border of a figure.
[[nodiscard]] double distance_to_border(const Figure& figure, Point2 at);

}  // namespace seamward
