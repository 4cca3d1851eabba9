// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/scene_room.h"

#include <utility>

namespace seamward::test {

double allowance(const ExpectedGap& gap, double scale) {
    switch (gap.tolerance) {
        case Tolerance::planar: return 0.05 * mm * scale;
        case Tolerance::curved: return 0.02 * gap.width;
        case Tolerance::bent: return 0.03 * gap.width;
    }
    return 0;
}

void add_part(Scene& scene, const std::string& id, TriangleMesh mesh) {
    scene.parts.push_back({.id = id, .name = id, .mesh = std::move(mesh)});
}

void add_parts(Scene& scene, const std::string& id, std::vector<TriangleMesh> meshes) {
    if (meshes.size() == 1) {
        add_part(scene, id, std::move(meshes.front()));
        return;
    }
    for (std::size_t i = 0; i < meshes.size(); ++i) add_part(scene, id + "-" + std::to_string(i + 1), std::move(meshes[i]));
}

Scene room_without_south(const std::string& name, const RoomSize& room) {
    Scene scene{.name = name};
    const auto& [x, y, z, t] = room;
    add_part(scene, "floor", block({-t, -t, -t}, {x + t, y + t, 0}));
    add_part(scene, "ceiling", block({-t, -t, z}, {x + t, y + t, z + t}));
    add_part(scene, "west", block({-t, -t, 0}, {0, y + t, z}));
    add_part(scene, "east", block({x, -t, 0}, {x + t, y + t, z}));
    add_part(scene, "north", block({0, y, 0}, {x, y + t, z}));
    scene.spaces = {{"outdoors", {x / 2, -t - 2 * y, z / 2}}, {"room", {0.45 * x, 0.6 * y, 0.55 * z}}};
    return scene;
}

void add_south(Scene& scene, const RoomSize& room, const Loops& holes) {
    add_parts(scene, "south", extruded(south_frame, rectangle(0, 0, room.x, room.z), holes, 0, room.wall));
}

void add_south_profile(Scene& scene, const RoomSize& room, const Loops& cuts, double x0, double x1,
                       const std::optional<Loop>& outline) {
    const Loop plain = rectangle(-room.wall, 0, 0, room.z);
    if (x0 > 0) add_parts(scene, "south-left", extruded(profile_frame, plain, {}, 0, x0));
    add_parts(scene, "south", extruded(profile_frame, outline.value_or(plain), cuts, x0, x1));
    if (x1 < room.x) add_parts(scene, "south-right", extruded(profile_frame, plain, {}, x1, room.x));
}

ExpectedGap south_gap(const RoomSize& room, const std::string& shape, double width, Tolerance tolerance, double length, Point2 at,
                      double half_x, double half_z) {
    const double before = 15 * mm;
    ExpectedGap gap{.one = "outdoors", .other = "room", .shape = shape, .width = width, .tolerance = tolerance, .length = length};
    gap.near = {at.x, -room.wall / 2, at.y};
    gap.window = {{at.x - half_x, -room.wall - before, at.y - half_z}, {at.x + half_x, before, at.y + half_z}};
    gap.from = {at.x, -room.wall - 0.9 * before, at.y};
    gap.to = {at.x, 0.9 * before, at.y};
    return gap;
}

ExpectedGap south_slot(const RoomSize& room, double width, Tolerance tolerance, double length, Point2 at, double half_z) {
    return south_gap(room, "slot", width, tolerance, length, at, width / 2000, half_z);
}

Scene south_scene(const std::string& name, const RoomSize& room, const Loops& holes, const ExpectedGap& gap) {
    Scene scene = room_without_south(name, room);
    add_south(scene, room, holes);
    if (gap.width > 0) scene.gaps.push_back(gap);
    return scene;
}

}  // namespace seamward::test
