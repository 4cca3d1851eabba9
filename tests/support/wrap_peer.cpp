// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/wrap_peer.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Side_of_triangle_mesh.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/alpha_wrap_3.h>

#include <array>
#include <vector>

namespace seamward::test {

namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Surface = CGAL::Surface_mesh<Kernel::Point_3>;

constexpr double offset_share = 1.0 / 30;  // of alpha

}  // namespace

WrapAnswer ask_wrap(std::span<const ModelPart> parts, const Point& at, double diameter) {
    std::vector<Kernel::Point_3> points;
    std::vector<std::array<std::size_t, 3>> faces;
    for (const ModelPart& part : parts) {
        const std::size_t first = points.size();
        for (const Point& p : part.mesh.points) points.emplace_back(p.x, p.y, p.z);
        for (const auto& [a, b, c] : part.mesh.triangles) faces.push_back({first + a, first + b, first + c});
    }
    Surface wrap;
    CGAL::alpha_wrap_3(points, faces, diameter / 2, diameter / 2 * offset_share, wrap);
    const CGAL::Side_of_triangle_mesh<Surface, Kernel> side(wrap);
    return {side({at.x, at.y, at.z}) == CGAL::ON_UNBOUNDED_SIDE, wrap.number_of_faces()};
}

}  // namespace seamward::test
