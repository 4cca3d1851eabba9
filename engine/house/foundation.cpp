// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "house/framing.h"
#include "house/layout.h"

namespace seamward {

namespace {

using namespace framing;

constexpr double ground_thickness = 0.3;

/// The walls that a floor stands on, from `low` up to `high`; under a framed floor a sill plate and a rim joist stand on them.
void add_stem_walls(Layout& layout, double low, double high, bool framed, SpaceIndex space) {
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
                  .extent = rectangle({0, low}, {wall.length, framed ? -subfloor : high})};
        const auto add = [&](const std::string& what, const std::string& material, double v0, double v1, double depth) {
            Prism prism;
            prism.frame = wall.frame;
            prism.outline = rectangle({0, v0}, {wall.length, v1});
            prism.heights = {{-depth}, {0}};
            prism.slant = wall.slant;
            skin.panels.push_back(layout.add_panel(wall.id + "-" + what, what + " under " + above.name, material,
                                                   material == "wood" ? Layer::framing : Layer::foundation, std::move(prism)));
        };
        add("stem-wall", "concrete", low, high, stem_wall);
        if (framed) {
            add("sill-plate", "wood", high, high + plate, 0.14);
            add("rim-joist", "wood", high + plate, -subfloor, stud);
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
    add_stem_walls(layout, bottom, top, framed, below);
    const Loop inside = offset_outline(layout.described.outline, std::vector<double>(layout.edges(), -stem_wall));
    add_level(layout, described.kind == FoundationKind::basement ? "basement-slab" : "fill",
              described.kind == FoundationKind::basement ? "basement slab" : "earth under the floor",
              described.kind == FoundationKind::basement ? "concrete" : "earth", inside, {}, bottom, fill_top, Layer::ground);
    const double middle = framed ? (fill_top + floor_bottom - plate) / 2 : (fill_top + floor_bottom) / 2;
    layout.set_middle(below, level_frame(middle),
                      {offset_outline(layout.described.outline, std::vector<double>(layout.edges(), -stem_wall - 0.02)), {}});
}

}  // namespace seamward
