// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>

#include "base/solid.h"
#include "base/survey.h"

namespace seamward {

/// The parts of a house as the bytes of a binary glTF 2.0 file (GLB). Meters. glTF is y up: our (x, y, z) is written as
/// (x, z, -y), without rounding, and no node turns anything.
///
/// One root node, named after the house; below it one node and mesh a part, named by the part's id, in the order of `parts`,
/// with `extras` {"name", "material", "layer"}. A mesh has one primitive for the faces that bound no gap and one for each gap
/// that it bounds, with `extras` {"gap": id}; all of them share the part's points, so what was closed stays closed. No normals:
/// readers shade such faces flat. One material for each layer and substrate word, named "cladding/stucco".
///
/// Positions are 32-bit floats from the middle of the part, which is the node's translation (a multiple of 1/1024 m, so exact
/// as a float). Along each axis they are off by at most 2^-25 of the part's size: 0.3 micrometers for a part of 10 m.
///
/// Points must be finite, indices valid. Text that is not UTF-8 is made printable. Throws std::length_error beyond 4 GiB, the
/// most that the format holds.
[[nodiscard]] std::string gltf_binary(std::span<const Part> parts, const Survey& survey, const std::string& house_name);

}  // namespace seamward
