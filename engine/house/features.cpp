// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "house/cutter.h"
#include "house/framing.h"
#include "house/place_features.h"

namespace seamward {

namespace {

using At = FeatureGap::At;
using Form = FeatureGap::Form;

/// One stretch of a pipe: where it passes one skin.
struct PipeStretch {
    const Skin* skin = nullptr;
    double radius = 0, behind = 0, before = 0;
    GapIndex gap;
    std::string material;
    std::vector<Point2> middles;
};

/// Puts one feature on a wall, a partition, a ceiling, a floor or the roof.
class SkinFeature {
public:
    SkinFeature(Cutter& cutter, const FeatureDescription& feature)
        : cutter_(cutter), layout_(cutter.layout()), feature_(feature) {}

    void on_wall(const WallLayout& wall, bool gable) {
        for (std::size_t i = 0; i < feature_.gaps.size(); ++i) {
            if (feature_.gaps[i].left_out) continue;
            const FeatureGap& row = feature_.type->gaps[i];
            switch (row.at) {
                case At::outside: on_skin(wall, i, wall.exterior ? 0 : side_skin(wall, true)); break;
                case At::sheathing:
                    if (wall.skins.size() > 2) on_skin(wall, i, 1);
                    break;
                case At::inside: {
                    const std::size_t before = layout_.house.survey.gaps.size();
                    const std::size_t skin = wall.exterior ? wall.skins.size() - 1 : side_skin(wall, false);
                    on_skin(wall, i, skin);
                    // Gaps are told from the cavity into the room, also on the side that n points to.
                    if (skin == 0 && layout_.house.survey.gaps.size() > before) turn_last_gap();
                    break;
                }
                case At::through:
                    if (gable && !on_gable(wall, i)) return;
                    if (on_edge_of_floor(wall)) {
                        if (feature_.side.empty())
                            through_wall(wall, i, false);
                        else
                            on_skin(wall, i, side_skin(wall, false));
                        break;
                    }
                    if (gable && wall.skins.size() == 2)
                        on_skin(wall, i, 0);
                    else
                        through_wall(wall, i, gable);
                    break;
                case At::top: on_plate(wall, i, true); break;
                case At::bottom: on_plate(wall, i, false); break;
                default: break;
            }
        }
        add_pipes();
    }

    /// On something level, at a point of the plan.
    void on_level(const Skin& skin, SpaceIndex above, SpaceIndex below, bool hidden_above) {
        if (!feature_.at) {
            cutter_.report(feature_, "at is missing", "write at: [4.5 m, 2 m], a point of the plan");
            return;
        }
        for (std::size_t i = 0; i < feature_.gaps.size(); ++i) {
            if (feature_.gaps[i].left_out || feature_.type->gaps[i].at != At::through) continue;
            const bool sloped = skin.along != 0 || skin.up != 0;
            const FeatureGap& row = feature_.type->gaps[i];
            if (row.shape == ShapeKind::slot && row.form == Form::line && row.spacing > 0)
                boards(skin, i, above, below);
            else if (sloped && feature_.type->gaps[i].shape != ShapeKind::ring)
                pierce_sloped(skin, i, *feature_.at, above, below);
            else
                // Cans, boots and pipes are out of sight: over a ceiling, under a floor.
                pierce(skin, i, *feature_.at, above, below, hidden_above ? 0.01 : 0.12, hidden_above ? 0.12 : 0.01);
        }
        add_pipes();
    }

private:
    void turn_last_gap() {
        std::swap(layout_.house.survey.gaps.back().between[0], layout_.house.survey.gaps.back().between[1]);
        std::reverse(layout_.house.places.back().through.begin(), layout_.house.places.back().through.end());
    }

    /// How high the feature is; in the floor that a partition goes through, half way down.
    [[nodiscard]] double height_on(const WallLayout& wall) const {
        return feature_.up.value_or(on_edge_of_floor(wall) ? wall.bottom / 2 : feature_.type->up);
    }
    [[nodiscard]] bool on_edge_of_floor(const WallLayout& wall) const {
        const std::vector<Host>& hosts = feature_.type->hosts;
        return wall.open_below && std::find(hosts.begin(), hosts.end(), Host::rim) != hosts.end();
    }

    /// Whether the feature lies over the room behind the wall, under the slope of the roof.
    bool on_gable(const WallLayout& wall, std::size_t number) {
        const std::optional<Point2> at = upright_place(cutter_, feature_, wall, feature_.type->gaps[number]);
        if (!at) return false;
        const double low = at->y - cutter_.sizes(feature_, number).size[1] / 2, foot = wall.plate_top + 0.01;
        if (low > foot && wall.story + 1 == layout_.stories.size()) return true;
        char text[120];
        std::snprintf(text, sizeof text, "it reaches down beside a room: the gable begins %.2f m over the floor", foot);
        cutter_.report(feature_, wall.story + 1 == layout_.stories.size() ? text : "its wall has another story on it",
                       wall.story + 1 == layout_.stories.size() ? "give it a larger up" : "name the story under the roof");
        return false;
    }

    /// The skin of a partition on the side of the room that the file names, or on the other one.
    [[nodiscard]] std::size_t side_skin(const WallLayout& wall, bool other) const {
        const Point2 at{feature_.along.value_or(wall.length / 2), height_on(wall)};
        const SpaceIndex r = beside(layout_, wall, at, true), l = beside(layout_, wall, at, false);
        const auto is = [&](SpaceIndex space) { return space.valid() && layout_.house.survey[space].id == feature_.side; };
        const bool on_right = is(r), on_left = is(l) && !on_right;  // round a free end both may be one room
        if (on_right == on_left) {
            const auto name = [&](SpaceIndex space) {
                return space.valid() ? layout_.house.survey[space].id : std::string("nothing");
            };
            cutter_.report(feature_,
                           feature_.side.empty() ? "side is missing: a partition has two"
                                                 : "there is no room " + feature_.side + " beside " + wall.id + " there",
                           "write side: " + name(r) + " or side: " + name(l));
        }
        return on_right != other ? 0 : wall.skins.size() - 1;
    }

    void on_skin(const WallLayout& wall, std::size_t number, std::size_t skin) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        if (row.shape == ShapeKind::slot && (row.form == Form::line || row.form == Form::cut || row.form == Form::edge)) {
            place_joint(cutter_, feature_, wall, number, skin);
            return;
        }
        std::optional<Point2> at = upright_place(cutter_, feature_, wall, row);
        if (!at) return;
        if (row.edges == std::vector<Edge>{Edge::bottom}) at->y = foot_of_skin(wall, skin) + sizes.width;
        const bool last = skin + 1 == wall.skins.size(), first = skin == 0;
        // In the cavity things end half way; into the open they stand out as far as their kind does.
        const double out = feature_.type->reach > 0 ? feature_.type->reach : 0.03;
        const double before = first && wall.exterior ? out : first ? 0.02 : stub(wall.cavities[skin - 1]);
        const double behind = last ? (wall.exterior ? std::max(0.02, row.shape == ShapeKind::ring ? out : 0.005) : 0.02)
                                   : stub(wall.cavities[skin]);
        const auto [front, back] = spaces_at(layout_, wall, skin, *at);
        check_framing(cutter_, feature_, wall, skin, *at);
        const bool toward_front = first && !wall.exterior;
        if (const auto post = post_beyond(layout_, wall, *at, toward_front); post && (last || toward_front)) {
            sleeves_.push_back(std::make_unique<Skin>(wall.skins[skin]));
            Skin& both = *sleeves_.back();
            both.panels.insert(toward_front ? both.panels.end() : both.panels.begin(), post->panel);
            (toward_front ? both.front : both.back) += toward_front ? post->depth : -post->depth;
            pierce(both, number, *at, front, back, behind, before);
            return;
        }
        pierce(wall.skins[skin], number, *at, front, back, behind, before);
    }

    [[nodiscard]] static double stub(const WallCavity& cavity) { return std::min(0.035, (cavity.front - cavity.back) * 0.4); }

    /// Joints on something without ends of its own need their length said.
    [[nodiscard]] bool has_length(const FeatureGap& row, const GapSizes& sizes) {
        const bool boxed = row.form == Form::around || row.form == Form::beside;
        if (row.shape != ShapeKind::slot || boxed || sizes.length > 0) return true;
        cutter_.report(feature_, "length is missing", "write length: 1.2 m, how long the joint is");
        return false;
    }

    /// Joints from wall to wall, row by row.
    void boards(const Skin& skin, std::size_t number, SpaceIndex above, SpaceIndex below) {
        constexpr double margin = 0.02;
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const auto [lowest, highest] =
            std::minmax_element(skin.extent.begin(), skin.extent.end(), [](Point2 a, Point2 b) { return a.y < b.y; });
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
        if (cutouts.empty()) {
            cutter_.report(feature_, "there is no room for a joint between its boards", "make spacing smaller");
            return;
        }
        (void)cutter_.enter(feature_, number, above, below, Cutter::shape_of(row, sizes, total), cutouts);
    }

    /// What is no pipe stands in a level curb on a sloped roof.
    void pierce_sloped(const Skin& skin, std::size_t number, Point2 at, SpaceIndex front, SpaceIndex back) {
        constexpr double sheet = 0.002;
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        if (!has_length(row, sizes)) return;
        Skin curb{.name = skin.name, .frame = skin.frame, .back = 1e9, .front = -1e9, .extent = skin.extent};
        std::vector<Loop> around;
        for (const Cutout& cutout : cutter_.cutouts(row, sizes, skin, at)) {
            around.push_back(sleeve_round(cutout, sheet));
            for (const Point2 p : around.back()) {
                if (is_inside(skin.extent, p)) continue;
                cutter_.report(feature_, "it reaches past the edge of its roof plane", "move it toward the middle of the plane");
                return;
            }
            cutter_.cut(feature_, skin, around.back(), {});
            for (const Point2 p : around.back()) {
                curb.back = std::min(curb.back, skin.height(skin.back).at(p) - 0.01);
                curb.front = std::max(curb.front, skin.height(skin.front).at(p) + 0.04);
            }
        }
        for (const Loop& outer : around) {
            Prism prism;
            prism.frame = skin.frame;
            prism.outline = outer;
            prism.heights = {{curb.back}, {curb.front}};
            curb.panels.push_back(
                layout_.add_panel(feature_.id + "/curb", "curb of " + feature_.id, "metal", Layer::fixture, std::move(prism)));
        }
        sleeves_.push_back(std::make_unique<Skin>(std::move(curb)));
        pierce(*sleeves_.back(), number, at, front, back, 0, feature_.type->reach);
    }

    void pierce(const Skin& skin, std::size_t number, Point2 at, SpaceIndex front, SpaceIndex back, double behind,
                double before) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        if (!has_length(row, sizes)) return;
        std::vector<Cutout> cutouts = cutter_.cutouts(row, sizes, skin, at);
        for (const Cutout& cutout : cutouts) {
            for (const Point2 p : cutout.filled.empty() ? cutout.loop : cutout.filled) {
                if (is_inside(skin.extent, p)) continue;
                cutter_.report(feature_, "it does not fit on " + skin.name + " at its place", "move it inward");
                return;
            }
        }
        const GapIndex gap = cutter_.enter(feature_, number, front, back, Cutter::shape_of(row, sizes, 0), cutouts);
        layout_.house.survey.gaps[gap.value].count = std::max<std::uint32_t>(1, sizes.count);
        cutter_.fill(feature_, number, sizes, cutouts, at, behind, before, gap);
        if (row.shape == ShapeKind::ring)
            pipes_.push_back({&skin, sizes.around / 2, behind, before, gap, row.insert.empty() ? "metal" : row.insert,
                              Cutter::places(row, sizes, at)});
    }

    static Loop sleeve_round(const Cutout& cutout, double sheet) {
        Point2 least{1e9, 1e9}, most{-1e9, -1e9};
        for (const Loop* loop : {&cutout.loop, &cutout.filled}) {
            for (const Point2 p : *loop) {
                least = {std::min(least.x, p.x), std::min(least.y, p.y)};
                most = {std::max(most.x, p.x), std::max(most.y, p.y)};
            }
        }
        return rectangle(least - Point2{sheet, sheet}, most + Point2{sheet, sheet});
    }

    /// Through all of a wall in a sleeve that keeps its cavities shut.
    void through_wall(const WallLayout& wall, std::size_t number, bool gable) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const std::optional<Point2> at = upright_place(cutter_, feature_, wall, row);
        if (!at) return;
        constexpr double sheet = 0.002;
        // Nothing stands behind a gable's sheathing.
        const std::size_t skins = wall.skins.size() - (gable ? 1 : 0);
        const Skin& last = wall.skins[skins - 1];
        Skin whole{.name = wall.name, .frame = wall.frame, .back = last.back, .front = wall.outside(), .extent = last.extent};
        const SpaceIndex front = spaces_at(layout_, wall, 0, *at).first, back = spaces_at(layout_, wall, skins - 1, *at).second;
        for (const Cutout& cutout : cutter_.cutouts(row, sizes, whole, *at)) {
            Loop outer;
            const Point2 middle =
                row.shape == ShapeKind::ring ? cutout.through - Point2{0, sizes.around / 2 + sizes.width / 2} : *at;
            if (row.shape == ShapeKind::ring)
                outer = around_circle(middle, sizes.around / 2 + sizes.width + sheet, pipe_sides);
            else if (row.shape == ShapeKind::hole)
                outer = around_circle(*at, sizes.width / 2 + sheet, pipe_sides);
            else
                outer = sleeve_round(cutout, sheet);
            for (std::size_t i = 0; i < skins; ++i) cutter_.cut(feature_, wall.skins[i], outer, {});
            Prism sleeve;
            sleeve.frame = wall.frame;
            sleeve.outline = outer;
            sleeve.heights = {{whole.back}, {whole.front}};
            whole.panels.push_back(layout_.add_panel(feature_.id + "/sleeve", "sleeve of " + feature_.id, "metal", Layer::fixture,
                                                     std::move(sleeve)));
        }
        sleeves_.push_back(std::make_unique<Skin>(std::move(whole)));
        const std::size_t before = layout_.house.survey.gaps.size();
        pierce(*sleeves_.back(), number, *at, front, back, row.shape == ShapeKind::ring ? 0.04 : 0,
               row.shape == ShapeKind::ring ? 0.04 : 0);
        if (layout_.house.survey.gaps.size() == before) return;  // it did not fit
        layout_.house.survey.gaps.back().substrates = {
            wall.exterior ? layout_.panels[wall.skins.front().panels.front()].material : "drywall",
            row.insert.empty() ? "metal" : row.insert};
    }

    /// Up or down through the plate of a wall.
    void on_plate(const WallLayout& wall, std::size_t number, bool up) {
        const StoryLayout& story = layout_.stories[wall.story];
        if (!feature_.along) {
            cutter_.report(feature_, "along is missing", "write along: 3.2 m, counted from the wall's left end");
            return;
        }
        if (up ? wall.open_above : wall.open_below) {
            cutter_.report(feature_,
                           "the air in " + wall.name + " goes on through the " + (up ? "ceiling" : "floor") + ", without a plate",
                           up ? "name the highest story of that partition" : "name its lowest story");
            return;
        }
        const WallCavity& cavity = wall.cavities.back();
        const Point2 at{*feature_.along, -(cavity.front + cavity.back) / 2};
        const Point in_plan = wall.frame.at(at.x, 0, -at.y);
        const SpaceIndex beyond = up ? layout_.above_ceiling(wall.story, {in_plan.x, in_plan.y})
                                     : layout_.below_floor(wall.story, {in_plan.x, in_plan.y});
        if (!beyond.valid()) {
            cutter_.report(feature_, "there is no air under the floor of " + wall.name,
                           "describe the fill or the crawl space in foundation");
            return;
        }
        plates_.push_back(std::make_unique<Skin>(up ? wall.top_plate : wall.bottom_plate));
        Skin& skin = *plates_.back();
        if (!up) {
            const Skin& floor = story.floor_skin;
            skin.panels.insert(skin.panels.begin(), floor.panels.begin(), floor.panels.end());
            skin.back = floor.back;
            skin.extent = rectangle({-1, -10}, {wall.length + 1, 10});
        }
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const FeatureGap& row = feature_.type->gaps[number];
        const double across = row.shape == ShapeKind::hole   ? sizes.width
                              : row.shape == ShapeKind::ring ? sizes.around + 2 * sizes.width
                                                             : 0;
        if (across > cavity.front - cavity.back - 0.004) {
            cutter_.report(feature_, "it is wider than the wall's cavity", "make it narrower, or use a deeper wall");
            return;
        }
        if (up)
            pierce(skin, number, at, beyond, cavity.at({at.x, wall.plate_top - framing::double_top_plate - 0.02}), 0.06, 0.08);
        else
            pierce(skin, number, at, cavity.at({at.x, framing::plate + 0.02}), beyond, 0.05, 0.04);
    }

    /// One pipe for each place, through all skins that it passes with one diameter.
    void add_pipes() {
        if (pipes_.empty()) return;
        std::sort(pipes_.begin(), pipes_.end(),
                  [](const PipeStretch& a, const PipeStretch& b) { return a.skin->back < b.skin->back; });
        std::size_t first = 0;
        while (first < pipes_.size()) {
            std::size_t end = first + 1;
            while (end < pipes_.size() && pipes_[end].radius == pipes_[first].radius &&
                   pipes_[end].middles.size() == pipes_[first].middles.size() && parallel(*pipes_[end].skin, *pipes_[first].skin))
                ++end;
            add_pipe(first, end);
            first = end;
        }
        pipes_.clear();
    }

    static bool parallel(const Skin& a, const Skin& b) { return dot(a.frame.n, b.frame.n) > 0.999; }

    void add_pipe(std::size_t first, std::size_t end) {
        const PipeStretch& foot = pipes_[first];
        Panel panel{feature_.id + "/pipe-" + std::to_string(first + 1),
                    feature_.name.empty() ? feature_.type->name : feature_.name,
                    foot.material,
                    Layer::fixture,
                    {}};
        for (const Point2 middle : foot.middles) {
            Prism prism;
            prism.frame = foot.skin->frame;
            prism.outline = around_circle(middle, foot.radius, pipe_sides);
            prism.heights = {foot.skin->height(foot.skin->back - foot.behind)};
            for (std::size_t i = first; i < end; ++i) {
                prism.heights.push_back(pipes_[i].skin->height(pipes_[i].skin->back));
                prism.gap_of_level.emplace_back();
                prism.heights.push_back(pipes_[i].skin->height(pipes_[i].skin->front));
                prism.gap_of_level.push_back(pipes_[i].gap);
            }
            prism.heights.push_back(pipes_[end - 1].skin->height(pipes_[end - 1].skin->front + pipes_[end - 1].before));
            prism.gap_of_level.emplace_back();
            panel.prisms.push_back(std::move(prism));
        }
        layout_.add_panel(std::move(panel));
    }

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    std::vector<PipeStretch> pipes_;
    std::vector<std::unique_ptr<Skin>> sleeves_, plates_;
};

}  // namespace

void place_on_wall(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, bool gable) {
    SkinFeature(cutter, feature).on_wall(wall, gable);
}

void place_on_level(Cutter& cutter, const FeatureDescription& feature, const Skin& skin, SpaceIndex above, SpaceIndex below,
                    bool hidden_above) {
    SkinFeature(cutter, feature).on_level(skin, above, below, hidden_above);
}

}  // namespace seamward
