// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "house/layout.h"

namespace seamward {

namespace {

constexpr double snug = 0.02;  ///< a side so near to a wall stands against it, meters

/// Where the room has a face along one side of a box, all along it; x counts across the side and y along it.
std::optional<double> face_beside(const Figure& room, double side, double from, double to, bool turned) {
    std::optional<double> found;
    const auto take = [&](const Loop& loop) {
        for (std::size_t i = 0; i < loop.size(); ++i) {
            Point2 a = loop[i], b = loop[(i + 1) % loop.size()];
            if (turned) {
                std::swap(a.x, a.y);
                std::swap(b.x, b.y);
            }
            const bool along = std::abs(a.x - b.x) < 1e-6, near = std::abs(a.x - side) <= snug;
            if (along && near && std::min(a.y, b.y) <= from + snug && std::max(a.y, b.y) >= to - snug) found = a.x;
        }
    };
    take(room.outline);
    for (const Loop& hole : room.holes) take(hole);
    return found;
}

}  // namespace

void open_bulkheads(Layout& layout) {
    for (BulkheadLayout& box : layout.bulkheads) {
        Point2 least = box.plan[0], most = box.plan[2];
        const RoomLayout* room = layout.room_at(box.story, (least + most) * 0.5);
        const auto sides = std::find_if(layout.panels.begin(), layout.panels.end(),
                                        [&](const Panel& panel) { return panel.id == box.id + "/sides"; });
        if (room == nullptr || sides == layout.panels.end()) continue;
        Loop& inner = sides->prisms.front().cuts.front();
        Point2 inner_least = inner[0], inner_most = inner[2];
        const auto open = [&](double& edge, double& inner_edge, double from, double to, bool turned, double outward) {
            const std::optional<double> face = face_beside(room->figure, edge, from, to, turned);
            if (!face) return;
            edge = *face;
            inner_edge = *face + outward * snug;  // past the outline: no board is left
        };
        open(least.x, inner_least.x, least.y, most.y, false, -1);
        open(most.x, inner_most.x, least.y, most.y, false, 1);
        open(least.y, inner_least.y, least.x, most.x, true, -1);
        open(most.y, inner_most.y, least.x, most.x, true, 1);
        box.plan = rectangle(least, most);
        box.bottom.extent = box.plan;
        sides->prisms.front().outline = box.plan;
        inner = rectangle(inner_least, inner_most);
        for (const std::size_t panel : box.bottom.panels) layout.panels[panel].prisms.front().outline = box.plan;
    }
}

}  // namespace seamward
