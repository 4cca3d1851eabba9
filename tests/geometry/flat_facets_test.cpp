// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/flat_facets.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <random>
#include <set>

#include "geometry/clean_part.h"
#include "house/build_house.h"
#include "house/description.h"
#include "tests/support/plain_solids.h"

namespace seamward::test {
namespace {

constexpr double tolerance = 1e-5;

Vector doubled_area_of(const Facet& facet) {
    Vector sum;
    for (std::size_t i = 1; i + 1 < facet.corners.size(); ++i)
        sum = sum + cross(facet.corners[i] - facet.corners[0], facet.corners[i + 1] - facet.corners[0]);
    return sum;
}

/// What holds of all facets; their area.
double expect_sound(const FlatFacets& flat) {
    double area = 0;
    for (const Facet& facet : flat.facets) {
        const std::size_t n = facet.corners.size();
        EXPECT_GE(n, 3U);
        const Vector facing = doubled_area_of(facet);
        const Plane3& plane = flat.planes.at(facet.plane);
        EXPECT_NEAR(length(plane.normal), 1, 1e-12);
        EXPECT_EQ(dot(facing, plane.normal) < 0, facet.flipped);
        const Vector up = plane.normal * (facet.flipped ? -1 : 1);
        for (std::size_t i = 0; i < n; ++i) {
            const Point &a = facet.corners[i], &b = facet.corners[(i + 1) % n];
            EXPECT_LE(std::abs(plane.height_of(a)), tolerance * (1 + 1e-9));
            const Vector inward = cross(up, b - a) * (1 / length(b - a));
            for (const Point& p : facet.corners) EXPECT_GE(dot(p - a, inward), -1.5 * tolerance);
        }
        area += length(facing) / 2;
    }
    return area;
}

/// The moments of the volume that facets bound, so that none may be missing or turned: volume and its middle.
std::array<double, 4> moments_of(const FlatFacets& flat) {
    std::array<double, 4> sums{};
    for (const Facet& facet : flat.facets) {
        for (std::size_t i = 1; i + 1 < facet.corners.size(); ++i) {
            const Vector a = facet.corners[0] - Point{}, b = facet.corners[i] - Point{}, c = facet.corners[i + 1] - Point{};
            const double sixth = dot(a, cross(b, c));
            const Vector middle = (a + b + c) * 0.25;
            sums[0] += sixth / 6;
            sums[1] += sixth / 6 * middle.x;
            sums[2] += sixth / 6 * middle.y;
            sums[3] += sixth / 6 * middle.z;
        }
    }
    return sums;
}

FlatFacets flat_of(const TriangleMesh& mesh) { return flat_facets(std::vector<TriangleMesh>{mesh}, tolerance); }

/// A plate with square windows through it, in rows.
TriangleMesh plate_with_windows(int across, int up) {
    TriangleMesh mesh;
    const auto at = [&](int x, int z, int y) { return static_cast<std::uint32_t>(((z * (2 * across + 2)) + x) * 2 + y); };
    for (int z = 0; z < 2 * up + 2; ++z)
        for (int x = 0; x < 2 * across + 2; ++x)
            for (int y = 0; y < 2; ++y) mesh.points.push_back({0.5 * x, 0.1 * y, 0.4 * z});
    const auto solid = [&](int x, int z) {
        return x >= 0 && z >= 0 && x <= 2 * across && z <= 2 * up && (x % 2 == 0 || z % 2 == 0);
    };
    for (int z = 0; z <= 2 * up; ++z) {
        for (int x = 0; x <= 2 * across; ++x) {
            if (!solid(x, z)) continue;
            add_quad(mesh, at(x, z, 0), at(x + 1, z, 0), at(x + 1, z + 1, 0), at(x, z + 1, 0));
            add_quad(mesh, at(x, z, 1), at(x, z + 1, 1), at(x + 1, z + 1, 1), at(x + 1, z, 1));
            if (!solid(x - 1, z)) add_quad(mesh, at(x, z, 0), at(x, z + 1, 0), at(x, z + 1, 1), at(x, z, 1));
            if (!solid(x + 1, z)) add_quad(mesh, at(x + 1, z, 0), at(x + 1, z, 1), at(x + 1, z + 1, 1), at(x + 1, z + 1, 0));
            if (!solid(x, z - 1)) add_quad(mesh, at(x, z, 0), at(x, z, 1), at(x + 1, z, 1), at(x + 1, z, 0));
            if (!solid(x, z + 1)) add_quad(mesh, at(x, z + 1, 0), at(x + 1, z + 1, 0), at(x + 1, z + 1, 1), at(x, z + 1, 1));
        }
    }
    return mesh;
}

TEST(FlatFacets, AreTheFacesOfABoxHoweverItIsCut) {
    std::mt19937 random(1);
    for (int k = 0; k < 20; ++k) {
        const TriangleMesh box = cut_in_four(box_mesh({0, 0, 0}, {4, 0.038, 0.089}), k % 5);
        const TriangleMesh placed = rounded_to_float(Placement(random, 12).of(box));
        const FlatFacets flat = flat_of(placed);
        EXPECT_EQ(flat.facets.size(), 6U) << k;
        EXPECT_EQ(flat.planes.size(), 6U);
        EXPECT_NEAR(expect_sound(flat), area_of(box), tolerance * 12);
        for (const Facet& facet : flat.facets) EXPECT_EQ(facet.corners.size(), 4U);
    }
    const FlatFacets upright = flat_of(box_mesh({1, 2, 3}, {4, 5, 6}));
    for (const Plane3& plane : upright.planes)
        EXPECT_EQ(std::abs(plane.normal.x) + std::abs(plane.normal.y) + std::abs(plane.normal.z), 1);
}

/// The narrowest turn that must stay: two sides of a thin pipe.
TEST(FlatFacets, KeepTheSidesOfPipes) {
    std::mt19937 random(2);
    for (const std::uint32_t sides : {24U, 64U}) {
        for (const double radius : {0.011, 0.055}) {
            for (int times = 0; times < 3; ++times) {
                const TriangleMesh pipe = cut_in_four(prism_mesh(sides, radius, 0, 3), times);
                const FlatFacets flat = flat_of(with_noise(Placement(random, 10).of(pipe), random, 1e-6));
                EXPECT_EQ(flat.facets.size(), sides + 2) << sides << ' ' << radius << ' ' << times;
                EXPECT_NEAR(expect_sound(flat), area_of(pipe), tolerance * 6 * sides);
            }
        }
    }
}

TEST(FlatFacets, DependLittleOnTheTriangles) {
    std::mt19937 random(3);
    const TriangleMesh plate = plate_with_windows(4, 3);
    const Placement placement(random, 10);
    const FlatFacets coarse = flat_of(placement.of(plate));
    const std::array<double, 4> expected = moments_of(coarse);
    EXPECT_NEAR(expected[0], 0.1 * (9 * 7 - 12) * 0.2, 1e-9);
    EXPECT_LE(coarse.facets.size(), 4U + 12 * 4 + 2 * 4 * 12);
    EXPECT_LE(coarse.planes.size(), 2U + 2 * 4 + 2 * 4 + 4);
    for (int times = 1; times < 4; ++times) {
        const FlatFacets fine = flat_of(with_noise(placement.of(cut_in_four(plate, times)), random, 1e-6));
        EXPECT_NEAR(expect_sound(fine), area_of(plate), 1e-5 * 60);
        EXPECT_LE(fine.facets.size(), 1.3 * static_cast<double>(coarse.facets.size()));
        EXPECT_EQ(fine.planes.size(), coarse.planes.size());
        for (std::size_t i = 0; i < 4; ++i) EXPECT_NEAR(moments_of(fine)[i], expected[i], 1e-3);
    }
}

TEST(FlatFacets, FillConcaveFacesWithHoles) {
    // A washer: a ring of flat faces above and below.
    TriangleMesh washer;
    constexpr std::uint32_t sides = 36;
    for (std::uint32_t i = 0; i < sides; ++i) {
        const double angle = 2 * std::numbers::pi * i / sides;
        for (const double r : {0.02, 0.05})
            for (const double z : {0.0, 0.002}) washer.points.push_back({r * std::cos(angle), r * std::sin(angle), z});
    }
    for (std::uint32_t i = 0; i < sides; ++i) {
        const std::uint32_t a = 4 * i, b = 4 * ((i + 1) % sides);
        add_quad(washer, a, a + 1, b + 1, b);          // within
        add_quad(washer, a + 2, b + 2, b + 3, a + 3);  // around
        add_quad(washer, a, b, b + 2, a + 2);          // below
        add_quad(washer, a + 1, a + 3, b + 3, b + 1);  // above
    }
    ASSERT_GT(volume_of(washer), 0);
    for (int times = 0; times < 3; ++times) {
        const FlatFacets flat = flat_of(cut_in_four(washer, times));
        EXPECT_NEAR(expect_sound(flat), area_of(washer), 1e-7);
        EXPECT_NEAR(moments_of(flat)[0], volume_of(washer), 1e-10);
        EXPECT_EQ(flat.planes.size(), 2U + 2 * sides);
        EXPECT_LE(flat.facets.size(), 2U * sides + 2 * (sides + 2));
    }
}

TEST(FlatFacets, ShareThePlaneWhereTheyAreFlush) {
    std::mt19937 random(4);
    const Placement placement(random, 10);
    std::vector<TriangleMesh> parts{box_mesh({0, 0, 0}, {3, 0.1, 2}), box_mesh({3, 0, 0}, {5, 0.1, 2}),
                                    box_mesh({1, 0.1, 0.5}, {1.05, 0.2, 0.6}), box_mesh({0, 0.2, 0}, {1, 0.3, 1})};
    for (TriangleMesh& part : parts) part = rounded_to_float(placement.of(part));
    const FlatFacets flat = flat_facets(parts, tolerance);
    (void)expect_sound(flat);
    EXPECT_EQ(flat.facets.size(), 24U);
    // x: 0 3 5 1 1.05; y: 0 0.1 0.2 0.3; z: 0 2 0.5 0.6 1.
    EXPECT_EQ(flat.planes.size(), 5U + 4 + 5);
    std::set<std::pair<std::uint32_t, bool>> seen;
    for (const Facet& facet : flat.facets) seen.emplace(facet.plane, facet.flipped);
    EXPECT_EQ(seen.size(), 14U + 4);  // x = 3, x = 1, y = 0.1 and y = 0.2 are seen from both sides
}

TEST(FlatFacets, DoNotDriftAlongARow) {
    std::vector<TriangleMesh> row;
    for (int i = 0; i < 50; ++i) row.push_back(box_mesh({1.0 * i, 0, -1}, {1.0 * i + 1, 1, 4e-6 * i}));
    const FlatFacets flat = flat_facets(row, tolerance);
    (void)expect_sound(flat);
    std::set<std::uint32_t> tops;
    for (const Facet& facet : flat.facets)
        if (std::abs(doubled_area_of(facet).z) > 1 && facet.corners[0].z > -0.5) tops.insert(facet.plane);
    EXPECT_GE(tops.size(), 10U);
}

/// Open, turned, doubled and torn parts give facets of the same area, and the same ones every time.
TEST(FlatFacets, TakeFaultyPartsAsTheyCome) {
    std::mt19937 random(5);
    TriangleMesh bad = cut_in_four(plate_with_windows(3, 2), 1);
    for (std::size_t t = 0; t < bad.triangles.size(); t += 7) std::swap(bad.triangles[t][0], bad.triangles[t][1]);
    bad.triangles.erase(bad.triangles.begin() + 40, bad.triangles.begin() + 60);
    bad.triangles.push_back({0, 1, 1});
    bad.triangles.push_back({0, 1, 70000});
    const double area = area_of({bad.points, {bad.triangles.begin(), bad.triangles.end() - 2}});
    const FlatFacets flat = flat_of(as_soup({bad.points, {bad.triangles.begin(), bad.triangles.end() - 2}}));
    EXPECT_NEAR(expect_sound(flat), area, 1e-3);
    EXPECT_NEAR(expect_sound(flat_of(bad)), area, 1e-3);
    EXPECT_NEAR(expect_sound(flat_of(clean_part(bad).mesh)), area, 1e-3);
    const FlatFacets again = flat_of(as_soup({bad.points, {bad.triangles.begin(), bad.triangles.end() - 2}}));
    ASSERT_EQ(again.facets.size(), flat.facets.size());
    for (std::size_t i = 0; i < flat.facets.size(); ++i) {
        EXPECT_EQ(again.facets[i].plane, flat.facets[i].plane);
        EXPECT_EQ(again.facets[i].corners.front().x, flat.facets[i].corners.front().x);
    }
    EXPECT_TRUE(flat_of({}).facets.empty());
}

/// A ring of small radius: no face is flat to begin with, and none may fold.
TEST(FlatFacets, FollowCurvedSurfaces) {
    const TriangleMesh ring = ring_mesh(400, 200, 0.02, 0.005);
    const FlatFacets flat = flat_of(ring);
    EXPECT_NEAR(expect_sound(flat), area_of(ring), 0.01 * area_of(ring));
    EXPECT_NEAR(moments_of(flat)[0], volume_of(ring), 0.01 * volume_of(ring));
    EXPECT_LT(flat.facets.size(), ring.triangles.size() / 4);
}

TEST(FlatFacets, HoldForShippedHouses) {
    const std::filesystem::path models = std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "models";
    for (const char* name : {"wall-corner.yaml", "larkspur.yaml"}) {
        const House house =
            build_house(read_house_description(models / name, name, RunContext()), {}, Make::solids, RunContext());
        std::vector<TriangleMesh> parts;
        double area = 0, around = 0;
        std::size_t triangles = 0;
        for (const Part& part : house.parts) {
            const CleanPart clean = clean_part(part.mesh);
            EXPECT_TRUE(clean.faults.closed) << part.id;
            EXPECT_FALSE(clean.faults.inside_out) << part.id;
            EXPECT_EQ(clean.faults.flipped, 0U) << part.id;
            parts.push_back(clean.mesh);
            area += area_of(part.mesh);
            triangles += part.mesh.triangles.size();
        }
        const FlatFacets flat = flat_facets(parts, tolerance);
        for (const Facet& facet : flat.facets)
            for (std::size_t i = 0; i < facet.corners.size(); ++i)
                around += length(facet.corners[(i + 1) % facet.corners.size()] - facet.corners[i]);
        EXPECT_NEAR(expect_sound(flat), area, tolerance * around);
        EXPECT_LT(flat.facets.size(), triangles / 2 + 100);
    }
}

}  // namespace
}  // namespace seamward::test
