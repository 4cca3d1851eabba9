// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include "base/run_context.h"
#include "geometry/convex_polygon.h"
#include "geometry/flat_facets.h"

namespace seamward {

/// A convex piece of space that no facet passes through: all air or all solid.
struct Cell {
    Point middle;       ///< a point within it, away from its faces where it has room
    double volume = 0;  ///< cubic meters
};

/// A convex opening between two cells, in a plane that bounds both: no facet covers it.
struct Portal {
    std::uint32_t front = 0, back = 0;  ///< cells on the two sides; the plane's normal points into `front`
    std::uint32_t first = 0;            ///< of its corners, in CellComplex::corners
    std::uint32_t count = 0;
};

/// Space within a box, cut along the planes of facets until none passes through a cell: a binary space partition (Fuchs, Kedem
/// and Naylor 1980) with its cells joined by portals. It knows of no grid, so a crack of 0.3 mm along a house of 20 m is a few
/// cells, and it takes facets as they come: open, doubled, running through each other.
struct CellComplex {
    std::vector<Cell> cells;
    std::vector<Portal> portals;
    std::vector<Point> corners;

    /// A plane that cuts a region in two; `side` is what lies before and behind it, another cut or a cell.
    struct Cut {
        Plane3 plane;
        std::array<std::uint32_t, 2> side{};
    };
    static constexpr std::uint32_t is_cell = 0x80000000;  ///< of a side that is a cell: this and its position
    std::vector<Cut> cuts;                                ///< the first one cuts the whole box
    std::vector<std::uint32_t> cut_above;                 ///< for each cut the one that has it as a side, 0 for the first
    std::vector<std::uint32_t> cut_of_cell;               ///< the same for each cell

    /// The cell that a point of the box lies in; of a point on a border, one of those that meet there. O(depth).
    [[nodiscard]] std::uint32_t cell_at(const Point& at) const { return cell_at(at, whole()); }
    /// The same for a point that lies within a side of a cut, from there on.
    [[nodiscard]] std::uint32_t cell_at(const Point& at, std::uint32_t side) const;
    /// The smallest side of a cut that holds all that is within `reach` meters of a segment. O(depth).
    [[nodiscard]] std::uint32_t side_around(const Point& a, const Point& b, double reach) const;
    [[nodiscard]] std::uint32_t whole() const { return cuts.empty() ? is_cell : 0; }  ///< the box, as a side

    /// What of a flat convex polygon lies in a cell; of what lies on a border between cells either may have it. O(depth).
    [[nodiscard]] ConvexPolygon within(std::uint32_t cell, ConvexPolygon polygon) const;

    [[nodiscard]] std::span<const Point> corners_of(const Portal& portal) const {
        return {corners.data() + portal.first, portal.count};
    }
};

/// Facets count as lying in a plane within `tolerance` meters of it; cracks narrower than that may be lost, openings wider than
/// that never are. The box must hold all facets. About O(n log n) cells and time for the facets of buildings; O(n^2) at worst.
[[nodiscard]] CellComplex cell_complex(const FlatFacets& facets, const Point& low, const Point& high, double tolerance,
                                       const RunContext& run);

}  // namespace seamward
