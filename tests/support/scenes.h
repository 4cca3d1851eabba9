// SPDX-License-Identifier: GPL-3.0-or-later
// Rooms of solids with gaps planted in them, and what there is to find. Widths follow from the drawing; formulas stand where the
// scene is built. In a library of its own: link seamward_scene_support.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "base/survey.h"
#include "exchange/model.h"
#include "tests/support/solid_builders.h"

namespace seamward::test {

struct ExpectedSpace {
    std::string name;  ///< "outdoors" is the unbounded one; places of the same name are in one space
    Point inside;
};

/// How exactly a width is known and asked for.
enum class Tolerance : std::uint8_t {
    planar,  ///< between planes: 0.05 mm
    curved,  ///< 2 %: facets stand for circles
    bent,    ///< 3 %: round corners, in tapers, between pipes
};

struct ExpectedGap {
    std::string one, other;  ///< names of spaces
    std::string shape;       ///< slot, hole, ring; empty where words may differ
    double width = 0;        ///< of the widest ball that gets through, meters
    Tolerance tolerance = Tolerance::planar;
    double length = 0;  ///< of its mouth, meters, along the middle; 0 where ways to measure differ
    Point near;         ///< in the gap's air
    /// For judging by balls: centers stay in this box, on the way from a point of one space to a point of the other. Empty
    /// (lowest = highest) once a scene was moved.
    Box window;
    Point from, to;
};

struct Scene {
    std::string name;
    std::vector<ModelPart> parts;
    std::vector<ExpectedSpace> spaces;
    std::vector<ExpectedGap> gaps;
    std::vector<ExpectedGap> shut;  ///< what looks like a way and is none for a ball of the smallest width; the window counts
    double smallest = 0.3e-3, widest = 25e-3;  ///< widths that count as gaps, in the scene's unit
    /// More than listed where one gap may be told as several; else 0.
    std::size_t most_gaps = 0;
    /// Air narrower than `widest` all over that may be told as a space, and the gaps when it is.
    std::vector<ExpectedSpace> thin_spaces;
    std::vector<ExpectedGap> gaps_with_thin;
    bool open_parts = false;  ///< parts are open surfaces
};

/// What a width may be off by, in the scene's unit of length; `scale` is the scene's (1000 in millimeters).
[[nodiscard]] double allowance(const ExpectedGap& gap, double scale = 1);

/// Straight slots of every width, depth and length; shut ones; tapers, waists, chambers.
[[nodiscard]] std::vector<Scene> straight_slot_scenes();
[[nodiscard]] std::vector<Scene> shaped_slot_scenes();
/// Slots that turn corners; blind ones; things that stand in slots.
[[nodiscard]] std::vector<Scene> bent_slot_scenes();
[[nodiscard]] std::vector<Scene> crossed_slot_scenes();
/// Holes, rings, tubes, bars.
[[nodiscard]] std::vector<Scene> hole_scenes();
[[nodiscard]] std::vector<Scene> pipe_scenes();
[[nodiscard]] std::vector<Scene> tube_scenes();
/// The corners of the way through the tube of "tube-bent", from the room to outdoors.
[[nodiscard]] std::vector<Point> way_of_bent_tube();
/// Cavities, soffits, attics, doors, several rooms.
[[nodiscard]] std::vector<Scene> cavity_scenes();
[[nodiscard]] std::vector<Scene> passage_scenes();
/// All of them.
[[nodiscard]] std::vector<Scene> all_scenes();

/// A room with planted gaps in its six sides, turned at random. The same seed gives the same scene.
[[nodiscard]] Scene random_scene(unsigned seed);
/// The same before it was turned: with windows.
[[nodiscard]] Scene random_scene_upright(unsigned seed);

}  // namespace seamward::test
