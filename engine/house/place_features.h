// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "house/cutter.h"

namespace seamward {

/// What is before the outermost skin of an exterior wall at a height over its floor: outdoors, or the air under the eave.
[[nodiscard]] SpaceIndex outside_of(const Layout& layout, const WallLayout& wall, double up);
/// The edge of the outline under an exterior wall.
[[nodiscard]] std::size_t wall_edge(const Layout& layout, const WallLayout& wall);

/// Each puts one line of the list of features where it belongs; what does not fit there is reported.
void place_on_wall(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, bool gable);
void place_on_level(Cutter& cutter, const FeatureDescription& feature, const Skin& skin, SpaceIndex above, SpaceIndex below);
void place_weep_screed(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall);
void place_on_opening(Cutter& cutter, const FeatureDescription& feature, const std::string& opening);
void place_on_eaves(Cutter& cutter, const FeatureDescription& feature, const std::vector<std::size_t>& edges);
void place_on_block_wall(Cutter& cutter, const FeatureDescription& feature, const std::vector<const BlockRun*>& runs);
void place_on_foundation(Cutter& cutter, const FeatureDescription& feature, std::size_t edge);
/// Ducts, cans and wells: features with air of their own.
void place_duct(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall);
void place_can(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall);
void place_ceiling_duct(Cutter& cutter, const FeatureDescription& feature);
/// The opening at the upper end of a duct that place_ceiling_duct() led through the roof.
void place_duct_cap(Cutter& cutter, const FeatureDescription& feature);
/// A hollow pipe with an open mouth that comes up through the roof.
void place_roof_pipe(Cutter& cutter, const FeatureDescription& feature, const Skin& roof);
void place_floor_well(Cutter& cutter, const FeatureDescription& feature);

}  // namespace seamward
