// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <random>

#include "base/plane.h"

namespace seamward::test {

/// Simple polygons that run counterclockwise, for plans of houses: no edge is shorter than `least_edge`, no corner nearer than
/// half of that to an edge that it does not belong to. Meters, round coordinates only by chance. The same random numbers give
/// the same polygon.

/// Square corners only, `corners` of them or one or two fewer; 4 at least, edges along x and y.
[[nodiscard]] Loop random_rectilinear(std::mt19937& random, std::size_t corners, double least_edge);
/// Seen whole from its middle.
[[nodiscard]] Loop random_star(std::mt19937& random, std::size_t corners, double least_edge);
[[nodiscard]] Loop random_convex(std::mt19937& random, std::size_t corners, double least_edge);

/// The loop turned about the origin by an angle.
[[nodiscard]] Loop turned_by(const Loop& loop, double angle);
/// Of all corners from edges that they do not belong to.
[[nodiscard]] double narrowest(const Loop& loop);

/// Between two bounds.
[[nodiscard]] double uniform(std::mt19937& random, double low, double high);
/// From 0 to `count` - 1.
[[nodiscard]] std::size_t pick(std::mt19937& random, std::size_t count);

}  // namespace seamward::test
