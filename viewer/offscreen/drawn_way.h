// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "layers/colored_triangles.h"
#include "layers/house_groups.h"
#include "layers/house_way.h"
#include "offscreen/sight.h"

namespace seamward::viewer {

/// Adds the shown way: a tube with arrowheads and a light rim, of a thickness that is well seen at the size of the picture;
/// `unit` is the picture's unit of length in pixels. No arrowhead stands at one of `marks`.
void add_way(ColoredTriangles& all, const std::vector<Point>& line, std::span<const Point> marks, const Sight& sight,
             double unit);

/// Adds the lines of a roof: crisp and thin.
void add_roof_lines(ColoredTriangles& all, std::span<const std::vector<Point>> lines, const Sight& sight, double unit);

/// Adds other ways: thin dashes.
void add_thin_ways(ColoredTriangles& all, std::span<const std::vector<Point>> lines, const Sight& sight, double unit);

}  // namespace seamward::viewer
