// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "graph/union_find.h"
#include "interior/spaces.h"

namespace seamward {

/// Which body each cell goes with. A joint between two bodies goes with the first, up to where the second widens. Where the least
/// surface of portals between the two consists of flat holes side by side, as in a screen of wires that cross in two layers, it
/// parts them there.
class CellShares {
public:
    CellShares(const Passages& passages, const Bodies& bodies);

    /// The body of a cell, or -1.
    [[nodiscard]] std::int32_t operator[](std::uint32_t cell) const { return body_[cell]; }
    [[nodiscard]] const std::vector<std::int32_t>& list() const { return body_; }

    /// Whether a portal lies between cells of two bodies.
    [[nodiscard]] bool is_border(std::uint32_t portal) const;
    /// Whether it lies in one of the flat holes of a screen.
    [[nodiscard]] bool is_hole(std::uint32_t portal) const { return is_hole_[portal] != 0; }
    /// Whether both its cells are wider than it is.
    [[nodiscard]] bool is_sharp(std::uint32_t portal) const;

private:
    void climb();
    void settle();
    void part();
    void part_zone(const std::vector<std::uint32_t>& zone, std::int32_t first, std::int32_t second);
    void cut_zone(const std::vector<std::uint32_t>& zone, std::int32_t first, std::int32_t second);
    bool are_holes(const std::vector<std::uint32_t>& zone);
    void join_along(const std::vector<std::uint32_t>& zone);
    void join_in_cell(std::uint32_t cell, const std::vector<std::uint32_t>& portals);

    const Passages& passages_;
    const CellComplex& complex_;
    std::vector<std::int32_t> body_;
    std::vector<double> room_;          ///< the largest clearance of a cell's stands
    std::vector<char> kept_;            ///< where a body has its seed
    std::vector<std::uint32_t> place_;  ///< of a cell in the zone that is looked at
    std::vector<char> is_hole_;         ///< for each portal
    UnionFind along_;                   ///< portals
};

}  // namespace seamward
