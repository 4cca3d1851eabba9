// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "geometry/triangle_tree.h"

namespace seamward {

/// The few triangles around a place, for many questions about points close to it. The answers are those of the tree (of several
/// triangles equally near, any may be named), which is asked where a point lies too far off or the triangles are too many.
class NearTriangles {
public:
    /// Gathers what is nearer to `middle` than `reach` meters, unless that is more than `most` triangles.
    NearTriangles(const TriangleTree& tree, const Point& middle, double reach, std::size_t most);
    /// The same out of those gathered before, where they reach so far.
    NearTriangles(const NearTriangles& wider, const Point& middle, double reach, std::size_t most);

    [[nodiscard]] Nearest nearest(const Point& to, double at_most) const;
    [[nodiscard]] bool complete() const { return complete_; }  ///< whether they were not too many
    [[nodiscard]] std::size_t size() const { return list_.size(); }

private:
    struct Entry {
        double distance;  ///< from the middle
        std::uint32_t triangle;
        TriangleTree::Triangle corners;
    };

    bool take(std::uint32_t triangle, const TriangleTree::Triangle& corners, std::size_t most);
    void sort();

    const TriangleTree& tree_;
    Point middle_;
    double reach_;
    bool complete_ = true;
    std::vector<Entry> list_;  ///< the nearest first
};

}  // namespace seamward
