// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

#include "exchange/model.h"

namespace seamward {

/// Turns triangles so that those that meet at an edge of two face the same side. A patch of them that agrees already stays as
/// it is, also one that cannot agree. Else a closed patch faces outward, an open one where most of its area faced. How many
/// triangles were turned. For readers that lose the direction of faces; n log n in the triangles.
std::size_t turn_alike(TriangleMesh& mesh);

}  // namespace seamward
