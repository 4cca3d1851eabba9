// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "base/run_context.h"
#include "geometry/cell_complex.h"
#include "geometry/clean_part.h"
#include "geometry/triangle_tree.h"

namespace seamward {

/// Space around and within the solids of a model, cut into cells that are air or solid.
struct Air {
    TriangleTree tree;                   ///< the triangles of all parts
    std::vector<std::uint32_t> part_of;  ///< for each of them
    CellComplex complex;
    std::vector<char> solid;                           ///< for each cell: 1 within a part
    std::vector<std::uint32_t> first_portal, portals;  ///< portals by cell
    FlatFacets facets;                                 ///< of all parts
    std::vector<char> closed;                          ///< for each part: 1 when it is

    [[nodiscard]] std::span<const std::uint32_t> portals_of(std::uint32_t cell) const {
        return {portals.data() + first_portal[cell], first_portal[cell + 1] - first_portal[cell]};
    }

    [[nodiscard]] bool open(const Portal& portal) const { return !solid[portal.front] && !solid[portal.back]; }
};

/// The closed parts that a point lies within, in their order. O(log n) and what is above it.
[[nodiscard]] std::vector<std::uint32_t> parts_around(const Air& air, const Point& at);

/// What of a part counts as solid: a closed one has an inside; an open one only where it wraps around something thin, as a wall
/// whose reveals are missing does. The shell of a whole house is no solid.
/// `margin`: meters of air kept around all parts. `left_out`: for each part whether
/// it is a double and not to be looked at.
[[nodiscard]] Air cut_air(std::span<const CleanPart> parts, const std::vector<char>& left_out, double margin,
                          const RunContext& run);

}  // namespace seamward
