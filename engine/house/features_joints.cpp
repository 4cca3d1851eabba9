// SPDX-License-Identifier: GPL-3.0-or-later
// Joints in the skins of walls.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <optional>
#include <set>

#include "house/framing.h"
#include "house/place_features.h"

namespace seamward {

namespace {

using Form = FeatureGap::Form;
using Stretch = std::pair<double, double>;

class Joint {
public:
    Joint(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, std::size_t number, std::size_t skin)
        : cutter_(cutter),
          layout_(cutter.layout()),
          feature_(feature),
          wall_(wall),
          row_(feature.type->gaps[number]),
          sizes_(cutter.sizes(feature, number)),
          number_(number),
          skin_(skin),
          high_(wall.plate_top - framing::double_top_plate - 0.004) {}

    void place() {
        find_pieces();
        std::set<std::size_t> bays;
        for (const Piece& piece : pieces_) bays.insert(piece.bay);
        if (bays.size() <= 1) {
            enter();
            return;
        }
        // Each bay holds air of its own: one gap for each.
        for (const std::size_t bay : bays) {
            layout_.check();
            const std::string number = std::to_string(bay + 1);
            const FeatureDescription part = part_of(feature_, "-bay-" + number);
            Joint joint(cutter_, part, wall_, number_, skin_);
            joint.find_pieces(bay);
            joint.enter();
            name_bay(layout_.house.survey.gaps.back(), number);
        }
    }

private:
    /// One opening in the making. `bay` is 0 where studs part nothing.
    struct Piece {
        Cutout cutout;
        double length = 0;
        std::size_t bay = 0;
    };

    /// All pieces, or those in one bay.
    void find_pieces(std::optional<std::size_t> only_bay = {}) {
        const Point2 at = upright_place(cutter_, feature_, wall_, row_);
        const WallCavity& cavity = wall_.cavities[std::min(skin_, wall_.cavities.size() - 1)];
        if (cavity.bays.empty()) {
            const Figure air = air_in(layout_, wall_, std::min(skin_, wall_.cavities.size() - 1));
            if (air.outline.empty()) cutter_.refuse(feature_, "there is no air in " + wall_.name, "put it on another wall");
            ends_ = ends_of(air.outline, at.y);
        } else {
            Box box;
            for (const auto& [figure, space] : cavity.bays) box.take(figure.outline);
            ends_ = ends_of(rectangle(box.least, box.most), at.y);
        }
        keep_to_skin();
        keep_to_room(at);
        foot_ = foot_of_skin(wall_, skin_);
        if (row_.form == Form::cut || row_.upright || row_.shape == ShapeKind::hole)
            add_cuts(at);
        else
            add_lines(at);
        if (!cavity.bays.empty()) keep_to_bays(cavity, only_bay);
        if (pieces_.empty())
            cutter_.refuse(feature_, "there is no room for it on " + wall_.name,
                           "move it, make it shorter, or 20 mm long at least");
        if (row_.form != Form::line || sizes_.length <= wall_.length * std::max(1.0, rows_)) return;
        char text[160];
        std::snprintf(text, sizeof text, "length %.2f m is longer than %s, which is %.2f m long", sizes_.length,
                      wall_.name.c_str(), wall_.length);
        cutter_.refuse(feature_, text, "leave length out for a joint along the whole wall");
    }

    void enter() {
        std::vector<Cutout> cutouts;
        double total = 0;
        for (const Piece& piece : pieces_) {
            cutouts.push_back(piece.cutout);
            total += piece.length;
        }
        const Point2 through = cutouts[cutouts.size() / 2].through;
        const auto [front, back] = spaces_at(layout_, wall_, skin_, through);
        check_framing(cutter_, feature_, wall_, skin_, through);
        require_one_side(through);
        const bool many = row_.form == Form::cut || row_.shape == ShapeKind::hole;
        const GapIndex gap =
            cutter_.enter(feature_, number_, front, back, Cutter::shape_of(row_, sizes_, many ? 0 : total), cutouts);
        if (many) layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(cutouts.size());
    }

    /// A bulkhead parts what is beside the wall.
    void require_one_side(Point2 through) {
        if (layout_.bulkheads.empty() || (skin_ > 0 && skin_ + 1 < wall_.skins.size())) return;
        const auto side = [&](Point2 p) { return skin_ == 0 ? outside_of(layout_, wall_, p) : beside(layout_, wall_, p, false); };
        for (const Piece& piece : pieces_) {
            const Box box = box_of(piece.cutout.loop);
            for (const Point2 p : {box.least, box.most}) {
                if (side(p) != side(through))
                    cutter_.refuse(feature_, "on " + wall_.name + " it runs past the end of a bulkhead or a room",
                                   "write a feature for each part, with along and length");
            }
        }
    }

    /// Each piece in the bays that it reaches into, between their studs; short ones wholly in one bay.
    void keep_to_bays(const WallCavity& cavity, std::optional<std::size_t> only_bay) {
        constexpr double margin = 0.01;
        const bool whole = row_.form == Form::cut || row_.shape == ShapeKind::hole;
        std::vector<Piece> kept;
        for (const Piece& piece : pieces_) {
            Box box = box_of(piece.cutout.loop);
            const Point2 middle = (box.least + box.most) * 0.5;
            if (middle.y > wall_.plate_top) {  // under the slope of the roof
                kept.push_back(piece);
                continue;
            }
            const double from = row_.upright ? box.least.y : box.least.x, to = row_.upright ? box.most.y : box.most.x;
            for (std::size_t bay = only_bay.value_or(0); bay < (only_bay ? *only_bay + 1 : cavity.bays.size()); ++bay) {
                const Figure& figure = cavity.bays[bay].first;
                for (const auto& [low, high] : stretches_of(figure, row_.upright ? middle.x : middle.y, row_.upright)) {
                    const double begin = std::max(from, low + margin), end = std::min(to, high - margin);
                    if (whole ? end - begin < to - from - 1e-9 : end - begin < least_joint) continue;
                    kept.push_back(piece);
                    Piece& last = kept.back();
                    last.bay = bay;
                    if (whole) continue;
                    (row_.upright ? box.least.y : box.least.x) = begin;
                    (row_.upright ? box.most.y : box.most.x) = end;
                    last.cutout.loop = rectangle(box.least, box.most);
                    last.cutout.through = (box.least + box.most) * 0.5;
                    last.length = end - begin;
                }
            }
        }
        pieces_ = std::move(kept);
    }

    /// Where a joint may begin and end along the air behind it; under the slope of a roof that goes by its height.
    static Stretch ends_of(const Loop& air, double v) {
        constexpr double margin = 0.01;
        Stretch at_height{1e9, -1e9}, whole{1e9, -1e9};
        const auto take = [](Stretch& stretch, double u) { stretch = {std::min(stretch.first, u), std::max(stretch.second, u)}; };
        for (std::size_t i = 0; i < air.size(); ++i) {
            const Point2 a = air[i], b = air[(i + 1) % air.size()];
            take(whole, a.x);
            if ((a.y > v) != (b.y > v)) take(at_height, a.x + (b.x - a.x) * (v - a.y) / (b.y - a.y));
        }
        const auto [left, right] = at_height.first < at_height.second ? at_height : whole;
        return {left + margin, right - margin};
    }

    /// At an inner corner of the house a thick cladding ends before the air behind it does.
    void keep_to_skin() {
        constexpr double margin = 0.01;
        const Skin& skin = wall_.skins[skin_];
        ends_.first = std::max(ends_.first, wall_.slant.left_reach(skin.back, skin.front) + margin);
        ends_.second = std::min(ends_.second, wall_.slant.right_reach(skin.back, skin.front) - margin);
    }

    /// A joint in a room ends in its corners.
    void keep_to_room(Point2 at) {
        const bool last = skin_ + 1 == wall_.skins.size();
        if ((wall_.exterior && !last) || at.y < 0) return;
        constexpr double margin = 0.01;
        const double n = last ? wall_.inside() - 0.02 : wall_.outside() + 0.02;
        const auto in_plan = [&](double u) {
            const Point p = wall_.frame.at(u, 0, n);
            return Point2{p.x, p.y};
        };
        const RoomLayout* room = layout_.room_at(wall_.story, in_plan(at.x));
        if (room == nullptr) return;
        const Point2 origin = in_plan(0), along{wall_.frame.u.x, wall_.frame.u.y};
        const auto take = [&](const Loop& loop) {
            for (std::size_t i = 0; i < loop.size(); ++i) {
                const Point2 a = loop[i] - origin, b = loop[(i + 1) % loop.size()] - origin;
                const double off_a = cross(along, a), off_b = cross(along, b);
                if ((off_a > 0) == (off_b > 0)) continue;
                const double u = dot(along, a + (b - a) * (off_a / (off_a - off_b)));
                if (u <= at.x) ends_.first = std::max(ends_.first, u + margin);
                if (u >= at.x) ends_.second = std::min(ends_.second, u - margin);
            }
        };
        take(room->figure.outline);
        for (const Loop& hole : room->figure.holes) take(hole);
    }

    /// Whether the same air is before the skin at two heights: not at both sides of a soffit.
    [[nodiscard]] bool same_outside(double v0, double v1) const {
        const double u = wall_.length / 2;
        return skin_ > 0 || !wall_.exterior || outside_of(layout_, wall_, {u, v0}) == outside_of(layout_, wall_, {u, v1});
    }

    void add_cuts(Point2 at) {
        const double w = sizes_.width, foot = row_.edges.empty() ? at.y : foot_;
        if (row_.shape == ShapeKind::hole) {
            for (const double u : middles_of_row(at.x, w)) {
                const Point2 middle{u, foot + w};
                if (!in_opening(u - w / 2, u + w / 2, middle.y))
                    pieces_.push_back({{&wall_.skins[skin_], around_circle(middle, w / 2, pipe_sides), middle}});
            }
            return;
        }
        double top = high_ - 0.02;
        if (row_.upright && !same_outside(foot, top)) top = layout_.eaves[wall_edge(layout_, wall_)].soffit_bottom - 0.02;
        const double length = sizes_.length > 0 ? sizes_.length : top - foot;
        if (row_.upright && length < least_joint)
            cutter_.refuse(feature_, "there is no room for it over its place on " + wall_.name, "give it a smaller up");
        if (row_.upright && !same_outside(foot, foot + length))
            cutter_.refuse(feature_, "it reaches up past the soffit into the eave", "make it shorter, or give it a smaller up");
        std::vector<double> starts{at.x};
        if (row_.form == Form::cut) starts = middles_of_row(at.x, row_.upright ? w : length);
        for (const double u : starts) {
            const Point2 half = row_.upright ? Point2{w / 2, length / 2} : Point2{length / 2, w / 2};
            const Point2 middle{u, row_.upright ? foot + length / 2 : foot + w / 2};
            if (in_opening(middle.x - half.x, middle.x + half.x, middle.y)) continue;
            pieces_.push_back({{&wall_.skins[skin_], rectangle(middle - half, middle + half), middle}, length});
        }
    }

    /// Where pieces so wide stand along the wall: as many as the file says, or as there is room for.
    [[nodiscard]] std::vector<double> middles_of_row(double middle, double reach) {
        const double spacing = std::max(sizes_.spacing, reach + (row_.shape == ShapeKind::hole ? 0.02 : 0.03));
        if (!feature_.along) middle = (ends_.first + ends_.second) / 2;
        const double room = 2 * std::min(middle - ends_.first, ends_.second - middle);
        const std::uint32_t count = feature_.count   ? *feature_.count
                                    : row_.count > 0 ? row_.count
                                                     : cutter_.as_many_as_fit(feature_, room, spacing);
        if ((count - 1) * spacing + reach > room + 1e-6)
            cutter_.refuse(feature_, row_misfit(count, spacing, reach, "along", middle, ends_, wall_.name));
        std::vector<double> middles;
        for (std::uint32_t i = 0; i < count; ++i) middles.push_back(middle + (i - (count - 1) / 2.0) * spacing);
        return middles;
    }

    void add_lines(Point2 at) {
        const double w = sizes_.width, whole = ends_.second - ends_.first;
        std::vector<double> heights{at.y};
        if (row_.form == Form::edge) {
            heights = {row_.edges.front() == Edge::top ? high_ - w : foot_};
        } else if (sizes_.spacing > 0 && at.y < high_) {
            heights.clear();
            const double needed = sizes_.length > 0 ? std::ceil(sizes_.length / whole) : 1e9;
            const double first = std::max(0.3, at.y);
            for (double v = first; v < high_ - 0.05 && static_cast<double>(heights.size()) < needed;
                 v += std::max(sizes_.spacing, least_spacing)) {
                if (same_outside(first, v + w + 0.01)) heights.push_back(v);
            }
        }
        rows_ = static_cast<double>(heights.size());
        double still = sizes_.length > 0 ? sizes_.length : 1e9;
        for (const double v : heights) {
            for (auto [u0, u1] : free_stretches(v)) {
                if (sizes_.length > 0 && heights.size() == 1 && feature_.along) {
                    u0 = std::max(u0, *feature_.along - sizes_.length / 2);
                    u1 = std::min(u1, *feature_.along + sizes_.length / 2);
                }
                u1 = std::min(u1, u0 + still);
                if (u1 - u0 < least_joint) continue;
                pieces_.push_back({{&wall_.skins[skin_], rectangle({u0, v}, {u1, v + w}), {(u0 + u1) / 2, v + w / 2}}, u1 - u0});
                still -= u1 - u0;
            }
        }
    }

    [[nodiscard]] bool in_opening(double u0, double u1, double v) const {
        constexpr double margin = 0.05;
        return std::any_of(wall_.openings.begin(), wall_.openings.end(), [&](const Loop& opening) {
            return u1 > opening[0].x - margin && u0 < opening[2].x + margin && v > opening[0].y - margin &&
                   v < opening[2].y + margin;
        });
    }

    /// The stretches of a level line between the openings of the wall.
    [[nodiscard]] std::vector<Stretch> free_stretches(double v) const {
        constexpr double margin = 0.05;
        std::vector<Stretch> taken;
        for (const Loop& opening : wall_.openings) {
            if (v > opening[0].y - margin && v < opening[2].y + margin)
                taken.emplace_back(opening[0].x - margin, opening[2].x + margin);
        }
        std::sort(taken.begin(), taken.end());
        std::vector<Stretch> free;
        auto [left, right] = ends_;
        for (const auto& [from, to] : taken) {
            if (from > left) free.emplace_back(left, std::min(from, right));
            left = std::max(left, to);
        }
        if (right > left) free.emplace_back(left, right);
        return free;
    }

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    const WallLayout& wall_;
    const FeatureGap& row_;
    GapSizes sizes_;
    std::size_t number_, skin_;
    double high_;      ///< below the top plate
    double foot_ = 0;  ///< height of what lies at the skin's lower edge
    Stretch ends_;     ///< along the wall
    std::vector<Piece> pieces_;
    double rows_ = 1;  ///< heights that lines run at
};

}  // namespace

void place_joint(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, std::size_t number,
                 std::size_t skin) {
    Joint(cutter, feature, wall, number, skin).place();
}

}  // namespace seamward
