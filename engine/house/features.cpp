// SPDX-License-Identifier: GPL-3.0-or-later
// Features on walls and partitions.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "house/framing.h"
#include "house/piercing.h"

namespace seamward {

namespace {

using At = FeatureGap::At;
using Form = FeatureGap::Form;

/// Puts one feature on a wall or a partition.
class WallFeature : Piercing {
public:
    using Piercing::Piercing;

    void place(const WallLayout& wall, bool gable) {
        for (std::size_t i = 0; i < feature_.gaps.size(); ++i) {
            if (feature_.gaps[i].left_out) continue;
            switch (feature_.type->gaps[i].at) {
                case At::outside: on_skin(wall, i, wall.exterior ? 0 : side_skin(wall, true)); break;
                case At::sheathing:
                    if (wall.skins.size() > 2) on_skin(wall, i, 1);
                    break;
                case At::inside: {
                    const std::size_t before = layout_.house.survey.gaps.size();
                    const std::size_t skin = wall.exterior ? wall.skins.size() - 1 : side_skin(wall, false);
                    on_skin(wall, i, skin);
                    // Gaps are told from the cavity into the room, also on the side that n points to.
                    if (skin == 0) turn_gaps_from(before);
                    break;
                }
                case At::through: through(wall, i, gable); break;
                case At::top: on_plate(wall, i, true); break;
                case At::bottom: on_plate(wall, i, false); break;
                default:
                    cutter_.refuse(
                        feature_,
                        "the program draws no such gap of a wall: " + std::string(place_word(feature_.type->gaps[i].at)),
                        "list it in the job as a gap with between");
            }
        }
        add_pipes();
    }

private:
    void turn_gaps_from(std::size_t first) {
        for (std::size_t i = first; i < layout_.house.survey.gaps.size(); ++i) {
            std::swap(layout_.house.survey.gaps[i].between[0], layout_.house.survey.gaps[i].between[1]);
            std::reverse(layout_.house.places[i].through.begin(), layout_.house.places[i].through.end());
        }
    }

    void through(const WallLayout& wall, std::size_t number, bool gable) {
        if (gable) require_gable(wall, number);
        if (on_edge_of_floor(wall) && !feature_.side.empty())
            on_skin(wall, number, side_skin(wall, false));
        else if (gable && wall.skins.size() == 2)
            on_skin(wall, number, 0);
        else
            through_wall(wall, number, gable && !on_edge_of_floor(wall));
    }

    /// How high the feature is; in the floor that a partition goes through, half way down.
    [[nodiscard]] double height_on(const WallLayout& wall) const {
        return feature_.up.value_or(on_edge_of_floor(wall) ? wall.bottom / 2 : feature_.type->up);
    }
    [[nodiscard]] bool on_edge_of_floor(const WallLayout& wall) const {
        const std::vector<Host>& hosts = feature_.type->hosts;
        return wall.open_below && std::find(hosts.begin(), hosts.end(), Host::rim) != hosts.end();
    }

    /// The feature must lie over the room behind the wall, under the slope of the roof.
    void require_gable(const WallLayout& wall, std::size_t number) {
        const Point2 at = upright_place(cutter_, feature_, wall, feature_.type->gaps[number]);
        const double low = at.y - cutter_.sizes(feature_, number).size[1] / 2, foot = wall.plate_top + 0.01;
        if (wall.story + 1 != layout_.stories.size())
            cutter_.refuse(feature_, "its wall has another story on it", "name the story under the roof");
        if (low > foot) return;
        char text[120];
        std::snprintf(text, sizeof text, "it reaches down beside a room: the gable begins %.2f m over the floor", foot);
        cutter_.refuse(feature_, text, "give it a larger up");
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
            cutter_.refuse(feature_,
                           feature_.side.empty() ? "side is missing: a partition has two"
                                                 : "there is no room " + feature_.side + " beside " + wall.id + " there",
                           "write side: " + name(r) + " or side: " + name(l));
        }
        return on_right != other ? 0 : wall.skins.size() - 1;
    }

    void on_skin(const WallLayout& wall, std::size_t number, std::size_t skin) {
        const FeatureGap& row = feature_.type->gaps[number];
        const bool joint =
            row.shape == ShapeKind::slot && (row.form == Form::line || row.form == Form::cut || row.form == Form::edge);
        if (joint || is_row_of_holes(row)) {
            place_joint(cutter_, feature_, wall, number, skin);
            return;
        }
        Point2 at = upright_place(cutter_, feature_, wall, row);
        if (row.edges == std::vector<Edge>{Edge::bottom}) at.y = foot_of_skin(wall, skin) + cutter_.sizes(feature_, number).width;
        const bool last = skin + 1 == wall.skins.size(), first = skin == 0;
        // In the cavity things end half way; into the open they stand out as far as their kind does.
        const double out = feature_.type->reach > 0 ? feature_.type->reach : 0.03;
        const double before = first && wall.exterior ? out : first ? 0.02 : stub(wall.cavities[skin - 1]);
        const double behind = last ? (wall.exterior ? std::max(0.02, row.shape == ShapeKind::ring ? out : 0.005) : 0.02)
                                   : stub(wall.cavities[skin]);
        const auto [front, back] = spaces_at(layout_, wall, skin, at);
        require_one_air(wall, number, skin, at);
        const bool toward_front = first && !wall.exterior;
        if (const auto post = post_beyond(layout_, wall, at, toward_front); post && (last || toward_front)) {
            Skin& both = keep(wall.skins[skin]);
            both.panels.insert(toward_front ? both.panels.end() : both.panels.begin(), post->panel);
            (toward_front ? both.front : both.back) += toward_front ? post->depth : -post->depth;
            pierce(both, number, at, front, back, behind, before);
            return;
        }
        pierce(wall.skins[skin], number, at, front, back, behind, before);
    }

    /// Nothing stands behind any piece, and all of them lie between the same two spaces.
    void require_one_air(const WallLayout& wall, std::size_t number, std::size_t skin, Point2 at) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const auto here = spaces_at(layout_, wall, skin, at);
        const std::vector<Cutout> cutouts = cutter_.cutouts(row, sizes, wall.skins[skin], at);
        for (const Cutout& cutout : cutouts) {
            if (!lies_within(wall.skins[skin].extent, cutout.loop.empty() ? cutout.filled : cutout.loop)) return;  // told there
        }
        for (const Point2 p : Cutter::places(row, sizes, at)) {
            layout_.check();
            check_framing(cutter_, feature_, wall, skin, p);
            if (spaces_at(layout_, wall, skin, p) != here)
                cutter_.refuse(feature_, "its pieces do not all lie between the same two spaces",
                               "write a feature for each space, with count");
        }
        const bool last = skin + 1 == wall.skins.size();
        if (skin > 0 && !last) return;
        for (const Cutout& cutout : cutouts) {
            Box box;
            box.take(cutout.loop);
            box.take(cutout.filled);
            for (const Point2 p : rectangle(box.least, box.most)) {
                const bool same =
                    skin == 0 ? outside_of(layout_, wall, p) == here.first : beside(layout_, wall, p, false) == here.second;
                if (!same)
                    cutter_.refuse(feature_,
                                   "at its place in " + wall.name + " something meets the wall: a bulkhead, a soffit or a wall",
                                   "move it so that it lies clear of that");
            }
        }
    }

    [[nodiscard]] static double stub(const WallCavity& cavity) { return std::min(0.035, (cavity.front - cavity.back) * 0.4); }

    /// Through all of a wall in a sleeve that keeps its cavities shut.
    void through_wall(const WallLayout& wall, std::size_t number, bool gable) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const Point2 at = upright_place(cutter_, feature_, wall, row);
        // Nothing stands behind a gable's sheathing.
        const std::size_t skins = wall.skins.size() - (gable ? 1 : 0);
        const Skin& last = wall.skins[skins - 1];
        const Skin whole{
            .name = wall.name, .frame = wall.frame, .back = last.back, .front = wall.outside(), .extent = last.extent};
        const SpaceIndex front = spaces_at(layout_, wall, 0, at).first, back = spaces_at(layout_, wall, skins - 1, at).second;
        std::vector<const Skin*> sleeves;
        for (const Cutout& cutout : cutter_.cutouts(row, sizes, whole, at)) {
            layout_.check();
            const Loop outer = sleeve_of(row, sizes, cutout);
            for (std::size_t i = 0; i < skins; ++i) cutter_.cut(feature_, wall.skins[i], outer, {});
            Prism sleeve;
            sleeve.frame = wall.frame;
            sleeve.outline = outer;
            sleeve.heights = {{whole.back}, {whole.front}};
            Skin& one = keep(whole);
            one.panels.push_back(layout_.add_panel(feature_.id + "/sleeve", "sleeve of " + feature_.id, "metal", Layer::fixture,
                                                   std::move(sleeve)));
            sleeves.push_back(&one);
        }
        const double reach = row.shape == ShapeKind::ring ? 0.04 : 0;
        pierce(*sleeves.front(), number, at, front, back, reach, reach, sleeves);
        layout_.house.survey.gaps.back().substrates = {
            wall.exterior ? layout_.panels[wall.skins.front().panels.front()].material : "drywall",
            row.insert.empty() ? "metal" : row.insert};
    }

    /// The outside of the sheet round one piece.
    [[nodiscard]] static Loop sleeve_of(const FeatureGap& row, const GapSizes& sizes, const Cutout& cutout) {
        constexpr double sheet = 0.002;
        if (row.shape == ShapeKind::ring)
            return around_circle(cutout.through - Point2{0, sizes.around / 2 + sizes.width / 2},
                                 sizes.around / 2 + sizes.width + sheet, pipe_sides);
        if (row.shape == ShapeKind::hole) return around_circle(cutout.through, sizes.width / 2 + sheet, pipe_sides);
        return sleeve_round(cutout, sheet);
    }

    /// How far from the framing's outer face something goes through a plate: in the middle; a hole or a pipe clear of the rim
    /// joist or the blocking that stands on the outer edge of an outside wall's plates, where there is room. Else a joint under
    /// the rim joist would lead into it. A pipe stays where it is when its gap is measured anew.
    [[nodiscard]] double depth_in_plate(const WallLayout& wall, std::size_t number, const GapSizes& sizes) const {
        constexpr double margin = 0.001;
        const FeatureGap& row = feature_.type->gaps[number];
        const WallCavity& cavity = wall.cavities.back();
        const double middle = -(cavity.front + cavity.back) / 2;
        if (!wall.exterior || (row.shape != ShapeKind::hole && row.shape != ShapeKind::ring)) return middle;
        const double described = feature_.gaps[number].width.value_or(row.width);
        const double half = row.shape == ShapeKind::ring ? sizes.around / 2 + described : sizes.width / 2;
        const double clear = framing::stud + half + margin, deepest = -cavity.back - half - 2 * margin;
        return clear <= deepest ? std::max(middle, clear) : middle;
    }

    /// Up or down through the plate of a wall.
    void on_plate(const WallLayout& wall, std::size_t number, bool up) {
        const WallCavity& cavity = wall.cavities.back();
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const Point2 at{along_wall(cutter_, feature_, wall), depth_in_plate(wall, number, sizes)};
        if (up ? wall.open_above : wall.open_below)
            cutter_.refuse(feature_,
                           "the air in " + wall.name + " goes on through the " + (up ? "ceiling" : "floor") + ", without a plate",
                           up ? "name the highest story of that partition" : "name its lowest story");
        const Point in_plan = wall.frame.at(at.x, 0, -at.y);
        const SpaceIndex beyond = up ? layout_.above_ceiling(wall.story, {in_plan.x, in_plan.y})
                                     : layout_.below_floor(wall.story, {in_plan.x, in_plan.y});
        if (!beyond.valid())
            cutter_.refuse(feature_, "there is no air under the floor of " + wall.name,
                           "describe the fill or the crawl space in foundation");
        Skin& skin = keep(up ? wall.top_plate : wall.bottom_plate);
        if (!up) {
            const Skin& floor = layout_.stories[wall.story].floor_skin;
            skin.panels.insert(skin.panels.begin(), floor.panels.begin(), floor.panels.end());
            skin.back = floor.back;
        }
        require_length(row, sizes);
        const double across = row.shape == ShapeKind::hole   ? sizes.width
                              : row.shape == ShapeKind::ring ? sizes.around + 2 * sizes.width
                                                             : 0;
        if (across > cavity.front - cavity.back - 0.004)
            cutter_.refuse(feature_, "it is wider than the wall's cavity", "make it narrower, or use a deeper wall");
        const double level = up ? wall.plate_top - framing::double_top_plate - 0.02 : framing::plate + 0.02;
        if (!cavity.bays.empty() && in_several_bays(wall, number, up, level)) return;
        const SpaceIndex inside = cavity.at({at.x, level});
        if (!inside.valid())
            cutter_.refuse(feature_,
                           "at its place in " + wall.name + " stands framing (a post, a stud or the frame of an opening)",
                           "move it along by a few centimeters");
        if (up)
            pierce(skin, number, at, beyond, inside, 0.06, 0.08);
        else
            pierce(skin, number, at, inside, beyond, 0.05, 0.04);
    }

    /// A joint that reaches past a stud is one gap for each bay; pieces of anything else lie in one.
    bool in_several_bays(const WallLayout& wall, std::size_t number, bool up, double level) {
        const WallCavity& cavity = wall.cavities.back();
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const double along = *feature_.along;
        if (row.form != Form::line) {
            for (const Point2 p : Cutter::places(row, sizes, {along, 0})) {
                if (cavity.bay_at({p.x, level}) != cavity.bay_at({along, level}))
                    cutter_.refuse(feature_, "its pieces do not all lie in one bay of " + wall.name,
                                   "write a feature for each bay, with count");
            }
            return false;
        }
        struct Piece {
            std::size_t bay = 0;
            double from = 0, to = 0;
        };
        std::vector<Piece> pieces;
        for (std::size_t bay = 0; bay < cavity.bays.size(); ++bay) {
            for (const auto& [left, right] : stretches_of(cavity.bays[bay].first, level, false)) {
                const double from = std::max(left, along - sizes.length / 2), to = std::min(right, along + sizes.length / 2);
                if (to - from >= least_joint) pieces.push_back({bay, from, to});
            }
        }
        if (pieces.size() == 1 && pieces.front().to - pieces.front().from > sizes.length - 1e-9) return false;
        if (pieces.empty()) return false;  // framing is reported
        for (const Piece& piece : pieces) {
            const std::string bay = std::to_string(piece.bay + 1);
            FeatureDescription part = pieces.size() == 1 ? feature_ : part_of(feature_, "-bay-" + bay);
            part.along = (piece.from + piece.to) / 2;
            part.gaps[number].length = piece.to - piece.from;
            WallFeature(cutter_, part).on_plate(wall, number, up);
            if (pieces.size() > 1) name_bay(layout_.house.survey.gaps.back(), bay);
        }
        return true;
    }
};

}  // namespace

void place_on_wall(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, bool gable) {
    WallFeature(cutter, feature).place(wall, gable);
}

}  // namespace seamward
