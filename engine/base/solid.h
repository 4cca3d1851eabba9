// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <vector>

#include "base/survey.h"

namespace seamward {

/// Triangles over shared points. Meters, z up; seen from outside of the solid, corners run counterclockwise.
struct TriangleMesh {
    std::vector<Point> points;
    std::vector<std::array<std::uint32_t, 3>> triangles;
};

/// What a part belongs to, from the ground up and from outside in: what a picture fades or hides together.
enum class Layer : std::uint8_t { ground, yard, foundation, framing, cladding, roof, eaves, opening, interior, fixture };

/// One solid of a house.
struct Part {
    std::string id;        ///< of its own within the house: "north-wall/stucco"
    std::string name;      ///< for people: "stucco of the north wall"
    std::string material;  ///< a substrate word of the survey: "stucco", "concrete", "metal"
    Layer layer = Layer::framing;
    TriangleMesh mesh;  ///< closed; several closed shells when the part is in pieces
    /// For each triangle the gap that it bounds, or an invalid index.
    std::vector<GapIndex> bounds;
};

}  // namespace seamward
