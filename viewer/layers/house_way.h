// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "adapt/way_line.h"
#include "base/vector.h"
#include "layers/house_groups.h"
#include "paths/trace.h"

namespace seamward::viewer {

/// A way in as it is drawn.
struct DrawnPath {
    RankedPath way;
    /// Through the house's air from outdoors into the room, in the frame of the house. Empty: straight lines through the gaps.
    std::vector<Point> route;
};

/// The middle of a gap's opening: of its place, or else as the survey says; nothing when neither is known. House.
[[nodiscard]] std::optional<Point> gap_middle(const House& house, GapIndex gap);

/// Where a gap opens toward one of its spaces: level and of unit length; nothing for a gap without a place, or in a floor.
[[nodiscard]] std::optional<Vector> opens_toward(const House& house, GapIndex gap, SpaceIndex space);

/// The line that is drawn for a way: its route, or else straight lines through its gaps, led on a little outdoors and into the
/// room where it ends at the last gap. Scene; empty when nothing of the way has a place.
[[nodiscard]] std::vector<Point> line_of_way(const House& house, const HouseFrame& frame, const DrawnPath& path);

/// The same with its corners rounded, none by more than `radius` meters.
[[nodiscard]] std::vector<Point> rounded(const std::vector<Point>& line, double radius);

/// The way through the air of one gap, from its outer side (outdoors, or else what is no room) inward. Scene; empty when it has
/// no solids.
[[nodiscard]] std::vector<Point> way_through_gap(const House& house, const HouseFrame& frame, GapIndex gap);

/// The same as the line of a window's picture: from stop to stop. Scene.
[[nodiscard]] WayLine way_line_along(const House& house, const HouseFrame& frame, const DrawnPath& path);

}  // namespace seamward::viewer
