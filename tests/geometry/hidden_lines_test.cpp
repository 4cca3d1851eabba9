// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/hidden_lines.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "tests/support/plain_solids.h"

namespace seamward {
namespace {

using test::box_mesh;

constexpr double fine = 1e-3;  ///< ViewSettings::finest where nothing is meant to be too fine

/// Seen from the south: x to the right, z up, y away from the eye.
const Frame from_south{{}, {1, 0, 0}, {0, 0, 1}, {0, -1, 0}};

std::vector<ViewLine> seen(const std::vector<TriangleMesh>& meshes, double finest = fine, bool one_look = true) {
    std::vector<ViewedSolid> solids;
    for (const TriangleMesh& mesh : meshes)
        solids.push_back({&mesh, one_look ? 0 : static_cast<std::uint32_t>(solids.size()), true});
    return LineView(solids, from_south, ViewSettings{finest}).lines();
}

double length_of(const ViewLine& line) { return std::hypot(line.to.x - line.from.x, line.to.y - line.from.y); }

double off_segment(Point2 p, const ViewLine& line) {
    const Point2 step = line.to - line.from;
    const double share = std::clamp(dot(p - line.from, step) / dot(step, step), 0.0, 1.0);
    const Point2 off = p - (line.from + step * share);
    return std::hypot(off.x, off.y);
}

bool drawn_at(const std::vector<ViewLine>& lines, Point2 p, double within = 2 * fine) {
    return std::any_of(lines.begin(), lines.end(), [&](const ViewLine& line) { return off_segment(p, line) <= within; });
}

double whole_length(const std::vector<ViewLine>& lines) {
    double sum = 0;
    for (const ViewLine& line : lines) sum += length_of(line);
    return sum;
}

TEST(HiddenLines, BoxBeforeBox) {
    // The near one hides the lower middle of the far one.
    const auto lines = seen({box_mesh({0, 0, 0}, {1, 1, 1}), box_mesh({-1, 5, 0}, {2, 6, 2})});
    // Outline of the far one but for one meter of its foot, and the near one, whose foot stands for that meter.
    EXPECT_NEAR(whole_length(lines), (3 + 2 + 2 + 2) + 4, 0.01);
    EXPECT_TRUE(drawn_at(lines, {-0.5, 0}));
    EXPECT_TRUE(drawn_at(lines, {0.5, 1}));
    EXPECT_FALSE(drawn_at(lines, {0.5, 0.5}));
    for (const ViewLine& line : lines) {
        const Point2 middle = (line.from + line.to) * 0.5;
        const bool near = middle.y > 0.01 && middle.y <= 1.001 && middle.x > -0.01 && middle.x < 1.01;
        EXPECT_EQ(line.kind, near ? ViewLineKind::outline : ViewLineKind::profile) << middle.x << ' ' << middle.y;
    }
}

TEST(HiddenLines, HoleInAWall) {
    // A wall of four pieces round a hole; behind it a box, of which the hole shows a corner.
    const auto lines = seen({box_mesh({0, 0, 0}, {4, 0.1, 1}), box_mesh({0, 0, 2}, {4, 0.1, 3}), box_mesh({0, 0, 1}, {1, 0.1, 2}),
                             box_mesh({2, 0, 1}, {4, 0.1, 2}), box_mesh({1.5, 3, 0}, {3.5, 4, 1.5})});
    EXPECT_TRUE(drawn_at(lines, {1.5, 1.25}));
    EXPECT_TRUE(drawn_at(lines, {1.75, 1.5}));
    EXPECT_FALSE(drawn_at(lines, {1.5, 0.5}));  // behind the wall
    EXPECT_FALSE(drawn_at(lines, {2.5, 1.5}));
    EXPECT_FALSE(drawn_at(lines, {0.5, 1}));  // seams of the wall
    EXPECT_FALSE(drawn_at(lines, {3, 2}));
    EXPECT_NEAR(whole_length(lines), 14 + 4 + 1, 0.01);  // wall, hole, and half a meter each of the box
}

TEST(HiddenLines, RoofOverAWall) {
    // A sloped slab over a wall: its lower edge hangs 0.4 m before the wall and 0.3 m below the wall's top.
    TriangleMesh roof = box_mesh({-1, -0.4, 2.7}, {5, 3, 2.8});
    for (Point& p : roof.points) p.z += (p.y + 0.4) * 0.5;
    const auto lines = seen({box_mesh({0, 0, 0}, {4, 3, 2.85}), roof}, fine, false);
    EXPECT_TRUE(drawn_at(lines, {0, 2.69}));
    EXPECT_FALSE(drawn_at(lines, {0, 2.75}));
    EXPECT_FALSE(drawn_at(lines, {2, 2.85}));
    for (const ViewLine& line : lines) {
        if (std::abs(line.from.x) < 1e-6 && std::abs(line.to.x) < 1e-6) {
            EXPECT_NEAR(std::max(line.from.y, line.to.y), 2.7, 1e-6);
        }
    }
}

TEST(HiddenLines, SeamsOfOneLookAreNoLines) {
    const std::vector<TriangleMesh> flush{box_mesh({0, 0, 0}, {1, 1, 1}), box_mesh({1, 0.002, 0}, {2, 1, 1})};
    EXPECT_FALSE(drawn_at(seen(flush), {1, 0.5}));
    EXPECT_TRUE(drawn_at(seen(flush, fine, false), {1, 0.5}));
    const std::vector<TriangleMesh> stepped{box_mesh({0, 0, 0}, {1, 1, 1}), box_mesh({1, 0.02, 0}, {2, 1, 1})};
    EXPECT_TRUE(drawn_at(seen(stepped), {1, 0.5}));
}

TEST(HiddenLines, SlitsTooNarrowToPrintAreNoLines) {
    const std::vector<TriangleMesh> apart{box_mesh({0, 0, 0}, {1, 1, 1}), box_mesh({1.004, 0, 0}, {2, 1, 1})};
    EXPECT_TRUE(drawn_at(seen(apart), {1, 0.5}));
    EXPECT_FALSE(drawn_at(seen(apart, 0.02), {1, 0.5}, 0.01));
}

TEST(HiddenLines, ScreensAreDrawnAsTheirOutline) {
    std::vector<ViewedSolid> solids;
    TriangleMesh screen;
    for (int i = 0; i < 50; ++i) {
        const TriangleMesh bar = box_mesh({i * 0.01, 0, 0}, {i * 0.01 + 0.002, 0.002, 0.4});
        const auto first = static_cast<std::uint32_t>(screen.points.size());
        screen.points.insert(screen.points.end(), bar.points.begin(), bar.points.end());
        for (const auto& [a, b, c] : bar.triangles) screen.triangles.push_back({first + a, first + b, first + c});
    }
    const TriangleMesh behind = box_mesh({0.1, 1, 0.1}, {0.3, 2, 0.3});
    solids.push_back({&screen, 0, true});
    solids.push_back({&behind, 1, true});
    const auto lines = LineView(solids, from_south, ViewSettings{0.03}).lines();
    EXPECT_NEAR(whole_length(lines), 2 * (0.492 + 0.4), 0.01);
    EXPECT_FALSE(drawn_at(lines, {0.2, 0.1}));
}

TEST(HiddenLines, RoundBodiesHaveTheirTwoSides) {
    // With and without faces that are seen exactly from the side.
    for (const double turn : {0.0, std::numbers::pi / 24, 0.1}) {
        TriangleMesh post = test::prism_mesh(24, 0.5, 0, 2);
        for (Point& p : post.points)
            p = {p.x * std::cos(turn) - p.y * std::sin(turn), p.x * std::sin(turn) + p.y * std::cos(turn), p.z};
        double right = 0;
        for (const Point& p : post.points) right = std::max(right, p.x);
        const auto lines = seen({post});
        EXPECT_TRUE(drawn_at(lines, {right, 1})) << turn;
        EXPECT_TRUE(drawn_at(lines, {-right, 1})) << turn;
        EXPECT_FALSE(drawn_at(lines, {0.2, 1})) << turn;
        EXPECT_NEAR(whole_length(lines), 4 + 4 * right, 0.01) << turn;
    }
}

TEST(HiddenLines, EdgesAtTheCutAreLeftOut) {
    const TriangleMesh box = box_mesh({0, 0, 0}, {1, 1, 1});
    const ViewedSolid solid{&box, 0, true};
    EXPECT_NEAR(whole_length(LineView(std::span(&solid, 1), Frame{}, ViewSettings{fine}).lines()), 4, 1e-6);
    EXPECT_TRUE(LineView(std::span(&solid, 1), Frame{}, ViewSettings{fine, 1 - 1e-6}).lines().empty());
}

TEST(HiddenLines, Sees) {
    const TriangleMesh box = box_mesh({0, 0, 0}, {1, 1, 1});
    const ViewedSolid solid{&box, 0, true};
    const LineView view(std::span(&solid, 1), from_south, ViewSettings{fine});
    EXPECT_TRUE(view.sees({0.5, -0.01, 0.5}, 0));
    EXPECT_TRUE(view.sees({0.5, 0.05, 0.5}, 0.06));
    EXPECT_FALSE(view.sees({0.5, 0.05, 0.5}, 0.04));
    EXPECT_TRUE(view.sees({1.5, 9, 0.5}, 0));
}

TEST(MergedLines, OneOfThoseAlongsideStays) {
    const auto merged = merged_lines({{{0, 0}, {1, 0}, ViewLineKind::surface},
                                      {{2, 0.001}, {0.5, 0.001}, ViewLineKind::outline},
                                      {{0, 0.1}, {1, 0.1}, ViewLineKind::surface},
                                      {{0, 0}, {0, 0.005}, ViewLineKind::profile}},
                                     0.01, 0.01);
    ASSERT_EQ(merged.size(), 3U);
    EXPECT_EQ(merged[0].kind, ViewLineKind::outline);
    EXPECT_NEAR(length_of(merged[0]), 1.5, 1e-9);
    EXPECT_NEAR(whole_length(merged), 1.5 + 0.5 + 1, 1e-9);
}

/// Second opinion: a ray from a point toward the eye against every triangle (Möller and Trumbore 1997). Nothing: too near to
/// tell.
std::optional<bool> is_hidden(const std::vector<TriangleMesh>& meshes, const Point& p) {
    const Vector ray{0, -1, 0};
    bool hidden = false;
    for (const TriangleMesh& mesh : meshes) {
        for (const auto& [i, j, k] : mesh.triangles) {
            const Vector a = mesh.points[j] - mesh.points[i], b = mesh.points[k] - mesh.points[i];
            const Vector h = cross(ray, b);
            const double det = dot(a, h);
            if (std::abs(det) < 1e-9) continue;
            const Vector s = p - mesh.points[i], q = cross(s, a);
            const double u = dot(s, h) / det, v = dot(ray, q) / det, far = dot(b, q) / det;
            const double border = std::min({u, v, 1 - u - v});
            if (border < -0.002) continue;
            if (far < 0.0005) continue;
            if (far < 0.003 || border < 0.002) return std::nullopt;
            hidden = true;
        }
    }
    return hidden;
}

TEST(HiddenLines, AgreesWithRaysAtRandomBoxes) {
    std::mt19937 random(20261127);
    std::uniform_real_distribution<double> place(0, 4), size(0.2, 1.5), turn(0, 3);
    std::size_t compared = 0, hidden = 0;
    for (int round = 0; round < 12; ++round) {
        std::vector<TriangleMesh> meshes;
        for (int i = 0; i < 9; ++i) {
            TriangleMesh mesh = box_mesh({0, 0, 0}, {size(random), size(random), size(random)});
            const double angle = i % 3 == 0 ? 0 : turn(random), lean = i % 3 == 2 ? turn(random) : 0;
            const Vector to{place(random), place(random), place(random)};
            for (Point& p : mesh.points) {
                p = {p.x * std::cos(angle) - p.y * std::sin(angle), p.x * std::sin(angle) + p.y * std::cos(angle), p.z};
                p = Point{p.x, p.y * std::cos(lean) - p.z * std::sin(lean), p.y * std::sin(lean) + p.z * std::cos(lean)} + to;
            }
            meshes.push_back(mesh);
        }
        const auto lines = seen(meshes, 1e-4, false);
        for (const TriangleMesh& mesh : meshes) {
            for (std::size_t i = 0; i < 8; ++i) {
                for (std::size_t axis = 1; axis < 8; axis *= 2) {
                    if ((i & axis) != 0) continue;  // edges of a box join corners of which one coordinate differs
                    const Point &a = mesh.points[i], &b = mesh.points[i | axis];
                    for (int k = 0; k < 23; ++k) {
                        const Point p = a + (b - a) * ((k + 0.5) / 23);
                        const std::optional<bool> is = is_hidden(meshes, p);
                        if (!is) continue;
                        ++compared;
                        hidden += *is ? 1 : 0;
                        const bool drawn = drawn_at(lines, {p.x, p.z}, 1e-4);
                        EXPECT_TRUE(drawn || *is) << p.x << ' ' << p.y << ' ' << p.z;
                    }
                }
            }
        }
        // And each line is one of an edge that no ray finds hidden.
        for (const ViewLine& line : lines) {
            if (length_of(line) < 0.02) continue;
            const Point2 at = (line.from + line.to) * 0.5;
            bool told = false, open = false;
            for (const TriangleMesh& mesh : meshes) {
                for (std::size_t i = 0; i < 8; ++i) {
                    for (std::size_t axis = 1; axis < 8; axis *= 2) {
                        if ((i & axis) != 0) continue;
                        const Point &a = mesh.points[i], &b = mesh.points[i | axis];
                        if (off_segment(at, {{a.x, a.z}, {b.x, b.z}, {}}) > 1e-4) continue;
                        const Point2 step{b.x - a.x, b.z - a.z};
                        const double share = dot(at - Point2{a.x, a.z}, step) / std::max(dot(step, step), 1e-12);
                        const std::optional<bool> is = is_hidden(meshes, a + (b - a) * share);
                        told = true;
                        open = open || !is || !*is;
                    }
                }
            }
            EXPECT_TRUE(told && open) << at.x << ' ' << at.y;
        }
    }
    EXPECT_GT(compared, 5000U);
    EXPECT_GT(hidden, 1000U);
}

}  // namespace
}  // namespace seamward
