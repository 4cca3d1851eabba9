// SPDX-License-Identifier: GPL-3.0-or-later
// What the text of a file says that Assimp would not pass on, or would apply on its own.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "exchange/reader/frame.h"

namespace seamward {

struct SceneHints {
    std::optional<UnitRatio> unit;
    std::optional<UpAxis> up;
};

/// COLLADA: `<unit meter="0.0254"/>` and `<up_axis>`. Both are overwritten with spaces, so that nobody applies them again.
[[nodiscard]] SceneHints take_collada_hints(std::span<char> text);

/// DXF: $INSUNITS of the header. Up is z, as the format has it.
[[nodiscard]] SceneHints dxf_hints(std::string_view text);

/// PLY: throws ReadRefusal when the header does not end, or counts more than follows. Assimp would look for it for ever, and make
/// up what is missing.
void check_ply_header(std::string_view text);

/// An OBJ file made plain: each object, or each group where there are no objects, is an object `nNUMBER`; materials are gone.
struct PlainObj {
    std::string text;
    std::vector<std::string> names;  ///< by number; may repeat
    SceneHints hints;                ///< of our own files, which say what they are in their second line
};
[[nodiscard]] PlainObj plain_obj(std::string_view text);

}  // namespace seamward
