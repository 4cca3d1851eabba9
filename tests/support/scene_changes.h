// SPDX-License-Identifier: GPL-3.0-or-later
// What files do to solids and what must not change the answer. Gaps and spaces stay the same unless said.
#pragma once

#include "base/vector.h"
#include "tests/support/scenes.h"

namespace seamward::test {

/// A frame turned about an axis through the world's origin, then moved there.
[[nodiscard]] Frame turned_frame(Vector axis, double angle, const Point& origin);

/// All points given in a frame, then scaled about the world's origin: 1000 for a file in millimeters. Widths, lengths and the
/// limits of what counts are scaled too. Windows are dropped.
[[nodiscard]] Scene transformed(const Scene& scene, const Frame& frame, double scale = 1);

/// Every triangle in 4^k equal ones.
[[nodiscard]] Scene refined(const Scene& scene, int k);
/// Triangles split at random points inside and edges at random points, as often as there are triangles times `share`; closed
/// meshes stay closed.
[[nodiscard]] Scene retessellated(const Scene& scene, double share, unsigned seed);
/// Every point moved by up to `most` in x, y and z.
[[nodiscard]] Scene with_noise(const Scene& scene, double most, unsigned seed);

/// Every second part inside out.
[[nodiscard]] Scene with_flipped_parts(const Scene& scene);
/// One triangle in three turned over: meshes no longer agree with themselves.
[[nodiscard]] Scene with_flipped_triangles(const Scene& scene, unsigned seed);
/// Every third part a second time under another id.
[[nodiscard]] Scene with_twin_parts(const Scene& scene);
/// One triangle in three a second time, some the other way round.
[[nodiscard]] Scene with_doubled_triangles(const Scene& scene, unsigned seed);
/// Triangles in another order, each with points of its own.
[[nodiscard]] Scene as_soup(const Scene& scene, unsigned seed);
/// Parts in another order.
[[nodiscard]] Scene with_shuffled_parts(const Scene& scene, unsigned seed);
/// All in one part, as of a file without objects.
[[nodiscard]] Scene as_one_part(const Scene& scene);
/// Each part in six open ones, by the axis that its triangles look along most. Solids have no inside any more: whatever holds
/// air apart still does.
[[nodiscard]] Scene as_open_faces(const Scene& scene);

}  // namespace seamward::test
