// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/shell.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numeric>

#include "house/framing.h"
#include "house/stories.h"

namespace seamward {

namespace {

using namespace framing;

std::string numbered(const std::string& base, std::size_t story) {
    return story == 0 ? base : base + "-" + std::to_string(story + 1);
}

/// The openings of a wall, checked against its ends, its plates and each other.
class OpeningTaker {
public:
    OpeningTaker(Layout& layout, WallLayout& wall, const Depth& depth)
        : layout_(layout),
          wall_(wall),
          left_(wall.slant.left_reach(depth.inside, depth.outside) + plate + stud),
          right_(wall.slant.right_reach(depth.inside, depth.outside) - plate - stud) {}

    void take(const OpeningDescription& opening) {
        const Loop loop = rectangle({opening.along - opening.width / 2, opening.sill},
                                    {opening.along + opening.width / 2, opening.sill + opening.height});
        constexpr double under_plate = 0.01;
        const double top = wall_.plate_top - double_top_plate - under_plate - stud;
        if (loop[0].x < left_ || loop[2].x > right_)
            layout_.faults.add(opening.place,
                               opening.id + " does not fit into " + wall_.name + ", which is " + in_meters(wall_.length) +
                                   " long: it reaches from " + in_meters(loop[0].x) + " to " + in_meters(loop[2].x) +
                                   " along, and has room from " + in_meters(left_) + " to " + in_meters(right_),
                               "move it, or make it narrower");
        if (loop[2].y > top)
            layout_.faults.add(opening.place,
                               opening.id + " reaches into the top plate of " + wall_.name + ": its upper edge is at " +
                                   in_meters(loop[2].y) + ", and may be at " + in_meters(top),
                               "make it lower");
        for (std::size_t i = 0; i < taken_.size(); ++i) keep_apart(opening, loop, *taken_[i], wall_.openings[i]);
        taken_.push_back(&opening);
        wall_.openings.push_back(loop);
    }

private:
    void keep_apart(const OpeningDescription& opening, const Loop& loop, const OpeningDescription& other, const Loop& there) {
        constexpr double least = 4 * stud;
        const double beside = std::max(loop[0].x - there[2].x, there[0].x - loop[2].x);
        const double above = std::max(loop[0].y - there[2].y, there[0].y - loop[2].y);
        if (beside > least || above > least) return;
        const bool overlap = beside < 0 && above < 0;
        const double between = std::max(beside, above);
        layout_.faults.add(opening.place,
                           opening.id + " runs into another opening of " + wall_.name + ": " +
                               (overlap ? "it overlaps " + other.id + " by " + in_meters(-between)
                                        : in_meters(std::max(0.0, between)) + " are between it and " + other.id),
                           "move one of them; between two openings are " + in_meters(least) + " or more");
    }

    Layout& layout_;
    WallLayout& wall_;
    double left_, right_;  ///< between the corner posts
    std::vector<const OpeningDescription*> taken_;
};

void take_openings(Layout& layout, WallLayout& wall, const Depth& depth) {
    OpeningTaker taker(layout, wall, depth);
    for (const OpeningDescription& opening : layout.described.openings) {
        if (opening.in == wall.described && opening.story == wall.story && opening.kind != OpeningKind::crawl_door)
            taker.take(opening);
    }
}

void lay_out_exterior(Layout& layout, std::size_t story) {
    const HouseDescription& described = layout.described;
    const std::size_t n = described.outline.size();
    const Assembly& assembly = described.assemblies[described.wall_assembly];
    const StoryLayout& level = layout.stories[story];
    const auto turn = [&](std::size_t i) {  // tangent of half the turn at corner i
        const Point2 a = described.outline[i] - described.outline[(i + n - 1) % n],
                     b = described.outline[(i + 1) % n] - described.outline[i];
        return std::tan(std::atan2(cross(a, b), dot(a, b)) / 2);
    };
    for (std::size_t i = 0; i < n; ++i) {
        const Point2 from = described.outline[i], to = described.outline[(i + 1) % n];
        WallLayout wall;
        wall.id = numbered(described.walls[i], story);
        wall.described = described.walls[i];
        wall.name = spoken(described.walls[i]) + (story == 0 ? "" : ", story " + std::to_string(story + 1));
        wall.story = story;
        wall.exterior = true;
        const Point2 along = to - from;
        wall.length = std::sqrt(dot(along, along));
        const Vector u{along.x / wall.length, along.y / wall.length, 0};
        wall.frame = {{from.x, from.y, level.floor}, u, {0, 0, 1}, {u.y, -u.x, 0}};
        wall.slant = {0, -turn(i), wall.length, turn((i + 1) % n)};
        wall.plate_top = level.plate_top - level.floor;
        wall.top = wall.plate_top;
        wall.bottom = story > 0                                           ? layout.stories[story - 1].plate_top - level.floor
                      : described.foundation.kind == FoundationKind::slab ? -overlap
                                                                          : -subfloor - joist - plate - overlap;
        take_openings(layout, wall, depth_of(assembly, true));
        const auto& names = described.stories[story].cavities;
        build_wall(layout, wall, assembly, i < names.size() ? names[i] : std::vector<NamedSpace>(), {});
        layout.walls.push_back(std::move(wall));
    }
}

/// The ends of a partition moved to the faces of the walls that it meets.
class PartitionEnds {
public:
    explicit PartitionEnds(const Layout& layout, const PartitionDescription& partition)
        : layout_(layout), partition_(partition) {}

    /// How far beyond `at` in direction `along` the partition goes; nothing when no wall is near.
    [[nodiscard]] std::optional<double> beyond(Point2 at, Point2 along) const {
        std::optional<double> best;
        for (const WallLayout& wall : layout_.walls) {
            if (wall.story != partition_.story) continue;
            const Point2 origin{wall.frame.origin.x, wall.frame.origin.y}, u{wall.frame.u.x, wall.frame.u.y};
            const Point2 n{wall.frame.n.x, wall.frame.n.y};
            const double facing = dot(along, n);
            if (std::abs(facing) < 0.99) continue;  // only walls square to it
            const double face = facing > 0 ? wall.inside() : wall.outside();
            const double t = (face - dot(at - origin, n)) / facing;
            const double where = dot(at + along * t - origin, u);
            if (std::abs(t) > near || where < -0.05 || where > wall.length + 0.05) continue;
            if (!best || t < *best) best = t;
        }
        return best;
    }

private:
    static constexpr double near = 0.35;  ///< meters between a stated end and a wall's face
    const Layout& layout_;
    const PartitionDescription& partition_;
};

/// The middle of the air in a partition, over all stories that it runs through.
void set_cavity_middle(Layout& layout, std::size_t first) {
    const WallLayout& lowest = layout.walls[first];
    const WallCavity& air = lowest.cavities.back();
    if (!air.bays.empty()) return;
    Loop inner = air.inner;
    std::vector<Loop> bucks;
    for (std::size_t i = first; i < layout.walls.size(); ++i) {
        const WallLayout& wall = layout.walls[i];
        const Point2 rise{0, wall.frame.origin.z - lowest.frame.origin.z};
        inner[2].y = inner[3].y = wall.cavities.back().inner[2].y + rise.y;
        for (const Loop& buck : wall.cavities.back().returns) {
            bucks.emplace_back();
            for (const Point2 p : buck) bucks.back().push_back(p + rise);
        }
    }
    std::vector<CutFigure> pieces = remainder(inner, bucks);
    if (pieces.size() != 1) {
        layout.faults.add(layout.space_places[air.space.value],
                          "the openings cut the air in " + lowest.name + " into " + std::to_string(pieces.size()) + " pieces",
                          "make the openings lower, narrower or fewer");
        return;
    }
    Frame frame = lowest.frame;
    frame.origin = frame.at(0, 0, (air.back + air.front) / 2);
    layout.set_middle(air.space, frame, std::move(pieces.front().figure));
}

void lay_out_partition(Layout& layout, std::size_t number) {
    const PartitionDescription& described = layout.described.partitions[number];
    const Assembly& assembly = layout.described.assemblies[described.assembly];
    const double thickness = std::accumulate(assembly.layers.begin(), assembly.layers.end(), 0.0,
                                             [](double sum, const WallLayer& layer) { return sum + layer.thickness; });
    Point2 from = described.from, to = described.to;
    const Point2 line = to - from;
    const double stated = std::sqrt(dot(line, line));
    if (stated < 0.2) {
        layout.faults.add(described.place, "partition " + described.id + " is shorter than 0.2 m", "check from and to");
        return;
    }
    if (described.from_below && described.story == 0) {
        layout.faults.add(described.place, "under partition " + described.id + " there is no ceiling to begin at",
                          "leave from_below out, or write story: 2");
        return;
    }
    const Point2 along = line * (1 / stated);
    const PartitionEnds ends(layout, described);
    // An end that meets the end of a partition further down in the list covers that one's full thickness.
    const auto corner = [&](Point2 at) {
        for (std::size_t i = number + 1; i < layout.described.partitions.size(); ++i) {
            const PartitionDescription& later = layout.described.partitions[i];
            if (later.story != described.story) continue;
            for (const Point2 end : {later.from, later.to}) {
                const Point2 off = end - at;
                const Point2 its = later.to - later.from;
                if (std::sqrt(dot(off, off)) < 0.05 && std::abs(dot(its, along)) < 0.1 * std::sqrt(dot(its, its)))
                    return thickness / 2;
            }
        }
        return 0.0;
    };
    const double at_start = ends.beyond(from, along * -1).value_or(corner(from));
    const double at_end = ends.beyond(to, along).value_or(corner(to));
    from = from - along * at_start;
    to = to + along * at_end;

    const Point2 whole = to - from;
    const Vector u{along.x, along.y, 0};
    const std::size_t first = layout.walls.size();
    for (std::size_t story = described.story; story <= described.to_story; ++story) {
        const StoryLayout& level = layout.stories[story];
        WallLayout wall;
        wall.id = story == described.story ? described.id : numbered(described.id, story);
        wall.described = described.id;
        wall.name = described.name.empty() ? spoken(described.id) : described.name;
        if (story > described.story) wall.name += ", story " + std::to_string(story + 1);
        wall.story = story;
        wall.length = std::sqrt(dot(whole, whole));
        wall.frame = {{from.x, from.y, level.floor}, u, {0, 0, 1}, {u.y, -u.x, 0}};
        wall.slant = {0, 0, wall.length, 0};
        wall.plate_top = wall.top = level.plate_top - level.floor;
        wall.open_above = story < described.to_story;
        wall.open_below = story > described.story || described.from_below;
        if (wall.open_below) wall.bottom = layout.stories[story - 1].plate_top - level.floor;
        take_openings(layout, wall, depth_of(assembly, false));
        build_wall(layout, wall, assembly, {described.cavity}, described.place,
                   story > described.story ? &layout.walls.back() : nullptr);
        layout.walls.push_back(std::move(wall));
    }
    set_cavity_middle(layout, first);
}

}  // namespace

std::string in_meters(double length) {
    char text[40];
    std::snprintf(text, sizeof text, "%.2f m", length);
    return std::string(text) == "-0.00 m" ? "0.00 m" : text;
}

void lay_out_shell(Layout& layout) {
    const HouseDescription& described = layout.described;
    for (const Diagnostic& unfit : described.unfit) layout.faults.add(unfit.place, unfit.what, unfit.mend);
    layout.outdoors = layout.add_space(described.outdoors, SpaceKind::outdoors, {});
    layout.attic = layout.add_space(described.roof.attic, SpaceKind::cavity, described.roof.place, described.roof.attic_source);
    const Assembly& assembly = described.assemblies[described.wall_assembly];
    double floor = 0;
    for (std::size_t i = 0; i < described.stories.size(); ++i) {
        const StoryDescription& story = described.stories[i];
        StoryLayout level;
        if (i > 0) {
            floor += story.floor;
            if (story.voids.empty()) level.below = layout.add_space(story.void_below, SpaceKind::cavity, {});
        }
        level.floor = floor;
        level.ceiling = floor + story.height;
        level.plate_top = level.ceiling + assembly.layers.back().thickness;
        floor = level.plate_top;
        layout.stories.push_back(std::move(level));
    }
    const Depth depth = depth_of(assembly, true);
    for (const double offset : {depth.inside, depth.outside}) {
        const Loop face = offset_outline(described.outline, std::vector<double>(layout.edges(), offset));
        if (!keeps_shape(described.outline, face))
            layout.faults.add({}, "two walls of the outline run into each other: some place is narrower than they are thick",
                              "make the narrow parts of the outline wider");
    }
    layout.faults.throw_if_any();
    for (std::size_t i = 0; i < described.stories.size(); ++i) lay_out_exterior(layout, i);
    for (std::size_t i = 0; i < described.partitions.size(); ++i) lay_out_partition(layout, i);
    layout.faults.throw_if_any();
    check_partitions(layout);
    layout.faults.throw_if_any();
    find_ends(layout);
    for (std::size_t i = 0; i < described.stories.size(); ++i) {
        lay_out_rooms(layout, i);
        lay_out_floor(layout, i);
    }
    for (const BulkheadDescription& bulkhead : described.bulkheads) lay_out_bulkhead(layout, bulkhead);
}

}  // namespace seamward
