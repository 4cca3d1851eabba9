// SPDX-License-Identifier: GPL-3.0-or-later
// Small closed solids for scenes, all with their faces outward.
#pragma once

#include <array>
#include <span>
#include <vector>

#include "base/plane.h"
#include "base/solid.h"
#include "base/vector.h"

namespace seamward::test {

using Loops = std::vector<Loop>;

/// A box along the axes.
struct Box {
    Point lowest, highest;
};

[[nodiscard]] TriangleMesh block(const Point& lowest, const Point& highest);

[[nodiscard]] Loop rectangle(double u0, double v0, double u1, double v1);

/// A regular polygon around a circle: sides touch it, the middle of the first lies at angle `turn`. With an even number of sides
/// the largest circle inside has the diameter of the circle; corners stand out by 1 / cos(pi / sides).
[[nodiscard]] Loop round_loop(Point2 center, double radius, int sides = 24, double turn = 0);

[[nodiscard]] Loop turned_loop(const Loop& loop, Point2 about, double angle);

/// What the cuts leave of the outline, pulled along n of the frame; one mesh for each piece. Cuts may cross the outline.
[[nodiscard]] std::vector<TriangleMesh> extruded(const Frame& frame, const Loop& outline, const Loops& cuts, double from,
                                                 double to);

/// A frame whose n runs along a way, with u level where it can be.
[[nodiscard]] Frame frame_along(const Point& from, const Point& to);

/// A pipe without a bore, as a prism around the cylinder.
[[nodiscard]] TriangleMesh bar(const Point& from, const Point& to, double radius, int sides = 24);

/// A pipe with a bore, mitered at the corners of its way. A ball of the bore's diameter just gets through.
[[nodiscard]] TriangleMesh tube(std::span<const Point> way, double inner, double outer, int sides = 24);

/// One solid around a box of air, with straight holes through its six sides: lowest x, highest x, then y, then z. A hole lies in
/// the two axes that follow in the order x, y, z, x, y, and inside of the side's inner face.
[[nodiscard]] TriangleMesh hollow_block(const Box& air, double thickness, const std::array<std::vector<Loop>, 6>& holes);

/// All triangles in one mesh; points are not merged.
[[nodiscard]] TriangleMesh joined(std::span<const TriangleMesh> meshes);

/// Points in one place become one.
[[nodiscard]] TriangleMesh merged_points(const TriangleMesh& mesh);

}  // namespace seamward::test
