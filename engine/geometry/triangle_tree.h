// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
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

/// A tree of boxes over triangles, for exact distances. Four boxes are looked at together, in single precision and never taken
/// for smaller than they are; distances to triangles are in double precision. Immutable and safe to ask from several threads.
/// Building O(n log n), about 140 bytes a triangle; a question O(log n) where the triangles are thin on the ground.
class TriangleTree {
public:
    using Triangle = std::array<Point, 3>;

    explicit TriangleTree(std::vector<Triangle> triangles);

    /// The nearest place to a point within `at_most` meters. Of several equally near the first in the tree.
    [[nodiscard]] Nearest nearest(const Point& to, double at_most) const;
    /// The same for all points of the segment from `a` to `b`: the distance is 0 where it crosses a triangle. Any place nearer
    /// than `near_enough` will do then.
    [[nodiscard]] Nearest nearest(const Point& a, const Point& b, double at_most, double near_enough = 0) const;
    /// Whether any point of the segment is nearer to a triangle than `within` meters.
    [[nodiscard]] bool is_near(const Point& a, const Point& b, double within) const {
        return nearest(a, b, within, within).found();
    }
    /// Calls visit(triangle, upward) for each triangle that the upright line above `from` crosses; `upward` is whether the
    /// triangle faces up. A point exactly under an edge meets one of the triangles that share it.
    template <typename Visit>
    void above(const Point& from, Visit&& visit) const;

    /// Calls visit(triangle) for each triangle whose box is nearer to a point than `at_most`, and maybe for some whose box is
    /// hardly farther, until it answers false.
    template <typename Visit>
    void around(const Point& at, double at_most, Visit&& visit) const;

    [[nodiscard]] std::size_t size() const { return triangles_.size(); }
    [[nodiscard]] const Triangle& operator[](std::uint32_t triangle) const { return triangles_[place_[triangle]]; }

private:
    struct Box {
        Point low, high;
    };
    static constexpr std::size_t wide = 4;
    static constexpr std::uint32_t leaf = 0x80000000;  ///< marks a child that is a triangle, by its place in the tree
    static constexpr std::uint32_t nothing = 0xffffffff;
    using Four [[gnu::vector_size(4 * sizeof(float))]] = float;  ///< in one register on any machine of ours
    /// Boxes of up to four children, from the middle of the tree, rounded outward. One that is not there is infinitely far off.
    struct alignas(16) Node {
        std::array<Four, 3> low, high;  ///< by axis
        std::array<std::uint32_t, wide> child;
    };
    /// A point as the boxes see it.
    struct Seen {
        std::array<float, 3> at;
        float slack = 0;  ///< meters; what rounding may have moved it from a box
    };
    /// Longest walk: three waiting at each level, and no more levels than divide() makes.
    static constexpr std::size_t most_waiting = 192;

    std::uint32_t build(std::uint32_t first, std::uint32_t last, int depth, const std::vector<Point>& middles);
    std::uint32_t divide(std::uint32_t first, std::uint32_t last, const Box& spread, const std::vector<Point>& middles);
    [[nodiscard]] Box box_of(std::uint32_t first, std::uint32_t last) const;
    [[nodiscard]] Seen seen(const Point& p) const;
    /// At most the squares of the distances from a point to the four boxes.
    [[nodiscard]] static Four squares(const Node& node, const Seen& p);
    [[nodiscard]] static int crosses(const Triangle& t, const Point& from);

    std::vector<Triangle> triangles_;   ///< in the order of the leaves
    std::vector<std::uint32_t> given_;  ///< for each of them its place in the order given
    std::vector<std::uint32_t> place_;  ///< the other way
    std::vector<Node> nodes_;
    Point middle_;  ///< the median of the triangles' middles: one far off does not matter
};

/// The place of a triangle nearest to a point.
[[nodiscard]] Point nearest_of(const TriangleTree::Triangle& triangle, const Point& to);

/// From a triangle to a point, in meters. A convex function of the point.
[[nodiscard]] double distance(const TriangleTree::Triangle& triangle, const Point& to);

inline TriangleTree::Seen TriangleTree::seen(const Point& p) const {
    const Vector off = p - middle_;
    // Boxes are rounded outward, so that only the point is off, by 6e-8 of it; what is compared with it is as large there.
    const double largest = std::max({std::abs(off.x), std::abs(off.y), std::abs(off.z)});
    return {{static_cast<float>(off.x), static_cast<float>(off.y), static_cast<float>(off.z)},
            static_cast<float>(largest * 3e-7)};
}

inline TriangleTree::Four TriangleTree::squares(const Node& node, const Seen& p) {
    Four sum{};
    for (std::size_t axis = 0; axis < 3; ++axis) {
        const Four below = node.low[axis] - p.at[axis], beyond = p.at[axis] - node.high[axis];
        const Four off = (below > beyond ? below : beyond) - p.slack;
        const Four outside = off > 0 ? off : Four{};
        sum += outside * outside;
    }
    return sum * (1 - 1e-6F);
}

template <typename Visit>
void TriangleTree::above(const Point& from, Visit&& visit) const {
    if (nodes_.empty()) return;
    const Seen p = seen(from);
    std::array<std::uint32_t, most_waiting> stack;
    std::size_t depth = 0;
    stack[depth++] = 0;
    while (depth > 0) {
        const Node& node = nodes_[stack[--depth]];
        for (std::size_t k = wide; k-- > 0;) {
            if (node.child[k] == nothing || p.at[0] < node.low[0][k] - p.slack || p.at[0] > node.high[0][k] + p.slack ||
                p.at[1] < node.low[1][k] - p.slack || p.at[1] > node.high[1][k] + p.slack || p.at[2] > node.high[2][k] + p.slack)
                continue;
            if ((node.child[k] & leaf) == 0) {
                stack[depth++] = node.child[k];
                continue;
            }
            const std::uint32_t i = node.child[k] & ~leaf;
            if (const int side = crosses(triangles_[i], from)) visit(given_[i], side > 0);
        }
    }
}

template <typename Visit>
void TriangleTree::around(const Point& at, double at_most, Visit&& visit) const {
    if (nodes_.empty()) return;
    const Seen p = seen(at);
    const double limit = at_most * at_most;
    std::array<std::uint32_t, most_waiting> stack;
    std::size_t depth = 0;
    stack[depth++] = 0;
    while (depth > 0) {
        const Node& node = nodes_[stack[--depth]];
        const Four off = squares(node, p);
        for (std::size_t k = 0; k < wide; ++k) {
            if (node.child[k] == nothing || off[k] >= limit) continue;
            if ((node.child[k] & leaf) == 0) {
                stack[depth++] = node.child[k];
            } else if (!visit(given_[node.child[k] & ~leaf])) {
                return;
            }
        }
    }
}

}  // namespace seamward
