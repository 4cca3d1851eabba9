// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/scene_changes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/support/solid_check.h"
#include "tests/support/voxel_rooms.h"

namespace seamward::test {
namespace {

Scene sample() {
    const std::vector<Scene> scenes = pipe_scenes();
    return scenes.front();
}

std::vector<double> volumes(const Scene& scene) {
    std::vector<double> all;
    for (const ModelPart& part : scene.parts) all.push_back(facts_of(part.mesh).volume);
    return all;
}

void expect_closed_and_the_same(const Scene& changed, double scale = 1) {
    SCOPED_TRACE(changed.name);
    const std::vector<double> before = volumes(sample()), after = volumes(changed);
    ASSERT_EQ(before.size(), after.size());
    for (std::size_t i = 0; i < before.size(); ++i) {
        EXPECT_NEAR(after[i], before[i] * std::pow(scale, 3), 1e-4 * before[i] * std::pow(scale, 3));
        EXPECT_TRUE(facts_of(changed.parts[i].mesh).closed) << changed.parts[i].id;
    }
}

TEST(SceneChanges, KeepSolidsClosed) {
    expect_closed_and_the_same(refined(sample(), 2));
    expect_closed_and_the_same(retessellated(sample(), 2, 5));
    expect_closed_and_the_same(with_noise(sample(), 1e-6, 5));
    expect_closed_and_the_same(transformed(sample(), turned_frame({1, 2, 3}, 0.7, {5, -3, 2}), 1000), 1000);
}

TEST(SceneChanges, MoveWhatIsExpectedAlong) {
    const Scene before = sample(), after = transformed(before, turned_frame({1, 2, 3}, 0.7, {5, -3, 2}), 1000);
    EXPECT_DOUBLE_EQ(after.gaps[0].width, 1000 * before.gaps[0].width);
    EXPECT_DOUBLE_EQ(after.widest, 25);
    const TriangleDistance one(before.parts), other(after.parts);
    EXPECT_NEAR(other.to(after.gaps[0].near, 1e9), 1000 * one.to(before.gaps[0].near, 1e9), 1e-6);
    EXPECT_NEAR(other.to(after.spaces[1].inside, 1e9), 1000 * one.to(before.spaces[1].inside, 1e9), 1e-6);
}

TEST(SceneChanges, LeaveSurfacesWhereTheyAre) {
    const Scene before = sample();
    const TriangleDistance plain(before.parts);
    for (const Scene& changed :
         {refined(before, 1), retessellated(before, 1, 3), with_flipped_parts(before), with_flipped_triangles(before, 3),
          with_twin_parts(before), with_doubled_triangles(before, 3), as_soup(before, 3), with_shuffled_parts(before, 3),
          as_one_part(before), as_open_faces(before)}) {
        const TriangleDistance distance(changed.parts);
        for (const Point& p : {before.gaps[0].near, before.spaces[0].inside, before.spaces[1].inside, Point{0.1, 0.05, 0.3}}) {
            EXPECT_NEAR(distance.to(p, 1e9), plain.to(p, 1e9), 1e-9) << changed.name;
        }
    }
}

TEST(SceneChanges, SpoilWhatTheySay) {
    const Scene before = sample();
    EXPECT_LT(volumes(with_flipped_parts(before))[0], 0);
    EXPECT_FALSE(facts_of(with_flipped_triangles(before, 1).parts[0].mesh).closed);
    EXPECT_FALSE(facts_of(with_doubled_triangles(before, 1).parts[0].mesh).closed);
    EXPECT_GT(with_twin_parts(before).parts.size(), before.parts.size());
    EXPECT_EQ(as_one_part(before).parts.size(), 1U);
    const Scene open = as_open_faces(before);
    EXPECT_TRUE(open.open_parts);
    for (const ModelPart& part : open.parts) EXPECT_FALSE(facts_of(part.mesh).closed) << part.id;
}

TEST(RandomScene, IsTheSameForTheSameSeed) {
    const Scene one = random_scene(3), other = random_scene(3);
    ASSERT_EQ(one.parts.size(), other.parts.size());
    for (std::size_t i = 0; i < one.parts.size(); ++i) {
        EXPECT_EQ(one.parts[i].mesh.triangles, other.parts[i].mesh.triangles);
        EXPECT_TRUE(std::ranges::equal(one.parts[i].mesh.points, other.parts[i].mesh.points,
                                       [](const Point& a, const Point& b) { return a.x == b.x && a.y == b.y && a.z == b.z; }));
    }
}

/// Every kind comes up, and all that is planted counts.
TEST(RandomScene, PlantsAllKinds) {
    std::vector<int> shapes(4);
    for (unsigned seed = 1; seed <= 60; ++seed) {
        const Scene scene = random_scene_upright(seed);
        for (const ExpectedGap& gap : scene.gaps) {
            EXPECT_GE(gap.width, scene.smallest) << scene.name;
            EXPECT_LE(gap.width, scene.widest) << scene.name;
            ++shapes[gap.shape == "slot" ? 0 : gap.shape == "hole" ? 1 : gap.shape == "ring" ? 2 : 3];
        }
    }
    for (const int count : shapes) EXPECT_GT(count, 20);
}

}  // namespace
}  // namespace seamward::test
