// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "geometry/flat_facets.h"

namespace seamward {

/// Finds planes that pass by all of some points: a tree over the normals and offsets of planes that may come, of which those
/// count that have been let in.
class PlaneIndex {
public:
    /// `about`: a point amid what is asked, so that offsets are small.
    PlaneIndex(std::span<const Plane3> planes, const Point& about);

    /// Lets a plane in under a number.
    void let_in(std::uint32_t plane, std::uint32_t number);

    /// The least number of the planes in that pass within `tolerance` (meters) of all points of a face with a plane of its own,
    /// whichever way they face. `width`: least width of the face in meters; of very narrow ones planes within 60 degrees count.
    [[nodiscard]] std::optional<std::uint32_t> find(std::span<const Point> points, const Plane3& own, double width,
                                                    double tolerance) const;

    static constexpr std::uint32_t none = 0xffffffff;

private:
    using Key = std::array<double, 4>;  ///< normal and offset

    struct Node {
        Key low{}, high{};
        std::uint32_t first = 0, last = 0, beyond = 0;  ///< as in a BoxTree
        std::uint32_t least = none;                     ///< number of the planes below that are in
        bool leaf = false;
    };

    void add_node(std::uint32_t first, std::uint32_t last);

    Point about_;
    double reach_ = 1;  ///< meters by which a turn of the normal counts as much as an offset
    std::vector<Key> keys_;
    std::vector<std::uint32_t> order_, place_, number_;  ///< planes in the tree's order, where each is, under which number
    std::vector<Node> nodes_;
};

}  // namespace seamward
