// SPDX-License-Identifier: GPL-3.0-or-later
// A second opinion on gaps by CGAL, in a library of its own: link seamward_solid_support.
#pragma once

#include <cstddef>
#include <limits>
#include <memory>
#include <span>

#include "base/solid.h"

namespace seamward::test {

/// How far apart the faces beside a gap are.
struct MeasuredWidth {
    double smallest = std::numeric_limits<double>::infinity();  ///< meters; infinity when nothing was hit
    std::size_t samples = 0;                                    ///< points looked from
    std::size_t hits = 0;                                       ///< of them, those that saw something within reach
};

/// Measures gaps from the triangles of all parts alone, with no knowledge of how they were made: from points of each triangle
/// that bounds a gap, a ray along its outward normal to the next triangle of any part.
class GapRuler {
public:
    static constexpr double reach = 0.6;  ///< meters; what is farther is not the other side of a gap

    explicit GapRuler(std::span<const Part> parts);
    ~GapRuler();
    GapRuler(const GapRuler&) = delete;
    GapRuler& operator=(const GapRuler&) = delete;

    /// The points of a triangle are its middle, others spread evenly, and one a thousandth from each corner: within a gap
    /// between two planes the smallest distance is exact but for that thousandth. 0 where faces touch. Flat triangles are
    /// neither looked from nor seen.
    [[nodiscard]] MeasuredWidth width_of(GapIndex gap) const;

private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

/// The same for a single gap.
[[nodiscard]] MeasuredWidth clear_width_between(std::span<const Part> parts, GapIndex gap);

}  // namespace seamward::test
