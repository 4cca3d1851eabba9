// SPDX-License-Identifier: GPL-3.0-or-later
// Slots that go straight through: of even width, tapered, waisted, with a chamber.
#include <algorithm>
#include <cmath>
#include <utility>

#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

std::string in_mm(double length) {
    std::string text = std::to_string(length / mm);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

/// A level slot of even width. Its width is what it was drawn with; it is as long as it was drawn.
Scene straight_slot(double width, double depth, double length, bool one_solid) {
    RoomSize room = full_room;
    room.wall = depth;
    const double x0 = (room.x - length) / 2, z0 = 1;
    const Loop slot = rectangle(x0, z0, x0 + length, z0 + width);
    const std::string name = std::string(one_solid ? "one-solid-" : "") + "slot-" + in_mm(width) + "-through-" + in_mm(depth) +
                             "-long-" + in_mm(length);
    const ExpectedGap gap = south_slot(room, width, Tolerance::planar, length, {x0 + length / 2, z0 + width / 2}, width);
    if (!one_solid) return south_scene(name, room, Loops{slot}, gap);
    Scene scene{.name = name, .spaces = room_without_south(name, room).spaces, .gaps = {gap}};
    // The side of lowest y has its holes in (z, x).
    const Loop hole = rectangle(z0, x0, z0 + width, x0 + length);
    add_part(scene, "room", hollow_block({{0, 0, 0}, {room.x, room.y, room.z}}, depth, {{{}, {}, {hole}, {}, {}, {}}}));
    return scene;
}

/// Width h0 at the left end and h1 at the right, where the ball gets through: it touches the bottom, the top that rises at angle
/// a, and the end: d = 2 (h0 cos a + l sin a) / (1 + cos a + sin a).
Scene tapered_along(double h0, double h1, double length) {
    const RoomSize room;
    const double x0 = 0.1, z0 = 0.2;
    const Loop slot{{x0, z0}, {x0 + length, z0}, {x0 + length, z0 + h1}, {x0, z0 + h0}};
    const double a = std::atan((h1 - h0) / length);
    const double width = 2 * (h0 * std::cos(a) + length * std::sin(a)) / (1 + std::cos(a) + std::sin(a));
    const ExpectedGap gap =
        south_gap(room, "slot", width, Tolerance::bent, length, {x0 + length - width / 2, z0 + width / 2}, width / 3, width / 3);
    return south_scene("slot-tapered-along", room, Loops{slot}, gap);
}

/// A slot with a profile in (y, z) that keeps its width along its length of 0.3 m.
Scene profiled(const std::string& name, const std::vector<Loop>& cuts, double z, double width, Tolerance tolerance,
               double half_z) {
    const RoomSize room;
    Scene scene = room_without_south(name, room);
    add_south_profile(scene, room, cuts, 0.15, 0.45);
    scene.gaps.push_back(south_slot(room, width, tolerance, 0.3, {0.3, z}, half_z));
    return scene;
}

/// A profile around height z: half heights above and below at depths from the inner face out, both ends drawn on by 5 mm.
Loop symmetric_profile(double z, const std::vector<Point2>& half_heights) {
    Loop loop;
    for (const Point2 p : half_heights) loop.push_back({-p.x, z - p.y});
    for (auto p = half_heights.rbegin(); p != half_heights.rend(); ++p) loop.push_back({-p->x, z + p->y});
    return loop;
}

/// Slots one above the other whose mouths are alike; of one, the first or the last, the middle is narrower.
Scene alike_but_one(bool first) {
    constexpr std::size_t count = 5;
    const RoomSize room;
    const double over = 5 * mm;
    Scene scene = room_without_south(std::string("slots-alike-but-the-") + (first ? "first" : "last"), room);
    std::vector<Loop> cuts;
    for (std::size_t i = 0; i < count; ++i) {
        const double z = 0.1 + 0.05 * static_cast<double>(i);
        const bool waisted = i == (first ? 0 : count - 1);
        cuts.push_back(waisted ? symmetric_profile(z, {{-over, 2 * mm},
                                                       {40 * mm, 2 * mm},
                                                       {40 * mm, 0.6 * mm},
                                                       {60 * mm, 0.6 * mm},
                                                       {60 * mm, 2 * mm},
                                                       {room.wall + over, 2 * mm}})
                               : symmetric_profile(z, {{-over, 2 * mm}, {room.wall + over, 2 * mm}}));
        scene.gaps.push_back(south_slot(room, (waisted ? 1.2 : 4) * mm, Tolerance::planar, 0.3, {0.3, z}, 4 * mm));
    }
    add_south_profile(scene, room, cuts, 0.15, 0.45);
    return scene;
}

}  // namespace

std::vector<Scene> straight_slot_scenes() {
    std::vector<Scene> scenes;
    for (const double width : {0.3 * mm, 0.5 * mm, 0.9 * mm, 3 * mm, 6 * mm, 20 * mm}) {
        for (const double depth : {22 * mm, 100 * mm}) {
            for (const double length : {0.1, 1.0, full_room.x}) scenes.push_back(straight_slot(width, depth, length, false));
            scenes.push_back(straight_slot(width, depth, 1, true));
        }
    }
    for (const double depth : {22 * mm, 100 * mm}) {
        Scene shut = straight_slot(0.29 * mm, depth, 1, false);
        shut.gaps.swap(shut.shut);
        scenes.push_back(shut);
    }
    return scenes;
}

std::vector<Scene> shaped_slot_scenes() {
    const double z = 0.2, over = 5 * mm, wall = RoomSize{}.wall;
    std::vector<Scene> scenes{tapered_along(2 * mm, 8 * mm, 0.3), tapered_along(0.1 * mm, 5 * mm, 0.4)};
    scenes.back().name += "-to-nothing";
    scenes.back().gaps.front().length = 0;  // as drawn, or what is open: the left end is narrower than the smallest gap

    // Tapers in depth: from the edge of the narrow mouth to the face or edge opposite it is the mouth's own height.
    for (const auto& [in, out] : {std::pair{3 * mm, 1 * mm}, std::pair{0.4 * mm, 4 * mm}}) {
        const double slope = (out - in) / wall;
        const Loop both = symmetric_profile(z, {{-over, in - slope * over}, {wall + over, out + slope * over}});
        scenes.push_back(profiled(in > out ? "slot-tapered-in-depth-outer-narrow" : "slot-tapered-in-depth-inner-narrow", {both},
                                  z, 2 * std::min(in, out), Tolerance::bent, 2 * std::max(in, out)));
    }
    // A level bottom and a sloped top: 6 mm at the room, 0.8 mm outdoors.
    scenes.push_back(profiled("slot-tapered-in-depth-level-bottom",
                              {Loop{{-wall, z}, {0, z}, {0, z + 6 * mm}, {-wall, z + 0.8 * mm}}}, z + 0.4 * mm, 0.8 * mm,
                              Tolerance::bent, 2 * mm));

    // Waists: edge to edge across the middle.
    scenes.push_back(profiled("slot-waist-sharp", {symmetric_profile(z, {{0, 4 * mm}, {50 * mm, 1 * mm}, {wall, 4 * mm}})}, z,
                              2 * mm, Tolerance::bent, 4 * mm));
    scenes.push_back(profiled("slot-waist-flat",
                              {symmetric_profile(z, {{0, 4 * mm}, {45 * mm, 1 * mm}, {55 * mm, 1 * mm}, {wall, 4 * mm}})}, z,
                              2 * mm, Tolerance::planar, 4 * mm));

    scenes.push_back(alike_but_one(true));
    scenes.push_back(alike_but_one(false));

    // Chambers: the narrow parts count. One wider than gaps is a space.
    const auto chamber = [&](double half) {
        return symmetric_profile(z, {{-over, 1.5 * mm},
                                     {30 * mm, 1.5 * mm},
                                     {30 * mm, half},
                                     {70 * mm, half},
                                     {70 * mm, 1.5 * mm},
                                     {wall + over, 1.5 * mm}});
    };
    scenes.push_back(profiled("slot-chamber-10", {chamber(5 * mm)}, z, 3 * mm, Tolerance::planar, 6 * mm));
    Scene wide = profiled("slot-chamber-40", {chamber(20 * mm)}, z, 3 * mm, Tolerance::planar, 3 * mm);
    wide.spaces.push_back({"chamber", {0.3, -50 * mm, z}});
    ExpectedGap outer = wide.gaps.front(), inner = wide.gaps.front();
    outer.other = inner.one = "chamber";
    outer.to = inner.from = {0.3, -50 * mm, z};
    outer.near.y = -85 * mm;
    inner.near.y = -15 * mm;
    wide.gaps = {outer, inner};
    scenes.push_back(wide);
    // 3 mm in the outer half, 1.2 mm in the inner one, off the middle.
    scenes.push_back(profiled(
        "slot-stepped", {rectangle(-wall - over, z, -50 * mm, z + 3 * mm), rectangle(-60 * mm, z + 1 * mm, over, z + 2.2 * mm)},
        z + 1.6 * mm, 1.2 * mm, Tolerance::planar, 3 * mm));
    return scenes;
}

}  // namespace seamward::test
