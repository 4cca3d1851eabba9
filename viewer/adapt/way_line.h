// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "adapt/picture_frame.h"
#include "paths/trace.h"

namespace seamward::viewer {

/// A gap of a way in that has a position.
struct WayStop {
    std::size_t step = 0;  ///< position in the path's gaps, from 0
    Point at;              ///< scene
};

/// The line from one stop to the next.
struct WayLeg {
    std::vector<Point> line;  ///< scene, no two points in a row alike; empty when both stops are in one place
    bool sure = true;         ///< false: gaps without a position lie between the two stops; the line is only straight then
};

/// A way in as the picture shows it.
struct WayLine {
    std::vector<WayStop> stops;  ///< in the order of the path
    std::vector<WayLeg> legs;    ///< one fewer than stops, or none
    /// Scene. How it comes to the first stop and goes on after the last; empty where that is not known.
    std::vector<Point> before, after;
};

/// The line of a path through the positions of its gaps.
[[nodiscard]] WayLine way_line(const Survey& survey, const EntryPath& path, const PictureFrame& frame);

/// The straight lines from gap to gap of several paths, each pair of gaps once, without those of `but` and without
/// stretches past a gap that has no position. Scene.
[[nodiscard]] std::vector<std::vector<Point>> joint_lines(const Survey& survey, std::span<const RankedPath> paths,
                                                          const RankedPath* but, const PictureFrame& frame);

/// A smooth curve through all of `stops` (centripetal Catmull-Rom: no loops, no cusps), one line for each leg.
[[nodiscard]] std::vector<std::vector<Point>> smooth_legs(std::span<const Point> stops);

/// The line cut into dashes of about that length in meters, as much again left out between two of them.
[[nodiscard]] std::vector<std::vector<Point>> dashes(std::span<const Point> line, double length);

}  // namespace seamward::viewer
