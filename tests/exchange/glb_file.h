// SPDX-License-Identifier: GPL-3.0-or-later
// A small reader of GLB files, for what ours must hold; it shares no code with the writer.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "base/document.h"
#include "base/solid.h"

namespace seamward::test {

struct GlbPrimitive {
    std::string gap;  ///< empty: none
    std::string material;
    std::vector<std::array<std::uint32_t, 3>> triangles;
};

struct GlbPart {
    std::string id, name, material, layer;
    std::vector<Point> points;  ///< in our frame, z up: the node's translation and the float added as doubles
    std::vector<GlbPrimitive> primitives;
    std::array<double, 6> stated{}, found{};  ///< lowest and highest of the floats as the file states them and as they are

    /// All primitives as one mesh.
    [[nodiscard]] TriangleMesh mesh() const;
};

struct GlbFile {
    Document json;
    std::string house;
    std::vector<GlbPart> parts;
};

/// Throws std::runtime_error when the bytes are no GLB of the kind that we write.
[[nodiscard]] GlbFile read_glb(std::string_view bytes);

}  // namespace seamward::test
