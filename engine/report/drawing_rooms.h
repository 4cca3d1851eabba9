// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "report/drawing_labels.h"

namespace seamward {

/// A room's name as it stands on the paper.
struct RoomName {
    std::vector<std::string> lines;
    Point2 at;  ///< its middle, mm
    PaperBox box;
    bool keyed = false;  ///< a letter stands for it: the room is too small
};

/// A room on the paper, mm, y down.
struct PaperRoom {
    std::string name;
    std::string key;  ///< what stands for the name where that does not fit
    Figure figure;
};

/// What names keep away from.
struct NameObstacles {
    const std::vector<Balloon>* balloons = nullptr;  ///< their marks and leaders
    std::vector<PaperBox> boxes;                     ///< signs
};

/// Finds a place within each room that nothing else takes, in one line, else in more. O(rooms * places * obstacles).
[[nodiscard]] std::vector<RoomName> place_room_names(const std::vector<PaperRoom>& rooms, const NameObstacles& obstacles);

}  // namespace seamward
