// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "house/framing.h"
#include "house/stories.h"

namespace seamward {

namespace {

using namespace framing;

Loop plan_between(const WallLayout& wall, double from, double to) {
    const auto at = [&](double u, double n) {
        const Point p = wall.frame.at(u, 0, n);
        return Point2{p.x, p.y};
    };
    return {at(from, wall.inside()), at(to, wall.inside()), at(to, wall.outside()), at(from, wall.outside())};
}

/// From the end of a partition that meets an outside wall how far it is to that wall's rim joist; 0 where it meets none.
double to_rim(const Layout& layout, const WallLayout& partition, bool at_end) {
    const Point p = partition.frame.at(at_end ? partition.length : 0, 0, 0);
    const Vector along = partition.frame.u * (at_end ? 1 : -1);
    for (const WallLayout& wall : layout.walls) {
        if (!wall.exterior || wall.story != partition.story || dot(along, wall.frame.n) < 0.999) continue;
        const Vector off = p - wall.frame.origin;
        const double where = dot(off, wall.frame.u);
        if (std::abs(dot(off, wall.frame.n) - wall.inside()) < 0.005 && where > -0.005 && where < wall.length + 0.005)
            return -stud - wall.inside();
    }
    return 0;
}

class FloorBuilder {
public:
    FloorBuilder(Layout& layout, std::size_t story)
        : layout_(layout),
          level_(layout.stories[story]),
          story_(story),
          low_(layout.stories[story - 1].plate_top),
          high_(level_.floor - subfloor) {}

    void build() {
        for (const WallLayout& wall : layout_.walls) {
            if (wall.story == story_ && wall.open_below) take_partition(wall);
        }
        add_boards();
        part_air();
    }

private:
    void take_partition(const WallLayout& wall) {
        through_.push_back(plan_of(wall));
        solid_.push_back(through_.back());
        for (const bool at_end : {false, true}) {
            const double depth = to_rim(layout_, wall, at_end);
            if (depth <= 0) continue;
            const double end = at_end ? wall.length : 0, beyond = at_end ? end + depth : end - depth;
            const Loop plan = plan_between(wall, std::min(end, beyond), std::max(end, beyond));
            layout_.add_panel(wall.id + (at_end ? "/block-right" : "/block-left"), "block between joists at " + wall.name, "wood",
                              Layer::framing, plain_prism(level_frame(0), plan, low_, high_));
            constexpr double more = 0.001;  // past the rim's face, so that nothing is left between
            solid_.push_back(plan_between(wall, std::min(end, beyond) - more, std::max(end, beyond) + more));
        }
    }

    [[nodiscard]] bool open_to_below(const RoomDescription& room) const { return room.story < story_ && room.to_story >= story_; }

    void add_boards() {
        Prism boards = plain_prism(level_frame(level_.floor), layout_.described.outline, -subfloor, 0);
        boards.cuts = through_;
        for (const RoomDescription& room : layout_.described.rooms) {
            const RoomLayout* made = open_to_below(room) ? layout_.room_at(story_, room.at) : nullptr;
            if (made != nullptr) boards.cuts.push_back(made->figure.outline);
        }
        boards.gap_of_cut.resize(boards.cuts.size());
        level_.floor_skin = {.name = "floor", .frame = boards.frame, .back = -subfloor, .front = 0, .extent = boards.outline};
        level_.floor_skin.panels.push_back(
            layout_.add_panel("floor-" + std::to_string(story_ + 1), "floor boards", "wood", Layer::framing, std::move(boards)));
    }

    [[nodiscard]] std::vector<CutFigure> pieces(double inward) const {
        return remainder(offset_outline(layout_.described.outline, std::vector<double>(layout_.edges(), -inward)), solid_);
    }

    static bool lies_in(const Figure& figure, Point2 at) {
        return is_inside(figure.outline, at) &&
               std::none_of(figure.holes.begin(), figure.holes.end(), [&](const Loop& hole) { return is_inside(hole, at); });
    }

    void part_air() {
        for (const CutFigure& piece : pieces(stud)) {
            const SpaceIndex air = air_of(piece.figure);
            if (air.valid()) level_.parts_below.emplace_back(piece.figure, air);
        }
        for (const VoidDescription& part : layout_.described.stories[story_].voids) {
            const bool used = std::any_of(level_.parts_below.begin(), level_.parts_below.end(),
                                          [&](const auto& made) { return lies_in(made.first, part.at); });
            if (!used)
                layout_.faults.add(part.place, "the point of " + part.space.id + " lies in a wall or outside of the house",
                                   "move it");
        }
        // A line along the middle keeps off the rim.
        for (const CutFigure& piece : pieces(2 * stud)) {
            for (const auto& [figure, air] : level_.parts_below) {
                if (lies_in(figure, middle_of(piece.figure)))
                    layout_.set_middle(air, level_frame((low_ + high_) / 2), piece.figure);
            }
        }
    }

    static Point2 middle_of(const Figure& figure) {
        const auto triangle = triangulate(figure).front();
        std::vector<Point2> corners = figure.outline;
        for (const Loop& hole : figure.holes) corners.insert(corners.end(), hole.begin(), hole.end());
        return (corners[triangle[0]] + corners[triangle[1]] + corners[triangle[2]]) * (1.0 / 3);
    }

    /// The air of one part: of a room that is open there, or as the file names it.
    SpaceIndex air_of(const Figure& figure) {
        const RoomDescription* open = nullptr;
        const RoomDescription* closed = nullptr;
        for (const RoomDescription& room : layout_.described.rooms) {
            const bool beside = room.to_story + 1 == story_ || room.story == story_;
            if (!lies_in(figure, room.at)) continue;
            if (open_to_below(room))
                open = &room;
            else if (beside)
                closed = &room;
        }
        if (open != nullptr) {
            if (closed != nullptr)
                layout_.faults.add(open->place,
                                   "under story " + std::to_string(story_ + 1) + " room " + open->id +
                                       " is open to the joists under or over " + closed->id,
                                   "let the partitions round " + open->id + " run through both stories, with to_story");
            const RoomLayout* room = layout_.room_at(story_, open->at);
            return room != nullptr ? room->space : SpaceIndex();
        }
        for (const VoidDescription& part : layout_.described.stories[story_].voids) {
            if (lies_in(figure, part.at)) return layout_.add_space(part.space, SpaceKind::cavity, part.place);
        }
        if (named_) {
            const Point2 corner = figure.outline.front();
            char text[200];
            std::snprintf(
                text, sizeof text,
                "partitions part the air between the joists under story %zu; a part with a corner at [%.2f m, %.2f m] has "
                "no name",
                story_ + 1, corner.x, corner.y);
            layout_.faults.add({}, text, "add it to voids of that story: {id: ..., at: [...]}");
            return {};
        }
        named_ = true;
        if (!level_.below.valid())
            level_.below = layout_.add_space(layout_.described.stories[story_].void_below, SpaceKind::cavity, {});
        return level_.below;
    }

    Layout& layout_;
    StoryLayout& level_;
    std::size_t story_;
    double low_, high_;  ///< of the air
    std::vector<Loop> through_, solid_;
    bool named_ = false;  ///< whether `void` of the story names a part already
};

}  // namespace

Loop plan_of(const WallLayout& wall) {
    constexpr double more = 0.003;
    return plan_between(wall, wall.meets_left ? -more : 0, wall.length + (wall.meets_right ? more : 0));
}

void find_ends(Layout& layout) {
    const Loop interior =
        offset_outline(layout.described.outline, std::vector<double>(layout.edges(), layout.walls.front().inside()));
    const auto covered = [&](const WallLayout& wall, Point2 at) {
        if (!is_inside(interior, at)) return true;
        return std::any_of(layout.walls.begin(), layout.walls.end(), [&](const WallLayout& other) {
            return &other != &wall && !other.exterior && other.story == wall.story &&
                   is_inside(plan_between(other, 0, other.length), at);
        });
    };
    constexpr double beyond = 0.002;
    for (WallLayout& wall : layout.walls) {
        if (wall.exterior) continue;
        for (const bool right : {false, true}) {
            bool all = true;
            for (const double share : {0.01, 0.25, 0.5, 0.75, 0.99}) {
                const double n = wall.inside() + share * (wall.outside() - wall.inside());
                const Point p = wall.frame.at(right ? wall.length + beyond : -beyond, 0, n);
                all = all && covered(wall, {p.x, p.y});
            }
            (right ? wall.meets_right : wall.meets_left) = all;
        }
    }
}

void lay_out_floor(Layout& layout, std::size_t story) {
    if (story > 0) FloorBuilder(layout, story).build();  // the lowest stands on the foundation
}

}  // namespace seamward
