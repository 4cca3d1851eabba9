// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "geometry/box_tree.h"
#include "geometry/hidden_lines.h"

namespace seamward {

/// A point as a view has it: x and y on the paper, z toward the eye; meters.
using ViewPoint = Point;

[[nodiscard]] inline ViewPoint in_view(const Frame& view, const Point& p) {
    const Vector off = p - view.origin;
    return {dot(off, view.u), dot(off, view.v), dot(off, view.n)};
}

/// A triangle that hides what is behind it.
struct ViewFace {
    /// a * x + b * y + c: of three sides the distance from the side, positive within; meters.
    std::array<std::array<double, 3>, 3> sides;
    std::array<double, 3> height;  ///< z over the paper, likewise
    std::uint32_t look = 0;
    double least_height = 0, most_height = 0;

    [[nodiscard]] double height_at(Point2 p) const { return height[0] * p.x + height[1] * p.y + height[2]; }
    [[nodiscard]] bool covers(Point2 p, double tolerance) const;
};

/// What hides, in a tree of boxes.
class ViewFaces {
public:
    /// Triangles seen from the side are left out: they hide nothing.
    void add(const ViewPoint& a, const ViewPoint& b, const ViewPoint& c, std::uint32_t look);
    /// After the last one.
    void finish();

    struct Share {
        double from = 0, to = 0;
    };
    /// The shares of a line from `a` (0) to `b` (1) that nothing hides.
    [[nodiscard]] std::vector<Share> seen_shares(const ViewPoint& a, const ViewPoint& b) const;
    /// What is seen at a point, or null.
    [[nodiscard]] const ViewFace* seen_at(Point2 p) const;

private:
    std::vector<ViewFace> faces_;
    std::vector<AxisBox> boxes_;
    BoxTree tree_;
};

}  // namespace seamward
