// SPDX-License-Identifier: GPL-3.0-or-later
// What scenes are made from: a room of six panels that touch flush, one of them to be built piece by piece.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "tests/support/scenes.h"

namespace seamward::test {

inline constexpr double mm = 1e-3;

/// A room's air is from the origin to (x, y, z); its sides are `wall` thick. South is the side at y = 0, outdoors below -wall.
struct RoomSize {
    double x = 0.6, y = 0.5, z = 0.4, wall = 0.1;
};
inline constexpr RoomSize full_room{4, 3, 2.5, 0.1};

/// u along x, v up, n out of the south side; 0 is its inner face.
inline constexpr Frame south_frame{{0, 0, 0}, {1, 0, 0}, {0, 0, 1}, {0, -1, 0}};
/// u along y, v up, n along x: for profiles of the south side.
inline constexpr Frame profile_frame{{0, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 0, 0}};

void add_part(Scene& scene, const std::string& id, TriangleMesh mesh);
/// Parts named id-1, id-2, ... ; plain id for one.
void add_parts(Scene& scene, const std::string& id, std::vector<TriangleMesh> meshes);

/// Five sides without the south one, and the spaces "room" and "outdoors".
[[nodiscard]] Scene room_without_south(const std::string& name, const RoomSize& room);

/// The south side in one piece with straight holes in (x, z).
void add_south(Scene& scene, const RoomSize& room, const Loops& holes);

/// The south side with a profile in (y, z) from x0 to x1, plain beside it. The profile's outline is the wall's unless given.
void add_south_profile(Scene& scene, const RoomSize& room, const Loops& cuts, double x0, double x1,
                       const std::optional<Loop>& outline = std::nullopt);

/// A gap between outdoors and the room straight through the south side around (x, z). Its window is as wide as given on both
/// sides of that point.
[[nodiscard]] ExpectedGap south_gap(const RoomSize& room, const std::string& shape, double width, Tolerance tolerance,
                                    double length, Point2 at, double half_x, double half_z);

/// A slot along x: a thin window across it at x, as high as given around z.
[[nodiscard]] ExpectedGap south_slot(const RoomSize& room, double width, Tolerance tolerance, double length, Point2 at,
                                     double half_z);

/// A room with holes in its south side, and the one gap they make.
[[nodiscard]] Scene south_scene(const std::string& name, const RoomSize& room, const Loops& holes, const ExpectedGap& gap);

}  // namespace seamward::test
