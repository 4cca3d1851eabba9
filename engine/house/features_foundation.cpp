// SPDX-License-Identifier: GPL-3.0-or-later
// Features at foundations and at the edges of framed floors.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "house/framing.h"
#include "house/place_features.h"
#include "house/runs.h"

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
            if (on_rim || sill)
                find_rims(runs, sill);
            else
                find_masonry(runs);
            drop_short(runs, least_joint);
            if (runs.empty())
                cutter_.refuse(feature_, "there is no room for it between the corners of the house", "name a longer wall in on");
            require_one_air(runs);
            place_gap(i, runs);
        }
    }

private:
    void find_masonry(std::vector<Run>& runs) {
        if (layout_.foundation_walls.empty())
            cutter_.refuse(feature_, "there is no air behind the foundation",
                           "describe the fill or the crawl space in foundation");
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
    }

    void find_rims(std::vector<Run>& runs, bool sill) {
        const std::size_t story = feature_.story;
        const StoryLayout& level = layout_.stories[story];
        if (level.rims.empty() || (sill && level.rims.front().sill.panels.empty())) {
            const bool upper = layout_.stories.size() > 1 && !sill;
            cutter_.refuse(
                feature_,
                sill ? "no sill plate stands on the foundation there" : "the floor of that story is a slab without a rim",
                upper ? "write story: 2 for the floor under the second story" : "leave it out");
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
    }

    static void take_length(Run& run, const WallLayout& wall, double depth) {
        constexpr double margin = 0.05;  // clear of what stands in the corner
        run.left = wall.slant.left_reach(-depth, run.skin->front) + margin;
        run.right = wall.slant.right_reach(-depth, run.skin->front) - margin;
    }

    void require_one_air(const std::vector<Run>& runs) {
        for (const Run& run : runs) {
            if (run.front != runs.front().front || run.back != runs.front().back)
                cutter_.refuse(feature_, "the air is not the same at all of its walls",
                               "write one feature for each wall, with on");
        }
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
        double total = 0, host = 0, still = sizes.length > 0 ? sizes.length : 1e9;
        for (const Run& run : runs) {
            const double length = std::min(still, run.length());
            const Box board = box_of(run.skin->extent);
            host += board.most.x - board.least.x;
            if (length < least_joint) continue;
            const double u = std::clamp(middle_of(run, runs) - length / 2, run.left, run.right - length);
            const bool in_joint = row.form == Form::edge || row.at == At::top;
            const double v = in_joint ? run.joint : feature_.up.value_or((run.low + run.high - sizes.width) / 2);
            require_fit(run, {{u, v}, {u + length, v + sizes.width}});
            cutouts.push_back(
                {run.skin, rectangle({u, v}, {u + length, v + sizes.width}), {u + length / 2, v + sizes.width / 2}});
            total += length;
            still -= length;
        }
        if (cutouts.empty()) cutter_.refuse(feature_, "length is too short", "make it 20 mm or more");
        if (sizes.length > host + 1e-9) {
            char text[160];
            std::snprintf(text, sizeof text, "length %.2f m is longer than what it is on, %.2f m", sizes.length, host);
            cutter_.refuse(feature_, text, "leave length out for a joint along all of it");
        }
        (void)cutter_.enter(feature_, number, runs.front().front, runs.front().back, Cutter::shape_of(row, sizes, total),
                            cutouts);
    }

    /// Where the middle of a row is on a run.
    double middle_of(const Run& run, const std::vector<Run>& runs) {
        if (!feature_.along) return (run.left + run.right) / 2;
        if (runs.size() > 1) cutter_.refuse(feature_, "along counts on one wall only", "name one wall in on, or leave along out");
        constexpr double clear = 0.5;  // what is at a corner may be said to be at the corner
        if (*feature_.along >= run.left - clear && *feature_.along <= run.right + clear) return *feature_.along;
        char text[200];
        std::snprintf(text, sizeof text, "along %.2f m is past the end of the %s, which runs along %.2f m to %.2f m",
                      *feature_.along, run.skin->name.c_str(), run.left, run.right);
        cutter_.refuse(feature_, text, "along counts to its middle");
    }

    void place_pieces(std::size_t number, std::vector<Run> runs, const GapSizes& sizes) {
        const FeatureGap& row = feature_.type->gaps[number];
        drop_short(runs, Cutter::width_of(row, sizes));
        if (runs.empty())
            cutter_.refuse(feature_, "it is wider than there is room for between the corners of the house", "make it smaller");
        std::vector<Cutout> cutouts;
        std::vector<std::pair<const Run*, Point2>> middles;
        GapSizes one = sizes;
        one.count = 1;
        const std::vector<std::uint32_t> shares = shares_of(wanted(row, sizes, runs), runs);
        for (std::size_t r = 0; r < runs.size(); ++r) {
            const Run& run = runs[r];
            const std::uint32_t here = shares[r];
            const double v = feature_.up.value_or((run.low + run.high) / 2);
            const double step = runs.size() > 1 || sizes.spacing <= 0 ? run.length() / std::max(1U, here) : sizes.spacing;
            for (std::uint32_t i = 0; i < here; ++i) {
                layout_.check();
                const Point2 at{middle_of(run, runs) + (i - (here - 1) / 2.0) * step, v};
                for (Cutout& cutout : cutter_.cutouts(row, one, *run.skin, at)) {
                    Box box = box_of(cutout.loop.empty() ? cutout.filled : cutout.loop);
                    box.take(cutout.filled);
                    require_fit(run, box);
                    cutouts.push_back(std::move(cutout));
                    middles.emplace_back(&run, at);
                }
            }
        }
        const GapIndex gap =
            cutter_.enter(feature_, number, runs.front().front, runs.front().back, Cutter::shape_of(row, sizes, 0), cutouts);
        layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(cutouts.size());
        for (std::size_t i = 0; i < cutouts.size(); ++i) {
            const auto& [run, at] = middles[i];
            cutter_.fill(feature_, number, one, {cutouts[i]}, at, 0, 0.01, gap);
            put_pipes(cutter_, feature_, row, one, *run->skin, at, run->behind, run->before, gap);
        }
    }

    std::uint32_t wanted(const FeatureGap& row, const GapSizes& sizes, const std::vector<Run>& runs) {
        if (sizes.count > 0 || row.count > 0 || sizes.spacing <= 0) return std::max<std::uint32_t>(1, sizes.count);
        double length = 0;
        for (const Run& run : runs) length += run.length();
        return cutter_.as_many_as_fit(feature_, length, sizes.spacing);
    }

    void require_fit(const Run& run, const Box& box) {
        constexpr double slack = 1e-6;
        const Loop& extent = run.skin->extent;
        if (box.least.x >= run.left - 0.05 && box.most.x <= run.right + 0.05 && box.least.y >= extent[0].y - slack &&
            box.most.y <= extent[2].y + slack)
            return;
        char text[240];
        std::snprintf(
            text, sizeof text,
            "along %.2f m to %.2f m, up %.2f m to %.2f m, it does not fit on the %s, which runs along %.2f m to %.2f m, "
            "up %.2f m to %.2f m",
            box.least.x, box.most.x, box.least.y, box.most.y, run.skin->name.c_str(), run.left, run.right, extent[0].y,
            extent[2].y);
        cutter_.refuse(feature_, text, "move it, or make it smaller");
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
