// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>

#include "base/json_writer.h"
#include "base/survey.h"
#include "exchange/finish.h"

// What every glTF file of this program has alike. Khronos Group, glTF 2.0 Specification, 2021 (ISO/IEC 12113:2022).

namespace seamward {

/// x east, y north, z up as x, y up, z south.
[[nodiscard]] std::array<double, 3> y_up(const Point& p);

/// The members `asset`, `scene` and `scenes`: one scene, whose root is node 0.
void write_gltf_head(JsonWriter& json);

/// The member `materials`: one for each surface.
void write_gltf_materials(JsonWriter& json, const Surfaces& surfaces);

struct GltfBytes {
    std::size_t points = 0;
    std::size_t point_stride = 0;  ///< bytes from one point to the next
    std::size_t corners = 0;       ///< of triangles, after the points
};

/// The members `bufferViews` (0: points, 1: corners) and `buffers`.
void write_gltf_buffer(JsonWriter& json, const GltfBytes& bytes);

}  // namespace seamward
