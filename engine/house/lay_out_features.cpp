// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <map>
#include <memory>

#include "base/nearest_word.h"
#include "house/framing.h"
#include "house/place_features.h"

namespace seamward {

namespace {

/// Finds what each feature is on, and hands it over to whoever knows that kind of place.
class FeatureSorter {
public:
    explicit FeatureSorter(Layout& layout) : layout_(layout), cutter_(layout) {
        for (const FeatureDescription& feature : layout.described.features) {
            if (is_floor_duct(feature) && !feature.space.id.empty()) floor_ducts_[feature.space.id];
        }
        for (const FeatureDescription& feature : layout.described.features) {
            const auto duct = floor_ducts_.find(feature.space.id);
            if (duct != floor_ducts_.end() && !is_floor_duct(feature)) duct->second.push_back(&feature);
        }
    }

    /// What cannot be placed is reported, once.
    void place(const FeatureDescription& feature) try {
        layout_.check();
        check_host(cutter_, feature);
        sort(feature);
    } catch (const Misplaced&) {}

private:
    void sort(const FeatureDescription& feature) {
        const auto has = [&](Host host) {
            return std::find(feature.type->hosts.begin(), feature.type->hosts.end(), host) != feature.type->hosts.end();
        };
        const auto makes = [&](FeatureGap::At at) {
            for (std::size_t i = 0; i < feature.gaps.size(); ++i) {
                if (feature.type->gaps[i].at == at && !feature.gaps[i].left_out) return true;
            }
            return false;
        };
        const auto duct = floor_ducts_.find(feature.space.id);
        if (duct != floor_ducts_.end() && !is_floor_duct(feature)) return;  // placed with that duct
        if (is_floor_duct(feature)) {
            place_floor_duct(cutter_, feature,
                             duct == floor_ducts_.end() ? std::vector<const FeatureDescription*>() : duct->second);
        } else if (has(Host::duct)) {
            cutter_.refuse(feature, "no duct of that air comes down through a floor",
                           "write space: {id: ...} as that duct has it");
        } else if (has(Host::eave)) {
            on_eaves(feature);
        } else if (has(Host::block_wall) && on_block_wall(feature)) {
            return;
        } else if (has(Host::ceiling) || has(Host::floor)) {
            if (makes(FeatureGap::At::inner))
                has(Host::ceiling) ? place_ceiling_duct(cutter_, feature) : place_floor_well(cutter_, feature);
            else
                on_level(feature, has(Host::ceiling) && (!has(Host::floor) || word(feature) == "ceiling"));
        } else if (has(Host::roof)) {
            if (!makes(FeatureGap::At::outer))
                on_roof(feature);
            else if (makes(FeatureGap::At::through))
                on_roof_pipe(feature);
            else
                place_duct_cap(cutter_, feature);
        } else if ((has(Host::foundation) || has(Host::rim)) && !on_partition(feature) &&
                   (!has(Host::wall) || below_walls(feature))) {
            place_on_foundation(cutter_, feature, edges_of(feature));
        } else {
            on_upright(feature, has(Host::gable) && !has(Host::wall), makes(FeatureGap::At::back), makes(FeatureGap::At::inner));
        }
    }

    [[nodiscard]] bool on_partition(const FeatureDescription& feature) const {
        return std::any_of(layout_.walls.begin(), layout_.walls.end(),
                           [&](const WallLayout& wall) { return !wall.exterior && wall.described == word(feature); });
    }

    /// Of what goes into walls and foundations: whether it lies lower than the floor.
    [[nodiscard]] bool below_walls(const FeatureDescription& feature) const {
        return !layout_.foundation_walls.empty() && feature.up.value_or(-1) < 0;
    }

    static std::string word(const FeatureDescription& feature) { return feature.on.empty() ? "" : feature.on.front(); }

    /// The edges of the outline whose walls are named; all when none is.
    [[nodiscard]] std::vector<std::size_t> edges_of(const FeatureDescription& feature) {
        const std::vector<std::string>& walls = layout_.described.walls;
        std::vector<std::size_t> edges;
        for (const std::string& id : feature.on) {
            const auto wall = std::find(walls.begin(), walls.end(), id);
            if (wall == walls.end())
                unknown(feature, id, {walls.begin(), walls.end()});
            else
                edges.push_back(static_cast<std::size_t>(wall - walls.begin()));
        }
        if (feature.on.empty()) {
            for (std::size_t i = 0; i < walls.size(); ++i) edges.push_back(i);
        }
        return edges;
    }

    [[noreturn]] void unknown(const FeatureDescription& feature, const std::string& id, std::vector<std::string_view> known) {
        cutter_.refuse(feature, "there is no wall, partition or opening \"" + id + "\"", suggestion(id, known));
    }

    /// Boxes under eaves that gables part hold air of their own: one gap for each, named after the first wall of its box.
    void on_eaves(const FeatureDescription& feature) {
        std::map<std::uint32_t, std::vector<std::size_t>> boxes;
        double whole = 0;
        const auto length_of = [&](std::size_t edge) { return layout_.walls[edge].length; };
        const std::vector<std::size_t> all = edges_of(feature);
        for (const std::size_t edge : all) {
            const EaveLayout& eave = layout_.eaves[edge];
            if (!eave.present && !eave.blocked) continue;
            boxes[eave.present ? eave.air.value : layout_.outdoors.value].push_back(edge);
            whole += length_of(edge);
        }
        if (boxes.size() <= 1) {
            place_on_eaves(cutter_, feature, all);
            return;
        }
        double before = 0;
        for (const auto& [air, edges] : boxes) {
            const double from = before;
            for (const std::size_t edge : edges) before += length_of(edge);
            const double share = (before - from) / whole;
            FeatureDescription part = part_of(feature, "-" + layout_.described.walls[edges.front()]);
            part.on = {layout_.described.walls[edges.front()]};
            if (feature.count)
                part.count = static_cast<std::uint32_t>(std::lround(*feature.count * before / whole) -
                                                        std::lround(*feature.count * from / whole));
            if (part.count == 0U) continue;
            for (std::size_t i = 0; i < part.gaps.size(); ++i) {
                FeatureDescription::Sizes& gap = part.gaps[i];
                const double length = gap.length.value_or(feature.type->gaps[i].length);
                if (length <= 0 || feature.type->gaps[i].form != FeatureGap::Form::line) continue;
                gap.length = length * share;
                if (*gap.length < least_joint)
                    cutter_.refuse(feature, "length is too short to be parted among " + std::to_string(boxes.size()) + " eaves",
                                   "make it longer, or name one wall in on");
            }
            place_on_eaves(cutter_, part, edges);
        }
    }

    bool on_block_wall(const FeatureDescription& feature) {
        std::vector<const BlockRun*> runs;
        for (const BlockRun& run : layout_.block_runs) {
            const std::string whole = run.id + "/" + std::to_string(run.number);
            if (std::any_of(feature.on.begin(), feature.on.end(),
                            [&](const std::string& id) { return id == run.id || id == whole; }))
                runs.push_back(&run);
        }
        if (runs.empty()) return false;
        place_on_block_wall(cutter_, feature, runs);
        return true;
    }

    /// Openings in the lower side of a bulkhead lead from its air into the room.
    bool on_bulkhead(const FeatureDescription& feature) {
        for (const BulkheadLayout& bulkhead : layout_.bulkheads) {
            if (word(feature) != bulkhead.id) continue;
            place_on_level(
                cutter_, feature, bulkhead.bottom,
                {[&](Point2) { return bulkhead.space; }, [&](Point2 p) { return layout_.room_space(bulkhead.story, p); }}, true);
            return true;
        }
        return false;
    }

    void on_level(const FeatureDescription& feature, bool ceiling) {
        if (on_bulkhead(feature)) return;
        const RoomLayout* room = feature.at ? layout_.room_at(feature.story, *feature.at) : nullptr;
        if (room == nullptr)
            cutter_.refuse(feature, feature.at ? "its point lies in no room" : "at is missing",
                           "write at: [4.5 m, 2 m], a point of the plan");
        const std::size_t story = feature.story;
        if (ceiling) {
            on_ceiling(feature, *room);
            return;
        }
        if (!layout_.below_floor(story, *feature.at).valid())
            cutter_.refuse(feature, "there is no air under the floor", "describe the fill or the crawl space in foundation");
        place_on_level(cutter_, feature, floor_of(layout_.stories[story], *room),
                       {[&](Point2) { return room->space; }, [&](Point2 p) { return layout_.below_floor(story, p); }}, false);
    }

    void on_ceiling(const FeatureDescription& feature, const RoomLayout& room) {
        if (room.ceiling.panels.empty())
            cutter_.refuse(feature, "the room is open to the story above", "write the story of its ceiling: story: 2");
        const std::size_t story = feature.story;
        place_on_level(cutter_, feature, room.ceiling,
                       {[&](Point2 p) { return layout_.above_ceiling(story, p); },
                        [&](Point2 p) { return layout_.under_ceiling(story, p); }},
                       true);
    }

    /// The floor of one room.
    const Skin& floor_of(const StoryLayout& story, const RoomLayout& room) {
        skins_.push_back(std::make_unique<Skin>(story.floor_skin));
        skins_.back()->extent = room.figure.outline;
        return *skins_.back();
    }

    /// The attic, or the air in the box of an eave; invalid over walls, blocking and overhangs without a box.
    [[nodiscard]] SpaceIndex under_roof(Point2 p) const {
        const bool inside = is_inside(layout_.described.outline, p);
        for (std::size_t edge = 0; edge < layout_.edges(); ++edge) {
            const EaveLayout& eave = layout_.eaves[edge];
            const WallLayout& wall = layout_.walls[(layout_.stories.size() - 1) * layout_.edges() + edge];
            const Vector off = Point{p.x, p.y, wall.frame.origin.z} - wall.frame.origin;
            const double u = dot(off, wall.frame.u), n = dot(off, wall.frame.n);
            if (inside && eave.blocked && u >= 0 && u <= wall.length && n > -framing::stud && n <= 0) return {};
            if (!inside && eave.present && is_inside(eave.soffit.extent, {u, -n})) return eave.air;
        }
        return inside ? layout_.attic : SpaceIndex();
    }

    [[nodiscard]] LevelAir roof_air() const {
        return {[&](Point2) { return layout_.outdoors; }, [&](Point2 p) { return under_roof(p); }};
    }

    void on_roof(const FeatureDescription& feature) {
        with_roof_skin(feature, [&](const Skin& skin) { place_on_level(cutter_, feature, skin, roof_air(), false); });
    }

    void on_roof_pipe(const FeatureDescription& feature) {
        with_roof_skin(feature, [&](const Skin& skin) { place_roof_pipe(cutter_, feature, skin, roof_air()); });
    }

    template <class Place>
    void with_roof_skin(const FeatureDescription& feature, Place place) {
        for (const RoofFace& face : layout_.roof) {
            if (!feature.at || !is_inside(face.plan, *feature.at)) continue;
            if (!under_roof(*feature.at).valid())
                cutter_.refuse(feature, "under the roof is no air at its place: a wall, or an overhang without a box",
                               "move it inward, over the attic");
            skins_.push_back(std::make_unique<Skin>(face.skin));
            Skin& skin = *skins_.back();
            const Height top = layout_.panels[skin.panels.front()].prisms.front().heights.back();
            skin.back = face.bottom.out;
            skin.front = top.out;
            skin.along = top.along;
            skin.up = top.up;
            place(skin);
            return;
        }
        cutter_.refuse(feature, feature.at ? "its point lies under no roof" : "at is missing",
                       "write at: [4.5 m, 2 m], a point of the plan");
    }

    /// The wall of that story, or by its own id; a partition of one story is found without its story.
    [[nodiscard]] const WallLayout* wall_named(const std::string& id, std::size_t story) const {
        const WallLayout* other = nullptr;
        for (const WallLayout& wall : layout_.walls) {
            if (wall.described == id && wall.story == story) return &wall;
            const bool own_id = wall.id == id && wall.id != wall.described;
            if (other == nullptr && (own_id || (wall.described == id && !wall.exterior))) other = &wall;
        }
        return other;
    }

    void on_upright(const FeatureDescription& feature, bool gable, bool can, bool duct) {
        if (feature.on.size() != 1)
            cutter_.refuse(feature, feature.on.empty() ? "on is missing" : "it goes on one thing only",
                           "write on: and the id of a wall, a partition or an opening");
        const std::string& id = feature.on.front();
        if (layout_.leaves.contains(id)) {
            place_on_opening(cutter_, feature, id);
            return;
        }
        if (const WallLayout* wall = wall_named(id, feature.story)) {
            if (feature.type->id == "weep-screed")
                place_weep_screed(cutter_, feature, *wall);
            else if (can)
                place_can(cutter_, feature, *wall);
            else if (duct)
                place_duct(cutter_, feature, *wall);
            else
                place_on_wall(cutter_, feature, *wall, gable);
            return;
        }
        std::vector<std::string_view> known;
        for (const WallLayout& wall : layout_.walls) known.emplace_back(wall.id);
        for (const auto& [name, leaf] : layout_.leaves) known.emplace_back(name);
        unknown(feature, id, std::move(known));
    }

    Layout& layout_;
    Cutter cutter_;
    std::map<std::string, std::vector<const FeatureDescription*>> floor_ducts_;  ///< what goes on from each, by its air
    std::vector<std::unique_ptr<Skin>> skins_;
};

}  // namespace

void lay_out_features(Layout& layout) {
    FeatureSorter sorter(layout);
    const auto is_cap = [](const FeatureDescription& feature) {
        return std::any_of(feature.type->hosts.begin(), feature.type->hosts.end(), [](Host host) { return host == Host::roof; });
    };
    // What closes a duct over the roof comes after the duct, wherever the file has it.
    for (const bool caps : {false, true}) {
        for (const FeatureDescription& feature : layout.described.features) {
            if (is_cap(feature) == caps) sorter.place(feature);
        }
    }
}

}  // namespace seamward
