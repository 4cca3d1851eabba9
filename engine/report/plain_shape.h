// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "base/solid.h"

namespace seamward {

/// A thin plate with many holes, such as a screen or a perforated flange, as a plate without any: the convex outline of its
/// points, as thick as they are. Nothing for all other meshes. O(points log points).
[[nodiscard]] std::optional<TriangleMesh> plain_plate(const TriangleMesh& mesh);

}  // namespace seamward
