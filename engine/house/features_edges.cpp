// SPDX-License-Identifier: GPL-3.0-or-later
// Features at eaves.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "base/measure_text.h"
#include "house/framing.h"
#include "house/place_features.h"
#include "house/runs.h"

namespace seamward {

namespace {

using At = FeatureGap::At;
using Form = FeatureGap::Form;

class EaveFeature {
public:
    EaveFeature(Cutter& cutter, const FeatureDescription& feature, const std::vector<std::size_t>& edges)
        : cutter_(cutter), layout_(cutter.layout()), feature_(feature) {
        for (const std::size_t edge : edges) {
            if (layout_.eaves[edge].present || layout_.eaves[edge].blocked) edges_.push_back(edge);
        }
    }

    void place() {
        if (edges_.empty())
            cutter_.refuse(feature_, "there is no eave at its place",
                           "name walls that the roof runs off over, or make overhang larger");
        for (std::size_t i = 0; i < feature_.gaps.size(); ++i) {
            if (!feature_.gaps[i].left_out) place_gap(i);
        }
    }

private:
    struct Run {
        const Skin* skin = nullptr;
        double left = 0, right = 0;
        double low = 0, high = 0;  ///< of the board, across
        std::string name;

        [[nodiscard]] double length() const { return right - left; }
    };

    /// One gap in the making.
    struct Work {
        std::vector<Run> runs;
        std::vector<Cutout> cutouts;
        std::vector<std::pair<const Skin*, Point2>> inserts;
        SpaceIndex front, back;
        double total = 0;  ///< length of all joints
    };

    static bool in_level_board(At at) {
        return at == At::soffit || at == At::soffit_wall || at == At::soffit_fascia || at == At::end;
    }

    void place_gap(std::size_t number) {
        const FeatureGap& row = feature_.type->gaps[number];
        GapSizes sizes = cutter_.sizes(feature_, number);
        Work work;
        find_runs(work, row);
        const bool line = row.shape == ShapeKind::slot && row.form == Form::line;
        if (row.at == At::fascia && row.form == Form::cut)
            sizes.length = std::min(sizes.length, work.runs.front().high - work.runs.front().low - 0.01);
        drop_short(work.runs, line ? least_joint : Cutter::width_of(row, sizes) + 0.02);
        if (work.runs.empty())
            cutter_.refuse(feature_, "the eave is too short for it between the corners of the house",
                           "name a longer wall in on, or make it smaller");
        if (line)
            add_joints(work, row, sizes);
        else
            add_pieces(work, row, sizes);
        enter(work, number, sizes, line);
    }

    void find_runs(Work& work, const FeatureGap& row) {
        work.front = layout_.outdoors;
        const bool blocking = row.at == At::blocking;
        for (const std::size_t edge : edges_) {
            const EaveLayout& eave = layout_.eaves[edge];
            if (blocking ? !eave.blocked : !eave.present) continue;
            const Skin& skin = blocking ? eave.blocking : row.at == At::fascia || row.at == At::deck ? eave.fascia : eave.soffit;
            const WallLayout& wall = layout_.walls[(layout_.stories.size() - 1) * layout_.edges() + edge];
            // At an inner corner of the house the boards of two eaves meet before the corner.
            const double out = layout_.described.roof.overhang;
            const Box box = box_of(skin.extent);
            work.runs.push_back({&skin, std::max(0.25, wall.slant.left_reach(0, out) + 0.05),
                                 std::min(wall.length - 0.25, wall.slant.right_reach(0, out) - 0.05), box.least.y, box.most.y,
                                 wall.name});
            if (blocking && eave.present) work.front = eave.air;
            work.back = blocking ? layout_.attic : eave.air;
        }
        if (work.runs.empty()) cutter_.refuse(feature_, "the eave has no box", "make overhang larger");
    }

    void add_joints(Work& work, const FeatureGap& row, const GapSizes& sizes) {
        double host = 0, still = sizes.length > 0 ? sizes.length : 1e9;
        for (const Run& run : work.runs) {
            const Box box = box_of(run.skin->extent);
            host += box.most.x - box.least.x;
            const double length = std::min(still, run.length()), w = sizes.width;
            if (length < least_joint) continue;
            const double u = feature_.along ? std::clamp(place_along(work) - length / 2, run.left, run.right - length) : run.left;
            // In a level board v runs into the house, so its largest v lies at the wall.
            const double v = !in_level_board(row.at) || row.at == At::soffit_wall ? run.high - w
                             : row.at == At::soffit_fascia                        ? run.low
                                                                                  : (run.low + run.high) / 2;
            work.cutouts.push_back({run.skin, rectangle({u, v}, {u + length, v + w}), {u + length / 2, v + w / 2}});
            work.total += length;
            still -= length;
        }
        if (work.cutouts.empty()) cutter_.refuse(feature_, "length is too short", "make it 20 mm or more");
        if (sizes.length <= host + 1e-9) return;
        char text[160];
        std::snprintf(text, sizeof text, "length %.2f m is longer than the eaves that it is on, %.2f m", sizes.length, host);
        cutter_.refuse(feature_, text, "leave length out for a joint along all of them");
    }

    /// `along` on the one wall that it counts on.
    double place_along(const Work& work) {
        const Run& run = work.runs.front();
        if (work.runs.size() > 1)
            cutter_.refuse(feature_, "along counts on one wall only", "name one wall in on, or leave along out");
        if (*feature_.along >= run.left - 0.25 && *feature_.along <= run.right + 0.25) return *feature_.along;
        char text[160];
        std::snprintf(text, sizeof text, "along %.2f m is past the end of the eave of %s, which runs along %.2f m to %.2f m",
                      *feature_.along, run.name.c_str(), run.left, run.right);
        cutter_.refuse(feature_, text, "along counts to its middle");
    }

    void add_pieces(Work& work, const FeatureGap& row, const GapSizes& sizes) {
        GapSizes one = sizes;
        one.count = 1;
        const std::vector<std::uint32_t> shares = shares_of(wanted(work, row, sizes), work.runs);
        for (std::size_t r = 0; r < work.runs.size(); ++r) {
            const Run& run = work.runs[r];
            for (std::uint32_t i = 0; i < shares[r]; ++i) {
                layout_.check();
                double u = run.left + run.length() * (i + 0.5) / shares[r];
                if (feature_.along) {
                    const double step = std::max(sizes.spacing, Cutter::width_of(row, sizes) + 0.02);
                    u = place_along(work) + (i - (shares[r] - 1) / 2.0) * step;
                }
                if (row.at == At::fascia || row.at == At::end) u = run.right - 0.02;
                const Point2 at{u, (run.low + run.high) / 2};
                for (Cutout& cutout : cutter_.cutouts(row, one, *run.skin, at)) {
                    const Box box = box_of(cutout.filled.empty() ? cutout.loop : cutout.filled);
                    if (box.least.y < run.low || box.most.y > run.high)
                        cutter_.refuse(feature_,
                                       "it is larger than the board that it goes into, " + millimeters_text(run.high - run.low),
                                       "make it smaller");
                    work.cutouts.push_back(std::move(cutout));
                    work.inserts.emplace_back(run.skin, at);
                }
            }
        }
    }

    [[nodiscard]] std::uint32_t wanted(const Work& work, const FeatureGap& row, const GapSizes& sizes) {
        if (feature_.count) return *feature_.count;
        if (sizes.spacing <= 0) return std::max<std::uint32_t>(1, row.count);
        if (feature_.along) {
            const Run& run = work.runs.front();
            const double along = place_along(work);
            return cutter_.as_many_as_fit(feature_, 2 * std::min(along - run.left, run.right - along), sizes.spacing);
        }
        double length = 0;
        for (const Run& run : work.runs) length += run.length();
        return cutter_.as_many_as_fit(feature_, length, sizes.spacing);
    }

    void enter(Work& work, std::size_t number, const GapSizes& sizes, bool line) {
        const FeatureGap& row = feature_.type->gaps[number];
        // Level boards: n points up into the eave's air.
        const bool level = in_level_board(row.at);
        if (level) std::swap(work.front, work.back);
        const GapIndex gap = cutter_.enter(feature_, number, work.front, work.back,
                                           Cutter::shape_of(row, sizes, line ? work.total : 0), work.cutouts);
        if (level) {
            Gap& entry = layout_.house.survey.gaps[gap.value];
            std::swap(entry.between[0], entry.between[1]);
            std::vector<Point>& way = layout_.house.places[gap.value].through;
            std::reverse(way.begin(), way.end());
        }
        if (line) return;
        layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(work.cutouts.size());
        GapSizes one = sizes;
        one.count = 1;
        for (std::size_t i = 0; i < work.cutouts.size(); ++i) {
            cutter_.fill(feature_, number, one, {work.cutouts[i]}, work.inserts[i].second, 0.01, 0.03, gap);
            put_pipes(cutter_, feature_, row, one, *work.inserts[i].first, work.inserts[i].second, 0.08, 0.05, gap);
        }
    }

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    std::vector<std::size_t> edges_;
};

}  // namespace

void put_pipes(Cutter& cutter, const FeatureDescription& feature, const FeatureGap& row, const GapSizes& sizes, const Skin& skin,
               Point2 at, double behind, double before, GapIndex gap) {
    if (row.shape != ShapeKind::ring) return;
    for (const Point2 middle : Cutter::places(row, sizes, at))
        cutter.stand(feature, "pipe", row.insert.empty() ? "metal" : row.insert, skin,
                     around_circle(middle, sizes.around / 2, pipe_sides), behind, before, gap);
}

void place_on_eaves(Cutter& cutter, const FeatureDescription& feature, const std::vector<std::size_t>& edges) {
    EaveFeature(cutter, feature, edges).place();
}

}  // namespace seamward
