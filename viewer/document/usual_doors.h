// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/usual_rooms.h"

namespace seamward::viewer {

/// Depth of an outside wall of a new house from the outline to its inner face, and of a partition.
struct UsualWalls {
    static constexpr double outside = 0.102, partition = 0.115;
};

/// Gives every room of a plan its door, or the archway that joins it to the next. False: one has no place.
[[nodiscard]] bool hang_doors(const Loop& outline, RoomPlan& plan);

}  // namespace seamward::viewer
