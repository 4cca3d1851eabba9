// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "house/framing.h"
#include "house/layout.h"

namespace seamward {

namespace {

using namespace framing;

constexpr double sill_depth = 0.14;  ///< of a sill plate, meters

/// The layers before a rim joist, as far as the first air.
const Skin& cover_of(const WallLayout& wall) { return wall.cavities.size() > 1 ? wall.skins[1] : wall.skins.front(); }

RimLayout make_rim(Layout& layout, std::size_t story, std::size_t edge) {
    const StoryLayout& level = layout.stories[story];
    const WallLayout& wall = layout.walls[story * layout.edges() + edge];
    const Skin& cover = cover_of(wall);
    RimLayout out;
    out.low = story == 0 ? -subfloor - joist : layout.stories[story - 1].plate_top - level.floor;
    out.high = -subfloor;
    out.masonry = out.low - plate;
    out.front = layout.outdoors;
    out.joint = out.low;
    if (wall.cavities.size() > 1) {
        const WallCavity& air = wall.cavities.front();
        out.front = air.space;
        out.air = air.front - air.back;
        out.joint = std::max(out.low, wall.bottom + closer);  // what ends the air gap would stand before it
    }
    const auto skin = [&](const char* name, double depth, double low, double high) {
        return Skin{.name = name + (" under " + wall.name),
                    .frame = wall.frame,
                    .back = -depth,
                    .front = cover.front,
                    .extent = rectangle({0, low}, {wall.length, high})};
    };
    const auto add = [&](const char* what, const char* name, double depth, double low, double high) {
        return layout.add_panel(wall.id + what, name + (" under " + wall.name), "wood", Layer::framing,
                                plain_prism(wall.frame, rectangle({0, low}, {wall.length, high}), -depth, 0, wall.slant));
    };
    out.rim = skin("rim joist", stud, out.low, out.high);
    if (story == 0) {
        out.sill = skin("sill plate", sill_depth, out.masonry, out.low);
        out.sill.panels = layout.foundation_walls[edge].skins.front().panels;
        out.sill.panels.resize(1);  // the masonry right under it
        out.sill.panels.push_back(add("/sill-plate", "sill plate", sill_depth, out.masonry, out.low));
        out.rim.panels.push_back(out.sill.panels.back());
    }
    out.rim.panels.push_back(add("/rim-joist", "rim joist", stud, out.low, out.high));
    for (Skin* made : {&out.rim, &out.sill}) {
        if (!made->panels.empty()) made->panels.insert(made->panels.end(), cover.panels.begin(), cover.panels.end());
    }
    return out;
}

}  // namespace

void lay_out_rims(Layout& layout) {
    const bool on_slab = layout.described.foundation.kind == FoundationKind::slab;
    for (std::size_t story = on_slab ? 1 : 0; story < layout.stories.size(); ++story) {
        for (std::size_t edge = 0; edge < layout.edges(); ++edge)
            layout.stories[story].rims.push_back(make_rim(layout, story, edge));
    }
}

}  // namespace seamward
