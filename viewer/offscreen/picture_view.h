// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <span>

#include "layers/orbit_camera.h"
#include "offscreen/draw_picture.h"
#include "offscreen/house_groups.h"

namespace seamward::viewer {

/// The direction of view in which the outer end of a way faces the eye, a bit from the side on which more of the way is seen;
/// from the southeast without a way. `line` in the scene.
[[nodiscard]] OrbitCamera view_of_way(const House& house, const HouseFrame& frame, const EntryPath* way,
                                      std::span<const Point> line);

/// The same direction with all of `points` inside of a part of a picture of that size, as large as they can be and in its middle.
[[nodiscard]] OrbitCamera fitted_to(OrbitCamera camera, std::span<const Point> points, const QRectF& part, double width,
                                    double height);

/// A gap from close by, from the side where pests come from, obliquely. `from`: the space in front of it.
[[nodiscard]] OrbitCamera view_of_gap(const House& house, const HouseFrame& frame, GapIndex gap, SpaceIndex from);

}  // namespace seamward::viewer
