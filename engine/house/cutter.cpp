// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/cutter.h"

#include <algorithm>
#include <cmath>

namespace seamward {

namespace {

constexpr double wire = 0.0008;  ///< diameter of a screen's bars, meters

/// Whether a cut keeps clear of ends that slant: they stand elsewhere at each height.
bool between_ends(const Box& box, const Prism& prism) {
    constexpr double margin = 1e-4;
    const double back = prism.heights.front().out, front = prism.heights.back().out;
    const Slant& slant = prism.slant;
    return (slant.left_slant == 0 || box.least.x > slant.left_reach(back, front) + margin) &&
           (slant.right_slant == 0 || box.most.x < slant.right_reach(back, front) - margin);
}

/// The loop, given in one frame, in another that lies parallel to it.
Loop moved(const Loop& loop, const Frame& from, const Frame& to) {
    if (from.origin.x == to.origin.x && from.origin.y == to.origin.y && from.origin.z == to.origin.z && from.u.x == to.u.x &&
        from.u.y == to.u.y && from.v.x == to.v.x && from.v.y == to.v.y)
        return loop;
    Loop out;
    for (const Point2 p : loop) {
        const Vector off = from.at(p.x, p.y, 0) - to.origin;
        out.push_back({dot(off, to.u), dot(off, to.v)});
    }
    return out;
}

/// How many square openings with bars between them fit into a length.
std::size_t openings_in(double length, double opening) {
    return std::max<std::size_t>(1, static_cast<std::size_t>((length + wire) / (opening + wire) + 1e-9));
}

}  // namespace

GapSizes Cutter::sizes(const FeatureDescription& feature, std::size_t gap) const {
    const FeatureGap& row = feature.type->gaps[gap];
    const FeatureDescription::Sizes& said = feature.gaps[gap];
    GapSizes out{said.width.value_or(row.width), said.around.value_or(row.around),  said.length.value_or(row.length),
                 said.size.value_or(row.size),   feature.count.value_or(row.count), feature.spacing.value_or(row.spacing)};
    const auto measured = layout_.widths.find(gap_id(feature, gap));
    if (measured != layout_.widths.end()) out.width = measured->second;
    return out;
}

std::string Cutter::gap_id(const FeatureDescription& feature, std::size_t gap) const {
    if (!feature.gaps[gap].id.empty()) return feature.gaps[gap].id;
    std::size_t made = 0;
    const std::vector<WallLayer>& layers = layout_.described.assemblies[layout_.described.wall_assembly].layers;
    const bool sheathed = std::count_if(layers.begin(), layers.end(), [](const WallLayer& layer) { return layer.is_air(); }) > 1;
    for (std::size_t i = 0; i < feature.gaps.size(); ++i) {
        const bool nowhere = feature.type->gaps[i].at == FeatureGap::At::sheathing && !sheathed;
        made += feature.gaps[i].left_out || nowhere ? 0 : 1;
    }
    return made == 1 ? feature.id : feature.id + "-" + feature.type->gaps[gap].id;
}

Message Cutter::place_name(const FeatureDescription& feature) const {
    if (feature.at) {
        const RoomLayout* room = layout_.room_at(feature.story, *feature.at);
        if (room == nullptr || layout_.roof.empty()) return {};
        const std::vector<Host>& hosts = feature.type->hosts;
        const bool on_roof = std::find(hosts.begin(), hosts.end(), Host::roof) != hosts.end();
        const Message below = layout_.house.survey[room->space].called();
        return on_roof ? message("over the {}", {below}) : below;
    }
    if (!feature.side.empty()) {
        for (const Space& space : layout_.house.survey.spaces) {
            if (space.id == feature.side) return space.called();
        }
    }
    if (feature.on.size() != 1) return {};
    for (const OpeningDescription& opening : layout_.described.openings) {
        if (opening.id == feature.on.front()) return as_named(opening.name.empty() ? spoken(opening.id) : opening.name);
    }
    for (const BlockWallDescription& wall : layout_.described.block_walls) {
        if (feature.on.front().starts_with(wall.id)) return {};  // the type's name says that it is the block wall
    }
    return as_named(spoken(feature.on.front()));
}

Message Cutter::gap_name(const FeatureDescription& feature, std::size_t gap) const {
    const FeatureGap& row = feature.type->gaps[gap];
    if (!feature.gaps[gap].name.empty()) return as_named(feature.gaps[gap].name);
    if (!feature.name.empty() && feature.type->gaps.size() == 1) return as_named(feature.name);
    const Message what = as_named(row.name.empty() ? feature.type->name : row.name);
    const Message where = feature.name.empty() ? place_name(feature) : as_named(feature.name);
    if (where.empty() || what.english().find(where.english()) != std::string::npos) return what;
    const std::vector<Host>& hosts = feature.type->hosts;
    const bool opening = std::find(hosts.begin(), hosts.end(), Host::opening) != hosts.end() && hosts.size() == 1;
    return opening ? message("{}: {}", {where, what}) : message("{}, {}", {what, where});
}

void name_bay(Gap& gap, const std::string& bay) {
    gap.spoken = message("{}, bay {}", {gap.called(), as_it_stands(bay)});
    gap.name = gap.spoken.english();
}

GapIndex Cutter::enter_uncut(const FeatureDescription& feature, std::size_t number, SpaceIndex front, SpaceIndex back,
                             const Shape& shape, std::vector<Point> way, double depth, std::vector<std::string> substrates) {
    const FeatureGap& row = feature.type->gaps[number];
    const FeatureDescription::Sizes& said = feature.gaps[number];
    Gap gap;
    gap.id = gap_id(feature, number);
    gap.spoken = gap_name(feature, number);
    gap.name = gap.spoken.english();
    gap.between = {front, back};
    gap.shape = shape;
    gap.duty = row.duty;
    gap.depth = depth;
    gap.substrates = std::move(substrates);
    if (!row.insert.empty() && std::find(gap.substrates.begin(), gap.substrates.end(), row.insert) == gap.substrates.end())
        gap.substrates.push_back(row.insert);
    gap.evidence = said.evidence;
    gap.closing = said.closing;
    gap.feature = feature.type->id;
    gap.note = said.note;
    gap.usual = row.usual;
    if (gap.closing.never.empty() && !gap.closing.cost) {
        gap.closing.never = row.never.text;
        gap.closing.never_source = row.never.source;
        gap.closing.mesh_allowed = row.usual == "mesh";
    }
    if (!way.empty()) gap.at = way[1];
    const GapIndex index{static_cast<std::uint32_t>(layout_.house.survey.gaps.size())};
    if (const auto [first, is_new] = gap_ids_.emplace(gap.id, index.value); !is_new)
        layout_.faults.add(
            feature.place,
            "gap id \"" + gap.id + "\" stands twice, first on line " + std::to_string(layout_.gap_places[first->second].line),
            "give each its own");
    layout_.house.survey.gaps.push_back(std::move(gap));
    GapPlace place{index, std::move(way)};
    place.height_usual = !feature.up && !feature.at && row.edges.empty();
    place.along_usual = !feature.along && !feature.at;
    place.spacing_usual = !feature.spacing;
    layout_.house.places.push_back(std::move(place));
    layout_.gap_places.push_back(feature.place);
    if (!front.valid() || !back.valid()) refuse(feature, "there is no room or cavity at its place", "move it");
    if (front == back) refuse(feature, "the same space is at both sides", "check its place");
    return index;
}

GapIndex Cutter::enter(const FeatureDescription& feature, std::size_t number, SpaceIndex front, SpaceIndex back,
                       const Shape& shape, const std::vector<Cutout>& cutouts, std::vector<Point> way) {
    require_fit(feature, cutouts);
    const Skin& skin = *cutouts.front().skin;
    std::vector<std::string> substrates;
    for (const std::size_t panel : skin.panels) {
        const std::string& material = layout_.panels[panel].material;
        if (std::find(substrates.begin(), substrates.end(), material) == substrates.end()) substrates.push_back(material);
    }
    const Point2 through = cutouts[cutouts.size() / 2].through;
    const Skin& there = *cutouts[cutouts.size() / 2].skin;
    constexpr double past = 0.012;  // beyond the skin, inside of the thinnest cavities
    if (way.empty())
        way = {there.at(through, there.front + past), there.at(through, (there.front + there.back) / 2),
               there.at(through, there.back - past)};
    const GapIndex index =
        enter_uncut(feature, number, front, back, shape, std::move(way), skin.front - skin.back, std::move(substrates));
    for (const Cutout& cutout : cutouts) {
        layout_.check();
        cut(feature, *cutout.skin, cutout.loop, index, cutout.filled);
    }
    return index;
}

void Cutter::require_fit(const FeatureDescription& feature, const std::vector<Cutout>& cutouts) {
    const auto off = std::find_if_not(cutouts.begin(), cutouts.end(), [](const Cutout& cutout) {
        const Loop& extent = cutout.skin->extent;
        return (cutout.loop.empty() || lies_within(extent, cutout.loop)) &&
               (cutout.filled.empty() || lies_within(extent, cutout.filled));
    });
    if (off == cutouts.end()) return;
    const Skin& skin = *off->skin;
    Box box;
    std::size_t pieces = 0;
    double piece = 0;
    for (const Cutout& cutout : cutouts) {
        if (cutout.skin != &skin) continue;
        Box one;
        one.take(cutout.loop);
        one.take(cutout.filled);
        piece = std::max(piece, one.most.x - one.least.x);
        box.take({one.least, one.most});
        ++pieces;
    }
    const Panel* panel = skin.panels.empty() ? nullptr : &layout_.panels[skin.panels.front()];
    refuse(feature,
           misfit_of(skin, panel == nullptr || panel->layer == Layer::fixture ? skin.name : panel->name, box, pieces, piece));
}

std::uint32_t Cutter::as_many_as_fit(const FeatureDescription& feature, double length, double spacing) {
    const double fit = std::max(1.0, std::floor(length / std::max(spacing, least_spacing)));
    if (fit > most_alike)
        refuse(feature, "its spacing makes more than " + std::to_string(most_alike) + " alike", "make spacing larger");
    return static_cast<std::uint32_t>(fit);
}

void Cutter::cut(const FeatureDescription& feature, const Skin& skin, const Loop& loop, GapIndex gap, const Loop& filled) {
    constexpr double least_area = 1e-9;  // a gap without width needs no cut
    std::vector<std::pair<Loop, GapIndex>> cuts;
    if (!filled.empty()) cuts.emplace_back(filled, GapIndex());
    if (std::abs(doubled_area(loop)) > least_area) cuts.emplace_back(loop, gap);
    for (const std::size_t number : skin.panels) {
        Prism& prism = layout_.panels[number].prisms.front();
        const std::size_t before = prism.cuts.size();
        CutIndex& index = cuts_[number];
        index.update(prism.cuts);
        const Box outline = box_of(prism.outline);
        for (const auto& [cut, bounds] : cuts) {
            Loop here = moved(cut, skin.frame, prism.frame);
            const Box box = box_of(here);
            if (!box.touches(outline)) continue;
            if (!between_ends(box, prism))
                refuse(feature, "it reaches past the end of " + layout_.panels[number].name, "move it inward");
            if (index.touches(box, before))
                refuse(feature, "it runs into another opening of " + layout_.panels[number].name, "move one of the two");
            prism.cuts.push_back(std::move(here));
            prism.gap_of_cut.push_back(bounds);
        }
    }
}

void Cutter::stand(const FeatureDescription& feature, const std::string& what, const std::string& material, const Skin& skin,
                   const Loop& outline, double behind, double before, GapIndex gap) {
    Prism prism;
    prism.frame = skin.frame;
    prism.outline = outline;
    prism.heights = {skin.height(skin.back), skin.height(skin.front)};
    prism.gap_of_level = {gap};
    if (behind > 0) {
        prism.heights.insert(prism.heights.begin(), skin.height(skin.back - behind));
        prism.gap_of_level.insert(prism.gap_of_level.begin(), GapIndex());
    }
    if (before > 0) {
        prism.heights.push_back(skin.height(skin.front + before));
        prism.gap_of_level.emplace_back();
    }
    layout_.add_panel(feature.id + "/" + what + "-" + std::to_string(++inserts_),
                      feature.name.empty() ? feature.type->name : feature.name, material, Layer::fixture, std::move(prism));
}

Point2 Cutter::screen_opening(Point2 least, Point2 most, double opening) {
    const auto middle = [&](double from, double to) {
        const std::size_t n = openings_in(to - from, opening);
        const double margin = (to - from - static_cast<double>(n) * opening - static_cast<double>(n - 1) * wire) / 2;
        return from + margin + static_cast<double>(n / 2) * (opening + wire) + opening / 2;
    };
    return {middle(least.x, most.x), middle(least.y, most.y)};
}

void Cutter::screen(const FeatureDescription& feature, const std::string& what, const Skin& skin, Point2 least, Point2 most,
                    double opening, GapIndex gap) {
    if (openings_in(std::max(most.x - least.x, most.y - least.y), opening) > most_alike)
        refuse(feature, "its screen has more than " + std::to_string(most_alike) + " bars", "make it smaller");
    const double middle = (skin.back + skin.front) / 2;
    Panel panel{feature.id + "/" + what + "-" + std::to_string(++inserts_),
                "screen of " + (feature.name.empty() ? feature.type->name : feature.name),
                "metal",
                Layer::fixture,
                {}};
    Panel upright = panel;
    upright.id += "-upright";
    const auto bars = [&](Panel& out, bool up, double back, double front) {
        const double from = up ? least.x : least.y, to = up ? most.x : most.y;
        const std::size_t n = openings_in(to - from, opening);
        const double margin = (to - from - static_cast<double>(n) * opening - static_cast<double>(n - 1) * wire) / 2;
        for (std::size_t i = 0; i <= n; ++i) {
            const double at = from + margin + static_cast<double>(i) * (opening + wire);
            const double begin = i == 0 ? from : at - wire, end = i == n ? to : at;
            if (end - begin < 1e-9) continue;
            Prism prism;
            prism.frame = skin.frame;
            prism.outline = up ? rectangle({begin, least.y}, {end, most.y}) : rectangle({least.x, begin}, {most.x, end});
            prism.heights = {skin.height(back), skin.height(front)};
            // Edges of the rectangle: lower, right, upper, left. The outermost bars lie tight against the frame.
            prism.gap_of_edge.resize(4);
            if (i > 0) prism.gap_of_edge[up ? 3 : 0] = gap;
            if (i < n) prism.gap_of_edge[up ? 1 : 2] = gap;
            out.prisms.push_back(std::move(prism));
        }
    };
    bars(panel, false, middle, middle + wire);
    bars(upright, true, middle - wire, middle);
    layout_.add_panel(std::move(panel));
    layout_.add_panel(std::move(upright));
}

double Cutter::width_of(const FeatureGap& row, const GapSizes& sizes) {
    if (row.shape == ShapeKind::ring) return sizes.around + 2 * sizes.width;
    if (row.shape == ShapeKind::mesh) return sizes.size[0];
    if (row.shape == ShapeKind::hole || row.upright) return sizes.width;
    return std::max(sizes.length, sizes.size[0] + 2 * sizes.width);
}

std::vector<Point2> Cutter::places(const FeatureGap& row, const GapSizes& sizes, Point2 at) {
    const std::uint32_t count = std::max<std::uint32_t>(1, sizes.count);
    const double spacing = std::max(sizes.spacing, width_of(row, sizes) + 0.02);
    std::vector<Point2> out;
    for (std::uint32_t i = 0; i < count; ++i) out.push_back({at.x + (i - (count - 1) / 2.0) * spacing, at.y});
    return out;
}

std::vector<Cutout> Cutter::cutouts(const FeatureGap& row, const GapSizes& sizes, const Skin& skin, Point2 at) const {
    std::vector<Cutout> out;
    const double w = sizes.width, a = sizes.size[0] / 2, b = sizes.size[1] / 2;
    for (const Point2 p : places(row, sizes, at)) {
        switch (row.shape) {
            case ShapeKind::hole: out.push_back({&skin, around_circle(p, w / 2, pipe_sides), p}); break;
            case ShapeKind::ring:
                out.push_back({&skin, hole_round(around_circle(p, sizes.around / 2, pipe_sides), w),
                               p + Point2{0, sizes.around / 2 + w / 2}});
                break;
            case ShapeKind::mesh: {
                const Point2 least = p - Point2{a, b}, most = p + Point2{a, b};
                out.push_back({&skin, {}, screen_opening(least, most, w), rectangle(least, most)});
                break;
            }
            case ShapeKind::slot:
                if (row.form == FeatureGap::Form::around)
                    out.push_back(
                        {&skin, hole_round(rectangle(p - Point2{a, b}, p + Point2{a, b}), w), p + Point2{0, b + w / 2}});
                else if (row.form == FeatureGap::Form::beside)
                    out.push_back({&skin, rectangle(p + Point2{-a, b}, p + Point2{a, b + w}), p + Point2{0, b + w / 2},
                                   rectangle(p - Point2{a, b}, p + Point2{a, b})});
                else {
                    const Point2 half = row.upright ? Point2{w / 2, sizes.length / 2} : Point2{sizes.length / 2, w / 2};
                    out.push_back({&skin, rectangle(p - half, p + half), p});
                }
                break;
        }
    }
    return out;
}

void Cutter::fill(const FeatureDescription& feature, std::size_t number, const GapSizes& sizes,
                  const std::vector<Cutout>& cutouts, Point2 at, double behind, double before, GapIndex index) {
    const FeatureGap& row = feature.type->gaps[number];
    const std::vector<Point2> middles = places(row, sizes, at);
    const Point2 half{sizes.size[0] / 2, sizes.size[1] / 2};
    const std::string material = row.insert.empty() ? "metal" : row.insert;
    for (std::size_t i = 0; i < cutouts.size() && i < middles.size(); ++i) {
        const Skin& skin = *cutouts[i].skin;
        if (row.shape == ShapeKind::mesh)
            screen(feature, row.id, skin, middles[i] - half, middles[i] + half, sizes.width, index);
        else if (row.shape == ShapeKind::slot && row.form == FeatureGap::Form::around)
            stand(feature, row.id, material, skin, rectangle(middles[i] - half, middles[i] + half), behind, before, index);
        else if (row.shape == ShapeKind::slot && row.form == FeatureGap::Form::beside) {
            // Tight at three sides: only the fourth bounds the gap.
            Prism prism;
            prism.frame = skin.frame;
            prism.outline = rectangle(middles[i] - half, middles[i] + half);
            prism.gap_of_edge = {{}, {}, index, {}};
            prism.heights = {skin.height(skin.back - behind), skin.height(skin.front + before)};
            layout_.add_panel(feature.id + "/" + row.id + "-" + std::to_string(++inserts_),
                              feature.name.empty() ? feature.type->name : feature.name, material, Layer::fixture,
                              std::move(prism));
        }
    }
}

Shape Cutter::shape_of(const FeatureGap& row, const GapSizes& sizes, double slot_length) {
    switch (row.shape) {
        case ShapeKind::hole: return Hole{sizes.width};
        case ShapeKind::ring: return Ring{sizes.width, sizes.around};
        case ShapeKind::mesh: return Mesh{sizes.width, sizes.size[0] * sizes.size[1]};
        case ShapeKind::slot: break;
    }
    if (slot_length > 0) return Slot{sizes.width, slot_length};
    if (row.form == FeatureGap::Form::around) return Slot{sizes.width, 2 * (sizes.size[0] + sizes.size[1] + 2 * sizes.width)};
    if (row.form == FeatureGap::Form::beside) return Slot{sizes.width, sizes.size[0]};
    return Slot{sizes.width, sizes.length};
}

}  // namespace seamward
