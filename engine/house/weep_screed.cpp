// SPDX-License-Identifier: GPL-3.0-or-later
// The foot of a stucco wall, and the three lines there that must not be mixed up.
//
//        stud cavity | cladding            Section, outdoors on the right. The flange keeps the weep channel behind
//                    |  _____ 0.060        the stucco apart from the joint at the foundation. Air rises in both and
//        ____________| |     |             meets over the flange, in the wall's cavity.
//        bottom plate |f|  c |s|           f flange, s lower edge of the stucco, c weep channel, n nose with its
//        ============|j|f|  c |s|          drain holes, j the joint between screed and foundation.
//        foundation  |j|f|nnnn_n|  <- stucco-to-screed line between s and n
//                    |j|
#include <algorithm>

#include "house/framing.h"
#include "house/place_features.h"

namespace seamward {

namespace {

constexpr double sheet = 0.001;  ///< thickness of the screed, meters
constexpr double nose_sheet = 0.002;
constexpr double flange_top = 0.05;  ///< over the floor, over the bottom plate
constexpr double notch_top = 0.06;
constexpr double stucco_edge = 0.01;  ///< thickness of the stucco in front of the weep channel
constexpr double nose_reach = 0.004;

class WeepScreed {
public:
    WeepScreed(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall)
        : cutter_(cutter), layout_(cutter.layout()), feature_(feature), wall_(wall) {}

    void place() {
        if (feature_.gaps.size() != 3) return;
        joint_ = cutter_.sizes(feature_, 0).width;
        const GapSizes holes = cutter_.sizes(feature_, 1);
        line_ = feature_.gaps[2].left_out ? 0 : cutter_.sizes(feature_, 2).width;
        channel_ = {joint_ + sheet, wall_.outside() - stucco_edge};
        if (!wall_.cavities.empty() && !wall_.cavities.front().bays.empty())
            cutter_.refuse(feature_, "behind a weep screed the air is one from bay to bay",
                           "leave " + wall_.described + " out of stud_bays");
        if (wall_.cavities.size() != 1 || wall_.story != 0)
            cutter_.refuse(feature_, "a weep screed stands at the foot of stucco on one stud cavity",
                           "leave it out on " + wall_.name);
        if (channel_.second - channel_.first < holes.width + 0.002)
            cutter_.refuse(feature_, "there is no room behind the stucco for drain holes so wide",
                           "make the cladding thicker, or the joint or the holes narrower");
        find_runs();
        if (runs_.empty()) cutter_.refuse(feature_, "there is no room for it between the doors of " + wall_.name, "leave it out");
        double length = 0;
        for (const auto& [from, to] : runs_) length += to - from;
        const double u = (runs_[runs_.size() / 2].first + runs_[runs_.size() / 2].second) / 2;
        const double low = wall_.bottom, over = (flange_top + notch_top) / 2, middle = (channel_.first + channel_.second) / 2;
        const auto at = [&](double v, double n, double along) { return wall_.frame.at(along, v, n); };
        const SpaceIndex cavity = wall_.cavities.front().space;
        GapIndex joint, drains, line;
        if (!feature_.gaps[0].left_out)
            joint = cutter_.enter_uncut(
                feature_, 0, layout_.outdoors, cavity, Slot{joint_, length},
                {at(low - 0.03, joint_ / 2, u), at(low, joint_ / 2, u), at(over, joint_ / 2, u), at(over, -0.012, u)},
                flange_top - low, {"concrete"});
        lead_out(joint, u);
        const double hole = holes_in(runs_[runs_.size() / 2], holes).front();
        if (!feature_.gaps[1].left_out)
            drains = cutter_.enter_uncut(
                feature_, 1, layout_.outdoors, cavity, Hole{holes.width},
                {at(low - 0.03, middle, hole), at(low, middle, hole), at(over, middle, hole), at(over, -0.012, hole)}, nose_sheet,
                {});
        lead_out(drains, hole);
        if (!feature_.gaps[2].left_out)
            line = cutter_.enter_uncut(
                feature_, 2, layout_.outdoors, cavity, Slot{line_, length},
                {at(low + line_ / 2, wall_.outside() + 0.012, u), at(low + line_ / 2, wall_.outside() - stucco_edge / 2, u),
                 at(low + line_ / 2, middle, u), at(over, middle, u), at(over, -0.012, u)},
                stucco_edge, {"stucco"});
        std::uint32_t count = 0;
        for (std::size_t i = 0; i < runs_.size(); ++i) count += add_run(i, holes, joint, drains, line);
        if (drains.valid()) layout_.house.survey.gaps[drains.value].count = count;
    }

private:
    /// Below the screed ways begin before the wall: under it is the ground.
    void lead_out(GapIndex gap, double u) {
        if (!gap.valid()) return;
        std::vector<Point>& way = layout_.house.places[gap.value].through;
        way.insert(way.begin(), wall_.frame.at(u, wall_.bottom - 0.03, wall_.outside() + 0.12));
    }

    /// The stretches of the wall between its corners and doors.
    void find_runs() {
        const double post = 0.16;
        double left = post;
        std::vector<std::pair<double, double>> doors;
        for (const Loop& opening : wall_.openings) {
            if (opening[0].y < notch_top + 0.05) doors.emplace_back(opening[0].x - 0.08, opening[2].x + 0.08);
        }
        std::sort(doors.begin(), doors.end());
        for (const auto& [from, to] : doors) {
            if (from - left > 0.2) runs_.emplace_back(left, from);
            left = std::max(left, to);
        }
        if (wall_.length - post - left > 0.2) runs_.emplace_back(left, wall_.length - post);
    }

    std::vector<double> holes_in(const std::pair<double, double>& run, const GapSizes& holes) {
        const double spacing = std::max(holes.spacing > 0 ? holes.spacing : 0.3, holes.width * 3);
        const std::uint32_t n = cutter_.as_many_as_fit(feature_, run.second - run.first - 0.04, spacing);
        std::vector<double> out;
        for (std::uint32_t i = 0; i < n; ++i) out.push_back((run.first + run.second) / 2 + (i - (n - 1) / 2.0) * spacing);
        return out;
    }

    std::uint32_t add_run(std::size_t number, const GapSizes& holes, GapIndex joint, GapIndex drains, GapIndex line) {
        const auto& [from, to] = runs_[number];
        const double low = wall_.bottom;
        // The notch in the cladding is cut past its lower edge, and shut again by what follows.
        cutter_.cut(feature_, wall_.skins.front(), rectangle({from, low - 0.01}, {to, notch_top}), {});
        const std::string name = "weep screed of " + wall_.name, id = feature_.id + "/run-" + std::to_string(number + 1);

        Prism edge = upright(rectangle({from, low}, {to, notch_top}), wall_.outside() - stucco_edge, wall_.outside());
        if (line_ > 0) {
            edge.outline = rectangle({from, low + line_}, {to, notch_top});
            edge.gap_of_edge = {line, {}, {}, {}};
        }
        const std::string& finish = layout_.panels[wall_.skins.front().panels.back()].material;
        layout_.add_panel(id + "-stucco-edge", "lower edge of the stucco of " + wall_.name, finish, Layer::cladding,
                          std::move(edge));

        Prism flange = upright(rectangle({from, low - nose_sheet}, {to, flange_top}), joint_, joint_ + sheet);
        flange.gap_of_back = joint;
        layout_.add_panel(id + "-flange", name, "metal", Layer::cladding, std::move(flange));

        Prism nose = plain_prism(plan_frame(wall_.frame), rectangle({from, -wall_.outside() - nose_reach}, {to, -joint_ - sheet}),
                                 low - nose_sheet, low);
        std::uint32_t count = 0;
        for (const double u : holes_in(runs_[number], holes)) {
            if (!drains.valid() || holes.width <= 0) break;
            nose.cuts.push_back(around_circle({u, -(channel_.first + channel_.second) / 2}, holes.width / 2, 16));
            nose.gap_of_cut.push_back(drains);
            ++count;
        }
        layout_.add_panel(id + "-nose", name, "metal", Layer::cladding, std::move(nose));
        return count;
    }

    [[nodiscard]] Prism upright(const Loop& outline, double back, double front) const {
        return plain_prism(wall_.frame, outline, back, front);
    }

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    const WallLayout& wall_;
    double joint_ = 0, line_ = 0;
    std::pair<double, double> channel_;  ///< along n
    std::vector<std::pair<double, double>> runs_;
};

}  // namespace

void place_weep_screed(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall) {
    WeepScreed(cutter, feature, wall).place();
}

}  // namespace seamward
