// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "interior/find.h"

namespace seamward {

/// What stands after `--room`: `NAME[:KIND]=X,Y,Z`, coordinates in bare meters; of kind living when none is said. A name may hold
/// anything but line ends and control characters; the last colon before the last equals sign begins the kind. Throws WrongUsage
/// for a text that is none, for a name that stands twice, and for `outdoors` as the name of something else.
[[nodiscard]] std::vector<RoomSeed> parse_rooms(const std::vector<std::string>& texts);

}  // namespace seamward
