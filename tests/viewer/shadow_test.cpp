// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <array>

#include "box_house.h"
#include "layers/colored_triangles.h"
#include "layers/shadow_map.h"

namespace seamward::viewer::test {
namespace {

const Box block{{0, 0, 0}, {4, 3, 3}};
const Vector sun{-0.5, -0.4, 0.77};

/// The shadow of a block, of which a cut may have taken something away.
ShadowMap shadow_of_block(const std::optional<CutPlane>& cut) {
    const TriangleMesh mesh = box(block.low, block.high);
    ColoredTriangles faces;
    for (const auto& [a, b, c] : mesh.triangles) faces.add({mesh.points[a], mesh.points[b], mesh.points[c]}, Qt::white);
    const auto data = faces.data();
    const std::array<vtkPolyData*, 1> casting{data};
    return {casting, block, 6, 0, sun, cut};
}

/// Whether a line toward the sun meets what a cut left of the block.
bool in_shadow(const Point& on_ground, const std::optional<CutPlane>& cut) {
    constexpr int steps = 4000;
    for (int i = 0; i <= steps; ++i) {
        const Point at = on_ground + sun * (8.0 * i / steps);
        const bool inside = at.x > block.low.x && at.x < block.high.x && at.y > block.low.y && at.y < block.high.y &&
                            at.z > block.low.z && at.z < block.high.z;
        if (inside && !(cut && cut->over(at) > 0)) return true;
    }
    return false;
}

void expect_shadow(const std::optional<CutPlane>& cut) {
    const ShadowMap map = shadow_of_block(cut);
    int compared = 0;
    for (double x = -5.5; x < 9.5; x += 0.5) {
        for (double y = -5.5; y < 8.5; y += 0.5) {
            const Point at{x + 0.03, y + 0.07, 0};
            // Soft borders aside: all around it is alike.
            const bool dark = in_shadow(at, cut);
            bool alike = true;
            for (const double dx : {-0.55, 0.0, 0.55}) {
                for (const double dy : {-0.55, 0.0, 0.55}) alike = alike && in_shadow(at + Vector{dx, dy, 0}, cut) == dark;
            }
            if (!alike) continue;
            ++compared;
            EXPECT_NEAR(static_cast<double>(map.at(at)), dark ? 1 : 0, 0.1) << at.x << ' ' << at.y;
        }
    }
    EXPECT_GT(compared, 300);
}

TEST(Shadow, IsThatOfTheWholeBlock) { expect_shadow(std::nullopt); }

TEST(Shadow, OfWhatWasCutAwayIsGone) {
    expect_shadow(CutPlane{{0, 0, 1}, {0, 0, 1}});
    expect_shadow(CutPlane{{2, 0, 0}, {1, 0, 0}});
    expect_shadow(CutPlane{{0, 1.5, 0}, {0, -1, 0}});
    expect_shadow(CutPlane{{-1, 0, 0}, {1, 0, 0}});  // all of it
}

}  // namespace
}  // namespace seamward::viewer::test
