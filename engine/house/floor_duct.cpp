// SPDX-License-Identifier: GPL-3.0-or-later
// A duct from a collar on a floor down into the air under it, and from there through the edge of that floor to a hood outside.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "house/enclosure.h"
#include "house/framing.h"

namespace seamward {

namespace {

using At = FeatureGap::At;
using ducts::plate;
using Levels = std::vector<std::pair<Height, GapIndex>>;

bool makes(const FeatureDescription& feature, At at) {
    return std::any_of(feature.type->gaps.begin(), feature.type->gaps.end(), [&](const FeatureGap& row) { return row.at == at; });
}

class FloorDuct {
public:
    FloorDuct(Cutter& cutter, const FeatureDescription& feature, const std::vector<const FeatureDescription*>& continued_by)
        : cutter_(cutter), layout_(cutter.layout()), feature_(feature), made_(cutter, feature) {
        for (const FeatureDescription* other : continued_by) {
            const FeatureDescription*& part = makes(*other, At::side) ? joint_ : outlet_;
            if (part != nullptr)
                cutter.refuse(*other, "the duct of " + feature.id + " has one already: " + part->id, "leave one of them out");
            part = other;
        }
    }

    void place() {
        const RoomLayout* room = feature_.at ? layout_.room_at(feature_.story, *feature_.at) : nullptr;
        if (room == nullptr) cutter_.refuse(feature_, "it stands in no room", "write at: [4.5 m, 2 m], a point of the plan");
        room_ = room->space;
        below_ = layout_.below_floor(feature_.story, *feature_.at);
        const StoryLayout& story = layout_.stories[feature_.story];
        if (!below_.valid() || story.rims.empty())
            cutter_.refuse(feature_, "there are no joists under the floor to run between",
                           "put it over a crawl space or on an upper story");
        find_wall();
        air_ = made_.air();
        for (const FeatureDescription* part : {joint_, outlet_}) {
            if (part != nullptr) Enclosure(cutter_, *part).share(air_);
        }
        measure();
        if (elbow_ + half_ > -framing::subfloor - 0.01 || elbow_ - half_ < lowest_ + 0.005) {
            char text[160];
            std::snprintf(text, sizeof text,
                          "the duct is %.0f mm wide with its elbow: it does not fit under the floor at that height",
                          2 * half_ * 1000);
            cutter_.refuse(outlet_ != nullptr ? *outlet_ : feature_, text, "write up: -0.14 m, or make the duct narrower");
        }
        if (!lies_within(room->figure.outline,
                         rectangle(*feature_.at - Point2{half_, half_}, *feature_.at + Point2{half_, half_})))
            cutter_.refuse(feature_, "its collar does not fit on the floor at its place", "move it inward");
        add_elbow();
        add_riser(story);
        if (outlet_ != nullptr) add_run();
        set_middle();
    }

private:
    /// Which way the duct goes out, and where along that wall.
    void find_wall() {
        wall_ = &layout_.walls[feature_.story * layout_.edges()];
        if (outlet_ != nullptr) {
            const std::vector<std::string>& walls = layout_.described.walls;
            const std::string on = outlet_->on.size() == 1 ? outlet_->on.front() : "";
            const auto edge = static_cast<std::size_t>(std::find(walls.begin(), walls.end(), on) - walls.begin());
            if (edge == walls.size() || outlet_->story != feature_.story)
                cutter_.refuse(*outlet_, "the end of a duct under a floor goes on an outside wall of the same story",
                               "write on: and the id of that wall, and story: as for " + feature_.id);
            wall_ = &layout_.walls[feature_.story * layout_.edges() + edge];
        }
        const Vector off = Point{feature_.at->x, feature_.at->y, wall_->frame.origin.z} - wall_->frame.origin;
        middle_ = {dot(off, wall_->frame.u), dot(off, wall_->frame.n)};
        if (outlet_ == nullptr || !outlet_->along || std::abs(*outlet_->along - middle_.x) < 0.005) return;
        char text[160];
        std::snprintf(text, sizeof text, "the duct from %s comes out %.3f m along %s", feature_.id.c_str(), middle_.x,
                      wall_->id.c_str());
        cutter_.refuse(*outlet_, text, "leave along out, or move one of the two");
    }

    void measure() {
        std::optional<double> around;
        for (const FeatureDescription* part : {&feature_, outlet_}) {
            for (std::size_t i = 0; part != nullptr && i < part->gaps.size(); ++i) {
                const At at = part->type->gaps[i].at;
                if (at == At::through || at == At::outside) around = around.value_or(cutter_.sizes(*part, i).around);
            }
        }
        radius_ = around.value_or(0.105) / 2;
        half_ = radius_ + 0.02;
        if (joint_ != nullptr) half_ = std::max(half_, radius_ + cutter_.sizes(*joint_, 0).width + 0.008);
        const RimLayout& rim = layout_.stories[feature_.story].rims[wall_edge(layout_, *wall_)];
        lowest_ = feature_.story == 0 ? rim.low - 1 : rim.low;
        elbow_ = -framing::subfloor - 0.03 - half_;
        if (outlet_ != nullptr && outlet_->up) elbow_ = *outlet_->up;
    }

    /// Level, with u along the wall and v into the house.
    [[nodiscard]] Frame plan() const { return plan_frame(wall_->frame); }
    [[nodiscard]] Point2 in_plan() const { return {middle_.x, -middle_.y}; }

    Skin sheet(const std::string& what, const Frame& frame, Point2 least, Point2 most, double back, double front) {
        Skin skin{.name = what, .frame = frame, .back = back, .front = front, .extent = rectangle(least, most)};
        skin.panels.push_back(made_.add("elbow-" + what, plain_prism(frame, skin.extent, back, front)));
        return skin;
    }

    void add_elbow() {
        const Point2 p = in_plan(), all{half_, half_};
        const double low = elbow_ - half_, high = elbow_ + half_, depth = half_ - plate;
        top_ = sheet("top", plan(), p - all, p + all, high - plate, high);
        sheet("bottom", plan(), p - all, p + all, low, low + plate);
        sheet("left", plan(), p - all, p + Point2{-depth, half_}, low + plate, high - plate);
        sheet("right", plan(), p + Point2{depth, -half_}, p + all, low + plate, high - plate);
        const Point2 least{middle_.x - depth, low + plate}, most{middle_.x + depth, high - plate};
        front_ = sheet("front", wall_->frame, least, most, middle_.y + depth, middle_.y + half_);
        sheet("back", wall_->frame, least, most, middle_.y - half_, middle_.y - depth);
    }

    /// A ring round the duct in a skin; where there is none, the skin is tight round it. Adds its levels to the tube's.
    void pass(const FeatureDescription& feature, At at, const Skin& skin, Point2 middle, SpaceIndex front, SpaceIndex back,
              Levels& levels) {
        for (std::size_t i = 0; i < feature.gaps.size(); ++i) {
            const FeatureGap& row = feature.type->gaps[i];
            if (row.at != at || row.shape != ShapeKind::ring || feature.gaps[i].left_out) continue;
            GapSizes sizes = cutter_.sizes(feature, i);
            sizes.around = 2 * radius_;
            sizes.count = 1;
            const GapIndex gap = cutter_.enter(feature, i, front, back, Cutter::shape_of(row, sizes, 0),
                                               cutter_.cutouts(row, sizes, skin, middle));
            levels.emplace_back(Height{skin.back}, GapIndex());
            levels.emplace_back(Height{skin.front}, gap);
            return;
        }
        cutter_.cut(feature, skin, around_circle(middle, radius_, pipe_sides), {});
    }

    /// Up through the floor, with the collar on it.
    void add_riser(const StoryLayout& story) {
        const Point2 p = in_plan();
        const double top = 0.04;
        floor_ = story.floor_skin;
        // The floor's panels lie in a frame of their own; the ring is given in the plan of the wall.
        floor_.frame = plan();
        floor_.extent = rectangle(p - Point2{2 * half_, 2 * half_}, p + Point2{2 * half_, 2 * half_});
        Levels levels{{Height{top_.back - 0.03}, GapIndex()}};
        if (joint_ != nullptr)
            pass(*joint_, At::side, top_, p, below_, air_, levels);
        else
            cutter_.cut(feature_, top_, around_circle(p, radius_, pipe_sides), {});
        floor_.back = -framing::subfloor;
        floor_.front = 0;
        pass(feature_, At::through, floor_, p, room_, below_, levels);
        levels.emplace_back(Height{top}, GapIndex());
        add_tube(made_, plan(), p, radius_, levels, "riser");
        const Point2 all{radius_ + 0.02, radius_ + 0.02};
        const BoxPanels collar = made_.box("collar", plan(), p - all, p + all, top - plate, top + 0.05, true, true);
        cutter_.cut(feature_, collar.back, around_circle(p, radius_, pipe_sides), {});
        if (const auto number = made_.row(At::inner)) made_.gap_in(collar.front, *number, p, room_, air_, true);
    }

    /// Out through the rim and the cladding, with the hood before it.
    void add_run() {
        const RimLayout& rim = layout_.stories[feature_.story].rims[wall_edge(layout_, *wall_)];
        const Point2 at{middle_.x, elbow_};
        cutter_.cut(feature_, front_, around_circle(at, radius_, pipe_sides), {});
        Levels levels{{Height{front_.back - 0.005}, GapIndex()}};
        if (rim.air > 0) {
            pass(*outlet_, At::sheathing, rim.rim, at, rim.front, below_, levels);
            pass(*outlet_, At::outside, wall_->skins.front(), at, layout_.outdoors, rim.front, levels);
        } else {
            pass(*outlet_, At::outside, rim.rim, at, layout_.outdoors, below_, levels);
        }
        const double end = wall_->outside() + 0.03;
        levels.emplace_back(Height{end}, GapIndex());
        add_tube(made_, wall_->frame, at, radius_, levels);
        Enclosure hood(cutter_, *outlet_);
        const Point2 all{radius_ + 0.02, radius_ + 0.02};
        const BoxPanels box = hood.box("hood", wall_->frame, at - all, at + all, end - plate, end + 0.05, true, true);
        cutter_.cut(*outlet_, box.back, around_circle(at, radius_, pipe_sides), {});
        if (const auto number = hood.row(At::outer)) hood.gap_in(box.front, *number, at, layout_.outdoors, air_, true);
    }

    void set_middle() {
        const double a = radius_ / 2, out = outlet_ != nullptr ? wall_->outside() + 0.03 : middle_.y + half_ - 2 * plate;
        const Frame side{wall_->frame.at(middle_.x, 0, 0), wall_->frame.n, wall_->frame.v, wall_->frame.u * -1};
        layout_.set_middle(air_, side,
                           {{{middle_.y - a, elbow_ - a},
                             {out, elbow_ - a},
                             {out, elbow_ + a},
                             {middle_.y + a, elbow_ + a},
                             {middle_.y + a, 0.04},
                             {middle_.y - a, 0.04}},
                            {}});
    }

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    Enclosure made_;
    const FeatureDescription* outlet_ = nullptr;
    const FeatureDescription* joint_ = nullptr;
    const WallLayout* wall_ = nullptr;
    SpaceIndex room_, below_, air_;
    Point2 middle_;  ///< of the riser: along the wall and along its n
    double radius_ = 0, half_ = 0;
    double elbow_ = 0, lowest_ = 0;  ///< heights over the floor: of the elbow's middle, of what it must stay above
    Skin top_, front_, floor_;
};

}  // namespace

bool is_floor_duct(const FeatureDescription& feature) {
    const bool level =
        std::find(feature.type->hosts.begin(), feature.type->hosts.end(), Host::floor) != feature.type->hosts.end();
    const bool ceiling = !feature.on.empty() && feature.on.front() == "ceiling";
    return level && !ceiling && makes(feature, At::through) && makes(feature, At::inner);
}

void place_floor_duct(Cutter& cutter, const FeatureDescription& feature,
                      const std::vector<const FeatureDescription*>& continued_by) {
    FloorDuct(cutter, feature, continued_by).place();
}

}  // namespace seamward
