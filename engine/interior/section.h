// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "interior/passages.h"

namespace seamward {

/// A flat cut through an opening, from solid to solid, in convex pieces.
struct Section {
    std::vector<ConvexPolygon> pieces;
    double area = 0;  ///< square meters
    double rim = 0;   ///< meters along the solids around it and within
};

/// What ways are not to lead through: a section's plane, as far as it is no more than `more` meters from the section.
class Gate {
public:
    Gate(const Section& section, double more);

    [[nodiscard]] bool is_crossed(const Point& a, const Point& b) const;
    [[nodiscard]] bool is_crossed(const Passages& passages, std::uint32_t passage) const;

private:
    double more_;
    Point low_{1e300, 1e300, 1e300}, high_{-1e300, -1e300, -1e300}, at_;
    Vector normal_;
    std::vector<TriangleTree::Triangle> triangles_;
};

[[nodiscard]] bool is_any_crossed(const std::vector<Gate>& gates, const Passages& passages, std::uint32_t passage);

/// The cut in the plane through `at` with that normal, as far as it hangs together in the air. Nothing when it runs into air
/// where a ball larger than `radius` (meters) by a half fits: then it does not shut the opening.
[[nodiscard]] std::optional<Section> section_at(const Passages& passages, const Point& at, const Vector& normal, double radius);

/// The radius in meters of the largest ball that fits into any of some flat polygons: never too small, exact to a thousandth
/// where it is more than `floor` and less than `most`. Else it is told as one of these. Stands of more than `floor` that turn up
/// are added to `stands`.
[[nodiscard]] double widest_in(const Clearance& clearance, const std::vector<ConvexPolygon>& pieces, double floor, double most,
                               std::vector<Stand>& stands);

}  // namespace seamward
