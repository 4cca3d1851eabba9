// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include "base/solid.h"
#include "base/vector.h"

namespace seamward {

/// Where a point or a segment comes nearest to a set of triangles.
struct Nearest {
    double distance = 0;         ///< meters; what was asked for at most when nothing is nearer
    std::uint32_t triangle = 0;  ///< position in the order that the tree was given; `none` when nothing is nearer
    Point on_triangle;
    Point on_query;  ///< the point asked about, or the place on the segment

    static constexpr std::uint32_t none = 0xffffffff;
    [[nodiscard]] bool found() const { return triangle != none; }
};

/// A tree of boxes over triangles, for exact distances. Immutable and safe to ask from several threads. Building O(n log n),
/// about 100 bytes a triangle; a question O(log n) where the triangles are thin on the ground.
class TriangleTree {
public:
    using Triangle = std::array<Point, 3>;

    explicit TriangleTree(std::vector<Triangle> triangles);

    /// The nearest place to a point within `at_most` meters. Of several equally near the first in the tree.
    [[nodiscard]] Nearest nearest(const Point& to, double at_most) const;
    /// The same for all points of the segment from `a` to `b`: the distance is 0 where it crosses a triangle. Any place nearer
    /// than `near_enough` will do then.
    [[nodiscard]] Nearest nearest(const Point& a, const Point& b, double at_most, double near_enough = 0) const;
    /// Calls visit(triangle, upward) for each triangle that the upright line above `from` crosses; `upward` is whether the
    /// triangle faces up. A point exactly under an edge meets one of the triangles that share it.
    template <typename Visit>
    void above(const Point& from, Visit&& visit) const;

    [[nodiscard]] std::size_t size() const { return triangles_.size(); }
    [[nodiscard]] const Triangle& operator[](std::uint32_t triangle) const { return triangles_[place_[triangle]]; }

private:
    struct Box {
        Point low, high;
    };
    struct Node {
        Box box;
        std::uint32_t first = 0;  ///< of a leaf: its first triangle; else the node of the second half
        std::uint32_t count = 0;  ///< of a leaf: how many; else 0
    };

    std::uint32_t build(std::uint32_t first, std::uint32_t last, std::vector<Point>& middles);
    [[nodiscard]] static int crosses(const Triangle& t, const Point& from);

    std::vector<Triangle> triangles_;   ///< in the order of the leaves
    std::vector<std::uint32_t> given_;  ///< for each of them its place in the order given
    std::vector<std::uint32_t> place_;  ///< the other way
    std::vector<Node> nodes_;
};

/// From a triangle to a point, in meters. A convex function of the point.
[[nodiscard]] double distance(const TriangleTree::Triangle& triangle, const Point& to);

template <typename Visit>
void TriangleTree::above(const Point& from, Visit&& visit) const {
    if (nodes_.empty()) return;
    std::array<std::uint32_t, 64> stack;
    std::size_t depth = 0;
    stack[depth++] = 0;
    while (depth > 0) {
        const std::uint32_t at = stack[--depth];
        const Node& node = nodes_[at];
        if (from.x < node.box.low.x || from.x > node.box.high.x || from.y < node.box.low.y || from.y > node.box.high.y ||
            from.z > node.box.high.z) {
            continue;
        }
        if (node.count == 0) {
            stack[depth++] = node.first;
            stack[depth++] = at + 1;
            continue;
        }
        for (std::uint32_t i = node.first; i < node.first + node.count; ++i) {
            if (const int side = crosses(triangles_[i], from)) visit(given_[i], side > 0);
        }
    }
}

}  // namespace seamward
