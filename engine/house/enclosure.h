// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <memory>

#include "house/place_features.h"

namespace seamward {

namespace ducts {
inline constexpr double sheet = 0.001, plate = 0.003;  ///< of a duct and of the boxes at its ends, meters
}

/// A box of sheets in a frame: four sides and two ends; what is given is the outside. The ends take cuts.
struct BoxPanels {
    Skin back, front;
};

/// A feature that encloses air: its panels and gaps in the making.
class Enclosure {
public:
    Enclosure(Cutter& cutter, const FeatureDescription& feature) : cutter_(cutter), layout_(cutter.layout()), feature_(feature) {
        name_ = feature.name.empty() ? feature.type->name : feature.name;
    }

    /// The air inside: as the file names it; other features may share it, and animals come out of it when one of them says so.
    SpaceIndex air() {
        NamedSpace named = feature_.space;
        if (named.id.empty()) named = {feature_.id + "-air", ""};
        if (named.name.empty()) named.name = feature_.type->air + ", " + name_;
        const auto known = layout_.space_ids.find(named.id);
        if (known != layout_.space_ids.end()) {
            if (!layout_.airs_of_features.contains(known->second.value))
                cutter_.refuse(feature_,
                               "space " + named.id + " is " + layout_.house.survey[known->second].label() +
                                   ", not the air in another feature",
                               "give this air an id of its own, or that of the duct or pipe that it is part of");
            share(known->second);
            return known->second;
        }
        const SpaceIndex made = layout_.add_space(named, SpaceKind::cavity, feature_.place, feature_.source);
        layout_.airs_of_features.insert(made.value);
        return made;
    }

    /// The feature is one of those round an air.
    void share(SpaceIndex air) {
        Space& space = layout_.house.survey.spaces[air.value];
        space.source = space.source || feature_.source;
    }

    [[nodiscard]] std::optional<std::size_t> row(FeatureGap::At at) const {
        for (std::size_t i = 0; i < feature_.gaps.size(); ++i) {
            if (feature_.type->gaps[i].at == at && !feature_.gaps[i].left_out) return i;
        }
        return std::nullopt;
    }

    BoxPanels box(const std::string& what, const Frame& frame, Point2 least, Point2 most, double back, double front,
                  bool has_back, bool has_front) {
        const double inner_back = has_back ? back + ducts::plate : back, inner_front = has_front ? front - ducts::plate : front;
        Prism sides = plain_prism(frame, rectangle(least, most), inner_back, inner_front);
        sides.cuts = {rectangle(least + Point2{ducts::plate, ducts::plate}, most - Point2{ducts::plate, ducts::plate})};
        sides.gap_of_cut.resize(1);
        add(what + "-sides", std::move(sides));
        BoxPanels out;
        const auto end = [&](const char* which, double from, double to) {
            Skin skin{.name = name_, .frame = frame, .back = from, .front = to, .extent = rectangle(least, most)};
            skin.panels.push_back(add(what + which, plain_prism(frame, rectangle(least, most), from, to)));
            return skin;
        };
        if (has_back) out.back = end("-back", back, back + ducts::plate);
        if (has_front) out.front = end("-front", front - ducts::plate, front);
        return out;
    }

    std::size_t add(const std::string& what, Prism made) {
        return layout_.add_panel(feature_.id + "/" + what, name_, "metal", Layer::fixture, std::move(made));
    }

    /// A gap in the end of a box.
    void gap_in(const Skin& end, std::size_t number, Point2 at, SpaceIndex front, SpaceIndex back, bool outward) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapSizes sizes = cutter_.sizes(feature_, number);
        skins_.push_back(std::make_unique<Skin>(end));
        const auto cutouts = cutter_.cutouts(row, sizes, *skins_.back(), at);
        const GapIndex gap = cutter_.enter(feature_, number, front, back, Cutter::shape_of(row, sizes, 0), cutouts);
        layout_.house.survey.gaps[gap.value].count = std::max<std::uint32_t>(1, sizes.count);
        cutter_.fill(feature_, number, sizes, cutouts, at, 0, 0.004, gap);
        if (row.shape != ShapeKind::ring) return;
        for (const Point2 middle : Cutter::places(row, sizes, at))
            cutter_.stand(feature_, row.id + "-pipe", row.insert.empty() ? "metal" : row.insert, *skins_.back(),
                          around_circle(middle, sizes.around / 2, pipe_sides), outward ? 0 : 0.15, outward ? 0.15 : 0, gap);
    }

    /// Keeps a skin as long as this is needed.
    void keep(std::unique_ptr<Skin> skin) { skins_.push_back(std::move(skin)); }

private:
    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    std::string name_;
    std::vector<std::unique_ptr<Skin>> skins_;
};

/// A round sheet-metal tube whose outside has that radius.
inline void add_tube(Enclosure& made, const Frame& frame, Point2 middle, double radius,
                     const std::vector<std::pair<Height, GapIndex>>& levels, const std::string& what = "tube") {
    Prism tube;
    tube.frame = frame;
    tube.outline = around_circle(middle, radius, pipe_sides);
    tube.cuts = {around_circle(middle, radius - ducts::sheet, pipe_sides)};
    tube.gap_of_cut.resize(1);
    for (std::size_t i = 0; i < levels.size(); ++i) {
        tube.heights.push_back(levels[i].first);
        if (i > 0) tube.gap_of_level.push_back(levels[i].second);
    }
    made.add(what, std::move(tube));
}

}  // namespace seamward
