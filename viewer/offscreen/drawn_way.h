// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "offscreen/colored_triangles.h"
#include "offscreen/draw_picture.h"
#include "offscreen/house_groups.h"
#include "offscreen/sight.h"

namespace seamward::viewer {

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

/// Adds the shown way: a tube with arrowheads and a light rim, of a thickness that is well seen at the size of the picture;
/// `unit` is the picture's unit of length in pixels. No arrowhead stands at one of `marks`.
void add_way(ColoredTriangles& all, const std::vector<Point>& line, std::span<const Point> marks, const Sight& sight,
             double unit);

/// Adds the lines of a roof: crisp and thin.
void add_roof_lines(ColoredTriangles& all, std::span<const std::vector<Point>> lines, const Sight& sight, double unit);

/// Adds other ways: thin dashes.
void add_thin_ways(ColoredTriangles& all, std::span<const std::vector<Point>> lines, const Sight& sight, double unit);

}  // namespace seamward::viewer
