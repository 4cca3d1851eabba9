// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/inside.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Side_of_triangle_mesh.h>
#include <CGAL/Surface_mesh.h>
#include <gtest/gtest.h>

#include <random>

#include "tests/support/plain_solids.h"

namespace seamward::test {
namespace {

Point random_point(std::mt19937& random, double reach) {
    std::uniform_real_distribution<double> along(-reach, reach);
    const double x = along(random), y = along(random), z = along(random);
    return {x, y, z};
}

/// Winding numbers of a placed box and of a cut-up one against the box itself.
TEST(Inside, AgreesWithTheBox) {
    std::mt19937 random(1);
    for (const int times : {0, 3}) {
        const TriangleMesh mesh = cut_in_four(box_mesh({-1, -0.5, -0.02}, {1, 0.5, 0.02}), times);
        const Placement placement(random, 20);
        const Inside inside(placement.of(mesh)), inward(placement.of(turned_over(mesh)));
        for (int k = 0; k < 2000; ++k) {
            Point p = random_point(random, 1.2);
            if (k % 2 == 0) p.z *= 0.03;
            const double off = std::max({std::abs(p.x) - 1, std::abs(p.y) - 0.5, std::abs(p.z) - 0.02});
            if (std::abs(off) < 1e-6) continue;
            const double expected = off < 0 ? 1 : 0;
            EXPECT_NEAR(inside.winding(placement.of(p)), expected, times == 0 ? 1e-9 : 0.01);
            EXPECT_NEAR(inward.winding(placement.of(p)), -expected, times == 0 ? 1e-9 : 0.01);
            EXPECT_EQ(inside.contains(placement.of(p)), off < 0);
        }
    }
}

TEST(Inside, AgreesWithAnotherJudgeOnARing) {
    using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
    using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
    std::mt19937 random(2);
    const TriangleMesh ring = ring_mesh(100, 50, 0.5, 0.1);
    Mesh peer;
    for (const Point& p : ring.points) peer.add_vertex({p.x, p.y, p.z});
    for (const auto& [a, b, c] : ring.triangles)
        peer.add_face(Mesh::Vertex_index(a), Mesh::Vertex_index(b), Mesh::Vertex_index(c));
    const CGAL::Side_of_triangle_mesh<Mesh, Kernel> side(peer);
    const Inside inside(ring);
    int within = 0;
    for (int k = 0; k < 4000; ++k) {
        Point p = random_point(random, 0.65);
        p.z *= 0.2;
        const double expected = side({p.x, p.y, p.z}) == CGAL::ON_BOUNDED_SIDE ? 1 : 0;
        within += expected > 0 ? 1 : 0;
        ASSERT_NEAR(inside.winding(p), expected, 0.01) << p.x << ' ' << p.y << ' ' << p.z;
    }
    EXPECT_GT(within, 500);
}

/// Right up to the surface, where the nearest triangles are everything.
TEST(Inside, IsRightNextToTheSurface) {
    const TriangleMesh ring = ring_mesh(200, 60, 0.5, 0.1);
    const Inside inside(ring);
    for (std::size_t t = 0; t < ring.triangles.size(); t += 7) {
        const auto [a, b, c] = ring.triangles[t];
        const Vector u = ring.points[b] - ring.points[a], v = ring.points[c] - ring.points[a], n = cross(u, v);
        const Vector step = n * (1e-6 / length(n));
        const Point middle = ring.points[a] + (u + v) * (1.0 / 3);
        EXPECT_NEAR(inside.winding(middle + step * -1), 1, 0.01);
        EXPECT_NEAR(inside.winding(middle + step), 0, 0.01);
    }
}

TEST(Inside, FadesOverAHoleAndCountsOverlaps) {
    TriangleMesh open = cut_in_four(box_mesh({-1, -1, -1}, {1, 1, 1}), 2);
    std::erase_if(open.triangles, [&](const Triangle& t) {
        return open.points[t[0]].z == 1 && open.points[t[1]].z == 1 && open.points[t[2]].z == 1;
    });
    EXPECT_NEAR(Inside(open).winding({0, 0, 0}), 5.0 / 6, 0.01);
    EXPECT_NEAR(Inside(open).winding({0, 0, 1}), 0.5, 0.01);
    TriangleMesh twice = box_mesh({-1, -1, -1}, {1, 1, 1});
    add_mesh(twice, box_mesh({-0.5, -0.5, -0.5}, {2, 2, 2}));
    EXPECT_NEAR(Inside(twice).winding({0, 0, 0}), 2, 1e-9);
    EXPECT_EQ(Inside(TriangleMesh{}).winding({0, 0, 0}), 0);
}

}  // namespace
}  // namespace seamward::test
