// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace seamward::framing {

/// Sizes of what stands behind the finishes, in meters. Common practice (dimension lumber as it is sold in North America,
/// actual sizes); they shape the solids and decide nothing about gaps.
inline constexpr double plate = 0.038;  ///< bottom plate, one ply
inline constexpr double double_top_plate = 0.076;
inline constexpr double stud = 0.038;
inline constexpr double joist = 0.235;
inline constexpr double subfloor = 0.019;
inline constexpr double slab = 0.1;
inline constexpr double stem_wall = 0.2;
inline constexpr double footing_depth = 0.45;  ///< below the yard
inline constexpr double deck = 0.045;          ///< roof boards and covering together
inline constexpr double heel = 0.11;  ///< least height of the deck's lower side over the plates, above the framing's face
inline constexpr double fascia = 0.019;
inline constexpr double fascia_height = 0.16;
inline constexpr double soffit = 0.012;
inline constexpr double overlap = 0.02;  ///< of the cladding over the foundation
inline constexpr double closer = 0.02;   ///< what ends an air gap between layers

}  // namespace seamward::framing
