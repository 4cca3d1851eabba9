// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "house/framing.h"
#include "house/layout.h"

namespace seamward {

namespace {

using namespace framing;

/// What carries a cladding that stands off the sheathing: masonry from `low` up to the cladding's foot, out to its face.
std::optional<std::size_t> add_ledge(Layout& layout, const WallLayout& above, double low) {
    if (above.cavities.size() < 2) return std::nullopt;
    return layout.add_panel(
        above.id + "/ledge", "ledge under " + above.name, "concrete", Layer::foundation,
        plain_prism(above.frame, rectangle({0, low}, {above.length, above.bottom}), 0, above.outside(), above.slant));
}

/// The walls that a floor stands on, from `low` up to `high`.
void add_stem_walls(Layout& layout, double low, double high, SpaceIndex space) {
    for (std::size_t i = 0; i < layout.edges(); ++i) {
        const WallLayout& above = layout.walls[i];
        WallLayout wall;
        wall.id = above.id + "/foundation";
        wall.name = "foundation under " + above.name;
        wall.exterior = true;
        wall.frame = above.frame;
        wall.length = above.length;
        wall.slant = above.slant;
        wall.bottom = low;
        Skin skin{.name = "foundation",
                  .frame = wall.frame,
                  .back = -stem_wall,
                  .front = 0,
                  .extent = rectangle({0, low}, {wall.length, high})};
        skin.panels.push_back(layout.add_panel(wall.id + "-stem-wall", "stem wall under " + above.name, "concrete",
                                               Layer::foundation,
                                               plain_prism(wall.frame, skin.extent, -stem_wall, 0, wall.slant)));
        if (const auto ledge = add_ledge(layout, above, low)) {
            skin.panels.push_back(*ledge);
            skin.front = above.outside();
            skin.extent = rectangle({0, low}, {wall.length, above.bottom});
        }
        wall.skins.push_back(std::move(skin));
        wall.cavities.push_back({-stem_wall, 0, space});  // what lies behind
        layout.foundation_walls.push_back(std::move(wall));
    }
}

void add_level(Layout& layout, const std::string& id, const std::string& name, const std::string& material, const Loop& outline,
               const std::vector<Loop>& cuts, double low, double high, Layer layer) {
    Prism prism;
    prism.frame = level_frame(0);
    prism.outline = outline;
    prism.cuts = cuts;
    prism.gap_of_cut.resize(cuts.size());
    prism.heights = {{low}, {high}};
    layout.add_panel(id, name, material, layer, std::move(prism));
}

Skin floor_skin(Layout& layout, const std::string& id, const std::string& name, const std::string& material, double thickness,
                Layer layer) {
    Prism prism;
    prism.frame = level_frame(0);
    prism.outline = layout.described.outline;
    prism.heights = {{-thickness}, {0}};
    Skin skin{.name = name, .frame = prism.frame, .back = -thickness, .front = 0, .extent = prism.outline};
    skin.panels.push_back(layout.add_panel(id, name, material, layer, std::move(prism)));
    return skin;
}

}  // namespace

void lay_out_foundation(Layout& layout) {
    const FoundationDescription& described = layout.described.foundation;
    StoryLayout& ground_floor = layout.stories.front();
    layout.ground = -described.above_grade;
    const double low = layout.ground - footing_depth;
    const bool framed = described.kind != FoundationKind::slab;
    const double floor_bottom = framed ? -subfloor - joist : -slab;
    if (!framed && described.space.id.empty()) {
        ground_floor.floor_skin = floor_skin(layout, "slab", "slab", "concrete", -low, Layer::foundation);
        for (std::size_t i = 0; i < layout.edges(); ++i) (void)add_ledge(layout, layout.walls[i], low);
        return;
    }
    ground_floor.floor_skin =
        floor_skin(layout, framed ? "floor-1" : "slab", framed ? "floor boards" : "slab", framed ? "wood" : "concrete",
                   framed ? subfloor : slab, framed ? Layer::framing : Layer::foundation);
    const SpaceIndex below = layout.add_space(described.space, described.space_kind, {});
    ground_floor.below = below;
    const double top = framed ? floor_bottom - plate : floor_bottom;
    const double fill_top = (framed ? -subfloor : floor_bottom) - described.height;
    const double bottom = std::min(low, fill_top - 0.1);
    add_stem_walls(layout, bottom, top, below);
    const Loop inside = offset_outline(layout.described.outline, std::vector<double>(layout.edges(), -stem_wall));
    if (!keeps_shape(layout.described.outline, inside)) {
        layout.faults.add({}, "two foundation walls run into each other: some place of the outline is narrower than both",
                          "make the narrow parts of the outline wider, or describe a slab");
        return;
    }
    add_level(layout, described.kind == FoundationKind::basement ? "basement-slab" : "fill",
              described.kind == FoundationKind::basement ? "basement slab" : "earth under the floor",
              described.kind == FoundationKind::basement ? "concrete" : "earth", inside, {}, bottom, fill_top, Layer::ground);
    const double middle = framed ? (fill_top + floor_bottom - plate) / 2 : (fill_top + floor_bottom) / 2;
    layout.set_middle(below, level_frame(middle),
                      {offset_outline(layout.described.outline, std::vector<double>(layout.edges(), -stem_wall - 0.02)), {}});
}

}  // namespace seamward
