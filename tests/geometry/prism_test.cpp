// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/prism.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "tests/support/random_loops.h"
#include "tests/support/solid_check.h"

namespace seamward::test {
namespace {

struct Made {
    TriangleMesh mesh;
    std::vector<GapIndex> bounds;

    explicit Made(const Prism& prism) { add_prism(prism, mesh, bounds); }

    [[nodiscard]] Point middle_of(std::size_t triangle) const {
        Point sum;
        for (const std::uint32_t corner : mesh.triangles[triangle]) {
            const Point& p = mesh.points[corner];
            sum = {sum.x + p.x / 3, sum.y + p.y / 3, sum.z + p.z / 3};
        }
        return sum;
    }
};

Loop box(double left, double bottom, double right, double top) {
    return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

Prism prism_of(const Loop& outline, std::vector<Height> heights, std::vector<Loop> cuts = {}) {
    Prism prism;
    prism.outline = outline;
    prism.heights = std::move(heights);
    prism.gap_of_cut.resize(cuts.size());
    prism.cuts = std::move(cuts);
    return prism;
}

void expect_volume(const Prism& prism, double volume) {
    const Made made(prism);
    EXPECT_EQ(made.bounds.size(), made.mesh.triangles.size());
    EXPECT_EQ(fault_of_solid(made.mesh), "");
    EXPECT_NEAR(facts_of(made.mesh).volume, volume, 1e-12 * (1 + std::abs(volume)));
}

/// A frame that lies across all axes.
Frame askew() {
    const double third = 1.0 / 3;
    return {{5, -7, 2}, {2 * third, 2 * third, third}, {-2 * third, third, 2 * third}, {third, -2 * third, 2 * third}};
}

TEST(Prism, IsAreaTimesHeight) {
    expect_volume(prism_of(box(1, 2, 4, 4), {{0.5}, {2}}), 3 * 2 * 1.5);
    expect_volume(prism_of(box(0, 0, 10, 3), {{-0.1}, {0}}, {box(2, 1, 3, 2), box(5, -1, 6, 2)}), (30 - 1 - 2) * 0.1);
    Prism turned = prism_of(box(1, 2, 4, 4), {{0.5}, {2}});
    std::reverse(turned.outline.begin(), turned.outline.end());
    expect_volume(turned, 9);
    turned.frame = askew();
    expect_volume(turned, 9);
}

TEST(Prism, HasAllItsPiecesAndLevels) {
    const Prism split = prism_of(box(0, 0, 10, 3), {{0}, {1}, {2.5}}, {box(4, -1, 6, 4)});
    expect_volume(split, 2 * 12 * 2.5);
    EXPECT_EQ(facts_of(Made(split).mesh).shell_volumes.size(), 2U);
    const Made none(prism_of(box(0, 0, 10, 3), {{0}, {1}}, {box(-1, -1, 11, 4)}));
    EXPECT_TRUE(none.mesh.triangles.empty());
    EXPECT_TRUE(none.bounds.empty());
}

TEST(Prism, StandsUnderASlopedPlane) {
    // The mean height is that over the middle.
    expect_volume(prism_of(box(0, 0, 4, 6), {{0}, {2, 0.5, -0.25}}), 24 * (2 + 0.5 * 2 - 0.25 * 3));
    expect_volume(prism_of({{0, 0}, {3, 0}, {0, 3}}, {{1, 0.1, 0}, {2, 0.3, 0.2}}), 4.5 * (1 + 0.2 * 1 + 0.2 * 1));
}

/// A wall mitered at both ends: its length grows with n.
TEST(Prism, IsMitered) {
    const double length = 7, high = 2.7, back = -0.1, front = 0.03;
    for (const double left : {-1.0, 0.0, 0.4}) {
        for (const double right : {1.0, -0.3}) {
            Prism wall = prism_of(box(0, 0, length, high), {{back}, {front}});
            wall.slant = {0, left, length, right};
            const double grown = (right - left) * (front * front - back * back) / 2;
            expect_volume(wall, high * (length * (front - back) + grown));
            wall.cuts = {box(2, 1, 3, 2), box(4, 0, 5, 2)};
            wall.gap_of_cut.resize(2);
            expect_volume(wall, high * (length * (front - back) + grown) - 3 * (front - back));
        }
    }
}

/// The outer layers of a gable wall: its lower corners move along with the slopes of the roof.
TEST(Prism, IsLiftedUnderAGable) {
    const double length = 8, eave = 2.8, slope = 0.5, front = 0.033;
    Prism wall = prism_of({{0, -0.02}, {length, -0.02}, {length, eave}, {length / 2, eave + slope * length / 2}, {0, eave}},
                          {{0}, {front}});
    wall.slant = {.left = 0, .left_slant = -1, .right = length, .right_slant = 1, .left_lift = -slope, .right_lift = -slope};
    wall.slant.lift_above = eave - 0.1;
    const auto area = [&](double n) {  // twice a trapezoid between the wall's end and the ridge
        const double half = length / 2 + n, low = eave - slope * n + 0.02, high = eave + slope * length / 2 + 0.02;
        return half * (low + high);
    };
    expect_volume(wall, front / 6 * (area(0) + 4 * area(front / 2) + area(front)));
}

TEST(Prism, SaysWhichGapEachFaceBounds) {
    const std::array<GapIndex, 8> gap{GapIndex{10}, GapIndex{11}, GapIndex{12}, GapIndex{13},
                                      GapIndex{14}, GapIndex{15}, GapIndex{16}, GapIndex{17}};
    Prism prism = prism_of(box(0, 0, 10, 3), {{0}, {1}}, {box(2, 1, 3, 2), box(9, -1, 11, 2)});
    prism.gap_of_edge = {gap[0], gap[1], gap[2], gap[3]};
    prism.gap_of_cut = {gap[4], gap[5]};
    prism.gap_of_back = gap[6];
    prism.gap_of_front = gap[7];
    const Made made(prism);
    std::array<int, 8> seen{};
    for (std::size_t t = 0; t < made.mesh.triangles.size(); ++t) {
        const Point p = made.middle_of(t);
        const GapIndex expected = p.z < 1e-9                                             ? gap[6]
                                  : p.z > 1 - 1e-9                                       ? gap[7]
                                  : p.x > 1.99 && p.x < 3.01 && p.y > 0.99 && p.y < 2.01 ? gap[4]
                                  : p.x > 8.99 && p.y < 2.01                             ? gap[5]
                                  : p.y < 1e-9                                           ? gap[0]
                                  : p.x > 10 - 1e-9                                      ? gap[1]
                                  : p.y > 3 - 1e-9                                       ? gap[2]
                                                                                         : gap[3];
        EXPECT_EQ(made.bounds[t].value, expected.value) << p.x << ' ' << p.y << ' ' << p.z;
        ++seen.at(expected.value - 10);
    }
    for (const int count : seen) EXPECT_GE(count, 2);
}

TEST(Prism, SaysWhichLevelBoundsAGap) {
    Prism pipe = prism_of(box(0, 0, 1, 1), {{0}, {1}, {2}, {3}});
    pipe.gap_of_level = {{}, GapIndex{7}, {}};
    const Made made(pipe);
    for (std::size_t t = 0; t < made.mesh.triangles.size(); ++t) {
        const double z = made.middle_of(t).z;
        EXPECT_EQ(made.bounds[t].valid(), z > 1 && z < 2) << z;
    }
}

TEST(Prism, IsAddedToWhatIsThere) {
    Made made(prism_of(box(0, 0, 1, 1), {{0}, {1}}));
    const TriangleMesh first = made.mesh;
    add_prism(prism_of(box(2, 0, 3, 1), {{0}, {1}}), made.mesh, made.bounds);
    EXPECT_EQ(made.mesh.triangles.size(), 2 * first.triangles.size());
    EXPECT_TRUE(std::equal(first.triangles.begin(), first.triangles.end(), made.mesh.triangles.begin()));
    EXPECT_EQ(fault_of_solid(made.mesh), "");
    EXPECT_NEAR(facts_of(made.mesh).volume, 2, 1e-12);
}

/// Any outline with holes under any plane: area times the height over the middle of the area.
TEST(Prism, StandsUnderAnyPlane) {
    std::mt19937 random(3);
    for (int round = 0; round < 100; ++round) {
        SCOPED_TRACE(round);
        const Loop outline = round % 2 == 0 ? random_star(random, 5 + pick(random, 12), 0.8)
                                            : random_rectilinear(random, 4 + pick(random, 12), 0.8);
        std::vector<Loop> cuts;
        Point2 inside;
        do {
            inside = {uniform(random, -5, 15), uniform(random, -5, 10)};
        } while (!is_inside(outline, inside) || !is_inside(outline, inside + Point2{0.05, 0}) ||
                 !is_inside(outline, inside + Point2{0.05, 0.05}) || !is_inside(outline, inside + Point2{0, 0.05}));
        cuts.push_back(box(inside.x, inside.y, inside.x + 0.05, inside.y + 0.05));
        Prism prism =
            prism_of(outline, {{uniform(random, -1, 0)}, {9, uniform(random, -0.4, 0.4), uniform(random, -0.4, 0.4)}}, cuts);
        prism.frame = askew();
        double volume = 0;
        const auto add = [&](const Loop& loop, double sign) {  // triangles from the origin, each with its middle
            for (std::size_t i = 0; i < loop.size(); ++i) {
                const Point2 a = loop[i], b = loop[(i + 1) % loop.size()];
                const Point2 middle = (a + b) * (1.0 / 3);
                volume += sign * cross(a, b) / 2 * (prism.heights[1].at(middle) - prism.heights[0].at(middle));
            }
        };
        add(outline, 1);
        if (remainder(outline, cuts).at(0).figure.holes.size() != 1) continue;  // it happens to cross the outline
        add(cuts[0], -1);
        const Made made(prism);
        EXPECT_EQ(fault_of_solid(made.mesh), "");
        EXPECT_NEAR(facts_of(made.mesh).volume, volume, 1e-9);
    }
}

}  // namespace
}  // namespace seamward::test
