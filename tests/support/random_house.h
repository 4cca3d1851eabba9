// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace seamward::test {

/// The house file of an invented house: an outline of 4 to 20 corners, square or not, one to three stories, any foundation and
/// roof, a few partitions, openings and features where there is room. The same seed gives the same house. Most can be built:
/// overhangs are kept small enough for its nooks, gables stand where there would be hip ends. A wild one has a roof without
/// such care, and thick or odd walls.
[[nodiscard]] std::string random_house(unsigned seed, bool wild = false);

}  // namespace seamward::test
