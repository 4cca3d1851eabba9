// SPDX-License-Identifier: GPL-3.0-or-later
// The faces of solids that bound gaps, as the solids tell.
#pragma once

#include <cstddef>
#include <vector>

#include "base/solid.h"
#include "exchange/model.h"

namespace seamward::test {

/// For each of so many gaps the faces that bound it, as a part of their own.
[[nodiscard]] std::vector<ModelPart> faces_by_gap(const std::vector<Part>& parts, std::size_t gaps);

/// How many openings the faces of a gap bound. Faces that share a corner bound the same one, and so do those no farther from each
/// other than `reach`, in meters: the width of an opening. O(s^2) for s sheets of faces that hang together.
[[nodiscard]] std::size_t openings_between(const TriangleMesh& faces, double reach);

}  // namespace seamward::test
