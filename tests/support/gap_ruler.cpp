// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/gap_ruler.h"

#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/AABB_triangle_primitive.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>

#include <algorithm>
#include <array>
#include <boost/variant/apply_visitor.hpp>
#include <cmath>
#include <type_traits>
#include <vector>

namespace seamward::test {

namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Triangles = std::vector<Kernel::Triangle_3>;
using Primitive = CGAL::AABB_triangle_primitive<Kernel, Triangles::const_iterator>;
using Tree = CGAL::AABB_tree<CGAL::AABB_traits<Kernel, Primitive>>;

/// Rays begin this far behind their triangle, so that one that touches it is seen whatever the rounding. Meters.
constexpr double step_back = 1e-8;

/// Shares of the three corners in each of the points that a triangle is looked from.
std::vector<std::array<double, 3>> shares() {
    constexpr double edge = 0.001;
    std::vector<std::array<double, 3>> list{
        {1 - 2 * edge, edge, edge}, {edge, 1 - 2 * edge, edge}, {edge, edge, 1 - 2 * edge}, {1. / 3, 1. / 3, 1. / 3}};
    constexpr int rows = 5;
    for (int i = 0; i < rows; ++i) {
        for (int j = 0; i + j < rows; ++j)
            list.push_back({(i + 1. / 3) / rows, (j + 1. / 3) / rows, (rows - 1 - i - j + 1. / 3) / rows});
    }
    return list;
}

}  // namespace

struct GapRuler::Impl {
    Triangles triangles;
    std::vector<GapIndex> bounds;
    Tree tree;

    explicit Impl(std::span<const Part> parts) {
        for (const Part& part : parts) {
            const auto at = [&](std::uint32_t corner) {
                const Point& point = part.mesh.points.at(corner);
                return Kernel::Point_3(point.x, point.y, point.z);
            };
            for (std::size_t i = 0; i < part.mesh.triangles.size(); ++i) {
                const auto [a, b, c] = part.mesh.triangles[i];
                const Kernel::Triangle_3 triangle(at(a), at(b), at(c));
                if (triangle.is_degenerate()) continue;
                triangles.push_back(triangle);
                bounds.push_back(i < part.bounds.size() ? part.bounds[i] : GapIndex{});
            }
        }
        tree.insert(triangles.cbegin(), triangles.cend());
        tree.build();
    }

    /// Distance from the triangle to what is first seen from a point of it along its normal; infinity when nothing is.
    double look(Triangles::const_iterator from, const std::array<double, 3>& share, const Kernel::Vector_3& normal) const {
        const Kernel::Triangle_3& t = *from;
        const Kernel::Point_3 eye = CGAL::barycenter(t[0], share[0], t[1], share[1], t[2], share[2]) - step_back * normal;
        const auto seen =
            tree.first_intersection(Kernel::Ray_3(eye, normal), [&](Triangles::const_iterator other) { return other == from; });
        if (!seen) return std::numeric_limits<double>::infinity();
        const auto along = [&](const Kernel::Point_3& point) { return (point - eye) * normal; };
        const double distance = boost::apply_visitor(
            [&](const auto& where) {
                if constexpr (std::is_same_v<std::decay_t<decltype(where)>, Kernel::Point_3>)
                    return along(where);
                else
                    return std::min(along(where.source()), along(where.target()));
            },
            seen->first);
        return std::max(0.0, distance - step_back);
    }
};

GapRuler::GapRuler(std::span<const Part> parts) : impl_(std::make_unique<Impl>(parts)) {}

GapRuler::~GapRuler() = default;

MeasuredWidth GapRuler::width_of(GapIndex gap) const {
    static const std::vector<std::array<double, 3>> points = shares();
    MeasuredWidth measured;
    if (!gap.valid()) return measured;
    for (std::size_t i = 0; i < impl_->triangles.size(); ++i) {
        if (impl_->bounds[i] != gap) continue;
        const auto triangle = impl_->triangles.cbegin() + static_cast<std::ptrdiff_t>(i);
        Kernel::Vector_3 normal = CGAL::cross_product((*triangle)[1] - (*triangle)[0], (*triangle)[2] - (*triangle)[0]);
        normal = normal / std::sqrt(normal.squared_length());
        for (const std::array<double, 3>& share : points) {
            ++measured.samples;
            const double distance = impl_->look(triangle, share, normal);
            if (distance > reach) continue;
            ++measured.hits;
            measured.smallest = std::min(measured.smallest, distance);
        }
    }
    return measured;
}

MeasuredWidth clear_width_between(std::span<const Part> parts, GapIndex gap) { return GapRuler(parts).width_of(gap); }

}  // namespace seamward::test
