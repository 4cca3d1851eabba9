// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "house/layout.h"

namespace seamward {

/// A length for messages, to the centimeter: "4.80 m".
[[nodiscard]] std::string in_meters(double length);

/// Of a figure that lies in another one's plane: the area that both cover.
[[nodiscard]] double shared_area(const Loop& a, const Loop& b);

/// Reports partitions that reach out of the house, stand in its outside walls or in each other, and openings that a partition
/// ends at. Once all walls stand.
void check_partitions(Layout& layout);

/// Reports openings before which the box of an eave hangs, and boxes that hang below the floor of the story under the roof: of a
/// steep roof with a deep overhang.
void check_under_eaves(Layout& layout);

}  // namespace seamward
