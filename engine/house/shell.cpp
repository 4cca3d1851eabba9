// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <numeric>

#include "house/framing.h"
#include "house/layout.h"

namespace seamward {

namespace {

using namespace framing;

std::string numbered(const std::string& base, std::size_t story) {
    return story == 0 ? base : base + "-" + std::to_string(story + 1);
}

/// How far along a wall the corner post reaches that ends a cavity: past the slant of the neighbor's cavity.
double left_reach(const WallLayout& wall, double back, double front) {
    return std::max({0.0, wall.slant.left_slant * back, wall.slant.left_slant * front});
}
double right_reach(const WallLayout& wall, double back, double front) {
    return std::min({wall.length, wall.length + wall.slant.right_slant * back, wall.length + wall.slant.right_slant * front});
}

class WallBuilder {
public:
    WallBuilder(Layout& layout, WallLayout& wall, const Assembly& assembly) : layout_(layout), wall_(wall), assembly_(assembly) {}

    void build(const std::vector<NamedSpace>& cavity_names, Place place) {
        const std::vector<WallLayer>& layers = assembly_.layers;
        const auto last_air = std::find_if(layers.rbegin(), layers.rend(), [](const WallLayer& l) { return l.is_air(); });
        const std::size_t stud_layer = static_cast<std::size_t>(layers.rend() - last_air) - 1;
        double out = 0;
        if (wall_.exterior) {
            for (std::size_t i = 0; i < stud_layer; ++i) out += layers[i].thickness;
        } else {
            for (const WallLayer& layer : layers) out += layer.thickness / 2;
        }
        Skin skin = new_skin();
        for (std::size_t i = 0; i < layers.size(); ++i) {
            const double front = out, back = out - layers[i].thickness;
            out = back;
            const bool outer = wall_.exterior && i < stud_layer;
            if (layers[i].is_air()) {
                finish_skin(skin, outer || i == stud_layer);
                skin = new_skin();
                add_cavity(back, front, cavity_names, i == stud_layer, place);
            } else {
                add_layer(skin, layers[i], back, front, outer);
            }
        }
        finish_skin(skin, false);
    }

private:
    static Skin new_skin() { return {.back = 1e9, .front = -1e9}; }

    void finish_skin(Skin& skin, bool outer) {
        skin.frame = wall_.frame;
        skin.extent =
            outer ? rectangle({0, wall_.bottom}, {wall_.length, wall_.top}) : rectangle({0, 0}, {wall_.length, wall_.plate_top});
        std::reverse(skin.panels.begin(), skin.panels.end());
        wall_.skins.push_back(std::move(skin));
    }

    Prism upright(const Loop& outline, double back, double front, bool slanted) const {
        return plain_prism(wall_.frame, outline, back, front, slanted ? wall_.slant : Slant());
    }

    void cut(Prism& prism, const Loop& loop) const {
        prism.cuts.push_back(loop);
        prism.gap_of_cut.emplace_back();
    }

    void add_layer(Skin& skin, const WallLayer& layer, double back, double front, bool outer) {
        const double low = outer ? wall_.bottom : 0, high = outer ? wall_.top : wall_.plate_top;
        Prism prism = upright(rectangle({0, low}, {wall_.length, high}), back, front, true);
        for (const Loop& opening : wall_.openings) cut(prism, opening);
        skin.back = std::min(skin.back, back);
        skin.front = std::max(skin.front, front);
        skin.name += (skin.name.empty() ? "" : " and ") + layer.material;
        const std::string side = outer ? "" : "-" + std::to_string(wall_.skins.size());
        skin.panels.push_back(layout_.add_panel(wall_.id + "/" + layer.material + side, layer.material + " of " + wall_.name,
                                                layer.material, outer ? Layer::cladding : Layer::interior, std::move(prism)));
        if (outer) wall_.outer_panels.push_back(skin.panels.back());
    }

    void add_cavity(double back, double front, const std::vector<NamedSpace>& names, bool studs, Place place) {
        const std::size_t number = wall_.cavities.size();
        NamedSpace named = number < names.size() ? names[number] : NamedSpace();
        if (named.id.empty()) {
            named.id = studs ? wall_.id : wall_.id + "-air";
            named.name = (studs ? "cavity of " : "air behind the cladding of ") + wall_.name;
        }
        wall_.cavities.push_back({back, front, {}, {}});
        if (studs) {
            frame_studs(back, front, named, place);
            return;
        }
        wall_.cavities.back().space = layout_.add_space(named, SpaceKind::cavity, place);
        close_air(back, front, wall_.cavities.back().space);
    }

    /// How far apart studs part the cavity; nothing: they do not.
    [[nodiscard]] std::optional<double> bay_spacing() const {
        for (const StudBaysDescription& bays : layout_.described.stud_bays) {
            if (std::find(bays.on.begin(), bays.on.end(), wall_.described) != bays.on.end()) return bays.spacing;
        }
        return std::nullopt;
    }

    /// Studs at a spacing, and the bays that they and the openings leave, each a space.
    void part_into_bays(double spacing, const Loop& inner, std::vector<Loop> solid, double back, double front,
                        const NamedSpace& named, Place place) {
        std::size_t number = 0;
        for (double u = inner[0].x + spacing - stud; u + stud < inner[1].x; u += spacing) {
            const Loop loop = rectangle({u, inner[0].y}, {u + stud, inner[2].y});
            Prism made = upright(loop, back, front, false);
            for (const Loop& buck : solid) {
                if (buck[0].x < u + stud && buck[2].x > u) cut(made, buck);
            }
            layout_.add_panel(wall_.id + "/stud-" + std::to_string(++number), "stud of " + wall_.name, "wood", Layer::framing,
                              std::move(made));
            solid.push_back(loop);
        }
        WallCavity& cavity = wall_.cavities.back();
        Frame frame = wall_.frame;
        frame.origin = frame.at(0, 0, (back + front) / 2);
        for (CutFigure& piece : remainder(inner, solid)) {
            const std::string bay = std::to_string(cavity.bays.size() + 1);
            const SpaceIndex space =
                layout_.add_space({named.id + "-bay-" + bay, named.name + ", bay " + bay}, SpaceKind::cavity, place);
            layout_.set_middle(space, frame, piece.figure);
            cavity.bays.emplace_back(std::move(piece.figure), space);
        }
        if (!cavity.bays.empty()) cavity.space = cavity.bays.front().second;
    }

    void frame_studs(double back, double front, const NamedSpace& named, Place place) {
        const double low = plate, high = wall_.plate_top - double_top_plate;
        const double left = left_reach(wall_, back, front) + stud, right = right_reach(wall_, back, front) - stud;
        wall_.bottom_plate = level_plate("bottom plate", back, front, 0, low, true);
        wall_.top_plate = level_plate("top plate", back, front, high, wall_.plate_top, false);
        layout_.add_panel(wall_.id + "/post-left", "corner post of " + wall_.name, "wood", Layer::framing,
                          upright(rectangle({0, low}, {left, high}), back, front, true));
        Prism end = upright(rectangle({right, low}, {wall_.length, high}), back, front, true);
        layout_.add_panel(wall_.id + "/post-right", "corner post of " + wall_.name, "wood", Layer::framing, std::move(end));

        std::vector<Loop> bucks;
        for (const Loop& opening : wall_.openings) {
            const bool to_floor = opening[0].y - stud <= low;
            bucks.push_back(
                rectangle({opening[0].x - stud, to_floor ? 0 : opening[0].y - stud}, opening[2] + Point2{stud, stud}));
            Prism buck = upright(bucks.back(), back, front, false);
            cut(buck, opening);
            layout_.add_panel(wall_.id + "/opening-" + std::to_string(bucks.size()), "frame of an opening in " + wall_.name,
                              "wood", Layer::framing, std::move(buck));
        }
        const Loop inner = rectangle({left, low}, {right, high});
        if (const auto spacing = bay_spacing()) {
            part_into_bays(*spacing, inner, bucks, back, front, named, place);
            return;
        }
        wall_.cavities.back().space = layout_.add_space(named, SpaceKind::cavity, place);
        set_middle(wall_.cavities.back().space, inner, bucks, back, front);
    }

    void close_air(double back, double front, SpaceIndex space) {
        const double left = left_reach(wall_, back, front) + closer, right = right_reach(wall_, back, front) - closer;
        const Loop inner = rectangle({left, wall_.bottom + closer}, {right, wall_.top - closer});
        Prism border = upright(rectangle({0, wall_.bottom}, {wall_.length, wall_.top}), back, front, true);
        cut(border, inner);
        for (const Loop& opening : wall_.openings) cut(border, opening);
        wall_.outer_panels.push_back(layout_.panels.size());
        layout_.add_panel(wall_.id + "/closer", "end of the air gap in " + wall_.name, "wood", Layer::framing, std::move(border));
        std::vector<Loop> bucks;
        for (const Loop& opening : wall_.openings) {
            bucks.push_back(rectangle({opening[0].x - closer, std::max(opening[0].y - closer, inner[0].y)},
                                      {opening[2].x + closer, std::min(opening[2].y + closer, inner[2].y)}));
            Prism buck = upright(bucks.back(), back, front, false);
            cut(buck, opening);
            layout_.add_panel(wall_.id + "/return-" + std::to_string(bucks.size()), "edge of the air gap in " + wall_.name,
                              "wood", Layer::framing, std::move(buck));
        }
        set_middle(space, inner, bucks, back, front);
    }

    void set_middle(SpaceIndex space, const Loop& inner, const std::vector<Loop>& bucks, double back, double front) {
        std::vector<CutFigure> pieces = remainder(inner, bucks);
        if (pieces.size() != 1) {
            layout_.faults.add(layout_.space_places[space.value],
                               "the openings cut the air in " + wall_.name + " into " + std::to_string(pieces.size()) + " pieces",
                               "make the openings lower, narrower or fewer");
            return;
        }
        Frame frame = wall_.frame;
        frame.origin = frame.at(0, 0, (back + front) / 2);
        layout_.set_middle(space, frame, std::move(pieces.front().figure));
    }

    Skin level_plate(const std::string& name, double back, double front, double low, double high, bool is_bottom) {
        const auto end = [&](double n, bool right) {
            return Point2{right ? wall_.length + wall_.slant.right_slant * n : wall_.slant.left_slant * n, -n};
        };
        Prism prism;
        prism.frame = plan_frame(wall_.frame);
        prism.outline = {end(front, false), end(front, true), end(back, true), end(back, false)};
        prism.heights = {{low}, {high}};
        for (const Loop& opening : wall_.openings) {
            if (!is_bottom || opening[0].y - stud > plate) continue;
            cut(prism, rectangle({opening[0].x - stud, -front - 1}, {opening[2].x + stud, -back + 1}));
        }
        Skin skin{.name = name, .frame = prism.frame, .back = low, .front = high, .extent = prism.outline};
        skin.panels.push_back(layout_.add_panel(wall_.id + (is_bottom ? "/bottom-plate" : "/top-plate"),
                                                name + " of " + wall_.name, "wood", Layer::framing, std::move(prism)));
        return skin;
    }

    Layout& layout_;
    WallLayout& wall_;
    const Assembly& assembly_;
};

/// Where a wall of that description stands among others of its story; openings in it are taken from the description.
void take_openings(Layout& layout, WallLayout& wall) {
    for (const OpeningDescription& opening : layout.described.openings) {
        if (opening.in != wall.described || opening.story != wall.story) continue;
        const Loop loop = rectangle({opening.along - opening.width / 2, opening.sill},
                                    {opening.along + opening.width / 2, opening.sill + opening.height});
        const double room = plate + stud;
        if (loop[0].x < room || loop[2].x > wall.length - room)
            layout.faults.add(
                opening.place,
                opening.id + " does not fit into " + wall.name + ", which is " + std::to_string(wall.length) + " m long",
                "move it, or make it narrower");
        if (loop[2].y + stud > wall.plate_top - double_top_plate - 0.01)
            layout.faults.add(opening.place, opening.id + " reaches into the top plate of " + wall.name, "make it lower");
        for (const Loop& other : wall.openings) {
            const bool apart = loop[0].x - 2 * stud > other[2].x + 2 * stud || other[0].x - 2 * stud > loop[2].x + 2 * stud ||
                               loop[0].y - 2 * stud > other[2].y + 2 * stud || other[0].y - 2 * stud > loop[2].y + 2 * stud;
            if (!apart)
                layout.faults.add(opening.place, opening.id + " runs into another opening of " + wall.name, "move one of them");
        }
        wall.openings.push_back(loop);
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
        take_openings(layout, wall);
        const auto& names = described.stories[story].cavities;
        WallBuilder(layout, wall, assembly).build(i < names.size() ? names[i] : std::vector<NamedSpace>(), {});
        layout.walls.push_back(std::move(wall));
    }
}

/// The plan of a partition, reaching a little into what it meets at its ends, so that no crack is left there.
Loop plan_of(const WallLayout& wall) {
    constexpr double more = 0.003;
    const auto at = [&](double u, double n) {
        const Point p = wall.frame.at(u, 0, n);
        return Point2{p.x, p.y};
    };
    return {at(-more, wall.inside()), at(wall.length + more, wall.inside()), at(wall.length + more, wall.outside()),
            at(-more, wall.outside())};
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

    WallLayout wall;
    wall.id = wall.described = described.id;
    wall.name = described.name.empty() ? spoken(described.id) : described.name;
    wall.story = described.story;
    const Point2 whole = to - from;
    wall.length = std::sqrt(dot(whole, whole));
    const Vector u{along.x, along.y, 0};
    const StoryLayout& level = layout.stories[described.story];
    wall.frame = {{from.x, from.y, level.floor}, u, {0, 0, 1}, {u.y, -u.x, 0}};
    wall.slant = {0, 0, wall.length, 0};
    wall.plate_top = wall.top = level.plate_top - level.floor;
    take_openings(layout, wall);
    WallBuilder(layout, wall, assembly).build({described.cavity}, described.place);
    layout.walls.push_back(std::move(wall));
}

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
        if (room.story != story) continue;
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
        room.space = layout.add_space({names[i]->id, names[i]->name}, names[i]->kind, names[i]->place, names[i]->source);
        Prism ceiling;
        ceiling.frame = level_frame(level.ceiling);
        ceiling.outline = figure.outline;
        ceiling.cuts = figure.holes;
        ceiling.gap_of_cut.resize(figure.holes.size());
        ceiling.heights = {{0}, {level.plate_top - level.ceiling}};
        room.ceiling = {.name = "ceiling",
                        .frame = ceiling.frame,
                        .back = 0,
                        .front = level.plate_top - level.ceiling,
                        .extent = figure.outline};
        room.ceiling.panels.push_back(layout.add_panel(names[i]->id + "/ceiling", "ceiling of " + names[i]->id, "drywall",
                                                       Layer::interior, std::move(ceiling)));
        layout.set_middle(room.space, level_frame(level.floor + 0.12), figure);
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

void lay_out_floor(Layout& layout, std::size_t story) {
    StoryLayout& level = layout.stories[story];
    if (story == 0) return;  // stands on the foundation
    const double low = layout.stories[story - 1].plate_top;
    Prism boards;
    boards.frame = level_frame(level.floor);
    boards.outline = layout.described.outline;
    boards.heights = {{-subfloor}, {0}};
    level.floor_skin = {.name = "floor", .frame = boards.frame, .back = -subfloor, .front = 0, .extent = boards.outline};
    level.floor_skin.panels.push_back(
        layout.add_panel("floor-" + std::to_string(story + 1), "floor boards", "wood", Layer::framing, std::move(boards)));
    for (const WallLayout& wall : layout.walls) {
        if (!wall.exterior || wall.story != story - 1) continue;
        Prism rim;
        rim.frame = wall.frame;
        rim.outline = rectangle({0, wall.plate_top}, {wall.length, level.floor - subfloor - wall.frame.origin.z});
        rim.heights = {{-stud}, {0}};
        rim.slant = wall.slant;
        layout.add_panel(wall.id + "/rim-joist", "rim joist over " + wall.name, "wood", Layer::framing, std::move(rim));
    }
    const std::vector<double> inward(layout.edges(), -2 * stud);
    layout.set_middle(level.below, level_frame((low + level.floor - subfloor) / 2),
                      {offset_outline(layout.described.outline, inward), {}});
}

}  // namespace

void lay_out_shell(Layout& layout) {
    const HouseDescription& described = layout.described;
    layout.outdoors = layout.add_space(described.outdoors, SpaceKind::outdoors, {});
    layout.attic = layout.add_space(described.roof.attic, SpaceKind::cavity, described.roof.place);
    const Assembly& assembly = described.assemblies[described.wall_assembly];
    double floor = 0;
    for (std::size_t i = 0; i < described.stories.size(); ++i) {
        const StoryDescription& story = described.stories[i];
        StoryLayout level;
        if (i > 0) {
            floor += story.floor;
            level.below = layout.add_space(story.void_below, SpaceKind::cavity, {});
            layout.stories.back().above = level.below;
        }
        level.floor = floor;
        level.ceiling = floor + story.height;
        level.plate_top = level.ceiling + assembly.layers.back().thickness;
        level.above = layout.attic;
        floor = level.plate_top;
        layout.stories.push_back(std::move(level));
    }
    for (std::size_t i = 0; i < described.stories.size(); ++i) lay_out_exterior(layout, i);
    for (std::size_t i = 0; i < described.partitions.size(); ++i) lay_out_partition(layout, i);
    for (std::size_t i = 0; i < described.stories.size(); ++i) {
        lay_out_rooms(layout, i);
        lay_out_floor(layout, i);
    }
    for (const BulkheadDescription& bulkhead : described.bulkheads) lay_out_bulkhead(layout, bulkhead);
}

}  // namespace seamward
