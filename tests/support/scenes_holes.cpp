// SPDX-License-Identifier: GPL-3.0-or-later
// Holes of several forms, rings around pipes.
#include <cmath>
#include <numbers>

#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

constexpr double pi = std::numbers::pi;
constexpr Point2 center{0.3, 0.2};

/// A hole and the pipes through it, from 80 mm before the wall to 80 mm behind it.
Scene pierced(const std::string& name, const RoomSize& room, const Loop& hole,
              const std::vector<std::pair<Point2, double>>& pipes, const ExpectedGap& gap, int sides = 24) {
    Scene scene = south_scene(name, room, Loops{hole}, gap);
    int count = 0;
    for (const auto& [at, radius] : pipes) {
        add_part(scene, "pipe-" + std::to_string(++count),
                 bar({at.x, -room.wall - 80 * mm, at.y}, {at.x, 80 * mm, at.y}, radius, sides));
    }
    return scene;
}

RoomSize room_through(double depth) {
    RoomSize room;
    room.wall = depth;
    return room;
}

Scene round_hole(double diameter, double depth) {
    const RoomSize room = room_through(depth);
    const std::string name = "hole-round-" + std::to_string(static_cast<int>(diameter * 1e4)) + "-through-" +
                             std::to_string(static_cast<int>(depth * 1e3 + 0.5));
    return pierced(name, room, round_loop(center, diameter / 2), {},
                   south_gap(room, "hole", diameter, Tolerance::curved, 0, center, diameter / 8, diameter / 8));
}

/// A gap with its window where the ball passes.
ExpectedGap around(const RoomSize& room, const std::string& shape, double width, Tolerance tolerance, double length,
                   Point2 ball) {
    return south_gap(room, shape, width, tolerance, length, ball, width / 4, width / 2);
}

/// Ring of the hole's radius less the pipe's, wider on one side by how far the pipe is off the middle. Length: the middle line
/// of the centered ring; none where some of it is shut, which makes it a sickle.
Scene ring(const std::string& name, double depth, double hole, double pipe, double off) {
    const RoomSize room = room_through(depth);
    const double width = hole - pipe + off;
    const Point2 ball = center + Point2{hole - width / 2, 0};
    const bool all_round = hole - pipe - off >= Scene{}.smallest;
    return pierced(
        name, room, round_loop(center, hole), {{center - Point2{off, 0}, pipe}},
        around(room, "ring", width, off > 0 ? Tolerance::bent : Tolerance::curved, all_round ? pi * (hole + pipe) : 0, ball));
}

/// A pipe in a square hole of half side h, off the middle by (e, e): the ball in the far corner touches two sides and the pipe,
/// sqrt 2 (h + e - q) = p + q with its radius q; so d = 2 (sqrt 2 (h + e) - p) / (1 + sqrt 2).
Scene pipe_in_square(const std::string& name, double depth, double h, double p, double e) {
    const RoomSize room = room_through(depth);
    const double q = (std::numbers::sqrt2 * (h + e) - p) / (1 + std::numbers::sqrt2);
    const Point2 ball = center + Point2{h - q, h - q};
    return pierced(name, room, rectangle(center.x - h, center.y - h, center.x + h, center.y + h), {{center - Point2{e, e}, p}},
                   around(room, "", 2 * q, Tolerance::bent, 0, ball));
}

/// Two pipes of radius p at e to the left and right in a hole of radius r: the ball above touches both and the hole at
/// y = ((r + p)^2 - e^2) / (2 (r + p)), d = 2 (r - y).
Scene two_pipes(double r, double p, double e) {
    const RoomSize room;
    const double y = ((r + p) * (r + p) - e * e) / (2 * (r + p));
    const Point2 ball = center + Point2{0, y};
    return pierced("hole-two-pipes", room, round_loop(center, r, 48), {{center - Point2{e, 0}, p}, {center + Point2{e, 0}, p}},
                   around(room, "", 2 * (r - y), Tolerance::bent, 0, ball), 96);
}

}  // namespace

std::vector<Scene> hole_scenes() {
    std::vector<Scene> scenes;
    for (const double diameter : {0.9 * mm, 5 * mm, 12 * mm, 24 * mm}) {
        for (const double depth : {22 * mm, 100 * mm}) scenes.push_back(round_hole(diameter, depth));
    }
    const auto square = [](const std::string& name, double side, double turn) {
        const RoomSize room;
        const Loop hole = rectangle(center.x - side / 2, center.y - side / 2, center.x + side / 2, center.y + side / 2);
        return pierced(name, room, turned_loop(hole, center, turn), {},
                       south_gap(room, "hole", side, Tolerance::planar, 0, center, side / 8, side / 8));
    };
    scenes.push_back(square("hole-square", 10 * mm, 0));
    scenes.push_back(square("hole-square-turned", 10 * mm, 0.4));

    const double apart = 90 * mm;  // three holes of different widths beside each other: three gaps
    const RoomSize room;
    Scene three = room_without_south("holes-three", room);
    std::vector<Loop> holes;
    for (const int k : {-1, 0, 1}) {
        const Point2 at{center.x + k * apart, center.y};
        const double diameter = (8 + 4 * k) * mm;
        holes.push_back(round_loop(at, diameter / 2));
        three.gaps.push_back(south_gap(room, "hole", diameter, Tolerance::curved, 0, at, diameter / 8, diameter / 8));
    }
    add_south(three, room, holes);
    scenes.push_back(three);
    return scenes;
}

std::vector<Scene> pipe_scenes() {
    std::vector<Scene> scenes{
        ring("ring-centered-2.5", 100 * mm, 52.5 * mm, 50 * mm, 0), ring("ring-centered-1.5", 22 * mm, 11.5 * mm, 10 * mm, 0),
        ring("ring-centered-6", 100 * mm, 26 * mm, 20 * mm, 0), ring("ring-off-center", 22 * mm, 23 * mm, 20 * mm, 1.5 * mm),
        ring("ring-off-center-touching", 22 * mm, 23 * mm, 20 * mm, 3 * mm),
        // The least of the ring is 0.1 mm, shut, the widest 5.9 mm.
        ring("ring-off-center-nearly-touching", 22 * mm, 23 * mm, 20 * mm, 2.9 * mm),
        // The pipe runs into the side of the hole by 2 mm.
        ring("ring-off-center-overlapping", 22 * mm, 23 * mm, 20 * mm, 5 * mm),
        pipe_in_square("square-hole-pipe", 22 * mm, 30 * mm, 28 * mm, 0),
        pipe_in_square("square-hole-pipe-tight", 22 * mm, 15 * mm, 15 * mm, 0),
        pipe_in_square("square-hole-pipe-off-center", 22 * mm, 15 * mm, 12 * mm, 1.5 * mm),
        pipe_in_square("square-hole-pipe-in-corner", 22 * mm, 15 * mm, 12 * mm, 3 * mm), two_pipes(32 * mm, 15 * mm, 16 * mm)};
    for (Scene& scene : scenes) {
        // A pipe that touches two or more sides of its hole leaves an opening for each side between them.
        if (scene.name == "square-hole-pipe-tight") scene.most_gaps = 4;
        if (scene.name == "square-hole-pipe-in-corner") scene.most_gaps = 2;
    }
    return scenes;
}

}  // namespace seamward::test
