// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace seamward::test {

/// The house file of an invented house: an outline of 4 to 20 corners, square or not, one to three stories, any foundation and
/// roof, a few partitions, openings and features where there is room. The same seed gives the same house. Overhangs are kept
/// small enough for its nooks; else nothing is done to make it buildable.
[[nodiscard]] std::string random_house(unsigned seed);

}  // namespace seamward::test
