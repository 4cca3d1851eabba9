// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <array>
#include <functional>
#include <span>
#include <vector>

#include "layers/house_groups.h"
#include "layers/orbit_camera.h"
#include "layers/section.h"
#include "offscreen/draw_picture.h"

namespace seamward::viewer {

/// The solids of a house, as what stands in the line of sight.
class SightBlocks {
public:
    SightBlocks(const House& house, const HouseFrame& frame);

    /// How much of a point the eye sees past the solids between them, 0 to 1: 1 when there is none, less for each that fades in a
    /// picture of all of the house, 0 behind one that does not. What touches the point does not count. O(triangles).
    [[nodiscard]] double seen(const Point& at, const Point& eye) const;

private:
    struct Block {
        Layer layer;
        Box box;
        std::vector<std::array<Point, 3>> faces;
    };
    std::vector<Block> blocks_;  ///< one for each part
};

/// Where a way begins, as it is to be seen from outside: the outer end of its first gap that has a place, and the end of the line
/// before it. Scene; empty when the way has no place.
[[nodiscard]] std::vector<Point> outer_places(const House& house, const HouseFrame& frame, const EntryPath& way,
                                              std::span<const Point> line);

/// Of eight directions of view, all from the side to which the way's first gap opens or, where it opens up or down, all round,
/// the one from which most is seen of that gap from outside, of the smallest gap, and of the way's length; the earlier of two
/// about as good. From the southeast without a way. `fit` moves an eye until it sees all that it has to. `line` in the scene.
[[nodiscard]] OrbitCamera view_of_way(const House& house, const HouseFrame& frame, const RankedPath* way,
                                      std::span<const Point> line, const std::function<OrbitCamera(const OrbitCamera&)>& fit);

/// The same direction with all of `points` inside of a part of a picture of that size, as large as they can be and in its middle.
[[nodiscard]] OrbitCamera fitted_to(OrbitCamera camera, std::span<const Point> points, const QRectF& part, double width,
                                    double height);

/// The vertical plane through the way of a gap, or else through its middle and across the slot; of a ring whose solids are known,
/// through its axis. Scene. Its normal looks from where the gap's outer side is seen at the left.
[[nodiscard]] CutPlane plane_of_gap(const House& house, const HouseFrame& frame, GapIndex gap);

/// Looks at a gap cut open by that plane, obliquely, a bit from the outer side and from above.
[[nodiscard]] OrbitCamera view_of_gap(const House& house, const HouseFrame& frame, GapIndex gap, const CutPlane& plane);

}  // namespace seamward::viewer
