// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "layers/house_groups.h"

namespace seamward::viewer {

/// Places on a room's floor to put a post with its name, the one farthest from walls first; scene. Empty without a floor plan.
[[nodiscard]] std::vector<Point> room_places(const MiddleSurface& room, const HouseFrame& frame);

}  // namespace seamward::viewer
