// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "base/survey.h"

namespace seamward::viewer {

/// A box along the axes, in meters.
struct Box {
    Point low, high;
};

/// Where the picture stands. Scene coordinates are the job's, in meters and z up, moved so that the middle of what is
/// shown is at x = y = 0 and the ground at z = 0, a little under the lowest gap, so that no symbol sinks into it: small
/// numbers, which the graphics card needs.
struct PictureFrame {
    Point origin;      ///< of the scene, in the frame of the job
    Box gaps;          ///< scene: around every gap that has a position, from the ground up; never flat
    double reach = 0;  ///< meters: length of the diagonal of that box; sizes of symbols are shares of it

    [[nodiscard]] Point to_scene(const Point& at) const { return {at.x - origin.x, at.y - origin.y, at.z - origin.z}; }
};

/// The frame for a survey; nothing when no gap has a position. O(gaps).
[[nodiscard]] std::optional<PictureFrame> picture_frame(const Survey& survey);

}  // namespace seamward::viewer
