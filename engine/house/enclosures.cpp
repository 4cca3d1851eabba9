// SPDX-License-Identifier: GPL-3.0-or-later
// Features with air of their own: ducts, cans, wells.
#include <algorithm>
#include <memory>

#include "house/enclosure.h"
#include "house/framing.h"

namespace seamward {

namespace {

using At = FeatureGap::At;
using ducts::plate;
using ducts::sheet;

}  // namespace

namespace {

/// A duct from a collar in the room to a hood outside, with a ring round it in each skin that it passes.
class WallDuct {
public:
    WallDuct(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall)
        : cutter_(cutter),
          layout_(cutter.layout()),
          feature_(feature),
          wall_(wall),
          made_(cutter, feature),
          at_(upright_place(cutter, feature, wall, feature.type->gaps.front())),
          out_end_(wall.outside() + 0.03),
          in_end_(wall.inside() - 0.04) {}

    void place() {
        outside_ = outside_of(layout_, wall_, at_);
        room_ = beside(layout_, wall_, at_, false);
        air_ = made_.air();
        std::vector<std::pair<Height, GapIndex>> levels{{Height{in_end_}, GapIndex()}};
        for (std::size_t k = wall_.skins.size(); k-- > 0;) add_ring(k, levels);  // from the room outward
        if (radius_ == 0)
            cutter_.refuse(feature_, "a duct is drawn only where it passes the wall, in a ring",
                           "do not leave all rings out, or list it in the job as a gap with between");
        for (const Skin* skin : tight_) cutter_.cut(feature_, *skin, around_circle(at_, radius_, pipe_sides), {});
        levels.emplace_back(Height{out_end_}, GapIndex());
        add_tube(made_, wall_.frame, at_, radius_, levels);
        add_end(true);
        add_end(false);
        const Frame middle{wall_.frame.at(at_.x, at_.y, 0), wall_.frame.n, wall_.frame.v, wall_.frame.u * -1};
        layout_.set_middle(air_, middle, {rectangle({in_end_, -radius_ / 2}, {out_end_, radius_ / 2}), {}});
    }

private:
    void add_ring(std::size_t skin, std::vector<std::pair<Height, GapIndex>>& levels) {
        const bool first = skin == 0, last = skin + 1 == wall_.skins.size();
        const auto number = made_.row(first ? At::outside : last ? At::inside : At::sheathing);
        const Skin& here = wall_.skins[skin];
        if (!number) {
            tight_.push_back(&here);
            return;
        }
        const FeatureGap& row = feature_.type->gaps[*number];
        GapSizes sizes = cutter_.sizes(feature_, *number);
        if (radius_ == 0) radius_ = sizes.around / 2;
        sizes.around = 2 * radius_;
        const std::vector<Cutout> cutouts = cutter_.cutouts(row, sizes, here, at_);
        require_clear(skin, cutouts.front().loop);
        const SpaceIndex front = first ? outside_ : wall_.cavities[skin - 1].at(at_);
        const SpaceIndex back = last ? room_ : wall_.cavities[skin].at(at_);
        const GapIndex gap = cutter_.enter(feature_, *number, front, back, Cutter::shape_of(row, sizes, 0), cutouts);
        levels.emplace_back(Height{here.back}, GapIndex());
        levels.emplace_back(Height{here.front}, gap);
    }

    /// The duct needs its whole width between studs where bays are asked for, and lies on one side of a bulkhead or a soffit.
    void require_clear(std::size_t skin, const Loop& ring) {
        if (!lies_within(wall_.skins[skin].extent, ring)) return;  // told as such
        check_framing(cutter_, feature_, wall_, skin, at_);
        for (const Point2 p : ring) {
            for (const WallCavity& cavity : wall_.cavities) {
                if (!cavity.bays.empty() && cavity.bay_at(p) != cavity.bay_at(at_))
                    cutter_.refuse(feature_, "at its place in " + wall_.name + " stands a stud", "move it along, into a bay");
            }
            if (outside_of(layout_, wall_, p) != outside_ || beside(layout_, wall_, p, false) != room_)
                cutter_.refuse(feature_,
                               "at its place in " + wall_.name + " something meets the wall: a bulkhead, a soffit or a wall",
                               "move it so that it lies clear of that");
        }
    }

    void add_end(bool outer) {
        constexpr double box_depth = 0.05;
        const double half = radius_ + 0.02;
        const double from = outer ? out_end_ - plate : in_end_ - box_depth, to = outer ? out_end_ + box_depth : in_end_ + plate;
        const BoxPanels box = made_.box(outer ? "hood" : "collar", wall_.frame, at_ - Point2{half, half},
                                        at_ + Point2{half, half}, from, to, true, true);
        // The side toward the wall is fitted tightly round the tube.
        cutter_.cut(feature_, outer ? box.back : box.front, around_circle(at_, radius_, pipe_sides), {});
        const auto number = made_.row(outer ? At::outer : At::inner);
        if (!number) return;
        if (outer)
            made_.gap_in(box.front, *number, at_, outside_, air_, true);
        else
            made_.gap_in(box.back, *number, at_, air_, room_, false);
    }

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    const WallLayout& wall_;
    Enclosure made_;
    Point2 at_;
    double out_end_, in_end_;
    double radius_ = 0;
    std::vector<const Skin*> tight_;  ///< that it passes without a ring
    SpaceIndex outside_, room_, air_;
};

}  // namespace

void place_duct(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall) {
    WallDuct(cutter, feature, wall).place();
}

void place_can(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall) {
    Layout& layout = cutter.layout();
    Enclosure made(cutter, feature);
    const Point2 at = upright_place(cutter, feature, wall, feature.type->gaps.front()), half{0.14, 0.2};
    const double depth = feature.type->reach > 0 ? feature.type->reach : 0.12, back = wall.outside();
    const SpaceIndex outside = outside_of(layout, wall, at);
    const Loop face = rectangle(at - half, at + half);
    if (!lies_within(wall.skins.front().extent, face))
        cutter.refuse(feature, misfit_of(wall.skins.front(), wall.name, box_of(face), 1, 2 * half.x));
    for (const Point2 p : face) {
        if (outside_of(layout, wall, p) != outside)
            cutter.refuse(feature, "it reaches up past the soffit into the eave", "give it a smaller up");
    }
    const SpaceIndex air = made.air();
    const BoxPanels box = made.box("can", wall.frame, at - half, at + half, back, back + depth, true, true);
    if (const auto number = made.row(At::outer))
        made.gap_in(box.front, *number, at - Point2{0, half.y - 0.03}, outside, air, true);
    if (const auto number = made.row(At::back)) {
        // Through the back of the can and the cladding behind it.
        auto both = std::make_unique<Skin>(wall.skins.front());
        both->panels.insert(both->panels.end(), box.back.panels.begin(), box.back.panels.end());
        both->front = back + plate;
        check_framing(cutter, feature, wall, 0, at);
        const FeatureGap& row = feature.type->gaps[*number];
        const GapSizes sizes = cutter.sizes(feature, *number);
        const auto cutouts = cutter.cutouts(row, sizes, *both, at);
        const WallCavity& cavity = wall.cavities.front();
        const GapIndex gap = cutter.enter(feature, *number, air, cavity.at(at), Cutter::shape_of(row, sizes, 0), cutouts);
        const double stub = std::min(0.04, (cavity.front - cavity.back) * 0.4);
        if (row.shape == ShapeKind::ring)
            cutter.stand(feature, "conduit", "metal", *both, around_circle(at, sizes.around / 2, pipe_sides), stub, 0.04, gap);
        made.keep(std::move(both));
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
    if (room == nullptr || feature.story + 1 != layout.stories.size())
        cutter.refuse(feature, "it hangs in no ceiling under the roof",
                      "write at: [4.5 m, 2 m], a point in a room of the top story");
    const SpaceIndex air = made.air(), under = layout.under_ceiling(feature.story, *feature.at);
    const RoofFace* face = nullptr;
    for (const RoofFace& candidate : layout.roof) {
        if (is_inside(candidate.plan, *feature.at)) face = &candidate;
    }
    if (face == nullptr) cutter.refuse(feature, "there is no roof over its place", "move it");
    const Point2 at = *feature.at;
    // A housing over the ceiling, a tube from it through the roof, a cap on top: one body of air.
    const auto housing_row = made.row(At::through);
    const Frame frame = level_frame(0);
    const double low = story.ceiling, top = story.plate_top;
    const GapSizes housing = housing_row ? cutter.sizes(feature, *housing_row) : GapSizes{.size = {0.3, 0.25}};
    const Point2 half{housing.size[0] / 2, housing.size[1] / 2};
    const double roof = face->bottom.at(at), high = roof + 0.25, housing_top = top + 0.12;
    if (roof < housing_top + 0.15) cutter.refuse(feature, "the attic is too low for it there", "move it toward the ridge");
    for (const Point2 p : rectangle(at - half, at + half)) {
        if (layout.under_ceiling(feature.story, p) != under)
            cutter.refuse(feature, "it reaches past the edge of its room or of a bulkhead", "move it inward");
    }
    const BoxPanels box = made.box("housing", frame, at - half, at + half, low - 0.004, housing_top, true, true);
    if (housing_row) {
        const FeatureGap& row = feature.type->gaps[*housing_row];
        const auto cutouts = cutter.cutouts(row, housing, room->ceiling, at);
        (void)cutter.enter(feature, *housing_row, layout.attic, under, Cutter::shape_of(row, housing, 0), cutouts);
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
    if (const auto number = made.row(At::inner)) made.gap_in(box.back, *number, at, air, under, false);
    layout.duct_caps.emplace(air.value, std::pair{cap.front, at});
    const Frame upright{{at.x, at.y, 0}, {1, 0, 0}, {0, 0, 1}, {0, -1, 0}};
    layout.set_middle(air, upright, {rectangle({-radius / 2, low}, {radius / 2, high}), {}});
}

void place_duct_cap(Cutter& cutter, const FeatureDescription& feature) {
    Layout& layout = cutter.layout();
    Enclosure made(cutter, feature);
    const auto number = made.row(At::outer);
    const auto space = layout.space_ids.find(feature.space.id);
    const auto cap = space == layout.space_ids.end() ? layout.duct_caps.end() : layout.duct_caps.find(space->second.value);
    if (!number || cap == layout.duct_caps.end())
        cutter.refuse(feature, "no duct of that air comes out of the roof", "write space: {id: ...} as the fan under it has it");
    const auto& [top, middle] = cap->second;
    const Box flap =
        box_of(cutter.cutouts(feature.type->gaps[*number], cutter.sizes(feature, *number), top, middle).front().filled);
    if (!lies_within(top.extent, rectangle(flap.least, flap.most)))
        cutter.refuse(feature, "it is larger than the cap over the duct, which is 0.16 m wide",
                      "make size smaller, or list it in the job as a gap with between");
    made.share({cap->first});
    made.gap_in(cap->second.first, *number, cap->second.second, layout.outdoors, {cap->first}, true);
}

void place_roof_pipe(Cutter& cutter, const FeatureDescription& feature, const Skin& roof, const LevelAir& around) {
    Layout& layout = cutter.layout();
    Enclosure made(cutter, feature);
    const std::size_t ring = made.row(At::through).value(), mouth = made.row(At::outer).value();
    const SpaceIndex air = made.air();
    const FeatureGap& row = feature.type->gaps[ring];
    const GapSizes sizes = cutter.sizes(feature, ring), opening = cutter.sizes(feature, mouth);
    const Point2 at = *feature.at;
    const double radius = sizes.around / 2, low = roof.height(roof.back).at(at) - 0.12;
    const double high = roof.height(roof.front).at(at) + (feature.type->reach > 0 ? feature.type->reach : 0.3);
    if (opening.width / 2 > radius - sheet - 0.0005)
        cutter.refuse(feature, "its mouth is wider than the pipe", "make the gap of the mouth smaller");
    const std::vector<Cutout> cutouts = cutter.cutouts(row, sizes, roof, at);
    const SpaceIndex under = around.below(at);
    for (const Point2 p : cutouts.front().loop) {
        if (lies_within(roof.extent, cutouts.front().loop) && around.below(p) != under)
            cutter.refuse(feature, "part of it stands over the wall", "move it inward");
    }
    const GapIndex gap = cutter.enter(feature, ring, layout.outdoors, under, Cutter::shape_of(row, sizes, 0), cutouts);
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

namespace {

std::string room_id(const Layout& layout, const RoomLayout& room) { return layout.house.survey[room.space].label(); }

}  // namespace

void place_floor_well(Cutter& cutter, const FeatureDescription& feature) {
    Layout& layout = cutter.layout();
    Enclosure made(cutter, feature);
    const RoomLayout* room = feature.at ? layout.room_at(feature.story, *feature.at) : nullptr;
    const auto number = made.row(At::inner);
    if (room == nullptr || feature.story != 0 || !number)
        cutter.refuse(feature, "it lies in no room of the first story", "write at: [4.5 m, 2 m], a point of the plan");
    const SpaceIndex air = made.air();
    const FeatureGap& row = feature.type->gaps[*number];
    const GapSizes sizes = cutter.sizes(feature, *number);
    const std::uint32_t count = std::max<std::uint32_t>(1, sizes.count);
    const double spacing = std::max(sizes.spacing, sizes.width + 0.004);
    const Point2 at = *feature.at, half{spacing * count / 2 + 0.01, std::max(sizes.length, 0.05) / 2 + 0.015};
    const Frame frame = level_frame(layout.stories.front().floor);
    if (!lies_within(room->figure.outline, rectangle(at - half, at + half)))
        cutter.refuse(feature,
                      misfit_of({.frame = frame, .extent = room->figure.outline}, "the floor of " + room_id(layout, *room),
                                box_of(rectangle(at - half, at + half)), count, sizes.width));
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
