// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/piercing.h"

#include <algorithm>

namespace seamward {

void Piercing::require_length(const FeatureGap& row, const GapSizes& sizes) const {
    const bool boxed = row.form == FeatureGap::Form::around || row.form == FeatureGap::Form::beside;
    if (row.shape != ShapeKind::slot || boxed || sizes.length > 0) return;
    cutter_.refuse(feature_, "length is missing", "write length: 1.2 m, how long the joint is");
}

void Piercing::pierce(const Skin& skin, std::size_t number, Point2 at, SpaceIndex front, SpaceIndex back, double behind,
                      double before, const std::vector<const Skin*>& own) {
    const FeatureGap& row = feature_.type->gaps[number];
    const GapSizes sizes = cutter_.sizes(feature_, number);
    require_length(row, sizes);
    std::vector<Cutout> cutouts = cutter_.cutouts(row, sizes, skin, at);
    for (std::size_t i = 0; i < own.size() && i < cutouts.size(); ++i) cutouts[i].skin = own[i];
    const GapIndex gap = cutter_.enter(feature_, number, front, back, Cutter::shape_of(row, sizes, 0), cutouts);
    layout_.house.survey.gaps[gap.value].count = std::max<std::uint32_t>(1, sizes.count);
    cutter_.fill(feature_, number, sizes, cutouts, at, behind, before, gap);
    if (row.shape == ShapeKind::ring)
        pipes_.push_back({&skin, sizes.around / 2, behind, before, gap, row.insert.empty() ? "metal" : row.insert,
                          Cutter::places(row, sizes, at)});
}

Loop Piercing::sleeve_round(const Cutout& cutout, double sheet) {
    Box box;
    box.take(cutout.loop);
    box.take(cutout.filled);
    return rectangle(box.least - Point2{sheet, sheet}, box.most + Point2{sheet, sheet});
}

void Piercing::add_pipes() {
    if (pipes_.empty()) return;
    std::sort(pipes_.begin(), pipes_.end(),
              [](const PipeStretch& a, const PipeStretch& b) { return a.skin->back < b.skin->back; });
    const auto parallel = [](const Skin& a, const Skin& b) { return dot(a.frame.n, b.frame.n) > 0.999; };
    std::size_t first = 0;
    while (first < pipes_.size()) {
        std::size_t end = first + 1;
        while (end < pipes_.size() && pipes_[end].radius == pipes_[first].radius &&
               pipes_[end].middles.size() == pipes_[first].middles.size() && parallel(*pipes_[end].skin, *pipes_[first].skin))
            ++end;
        add_pipe(first, end);
        first = end;
    }
    pipes_.clear();
}

void Piercing::add_pipe(std::size_t first, std::size_t end) {
    const PipeStretch& foot = pipes_[first];
    Panel panel{feature_.id + "/pipe-" + std::to_string(first + 1),
                feature_.name.empty() ? feature_.type->name : feature_.name,
                foot.material,
                Layer::fixture,
                {}};
    for (const Point2 middle : foot.middles) {
        Prism prism;
        prism.frame = foot.skin->frame;
        prism.outline = around_circle(middle, foot.radius, pipe_sides);
        prism.heights = {foot.skin->height(foot.skin->back - foot.behind)};
        for (std::size_t i = first; i < end; ++i) {
            prism.heights.push_back(pipes_[i].skin->height(pipes_[i].skin->back));
            prism.gap_of_level.emplace_back();
            prism.heights.push_back(pipes_[i].skin->height(pipes_[i].skin->front));
            prism.gap_of_level.push_back(pipes_[i].gap);
        }
        prism.heights.push_back(pipes_[end - 1].skin->height(pipes_[end - 1].skin->front + pipes_[end - 1].before));
        prism.gap_of_level.emplace_back();
        panel.prisms.push_back(std::move(prism));
    }
    layout_.add_panel(std::move(panel));
}

}  // namespace seamward
