// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <span>
#include <string>

#include "exchange/finish.h"
#include "house/house.h"

namespace seamward {

/// From outside in, as a page lists them.
inline constexpr std::array all_coats{Coat::roof, Coat::walls, Coat::framing, Coat::linings, Coat::fixtures, Coat::ground};

/// For programs: "roof".
[[nodiscard]] const char* coat_word(Coat coat);

/// The solids of a house as binary glTF for a page, as few bytes as will do. Frame of glTF: our (x, y, z) is (x, z, -y).
///
/// The one root node scales and moves whole numbers of 16 bits to meters (KHR_mesh_quantization): points are off by at most half
/// of a 65535th of the longest side of the house with its yard. Below it, one node for what belongs to one coat and faces one
/// way, to an eighth of a turn, with `extras` {"coat": "walls", "facing": [x, y, z]}; no facing where nothing is behind it. Its
/// mesh has one primitive for each color. Then one node for each gap of `marked` that has faces, with `extras` {"gap": number}:
/// these faces once more. No normals. Screens and the like have no holes, see plain_plate().
[[nodiscard]] std::string page_model(const House& house, std::span<const GapIndex> marked);

}  // namespace seamward
