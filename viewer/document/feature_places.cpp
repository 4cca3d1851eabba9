// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/feature_places.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "base/diagnostics.h"
#include "document/house_places.h"
#include "house/layout.h"

namespace seamward::viewer {

namespace {

using Toward = FeaturePlace::Toward;

constexpr double reach = 0.2;       ///< meters that a click may lie off: on a pipe before the wall, say
constexpr double foot = -0.03;      ///< how far under the floor a click still is at the foot of the wall
constexpr double same_part = 0.15;  ///< how much nearer the part makes it that was clicked

double beyond(double value, double least, double most) { return std::max({0.0, least - value, value - most}); }

/// A point in a frame.
struct Local {
    double u, v, n;
};

Local local(const Frame& frame, const Point& at) {
    const Vector off = at - frame.origin;
    return {dot(off, frame.u), dot(off, frame.v), dot(off, frame.n)};
}

double off_skin(const Skin& skin, const Point& at) {
    const Local p = local(skin.frame, at);
    const Point2 flat{p.u, p.v};
    const double aside = seamward::is_inside(skin.extent, flat) ? 0.0 : to_edge(skin.extent, flat);
    return std::hypot(aside, beyond(p.n, skin.height(skin.back).at(flat), skin.height(skin.front).at(flat)));
}

Toward start_of(const Frame& frame) {
    if (std::abs(frame.u.x) >= std::abs(frame.u.y)) return frame.u.x > 0 ? Toward::west : Toward::east;
    return frame.u.y > 0 ? Toward::south : Toward::north;
}

Point2 least_corner(const Loop& loop) {
    Point2 least{1e9, 1e9};
    for (const Point2 p : loop) least = {std::min(least.x, p.x), std::min(least.y, p.y)};
    return least;
}

/// To the centimeter: a click is not more exact.
double centimeters(double meters) { return std::round(meters * 100) / 100; }

bool names(const std::string& part, const std::string& id, const std::string& name) {
    return part.starts_with(id + "/") || (!name.empty() && part.ends_with(" of " + name));
}

}  // namespace

struct FeaturePlaces::House {
    HouseDescription described;
    std::vector<FeatureDescription> features;
    Diagnostics faults;
    std::map<std::string, double> widths;
    Layout layout;
    bool compass = false;

    House(const std::string& text, const std::string& shown_as)
        : described(parse_house_yaml(text, shown_as)),
          features(std::exchange(described.features, {})),
          faults(shown_as),
          layout{.described = described, .faults = faults, .widths = widths} {
        lay_out_house(layout);
        faults.throw_if_any();
        for (const char* word : {"north", "south", "east", "west"}) {
            for (const std::string& wall : described.walls) compass = compass || wall.find(word) != std::string::npos;
        }
    }
};

namespace {

/// Looks for the part of the house that a point lies on, nearest first.
class Finder {
public:
    Finder(const Layout& layout, const Point& at, const std::string& part) : layout_(layout), at_(at), part_(part) {}

    std::optional<FeaturePlace> find() {
        for (const WallLayout& wall : layout_.walls) on_wall(wall);
        below_walls();
        on_leaves();
        on_levels();
        on_roof();
        on_eaves();
        on_block_walls();
        return std::move(best_);
    }

private:
    /// Takes the place when it is the nearest so far; null when it is not.
    FeaturePlace* offer(double off, bool clicked) {
        if (off > reach) return nullptr;
        const double rank = off - (clicked ? same_part : 0);
        if (rank >= rank_) return nullptr;
        rank_ = rank;
        best_.emplace();
        return &*best_;
    }

    static void set_upright(FeaturePlace& place, const Frame& frame, double length, const Local& p) {
        place.length = length;
        place.from = start_of(frame);
        place.along = centimeters(std::clamp(p.u, 0.0, length));
        place.up = centimeters(p.v);
    }

    [[nodiscard]] bool has_gable(const WallLayout& wall) const {
        if (!wall.exterior || wall.story + 1 != layout_.stories.size()) return false;
        const RoofDescription& roof = layout_.described.roof;
        const std::size_t edge = static_cast<std::size_t>(&wall - layout_.walls.data()) % layout_.edges();
        if (roof.shape == RoofShape::shed) return edge != roof.low;
        return roof.shape == RoofShape::gable && std::ranges::find(roof.gables, edge) != roof.gables.end();
    }

    void on_wall(const WallLayout& wall) {
        const Local p = local(wall.frame, at_);
        const double top = has_gable(wall) ? wall.top + 20 : wall.plate_top;
        const bool clicked = names(part_, wall.id, wall.name);
        if (!clicked && p.v > wall.plate_top && p.n < wall.inside() - 0.01) return;  // in the attic
        const double off =
            std::hypot(beyond(p.u, 0, wall.length), beyond(p.v, wall.bottom, top), beyond(p.n, wall.inside(), wall.outside()));
        for (std::size_t i = 0; i < wall.openings.size(); ++i) {
            if (seamward::is_inside(wall.openings[i], {p.u, p.v})) return in_opening(wall, i, off);
        }
        FeaturePlace* place = offer(off, clicked);
        if (place == nullptr) return;
        const bool front = p.n > (wall.inside() + wall.outside()) / 2;
        set_upright(*place, wall.frame, wall.length, p);
        place->on = wall.described;
        place->story = wall.story;
        place->called = wall.name;
        place->sheathed = wall.skins.size() > 2;
        place->cladding = layout_.panels[wall.skins.front().panels.back()].material;
        place->cavity = wall.cavities.back().front - wall.cavities.back().back;
        place->outside = wall.exterior && front;
        const double before = wall.exterior || !front ? wall.inside() - 0.03 : wall.outside() + 0.03;
        const SpaceIndex room = space_before(wall, p, before);
        if (room.valid()) place->room = layout_.house.survey[room].label();
        if (!wall.exterior && room.valid()) place->side = layout_.house.survey[room].id;
        place->hosts = {wall.exterior ? p.v > wall.plate_top ? Host::gable : Host::wall : Host::partition};
        if (p.v < foot && wall.exterior) {  // over the edge of a floor
            if (wall.story > 0) place->hosts = {Host::rim};
            if (wall.story == 0) set_low(*place, {Host::wall});
        } else {
            place->up = std::max(place->up, 0.0);
        }
    }

    /// Beside or under the edge of the lowest floor.
    void set_low(FeaturePlace& place, std::vector<Host> hosts) const {
        if (!layout_.foundation_walls.empty()) hosts.push_back(Host::foundation);
        if (!layout_.stories.front().rims.empty()) hosts.push_back(Host::rim);
        place.hosts = std::move(hosts);
        place.base = layout_.ground;
    }

    [[nodiscard]] SpaceIndex space_before(const WallLayout& wall, const Local& p, double n) const {
        const Point there = wall.frame.at(p.u, std::clamp(p.v, 0.1, wall.plate_top - 0.1), n);
        if (const BulkheadLayout* box = layout_.bulkhead_at(there)) return box->space;
        return layout_.room_space(wall.story, {there.x, there.y});
    }

    void in_opening(const WallLayout& wall, std::size_t number, double off) {
        for (const OpeningDescription& opening : layout_.described.openings) {
            if (opening.in != wall.described || opening.story != wall.story || opening.kind == OpeningKind::crawl_door) continue;
            if (number-- > 0) continue;
            set_opening(opening, off);
            return;
        }
    }

    void set_opening(const OpeningDescription& opening, double off) {
        if (opening.kind == OpeningKind::archway) return;
        FeaturePlace* place = offer(off, part_.starts_with(opening.id + "/"));
        if (place == nullptr) return;
        place->hosts = {Host::opening};
        place->on = opening.id;
        place->called = opening.name.empty() ? spoken(opening.id) : opening.name;
        place->opening = opening.kind;
        place->hollow = !opening.frame.id.empty();
    }

    void on_leaves() {
        for (const OpeningDescription& opening : layout_.described.openings) {
            const auto leaf = layout_.leaves.find(opening.id);
            if (leaf != layout_.leaves.end()) set_opening(opening, off_skin(leaf->second.skin, at_));
        }
    }

    /// The masonry and the edge of the lowest floor.
    void below_walls() {
        if (layout_.foundation_walls.empty()) return;
        for (std::size_t edge = 0; edge < layout_.edges(); ++edge) {
            const WallLayout& wall = layout_.walls[edge];
            const WallLayout& stem = layout_.foundation_walls[edge];
            const Local p = local(wall.frame, at_);
            if (p.v > wall.bottom - 0.001) continue;
            const double off = std::hypot(beyond(p.u, 0, wall.length), beyond(p.v, stem.bottom, 0),
                                          beyond(p.n, stem.skins.front().back, std::max(0.0, wall.outside())));
            FeaturePlace* place = offer(off, names(part_, wall.id, wall.name) || part_.starts_with(stem.id));
            if (place == nullptr) continue;
            set_upright(*place, wall.frame, wall.length, p);
            set_low(*place, {});
            place->on = wall.described;
            place->called = wall.name;
            place->outside = true;
        }
    }

    void set_level(FeaturePlace& place, Host host, const Loop& within) const {
        place.hosts = {host};
        place.corner = least_corner(within);
        set_at(place);
    }

    /// A point as far from the corner as people measure.
    void set_at(FeaturePlace& place) const {
        place.at = place.corner + Point2{centimeters(at_.x - place.corner.x), centimeters(at_.y - place.corner.y)};
    }

    void on_levels() {
        for (std::size_t story = 0; story < layout_.stories.size(); ++story) {
            const StoryLayout& level = layout_.stories[story];
            for (const RoomLayout& room : level.rooms) {
                if (!room.ceiling.panels.empty())
                    on_room(room, story, Host::ceiling, off_skin(room.ceiling, at_), part_.ends_with("/ceiling"));
                Skin floor = level.floor_skin;
                floor.extent = room.figure.outline;
                if (!floor.panels.empty() && layout_.below_floor(story, {at_.x, at_.y}).valid())
                    on_room(room, story, Host::floor, off_skin(floor, at_), part_.starts_with("floor-") || part_ == "slab");
            }
        }
        for (const BulkheadLayout& box : layout_.bulkheads) {
            FeaturePlace* place = offer(off_skin(box.bottom, at_), part_.starts_with(box.id + "/"));
            if (place == nullptr) continue;
            set_level(*place, Host::ceiling, box.plan);
            place->on = box.id;
            place->called = layout_.house.survey[box.space].label();
            place->story = box.story;
        }
    }

    void on_room(const RoomLayout& room, std::size_t story, Host host, double off, bool clicked) {
        for (const Loop& hole : room.figure.holes) {
            if (seamward::is_inside(hole, {at_.x, at_.y})) return;
        }
        FeaturePlace* place = offer(off, clicked);
        if (place == nullptr) return;
        set_level(*place, host, room.figure.outline);
        place->story = story;
        place->joists = story > 0 || !layout_.stories.front().rims.empty();
        place->called = place->room = layout_.house.survey[room.space].label();
    }

    void on_roof() {
        for (const RoofFace& face : layout_.roof) {
            const Point2 flat{at_.x, at_.y};
            if (!seamward::is_inside(face.plan, flat)) continue;
            const Height top = layout_.panels[face.skin.panels.front()].prisms.front().heights.back();
            FeaturePlace* place = offer(beyond(at_.z, face.bottom.at(flat), top.at(flat)),
                                        part_.starts_with("roof/") || part_.starts_with("roof "));
            if (place == nullptr) continue;
            set_level(*place, Host::roof, face.plan);
            for (const RoofFace& other : layout_.roof) {
                const Point2 least = least_corner(other.plan);
                place->corner = {std::min(place->corner.x, least.x), std::min(place->corner.y, least.y)};
            }
            set_at(*place);
        }
    }

    void on_eaves() {
        for (std::size_t edge = 0; edge < layout_.eaves.size(); ++edge) {
            const EaveLayout& eave = layout_.eaves[edge];
            const WallLayout& wall = layout_.walls[(layout_.stories.size() - 1) * layout_.edges() + edge];
            double off = 1e9;
            if (eave.present) off = std::min(off_skin(eave.soffit, at_), off_skin(eave.fascia, at_));
            if (eave.blocked) off = std::min(off, off_skin(eave.blocking, at_));
            FeaturePlace* place = offer(off, names(part_, wall.id, wall.name) || part_.ends_with(" along " + wall.name));
            if (place == nullptr) continue;
            set_upright(*place, wall.frame, wall.length, local(wall.frame, at_));
            place->hosts = {Host::eave};
            place->on = wall.described;
            place->called = spoken(wall.described);
        }
    }

    void on_block_walls() {
        for (const BlockRun& run : layout_.block_runs) {
            const std::string id = run.id + "/" + std::to_string(run.number);
            const double off = std::min({off_skin(run.left, at_), off_skin(run.right, at_), off_skin(run.top, at_)});
            FeaturePlace* place = offer(off, part_.starts_with(id + "/"));
            if (place == nullptr) continue;
            const Local p = local(run.frame, at_);
            set_upright(*place, run.frame, run.length, p);
            place->hosts = {Host::block_wall};
            place->on = id;
            place->side = p.n < 0 ? "left" : "right";
            place->meets_house = run.start.has_value() != run.end.has_value();
            place->called = spoken(run.id);
        }
    }

    const Layout& layout_;
    Point at_;
    const std::string& part_;
    std::optional<FeaturePlace> best_;
    double rank_ = 1e9;
};

}  // namespace

FeaturePlaces::FeaturePlaces(const std::string& house, const std::string& shown_as)
    : house_(std::make_unique<House>(house, shown_as)) {}

FeaturePlaces::~FeaturePlaces() = default;

std::optional<FeaturePlace> FeaturePlaces::place(const Point& at, const std::string& part) const {
    std::optional<FeaturePlace> found = Finder(house_->layout, at, part).find();
    if (found) found->compass = house_->compass;
    return found;
}

const FeatureDescription* FeaturePlaces::feature(const std::string& id) const {
    const auto at = std::ranges::find(house_->features, id, &FeatureDescription::id);
    return at == house_->features.end() ? nullptr : &*at;
}

std::optional<FeaturePlace> FeaturePlaces::place_of(const FeatureDescription& feature, const Point& gap) const {
    if (feature.on.size() > 1) return std::nullopt;
    const std::string on = feature.on.empty() ? "" : feature.on.front();
    const bool above =
        on == "ceiling" || (on.empty() && std::ranges::find(feature.type->hosts, Host::ceiling) != feature.type->hosts.end());
    std::optional<FeaturePlace> found = place(gap, on == "floor" ? "slab" : above ? "/ceiling" : on + "/");
    if (!found || !goes_on(*feature.type, *found)) return std::nullopt;
    const bool named = on.empty() || on == "ceiling" || on == "floor" || on == found->on || found->on.starts_with(on + "/");
    if (!named || (!found->level() && on.empty())) return std::nullopt;
    if (feature.along) found->along = *feature.along;
    if (feature.up) found->up = *feature.up;
    if (feature.at) found->at = *feature.at;
    return found;
}

}  // namespace seamward::viewer
