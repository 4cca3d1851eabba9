// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "base/solid.h"

namespace seamward {

/// Triangles of a part that bound the same gap, or none.
struct FaceGroup {
    GapIndex gap;  ///< invalid: the faces bound no gap
    std::vector<std::size_t> triangles;
};

/// All triangles of a part: first those that bound no gap, then those of each gap in the order of the survey. Groups without
/// triangles are left out. `part.bounds` may be shorter than the list of triangles; what it leaves out bounds no gap.
[[nodiscard]] std::vector<FaceGroup> face_groups(const Part& part);

}  // namespace seamward
