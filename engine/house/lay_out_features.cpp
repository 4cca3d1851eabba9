// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <set>

#include "base/nearest_word.h"
#include "house/place_features.h"

namespace seamward {

namespace {

/// Finds what each feature is on, and hands it over to whoever knows that kind of place.
class FeatureSorter {
public:
    explicit FeatureSorter(Layout& layout) : layout_(layout), cutter_(layout) {}

    void place(const FeatureDescription& feature) {
        const auto has = [&](Host host) {
            return std::find(feature.type->hosts.begin(), feature.type->hosts.end(), host) != feature.type->hosts.end();
        };
        const auto makes = [&](FeatureGap::At at) {
            for (std::size_t i = 0; i < feature.gaps.size(); ++i) {
                if (feature.type->gaps[i].at == at && !feature.gaps[i].left_out) return true;
            }
            return false;
        };
        if (has(Host::eave)) {
            place_on_eaves(cutter_, feature, edges_of(feature));
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
        } else if ((has(Host::foundation) || has(Host::rim)) && !has(Host::wall)) {
            for (const std::size_t edge : edges_of(feature)) {
                place_on_foundation(cutter_, feature, edge);
                break;
            }
        } else {
            on_upright(feature, has(Host::gable) && !has(Host::wall), makes(FeatureGap::At::back), makes(FeatureGap::At::inner));
        }
    }

private:
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

    void unknown(const FeatureDescription& feature, const std::string& id, std::vector<std::string_view> known) {
        cutter_.report(feature, "there is no wall, partition or opening \"" + id + "\"", suggestion(id, known));
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
            if (word(feature) != bulkhead.id || !feature.at) continue;
            place_on_level(cutter_, feature, bulkhead.bottom, bulkhead.space, layout_.room_space(bulkhead.story, *feature.at));
            return true;
        }
        return false;
    }

    void on_level(const FeatureDescription& feature, bool ceiling) {
        if (on_bulkhead(feature)) return;
        const RoomLayout* room = feature.at ? layout_.room_at(feature.story, *feature.at) : nullptr;
        if (room == nullptr) {
            cutter_.report(feature, feature.at ? "its point lies in no room" : "at is missing",
                           "write at: [4.5 m, 2 m], a point of the plan");
            return;
        }
        const StoryLayout& story = layout_.stories[feature.story];
        if (ceiling)
            place_on_level(cutter_, feature, room->ceiling, story.above, layout_.under_ceiling(feature.story, *feature.at));
        else if (story.below.valid())
            place_on_level(cutter_, feature, story.floor_skin, room->space, story.below);
        else
            cutter_.report(feature, "there is no air under the floor", "describe the fill or the crawl space in foundation");
    }

    void on_roof(const FeatureDescription& feature) {
        with_roof_skin(feature,
                       [&](const Skin& skin) { place_on_level(cutter_, feature, skin, layout_.outdoors, layout_.attic); });
    }

    void on_roof_pipe(const FeatureDescription& feature) {
        with_roof_skin(feature, [&](const Skin& skin) { place_roof_pipe(cutter_, feature, skin); });
    }

    template <class Place>
    void with_roof_skin(const FeatureDescription& feature, Place place) {
        for (const RoofFace& face : layout_.roof) {
            if (!feature.at || !is_inside(face.plan, *feature.at)) continue;
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
        cutter_.report(feature, feature.at ? "its point lies under no roof" : "at is missing",
                       "write at: [4.5 m, 2 m], a point of the plan");
    }

    void on_upright(const FeatureDescription& feature, bool gable, bool can, bool duct) {
        if (feature.on.size() != 1) {
            cutter_.report(feature, feature.on.empty() ? "on is missing" : "it goes on one thing only",
                           "write on: and the id of a wall, a partition or an opening");
            return;
        }
        const std::string& id = feature.on.front();
        if (layout_.leaves.contains(id)) {
            place_on_opening(cutter_, feature, id);
            return;
        }
        for (const WallLayout& wall : layout_.walls) {
            const bool named = wall.described == id && wall.story == feature.story;
            if (!named && (wall.id != id || wall.id == wall.described)) continue;
            if (feature.type->id == "weep-screed")
                place_weep_screed(cutter_, feature, wall);
            else if (can)
                place_can(cutter_, feature, wall);
            else if (duct)
                place_duct(cutter_, feature, wall);
            else
                place_on_wall(cutter_, feature, wall, gable);
            return;
        }
        std::vector<std::string_view> known;
        for (const WallLayout& wall : layout_.walls) known.emplace_back(wall.id);
        for (const auto& [name, leaf] : layout_.leaves) known.emplace_back(name);
        unknown(feature, id, std::move(known));
    }

    Layout& layout_;
    Cutter cutter_;
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
