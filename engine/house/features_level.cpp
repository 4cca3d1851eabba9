// SPDX-License-Identifier: GPL-3.0-or-later
// Features on ceilings, floors and roofs.
#include <algorithm>

#include "house/piercing.h"

namespace seamward {

namespace {

using Form = FeatureGap::Form;

class LevelFeature : Piercing {
public:
    using Piercing::Piercing;

    void place(const Skin& skin, const LevelAir& air, bool hidden_above) {
        if (!feature_.at) cutter_.refuse(feature_, "at is missing", "write at: [4.5 m, 2 m], a point of the plan");
        const Point2 at = *feature_.at;
        for (std::size_t i = 0; i < feature_.gaps.size(); ++i) {
            const FeatureGap& row = feature_.type->gaps[i];
            if (feature_.gaps[i].left_out || row.at != FeatureGap::At::through) continue;
            const bool sloped = skin.along != 0 || skin.up != 0;
            if (row.shape == ShapeKind::slot && row.form == Form::line && row.spacing > 0) {
                boards(skin, i, air);
                continue;
            }
            require_one_air(skin, i, air);
            if (sloped && row.shape != ShapeKind::ring)
                pierce_sloped(skin, i, at, air.above(at), air.below(at));
            else
                // Cans, boots and pipes are out of sight: over a ceiling, under a floor.
                pierce(skin, i, at, air.above(at), air.below(at), hidden_above ? 0.01 : 0.12, hidden_above ? 0.12 : 0.01);
        }
        add_pipes();
    }

private:
    /// Each opening must lie over one body of air and under one, with all of it.
    void require_one_air(const Skin& skin, std::size_t number, const LevelAir& air) {
        const SpaceIndex above = air.above(*feature_.at), below = air.below(*feature_.at);
        const auto named = [&](SpaceIndex space) {
            return space.valid() ? layout_.house.survey[space].label() : std::string("a wall, a board or nothing");
        };
        const auto check = [&](SpaceIndex here, SpaceIndex there, const char* side) {
            if (here == there) return;
            cutter_.refuse(feature_, std::string("part of it lies ") + side + " " + named(there) + ", not " + named(here),
                           "move it so that all of it lies " + std::string(side) + " one of them");
        };
        const FeatureGap& row = feature_.type->gaps[number];
        for (const Cutout& cutout : cutter_.cutouts(row, cutter_.sizes(feature_, number), skin, *feature_.at)) {
            const Loop& loop = cutout.loop.empty() ? cutout.filled : cutout.loop;
            if (!lies_within(skin.extent, loop)) return;  // reported as such
            for (const Point2 p : loop) {
                check(above, air.above(p), "under");
                check(below, air.below(p), "over");
            }
        }
    }

    /// Joints from wall to wall, row by row.
    void boards(const Skin& skin, std::size_t number, const LevelAir& air) {
        constexpr double margin = 0.02;
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const auto [lowest, highest] =
            std::minmax_element(skin.extent.begin(), skin.extent.end(), [](Point2 a, Point2 b) { return a.y < b.y; });
        (void)cutter_.as_many_as_fit(feature_, highest->y - lowest->y, sizes.spacing);
        std::vector<Cutout> cutouts;
        double total = 0;
        for (double y = lowest->y + sizes.spacing; y + sizes.width + margin < highest->y; y += sizes.spacing) {
            std::vector<double> ends;  // of the room at that height
            for (std::size_t i = 0; i < skin.extent.size(); ++i) {
                const Point2 a = skin.extent[i], b = skin.extent[(i + 1) % skin.extent.size()];
                if ((a.y > y) != (b.y > y)) ends.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
            }
            std::sort(ends.begin(), ends.end());
            for (std::size_t i = 0; i + 1 < ends.size(); i += 2) {
                const double from = ends[i] + margin, to = ends[i + 1] - margin;
                const double length = sizes.length > 0 ? std::min(to - from, sizes.length - total) : to - from;
                if (length < 0.05) continue;
                cutouts.push_back(
                    {&skin, rectangle({from, y}, {from + length, y + sizes.width}), {from + length / 2, y + sizes.width / 2}});
                total += length;
            }
        }
        if (cutouts.empty()) cutter_.refuse(feature_, "there is no room for a joint between its boards", "make spacing smaller");
        (void)cutter_.enter(feature_, number, air.above(*feature_.at), air.below(*feature_.at),
                            Cutter::shape_of(row, sizes, total), cutouts);
    }

    /// What is no pipe stands in a level curb on a sloped roof.
    void pierce_sloped(const Skin& skin, std::size_t number, Point2 at, SpaceIndex front, SpaceIndex back) {
        constexpr double sheet = 0.002;
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        require_length(row, sizes);
        Skin curb{.name = skin.name, .frame = skin.frame, .back = 1e9, .front = -1e9, .extent = skin.extent};
        std::vector<Loop> around;
        for (const Cutout& cutout : cutter_.cutouts(row, sizes, skin, at)) {
            around.push_back(sleeve_round(cutout, sheet));
            if (!lies_within(skin.extent, around.back()))
                cutter_.refuse(feature_, "it reaches past the edge of its roof plane", "move it toward the middle of the plane");
            cutter_.cut(feature_, skin, around.back(), {});
            for (const Point2 p : around.back()) {
                curb.back = std::min(curb.back, skin.height(skin.back).at(p) - 0.01);
                curb.front = std::max(curb.front, skin.height(skin.front).at(p) + 0.04);
            }
        }
        std::vector<const Skin*> curbs;
        for (const Loop& outer : around) {
            Prism prism;
            prism.frame = skin.frame;
            prism.outline = outer;
            prism.heights = {{curb.back}, {curb.front}};
            Skin& one = keep(curb);
            one.panels.push_back(
                layout_.add_panel(feature_.id + "/curb", "curb of " + feature_.id, "metal", Layer::fixture, std::move(prism)));
            curbs.push_back(&one);
        }
        pierce(*curbs.front(), number, at, front, back, 0, feature_.type->reach, curbs);
    }
};

}  // namespace

void place_on_level(Cutter& cutter, const FeatureDescription& feature, const Skin& skin, const LevelAir& air, bool hidden_above) {
    LevelFeature(cutter, feature).place(skin, air, hidden_above);
}

}  // namespace seamward
