// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <span>

#include "layers/orbit_camera.h"
#include "offscreen/draw_picture.h"
#include "offscreen/house_groups.h"
#include "offscreen/section.h"

namespace seamward::viewer {

/// The direction of view in which the outer end of a way faces the eye, a bit from the side on which more of the way is seen;
/// from the southeast without a way. `line` in the scene.
[[nodiscard]] OrbitCamera view_of_way(const House& house, const HouseFrame& frame, const EntryPath* way,
                                      std::span<const Point> line);

/// The same direction with all of `points` inside of a part of a picture of that size, as large as they can be and in its middle.
[[nodiscard]] OrbitCamera fitted_to(OrbitCamera camera, std::span<const Point> points, const QRectF& part, double width,
                                    double height);

/// The vertical plane through the way of a gap, or else through its middle and across the slot; scene. Its normal looks from
/// where the gap's outer side is seen at the left.
[[nodiscard]] CutPlane plane_of_gap(const House& house, const HouseFrame& frame, GapIndex gap);

/// Looks at a gap cut open by that plane, obliquely, a bit from the outer side and from above.
[[nodiscard]] OrbitCamera view_of_gap(const House& house, const HouseFrame& frame, GapIndex gap, const CutPlane& plane);

}  // namespace seamward::viewer
