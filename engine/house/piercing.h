// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "house/place_features.h"

namespace seamward {

/// Cuts openings of a feature into skins, and leads the pipes in its rings through all skins at once when it goes.
class Piercing {
public:
    Piercing(Cutter& cutter, const FeatureDescription& feature) : cutter_(cutter), layout_(cutter.layout()), feature_(feature) {}

protected:
    /// Joints on something without ends of its own need their length said.
    void require_length(const FeatureGap& row, const GapSizes& sizes) const;
    /// Cuts all pieces about a point, fills them, and remembers their pipes, which reach `behind` and `before` the skin. The skin
    /// stays where it is until add_pipes(). `own`: the skin that each piece is cut into, one for each; empty: `skin`.
    void pierce(const Skin& skin, std::size_t number, Point2 at, SpaceIndex front, SpaceIndex back, double behind, double before,
                const std::vector<const Skin*>& own = {});
    /// One pipe for each place, through all skins that it passes with one diameter.
    void add_pipes();
    /// A skin of the feature's own, kept as long as this.
    Skin& keep(Skin skin) { return *skins_.emplace_back(std::make_unique<Skin>(std::move(skin))); }
    /// The rectangle of a sheet round an opening.
    [[nodiscard]] static Loop sleeve_round(const Cutout& cutout, double sheet);

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;

private:
    /// One stretch of a pipe: where it passes one skin.
    struct PipeStretch {
        const Skin* skin = nullptr;
        double radius = 0, behind = 0, before = 0;
        GapIndex gap;
        std::string material;
        std::vector<Point2> middles;
    };
    void add_pipe(std::size_t first, std::size_t end);

    std::vector<PipeStretch> pipes_;
    std::vector<std::unique_ptr<Skin>> skins_;
};

}  // namespace seamward
