// SPDX-License-Identifier: GPL-3.0-or-later
// Slots in which things stand or lie.
#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

constexpr RoomSize room{1.4, 0.5, 0.4, 0.1};
constexpr double x0 = 0.1, length = 1.2, z0 = 0.2;

Scene with_slot(const std::string& name, double width) {
    Scene scene = room_without_south(name, room);
    add_south(scene, room, Loops{rectangle(x0, z0, x0 + length, z0 + width)});
    return scene;
}

/// Pipes stand across a slot of 6 mm in the middle of its depth and run into the wall above and below. Air passes between them:
/// one gap, as wide as the slot or the space between two pipes, whichever is less.
Scene pipes_across(const std::string& name, double pitch, double diameter) {
    Scene scene = with_slot(name, 6 * mm);
    const double radius = diameter / 2;
    int count = 0;
    for (double x = x0 + pitch / 2; x < x0 + length; x += pitch) {
        add_part(scene, "pipe-" + std::to_string(++count), bar({x, -50 * mm, z0 - 30 * mm}, {x, -50 * mm, z0 + 36 * mm}, radius));
    }
    const double width = std::min(6 * mm, pitch - diameter);
    ExpectedGap gap = south_slot(room, width, width < 6 * mm ? Tolerance::bent : Tolerance::planar, length,
                                 {x0 + 10 * pitch, z0 + 3 * mm}, 4 * mm);
    if (width < 6 * mm) {  // from pipe to pipe, in the middle of the depth
        gap.window.lowest = {gap.near.x - width / 4, -70 * mm, z0};
        gap.window.highest = {gap.near.x + width / 4, -30 * mm, z0 + 6 * mm};
        gap.from.y = -69 * mm;
        gap.to.y = -31 * mm;
    }
    scene.gaps.push_back(gap);
    return scene;
}

/// Ribs as deep as the wall stand in a slot of 6 mm and touch it above and below: as many gaps as bays between them.
Scene ribs() {
    Scene scene = with_slot("slot-ribs", 6 * mm);
    constexpr int bays = 20;
    const double pitch = length / bays, rib = 10 * mm;
    for (int i = 0; i < bays; ++i) {
        const double left = x0 + i * pitch + (i > 0 ? rib : 0), right = x0 + (i + 1) * pitch;
        scene.gaps.push_back(
            south_slot(room, 6 * mm, Tolerance::planar, right - left, {(left + right) / 2, z0 + 3 * mm}, 4 * mm));
        if (i > 0) add_part(scene, "rib-" + std::to_string(i), block({left - rib, -room.wall, z0}, {left, 0, z0 + 6 * mm}));
    }
    return scene;
}

/// Ribs in the outer half only: one gap.
Scene half_ribs() {
    Scene scene = with_slot("slot-half-ribs", 6 * mm);
    for (int i = 1; i < 10; ++i) {
        const double x = x0 + i * length / 10;
        add_part(scene, "rib-" + std::to_string(i),
                 block({x - 5 * mm, -room.wall, z0}, {x + 5 * mm, -room.wall / 2, z0 + 6 * mm}));
    }
    scene.gaps.push_back(south_slot(room, 6 * mm, Tolerance::planar, length, {x0 + 0.05 * length, z0 + 3 * mm}, 4 * mm));
    return scene;
}

/// A pipe of 14 mm lies in the middle of a slot of 20 mm, as long as the slot, and another crosses it upright: above and below
/// the first are (20 - 14) / 2 = 3 mm.
Scene crossing_pipes() {
    Scene scene = with_slot("slot-crossing-pipes", 20 * mm);
    const double z = z0 + 10 * mm, x = x0 + length / 2;
    add_part(scene, "pipe-along", bar({x0 - 10 * mm, -45 * mm, z}, {x0 + length + 10 * mm, -45 * mm, z}, 7 * mm));
    add_part(scene, "pipe-upright", bar({x, -55 * mm, z0 - 30 * mm}, {x, -55 * mm, z0 + 50 * mm}, 7 * mm));
    ExpectedGap gap = south_slot(room, 3 * mm, Tolerance::bent, length, {x0 + 0.3 * length, z}, 12 * mm);
    gap.near.z = z0 + 1.5 * mm;
    gap.near.y = -45 * mm;
    scene.gaps.push_back(gap);
    return scene;
}

/// A slot of 20 mm with a pipe of 14 mm in it, off its middle by 2 mm: 3 - 2 = 1 mm below, 5 mm above, which counts.
Scene pipe_off_middle() {
    Scene scene = with_slot("slot-pipe-off-middle", 20 * mm);
    const double z = z0 + 8 * mm;
    add_part(scene, "pipe-along", bar({x0 - 10 * mm, -45 * mm, z}, {x0 + length + 10 * mm, -45 * mm, z}, 7 * mm));
    ExpectedGap gap = south_slot(room, 5 * mm, Tolerance::bent, length, {x0 + 0.3 * length, z0 + 10 * mm}, 12 * mm);
    gap.near.z = z0 + 17.5 * mm;
    gap.near.y = -45 * mm;
    scene.gaps.push_back(gap);
    return scene;
}

}  // namespace

std::vector<Scene> crossed_slot_scenes() {
    return {pipes_across("slot-pipes-across", 60 * mm, 20 * mm),
            pipes_across("slot-pipes-dense", 22 * mm, 20 * mm),
            ribs(),
            half_ribs(),
            crossing_pipes(),
            pipe_off_middle()};
}

}  // namespace seamward::test
