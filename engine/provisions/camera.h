// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "base/vector.h"
#include "geometry/box_tree.h"

namespace seamward {

/// Where a picture is taken from and where to. Meters; unit vectors at right angles.
struct Camera {
    struct Cut {
        Point at;
        Vector toward;  ///< the side that is taken away
    };
    static constexpr double field_of_view = 45;  ///< degrees, upright: the least that BCF 2.1 allows, and the least distorted

    Point from;
    Vector toward, up;
    std::optional<Cut> cut;  ///< so that a place deep within the building can be seen
};

/// What a picture has to hold: a ball around a place.
struct Sight {
    Point middle;
    double radius = 0;
    bool overview = false;          ///< of much of the building: from higher up, and nothing is cut away
    std::optional<Vector> outward;  ///< out of the building there; nothing: toward its nearest side ...
    std::optional<Point> entry;     ///< ... to this place; nothing: to the middle
};

/// Whether a place can be shown at all: its coordinates are numbers, and of this Earth.
[[nodiscard]] bool can_be_shown(const Point& at);

/// From outside of the building, if it is known, above the ground, a little from the side, so far away that the picture holds
/// all of the ball. The place has to be one that can be shown.
[[nodiscard]] Camera camera_for(const Sight& sight, const std::optional<AxisBox>& building);

}  // namespace seamward
