// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

#include "base/solid.h"

namespace seamward {

/// What was wrong with the triangles of one part of a file, and what they still are after the mending.
struct PartFaults {
    /// Every edge has as many triangles on one way along it as on the other. Edges that touch along their length count as one:
    /// a corner in the middle of a neighbor's edge leaves nothing open.
    bool closed = false;
    double open_edges = 0;          ///< meters of edge with a triangle on one side only
    std::size_t degenerate = 0;     ///< triangles without area, left out
    std::size_t doubled = 0;        ///< triangles on the corners of another one, left out
    std::size_t flipped = 0;        ///< triangles turned to agree with the rest of their shell
    std::size_t crowded_edges = 0;  ///< edges of more than two triangles
    std::size_t shells = 0;         ///< pieces that hang together by edges of two triangles
    bool inside_out = false;        ///< a closed shell faced the wrong way and was turned
};

struct CleanPart {
    TriangleMesh mesh;  ///< only points that triangles use; points and triangles in the order of the input
    PartFaults faults;
};

/// Mends a part as files have them. `tolerance` is in meters.
///
/// Points within the tolerance of an earlier one become that one; lengths of more than twice the tolerance never vanish, and no
/// point moves by more than the tolerance. Triangles without three different corners, or lower than a tenth of the tolerance,
/// are left out; corners that they had on an edge of a neighbor stay there. Of triangles on the same corners, either way round,
/// one stays; none does where they part two closed bodies that meet there. Triangles of a shell are turned to agree, an open
/// shell the way most of its area faced, a closed one outward, or inward where it is the hollow of another (an odd number of
/// shells around all of it). What is closed only through crowded edges is turned outward piece by piece.
///
/// Coordinates that are not finite or beyond 1e9 m take their triangles with them. O(n log n), and no more memory than a few
/// hundred bytes for each triangle. The same input gives the same bytes.
[[nodiscard]] CleanPart clean_part(const TriangleMesh& part, double tolerance = 1e-5);

}  // namespace seamward
