// SPDX-License-Identifier: GPL-3.0-or-later
// Screens of wires that cross in two layers, as hardware cloth is drawn: one mesh each, with all of its holes.
#include "interior/screens.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <string>

#include "interior/find.h"
#include "tests/support/scene_room.h"
#include "tests/support/solid_builders.h"

namespace seamward::test {
namespace {

constexpr RoomSize room{0.6, 0.5, 0.4, 0.1};

/// Square holes, `across` by `up`, between wires as thick as wide that run into the wall on all sides.
struct Wires {
    std::string name;
    double hole, wire;  ///< meters
    int across, up;
    double turned = 0;  ///< radians, the whole room about an axis askew

    friend std::ostream& operator<<(std::ostream& out, const Wires& wires) { return out << wires.name; }
};

TriangleMesh together(const std::vector<TriangleMesh>& meshes) {
    TriangleMesh all;
    for (const TriangleMesh& mesh : meshes) {
        const auto before = static_cast<std::uint32_t>(all.points.size());
        all.points.insert(all.points.end(), mesh.points.begin(), mesh.points.end());
        for (const auto& t : mesh.triangles) all.triangles.push_back({t[0] + before, t[1] + before, t[2] + before});
    }
    return all;
}

/// About (1, 2, 3), by Rodrigues' formula.
Point turned(const Point& p, double by) {
    const Vector axis = Vector{1, 2, 3} * (1 / std::sqrt(14.0)), v{p.x, p.y, p.z};
    const Vector to = v * std::cos(by) + cross(axis, v) * std::sin(by) + axis * (dot(axis, v) * (1 - std::cos(by)));
    return {to.x, to.y, to.z};
}

Scene screened_room(const Wires& of) {
    Scene scene = room_without_south("screen", room);
    const double pitch = of.hole + of.wire, x0 = 0.2, z0 = 0.1, y = -0.05, into = 5 * mm;
    const double x1 = x0 + of.across * pitch - of.wire, z1 = z0 + of.up * pitch - of.wire;
    add_south(scene, room, {{{x0, z0}, {x1, z0}, {x1, z1}, {x0, z1}}});
    std::vector<TriangleMesh> level, upright;
    for (int i = 1; i < of.up; ++i) {
        const double z = z0 + i * pitch - of.wire;
        level.push_back(block({x0 - into, y, z}, {x1 + into, y + of.wire, z + of.wire}));
    }
    for (int i = 1; i < of.across; ++i) {
        const double x = x0 + i * pitch - of.wire;
        upright.push_back(block({x, y + of.wire, z0 - into}, {x + of.wire, y + 2 * of.wire, z1 + into}));
    }
    add_part(scene, "level", together(level));
    add_part(scene, "upright", together(upright));
    for (ModelPart& part : scene.parts) {
        for (Point& p : part.mesh.points) p = turned(p, of.turned);
    }
    return scene;
}

class FindInScreen : public testing::TestWithParam<Wires> {};

TEST_P(FindInScreen, TellsOneMeshWithAllItsHoles) {
    const Wires& of = GetParam();
    const Scene scene = screened_room(of);
    Model model;
    model.parts = scene.parts;
    const Found found = find_gaps(model, {}, RunContext());
    ASSERT_EQ(found.gaps.size(), 1U);
    const FoundGap& gap = found.gaps[0];
    // Squares of that side let a ball of that diameter through, and no larger one.
    EXPECT_NEAR(gap.width, of.hole, 1e-3 * of.hole);
    EXPECT_GE(gap.at_most, gap.width);
    EXPECT_LE(gap.at_most, 1.004 * gap.width);
    EXPECT_EQ(gap.openings, static_cast<std::uint32_t>(of.across * of.up));
    ASSERT_TRUE(std::holds_alternative<Mesh>(gap.shape));
    const double pitch = of.hole + of.wire, area = (of.across * pitch - of.wire) * (of.up * pitch - of.wire);
    EXPECT_NEAR(std::get<Mesh>(gap.shape).area.value_or(0), area, 0.01 * area) << "however it is turned";
}

// Holes and wires of hardware cloth: 4 and 2 to the inch, a coarse one and a fine one.
INSTANTIATE_TEST_SUITE_P(
    Screens, FindInScreen,
    testing::Values(Wires{"quarter_inch", 5.7 * mm, 0.65 * mm, 12, 9},
                    Wires{"quarter_inch_askew", 5.7 * mm, 0.65 * mm, 12, 9, 0.7}, Wires{"half_inch", 11.6 * mm, 1.1 * mm, 6, 6},
                    Wires{"half_inch_askew", 11.6 * mm, 1.1 * mm, 6, 6, -0.4}, Wires{"coarse", 20 * mm, 0.8 * mm, 5, 3},
                    Wires{"coarse_askew", 20 * mm, 0.8 * mm, 5, 3, 1.9}, Wires{"fine", 1.2 * mm, 0.35 * mm, 14, 10},
                    Wires{"fine_askew", 1.2 * mm, 0.35 * mm, 14, 10, 0.3}),
    [](const auto& wires) { return wires.param.name; });

}  // namespace
}  // namespace seamward::test
