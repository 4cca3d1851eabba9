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

/// The part of a line around its point that is nearest to `middle`, as far as it stays within `reach` meters of it.
[[nodiscard]] std::vector<Point> part_near(const std::vector<Point>& line, const Point& middle, double reach);

/// Adds the shown way: a tube with arrowheads and a light rim, of a thickness that is well seen at the size of the picture;
/// `unit` is the picture's unit of length in pixels. No arrowhead stands at one of `marks`.
void add_way(ColoredTriangles& all, const std::vector<Point>& line, std::span<const Point> marks, const Sight& sight,
             double unit);

/// Adds another way: thin dashes.
void add_thin_way(ColoredTriangles& all, const std::vector<Point>& line, const Sight& sight, double unit);

}  // namespace seamward::viewer
