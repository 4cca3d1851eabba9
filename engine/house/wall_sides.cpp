// SPDX-License-Identifier: GPL-3.0-or-later
// What is beside a wall and its skins, for features on them.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "house/framing.h"
#include "house/place_features.h"

namespace seamward {

SpaceIndex outside_of(const Layout& layout, const WallLayout& wall, Point2 at) {
    if (!wall.exterior) return beside(layout, wall, at, true);
    if (wall.story + 1 != layout.stories.size()) return layout.outdoors;
    const EaveLayout& eave = layout.eaves[wall_edge(layout, wall)];
    return eave.present && at.y > eave.soffit_bottom ? eave.air : layout.outdoors;
}

std::optional<EndPost> post_beyond(const Layout& layout, const WallLayout& wall, Point2 at, bool front) {
    constexpr double same = 0.005;
    const double face = front ? wall.outside() : wall.inside();
    for (const WallLayout& other : layout.walls) {
        if (other.exterior || other.story != wall.story || std::abs(dot(other.frame.u, wall.frame.u)) > 0.001) continue;
        const WallCavity& air = other.cavities.back();
        if (at.y < (other.open_below ? other.bottom : framing::plate) || air.inner.empty()) continue;
        for (const bool right : {false, true}) {
            const Vector off = other.frame.at(right ? other.length : 0, 0, 0) - wall.frame.origin;
            if (std::abs(dot(off, wall.frame.n) - face) > same) continue;
            const double across = dot(wall.frame.at(at.x, 0, 0) - wall.frame.origin - off, other.frame.n);
            if (across < air.back || across > air.front) continue;
            return EndPost{right ? other.right_post : other.left_post, right ? other.length - air.inner[1].x : air.inner[0].x,
                           air.space};
        }
    }
    return std::nullopt;
}

SpaceIndex beside(const Layout& layout, const WallLayout& wall, Point2 at, bool front) {
    if (const auto post = post_beyond(layout, wall, at, front)) return post->air;
    constexpr double past = 0.01;  // a box that stands off the wall has the room behind it
    if (const BulkheadLayout* box =
            layout.bulkhead_at(wall.frame.at(at.x, at.y, front ? wall.outside() + past : wall.inside() - past)))
        return box->space;
    const Point p = wall.frame.at(at.x, 0, front ? wall.outside() + 0.1 : wall.inside() - 0.1);
    const bool in_floor = wall.open_below && at.y < -framing::subfloor;
    return in_floor ? layout.below_floor(wall.story, {p.x, p.y}) : layout.room_space(wall.story, {p.x, p.y});
}

std::pair<SpaceIndex, SpaceIndex> spaces_at(const Layout& layout, const WallLayout& wall, std::size_t skin, Point2 at) {
    const auto beyond = [&](bool front) { return beside(layout, wall, at, front); };
    SpaceIndex front, back;
    if (skin > 0)
        front = wall.cavities[skin - 1].at(at);
    else
        front = outside_of(layout, wall, at);
    const bool under_roof = wall.exterior && at.y > wall.plate_top && wall.story + 1 == layout.stories.size();
    if (under_roof && skin + 1 >= wall.cavities.size())
        back = layout.attic;
    else
        back = skin < wall.cavities.size() ? wall.cavities[skin].at(at) : beyond(false);
    return {front, back};
}

Figure air_in(const Layout& layout, const WallLayout& wall, std::size_t cavity) {
    const MiddleSurface& middle = layout.house.middles[wall.cavities[cavity].space.value];
    const auto here = [&](const Loop& loop) {
        Loop out;
        for (const Point2 p : loop) {
            const Vector off = middle.frame.at(p.x, p.y, 0) - wall.frame.origin;
            out.push_back({dot(off, wall.frame.u), dot(off, wall.frame.v)});
        }
        return out;
    };
    Figure air{here(middle.figure.outline), {}};
    for (const Loop& hole : middle.figure.holes) air.holes.push_back(here(hole));
    return air;
}

void check_framing(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, std::size_t skin, Point2 at) {
    const std::size_t first = skin == 0 ? 0 : skin - 1, last = std::min(skin, wall.cavities.size() - 1);
    if (at.y > wall.plate_top) return;
    const auto clear = [&](std::size_t cavity) {
        if (!wall.cavities[cavity].bays.empty()) return wall.cavities[cavity].at(at).valid();
        const Figure air = air_in(cutter.layout(), wall, cavity);
        if (air.outline.empty()) return true;
        bool inside = is_inside(air.outline, at);
        for (const Loop& hole : air.holes) inside = inside && !is_inside(hole, at);
        return inside;
    };
    for (std::size_t i = first; i <= last; ++i) {
        if (clear(i)) continue;
        cutter.refuse(feature, "at its place in " + wall.name + " stands framing (a post, a plate or the frame of an opening)",
                      "move it along or up by a few centimeters");
    }
}

double along_wall(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall) {
    if (!feature.along)
        cutter.refuse(
            feature, "along is missing",
            std::string("write along: 3.2 m, counted from the wall's left end") + (wall.exterior ? " as seen from outside" : ""));
    if (*feature.along <= wall.length) return *feature.along;
    char text[200];
    std::snprintf(text, sizeof text, "along %.2f m is past the end of %s, which is %.2f m long", *feature.along,
                  wall.name.c_str(), wall.length);
    cutter.refuse(feature, text, "along counts to its middle, from the wall's left end as seen from outside");
}

Point2 upright_place(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, const FeatureGap& row) {
    const bool all_along = row.form == FeatureGap::Form::edge || row.form == FeatureGap::Form::cut || is_row_of_holes(row) ||
                           (row.form == FeatureGap::Form::line && !row.upright && row.length == 0);
    const double along = feature.along || !all_along ? along_wall(cutter, feature, wall) : wall.length / 2;
    const std::vector<Host>& hosts = feature.type->hosts;
    const bool in_floor = wall.open_below && std::find(hosts.begin(), hosts.end(), Host::rim) != hosts.end();
    const double up = feature.up.value_or(in_floor ? wall.bottom / 2 : feature.type->up) + row.rise;
    Box box;
    for (const Skin& skin : wall.skins) box.take(skin.extent);
    if (up >= box.least.y && up <= box.most.y) return {along, up};
    char text[200];
    std::snprintf(text, sizeof text, "up %.2f m is past the edge of %s, which goes up from %.2f m to %.2f m", up,
                  wall.name.c_str(), box.least.y, box.most.y);
    cutter.refuse(feature, text, "up counts from the floor of the wall's story");
}

bool is_row_of_holes(const FeatureGap& row) {
    return row.shape == ShapeKind::hole && row.count == 0 && row.edges == std::vector<Edge>{Edge::bottom};
}

FeatureDescription part_of(const FeatureDescription& feature, const std::string& suffix) {
    FeatureDescription part = feature;
    part.id += suffix;
    for (FeatureDescription::Sizes& gap : part.gaps) {
        if (!gap.id.empty()) gap.id += suffix;
    }
    return part;
}

double foot_of_skin(const WallLayout& wall, std::size_t skin) {
    const bool air = skin == 0 && wall.cavities.size() > 1;  // behind brick
    return air ? wall.bottom + framing::closer + 0.005 : framing::plate + 0.004;
}

std::size_t wall_edge(const Layout& layout, const WallLayout& wall) {
    return static_cast<std::size_t>(&wall - layout.walls.data()) % layout.edges();
}

}  // namespace seamward
