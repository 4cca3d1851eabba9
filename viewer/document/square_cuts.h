// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>

#include "base/plane.h"

namespace seamward::viewer {

/// Loops whose sides all run along x or y, counterclockwise, cut by straight lines from side to side. Meters.

enum class Axis : std::uint8_t { x, y };

[[nodiscard]] constexpr double along(Point2 point, Axis axis) { return axis == Axis::x ? point.x : point.y; }
[[nodiscard]] constexpr Axis across(Axis axis) { return axis == Axis::x ? Axis::y : Axis::x; }

[[nodiscard]] bool is_square(const Loop& loop);

struct LoopCut {
    Loop low, high;   ///< on the sides of the smaller and of the larger coordinate
    Point2 from, to;  ///< its ends, the one of the smaller coordinate first
};

/// The cut along the line on which `axis` is `at`. Nothing where it would fall into several pieces, run outside, or pass so near
/// to a parallel side that a strip narrower than `least` is left.
[[nodiscard]] std::optional<LoopCut> cut_at(const Loop& loop, Axis axis, double at, double least = 0.8);

/// The same where about this share of the area lies on the low side, at whole centimeters.
[[nodiscard]] std::optional<LoopCut> cut_share(const Loop& loop, Axis axis, double share);

/// Whether a square of that side, with sides along x and y, has a place in the loop.
[[nodiscard]] bool holds_square(const Loop& loop, double side);

/// A stretch of a line that two loops have in common.
struct Border {
    Axis across = Axis::x;  ///< the coordinate that stays the same
    double at = 0, from = 0, to = 0;
};

/// The longest border of two loops that lie beside each other; of no length where they do not meet.
[[nodiscard]] Border border_of(const Loop& a, const Loop& b);

/// How much of the line from a to b is a side of the loop.
[[nodiscard]] double side_on(const Loop& loop, Point2 a, Point2 b);

}  // namespace seamward::viewer
