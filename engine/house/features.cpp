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
                    if (gable)
                        on_skin(wall, i, 0);
                    else
                        through_wall(wall, i);
                    break;
                case At::top: on_plate(wall, i, true); break;
                case At::bottom: on_plate(wall, i, false); break;
                default: break;
            }
        }
        add_pipes();
    }

    /// On something level, at a point of the plan.
    void on_level(const Skin& skin, SpaceIndex above, SpaceIndex below) {
        if (!feature_.at) {
            cutter_.report(feature_, "at is missing", "write at: [4.5 m, 2 m], a point of the plan");
            return;
        }
        for (std::size_t i = 0; i < feature_.gaps.size(); ++i) {
            if (feature_.gaps[i].left_out || feature_.type->gaps[i].at != At::through) continue;
            const bool sloped = skin.along != 0 || skin.up != 0;
            if (sloped && feature_.type->gaps[i].shape != ShapeKind::ring)
                pierce_sloped(skin, i, *feature_.at, above, below);
            else
                pierce(skin, i, *feature_.at, above, below, 0.12, 0.01);
        }
        add_pipes();
    }

private:
    void turn_last_gap() {
        std::swap(layout_.house.survey.gaps.back().between[0], layout_.house.survey.gaps.back().between[1]);
        std::reverse(layout_.house.places.back().through.begin(), layout_.house.places.back().through.end());
    }

    [[nodiscard]] std::optional<Point2> place_on(const WallLayout& wall, const FeatureGap& row) const {
        if (!feature_.along && !(row.form == Form::edge || (row.form == Form::line && !row.upright && row.length == 0))) {
            cutter_.report(feature_, "along is missing",
                           "write along: 3.2 m, counted from the wall's left end as seen from outside");
            return std::nullopt;
        }
        const double along = feature_.along.value_or(wall.length / 2);
        const double up = feature_.up.value_or(feature_.type->up) + row.rise;
        return Point2{along, up};
    }

    /// The skin of a partition on the side of the room that the file names, or on the other one.
    [[nodiscard]] std::size_t side_skin(const WallLayout& wall, bool other) const {
        const double u = feature_.along.value_or(wall.length / 2);
        const Point right = wall.frame.at(u, 0, wall.outside() + 0.1), left = wall.frame.at(u, 0, wall.inside() - 0.1);
        const SpaceIndex r = layout_.room_space(wall.story, {right.x, right.y}),
                         l = layout_.room_space(wall.story, {left.x, left.y});
        const auto is = [&](SpaceIndex space) { return space.valid() && layout_.house.survey[space].id == feature_.side; };
        const bool on_right = is(r), on_left = is(l);
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

    /// The space before a skin of a wall (n points to it) and the one behind.
    [[nodiscard]] std::pair<SpaceIndex, SpaceIndex> spaces_at(const WallLayout& wall, std::size_t skin, Point2 at) const {
        const auto beyond = [&](bool front) {
            const Point p = wall.frame.at(at.x, 0, front ? wall.outside() + 0.1 : wall.inside() - 0.1);
            return layout_.room_space(wall.story, {p.x, p.y});
        };
        SpaceIndex front, back;
        if (skin > 0)
            front = wall.cavities[skin - 1].at(at);
        else
            front = wall.exterior ? outside_of(layout_, wall, at.y) : beyond(true);
        if (wall.exterior && at.y > wall.plate_top && wall.story + 1 == layout_.stories.size())
            back = layout_.attic;
        else
            back = skin < wall.cavities.size() ? wall.cavities[skin].at(at) : beyond(false);
        return {front, back};
    }

    void on_skin(const WallLayout& wall, std::size_t number, std::size_t skin) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        if (row.shape == ShapeKind::slot && (row.form == Form::line || row.form == Form::cut || row.form == Form::edge)) {
            joint(wall, number, skin, sizes);
            return;
        }
        std::optional<Point2> at = place_on(wall, row);
        if (!at) return;
        if (row.edges == std::vector<Edge>{Edge::bottom}) at->y = foot_of(wall, skin) + sizes.width;
        const bool last = skin + 1 == wall.skins.size(), first = skin == 0;
        // In the cavity things end half way; into the open they stand out as far as their kind does.
        const double out = feature_.type->reach > 0 ? feature_.type->reach : 0.03;
        const double before = first && wall.exterior ? out : first ? 0.02 : stub(wall.cavities[skin - 1]);
        const double behind = last ? (wall.exterior ? std::max(0.02, row.shape == ShapeKind::ring ? out : 0.005) : 0.02)
                                   : stub(wall.cavities[skin]);
        const auto [front, back] = spaces_at(wall, skin, *at);
        check_behind(wall, skin, *at);
        pierce(wall.skins[skin], number, *at, front, back, behind, before);
    }

    [[nodiscard]] static double stub(const WallCavity& cavity) { return std::min(0.035, (cavity.front - cavity.back) * 0.4); }

    /// Framing behind the opening would shut it.
    void check_behind(const WallLayout& wall, std::size_t skin, Point2 at) {
        const std::size_t first = skin == 0 ? 0 : skin - 1, last = std::min(skin, wall.cavities.size() - 1);
        if (at.y > wall.plate_top) return;
        for (std::size_t i = first; i <= last; ++i) {
            if (clear_at(wall.cavities[i], at)) continue;
            cutter_.report(feature_,
                           "at its place in " + wall.name + " stands framing (a post, a plate or the frame of an opening)",
                           "move it along or up by a few centimeters");
            return;
        }
    }

    /// What is no pipe stands in a level curb on a sloped roof.
    void pierce_sloped(const Skin& skin, std::size_t number, Point2 at, SpaceIndex front, SpaceIndex back) {
        constexpr double sheet = 0.002;
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        Skin curb{.name = skin.name, .frame = skin.frame, .back = 1e9, .front = -1e9, .extent = skin.extent};
        std::vector<Loop> around;
        for (const Cutout& cutout : cutter_.cutouts(row, sizes, skin, at)) {
            around.push_back(sleeve_round(cutout, sheet));
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
        pierce(*sleeves_.back(), number, at, front, back, 0, 0);
    }

    [[nodiscard]] bool clear_at(const WallCavity& cavity, Point2 at) const {
        if (!cavity.bays.empty()) return cavity.at(at).valid();
        const MiddleSurface& middle = layout_.house.middles[cavity.space.value];
        if (middle.figure.outline.empty()) return true;
        bool clear = is_inside(middle.figure.outline, at);
        for (const Loop& hole : middle.figure.holes) clear = clear && !is_inside(hole, at);
        return clear;
    }

    void pierce(const Skin& skin, std::size_t number, Point2 at, SpaceIndex front, SpaceIndex back, double behind,
                double before) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
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

    /// Where the lowest openings of a skin's foot are: just over what ends the air behind.
    [[nodiscard]] static double foot_of(const WallLayout& wall, std::size_t skin) {
        const bool air = skin == 0 && wall.cavities.size() > 1;  // behind brick
        return air ? wall.bottom + framing::closer + 0.005 : framing::plate + 0.004;
    }

    /// Joints: along an edge of a skin, along a line in rows, or short cuts in a row.
    void joint(const WallLayout& wall, std::size_t number, std::size_t skin_number, const GapSizes& sizes) {
        const FeatureGap& row = feature_.type->gaps[number];
        const Skin& skin = wall.skins[skin_number];
        const std::optional<Point2> at = place_on(wall, row);
        if (!at) return;
        const std::size_t cavity = std::min(skin_number, wall.cavities.size() - 1);
        const MiddleSurface& middle = layout_.house.middles[wall.cavities[cavity].space.value];
        if (middle.figure.outline.empty()) return;
        const Loop& air = middle.figure.outline;
        const double left = std::min_element(air.begin(), air.end(), by_x)->x + 0.01,
                     right = std::max_element(air.begin(), air.end(), by_x)->x - 0.01;
        const double w = sizes.width, high = wall.plate_top - framing::double_top_plate - 0.004;
        std::vector<Cutout> cutouts;
        double total = 0;
        const auto add_level = [&](double u0, double u1, double v) {
            cutouts.push_back({&skin, rectangle({u0, v}, {u1, v + w}), {(u0 + u1) / 2, v + w / 2}});
            total += u1 - u0;
        };
        if (row.form == Form::cut || row.upright) {
            const double foot = row.edges.empty() ? at->y : foot_of(wall, skin_number);
            const double length = sizes.length > 0 ? sizes.length : high - foot - 0.02;
            std::vector<double> starts{at->x};
            if (row.form == Form::cut) {
                const double reach = row.upright ? w : length;
                const double spacing = std::max(sizes.spacing, reach + 0.03);
                const std::uint32_t count = feature_.count.value_or(
                    row.count > 0 ? row.count : static_cast<std::uint32_t>(std::max(1.0, (right - left) / spacing)));
                starts.clear();
                for (std::uint32_t i = 0; i < count; ++i)
                    starts.push_back(feature_.along.value_or((left + right) / 2) + (i - (count - 1) / 2.0) * spacing);
            }
            for (const double u : starts) {
                const Point2 half = row.upright ? Point2{w / 2, length / 2} : Point2{length / 2, w / 2};
                const Point2 middle_of{u, row.upright ? foot + length / 2 : foot + w / 2};
                if (in_opening(wall, middle_of.x - half.x, middle_of.x + half.x, middle_of.y)) continue;
                cutouts.push_back({&skin, rectangle(middle_of - half, middle_of + half), middle_of});
            }
            if (row.form == Form::line) total = length;
        } else {
            std::vector<double> heights{at->y};
            if (row.form == Form::edge)
                heights = {row.edges.front() == Edge::top ? high - w : foot_of(wall, skin_number)};
            else if (sizes.spacing > 0) {
                heights.clear();
                const double needed = sizes.length > 0 ? std::ceil(sizes.length / (right - left)) : 1e9;
                for (double v = std::max(0.3, at->y); v < high - 0.05 && static_cast<double>(heights.size()) < needed;
                     v += sizes.spacing)
                    heights.push_back(v);
            }
            double still = sizes.length > 0 ? sizes.length : 1e9;
            for (const double v : heights) {
                for (auto [u0, u1] : free_stretches(wall, v, left, right)) {
                    if (sizes.length > 0 && heights.size() == 1 && feature_.along) {
                        u0 = std::max(u0, *feature_.along - sizes.length / 2);
                        u1 = std::min(u1, *feature_.along + sizes.length / 2);
                    }
                    u1 = std::min(u1, u0 + still);
                    if (u1 - u0 < 0.02) continue;
                    add_level(u0, u1, v);
                    still -= u1 - u0;
                }
            }
        }
        if (cutouts.empty()) {
            cutter_.report(feature_, "there is no room for it on " + wall.name, "move it, or make it shorter");
            return;
        }
        const Point2 through = cutouts[cutouts.size() / 2].through;
        const auto [front, back] = spaces_at(wall, skin_number, through);
        check_behind(wall, skin_number, through);
        const GapIndex gap = cutter_.enter(feature_, number, front, back, Cutter::shape_of(row, sizes, total), cutouts);
        if (row.form == Form::cut) layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(cutouts.size());
    }

    static bool by_x(Point2 a, Point2 b) { return a.x < b.x; }

    [[nodiscard]] static bool in_opening(const WallLayout& wall, double u0, double u1, double v) {
        constexpr double margin = 0.05;
        return std::any_of(wall.openings.begin(), wall.openings.end(), [&](const Loop& opening) {
            return u1 > opening[0].x - margin && u0 < opening[2].x + margin && v > opening[0].y - margin &&
                   v < opening[2].y + margin;
        });
    }

    /// The stretches of a level line between the openings of a wall.
    [[nodiscard]] static std::vector<std::pair<double, double>> free_stretches(const WallLayout& wall, double v, double left,
                                                                               double right) {
        constexpr double margin = 0.05;
        std::vector<std::pair<double, double>> taken;
        for (const Loop& opening : wall.openings) {
            if (v > opening[0].y - margin && v < opening[2].y + margin)
                taken.emplace_back(opening[0].x - margin, opening[2].x + margin);
        }
        std::sort(taken.begin(), taken.end());
        std::vector<std::pair<double, double>> free;
        for (const auto& [from, to] : taken) {
            if (from > left) free.emplace_back(left, from);
            left = std::max(left, to);
        }
        if (right > left) free.emplace_back(left, right);
        return free;
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
    void through_wall(const WallLayout& wall, std::size_t number) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const std::optional<Point2> at = place_on(wall, row);
        if (!at) return;
        constexpr double sheet = 0.002;
        Skin whole{.name = wall.name,
                   .frame = wall.frame,
                   .back = wall.inside(),
                   .front = wall.outside(),
                   .extent = wall.skins.back().extent};
        const SpaceIndex front = spaces_at(wall, 0, *at).first, back = spaces_at(wall, wall.skins.size() - 1, *at).second;
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
            for (const Skin& skin : wall.skins) cutter_.cut(feature_, skin, outer, {});
            Prism sleeve;
            sleeve.frame = wall.frame;
            sleeve.outline = outer;
            sleeve.heights = {{whole.back}, {whole.front}};
            whole.panels.push_back(layout_.add_panel(feature_.id + "/sleeve", "sleeve of " + feature_.id, "metal", Layer::fixture,
                                                     std::move(sleeve)));
        }
        sleeves_.push_back(std::make_unique<Skin>(std::move(whole)));
        pierce(*sleeves_.back(), number, *at, front, back, row.shape == ShapeKind::ring ? 0.04 : 0,
               row.shape == ShapeKind::ring ? 0.04 : 0);
        layout_.house.survey.gaps.back().substrates = {
            wall.exterior ? layout_.panels[wall.skins.front().panels.front()].material : "drywall",
            row.insert.empty() ? "metal" : row.insert};
    }

    /// Up or down through the plate of a wall.
    void on_plate(const WallLayout& wall, std::size_t number, bool up) {
        const StoryLayout& story = layout_.stories[wall.story];
        const SpaceIndex beyond = up ? story.above : story.below;
        if (!beyond.valid()) {
            cutter_.report(feature_, "there is no air under the floor of " + wall.name,
                           "describe the fill or the crawl space in foundation");
            return;
        }
        if (!feature_.along) {
            cutter_.report(feature_, "along is missing", "write along: 3.2 m, counted from the wall's left end");
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
        const WallCavity& cavity = wall.cavities.back();
        const Point2 at{*feature_.along, -(cavity.front + cavity.back) / 2};
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

SpaceIndex outside_of(const Layout& layout, const WallLayout& wall, double up) {
    if (wall.story + 1 != layout.stories.size()) return layout.outdoors;
    const EaveLayout& eave = layout.eaves[wall_edge(layout, wall)];
    return eave.present && up > eave.soffit_bottom ? eave.air : layout.outdoors;
}

std::size_t wall_edge(const Layout& layout, const WallLayout& wall) {
    return static_cast<std::size_t>(&wall - layout.walls.data()) % layout.edges();
}

void place_on_wall(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, bool gable) {
    SkinFeature(cutter, feature).on_wall(wall, gable);
}

void place_on_level(Cutter& cutter, const FeatureDescription& feature, const Skin& skin, SpaceIndex above, SpaceIndex below) {
    SkinFeature(cutter, feature).on_level(skin, above, below);
}

}  // namespace seamward
