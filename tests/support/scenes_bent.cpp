// SPDX-License-Identifier: GPL-3.0-or-later
// Slots that turn corners or go nowhere, all as profiles in (y, z) of the south side, 0.3 m long.
#include <algorithm>
#include <cmath>

#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

constexpr double x0 = 0.15, x1 = 0.45, middle = 0.3, z = 0.2, over = 5 * mm;
constexpr RoomSize thick;

Scene profiled(const std::string& name, const RoomSize& room, const std::vector<Loop>& cuts,
               const std::optional<Loop>& outline = std::nullopt) {
    Scene scene = room_without_south(name, room);
    add_south_profile(scene, room, cuts, x0, x1, outline);
    return scene;
}

/// A slot from the room turns down into a ledge outdoors and leaves below it. A ball that fits both legs gets round the corner:
/// its center passes the inner edge at sqrt 2 of its radius. So d = min(level, upright). Cheeks close the ends of the ledge,
/// which stands out of the wall.
Scene l_joint(const std::string& name, double level, double upright) {
    const double t = thick.wall;
    const Loop outline{{0, 0},
                       {0, thick.z},
                       {-t, thick.z},
                       {-t, z + 30 * mm},
                       {-t - 60 * mm, z + 30 * mm},
                       {-t - 60 * mm, z - 30 * mm},
                       {-t, z - 30 * mm},
                       {-t, 0}};
    const double y = -t - 30 * mm, cheek = 20 * mm;
    const Loop cut{
        {over, z}, {over, z + level}, {y - upright, z + level}, {y - upright, z - 30 * mm - over}, {y, z - 30 * mm - over},
        {y, z}};
    Scene scene = profiled(name, thick, {cut}, outline);
    add_part(scene, "cheek-left", block({x0 - cheek, -t - 60 * mm, z - 30 * mm}, {x0, -t, z + 30 * mm}));
    add_part(scene, "cheek-right", block({x1, -t - 60 * mm, z - 30 * mm}, {x1 + cheek, -t, z + 30 * mm}));
    const double width = std::min(level, upright);
    ExpectedGap gap = south_slot(thick, width, Tolerance::bent, x1 - x0, {middle, z + level / 2}, 0);
    gap.window = {{middle - width / 2000, y - 8 * mm, z - 45 * mm}, {middle + width / 2000, 15 * mm, z + 8 * mm}};
    gap.from = {middle, y - upright / 2, z - 43 * mm};
    gap.near = {middle, y + 20 * mm, z + level / 2};
    scene.gaps.push_back(gap);
    return scene;
}

struct Shiplap {
    double inner, upright, outer, lap;
};

/// Boards 22 mm thick that lap in the middle: a leg of height `inner` from the room to -11 mm, then up by `lap`, `upright` wide,
/// then out, `outer` high. The edges that the ball turns round stand (upright, lap - inner) apart when the lap is shorter than
/// the inner leg is high, and nothing else is between them: d = min(inner, outer, hypot(upright, inner - lap)); with a longer lap
/// d = min(inner, upright, outer).
Scene shiplap(const std::string& name, const Shiplap& s) {
    RoomSize room;
    room.wall = 22 * mm;
    const double y = -11 * mm, t = room.wall;
    const double edge = y + s.upright;
    const Loop cut{{over, z},
                   {over, z + s.inner},
                   {edge, z + s.inner},
                   {edge, z + s.lap + s.outer},
                   {-t - over, z + s.lap + s.outer},
                   {-t - over, z + s.lap},
                   {y, z + s.lap},
                   {y, z}};
    Scene scene = profiled(name, room, {cut});
    const double turn = s.lap >= s.inner ? s.upright : std::hypot(s.upright, s.inner - s.lap);
    const double width = std::min({s.inner, turn, s.outer});
    ExpectedGap gap = south_slot(room, width, Tolerance::bent, x1 - x0, {middle, z}, 0);
    gap.window.lowest.z = z - 3 * mm;
    gap.window.highest.z = z + s.lap + s.outer + 3 * mm;
    gap.to.z = z + s.inner / 2;
    gap.from.z = z + s.lap + s.outer / 2;
    gap.near = {middle, y + s.upright / 2, z + s.lap / 2 + s.inner / 2};
    scene.gaps.push_back(gap);
    return scene;
}

/// From the room straight in, then up and down in the middle of the wall, and out above and below an island. The wider way out
/// counts: d = min(stem, max(upper, lower)).
Scene t_joint() {
    const double stem = 3 * mm, upper = 2 * mm, lower = 4 * mm, y = -50 * mm, t = thick.wall;
    const std::vector<Loop> cuts{
        rectangle(y, z, over, z + stem), rectangle(y - upper, z, y, z + 40 * mm), rectangle(y - lower, z - 40 * mm, y, z + stem),
        rectangle(-t - over, z + 40 * mm - upper, y, z + 40 * mm), rectangle(-t - over, z - 40 * mm, y, z - 40 * mm + lower)};
    Scene scene = profiled("joint-t", thick, cuts);
    const double width = std::min(stem, std::max(upper, lower));
    ExpectedGap gap = south_slot(thick, width, Tolerance::bent, x1 - x0, {middle, z + stem / 2}, 0);
    gap.window.lowest.z = z - 45 * mm;
    gap.window.highest.z = z + 45 * mm;
    gap.from.z = z - 40 * mm + lower / 2;
    gap.near = {middle, y / 2, z + stem / 2};
    scene.gaps.push_back(gap);
    return scene;
}

/// Two rooms beside each other; the partition between them stops 3 mm short of the south side, whose two panels meet there with
/// 2 mm between: a T of three mouths. Every two spaces have a way of their own: a ball of 2 mm from outdoors to either room, of
/// 3 mm between the rooms. Upright, as high as the room.
Scene t_joint_of_three() {
    const RoomSize room;
    Scene scene = room_without_south("joint-t-of-three-spaces", room);
    const double c = room.x / 2, butt = 2 * mm, end = 3 * mm;
    add_part(scene, "south-1", block({0, -room.wall, 0}, {c - butt / 2, 0, room.z}));
    add_part(scene, "south-2", block({c + butt / 2, -room.wall, 0}, {room.x, 0, room.z}));
    add_part(scene, "partition", block({c - 50 * mm, end, 0}, {c + 50 * mm, room.y, room.z}));
    scene.spaces[1] = {"west-room", {0.12, 0.3, 0.21}};
    scene.spaces.push_back({"east-room", {0.48, 0.3, 0.21}});
    const Box window{{c - 80 * mm, -room.wall - 15 * mm, z - 0.001 * mm}, {c + 80 * mm, 6 * mm, z + 0.001 * mm}};
    const Point out{c, -room.wall - 13 * mm, z}, left{c - 70 * mm, 3 * mm, z}, right{c + 70 * mm, 3 * mm, z};
    const ExpectedGap slot{.shape = "slot", .tolerance = Tolerance::bent, .length = room.z, .window = window};
    const auto between = [&](const char* one, const char* other, double width, Point from, Point to, Point near) {
        ExpectedGap gap = slot;
        gap.one = one, gap.other = other, gap.width = width, gap.from = from, gap.to = to, gap.near = near;
        scene.gaps.push_back(gap);
    };
    between("outdoors", "west-room", butt, out, left, {c - 25 * mm, end / 2, z});
    between("outdoors", "east-room", butt, out, right, {c + 25 * mm, end / 2, z});
    between("west-room", "east-room", end, left, right, {c, end / 2, z});
    return scene;
}

std::vector<Scene> dead_ends() {
    const double t = thick.wall;
    std::vector<Scene> scenes;
    scenes.push_back(
        profiled("blind-slots", thick,
                 {rectangle(-60 * mm, z, over, z + 3 * mm), rectangle(-t - over, z + 60 * mm, -t + 60 * mm, z + 66 * mm)}));
    scenes.push_back(profiled("slot-both-ends-in-room", thick,
                              {rectangle(-50 * mm, z, over, z + 3 * mm), rectangle(-53 * mm, z, -50 * mm, z + 80 * mm),
                               rectangle(-53 * mm, z + 77 * mm, over, z + 80 * mm)}));
    scenes.push_back(profiled("slot-both-ends-outdoors", thick,
                              {rectangle(-t - over, z, -50 * mm, z + 6 * mm), rectangle(-56 * mm, z, -50 * mm, z + 80 * mm),
                               rectangle(-t - over, z + 74 * mm, -50 * mm, z + 80 * mm)}));
    // A stop inside leaves 0.1 mm below and above itself: shut.
    scenes.push_back(profiled("slot-shut-inside", thick,
                              {rectangle(-50 * mm, z, over, z + 3 * mm), rectangle(-t - over, z, -50 * mm, z + 3 * mm),
                               rectangle(-60 * mm, z, -40 * mm, z + 3 * mm)}));
    add_part(scenes.back(), "stop", block({x0, -55 * mm, z + 0.1 * mm}, {x1, -45 * mm, z + 2.9 * mm}));
    // No way from before the wall to behind it across the whole profile.
    for (Scene& scene : scenes) {
        ExpectedGap way =
            south_gap(thick, "slot", scene.smallest, Tolerance::bent, 0, {middle, z + 40 * mm}, 0.001 * mm, 60 * mm);
        scene.shut.push_back(way);
    }
    return scenes;
}

}  // namespace

std::vector<Scene> bent_slot_scenes() {
    std::vector<Scene> scenes{l_joint("joint-l-equal", 3 * mm, 3 * mm), l_joint("joint-l-upright-wider", 3 * mm, 5 * mm),
                              l_joint("joint-l-upright-narrower", 4 * mm, 1.5 * mm)};
    scenes.push_back(shiplap("shiplap-equal", {3 * mm, 3 * mm, 3 * mm, 12 * mm}));
    scenes.push_back(shiplap("shiplap-upright-narrowest", {5 * mm, 2 * mm, 4 * mm, 12 * mm}));
    scenes.push_back(shiplap("shiplap-inner-narrowest", {1.5 * mm, 4 * mm, 3 * mm, 12 * mm}));
    scenes.push_back(shiplap("shiplap-outer-narrowest", {4 * mm, 4 * mm, 0.6 * mm, 12 * mm}));
    scenes.push_back(shiplap("shiplap-edge-to-edge", {4 * mm, 1 * mm, 4 * mm, 2 * mm}));
    scenes.push_back(shiplap("shiplap-edges-level", {4 * mm, 1 * mm, 4 * mm, 4 * mm}));
    scenes.push_back(t_joint());
    scenes.push_back(t_joint_of_three());
    for (Scene& scene : dead_ends()) scenes.push_back(std::move(scene));
    return scenes;
}

}  // namespace seamward::test
