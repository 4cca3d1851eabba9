// SPDX-License-Identifier: GPL-3.0-or-later
// A second opinion on solids by CGAL, in a library of its own: link seamward_solid_support.
#pragma once

#include <cstddef>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "base/solid.h"

namespace seamward::test {

/// Corners of the smallest box around points; lowest above highest when there are none.
struct Bounds {
    Point lowest{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity(),
                 std::numeric_limits<double>::infinity()};
    Point highest{-std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(),
                  -std::numeric_limits<double>::infinity()};

    void include(const Point& point);
};

/// What a mesh is.
struct SolidFacts {
    /// Every edge of a triangle is met by exactly one edge the other way. Edges are told by their points' positions in
    /// `points`: two points in one place do not close anything.
    bool closed = false;
    /// Whether triangles meet where they share no point or edge; touching counts, so does a triangle without area. Exact.
    /// Nothing: the mesh cannot be judged, because edges or points are shared by too many triangles or a corner is no point.
    std::optional<bool> self_intersects;
    std::size_t flat = 0;  ///< triangles without area; exact
    double area = 0;       ///< square meters
    /// Signed, in cubic meters, of each shell (triangles joined by edges), in the order of their first triangles: positive when
    /// the triangles face outward. A hollow's shell is negative.
    std::vector<double> shell_volumes;
    double volume = 0;  ///< of all shells
    /// Closed, without self-intersections, and each shell that lies in another is turned against it. Whether the whole is
    /// inside out is not asked.
    bool bounds_a_volume = false;
    Bounds bounds;  ///< of the points that triangles use
};

[[nodiscard]] SolidFacts facts_of(const TriangleMesh& mesh);

/// What keeps a mesh from being a sound solid: closed, facing outward, without self-intersections and flat triangles. One
/// sentence, or empty. A hollow is a fault too, unless `hollows` are expected.
[[nodiscard]] std::string fault_of_solid(const TriangleMesh& mesh, bool hollows = false);

}  // namespace seamward::test
