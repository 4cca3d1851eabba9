// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "base/solid.h"

namespace seamward::test {

/// A box between two corners: 8 points, 12 triangles, facing outward. Triangles 0 and 1 lie at the low x, 2 and 3 at the high x,
/// then y and z.
[[nodiscard]] TriangleMesh box(const Point& low, const Point& high);

/// A box with a hole along z from top to bottom, `wall` meters from each side: 16 points, 32 triangles.
[[nodiscard]] TriangleMesh tube(const Point& low, const Point& high, double wall);

/// Both in one mesh.
[[nodiscard]] TriangleMesh joined(const TriangleMesh& a, const TriangleMesh& b);

/// The same mesh inside out.
[[nodiscard]] TriangleMesh turned(TriangleMesh mesh);

/// A part of a mesh that bounds no gap.
[[nodiscard]] Part part_of(const std::string& id, TriangleMesh mesh, Layer layer = Layer::framing,
                           const std::string& material = "wood");

/// Says that these triangles of a part bound a gap.
void bind(Part& part, GapIndex gap, const std::vector<std::size_t>& triangles);

/// A survey with gaps of these ids.
[[nodiscard]] Survey survey_with(const std::vector<std::string>& gaps);

/// A house of a box, a tube and a part in two pieces, with two gaps among them; nothing at round coordinates.
struct SampleHouse {
    std::string name = "Sample house";
    Survey survey;
    std::vector<Part> parts;
};
[[nodiscard]] SampleHouse sample_house();

/// The same with names that are hard to write: quotes, line ends, letters from everywhere.
[[nodiscard]] SampleHouse hostile_house();

}  // namespace seamward::test
