// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "house/stories.h"

namespace seamward {

namespace {

/// The air of a room that is open to the story below.
SpaceIndex space_of_lower(Layout& layout, std::size_t story, const RoomDescription& described, const Figure& figure) {
    const RoomLayout* lower = layout.room_at(story - 1, described.at);
    if (lower == nullptr) return {};
    const Loop &a = lower->figure.outline, &b = figure.outline;
    constexpr double same = 0.001;
    const bool alike = a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(), [](Point2 p, Point2 q) {
                           return std::abs(p.x - q.x) < same && std::abs(p.y - q.y) < same;
                       });
    if (!alike)
        layout.faults.add(described.place,
                          "room " + described.id + " has not the same outline in stories " + std::to_string(story) + " and " +
                              std::to_string(story + 1),
                          "let the partitions round it run through both, with to_story");
    return lower->space;
}

}  // namespace

void lay_out_rooms(Layout& layout, std::size_t story) {
    StoryLayout& level = layout.stories[story];
    std::vector<Loop> solid;
    for (const WallLayout& wall : layout.walls) {
        if (wall.story == story && !wall.exterior) solid.push_back(plan_of(wall));
    }
    const std::vector<double> inward(layout.edges(), layout.walls.front().inside());
    std::vector<CutFigure> pieces = remainder(offset_outline(layout.described.outline, inward), solid);
    std::vector<const RoomDescription*> names(pieces.size(), nullptr);
    for (const RoomDescription& room : layout.described.rooms) {
        if (room.story > story || room.to_story < story) continue;
        bool found = false;
        for (std::size_t i = 0; i < pieces.size() && !found; ++i) {
            const Figure& figure = pieces[i].figure;
            if (!is_inside(figure.outline, room.at) ||
                std::any_of(figure.holes.begin(), figure.holes.end(), [&](const Loop& hole) { return is_inside(hole, room.at); }))
                continue;
            found = true;
            if (names[i] != nullptr)
                layout.faults.add(room.place,
                                  "rooms " + names[i]->id + " and " + room.id + " are one: no wall stands between them",
                                  "close the gap between the partitions, or name the room once");
            names[i] = &room;
        }
        if (!found)
            layout.faults.add(room.place, "the point of room " + room.id + " lies in a wall or outside of the house", "move it");
    }
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Figure& figure = pieces[i].figure;
        if (names[i] == nullptr) {
            const auto corner = figure.outline.front();
            char text[160];
            std::snprintf(text, sizeof text, "story %zu has a room without a name, with a corner at [%.2f m, %.2f m]", story + 1,
                          corner.x, corner.y);
            layout.faults.add({}, text, "add it to rooms, with a point inside of it");
            continue;
        }
        RoomLayout room;
        room.figure = figure;
        if (names[i]->story < story) {
            room.space = space_of_lower(layout, story, *names[i], figure);
        } else {
            room.space = layout.add_space({names[i]->id, names[i]->name}, names[i]->kind, names[i]->place, names[i]->source);
            layout.set_middle(room.space, level_frame(level.floor + 0.12), figure);
        }
        room.ceiling = {.name = "ceiling",
                        .frame = level_frame(level.ceiling),
                        .back = 0,
                        .front = level.plate_top - level.ceiling,
                        .extent = figure.outline};
        if (names[i]->to_story > story) {
            level.rooms.push_back(std::move(room));
            continue;
        }
        Prism ceiling;
        ceiling.frame = level_frame(level.ceiling);
        ceiling.outline = figure.outline;
        ceiling.cuts = figure.holes;
        ceiling.gap_of_cut.resize(figure.holes.size());
        ceiling.heights = {{0}, {level.plate_top - level.ceiling}};
        room.ceiling.panels.push_back(layout.add_panel(names[i]->id + "/ceiling", "ceiling of " + names[i]->id, "drywall",
                                                       Layer::interior, std::move(ceiling)));
        level.rooms.push_back(std::move(room));
    }
}

void lay_out_bulkhead(Layout& layout, const BulkheadDescription& described) {
    constexpr double board = 0.013;
    const StoryLayout& level = layout.stories[described.story];
    const Loop plan = rectangle(described.least, described.most);
    const RoomLayout* room = layout.room_at(described.story, (described.least + described.most) * 0.5);
    bool fits = room != nullptr;
    for (const Point2 p : plan) {
        const Point2 inward = (described.least + described.most) * 0.5 - p;
        fits = fits && is_inside(room->figure.outline, p + inward * 0.01);
    }
    if (!fits) {
        layout.faults.add(described.place, "bulkhead " + described.id + " does not lie in one room",
                          "move its corners to the faces of that room's walls");
        return;
    }
    BulkheadLayout made;
    made.id = described.id;
    made.story = described.story;
    made.plan = plan;
    made.space = layout.add_space({described.id, described.name}, SpaceKind::cavity, described.place);
    const double low = level.ceiling - described.drop;
    Prism bottom;
    bottom.frame = level_frame(0);
    bottom.outline = plan;
    bottom.heights = {{low}, {low + board}};
    made.bottom = {.name = described.id, .frame = bottom.frame, .back = low, .front = low + board, .extent = plan};
    made.bottom.panels.push_back(
        layout.add_panel(described.id + "/bottom", "bottom of " + described.id, "drywall", Layer::interior, std::move(bottom)));
    Prism sides;
    sides.frame = level_frame(0);
    sides.outline = plan;
    sides.cuts = {rectangle(described.least + Point2{board, board}, described.most - Point2{board, board})};
    sides.gap_of_cut.resize(1);
    sides.heights = {{low + board}, {level.ceiling}};
    layout.add_panel(described.id + "/sides", "sides of " + described.id, "drywall", Layer::interior, std::move(sides));
    layout.set_middle(made.space, level_frame((low + level.ceiling) / 2),
                      {rectangle(described.least + Point2{0.03, 0.03}, described.most - Point2{0.03, 0.03}), {}});
    layout.bulkheads.push_back(std::move(made));
}

}  // namespace seamward
