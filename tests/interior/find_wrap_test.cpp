// SPDX-License-Identifier: GPL-3.0-or-later
// What was found against CGAL's wraps. A wrap shrinks onto triangles through facets whose smallest circumscribed ball that holds
// no point of the wrap has a radius of more than alpha: so it gets through straits wider than 2 alpha, and no others (CGAL 5.5
// User Manual, 3D Alpha Wrapping, "Algorithm" and "Choosing Parameters"; C. Portaneri et al., Alpha wrapping with an offset,
// ACM Trans. Graph. 41 (2022)). It keeps `offset` off the triangles on both sides, and its balls stand between points instead
// of surfaces: hence the margins.
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Side_of_triangle_mesh.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/alpha_wrap_3.h>
#include <gtest/gtest.h>

#include <array>
#include <vector>

#include "interior/find.h"
#include "tests/support/find_check.h"
#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Surface = CGAL::Surface_mesh<Kernel::Point_3>;

constexpr double thinner = 0.9, thicker = 1.2;  // of a gap's width: balls that get through and do not
constexpr double offset_share = 1.0 / 30;       // of alpha; what CGAL takes itself
constexpr RoomSize small{60 * mm, 50 * mm, 45 * mm, 12 * mm};
constexpr Point2 middle{30 * mm, 22.5 * mm};

/// Whether the wrap with balls of a diameter leaves a point out that is in the air.
bool wrap_gets_to(const Scene& scene, const Point& at, double diameter) {
    std::vector<Kernel::Point_3> points;
    std::vector<std::array<std::size_t, 3>> faces;
    for (const ModelPart& part : scene.parts) {
        const std::size_t first = points.size();
        for (const Point& p : part.mesh.points) points.emplace_back(p.x, p.y, p.z);
        for (const auto& [a, b, c] : part.mesh.triangles) faces.push_back({first + a, first + b, first + c});
    }
    Surface wrap;
    CGAL::alpha_wrap_3(points, faces, diameter / 2, diameter / 2 * offset_share, wrap);
    const CGAL::Side_of_triangle_mesh<Surface, Kernel> side(wrap);
    return side({at.x, at.y, at.z}) == CGAL::ON_UNBOUNDED_SIDE;
}

void expect_agreement(const Scene& scene) {
    SCOPED_TRACE(scene.name);
    const Found found = found_in(scene);
    ASSERT_EQ(found.gaps.size(), 1U);
    const Point& room = scene.spaces[1].inside;
    EXPECT_TRUE(wrap_gets_to(scene, room, thinner * found.gaps[0].width));
    EXPECT_FALSE(wrap_gets_to(scene, room, thicker * found.gaps[0].at_most));
}

Scene with_slot(const std::string& name, double width) {
    return south_scene(name, small, Loops{rectangle(10 * mm, 20 * mm, 50 * mm, 20 * mm + width)}, ExpectedGap{});
}

TEST(FindWrap, AgreesOnSlots) {
    expect_agreement(with_slot("slot-6", 6 * mm));
    expect_agreement(with_slot("slot-3", 3 * mm));
}

TEST(FindWrap, AgreesOnARing) {
    Scene scene = south_scene("ring-6", small, Loops{round_loop(middle, 14 * mm)}, ExpectedGap{});
    add_part(scene, "pipe", bar({middle.x, -30 * mm, middle.y}, {middle.x, 20 * mm, middle.y}, 8 * mm));
    expect_agreement(scene);
}

TEST(FindWrap, AgreesThatWhatIsTooNarrowIsShut) {
    const Scene shut = with_slot("shut", 0.1 * mm);
    EXPECT_TRUE(found_in(shut).gaps.empty());
    EXPECT_FALSE(wrap_gets_to(shut, shut.spaces[1].inside, 3 * mm));
}

}  // namespace
}  // namespace seamward::test
