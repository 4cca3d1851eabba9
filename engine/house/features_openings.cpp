// SPDX-License-Identifier: GPL-3.0-or-later
// Features at doors and windows.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <optional>
#include <set>

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
                    cutter_.refuse(feature_, "the program draws no such gap of an opening: " + std::string(place_word(at)),
                                   "list it in the job as a gap with between");
            }
        }
    }

private:
    /// The openings of one gap, and how long a joint they make together.
    struct Pieces {
        std::vector<Cutout> cutouts;
        double total = 0;
    };

    void on_leaf(std::size_t number, At at) {
        const auto sill = layout_.leaves.find(opening_ + (at == At::outer ? "/outer" : "/inner"));
        if ((at == At::outer || at == At::inner) && sill == layout_.leaves.end())
            cutter_.refuse(feature_, opening_ + " has a solid sill", "give it frame: {id: ...}, the air in its hollow sill");
        const LeafLayout& leaf = at == At::through ? layout_.leaves.at(opening_) : sill->second;
        const FeatureGap& row = feature_.type->gaps[number];
        GapSizes sizes = cutter_.sizes(feature_, number);
        if (row.shape != ShapeKind::slot || row.form == Form::around || row.form == Form::beside) {
            in_leaf(number, leaf, sizes);
            return;
        }
        Pieces made;
        switch (row.form) {
            case Form::edge:
                for (const Edge edge : row.edges) add_edge(made, number, leaf, edge, sizes, row.edges.size() > 1);
                break;
            case Form::corner: add_corners(made, number, leaf, sizes); break;
            default: add_cuts(made, number, leaf, sizes);
        }
        const GapIndex gap =
            cutter_.enter(feature_, number, leaf.front, leaf.back, Cutter::shape_of(row, sizes, made.total), made.cutouts);
        if (row.form == Form::corner || row.form == Form::cut)
            layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(made.cutouts.size());
    }

    void in_leaf(std::size_t number, const LeafLayout& leaf, const GapSizes& sizes) {
        const FeatureGap& row = feature_.type->gaps[number];
        const Loop& extent = leaf.skin.extent;
        const Point2 at{feature_.along.value_or((extent[0].x + extent[2].x) / 2),
                        feature_.up.value_or((extent[0].y + extent[2].y) / 2)};
        const std::vector<Cutout> cutouts = cutter_.cutouts(row, sizes, leaf.skin, at);
        const GapIndex gap = cutter_.enter(feature_, number, leaf.front, leaf.back, Cutter::shape_of(row, sizes, 0), cutouts);
        layout_.house.survey.gaps[gap.value].count = std::max<std::uint32_t>(1, sizes.count);
        cutter_.fill(feature_, number, sizes, cutouts, at, 0, 0.02, gap);
        put_pipes(cutter_, feature_, row, sizes, leaf.skin, at, 0.05, 0.05, gap);
    }

    /// A length that the file states must have room; what the table says is made as long as there is room for.
    [[nodiscard]] double length_for(std::size_t number, double length, double room) {
        if (length <= room + 1e-9) return length;
        if (!feature_.gaps[number].length) return room;
        char text[160];
        std::snprintf(text, sizeof text, "length %.2f m is longer than there is room for on %s, %.2f m", length, opening_.c_str(),
                      room);
        cutter_.refuse(feature_, text, "make it shorter");
    }

    /// From the lower corners on.
    void add_corners(Pieces& made, std::size_t number, const LeafLayout& leaf, GapSizes& sizes) {
        const Loop& extent = leaf.skin.extent;
        sizes.length = length_for(number, sizes.length, leaf.width / 3);
        for (const Edge edge : feature_.type->gaps[number].edges) {
            const double u = edge == Edge::right ? extent[2].x - sizes.length : extent[0].x;
            if (!feature_.side.empty() && feature_.side != (edge == Edge::right ? "right" : "left")) continue;
            made.cutouts.push_back({&leaf.skin,
                                    rectangle({u, extent[0].y}, {u + sizes.length, extent[0].y + sizes.width}),
                                    {u + sizes.length / 2, extent[0].y + sizes.width / 2}});
        }
        if (made.cutouts.empty())
            cutter_.refuse(feature_, "it has no corner on that side", "write side: left or side: right, or leave side out");
    }

    /// Short pieces or one joint, just over the lower edge.
    void add_cuts(Pieces& made, std::size_t number, const LeafLayout& leaf, GapSizes& sizes) {
        const Loop& extent = leaf.skin.extent;
        const std::uint32_t count = std::max<std::uint32_t>(1, sizes.count);
        if (sizes.length <= 0) sizes.length = 0.025;
        sizes.length = length_for(number, sizes.length, (leaf.width - 0.04) / count);
        const double v = extent[0].y + 0.008;
        for (std::uint32_t i = 0; i < count; ++i) {
            const double u = extent[0].x + leaf.width * (i + 0.5) / count - sizes.length / 2;
            made.cutouts.push_back({&leaf.skin,
                                    rectangle({u, v}, {u + sizes.length, v + sizes.width}),
                                    {u + sizes.length / 2, v + sizes.width / 2}});
        }
        if (feature_.type->gaps[number].form == Form::line) made.total = sizes.length;
    }

    /// A slit along one edge of the leaf, clear of the leaf's corners.
    void add_edge(Pieces& made, std::size_t number, const LeafLayout& leaf, Edge edge, const GapSizes& sizes, bool several) {
        const Loop& extent = leaf.skin.extent;
        const double inset = leaf.width > 1.5 ? 0.1 : 0.02, w = sizes.width;
        const bool level = edge == Edge::bottom || edge == Edge::top;
        const double whole = level ? leaf.width - 2 * inset : leaf.height - 0.07;
        double length = whole;
        // As long as the leaf is as long as there is room for.
        if (sizes.length > 0 && !several)
            length = std::min(length_for(number, sizes.length, level ? leaf.width : leaf.height), whole);
        if (level) {
            const double u = (extent[0].x + extent[2].x - length) / 2, v = edge == Edge::bottom ? extent[0].y : extent[2].y - w;
            made.cutouts.push_back({&leaf.skin, rectangle({u, v}, {u + length, v + w}), {u + length / 2, v + w / 2}});
        } else {
            const double u = edge == Edge::left ? extent[0].x : extent[2].x - w, v = extent[0].y + 0.035;
            made.cutouts.push_back({&leaf.skin, rectangle({u, v}, {u + w, v + length}), {u + w / 2, v + length / 2}});
        }
        made.total += length;
    }

    struct Frame {
        const WallLayout* wall = nullptr;
        const Loop* hole = nullptr;
    };

    [[nodiscard]] Frame find_frame() const {
        Frame found;
        for (const OpeningDescription& described : layout_.described.openings) {
            if (described.id != opening_) continue;
            for (const WallLayout& candidate : layout_.walls) {
                if (candidate.described != described.in || candidate.story != described.story) continue;
                found.wall = &candidate;
                for (const Loop& opening : candidate.openings) {
                    if (std::abs((opening[0].x + opening[2].x) / 2 - described.along) < 1e-9 &&
                        std::abs(opening[0].y - described.sill) < 1e-9)
                        found.hole = &opening;
                }
            }
        }
        return found;
    }

    /// Past the frame of the opening: between what is outside and the wall's first cavity through its outermost skin, or between
    /// its last cavity and the room through the innermost one. Where studs part that cavity, one gap for each bay.
    void past_frame(std::size_t number, bool outside, std::optional<std::size_t> only_bay = {}) {
        const auto [wall, hole] = find_frame();
        if (wall == nullptr || hole == nullptr)
            cutter_.refuse(feature_, opening_ + " has no frame in a wall", "put it on a door or a window");
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const WallCavity& cavity = outside ? wall->cavities.front() : wall->cavities.back();
        Pieces made =
            row.form == Form::cut ? cuts_below(*wall, *hole, sizes, outside) : strips_beside(*wall, *hole, number, outside);
        std::set<std::size_t> bays;
        std::vector<Cutout> kept;
        for (const Cutout& cutout : made.cutouts) {
            check_framing(cutter_, feature_, *wall, outside ? 0 : wall->skins.size() - 1, cutout.through);
            const std::size_t bay = cavity.bay_at(cutout.through).value_or(0);
            bays.insert(bay);
            if (!only_bay || bay == *only_bay) kept.push_back(cutout);
        }
        if (bays.size() > 1 && !only_bay) {
            for (const std::size_t bay : bays) {
                const std::string name = std::to_string(bay + 1);
                const FeatureDescription part = part_of(feature_, "-bay-" + name);
                OpeningFeature(cutter_, part, opening_).past_frame(number, outside, bay);
                name_bay(layout_.house.survey.gaps.back(), name);
            }
            return;
        }
        double total = 0;
        for (const Cutout& cutout : kept) {
            const Box box = box_of(cutout.loop);
            if (row.form != Form::cut) total += box.most.y - box.least.y;
        }
        const Point2 through = kept.front().through;
        const SpaceIndex front = outside ? outside_of(layout_, *wall, through) : cavity.at(through);
        const SpaceIndex back = outside ? cavity.at(through) : beside(layout_, *wall, through, false);
        const GapIndex gap = cutter_.enter(feature_, number, front, back, Cutter::shape_of(row, sizes, total), kept);
        if (row.form == Form::cut) layout_.house.survey.gaps[gap.value].count = static_cast<std::uint32_t>(kept.size());
    }

    static constexpr double beyond = framing::stud + 0.006;  ///< from the opening to what lies past its frame, meters

    [[nodiscard]] Pieces cuts_below(const WallLayout& wall, const Loop& hole, const GapSizes& sizes, bool outside) const {
        const Skin& skin = outside ? wall.skins.front() : wall.skins.back();
        const std::uint32_t count = std::max<std::uint32_t>(1, sizes.count);
        const double width = hole[2].x - hole[0].x, v = hole[0].y - beyond - sizes.width;
        Pieces made;
        for (std::uint32_t i = 0; i < count; ++i) {
            const double u = hole[0].x + width * (i + 0.5) / count - sizes.length / 2;
            made.cutouts.push_back(
                {&skin, rectangle({u, v}, {u + sizes.length, v + sizes.width}), {u + sizes.length / 2, v + sizes.width / 2}});
        }
        return made;
    }

    [[nodiscard]] Pieces strips_beside(const WallLayout& wall, const Loop& hole, std::size_t number, bool outside) {
        const Skin& skin = outside ? wall.skins.front() : wall.skins.back();
        const GapSizes sizes = cutter_.sizes(feature_, number);
        const double height = hole[2].y - hole[0].y, w = sizes.width;
        double still = sizes.length > 0 ? length_for(number, sizes.length, 2 * height) : 2 * height;
        Pieces made;
        for (const double u : {hole[0].x - beyond - w, hole[2].x + beyond}) {
            const double length = std::min(height, still);
            if (length < least_joint) continue;
            const double v = hole[0].y;
            made.cutouts.push_back({&skin, rectangle({u, v}, {u + w, v + length}), {u + w / 2, v + length / 2}});
            still -= length;
        }
        if (made.cutouts.empty()) cutter_.refuse(feature_, "length is too short", "make it 20 mm or more");
        return made;
    }

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    const std::string& opening_;
};

}  // namespace

void place_on_opening(Cutter& cutter, const FeatureDescription& feature, const std::string& opening) {
    OpeningFeature(cutter, feature, opening).place();
}

}  // namespace seamward
