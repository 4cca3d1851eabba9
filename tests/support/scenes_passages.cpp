// SPDX-License-Identifier: GPL-3.0-or-later
// Rooms without gaps, rooms in a row, doors, passages wider than gaps.
#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

/// Panels that touch flush, panels that run into each other, a room in one piece: all sealed.
std::vector<Scene> sealed_rooms() {
    const RoomSize room;
    Scene flush = room_without_south("sealed-flush", room);
    add_south(flush, room, {});
    const double t = room.wall, over = 10 * mm;
    Scene overlapping = room_without_south("sealed-overlapping", room);
    add_part(overlapping, "south", block({-over, -t, -over}, {room.x + over, over, room.z + over}));
    Scene whole{.name = "sealed-one-solid", .spaces = flush.spaces};
    add_part(whole, "room", hollow_block({{0, 0, 0}, {room.x, room.y, room.z}}, t, {}));
    // Panels of two layers; a slot in each, 0.1 m apart, and the layers touch.
    Scene layers = room_without_south("sealed-layers", room);
    const Loop face = rectangle(0, 0, room.x, room.z);
    add_parts(layers, "lining", extruded(south_frame, face, Loops{rectangle(0.1, 0.1, 0.4, 0.106)}, 0, t / 2));
    add_parts(layers, "sheathing", extruded(south_frame, face, Loops{rectangle(0.1, 0.2, 0.4, 0.206)}, t / 2, t));
    layers.shut.push_back(south_gap(room, "slot", layers.smallest, Tolerance::planar, 0, {0.25, 0.153}, 0.001 * mm, 60 * mm));
    return {flush, overlapping, whole, layers};
}

/// What is wider than gaps joins: the room is outdoors, or two rooms are one.
Scene open_to_outdoors(const std::string& name, const Loop& hole) {
    const RoomSize room;
    Scene scene = room_without_south(name, room);
    add_south(scene, room, Loops{hole});
    scene.spaces[1].name = "outdoors";
    return scene;
}

/// A partition 100 mm thick across the middle of a room, with holes in (y, z).
Scene two_rooms(const std::string& name, const RoomSize& room, const std::vector<Loop>& holes) {
    Scene scene = room_without_south(name, room);
    add_south(scene, room, {});
    const double x = room.x / 2;
    add_parts(scene, "partition", extruded(profile_frame, rectangle(0, 0, room.y, room.z), holes, x, x + 100 * mm));
    scene.spaces[1] = {"west-room", {0.5 * x, 0.45 * room.y, 0.55 * room.z}};
    scene.spaces.push_back({"east-room", {1.5 * x, 0.45 * room.y, 0.55 * room.z}});
    return scene;
}

Scene open_doorway() {
    Scene scene = two_rooms("doorway-open", full_room, {rectangle(1, 0, 1.8, 2)});
    scene.spaces[1].name = scene.spaces[2].name = "rooms";
    return scene;
}

/// A leaf in a doorway of 0.8 x 2 m, 6 mm over the floor, 3 mm from the other sides, with three hinges as thick as the leaf that
/// touch both. Gap from the lowest hinge all round to the highest one: 6 mm; the ball in its lower corners, 3 mm to one side and
/// 6 mm to the other of the leaf's edge, is (3 - r)^2 + (6 - r)^2 = r^2 and has 6 mm too. Two gaps of 3 mm between hinges.
Scene door() {
    Scene scene = two_rooms("door", full_room, {rectangle(1, 0, 1.8, 2)});
    const double x0 = 2.03, x1 = 2.07, side = 3 * mm;
    add_part(scene, "leaf", block({x0, 1 + side, 6 * mm}, {x1, 1.8 - side, 2 - side}));
    int count = 0;
    for (const double z : {0.25, 1.0, 1.75}) {
        add_part(scene, "hinge-" + std::to_string(++count), block({x0, 1, z - 0.05}, {x1, 1 + side, z + 0.05}));
    }
    ExpectedGap round{
        .one = "west-room", .other = "east-room", .shape = "slot", .width = 6 * mm, .length = 0.8 + 2 + 0.8 + 0.2 + 0.2};
    round.near = {2.05, 1.4, 3 * mm};
    round.window = {{x0 - 24 * mm, 1.4 - 1e-6, 0}, {x1 + 24 * mm, 1.4 + 1e-6, 10 * mm}};
    round.from = {x0 - 22 * mm, 1.4, 5 * mm};
    round.to = {x1 + 22 * mm, 1.4, 5 * mm};
    scene.gaps = {round};
    for (const double z : {0.625, 1.375}) {
        ExpectedGap piece{.one = "west-room", .other = "east-room", .shape = "slot", .width = side, .length = 0.65};
        piece.near = {2.05, 1 + side / 2, z};
        piece.window = {{x0 - 24 * mm, 1, z - 1e-6}, {x1 + 24 * mm, 1 + 5 * mm, z + 1e-6}};
        piece.from = {x0 - 22 * mm, 1 + 2 * mm, z};
        piece.to = {x1 + 22 * mm, 1 + 2 * mm, z};
        scene.gaps.push_back(piece);
    }
    return scene;
}

/// Outdoors, 3 mm, the west room, 1.2 mm, the east room; a hole of 0.8 mm from outdoors to the east room goes round the latter.
Scene rooms_in_a_row() {
    const RoomSize room{1, 0.6, 0.5, 0.1};
    Scene scene = two_rooms("rooms-in-a-row", room, {rectangle(0.2, 0.2, 0.4, 0.2012)});
    std::erase_if(scene.parts, [](const ModelPart& part) { return part.id == "south"; });
    const Loop slot = rectangle(0.1, 0.3, 0.4, 0.303), hole = round_loop({0.8, 0.25}, 0.4 * mm);
    add_south(scene, room, Loops{slot, hole});
    ExpectedGap entry = south_slot(room, 3 * mm, Tolerance::planar, 0.3, {0.25, 0.3015}, 3 * mm);
    entry.other = "west-room";
    ExpectedGap drill = south_gap(room, "hole", 0.8 * mm, Tolerance::curved, 0, {0.8, 0.25}, 0.1 * mm, 0.1 * mm);
    drill.other = "east-room";
    ExpectedGap inner{.one = "west-room", .other = "east-room", .shape = "slot", .width = 1.2 * mm, .length = 0.2};
    inner.near = {0.55, 0.3, 0.2006};
    inner.window = {{0.5 - 15 * mm, 0.3 - 1e-6, 0.2 - 1 * mm}, {0.6 + 15 * mm, 0.3 + 1e-6, 0.2 + 2 * mm}};
    inner.from = {0.5 - 13 * mm, 0.3, 0.2006};
    inner.to = {0.6 + 13 * mm, 0.3, 0.2006};
    scene.gaps = {entry, inner, drill};
    return scene;
}

}  // namespace

std::vector<Scene> passage_scenes() {
    std::vector<Scene> scenes = sealed_rooms();
    scenes.push_back(open_to_outdoors("open-hole-26", round_loop({0.3, 0.2}, 13 * mm)));
    scenes.push_back(open_to_outdoors("open-slot-26", rectangle(0.1, 0.2, 0.5, 0.226)));
    scenes.push_back(open_to_outdoors("open-window", rectangle(0.2, 0.15, 0.4, 0.3)));
    scenes.push_back(open_doorway());
    scenes.push_back(door());
    scenes.push_back(rooms_in_a_row());
    return scenes;
}

std::vector<Scene> all_scenes() {
    std::vector<Scene> all;
    for (const auto make : {straight_slot_scenes, shaped_slot_scenes, bent_slot_scenes, crossed_slot_scenes, hole_scenes,
                            pipe_scenes, tube_scenes, cavity_scenes, passage_scenes}) {
        for (Scene& scene : make()) all.push_back(std::move(scene));
    }
    return all;
}

}  // namespace seamward::test
