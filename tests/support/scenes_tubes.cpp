// SPDX-License-Identifier: GPL-3.0-or-later
// Tubes, screens, and pipes that close the holes they go through.
#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

/// A tube of 8 mm bore and 2.2 m, with five corners, from the room to outdoors. The wall's hole lies between bore and outside.
Scene bent_tube() {
    const RoomSize room{1.2, 0.8, 0.8, 0.1};
    const Point2 at{0.6, 0.4};
    Scene scene = room_without_south("tube-bent", room);
    add_south(scene, room, Loops{round_loop(at, 5 * mm)});
    add_part(scene, "tube", tube(way_of_bent_tube(), 4 * mm, 6 * mm));
    ExpectedGap gap{.one = "outdoors", .other = "room", .shape = "hole", .width = 8 * mm, .tolerance = Tolerance::bent};
    gap.near = {0.6, -0.2, 0.4};
    scene.gaps.push_back(gap);
    return scene;
}

/// A straight tube through both ends of which a ball goes, shut by a plug in its middle.
Scene plugged_tube() {
    const RoomSize room;
    const Point2 at{0.3, 0.2};
    Scene scene = room_without_south("tube-plugged", room);
    add_south(scene, room, Loops{round_loop(at, 9 * mm)});
    add_part(scene, "tube", tube(std::vector<Point>{{0.3, 0.05, 0.2}, {0.3, -0.15, 0.2}}, 8 * mm, 10 * mm));
    add_part(scene, "plug", bar({0.3, -0.04, 0.2}, {0.3, -0.06, 0.2}, 9 * mm));
    scene.shut.push_back(south_gap(room, "hole", scene.smallest, Tolerance::bent, 0, at, 4 * mm, 4 * mm));
    scene.shut.back().window.lowest.y -= 0.05;
    scene.shut.back().from.y -= 0.05;
    scene.shut.back().window.highest.y += 0.05;
    scene.shut.back().to.y += 0.05;
    return scene;
}

/// Bars of 2 mm every 6 mm, crossing in one plane in the middle of a hole of 60 mm: 100 openings of 6 - 2 = 4 mm. The outermost
/// bars stand half in the sides of the hole.
Scene screen() {
    const RoomSize room;
    const double x0 = 0.27, z0 = 0.17, side = 60 * mm, y = -50 * mm, radius = 1 * mm, pitch = 6 * mm;
    Scene scene = room_without_south("screen-of-bars", room);
    add_south(scene, room, Loops{rectangle(x0, z0, x0 + side, z0 + side)});
    const double end = 4 * mm;
    for (int i = 0; i <= 10; ++i) {
        const double s = i * pitch;
        add_part(scene, "upright-" + std::to_string(i), bar({x0 + s, y, z0 - end}, {x0 + s, y, z0 + side + end}, radius, 8));
        add_part(scene, "level-" + std::to_string(i), bar({x0 - end, y, z0 + s}, {x0 + side + end, y, z0 + s}, radius, 8));
    }
    const Point2 ball{x0 + 4.5 * pitch, z0 + 4.5 * pitch};
    scene.gaps.push_back(south_gap(room, "", 4 * mm, Tolerance::bent, 0, ball, 1 * mm, 1 * mm));
    scene.most_gaps = 100;
    return scene;
}

/// A pipe thicker than the hole it goes through, pipes that overlap each other: nothing open.
Scene overlapping_pipes() {
    const RoomSize room;
    Scene scene = room_without_south("pipes-overlapping", room);
    add_south(scene, room, Loops{round_loop({0.3, 0.2}, 20 * mm), rectangle(0.4, 0.1, 0.44, 0.14)});
    add_part(scene, "pipe-1", bar({0.3, -0.2, 0.2}, {0.3, 0.1, 0.2}, 21 * mm));
    // The square's far corners are 22.4 mm from the nearer of the two.
    add_part(scene, "pipe-2", bar({0.41, -0.2, 0.12}, {0.41, 0.1, 0.12}, 25 * mm));
    add_part(scene, "pipe-3", bar({0.43, -0.2, 0.12}, {0.43, 0.1, 0.12}, 25 * mm));
    // Through a wall without any hole.
    add_part(scene, "pipe-4", bar({0.15, -0.2, 0.2}, {0.15, 0.1, 0.25}, 15 * mm));
    // Nothing along the sides of the first pipe, nor along the upper sides of the others.
    for (const Point2 at : {Point2{0.3, 0.2}, Point2{0.42, 0.12}}) {
        ExpectedGap way =
            south_gap(room, "hole", scene.smallest, Tolerance::bent, 0, {at.x, at.y + 30 * mm}, 0.001 * mm, 31 * mm);
        scene.shut.push_back(way);
    }
    return scene;
}

}  // namespace

std::vector<Point> way_of_bent_tube() {
    return {{0.6, 0.15, 0.4}, {0.6, -0.3, 0.4}, {0.9, -0.3, 0.4}, {0.9, -0.3, 0.75}, {0.5, -0.5, 0.75}, {0.5, -0.5, 0.3}};
}

std::vector<Scene> tube_scenes() { return {bent_tube(), plugged_tube(), screen(), overlapping_pipes()}; }

}  // namespace seamward::test
