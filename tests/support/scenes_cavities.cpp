// SPDX-License-Identifier: GPL-3.0-or-later
// Air behind panels, in walls, in soffits and attics.
#include <numbers>

#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

/// Panel of 2.4 x 2 m on battens 12 mm before the sheathing of a room: thinner than a space is. A slot of 3 mm leads into it
/// from outdoors, a ring of 17.5 - 15 = 2.5 mm out of it into the room: one gap of 2.5 mm, or two with a space between.
Scene behind_panel() {
    const RoomSize room{3, 2, 2.5, 22 * mm};
    const double front = room.wall + 12 * mm, thick = 22 * mm;
    const Point2 pipe{0.6, 0.5};
    Scene scene = room_without_south("cavity-behind-panel", room);
    add_south(scene, room, Loops{round_loop(pipe, 17.5 * mm)});
    const Loop outline = rectangle(0.3, 0.2, 2.7, 2.2);
    add_parts(scene, "battens", extruded(south_frame, outline, Loops{rectangle(0.34, 0.24, 2.66, 2.16)}, room.wall, front));
    const Loop slot = rectangle(1.5, 1.9, 2, 1.903);
    add_parts(scene, "panel", extruded(south_frame, outline, Loops{slot}, front, front + thick));
    add_part(scene, "pipe", bar({pipe.x, 0.1, pipe.y}, {pipe.x, -front - 10 * mm, pipe.y}, 15 * mm));

    const double middle = -room.wall - 6 * mm;
    const Point2 ball = pipe + Point2{16.25 * mm, 0};
    ExpectedGap ring = south_gap(room, "ring", 2.5 * mm, Tolerance::curved, std::numbers::pi * 32.5 * mm, ball, 1 * mm, 1 * mm);
    ring.one = "cavity";
    ring.window.lowest.y = middle - 1 * mm;
    ring.from = {ball.x, middle, ball.y};
    ExpectedGap entry = south_slot(room, 3 * mm, Tolerance::planar, 0.5, {1.75, 1.9015}, 3 * mm);
    entry.other = "cavity";
    entry.window = {{1.75 - 1e-6, -front - thick - 15 * mm, 1.898}, {1.75 + 1e-6, middle + 1 * mm, 1.905}};
    entry.from.y = -front - thick - 13 * mm;
    entry.to.y = middle;
    entry.near.y = -front - thick / 2;
    scene.thin_spaces = {{"cavity", {1.2, middle, 1.1}}};
    scene.gaps_with_thin = {entry, ring};
    ExpectedGap whole{.one = "outdoors", .other = "room", .width = 2.5 * mm, .tolerance = Tolerance::curved, .near = ring.near};
    scene.gaps = {whole};
    return scene;
}

/// 89 mm between lining and sheathing of 12 mm each, a slot of 2 mm low in the lining, one of 3 mm high in the sheathing.
Scene hollow_wall() {
    const RoomSize room{1.2, 0.8, 1.2, 113 * mm};
    Scene scene = room_without_south("hollow-wall", room);
    const Loop face = rectangle(0, 0, room.x, room.z);
    add_parts(scene, "lining", extruded(south_frame, face, Loops{rectangle(0.2, 0.15, 0.7, 0.152)}, 0, 12 * mm));
    add_parts(scene, "sheathing", extruded(south_frame, face, Loops{rectangle(0.5, 1.1, 0.8, 1.103)}, 101 * mm, 113 * mm));
    scene.spaces.push_back({"cavity", {0.6, -56 * mm, 0.6}});
    ExpectedGap lining = south_slot(room, 2 * mm, Tolerance::planar, 0.5, {0.45, 0.151}, 2 * mm);
    lining.one = "cavity";
    lining.window.lowest.y = -27 * mm;
    lining.from.y = -25 * mm;
    lining.near.y = -6 * mm;
    ExpectedGap sheathing = south_slot(room, 3 * mm, Tolerance::planar, 0.3, {0.65, 1.1015}, 3 * mm);
    sheathing.other = "cavity";
    sheathing.window.highest.y = -86 * mm;
    sheathing.to.y = -88 * mm;
    sheathing.near.y = -107 * mm;
    scene.gaps = {lining, sheathing};
    return scene;
}

/// A boxed void along the south side: 3 mm between its bottom board and the wall all along, 1.5 mm from it into the room.
Scene soffit() {
    const RoomSize room;
    const double t = room.wall, out = -t - 0.3, board = 20 * mm, low = 0.2, high = 0.35;
    Scene scene = room_without_south("soffit", room);
    add_south(scene, room, Loops{rectangle(0.1, 0.3, 0.4, 0.3015)});
    add_part(scene, "soffit-board", block({0, out, low - board}, {room.x, -t - 3 * mm, low}));
    add_part(scene, "fascia", block({0, out - board, low - board}, {room.x, out, high}));
    add_part(scene, "deck", block({0, out - board, high}, {room.x, -t, high + board}));
    add_part(scene, "end-west", block({-board, out - board, low - board}, {0, -t, high + board}));
    add_part(scene, "end-east", block({room.x, out - board, low - board}, {room.x + board, -t, high + board}));
    scene.spaces.push_back({"soffit", {0.3, -t - 0.15, 0.27}});
    ExpectedGap back{.one = "outdoors", .other = "soffit", .shape = "slot", .width = 3 * mm, .length = room.x};
    const double y = -t - 1.5 * mm;
    back.near = {0.3, y, low - board / 2};
    back.window = {{0.3 - 1e-6, y - 2 * mm, low - board - 15 * mm}, {0.3 + 1e-6, y + 2 * mm, low + 15 * mm}};
    back.from = {0.3, y, low - board - 13 * mm};
    back.to = {0.3, y, low + 13 * mm};
    ExpectedGap joint = south_slot(room, 1.5 * mm, Tolerance::planar, 0.3, {0.25, 0.30075}, 2 * mm);
    joint.one = "soffit";
    scene.gaps = {back, joint};
    return scene;
}

/// An attic on a room; the ceiling has a register hole of 160 x 110 mm, open or with a boot in it, 4 mm smaller on each side.
/// In its corners a ball touches two sides of the hole and an edge of the boot: d = 4 mm * 2 sqrt 2 / (1 + sqrt 2).
Scene attic(bool boot) {
    const RoomSize room{1, 0.8, 0.6, 0.1};
    const auto& [x, y, z, t] = room;
    Scene scene = room_without_south(boot ? "attic-register-boot" : "attic-register-open", room);
    add_south(scene, room, {});
    std::erase_if(scene.parts, [](const ModelPart& part) { return part.id == "ceiling"; });
    const double high = z + t, top = high + 0.4, u0 = 0.4, v0 = 0.3, g = 4 * mm;
    const Loop hole = rectangle(u0, v0, u0 + 0.16, v0 + 0.11);
    add_parts(scene, "ceiling", extruded(Frame{}, rectangle(-t, -t, x + t, y + t), Loops{hole}, z, high));
    add_parts(scene, "attic-walls", extruded(Frame{}, rectangle(-t, -t, x + t, y + t), Loops{rectangle(0, 0, x, y)}, high, top));
    add_part(scene, "roof", block({-t, -t, top}, {x + t, y + t, top + t}));
    scene.spaces.push_back({boot ? "attic" : "room", {0.45, 0.5, high + 0.2}});
    if (!boot) return scene;
    add_part(scene, "boot", block({u0 + g, v0 + g, z - 10 * mm}, {u0 + 0.16 - g, v0 + 0.11 - g, high}));
    const double width = g * 2 * std::numbers::sqrt2 / (1 + std::numbers::sqrt2);
    const Point ball{u0 + width / 2, v0 + width / 2, z + t / 2};
    ExpectedGap gap{.one = "room", .other = "attic", .width = width, .tolerance = Tolerance::bent};
    gap.length = 2 * (0.16 - g + 0.11 - g);
    gap.near = ball;
    gap.window = {{ball.x - width / 3, ball.y - width / 3, z - 15 * mm},
                  {ball.x + width / 3, ball.y + width / 3, high + 15 * mm}};
    gap.from = {ball.x, ball.y, z - 13 * mm};
    gap.to = {ball.x, ball.y, high + 13 * mm};
    scene.gaps = {gap};
    return scene;
}

}  // namespace

std::vector<Scene> cavity_scenes() { return {behind_panel(), hollow_wall(), soffit(), attic(false), attic(true)}; }

}  // namespace seamward::test
