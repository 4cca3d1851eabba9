// SPDX-License-Identifier: GPL-3.0-or-later
// Joints in the skins of walls.
#include <algorithm>
#include <cmath>

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
        const std::optional<Point2> at = upright_place(cutter_, feature_, wall_, row_);
        if (!at) return;
        const Figure air = air_in(layout_, wall_, std::min(skin_, wall_.cavities.size() - 1));
        if (air.outline.empty()) return;
        ends_ = ends_of(air.outline, at->y);
        keep_to_skin();
        keep_to_room(*at);
        foot_ = foot_of_skin(wall_, skin_);
        if (row_.form == Form::cut || row_.upright)
            add_cuts(*at);
        else
            add_lines(*at);
        if (cutouts_.empty()) {
            cutter_.report(feature_, "there is no room for it on " + wall_.name, "move it, or make it shorter");
            return;
        }
        const Point2 through = cutouts_[cutouts_.size() / 2].through;
        const auto [front, back] = spaces_at(layout_, wall_, skin_, through);
        check_framing(cutter_, feature_, wall_, skin_, through);
        const GapIndex gap = cutter_.enter(feature_, number_, front, back, Cutter::shape_of(row_, sizes_, total_), cutouts_);
        if (row_.form == Form::cut) layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(cutouts_.size());
    }

private:
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
        return skin_ > 0 || !wall_.exterior || outside_of(layout_, wall_, v0) == outside_of(layout_, wall_, v1);
    }

    void add_cuts(Point2 at) {
        const double w = sizes_.width, foot = row_.edges.empty() ? at.y : foot_;
        double top = high_ - 0.02;
        if (row_.upright && !same_outside(foot, top)) top = layout_.eaves[wall_edge(layout_, wall_)].soffit_bottom - 0.02;
        const double length = sizes_.length > 0 ? sizes_.length : top - foot;
        if (row_.upright && !same_outside(foot, foot + length)) {
            cutter_.report(feature_, "it reaches up past the soffit into the eave", "make it shorter, or give it a smaller up");
            return;
        }
        std::vector<double> starts{at.x};
        if (row_.form == Form::cut) {
            const double reach = row_.upright ? w : length;
            const double spacing = std::max(sizes_.spacing, reach + 0.03);
            const std::uint32_t count = feature_.count.value_or(
                row_.count > 0 ? row_.count : static_cast<std::uint32_t>(std::max(1.0, (ends_.second - ends_.first) / spacing)));
            starts.clear();
            for (std::uint32_t i = 0; i < count; ++i)
                starts.push_back(feature_.along.value_or((ends_.first + ends_.second) / 2) + (i - (count - 1) / 2.0) * spacing);
        }
        for (const double u : starts) {
            const Point2 half = row_.upright ? Point2{w / 2, length / 2} : Point2{length / 2, w / 2};
            const Point2 middle{u, row_.upright ? foot + length / 2 : foot + w / 2};
            if (in_opening(middle.x - half.x, middle.x + half.x, middle.y)) continue;
            cutouts_.push_back({&wall_.skins[skin_], rectangle(middle - half, middle + half), middle});
        }
        if (row_.form == Form::line) total_ = length;
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
            for (double v = first; v < high_ - 0.05 && static_cast<double>(heights.size()) < needed; v += sizes_.spacing) {
                if (same_outside(first, v + w + 0.01)) heights.push_back(v);
            }
        }
        double still = sizes_.length > 0 ? sizes_.length : 1e9;
        for (const double v : heights) {
            for (auto [u0, u1] : free_stretches(v)) {
                if (sizes_.length > 0 && heights.size() == 1 && feature_.along) {
                    u0 = std::max(u0, *feature_.along - sizes_.length / 2);
                    u1 = std::min(u1, *feature_.along + sizes_.length / 2);
                }
                u1 = std::min(u1, u0 + still);
                if (u1 - u0 < 0.02) continue;
                cutouts_.push_back({&wall_.skins[skin_], rectangle({u0, v}, {u1, v + w}), {(u0 + u1) / 2, v + w / 2}});
                total_ += u1 - u0;
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
    std::vector<Cutout> cutouts_;
    double total_ = 0;  ///< length of all lines
};

}  // namespace

void place_joint(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, std::size_t number,
                 std::size_t skin) {
    Joint(cutter, feature, wall, number, skin).place();
}

}  // namespace seamward
