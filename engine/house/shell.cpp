// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <numeric>

#include "house/framing.h"
#include "house/stories.h"

namespace seamward {

namespace {

using namespace framing;

std::string numbered(const std::string& base, std::size_t story) {
    return story == 0 ? base : base + "-" + std::to_string(story + 1);
}

/// Where a wall's layers begin and end along n.
struct Depth {
    double inside = 0, outside = 0;
};

Depth depth_of(const Assembly& assembly, bool exterior) {
    const auto sum = [](double thick, const WallLayer& layer) { return thick + layer.thickness; };
    const auto last_air =
        std::find_if(assembly.layers.rbegin(), assembly.layers.rend(), [](const WallLayer& layer) { return layer.is_air(); });
    const double whole = std::accumulate(assembly.layers.begin(), assembly.layers.end(), 0.0, sum);
    const double cladding = std::accumulate(last_air + 1, assembly.layers.rend(), 0.0, sum);
    const double outside = exterior ? cladding : whole / 2;
    return {outside - whole, outside};
}

class WallBuilder {
public:
    /// `under` is the same partition one story down, where its air goes on up into this one.
    WallBuilder(Layout& layout, WallLayout& wall, const Assembly& assembly, const WallLayout* under = nullptr)
        : layout_(layout), wall_(wall), assembly_(assembly), under_(under) {}

    void build(const std::vector<NamedSpace>& cavity_names, Place place) {
        const std::vector<WallLayer>& layers = assembly_.layers;
        const auto last_air = std::find_if(layers.rbegin(), layers.rend(), [](const WallLayer& l) { return l.is_air(); });
        const std::size_t stud_layer = static_cast<std::size_t>(layers.rend() - last_air) - 1;
        double out = depth_of(assembly_, wall_.exterior).outside;
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

    /// Where layers begin that stand on the floor, or go on down through it.
    [[nodiscard]] double foot() const { return wall_.open_below ? wall_.bottom : 0; }

    void finish_skin(Skin& skin, bool outer) {
        skin.frame = wall_.frame;
        skin.extent =
            outer ? rectangle({0, wall_.bottom}, {wall_.length, wall_.top}) : rectangle({0, foot()}, {wall_.length, wall_.plate_top});
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
        const double low = outer ? wall_.bottom : foot(), high = outer ? wall_.top : wall_.plate_top;
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
        const double low = wall_.open_below ? wall_.bottom : plate;
        const double high = wall_.plate_top - (wall_.open_above ? 0 : double_top_plate);
        // The corner posts reach past the slant of the neighbor's cavity.
        const double left = wall_.slant.left_reach(back, front) + stud, right = wall_.slant.right_reach(back, front) - stud;
        check_room(left, right);
        if (!wall_.open_below) wall_.bottom_plate = level_plate("bottom plate", back, front, 0, low, true);
        if (!wall_.open_above) wall_.top_plate = level_plate("top plate", back, front, high, wall_.plate_top, false);
        wall_.left_post = add_post("/post-left", {0, low}, {left, high}, back, front);
        wall_.right_post = add_post("/post-right", {right, low}, {wall_.length, high}, back, front);

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
            if (wall_.open_below || wall_.open_above)
                layout_.faults.add(place, "the air in " + wall_.name + " goes on from story to story",
                                   "leave it out of stud_bays");
            part_into_bays(*spacing, inner, bucks, back, front, named, place);
            return;
        }
        WallCavity& cavity = wall_.cavities.back();
        cavity.inner = inner;
        cavity.returns = bucks;
        cavity.space = under_ != nullptr ? under_->cavities.back().space : layout_.add_space(named, SpaceKind::cavity, place);
        if (wall_.exterior) set_middle(cavity.space, inner, bucks, back, front);
    }

    /// The post that ends the air. Openings through it run along the wall, so it is pulled that way where its end is square.
    std::size_t add_post(const char* id, Point2 least, Point2 most, double back, double front) {
        const std::string name = "corner post of " + wall_.name;
        if (wall_.exterior)
            return layout_.add_panel(wall_.id + id, name, "wood", Layer::framing,
                                     upright(rectangle(least, most), back, front, true));
        const Frame end{wall_.frame.origin, wall_.frame.n * -1, wall_.frame.v, wall_.frame.u};
        return layout_.add_panel(wall_.id + id, name, "wood", Layer::framing,
                                 plain_prism(end, rectangle({-front, least.y}, {-back, most.y}), least.x, most.x));
    }

    void close_air(double back, double front, SpaceIndex space) {
        const double left = wall_.slant.left_reach(back, front) + closer, right = wall_.slant.right_reach(back, front) - closer;
        check_room(left, right);
        const Loop inner = rectangle({left, wall_.bottom + closer}, {right, wall_.top - closer});
        Prism border = upright(rectangle({0, wall_.bottom}, {wall_.length, wall_.top}), back, front, true);
        cut(border, inner);
        for (const Loop& opening : wall_.openings) cut(border, opening);
        wall_.outer_panels.push_back(layout_.panels.size());
        wall_.cavities.back().closer = layout_.panels.size();
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
        wall_.cavities.back().returns = bucks;
        set_middle(space, inner, bucks, back, front);
    }

    void check_room(double left, double right) {
        if (right - left >= 0.05) return;
        layout_.faults.add({}, "the corners at both ends of " + wall_.name + " leave no room for the air in it",
                           "make it longer, or its layers thinner");
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
    const WallLayout* under_;
};

/// Where a wall of that description stands among others of its story; openings in it are taken from the description.
void take_openings(Layout& layout, WallLayout& wall, const Depth& depth) {
    for (const OpeningDescription& opening : layout.described.openings) {
        if (opening.in != wall.described || opening.story != wall.story || opening.kind == OpeningKind::crawl_door) continue;
        const Loop loop = rectangle({opening.along - opening.width / 2, opening.sill},
                                    {opening.along + opening.width / 2, opening.sill + opening.height});
        const double room = plate + stud;
        if (loop[0].x < wall.slant.left_reach(depth.inside, depth.outside) + room ||
            loop[2].x > wall.slant.right_reach(depth.inside, depth.outside) - room)
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
        take_openings(layout, wall, depth_of(assembly, true));
        const auto& names = described.stories[story].cavities;
        WallBuilder(layout, wall, assembly).build(i < names.size() ? names[i] : std::vector<NamedSpace>(), {});
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
        WallBuilder(layout, wall, assembly, story > described.story ? &layout.walls.back() : nullptr)
            .build({described.cavity}, described.place);
        layout.walls.push_back(std::move(wall));
    }
    set_cavity_middle(layout, first);
}

}  // namespace

void lay_out_shell(Layout& layout) {
    const HouseDescription& described = layout.described;
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
    find_ends(layout);
    for (std::size_t i = 0; i < described.stories.size(); ++i) {
        lay_out_rooms(layout, i);
        lay_out_floor(layout, i);
    }
    for (const BulkheadDescription& bulkhead : described.bulkheads) lay_out_bulkhead(layout, bulkhead);
}

}  // namespace seamward
