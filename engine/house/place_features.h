// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "house/cutter.h"

namespace seamward {

/// What is before the first skin of a wall at a place: outdoors or the air under the eave; of a partition what is beside it.
[[nodiscard]] SpaceIndex outside_of(const Layout& layout, const WallLayout& wall, Point2 at);
/// The edge of the outline under an exterior wall.
[[nodiscard]] std::size_t wall_edge(const Layout& layout, const WallLayout& wall);

/// The post that ends the air in a partition which runs squarely at a face of a wall.
struct EndPost {
    std::size_t panel = 0;
    double depth = 0;
    SpaceIndex air;  ///< beyond it
};
[[nodiscard]] std::optional<EndPost> post_beyond(const Layout& layout, const WallLayout& wall, Point2 at, bool front);
/// What is beside a wall at a place: a room, the air in a bulkhead, the air between joists, or that in a partition which ends
/// there.
[[nodiscard]] SpaceIndex beside(const Layout& layout, const WallLayout& wall, Point2 at, bool front);

/// The space before a skin of a wall (n points to it) and the one behind, at a place of the wall.
[[nodiscard]] std::pair<SpaceIndex, SpaceIndex> spaces_at(const Layout& layout, const WallLayout& wall, std::size_t skin,
                                                          Point2 at);
/// The figure of the air in a wall, in the wall's own frame.
[[nodiscard]] Figure air_in(const Layout& layout, const WallLayout& wall, std::size_t cavity);
/// Where a feature is along a wall; reported when that is not said, or past its end.
[[nodiscard]] double along_wall(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall);
/// Where an upright feature is: along and up. Reported when that is not said, or not on the wall.
[[nodiscard]] Point2 upright_place(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall,
                                   const FeatureGap& row);
/// Whether a gap is a row of holes along the foot of a skin, as many as it has room for.
[[nodiscard]] bool is_row_of_holes(const FeatureGap& row);
/// One of several features that a line makes where air is parted: its id and those of its gaps end in `suffix`.
[[nodiscard]] FeatureDescription part_of(const FeatureDescription& feature, const std::string& suffix);
/// Reports a feature whose opening in a skin framing would shut.
void check_framing(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, std::size_t skin, Point2 at);
/// The height of the lowest openings in a skin: just over what ends the air behind.
[[nodiscard]] double foot_of_skin(const WallLayout& wall, std::size_t skin);

/// Each puts one line of the list of features where it belongs; what does not fit there is reported.
void place_on_wall(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, bool gable);
/// What lies over and under a level skin at each place of the plan.
struct LevelAir {
    std::function<SpaceIndex(Point2)> above, below;
};
/// `hidden_above`: what stands in the opening is out of sight over it (a ceiling's), not under it (a floor's, a roof's).
void place_on_level(Cutter& cutter, const FeatureDescription& feature, const Skin& skin, const LevelAir& air, bool hidden_above);
/// Joints of a skin: along an edge of it, along a line in rows, or short cuts in a row.
void place_joint(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall, std::size_t number, std::size_t skin);
void place_weep_screed(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall);
void place_on_opening(Cutter& cutter, const FeatureDescription& feature, const std::string& opening);
/// Reports a feature that does not go on what it names, or says what nothing of it goes by.
void check_host(Cutter& cutter, const FeatureDescription& feature);
void place_on_eaves(Cutter& cutter, const FeatureDescription& feature, const std::vector<std::size_t>& edges);
void place_on_block_wall(Cutter& cutter, const FeatureDescription& feature, const std::vector<const BlockRun*>& runs);
/// On the masonry, or on the rim of a framed floor.
void place_on_foundation(Cutter& cutter, const FeatureDescription& feature, const std::vector<std::size_t>& edges);
/// Pipes in rings of a skin.
void put_pipes(Cutter& cutter, const FeatureDescription& feature, const FeatureGap& row, const GapSizes& sizes, const Skin& skin,
               Point2 at, double behind, double before, GapIndex gap);
/// Ducts, cans and wells: features with air of their own.
void place_duct(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall);
void place_can(Cutter& cutter, const FeatureDescription& feature, const WallLayout& wall);
void place_ceiling_duct(Cutter& cutter, const FeatureDescription& feature);
/// The opening at the upper end of a duct that place_ceiling_duct() led through the roof.
void place_duct_cap(Cutter& cutter, const FeatureDescription& feature);
/// A hollow pipe with an open mouth that comes up through the roof.
void place_roof_pipe(Cutter& cutter, const FeatureDescription& feature, const Skin& roof, const LevelAir& air);
/// A duct down through a floor, with what goes on from it: an outlet in a wall and a joint that name the same air.
void place_floor_duct(Cutter& cutter, const FeatureDescription& feature,
                      const std::vector<const FeatureDescription*>& continued_by);
[[nodiscard]] bool is_floor_duct(const FeatureDescription& feature);
void place_floor_well(Cutter& cutter, const FeatureDescription& feature);

}  // namespace seamward
