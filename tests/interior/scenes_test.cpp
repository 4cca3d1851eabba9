// SPDX-License-Identifier: GPL-3.0-or-later
// Whether what scenes say of themselves is true: their solids are sound, and a ball gets through each gap that is a little
// thinner than it is wide, and none that is a little thicker.
#include "tests/support/scenes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "base/vector.h"
#include "tests/support/gap_window.h"
#include "tests/support/solid_check.h"
#include "tests/support/voxel_rooms.h"

namespace seamward::test {
namespace {

void expect_sound_solids(const Scene& scene) {
    std::set<std::string> ids;
    for (const ModelPart& part : scene.parts) {
        EXPECT_EQ(fault_of_solid(part.mesh, true), "") << part.id;
        EXPECT_GT(facts_of(part.mesh).volume, 0) << part.id;
        EXPECT_TRUE(ids.insert(part.id).second) << part.id << " twice";
    }
}

void expect_in_air(const Scene& scene, const Point& point, const std::string& what) {
    for (const ModelPart& part : scene.parts) EXPECT_FALSE(is_in_solid(part.mesh, point)) << what << " is in " << part.id;
}

void expect_points_in_air(const Scene& scene) {
    std::set<std::string> names;
    for (const auto* spaces : {&scene.spaces, &scene.thin_spaces}) {
        for (const ExpectedSpace& space : *spaces) {
            names.insert(space.name);
            expect_in_air(scene, space.inside, space.name);
        }
    }
    EXPECT_TRUE(names.contains("outdoors"));
    for (const auto* gaps : {&scene.gaps, &scene.gaps_with_thin}) {
        for (const ExpectedGap& gap : *gaps) {
            EXPECT_TRUE(names.contains(gap.one) && names.contains(gap.other));
            EXPECT_NE(gap.one, gap.other);
            expect_in_air(scene, gap.near, "near");
        }
    }
}

/// A ball 1 % thinner than expected gets through (2 % where it is not between planes) and none that is thicker by as much, or by
/// 2 or 3 % where it may go to the side: that takes the most cubes.
void expect_width(const Scene& scene, ExpectedGap gap) {
    const Vector size = gap.window.highest - gap.window.lowest;
    const double fine = (gap.tolerance == Tolerance::planar ? 0.01 : 0.02) * gap.width;
    const bool flat = std::min({size.x, size.y, size.z}) < fine;
    const double more = flat ? fine : (gap.tolerance == Tolerance::bent ? 0.03 : 0.02) * gap.width;
    if (flat || !is_straight(gap)) {
        const VoxelRooms rooms(scene.parts, gap.window, fine / 4);
        EXPECT_EQ(rooms.judge(gap.from, gap.to, gap.width - fine), Passage::joined) << gap.width - fine;
    } else {
        const VoxelRooms line(scene.parts, line_between(gap.from, gap.to), fine / 4);
        EXPECT_EQ(line.judge(gap.from, gap.to, gap.width - fine), Passage::joined) << gap.width - fine;
        shorten(gap);
    }
    const VoxelRooms rooms(scene.parts, gap.window, more / 4);
    EXPECT_EQ(rooms.judge(gap.from, gap.to, gap.width + more), Passage::apart) << gap.width + more;
}

void expect_true(const std::vector<Scene>& scenes) {
    std::set<std::string> names;
    for (const Scene& scene : scenes) {
        SCOPED_TRACE(scene.name);
        EXPECT_TRUE(names.insert(scene.name).second) << "twice";
        expect_sound_solids(scene);
        expect_points_in_air(scene);
        for (const auto* gaps : {&scene.gaps, &scene.gaps_with_thin}) {
            for (const ExpectedGap& gap : *gaps) {
                SCOPED_TRACE(gap.one + " - " + gap.other);
                if (has_window(gap)) expect_width(scene, gap);
            }
        }
        for (const ExpectedGap& way : scene.shut) {
            const VoxelRooms rooms(scene.parts, way.window, scene.smallest / 64);
            EXPECT_EQ(rooms.judge(way.from, way.to, scene.smallest), Passage::apart);
        }
    }
}

/// Slots of other lengths have the same section: judged once.
TEST(Scenes, StraightSlotsAreWhatTheySay) {
    std::vector<Scene> scenes = straight_slot_scenes();
    for (Scene& scene : scenes) {
        if (scene.name.ends_with("long-1000") && !scene.name.starts_with("one-solid-")) continue;
        for (ExpectedGap& gap : scene.gaps) gap.window = {};
    }
    expect_true(scenes);
}
TEST(Scenes, ShapedSlotsAreWhatTheySay) { expect_true(shaped_slot_scenes()); }
TEST(Scenes, BentSlotsAreWhatTheySay) { expect_true(bent_slot_scenes()); }
TEST(Scenes, CrossedSlotsAreWhatTheySay) { expect_true(crossed_slot_scenes()); }
TEST(Scenes, HolesAreWhatTheySay) { expect_true(hole_scenes()); }
TEST(Scenes, PipesAreWhatTheySay) { expect_true(pipe_scenes()); }
TEST(Scenes, TubesAreWhatTheySay) { expect_true(tube_scenes()); }
/// Around corners in the tube, leg by leg: every box holds one leg and the corners at its ends.
TEST(Scenes, BentTubeLetsItsBallAlong) {
    const std::vector<Scene> scenes = tube_scenes();
    const Scene& scene = scenes.front();
    ASSERT_EQ(scene.name, "tube-bent");
    const double width = scene.gaps.front().width;
    const std::vector<Point> way = way_of_bent_tube();
    for (std::size_t i = 1; i < way.size(); ++i) {
        Box box = line_between(way[i - 1], way[i]);
        EXPECT_EQ(VoxelRooms(scene.parts, box, width / 200).judge(way[i - 1], way[i], 0.98 * width), Passage::joined) << i;
        EXPECT_EQ(VoxelRooms(scene.parts, box, width / 200).judge(way[i - 1], way[i], 1.02 * width), Passage::apart) << i;
    }
}

TEST(Scenes, RandomOnesAreWhatTheySay) {
    std::vector<Scene> scenes;
    for (unsigned seed = 1; seed <= 12; ++seed) {
        scenes.push_back(random_scene_upright(seed));
        // A few of each, to save time.
        for (std::size_t i = 3; i < scenes.back().gaps.size(); ++i) scenes.back().gaps[i].window = {};
    }
    expect_true(scenes);
}

TEST(Scenes, CavitiesAreWhatTheySay) { expect_true(cavity_scenes()); }
TEST(Scenes, PassagesAreWhatTheySay) { expect_true(passage_scenes()); }

}  // namespace
}  // namespace seamward::test
