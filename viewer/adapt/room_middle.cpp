// SPDX-License-Identifier: GPL-3.0-or-later
#include "adapt/room_middle.h"

namespace seamward::viewer {

std::vector<RoomMiddle> room_middles(const Survey& survey) {
    std::vector<Point> middle(survey.spaces.size());
    std::vector<double> count(survey.spaces.size());
    for (const Gap& gap : survey.gaps) {
        if (!gap.at) continue;
        for (const SpaceIndex end : gap.between) {
            const double share = 1 / ++count[end.value];
            Point& at = middle[end.value];
            at = {at.x + (gap.at->x - at.x) * share, at.y + (gap.at->y - at.y) * share, at.z + (gap.at->z - at.z) * share};
        }
    }
    std::vector<RoomMiddle> rooms;
    for (std::uint32_t i = 0; i < survey.spaces.size(); ++i) {
        if (survey.spaces[i].is_living() && count[i] > 0) rooms.push_back({{i}, middle[i]});
    }
    return rooms;
}

}  // namespace seamward::viewer
