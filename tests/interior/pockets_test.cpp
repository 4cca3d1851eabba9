// SPDX-License-Identifier: GPL-3.0-or-later
// Narrow air that leads nowhere is told, and is no gap.
#include "interior/pockets.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "interior/find.h"
#include "tests/support/find_check.h"
#include "tests/support/scene_changes.h"
#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

constexpr RoomSize small{0.6, 0.5, 0.4, 0.1};

/// A room whose south side has a profile cut into it along half of its length.
Scene with_profile(const Loops& cuts) {
    Scene scene = room_without_south("profile", small);
    add_south_profile(scene, small, cuts, 0.1, 0.4);
    return scene;
}

std::string space_of(const Found& found, const FoundPocket& pocket) { return pocket.space ? found.spaces[*pocket.space].id : ""; }

void expect_pocket(const Scene& scene, const std::string& space, double width, double depth, double volume) {
    const Found found = found_in(scene);
    EXPECT_TRUE(found.gaps.empty());
    ASSERT_EQ(found.pockets.size(), 1U);
    const FoundPocket& pocket = found.pockets[0];
    EXPECT_EQ(pocket.id, "pocket-1");
    EXPECT_EQ(space_of(found, pocket), space);
    EXPECT_NEAR(pocket.width, width, 0.05 * mm);
    EXPECT_NEAR(pocket.depth, depth, 0.1 * depth);
    EXPECT_NEAR(pocket.volume, volume, 0.1 * volume);
}

/// 4 mm high, 80 mm deep into the wall from the room.
TEST(Pockets, BlindSlot) {
    const Scene scene = with_profile({rectangle(-80 * mm, 0.2, 10 * mm, 0.204)});
    expect_pocket(scene, "room", 4 * mm, 80 * mm, 4 * mm * 80 * mm * 0.3);
    expect_pocket(transformed(scene, turned_frame({0.3, -0.8, 0.5}, 1.1, {3, -2, 7})), "room", 4 * mm, 80 * mm,
                  4 * mm * 80 * mm * 0.3);
    expect_pocket(with_profile({rectangle(-110 * mm, 0.2, -20 * mm, 0.206)}), "outdoors", 6 * mm, 80 * mm,
                  6 * mm * 80 * mm * 0.3);
}

/// Behind a board that stands 8 mm off the wall on two battens: in at the top, out at the bottom.
TEST(Pockets, BothEndsInOneSpace) {
    Scene scene = room_without_south("board", small);
    add_south(scene, small, {});
    add_part(scene, "board", block({0.1, 8 * mm, 0.1}, {0.5, 20 * mm, 0.3}));
    add_part(scene, "batten-1", block({0.1, 0, 0.1}, {0.12, 8 * mm, 0.3}));
    add_part(scene, "batten-2", block({0.48, 0, 0.1}, {0.5, 8 * mm, 0.3}));
    expect_pocket(scene, "room", 8 * mm, 0.1, 8 * mm * 0.36 * 0.2);
    const Found found = found_in(scene);
    std::array<std::string, 2> parts{found.parts[found.pockets[0].parts[0]].id, found.parts[found.pockets[0].parts[1]].id};
    std::ranges::sort(parts);
    EXPECT_EQ(parts, (std::array<std::string, 2>{"board", "south"}));
}

TEST(Pockets, ShutInAir) {
    Scene scene = room_without_south("bubble", small);
    add_part(scene, "south",
             joined(std::array{block({0, -small.wall, 0}, {0.6, 0, 0.2}), block({0, -small.wall, 0.2}, {0.2, 0, 0.4}),
                               block({0.3, -small.wall, 0.2}, {0.6, 0, 0.4}), block({0.2, -small.wall, 0.22}, {0.3, 0, 0.4}),
                               block({0.2, -small.wall, 0.2}, {0.3, -0.06, 0.22}), block({0.2, -0.04, 0.2}, {0.3, 0, 0.22})}));
    const Found found = found_in(scene);
    EXPECT_TRUE(found.gaps.empty());
    ASSERT_EQ(found.pockets.size(), 1U);
    EXPECT_FALSE(found.pockets[0].space.has_value());
    EXPECT_NEAR(found.pockets[0].width, 20 * mm, 0.05 * mm);
    EXPECT_NEAR(found.pockets[0].volume, 0.1 * 0.02 * 0.02, 1e-7);
}

TEST(Pockets, GapsShallowDentsAndCornersAreNone) {
    EXPECT_TRUE(found_in(with_profile({})).pockets.empty());
    EXPECT_TRUE(found_in(with_profile({rectangle(-15 * mm, 0.2, 10 * mm, 0.204)})).pockets.empty());
    const Found gap = found_in(with_profile({rectangle(-110 * mm, 0.2, 10 * mm, 0.204)}));
    EXPECT_EQ(gap.gaps.size(), 1U);
    EXPECT_TRUE(gap.pockets.empty());
}

}  // namespace
}  // namespace seamward::test
