// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>

#include "base/solid.h"
#include "base/survey.h"

namespace seamward {

/// The parts of a house as the text of a Wavefront OBJ file: our frame as it is (meters, x east, y north, z up, which the first
/// lines say), numbers with all digits that their doubles need, no normals.
///
/// Each part is an object `o ID`, in the order of `parts`, with points of its own that its faces share. Faces that bound no gap
/// stand in the group `g ID`, those that bound a gap in `g gap_GAP`; both parts beside a gap have faces in its group. In ids, a
/// byte that would end a name or begin a comment for some reader is written as `%` and two hex digits: " " is "%20".
///
/// `mtl_file` is the name of the file beside it that holds mtl_text(); empty: none, and no colors. Points must be finite,
/// indices valid.
[[nodiscard]] std::string obj_text(std::span<const Part> parts, const Survey& survey, const std::string& house_name,
                                   const std::string& mtl_file);

/// The colors for obj_text() of the same parts: one material for each layer and substrate word, "cladding/stucco".
[[nodiscard]] std::string mtl_text(std::span<const Part> parts);

}  // namespace seamward
