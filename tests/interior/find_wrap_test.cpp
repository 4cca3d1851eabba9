// SPDX-License-Identifier: GPL-3.0-or-later
// What was found against CGAL's wraps (tests/support/wrap_peer.h), whose balls stand between points instead of surfaces: hence
// the margins.
#include <gtest/gtest.h>

#include "interior/find.h"
#include "tests/support/find_check.h"
#include "tests/support/scene_room.h"
#include "tests/support/wrap_peer.h"

namespace seamward::test {
namespace {

constexpr double thinner = 0.9, thicker = 1.2;  // of a gap's width: balls that get through and do not
constexpr RoomSize small{60 * mm, 50 * mm, 45 * mm, 12 * mm};
constexpr Point2 middle{30 * mm, 22.5 * mm};

/// Whether the wrap with balls of a diameter leaves a point out that is in the air.
bool wrap_gets_to(const Scene& scene, const Point& at, double diameter) { return ask_wrap(scene.parts, at, diameter).joined; }

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
