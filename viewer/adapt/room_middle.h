// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "base/survey.h"

namespace seamward::viewer {

/// A living room, and the middle of the gaps that lead into it. Job's frame.
struct RoomMiddle {
    SpaceIndex room;
    Point at;
};

/// For each living room that has a gap with a position, in the order of the survey. A survey says no more of where its
/// rooms are. O(spaces + gaps).
[[nodiscard]] std::vector<RoomMiddle> room_middles(const Survey& survey);

}  // namespace seamward::viewer
