// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "house/house.h"
#include "house/inner_way.h"

namespace seamward {

/// Where a way from a point joins a middle surface: straight along its n, or as near to that as there is room. Nothing when its
/// figure has no inside.
[[nodiscard]] std::optional<Point> entry_of(const MiddleSurface& middle, const Point& from);
/// The same with its figure made ready; `room` may be null when the figure has no outline.
[[nodiscard]] std::optional<Point> entry_of(const MiddleSurface& middle, const InnerRoom* room, const Point& from);

constexpr double longest_step = 0.6;  ///< that a line takes into a space, meters

/// From the end of a gap into its space: so far on in a direction, a unit vector, and then toward the middle. Where the space
/// says what its middle is, no farther than to its first edge, and not past the middle itself: behind it may be the other side of
/// a wall. Without the end itself.
[[nodiscard]] std::vector<Point> steps_into(const House& house, SpaceIndex space, const Point& end, Vector onward, double step);
/// The same with the figure of the space's middle made ready.
[[nodiscard]] std::vector<Point> steps_into(const House& house, SpaceIndex space, const InnerRoom* room, const Point& end,
                                            Vector onward, double step);

/// The line that an animal takes along a path: through the middle of each gap, and between two gaps along the middle surface of
/// the space, round openings that stand in it. It begins a step before the first gap and ends a step into the last space, toward
/// its middle surface where it has one. `spaces[i]` and `spaces[i + 1]` are the sides of `gaps[i]`, so there is one space more.
/// A space without a middle surface is crossed straight. A gap that was added by hand is passed at its point; one without a
/// point is left out. Meters; no point stands twice in a row.
[[nodiscard]] std::vector<Point> route(const House& house, std::span<const GapIndex> gaps, std::span<const SpaceIndex> spaces);

}  // namespace seamward
