// SPDX-License-Identifier: GPL-3.0-or-later
// Features at openings, eaves, block walls and foundations.
#include <algorithm>
#include <cmath>

#include "base/measure_text.h"
#include "house/framing.h"
#include "house/place_features.h"

namespace seamward {

namespace {

using At = FeatureGap::At;
using Form = FeatureGap::Form;

class OpeningFeature {
public:
    OpeningFeature(Cutter& cutter, const FeatureDescription& feature, const std::string& opening)
        : cutter_(cutter), layout_(cutter.layout()), feature_(feature), opening_(opening) {}

    void place() {
        for (std::size_t i = 0; i < feature_.gaps.size(); ++i) {
            if (feature_.gaps[i].left_out) continue;
            const At at = feature_.type->gaps[i].at;
            switch (at) {
                case At::outside: past_frame(i, true); break;
                case At::inside: past_frame(i, false); break;
                case At::through:
                case At::outer:
                case At::inner: on_leaf(i, at); break;
                default:
                    cutter_.report(feature_, "the program draws no such gap of an opening: " + std::string(place_word(at)),
                                   "list it in the job as a gap with between");
            }
        }
    }

private:
    void on_leaf(std::size_t number, At at) {
        const auto sill = layout_.leaves.find(opening_ + (at == At::outer ? "/outer" : "/inner"));
        if ((at == At::outer || at == At::inner) && sill == layout_.leaves.end()) {
            cutter_.report(feature_, opening_ + " has a solid sill", "give it frame: {id: ...}, the air in its hollow sill");
            return;
        }
        const LeafLayout& leaf = at == At::through ? layout_.leaves.at(opening_) : sill->second;
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const Loop& extent = leaf.skin.extent;
        std::vector<Cutout> cutouts;
        double total = 0;
        if (row.shape == ShapeKind::slot && row.form == Form::edge) {
            for (const Edge edge : row.edges) total += add_edge(cutouts, leaf, edge, sizes, row.edges.size() > 1);
        } else if (row.shape == ShapeKind::slot && row.form == Form::corner) {
            const double length = std::min(sizes.length, leaf.width / 3);
            for (const Edge edge : row.edges) {
                const double u = edge == Edge::right ? extent[2].x - length : extent[0].x;
                if (!feature_.side.empty() && feature_.side != (edge == Edge::right ? "right" : "left")) continue;
                cutouts.push_back({&leaf.skin,
                                   rectangle({u, extent[0].y}, {u + length, extent[0].y + sizes.width}),
                                   {u + length / 2, extent[0].y + sizes.width / 2}});
            }
        } else if (row.shape == ShapeKind::slot && (row.form == Form::cut || row.form == Form::line)) {
            const std::uint32_t count = std::max<std::uint32_t>(1, sizes.count);
            const double length = std::min(sizes.length > 0 ? sizes.length : 0.025, (leaf.width - 0.04) / count);
            const double v = extent[0].y + 0.008;
            for (std::uint32_t i = 0; i < count; ++i) {
                const double u = extent[0].x + leaf.width * (i + 0.5) / count - length / 2;
                cutouts.push_back(
                    {&leaf.skin, rectangle({u, v}, {u + length, v + sizes.width}), {u + length / 2, v + sizes.width / 2}});
            }
            if (row.form == Form::line) total = length;
        } else {
            const Point2 at_point{feature_.along.value_or((extent[0].x + extent[2].x) / 2),
                                  feature_.up.value_or((extent[0].y + extent[2].y) / 2)};
            cutouts = cutter_.cutouts(row, sizes, leaf.skin, at_point);
            const GapIndex gap = cutter_.enter(feature_, number, leaf.front, leaf.back, Cutter::shape_of(row, sizes, 0), cutouts);
            layout_.house.survey.gaps[gap.value].count = std::max<std::uint32_t>(1, sizes.count);
            cutter_.fill(feature_, number, sizes, cutouts, at_point, 0, 0.02, gap);
            put_pipes(cutter_, feature_, row, sizes, leaf.skin, at_point, 0.05, 0.05, gap);
            return;
        }
        if (cutouts.empty()) {
            cutter_.report(feature_, "side is neither left nor right", "write side: left");
            return;
        }
        const GapIndex gap =
            cutter_.enter(feature_, number, leaf.front, leaf.back,
                          Cutter::shape_of(row, sizes, row.form == Form::corner ? sizes.length : total), cutouts);
        if (row.form == Form::corner || row.form == Form::cut)
            layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(cutouts.size());
    }

    /// A slit along one edge of the leaf, clear of the leaf's corners; answers its length.
    double add_edge(std::vector<Cutout>& cutouts, const LeafLayout& leaf, Edge edge, const GapSizes& sizes, bool several) const {
        const Loop& extent = leaf.skin.extent;
        const double inset = leaf.width > 1.5 ? 0.1 : 0.02, w = sizes.width;
        const bool level = edge == Edge::bottom || edge == Edge::top;
        const double whole = level ? leaf.width - 2 * inset : leaf.height - 0.07;
        const double length = sizes.length > 0 && !several ? std::min(sizes.length, whole) : whole;
        if (level) {
            const double u = (extent[0].x + extent[2].x - length) / 2, v = edge == Edge::bottom ? extent[0].y : extent[2].y - w;
            cutouts.push_back({&leaf.skin, rectangle({u, v}, {u + length, v + w}), {u + length / 2, v + w / 2}});
        } else {
            const double u = edge == Edge::left ? extent[0].x : extent[2].x - w, v = extent[0].y + 0.035;
            cutouts.push_back({&leaf.skin, rectangle({u, v}, {u + w, v + length}), {u + w / 2, v + length / 2}});
        }
        return length;
    }

    /// Past the frame of the opening: between outdoors and the wall's first cavity through its outermost skin, or between its
    /// last cavity and the room through the innermost one.
    void past_frame(std::size_t number, bool outside) {
        const WallLayout* wall = nullptr;
        const Loop* hole = nullptr;
        for (const OpeningDescription& described : layout_.described.openings) {
            if (described.id != opening_) continue;
            for (const WallLayout& candidate : layout_.walls) {
                if (candidate.described != described.in || candidate.story != described.story) continue;
                wall = &candidate;
                for (const Loop& opening : candidate.openings) {
                    if (std::abs((opening[0].x + opening[2].x) / 2 - described.along) < 1e-9 &&
                        std::abs(opening[0].y - described.sill) < 1e-9)
                        hole = &opening;
                }
            }
        }
        if (wall == nullptr || hole == nullptr) {
            cutter_.report(feature_, opening_ + " has no frame in a wall", "put it on a door or a window");
            return;
        }
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const Skin& skin = outside ? wall->skins.front() : wall->skins.back();
        const double w = sizes.width, beyond = framing::stud + 0.006;
        std::vector<Cutout> cutouts;
        double total = 0;
        if (row.form == Form::cut) {
            const std::uint32_t count = std::max<std::uint32_t>(1, sizes.count);
            const double width = (*hole)[2].x - (*hole)[0].x, v = (*hole)[0].y - beyond - w;
            for (std::uint32_t i = 0; i < count; ++i) {
                const double u = (*hole)[0].x + width * (i + 0.5) / count - sizes.length / 2;
                cutouts.push_back({&skin, rectangle({u, v}, {u + sizes.length, v + w}), {u + sizes.length / 2, v + w / 2}});
            }
        } else {
            const double height = (*hole)[2].y - (*hole)[0].y;
            double still = sizes.length > 0 ? sizes.length : 2 * height;
            for (const double u : {(*hole)[0].x - beyond - w, (*hole)[2].x + beyond}) {
                const double length = std::min(height, still);
                if (length < 0.02) continue;
                const double v = (*hole)[0].y;
                cutouts.push_back({&skin, rectangle({u, v}, {u + w, v + length}), {u + w / 2, v + length / 2}});
                total += length;
                still -= length;
            }
        }
        if (cutouts.empty()) {
            cutter_.report(feature_, "length is too short", "make it 20 mm or more");
            return;
        }
        const Point2 through = cutouts.front().through;
        const Point room = wall->frame.at(through.x, 0, wall->inside() - 0.1);
        const SpaceIndex front = outside ? outside_of(layout_, *wall, (*hole)[0].y) : wall->cavities.back().at(through);
        const SpaceIndex back = outside ? wall->cavities.front().at(through) : layout_.room_space(wall->story, {room.x, room.y});
        const GapIndex gap = cutter_.enter(feature_, number, front, back, Cutter::shape_of(row, sizes, total), cutouts);
        if (row.form == Form::cut) layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(cutouts.size());
    }

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    const std::string& opening_;
};

class EaveFeature {
public:
    EaveFeature(Cutter& cutter, const FeatureDescription& feature, const std::vector<std::size_t>& edges)
        : cutter_(cutter), layout_(cutter.layout()), feature_(feature) {
        for (const std::size_t edge : edges) {
            if (layout_.eaves[edge].present || layout_.eaves[edge].blocked) edges_.push_back(edge);
        }
    }

    void place() {
        if (edges_.empty()) {
            cutter_.report(feature_, "there is no eave at its place",
                           "name walls that the roof runs off over, or make overhang larger");
            return;
        }
        for (std::size_t i = 0; i < feature_.gaps.size(); ++i) {
            if (!feature_.gaps[i].left_out) place_gap(i);
        }
    }

private:
    struct Run {
        const Skin* skin = nullptr;
        double left = 0, right = 0;
    };

    void place_gap(std::size_t number) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        std::vector<Run> runs;
        SpaceIndex front = layout_.outdoors, back;
        for (const std::size_t edge : edges_) {
            const EaveLayout& eave = layout_.eaves[edge];
            const bool blocking = row.at == At::blocking;
            if (blocking ? !eave.blocked : !eave.present) continue;
            const Skin& skin = blocking ? eave.blocking : row.at == At::fascia || row.at == At::deck ? eave.fascia : eave.soffit;
            const WallLayout& wall = layout_.walls[(layout_.stories.size() - 1) * layout_.edges() + edge];
            // At an inner corner of the house the boards of two eaves meet before the corner.
            const double out = layout_.described.roof.overhang;
            runs.push_back({&skin, std::max(0.25, wall.slant.left_reach(0, out) + 0.05),
                            std::min(wall.length - 0.25, wall.slant.right_reach(0, out) - 0.05)});
            if (blocking && eave.present) front = eave.air;
            back = blocking ? layout_.attic : eave.air;
        }
        if (runs.empty()) {
            cutter_.report(feature_, "the eave has no box", "make overhang larger");
            return;
        }
        std::vector<Cutout> cutouts;
        const bool level_board =
            row.at == At::soffit || row.at == At::soffit_wall || row.at == At::soffit_fascia || row.at == At::end;
        double total = 0;
        double still = sizes.length > 0 ? sizes.length : 1e9;
        std::vector<std::pair<const Skin*, Point2>> inserts;
        std::uint32_t pieces = wanted(row, sizes, runs);
        for (std::size_t r = 0; r < runs.size(); ++r) {
            const auto& [skin, left, right] = runs[r];
            const double w = sizes.width;
            const auto [low, high] = across(*skin);
            if (row.shape == ShapeKind::slot && row.form == Form::line) {
                const double length = std::min(still, right - left);
                if (length < 0.02) continue;
                const double u = feature_.along ? std::clamp(*feature_.along - length / 2, left, right - length) : left;
                // In a level board v runs into the house, so its largest v lies at the wall.
                const double v = !level_board                  ? high - w
                                 : row.at == At::soffit_wall   ? high - w
                                 : row.at == At::soffit_fascia ? low
                                                               : (low + high) / 2;
                cutouts.push_back({skin, rectangle({u, v}, {u + length, v + w}), {u + length / 2, v + w / 2}});
                total += length;
                still -= length;
                continue;
            }
            const std::uint32_t here = share(pieces, runs, r);
            pieces -= here;
            for (std::uint32_t i = 0; i < here; ++i) {
                double u = feature_.along && here == 1 ? *feature_.along : left + (right - left) * (i + 0.5) / here;
                if (row.at == At::fascia || row.at == At::end) u = right - 0.02;
                Point2 at{u, (low + high) / 2};
                GapSizes one = sizes;
                one.count = 1;
                if (row.at == At::fascia && row.form == Form::cut) one.length = std::min(one.length, high - low - 0.01);
                for (Cutout& cutout : cutter_.cutouts(row, one, *skin, at)) {
                    for (const Point2 p : cutout.filled.empty() ? cutout.loop : cutout.filled) {
                        if (p.y >= low && p.y <= high) continue;
                        cutter_.report(feature_, "it is larger than the board that it goes into, " + millimeters_text(high - low),
                                       "make it smaller");
                        return;
                    }
                    cutouts.push_back(std::move(cutout));
                    inserts.emplace_back(skin, at);
                }
            }
        }
        if (cutouts.empty()) return;
        // Level boards: n points up into the eave's air.
        if (level_board) std::swap(front, back);
        GapSizes entered = sizes;
        if (row.at == At::fascia && row.form == Form::cut) {
            const auto [low, high] = across(*runs.front().skin);
            entered.length = std::min(entered.length, high - low - 0.01);
        }
        const GapIndex gap = cutter_.enter(feature_, number, front, back,
                                           Cutter::shape_of(row, entered, row.form == Form::line ? total : 0), cutouts);
        if (level_board) {
            Gap& entry = layout_.house.survey.gaps[gap.value];
            std::swap(entry.between[0], entry.between[1]);
            std::vector<Point>& way = layout_.house.places[gap.value].through;
            std::reverse(way.begin(), way.end());
        }
        if (row.form == Form::line) return;
        layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(cutouts.size());
        GapSizes one = sizes;
        one.count = 1;
        for (std::size_t i = 0; i < cutouts.size(); ++i) {
            cutter_.fill(feature_, number, one, {cutouts[i]}, inserts[i].second, 0.01, 0.03, gap);
            put_pipes(cutter_, feature_, row, one, *inserts[i].first, inserts[i].second, 0.08, 0.05, gap);
        }
    }

    static std::pair<double, double> across(const Skin& skin) {
        double low = 1e9, high = -1e9;
        for (const Point2 p : skin.extent) {
            low = std::min(low, p.y);
            high = std::max(high, p.y);
        }
        return {low, high};
    }

    [[nodiscard]] std::uint32_t wanted(const FeatureGap& row, const GapSizes& sizes, const std::vector<Run>& runs) const {
        if (feature_.count) return *feature_.count;
        if (sizes.spacing <= 0) return std::max<std::uint32_t>(1, row.count);
        double length = 0;
        for (const Run& run : runs) length += run.right - run.left;
        return std::max<std::uint32_t>(1, static_cast<std::uint32_t>(length / sizes.spacing));
    }

    /// How many of the pieces left go to a run, by its length among those left.
    static std::uint32_t share(std::uint32_t pieces, const std::vector<Run>& runs, std::size_t from) {
        double left = 0;
        for (std::size_t i = from; i < runs.size(); ++i) left += runs[i].right - runs[i].left;
        return static_cast<std::uint32_t>(std::lround(pieces * (runs[from].right - runs[from].left) / left));
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

void place_on_opening(Cutter& cutter, const FeatureDescription& feature, const std::string& opening) {
    OpeningFeature(cutter, feature, opening).place();
}

void place_on_eaves(Cutter& cutter, const FeatureDescription& feature, const std::vector<std::size_t>& edges) {
    EaveFeature(cutter, feature, edges).place();
}

void place_on_block_wall(Cutter& cutter, const FeatureDescription& feature, const std::vector<const BlockRun*>& runs) {
    Layout& layout = cutter.layout();
    for (std::size_t number = 0; number < feature.gaps.size(); ++number) {
        if (feature.gaps[number].left_out) continue;
        const FeatureGap& row = feature.type->gaps[number];
        const GapSizes sizes = cutter.sizes(feature, number);
        std::vector<Cutout> cutouts;
        SpaceIndex front = layout.outdoors, back = runs.front()->cells;
        double total = 0;
        if (row.at == At::end) {
            for (const BlockRun* run : runs) {
                for (const bool last : {false, true}) {
                    const std::optional<Skin>& skin = last ? run->end : run->start;
                    if (!skin || (!feature.side.empty() && feature.side != (last ? "end" : "start"))) continue;
                    const WallLayout& wall = layout.walls[last ? run->end_wall : run->start_wall];
                    const double u = (skin->extent[0].x + skin->extent[2].x) / 2;
                    // Over the bottom plate of the house's wall, else the joint would end at wood.
                    const double low = std::max(skin->extent[0].y + 0.05, framing::plate + 0.03), high = skin->extent[2].y - 0.05;
                    const double length = std::min(sizes.length > 0 ? sizes.length : high - low, high - low);
                    cutouts.push_back({&*skin,
                                       rectangle({u - sizes.width / 2, low}, {u + sizes.width / 2, low + length}),
                                       {u, low + length / 2}});
                    front = run->cells;
                    back = wall.cavities.front().space;
                    total += length;
                }
            }
            if (cutouts.size() != 1) {
                cutter.report(
                    feature,
                    cutouts.empty() ? "the block wall does not meet the house" : "the block wall meets the house at both ends",
                    "name the run in on, and side: start or side: end");
                return;
            }
        } else {
            const bool on_top = row.at == At::top;
            double still = sizes.length > 0 ? sizes.length : 1e9;
            std::uint32_t pieces = feature.count.value_or(std::max<std::uint32_t>(1, row.count));
            for (std::size_t r = 0; r < runs.size(); ++r) {
                const BlockRun& run = *runs[r];
                const Skin& skin = on_top ? run.top : feature.side == "left" ? run.left : run.right;
                const double left = 0.3, right = run.length - 0.3;
                if (right - left < 0.1) continue;
                if (row.shape == ShapeKind::slot) {
                    for (double v = 0.2; v < run.height - 0.1 && still > 0.05; v += 0.2) {
                        const double length = std::min(still, right - left);
                        cutouts.push_back({&skin,
                                           rectangle({left, v}, {left + length, v + sizes.width}),
                                           {left + length / 2, v + sizes.width / 2}});
                        total += length;
                        still -= length;
                    }
                    continue;
                }
                double after = 0;
                for (std::size_t i = r; i < runs.size(); ++i) after += runs[i]->length;
                const auto here = static_cast<std::uint32_t>(std::lround(pieces * run.length / after));
                pieces -= here;
                for (std::uint32_t i = 0; i < here; ++i) {
                    const Point2 at{left + (right - left) * (i + 0.5) / here, on_top ? 0 : feature.up.value_or(run.height / 2)};
                    GapSizes one = sizes;
                    one.count = 1;
                    for (Cutout& cutout : cutter.cutouts(row, one, skin, at)) cutouts.push_back(std::move(cutout));
                }
            }
            // The left face looks away from n.
            if (!on_top && feature.side == "left") std::swap(front, back);
        }
        if (cutouts.empty()) {
            cutter.report(feature, "there is no room for it on the block wall", "make it smaller");
            return;
        }
        const GapIndex gap = cutter.enter(feature, number, front, back, Cutter::shape_of(row, sizes, total), cutouts);
        Gap& entry = layout.house.survey.gaps[gap.value];
        if (row.shape != ShapeKind::slot) entry.count = static_cast<std::uint32_t>(cutouts.size());
        if (front != layout.outdoors && back == layout.outdoors) {
            std::swap(entry.between[0], entry.between[1]);
            std::reverse(layout.house.places[gap.value].through.begin(), layout.house.places[gap.value].through.end());
        }
    }
}

}  // namespace seamward
