// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/build_house.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <string_view>

#include "house/layout.h"

namespace seamward {

namespace {

/// Meshes of all panels. A panel that cuts leave nothing of is no part.
std::vector<Part> make_parts(std::vector<Panel>& panels, const RunContext& context) {
    std::vector<Part> parts;
    parts.reserve(panels.size());
    for (Panel& panel : panels) {
        context.check();
        Part part;
        part.id = std::move(panel.id);
        part.name = std::move(panel.name);
        part.material = std::move(panel.material);
        part.layer = panel.layer;
        for (const Prism& prism : panel.prisms) add_prism(prism, part.mesh, part.bounds);
        if (!part.mesh.triangles.empty()) parts.push_back(std::move(part));
    }
    return parts;
}

/// The floors of the attic and of the crawl space, by the outline of the house.
void measure_vented_spaces(Layout& layout) {
    const double floor = doubled_area(layout.described.outline) / 2;
    layout.house.vented.push_back({layout.attic, floor, "attic"});
    const SpaceIndex below = layout.stories.front().below;
    if (layout.described.foundation.kind == FoundationKind::crawl_space && below.valid())
        layout.house.vented.push_back({below, floor, "under-floor"});
}

/// What provisions of codes ask of how a house is built.
BuiltOf built_of(const HouseDescription& described) {
    BuiltOf built;
    built.cladding = {described.assemblies[described.wall_assembly].layers.front().material};
    constexpr std::array<const char*, 3> foundations{"slab", "crawl-space", "basement"};
    built.foundation = foundations.at(static_cast<std::size_t>(described.foundation.kind));
    const auto tell = [&](const char* word, bool has) { (has ? built.has : built.without).emplace_back(word); };
    const auto any_feature = [&](std::initializer_list<std::string_view> types) {
        return std::any_of(described.features.begin(), described.features.end(), [&](const FeatureDescription& feature) {
            return std::find(types.begin(), types.end(), feature.type->id) != types.end();
        });
    };
    tell("attic", true);
    tell("garage", std::any_of(described.rooms.begin(), described.rooms.end(),
                               [](const RoomDescription& room) { return room.kind == SpaceKind::attached; }));
    tell("dryer", any_feature({"dryer-outlet", "dryer-floor-duct"}));
    tell("fuel-appliances", any_feature({"combustion-air-opening", "gas-riser", "gas-stub", "gas-line-floor", "flue-collar"}));
    tell("chimney", any_feature({"chimney-cap", "chimney-joint", "chimney-framing"}));
    tell("metal-flue", any_feature({"flue-collar", "flue-shaft-top"}));
    return built;
}

/// Which line of the description makes each gap: where air is parted, one line makes several, under ids of their own.
void tell_features(Layout& layout) {
    std::map<std::pair<std::size_t, std::size_t>, const std::string*> by_place;
    for (const FeatureDescription& feature : layout.described.features)
        by_place[{feature.place.line, feature.place.column}] = &feature.id;
    for (std::size_t i = 0; i < layout.gap_places.size(); ++i) {
        const auto at = by_place.find({layout.gap_places[i].line, layout.gap_places[i].column});
        if (at != by_place.end()) layout.house.places[i].feature = *at->second;
    }
}

}  // namespace

void lay_out_house(Layout& layout) {
    lay_out_shell(layout);
    layout.faults.throw_if_any();
    lay_out_openings(layout);
    lay_out_foundation(layout);
    lay_out_rims(layout);
    lay_out_crawl_doors(layout);
    lay_out_roof(layout);
    layout.faults.throw_if_any();
    lay_out_yard(layout);
    open_bulkheads(layout);
}

House build_house(const HouseDescription& described, const std::map<std::string, double>& widths, Make make,
                  const RunContext& context) {
    context.stage("building the house");
    Diagnostics faults(described.file);
    Layout layout{.described = described, .faults = faults, .widths = widths, .context = &context};
    layout.house.name = described.name;
    layout.house.built_of = built_of(described);
    layout.house.grade_usual = !described.foundation.above_grade_stated;
    layout.house.outline = described.outline;
    lay_out_house(layout);
    lay_out_features(layout);
    faults.throw_if_any();
    for (std::size_t i = 0; i < layout.edges(); ++i) layout.house.walls.push_back(layout.walls[i].name);
    tell_features(layout);
    if (make != Make::gaps) go_round_obstacles(layout);
    measure_vented_spaces(layout);
    if (make == Make::solids) layout.house.parts = make_parts(layout.panels, context);
    return std::move(layout.house);
}

}  // namespace seamward
