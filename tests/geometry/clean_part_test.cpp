// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/clean_part.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

#include "tests/support/plain_solids.h"
#include "tests/support/solid_check.h"

namespace seamward::test {
namespace {

void expect_sound(const CleanPart& part, double volume, std::size_t shells = 1) {
    EXPECT_TRUE(part.faults.closed);
    EXPECT_EQ(part.faults.open_edges, 0);
    EXPECT_EQ(part.faults.shells, shells);
    EXPECT_NEAR(volume_of(part.mesh), volume, 1e-4 * std::abs(volume));
}

TriangleMesh shuffled(TriangleMesh mesh, std::mt19937& random, double flipped) {
    std::shuffle(mesh.triangles.begin(), mesh.triangles.end(), random);
    std::bernoulli_distribution flip(flipped);
    for (Triangle& t : mesh.triangles)
        if (flip(random)) std::swap(t[1], t[2]);
    return mesh;
}

TEST(CleanPart, LeavesASoundPartAsItIs) {
    const TriangleMesh box = box_mesh({1, 2, 3}, {4, 5, 6});
    const CleanPart part = clean_part(box);
    EXPECT_EQ(part.mesh.triangles, box.triangles);
    EXPECT_EQ(part.mesh.points.size(), 8U);
    expect_sound(part, 27);
    EXPECT_EQ(part.faults.flipped + part.faults.doubled + part.faults.degenerate + part.faults.crowded_edges, 0U);
    EXPECT_FALSE(part.faults.inside_out);
    const CleanPart nothing = clean_part({});
    EXPECT_TRUE(nothing.mesh.triangles.empty());
    EXPECT_FALSE(nothing.faults.closed);
}

TEST(CleanPart, JoinsSoupThatIsRoundedAndTurned) {
    std::mt19937 random(4);
    for (const TriangleMesh& solid :
         {cut_in_four(box_mesh({0, 0, 0}, {2, 0.1, 0.05}), 2), prism_mesh(64, 0.011, 0, 3), ring_mesh(40, 12, 0.3, 0.02)}) {
        for (int k = 0; k < 10; ++k) {
            const TriangleMesh placed = Placement(random, 15).of(solid);
            // Noise of the same corner stays within the tolerance: two micrometers along each axis on both sides.
            const CleanPart part = clean_part(shuffled(with_noise(as_soup(rounded_to_float(placed)), random, 2e-6), random, 0.4));
            expect_sound(part, volume_of(solid));
            EXPECT_EQ(part.mesh.triangles.size(), solid.triangles.size());
            EXPECT_EQ(part.mesh.points.size(), solid.points.size());
            EXPECT_EQ(part.faults.degenerate, 0U);
            EXPECT_TRUE(facts_of(part.mesh).closed);
        }
    }
}

TEST(CleanPart, CountsWhatIsTurned) {
    TriangleMesh box = cut_in_four(box_mesh({0, 0, 0}, {1, 1, 1}), 2);
    for (const std::size_t t : {3U, 50U, 51U}) std::swap(box.triangles[t][0], box.triangles[t][1]);
    CleanPart part = clean_part(box);
    EXPECT_EQ(part.faults.flipped, 3U);
    EXPECT_FALSE(part.faults.inside_out);
    expect_sound(part, 1);
    part = clean_part(turned_over(box));
    EXPECT_EQ(part.faults.flipped, 3U);
    EXPECT_TRUE(part.faults.inside_out);
    expect_sound(part, 1);
}

TEST(CleanPart, LeavesOutDoublesAndWhatHasNoArea) {
    TriangleMesh box = box_mesh({0, 0, 0}, {1, 1, 1});
    box.triangles.push_back(box.triangles[4]);
    box.triangles.push_back({box.triangles[7][1], box.triangles[7][0], box.triangles[7][2]});
    box.triangles.push_back({0, 1, 1});
    box.points.push_back({3e-6, 4e-6, 5e-6});
    box.triangles.push_back({0, 8, 5});
    box.points.push_back({std::numeric_limits<double>::quiet_NaN(), 0, 0});
    box.triangles.push_back({0, 1, 9});
    box.triangles.push_back({0, 1, 1000});
    CleanPart part = clean_part(box);
    EXPECT_EQ(part.faults.doubled, 2U);
    EXPECT_EQ(part.faults.degenerate, 4U);
    expect_sound(part, 1);
    TriangleMesh twice = box_mesh({0, 0, 0}, {1, 1, 1});
    add_mesh(twice, turned_over(twice));
    part = clean_part(twice);
    EXPECT_EQ(part.faults.doubled, 12U);
    expect_sound(part, 1);
}

TEST(CleanPart, KeepsWhatIsLargerThanTheTolerance) {
    for (const double thick : {3e-5, 3e-4, 3e-3}) {
        const CleanPart plate = clean_part(cut_in_four(box_mesh({0, 0, 0}, {1, 0.2, thick}), thick < 1e-4 ? 0 : 3));
        EXPECT_EQ(plate.mesh.triangles.size(), thick < 1e-4 ? 12U : 12U * 64);
        expect_sound(plate, 0.2 * thick);
    }
}

TEST(CleanPart, MeasuresWhatIsOpen) {
    TriangleMesh box = box_mesh({0, 0, 0}, {1, 2, 3});
    box.triangles.erase(box.triangles.begin() + 2, box.triangles.begin() + 4);
    const CleanPart part = clean_part(box);
    EXPECT_FALSE(part.faults.closed);
    EXPECT_NEAR(part.faults.open_edges, 6, 1e-12);
    EXPECT_EQ(part.mesh.triangles, box.triangles);
    EXPECT_EQ(clean_part(turned_over(box)).mesh.triangles, turned_over(box).triangles);  // it has no outside
}

/// The faces of a box, each cut on its own: no two of them share a corner along their common edges.
TriangleMesh cut_apart(int seed) {
    TriangleMesh box = box_mesh({0, 0, 0}, {2, 1, 1.5}), out;
    std::mt19937 random(static_cast<unsigned>(seed));
    for (std::size_t face = 0; face < 6; ++face) {
        const Point a = box.points[box.triangles[2 * face][0]], b = box.points[box.triangles[2 * face][1]],
                    d = box.points[box.triangles[2 * face + 1][2]];
        const auto across = std::uniform_int_distribution<std::uint32_t>(1, 9)(random);
        const auto up = std::uniform_int_distribution<std::uint32_t>(1, 9)(random);
        const auto base = static_cast<std::uint32_t>(out.points.size());
        for (std::uint32_t i = 0; i <= across; ++i)
            for (std::uint32_t k = 0; k <= up; ++k)
                out.points.push_back(a + (b - a) * (1.0 * i / across) + (d - a) * (1.0 * k / up));
        for (std::uint32_t i = 0; i < across; ++i) {
            for (std::uint32_t k = 0; k < up; ++k) {
                const std::uint32_t at = base + i * (up + 1) + k;
                add_quad(out, at, at + up + 1, at + up + 2, at + 1);
            }
        }
        if (face % 2 == 1)  // whole faces that disagree with the others
            for (std::size_t t = out.triangles.size() - 2 * across * up; t < out.triangles.size(); ++t)
                std::swap(out.triangles[t][1], out.triangles[t][2]);
    }
    return out;
}

TEST(CleanPart, ClosesEdgesThatTouchAlongTheirLength) {
    std::mt19937 random(8);
    for (int seed = 0; seed < 20; ++seed) {
        const TriangleMesh box = cut_apart(seed);
        expect_sound(clean_part(box), 3);
        expect_sound(clean_part(with_noise(Placement(random, 10).of(box), random, 2e-6)), 3);
    }
    // A corner drawn out of the edge leaves a slit.
    TriangleMesh slit = box_mesh({0, 0, 0}, {1, 1, 1});
    const Triangle split = slit.triangles.back();
    slit.triangles.pop_back();
    const auto middle = static_cast<std::uint32_t>(slit.points.size());
    const Point a = slit.points[split[0]], b = slit.points[split[1]];
    slit.points.push_back(a + (b - a) * 0.5);
    slit.triangles.push_back({split[0], middle, split[2]});
    slit.triangles.push_back({middle, split[1], split[2]});
    expect_sound(clean_part(slit), 1);
    slit.points.back().y += 1e-4;
    slit.points.back().z -= 1e-4;
    EXPECT_FALSE(clean_part(slit).faults.closed);
    // A sliver in the slit closes it, whether it is kept or not.
    slit.points.back() = a + (b - a) * 0.5;
    slit.triangles.push_back({split[0], split[1], middle});
    const CleanPart part = clean_part(slit);
    expect_sound(part, 1);
    EXPECT_EQ(part.faults.degenerate, 1U);
}

TEST(CleanPart, TurnsHollowsInwardAndWhatStandsInThemOutward) {
    std::mt19937 random(2);
    for (int k = 0; k < 16; ++k) {
        TriangleMesh nested;
        double volume = 0;
        for (int depth = 0; depth < 4; ++depth) {
            const double r = 1 - 0.2 * depth;
            const TriangleMesh box = cut_in_four(box_mesh({-r, -r, -r}, {r, r, r}), 1);
            add_mesh(nested, (k >> depth & 1) != 0 ? turned_over(box) : box);
            volume += (depth % 2 == 0 ? 8 : -8) * r * r * r;
        }
        add_mesh(nested, box_mesh({1, -1, -1}, {2, 1, 1}));  // flush with the outermost
        add_mesh(nested, box_mesh({0.9, 2, 0}, {3, 3, 1}));
        const CleanPart part = clean_part(shuffled(Placement(random, 10).of(nested), random, 0));
        expect_sound(part, volume + 4 + 2.1, 6);
        EXPECT_EQ(part.faults.inside_out, k != 2 + 8);
    }
    TriangleMesh crossed = box_mesh({0, 0, 0}, {2, 1, 1});  // overlap is no hollow
    add_mesh(crossed, turned_over(box_mesh({0.5, 0.25, -1}, {1, 0.75, 3})));
    expect_sound(clean_part(crossed), 3, 2);
}

/// A pane in its frame: every corner of it lies on the frame.
TEST(CleanPart, TakesNoPaneForAHollow) {
    TriangleMesh window;
    for (int i = 0; i < 4; ++i) {  // outer and inner corners, below and above
        const double x = i == 0 || i == 3 ? 0 : 1, y = i < 2 ? 0 : 1;
        for (const double z : {0.0, 0.3}) {
            window.points.push_back({3 * x - 1, 3 * y - 1, z});
            window.points.push_back({x, y, z});
        }
    }
    for (std::uint32_t i = 0; i < 4; ++i) {
        const std::uint32_t a = 4 * i, b = 4 * ((i + 1) % 4);
        add_quad(window, a, b, b + 2, a + 2);
        add_quad(window, a + 1, a + 3, b + 3, b + 1);
        add_quad(window, a, a + 1, b + 1, b);
        add_quad(window, a + 2, b + 2, b + 3, a + 3);
    }
    add_mesh(window, box_mesh({0, 0, 0.1}, {1, 1, 0.2}));
    std::mt19937 random(9);
    for (int k = 0; k < 20; ++k) expect_sound(clean_part(Placement(random, 10).of(window)), 8 * 0.3 + 0.1, 2);
}

/// Cubes that share an edge, and cubes that share a wall between them.
TEST(CleanPart, CopesWithCrowdedEdges) {
    TriangleMesh on_edge = box_mesh({0, 0, 0}, {1, 1, 1});
    add_mesh(on_edge, turned_over(box_mesh({1, 1, 0}, {2, 2, 1})));
    CleanPart part = clean_part(on_edge);
    expect_sound(part, 2, 2);
    EXPECT_EQ(part.faults.crowded_edges, 1U);
    TriangleMesh row;
    for (int i = 0; i < 4; ++i) {
        const TriangleMesh cube = box_mesh({1.0 * i, 0, 0}, {1.0 * i + 1, 1, 1});
        add_mesh(row, i % 2 == 1 ? turned_over(cube) : cube);
    }
    part = clean_part(row);
    EXPECT_EQ(part.mesh.triangles.size(), 4U * 8 + 4);
    EXPECT_EQ(part.faults.doubled, 3U * 4);
    expect_sound(part, 4);
    // A sheet drawn from both sides on a floor stays a sheet.
    TriangleMesh sheet{{{0, 0, 0}, {1, 0, 0}, {1, 0, 1}, {0, 0, 1}, {0, 1, 0}, {1, 1, 0}, {0, -1, 0}, {1, -1, 0}}, {}};
    add_quad(sheet, 0, 1, 2, 3);
    add_quad(sheet, 3, 2, 1, 0);
    add_quad(sheet, 0, 1, 5, 4);
    add_quad(sheet, 6, 7, 1, 0);
    EXPECT_EQ(clean_part(sheet).mesh.triangles.size(), 8U);
}

/// A cube under a roof that is hollow below: they meet along four edges.
TriangleMesh cube_under_roof() {
    TriangleMesh mesh = box_mesh({0, 0, 0}, {1, 1, 1});
    mesh.points.push_back({0.5, 0.5, 1.2});
    mesh.points.push_back({0.5, 0.5, 1.5});
    const std::array<std::uint32_t, 4> rim{4, 5, 7, 6};
    for (std::size_t i = 0; i < 4; ++i) {
        mesh.triangles.push_back({rim[(i + 1) % 4], rim[i], 8});
        mesh.triangles.push_back({rim[i], rim[(i + 1) % 4], 9});
    }
    return mesh;
}

TEST(CleanPart, TurnsPiecesThatOnlyCloseTogether) {
    std::mt19937 random(5);
    for (int k = 0; k < 30; ++k) {
        const CleanPart part = clean_part(shuffled(Placement(random, 10).of(cube_under_roof()), random, k % 2 == 0 ? 0.5 : 1));
        expect_sound(part, 1.1, 4);
        EXPECT_EQ(part.faults.crowded_edges, 4U);
    }
    // Two cubes with a doubled wall between them, cut along different diagonals.
    TriangleMesh chambers = box_mesh({0, 0, 0}, {1, 1, 1});
    add_mesh(chambers, box_mesh({1, 0, 0}, {2, 1, 1}));
    chambers.triangles[20] = {8, 12, 10};
    chambers.triangles[21] = {12, 14, 10};
    expect_sound(clean_part(chambers), 2, 4);
    expect_sound(clean_part(turned_over(chambers)), 2, 4);
    chambers.triangles.resize(20);  // a room on one side of the wall and nothing on the other
    EXPECT_FALSE(clean_part(chambers).faults.closed);
}

TEST(CleanPart, IsTheSameEveryTime) {
    std::mt19937 random(6);
    const TriangleMesh mesh = shuffled(with_noise(as_soup(ring_mesh(60, 20, 0.5, 0.1)), random, 4e-6), random, 0.3);
    const CleanPart once = clean_part(mesh), again = clean_part(mesh);
    EXPECT_EQ(once.mesh.triangles, again.mesh.triangles);
    EXPECT_TRUE(std::equal(once.mesh.points.begin(), once.mesh.points.end(), again.mesh.points.begin(), again.mesh.points.end(),
                           [](const Point& p, const Point& q) { return p.x == q.x && p.y == q.y && p.z == q.z; }));
}

}  // namespace
}  // namespace seamward::test
