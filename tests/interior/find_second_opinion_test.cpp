// SPDX-License-Identifier: GPL-3.0-or-later
// What was found against cubes: a ball hardly thinner than a gap gets through it, one hardly thicker than its bound does not.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "interior/find.h"
#include "tests/support/find_check.h"
#include "tests/support/gap_window.h"
#include "tests/support/scenes.h"
#include "tests/support/voxel_rooms.h"

namespace seamward::test {
namespace {

constexpr double thinner = 0.98, thicker = 1.03;

constexpr std::array chosen{"slot-0.9-through-22-long-100",
                            "slot-6-through-22-long-1000",
                            "slot-tapered-in-depth-inner-narrow",
                            "slot-waist-sharp",
                            "slot-chamber-40",
                            "slot-stepped",
                            "joint-l-equal",
                            "joint-l-upright-narrower",
                            "shiplap-upright-narrowest",
                            "shiplap-edge-to-edge",
                            "slot-pipes-across",
                            "hole-square",
                            "ring-centered-1.5",
                            "hollow-wall",
                            "soffit",
                            "rooms-in-a-row"};

void expect_agreement(const Scene& scene, ExpectedGap gap, const FoundGap& found) {
    const double fine = found.width / 250;
    const Vector size = gap.window.highest - gap.window.lowest;
    const bool flat = std::min({size.x, size.y, size.z}) < fine;
    if (!flat && is_straight(gap)) {  // a thick window takes many cubes
        const VoxelRooms line(scene.parts, line_between(gap.from, gap.to), fine);
        EXPECT_EQ(line.judge(gap.from, gap.to, thinner * found.width), Passage::joined);
        shorten(gap);
    } else {
        const VoxelRooms rooms(scene.parts, gap.window, fine);
        EXPECT_EQ(rooms.judge(gap.from, gap.to, thinner * found.width), Passage::joined);
    }
    const VoxelRooms rooms(scene.parts, gap.window, fine);
    EXPECT_EQ(rooms.judge(gap.from, gap.to, thicker * found.at_most), Passage::apart);
}

TEST(FindSecondOpinion, CubesAgree) {
    const std::vector<Scene> all = all_scenes();
    for (const char* name : chosen) {
        SCOPED_TRACE(name);
        const auto scene = std::ranges::find(all, std::string(name), &Scene::name);
        ASSERT_NE(scene, all.end());
        const Found found = found_in(*scene);
        const auto match = matches(*scene, scene->gaps, found);
        for (std::size_t i = 0; i < match.size(); ++i) {
            ASSERT_TRUE(match[i]) << i;
            if (has_window(scene->gaps[i])) expect_agreement(*scene, scene->gaps[i], found.gaps[*match[i]]);
        }
    }
}

}  // namespace
}  // namespace seamward::test
