// SPDX-License-Identifier: GPL-3.0-or-later
// Features with air of their own: ducts, cans, wells.
#include <algorithm>

#include "house/enclosure.h"
#include "house/framing.h"

namespace seamward {

namespace {

using At = FeatureGap::At;
using ducts::plate;
using ducts::sheet;

}  // namespace

void place_duct(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall) {
    Layout& layout = cutter.layout();
    Enclosure made(cutter, feature);
    if (!feature.along) {
        cutter.report(feature, "along is missing", "write along: 3.2 m, counted from the wall's left end as seen from outside");
        return;
    }
    const Point2 at{*feature.along, feature.up.value_or(feature.type->up)};
    const SpaceIndex air = made.air();
    const Point room_point = wall.frame.at(at.x, 0, wall.inside() - 0.1);
    const SpaceIndex room = layout.room_space(wall.story, {room_point.x, room_point.y});
    double radius = 0;
    std::vector<std::pair<Height, GapIndex>> levels;
    constexpr double box_depth = 0.05;
    const double out_end = wall.outside() + 0.03, in_end = wall.inside() - 0.04;
    levels.emplace_back(Height{in_end}, GapIndex());
    // From the room outward, ring by ring.
    for (std::size_t k = wall.skins.size(); k-- > 0;) {
        const Skin& skin = wall.skins[k];
        const bool first = k == 0, last = k + 1 == wall.skins.size();
        const auto number = made.row(first ? At::outside : last ? At::inside : At::sheathing);
        if (!number) continue;
        const FeatureGap& row = feature.type->gaps[*number];
        const GapSizes sizes = cutter.sizes(feature, *number);
        if (radius == 0) radius = sizes.around / 2;
        GapSizes same = sizes;
        same.around = 2 * radius;
        const SpaceIndex front = first ? outside_of(layout, wall, at.y) : wall.cavities[k - 1].space;
        const SpaceIndex back = last ? room : wall.cavities[k].space;
        const GapIndex gap =
            cutter.enter(feature, *number, front, back, Cutter::shape_of(row, same, 0), cutter.cutouts(row, same, skin, at));
        levels.emplace_back(Height{skin.back}, GapIndex());
        levels.emplace_back(Height{skin.front}, gap);
    }
    if (radius == 0) {
        cutter.report(feature, "a duct is drawn only where it passes the wall, in a ring",
                      "do not leave all rings out, or list it in the job as a gap with between");
        return;
    }
    levels.emplace_back(Height{out_end}, GapIndex());
    add_tube(made, wall.frame, at, radius, levels);
    const double half = radius + 0.02;
    const Loop collar = around_circle(at, radius, pipe_sides);
    const auto end_box = [&](bool outer) {
        const double from = outer ? out_end - plate : in_end - box_depth, to = outer ? out_end + box_depth : in_end + plate;
        const BoxPanels box = made.box(outer ? "hood" : "collar", wall.frame, at - Point2{half, half}, at + Point2{half, half},
                                       from, to, true, true);
        // The side toward the wall is fitted tightly round the tube.
        cutter.cut(feature, outer ? box.back : box.front, collar, {});
        const auto number = made.row(outer ? At::outer : At::inner);
        if (!number) return;
        if (outer)
            made.gap_in(box.front, *number, at, outside_of(layout, wall, at.y), air, true);
        else
            made.gap_in(box.back, *number, at, air, room, false);
    };
    end_box(true);
    end_box(false);
    const Frame middle{wall.frame.at(at.x, at.y, 0), wall.frame.n, wall.frame.v, wall.frame.u * -1};
    layout.set_middle(air, middle, {rectangle({in_end, -radius / 2}, {out_end, radius / 2}), {}});
}

void place_can(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall) {
    Layout& layout = cutter.layout();
    Enclosure made(cutter, feature);
    if (!feature.along) {
        cutter.report(feature, "along is missing", "write along: 3.2 m, counted from the wall's left end as seen from outside");
        return;
    }
    const Point2 at{*feature.along, feature.up.value_or(feature.type->up)}, half{0.14, 0.2};
    const double depth = feature.type->reach > 0 ? feature.type->reach : 0.12, back = wall.outside();
    const SpaceIndex air = made.air(), outside = outside_of(layout, wall, at.y);
    const BoxPanels box = made.box("can", wall.frame, at - half, at + half, back, back + depth, true, true);
    if (const auto number = made.row(At::outer))
        made.gap_in(box.front, *number, at - Point2{0, half.y - 0.03}, outside, air, true);
    if (const auto number = made.row(At::back)) {
        // Through the back of the can and the cladding behind it.
        auto both = std::make_unique<Skin>(wall.skins.front());
        both->panels.insert(both->panels.end(), box.back.panels.begin(), box.back.panels.end());
        both->front = back + plate;
        const FeatureGap& row = feature.type->gaps[*number];
        const GapSizes sizes = cutter.sizes(feature, *number);
        const auto cutouts = cutter.cutouts(row, sizes, *both, at);
        const GapIndex gap =
            cutter.enter(feature, *number, air, wall.cavities.front().space, Cutter::shape_of(row, sizes, 0), cutouts);
        const double stub = std::min(0.04, (wall.cavities.front().front - wall.cavities.front().back) * 0.4);
        if (row.shape == ShapeKind::ring)
            cutter.stand(feature, "conduit", "metal", *both, around_circle(at, sizes.around / 2, pipe_sides), stub, 0.04, gap);
        made.skins_.push_back(std::move(both));
    }
    Frame middle = wall.frame;
    middle.origin = middle.at(at.x, at.y, back + depth / 2);
    layout.set_middle(air, middle, {rectangle(half * -0.9, half * 0.9), {}});
}

void place_ceiling_duct(Cutter& cutter, const FeatureDescription& feature) {
    Layout& layout = cutter.layout();
    Enclosure made(cutter, feature);
    const StoryLayout& story = layout.stories[feature.story];
    const RoomLayout* room = feature.at ? layout.room_at(feature.story, *feature.at) : nullptr;
    if (room == nullptr || feature.story + 1 != layout.stories.size()) {
        cutter.report(feature, "it hangs in no ceiling under the roof",
                      "write at: [4.5 m, 2 m], a point in a room of the top story");
        return;
    }
    const SpaceIndex air = made.air();
    const RoofFace* face = nullptr;
    for (const RoofFace& candidate : layout.roof) {
        if (is_inside(candidate.plan, *feature.at)) face = &candidate;
    }
    if (face == nullptr) return;
    const Point2 at = *feature.at;
    // A housing over the ceiling, a tube from it through the roof, a cap on top: one body of air.
    const auto housing_row = made.row(At::through);
    const Frame frame = level_frame(0);
    const double low = story.ceiling, top = story.plate_top;
    const GapSizes housing = housing_row ? cutter.sizes(feature, *housing_row) : GapSizes{.size = {0.3, 0.25}};
    const Point2 half{housing.size[0] / 2, housing.size[1] / 2};
    const double roof = face->bottom.at(at), high = roof + 0.25, housing_top = top + 0.12;
    if (roof < housing_top + 0.15) {
        cutter.report(feature, "the attic is too low for it there", "move it toward the ridge");
        return;
    }
    const BoxPanels box = made.box("housing", frame, at - half, at + half, low - 0.004, housing_top, true, true);
    if (housing_row) {
        const FeatureGap& row = feature.type->gaps[*housing_row];
        const auto cutouts = cutter.cutouts(row, housing, room->ceiling, at);
        (void)cutter.enter(feature, *housing_row, layout.attic, room->space, Cutter::shape_of(row, housing, 0), cutouts);
    } else {
        cutter.cut(feature, room->ceiling, rectangle(at - half, at + half), {});
    }
    constexpr double radius = 0.052;
    const Loop round = around_circle(at, radius, pipe_sides);
    cutter.cut(feature, box.front, round, {});
    cutter.cut(feature, face->skin, round, {});
    add_tube(made, frame, at, radius, {{Height{housing_top - plate}, {}}, {Height{high}, {}}});
    const BoxPanels cap =
        made.box("cap", frame, at - Point2{0.08, 0.08}, at + Point2{0.08, 0.08}, high - plate, high + 0.06, true, true);
    cutter.cut(feature, cap.back, round, {});
    if (const auto number = made.row(At::inner)) made.gap_in(box.back, *number, at, air, room->space, false);
    layout.duct_caps.emplace(air.value, std::pair{cap.front, at});
    const Frame upright{{at.x, at.y, 0}, {1, 0, 0}, {0, 0, 1}, {0, -1, 0}};
    layout.set_middle(air, upright, {rectangle({-radius / 2, low}, {radius / 2, high}), {}});
}

void place_duct_cap(Cutter& cutter, const FeatureDescription& feature) {
    Layout& layout = cutter.layout();
    Enclosure made(cutter, feature);
    const auto number = made.row(At::outer);
    const std::vector<Space>& spaces = layout.house.survey.spaces;
    const auto space = std::find_if(spaces.begin(), spaces.end(), [&](const Space& s) { return s.id == feature.space.id; });
    const auto cap = space == spaces.end() ? layout.duct_caps.end()
                                           : layout.duct_caps.find(static_cast<std::uint32_t>(space - spaces.begin()));
    if (!number || cap == layout.duct_caps.end()) {
        cutter.report(feature, "no duct of that air comes out of the roof", "write space: {id: ...} as the fan under it has it");
        return;
    }
    made.gap_in(cap->second.first, *number, cap->second.second, layout.outdoors, {cap->first}, true);
}

void place_roof_pipe(Cutter& cutter, const FeatureDescription& feature, const Skin& roof) {
    Layout& layout = cutter.layout();
    Enclosure made(cutter, feature);
    const std::size_t ring = made.row(At::through).value(), mouth = made.row(At::outer).value();
    const SpaceIndex air = made.air();
    const FeatureGap& row = feature.type->gaps[ring];
    const GapSizes sizes = cutter.sizes(feature, ring), opening = cutter.sizes(feature, mouth);
    const Point2 at = *feature.at;
    const double radius = sizes.around / 2, low = roof.height(roof.back).at(at) - 0.12;
    const double high = roof.height(roof.front).at(at) + (feature.type->reach > 0 ? feature.type->reach : 0.3);
    if (opening.width / 2 > radius - sheet - 0.0005) {
        cutter.report(feature, "its mouth is wider than the pipe", "make the gap of the mouth smaller");
        return;
    }
    const GapIndex gap = cutter.enter(feature, ring, layout.outdoors, layout.attic, Cutter::shape_of(row, sizes, 0),
                                      cutter.cutouts(row, sizes, roof, at));
    add_tube(made, roof.frame, at, radius,
             {{Height{low}, {}}, {roof.height(roof.back), {}}, {roof.height(roof.front), gap}, {Height{high}, {}}});
    const Loop round = around_circle(at, radius, pipe_sides);
    made.add("foot", plain_prism(roof.frame, round, low - plate, low));
    Skin top{.name = "mouth", .frame = roof.frame, .back = high, .front = high + plate, .extent = round};
    top.panels.push_back(made.add("mouth", plain_prism(roof.frame, round, high, high + plate)));
    made.gap_in(top, mouth, at, layout.outdoors, air, true);
    const Frame upright{{at.x, at.y, 0}, {1, 0, 0}, {0, 0, 1}, {0, -1, 0}};
    layout.set_middle(air, upright, {rectangle({-radius / 2, low}, {radius / 2, high}), {}});
}

void place_floor_well(Cutter& cutter, const FeatureDescription& feature) {
    Layout& layout = cutter.layout();
    Enclosure made(cutter, feature);
    const RoomLayout* room = feature.at ? layout.room_at(feature.story, *feature.at) : nullptr;
    const auto number = made.row(At::inner);
    if (room == nullptr || feature.story != 0 || !number) {
        cutter.report(feature, "it lies in no room of the first story", "write at: [4.5 m, 2 m], a point of the plan");
        return;
    }
    const SpaceIndex air = made.air();
    const FeatureGap& row = feature.type->gaps[*number];
    const GapSizes sizes = cutter.sizes(feature, *number);
    const std::uint32_t count = std::max<std::uint32_t>(1, sizes.count);
    const double spacing = std::max(sizes.spacing, sizes.width + 0.004);
    const Point2 at = *feature.at, half{spacing * count / 2 + 0.01, std::max(sizes.length, 0.05) / 2 + 0.015};
    const Frame frame = level_frame(layout.stories.front().floor);
    cutter.cut(feature, layout.stories.front().floor_skin, rectangle(at - half, at + half), {});
    Skin grate{.name = "grate", .frame = frame, .back = -0.004, .front = 0, .extent = rectangle(at - half, at + half)};
    grate.panels.push_back(made.add("grate", plain_prism(frame, grate.extent, -0.004, 0)));
    const double bottom = layout.ground - 0.3;
    (void)made.box("well", frame, at - half, at + half, bottom, -0.004, true, false);
    for (Panel& panel : layout.panels) {
        if (panel.id != "fill" || panel.prisms.front().heights.back().out <= bottom) continue;
        panel.prisms.front().cuts.push_back(rectangle(at - half, at + half));
        panel.prisms.front().gap_of_cut.emplace_back();
    }
    const Frame upright{{at.x, at.y, 0}, {1, 0, 0}, {0, 0, 1}, {0, -1, 0}};
    layout.set_middle(air, upright, {rectangle({0.01 - half.x, bottom + 0.01}, {half.x - 0.01, -0.012}), {}});
    GapSizes one = sizes;
    one.count = 1;
    std::vector<Cutout> cutouts;
    for (std::uint32_t i = 0; i < count; ++i) {
        const Point2 p = at + Point2{(i - (count - 1) / 2.0) * spacing, 0};
        const Point2 h{sizes.width / 2, std::max(sizes.length, 0.02) / 2};
        cutouts.push_back({&grate, rectangle(p - h, p + h), p});
    }
    const GapIndex gap = cutter.enter(feature, *number, room->space, air, Cutter::shape_of(row, one, 0), cutouts);
    Gap& entry = layout.house.survey.gaps[gap.value];
    entry.count = count;
    std::swap(entry.between[0], entry.between[1]);
    std::vector<Point>& way = layout.house.places[gap.value].through;
    std::reverse(way.begin(), way.end());
}

}  // namespace seamward
