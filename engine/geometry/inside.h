// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <vector>

#include "base/solid.h"
#include "base/vector.h"
#include "geometry/box_tree.h"

namespace seamward {

/// Tells whether points are inside of a mesh that need not be closed: the generalized winding number (Jacobson, Kavan and
/// Sorkine-Hornung 2013), far groups of triangles taken together (Barill, Dickson, Schmidt, Levin and Jacobson 2018).
class Inside {
public:
    /// Keeps a copy of the triangles. O(n log n).
    explicit Inside(const TriangleMesh& mesh);

    /// How often the mesh winds around a point: 1 inside of a closed mesh that faces outward, 0 outside of it, -1 inside of one
    /// that faces inward; between these where the mesh has holes, and more where it overlaps itself. Right to 0.01; exact but
    /// for rounding with no more than 64 triangles. On the surface, any value between those of its two sides.
    [[nodiscard]] double winding(const Point& at) const;

    [[nodiscard]] bool contains(const Point& at) const { return winding(at) > 0.5; }

private:
    /// A group of triangles seen from afar: moments of area times normal about the middle of its area, to the second order. Only
    /// their parts that do not depend on the order of axes count.
    struct Group {
        Point middle;
        double reach = 0;                 ///< meters from the middle beyond which it may be seen as a whole
        Vector facing;                    ///< area times normal, summed
        std::array<double, 6> first{};    ///< xx, yy, zz, xy, yz, zx
        std::array<double, 10> second{};  ///< xxx, yyy, zzz, xxy, xxz, yyx, yyz, zzx, zzy, xyz
        Vector second_trace;
    };

    [[nodiscard]] Group group_of(std::size_t begin, std::size_t end) const;

    static void add_moments(const std::array<Point, 3>& triangle, Group& group);
    [[nodiscard]] static double solid_angle(const Group& group, Vector to_middle, double square_of_it);

    std::vector<std::array<Point, 3>> triangles_;  ///< in the order of the tree
    BoxTree tree_;
    std::vector<Group> groups_;  ///< one for each node of the tree
};

}  // namespace seamward
