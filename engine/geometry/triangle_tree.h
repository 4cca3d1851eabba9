// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
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

    /// Calls visit(triangle) for each triangle whose box is nearer to a point than `at_most`, until it answers false.
    template <typename Visit>
    void around(const Point& at, double at_most, Visit&& visit) const;

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

    std::uint32_t build(std::uint32_t first, std::uint32_t last, int depth, const std::vector<Point>& middles);
    std::uint32_t divide(std::uint32_t first, std::uint32_t last, const Box& spread, const std::vector<Point>& middles);
    [[nodiscard]] static int crosses(const Triangle& t, const Point& from);

    std::vector<Triangle> triangles_;   ///< in the order of the leaves
    std::vector<std::uint32_t> given_;  ///< for each of them its place in the order given
    std::vector<std::uint32_t> place_;  ///< the other way
    std::vector<Node> nodes_;
};

/// The place of a triangle nearest to a point.
[[nodiscard]] Point nearest_of(const TriangleTree::Triangle& triangle, const Point& to);

/// The square of the distance from a point to the box that reaches from `low` to `high`.
[[nodiscard]] inline double square_to_box(const Point& p, const Point& low, const Point& high) {
    const double dx = std::max(std::max(low.x - p.x, p.x - high.x), 0.0);
    const double dy = std::max(std::max(low.y - p.y, p.y - high.y), 0.0);
    const double dz = std::max(std::max(low.z - p.z, p.z - high.z), 0.0);
    return dx * dx + dy * dy + dz * dz;
}

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

template <typename Visit>
void TriangleTree::around(const Point& at, double at_most, Visit&& visit) const {
    if (nodes_.empty()) return;
    const double limit = at_most * at_most;
    std::array<std::uint32_t, 64> stack;
    std::size_t depth = 0;
    stack[depth++] = 0;
    while (depth > 0) {
        const std::uint32_t i = stack[--depth];
        const Node& node = nodes_[i];
        if (square_to_box(at, node.box.low, node.box.high) >= limit) continue;
        if (node.count == 0) {
            stack[depth++] = node.first;
            stack[depth++] = i + 1;
            continue;
        }
        for (std::uint32_t k = node.first; k < node.first + node.count; ++k) {
            if (!visit(given_[k])) return;
        }
    }
}

}  // namespace seamward
