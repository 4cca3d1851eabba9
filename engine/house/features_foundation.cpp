// SPDX-License-Identifier: GPL-3.0-or-later
// Features at foundations and at the edges of framed floors.
#include <algorithm>
#include <cmath>

#include "house/framing.h"
#include "house/place_features.h"

namespace seamward {

namespace {

using At = FeatureGap::At;
using Form = FeatureGap::Form;

/// Where a row may be along one wall.
struct Run {
    const Skin* skin = nullptr;
    double left = 0, right = 0;
    double low = 0, high = 0;
    double joint = 0;               ///< height of the joint that the row may lie at
    double before = 0, behind = 0;  ///< how far pipes reach past the skin
    SpaceIndex front, back;

    [[nodiscard]] double length() const { return right - left; }
};

class FoundationFeature {
public:
    FoundationFeature(Cutter& cutter, const FeatureDescription& feature, const std::vector<std::size_t>& edges)
        : cutter_(cutter), layout_(cutter.layout()), feature_(feature), edges_(edges) {}

    void place() {
        const bool on_rim =
            std::find(feature_.type->hosts.begin(), feature_.type->hosts.end(), Host::rim) != feature_.type->hosts.end();
        for (std::size_t i = 0; i < feature_.gaps.size(); ++i) {
            if (feature_.gaps[i].left_out) continue;
            std::vector<Run> runs;
            const bool sill = feature_.type->gaps[i].at == At::top;
            if (on_rim || sill) {
                if (!find_rims(runs, sill)) return;
            } else if (!find_masonry(runs)) {
                return;
            }
            if (same_air(runs)) place_gap(i, runs);
        }
    }

private:
    bool find_masonry(std::vector<Run>& runs) {
        if (layout_.foundation_walls.empty()) {
            cutter_.report(feature_, "there is no air behind the foundation",
                           "describe the fill or the crawl space in foundation");
            return false;
        }
        for (const std::size_t edge : edges_) {
            const WallLayout& wall = layout_.foundation_walls[edge];
            const Skin& skin = wall.skins.front();
            Run run{
                .skin = &skin, .before = 0.15, .behind = 0.15, .front = layout_.outdoors, .back = wall.cavities.front().space};
            take_length(run, wall, framing::stem_wall);
            run.low = std::max(skin.extent[0].y, layout_.ground);
            run.high = skin.extent[2].y;
            run.joint = run.high;
            runs.push_back(run);
        }
        return true;
    }

    bool find_rims(std::vector<Run>& runs, bool sill) {
        const std::size_t story = feature_.story;
        const StoryLayout& level = layout_.stories[story];
        if (level.rims.empty() || (sill && level.rims.front().sill.panels.empty())) {
            const bool upper = layout_.stories.size() > 1 && !sill;
            cutter_.report(
                feature_,
                sill ? "no sill plate stands on the foundation there" : "the floor of that story is a slab without a rim",
                upper ? "write story: 2 for the floor under the second story" : "leave it out");
            return false;
        }
        for (const std::size_t edge : edges_) {
            const RimLayout& rim = level.rims[edge];
            const WallLayout& wall = layout_.walls[story * layout_.edges() + edge];
            Run run{.skin = sill ? &rim.sill : &rim.rim, .low = rim.low, .high = rim.high, .front = rim.front};
            run.joint = sill ? rim.masonry : rim.joint;
            run.behind = 0.15;
            run.before = rim.air > 0 ? std::min(0.035, rim.air * 0.4) : 0.05;
            take_length(run, wall, sill ? framing::stem_wall : -wall.inside());
            const Point inside = wall.frame.at(wall.length / 2, 0, run.skin->back - 0.05);
            run.back = layout_.below_floor(story, {inside.x, inside.y});
            runs.push_back(run);
        }
        return true;
    }

    static void take_length(Run& run, const WallLayout& wall, double depth) {
        constexpr double margin = 0.05;  // clear of what stands in the corner
        run.left = wall.slant.left_reach(-depth, run.skin->front) + margin;
        run.right = wall.slant.right_reach(-depth, run.skin->front) - margin;
    }

    bool same_air(const std::vector<Run>& runs) {
        for (const Run& run : runs) {
            if (run.front == runs.front().front && run.back == runs.front().back) continue;
            cutter_.report(feature_, "the air is not the same at all of its walls", "write one feature for each wall, with on");
            return false;
        }
        return true;
    }

    void place_gap(std::size_t number, const std::vector<Run>& runs) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        if (row.shape == ShapeKind::slot && (row.form == Form::line || row.form == Form::edge))
            place_joint(number, runs, sizes);
        else
            place_pieces(number, runs, sizes);
    }

    void place_joint(std::size_t number, const std::vector<Run>& runs, const GapSizes& sizes) {
        const FeatureGap& row = feature_.type->gaps[number];
        std::vector<Cutout> cutouts;
        double total = 0, still = sizes.length > 0 ? sizes.length : 1e9;
        for (const Run& run : runs) {
            const double length = std::min(still, run.length());
            if (length < 0.02) continue;
            const double middle = feature_.along.value_or((run.left + run.right) / 2);
            const double u = std::clamp(middle - length / 2, run.left, run.right - length);
            const bool in_joint = row.form == Form::edge || row.at == At::top;
            const double v = in_joint ? run.joint : feature_.up.value_or((run.low + run.high - sizes.width) / 2);
            if (!fits(run, u, u + length, v, v + sizes.width)) return;
            cutouts.push_back(
                {run.skin, rectangle({u, v}, {u + length, v + sizes.width}), {u + length / 2, v + sizes.width / 2}});
            total += length;
            still -= length;
        }
        if (cutouts.empty()) return;
        (void)cutter_.enter(feature_, number, runs.front().front, runs.front().back, Cutter::shape_of(row, sizes, total),
                            cutouts);
    }

    void place_pieces(std::size_t number, const std::vector<Run>& runs, const GapSizes& sizes) {
        const FeatureGap& row = feature_.type->gaps[number];
        if (runs.size() > 1 && feature_.along) {
            cutter_.report(feature_, "along counts on one wall only", "name one wall in on, or leave along out");
            return;
        }
        std::vector<Cutout> cutouts;
        std::vector<std::pair<const Run*, Point2>> middles;
        std::uint32_t pieces = wanted(row, sizes, runs);
        GapSizes one = sizes;
        one.count = 1;
        double left = 0;
        for (const Run& run : runs) left += run.length();
        for (const Run& run : runs) {
            const auto here = static_cast<std::uint32_t>(std::lround(pieces * run.length() / left));
            pieces -= here;
            left -= run.length();
            const double v = feature_.up.value_or((run.low + run.high) / 2);
            const double step = runs.size() > 1 || sizes.spacing <= 0 ? run.length() / std::max(1U, here) : sizes.spacing;
            const double middle = feature_.along.value_or((run.left + run.right) / 2);
            for (std::uint32_t i = 0; i < here; ++i) {
                const Point2 at{middle + (i - (here - 1) / 2.0) * step, v};
                for (Cutout& cutout : cutter_.cutouts(row, one, *run.skin, at)) {
                    if (!fits(run, cutout)) return;
                    cutouts.push_back(std::move(cutout));
                    middles.emplace_back(&run, at);
                }
            }
        }
        if (cutouts.empty()) return;
        const GapIndex gap =
            cutter_.enter(feature_, number, runs.front().front, runs.front().back, Cutter::shape_of(row, sizes, 0), cutouts);
        layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(cutouts.size());
        for (std::size_t i = 0; i < cutouts.size(); ++i) {
            const auto& [run, at] = middles[i];
            cutter_.fill(feature_, number, one, {cutouts[i]}, at, 0, 0.01, gap);
            put_pipes(cutter_, feature_, row, one, *run->skin, at, run->behind, run->before, gap);
        }
    }

    static std::uint32_t wanted(const FeatureGap& row, const GapSizes& sizes, const std::vector<Run>& runs) {
        if (sizes.count > 0 || row.count > 0 || sizes.spacing <= 0) return std::max<std::uint32_t>(1, sizes.count);
        double length = 0;
        for (const Run& run : runs) length += run.length();
        return std::max<std::uint32_t>(1, static_cast<std::uint32_t>(length / sizes.spacing));
    }

    bool fits(const Run& run, const Cutout& cutout) {
        Point2 least{1e9, 1e9}, most{-1e9, -1e9};
        for (const Loop* loop : {&cutout.loop, &cutout.filled}) {
            for (const Point2 p : *loop) {
                least = {std::min(least.x, p.x), std::min(least.y, p.y)};
                most = {std::max(most.x, p.x), std::max(most.y, p.y)};
            }
        }
        return fits(run, least.x, most.x, least.y, most.y);
    }

    bool fits(const Run& run, double u0, double u1, double v0, double v1) {
        constexpr double slack = 1e-6;
        const Loop& extent = run.skin->extent;
        if (u0 >= run.left - 0.05 && u1 <= run.right + 0.05 && v0 >= extent[0].y - slack && v1 <= extent[2].y + slack)
            return true;
        char text[160];
        std::snprintf(text, sizeof text, "it does not fit on the %s, which runs along %.2f m to %.2f m, up %.2f m to %.2f m",
                      run.skin->name.c_str(), run.left, run.right, extent[0].y, extent[2].y);
        cutter_.report(feature_, text, "move it, or make it smaller");
        return false;
    }

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    const std::vector<std::size_t>& edges_;
};

}  // namespace

void place_on_foundation(Cutter& cutter, const FeatureDescription& feature, const std::vector<std::size_t>& edges) {
    FoundationFeature(cutter, feature, edges).place();
}

}  // namespace seamward
