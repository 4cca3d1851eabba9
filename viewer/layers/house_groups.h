// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkPolyData.h>
#include <vtkSmartPointer.h>

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "adapt/picture_frame.h"
#include "base/vector.h"
#include "house/house.h"
#include "layers/colored_triangles.h"

namespace seamward::viewer {

/// Where the picture of a house stands. Scene: the house's meters, moved to the middle of the house at x = y = 0.
struct HouseFrame {
    Point origin;       ///< of the scene, in the frame of the house
    Box house;          ///< scene: around the house without the ground and what stands in the yard; never flat
    Box all;            ///< scene: around all of it
    double ground = 0;  ///< scene: height of the ground; of the lowest point where the house has none

    [[nodiscard]] Point to_scene(const Point& at) const { return {at.x - origin.x, at.y - origin.y, at.z - origin.z}; }
};

/// O(points).
[[nodiscard]] HouseFrame house_frame(const House& house);

/// One closed shell of a part, and from where one looks through it into the house.
struct HousePiece {
    enum class Before : std::uint8_t {
        nothing,   ///< a floor, a pipe: nothing is behind it
        above,     ///< a roof, a ceiling: it hides what is under it
        one_side,  ///< a wall: it hides what is behind it from an eye on the side of `outward`
    };

    std::uint32_t part = 0;                ///< position in House::parts
    std::vector<std::uint32_t> triangles;  ///< positions in the part's mesh
    Box box{};                             ///< house
    Before before = Before::nothing;
    Vector outward;  ///< of a wall: about level, of unit length, out of the house or toward its nearer side
};

/// In the order of the parts. O(triangles).
[[nodiscard]] std::vector<HousePiece> house_pieces(const House& house);

/// What is drawn as one, and fades as one, from what stays to what fades.
enum class Group : std::uint8_t { ground, solid, framing, interior, opening, cladding, roof };
inline constexpr std::size_t group_count = 7;

/// The solids of a house, sorted for one direction of view: what the eye looks through (the near walls, ceilings, the roof) is
/// apart from what it looks at (the floor, the far walls).
using HouseGroups = std::array<vtkSmartPointer<vtkPolyData>, group_count>;

/// Triangles in scene coordinates with a color and a normal at each corner. `to_eye`: level and of unit length, from the house
/// toward the eye. O(triangles).
[[nodiscard]] HouseGroups house_groups(const House& house, const HouseFrame& frame, Vector to_eye);

/// The ridges, hips, valleys, eaves and rakes of a sloping roof: the borders of its planes, each once; scene. Openings in a plane
/// have none. O(triangles of the roof).
[[nodiscard]] std::vector<std::vector<Point>> roof_lines(const House& house, const HouseFrame& frame);

/// Adds the faces that bound a gap, in the color of the smallest gap, to be seen from behind as well, lit from there; none when
/// the gap has no solids.
void add_gap_faces(ColoredTriangles& all, const House& house, const HouseFrame& frame, GapIndex gap, Vector lit_from);

}  // namespace seamward::viewer
