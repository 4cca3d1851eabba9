// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "base/run_context.h"
#include "geometry/convex_polygon.h"
#include "geometry/flat_facets.h"

namespace seamward {

/// A piece of where two parts have no gap between them: their surfaces lie on each other, or run into each other.
struct Contact {
    std::array<std::uint32_t, 2> parts{};  ///< the first has the smaller number
    /// Three and more: a flat piece that both surfaces share. Two: the line where one surface enters the other.
    ConvexPolygon corners;
    /// Of a flat piece the normal of its plane, corners run counterclockwise around it. Of a line the direction between both
    /// surfaces, away from both. Of length 1.
    Vector normal;
    double reach = 1;  ///< of a line: how far a step along `normal` gets away from either surface

    [[nodiscard]] bool is_flush() const { return corners.size() > 2; }
};

/// All of them, pair of parts by pair of parts. Surfaces within `tolerance` (meters) of each other lie on each other. Parts that
/// touch along an edge only, or in a point, do not count. O(n log n + k) for n facets of which k pairs of boxes meet.
[[nodiscard]] std::vector<Contact> find_contacts(const FlatFacets& facets, double tolerance, const RunContext& run);

}  // namespace seamward
