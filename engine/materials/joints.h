// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "catalog/joint_figures.h"

namespace seamward {

/// How wide a sealed joint must be: (100 / X) (e L dT + M) + t, the formula of the assignments on expansion of Cornell's ARCH
/// 262. `movement` X as a share of one, `coefficient` e for a degree, `spacing` L of joints, `degrees` dT of that degree, `other`
/// M movement and `tolerance` t as lengths; all lengths in one unit, the answer's. `movement` must be more than 0.
[[nodiscard]] double joint_width(double movement, double coefficient, double spacing, double degrees, double other,
                                 double tolerance);

/// The farthest that joints of that width may stand apart where the wall strains by `strain`: movement * width / strain.
[[nodiscard]] double joint_spacing(double movement, double width, double strain);

/// The next whole step (1/8 in) up. Meters.
[[nodiscard]] double stock_width(double width);

/// By how much a joint gets wider and narrower between the coldest and the hottest day: growth of so much wall of the substrate
/// that grows most, over the range of temperature of the table. Meters; 0 where no substrate is in the table.
[[nodiscard]] double joint_movement(const std::vector<std::string>& substrates, double spacing);

/// Depth of the sealant in a joint, meters: half the width, no less than 6 mm and no more than 13 mm.
[[nodiscard]] double joint_depth(double width);

/// Width of the bead that closes a gap of that width, meters: no narrower than 6 mm.
[[nodiscard]] double bead_width(double width);

/// Whether a gap of that width, meters, is closed with sealant alone: under 1/4 in. Wider ones take backer rod or foam.
[[nodiscard]] bool caulk_only(double width);

/// The thinnest backer rod of the stock sizes that fills a joint of that width, meters: 25 % thicker than the joint, or 1/8 in up
/// to joints of 3/4 in. Null when none is thick enough.
[[nodiscard]] const JointFigure* backer_rod(double width);

}  // namespace seamward
