// SPDX-License-Identifier: GPL-3.0-or-later
// What is told of a gap beside its width, of gaps nearly as wide as --widest, and of holes that look alike: by scenes whose
// depths, lengths and areas are known from their drawing.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "geometry/hull_area.h"
#include "interior/find.h"
#include "tests/support/scene_room.h"
#include "tests/support/solid_builders.h"

namespace seamward::test {
namespace {

Found found_in(const Scene& scene) {
    Model model;
    model.parts = scene.parts;
    return find_gaps(model, {}, RunContext());
}

Found found_behind(const Loops& holes, double wall = 0.1) {
    RoomSize room;
    room.wall = wall;
    Scene scene = room_without_south("room", room);
    add_south(scene, room, holes);
    return found_in(scene);
}

/// The ball is a tenth larger within half a radius before and behind a hole with sharp edges.
void expect_depth(const FoundGap& gap, double wall) {
    EXPECT_GE(gap.depth, wall - 0.05 * gap.width);
    EXPECT_LE(gap.depth, wall + gap.width);
}

class DepthOfSlot : public testing::TestWithParam<double> {};

TEST_P(DepthOfSlot, IsThatOfTheWall) {
    const double width = GetParam();
    for (const double wall : {0.02, 0.1}) {
        const Found found = found_behind({rectangle(0.2, 0.1, 0.4, 0.1 + width)}, wall);
        ASSERT_EQ(found.gaps.size(), 1U);
        expect_depth(found.gaps[0], wall);
    }
}

INSTANTIATE_TEST_SUITE_P(Gaps, DepthOfSlot, testing::Values(0.4 * mm, 3 * mm, 12 * mm, 20.5 * mm, 22 * mm, 24 * mm),
                         [](const auto& width) { return std::to_string(std::lround(width.param * 1e4)); });

TEST(GapSizes, OfHolesThatLookAlikeEachHasItsOwnDepthAndParts) {
    RoomSize room;
    Scene scene = room_without_south("walls", room);
    // The west half of the south side is 100 mm thick, the east half 50 mm, each with a hole of 10 mm.
    add_parts(scene, "thick", extruded(south_frame, rectangle(0, 0, 0.3, room.z), {rectangle(0.1, 0.2, 0.11, 0.21)}, 0, 0.1));
    add_parts(scene, "thin", extruded(south_frame, rectangle(0.3, 0, 0.6, room.z), {rectangle(0.5, 0.1, 0.51, 0.11)}, 0, 0.05));
    const Found found = found_in(scene);
    ASSERT_EQ(found.gaps.size(), 2U);
    for (const FoundGap& gap : found.gaps) {
        const std::string& part = found.parts[gap.parts[0]].name;
        EXPECT_EQ(found.parts[gap.parts[1]].name, part);
        const bool thick = gap.at.x < 0.3;
        EXPECT_EQ(part, thick ? "thick" : "thin");
        expect_depth(gap, thick ? 0.1 : 0.05);
        EXPECT_GE(gap.at.y, thick ? -0.1 : -0.05) << "held within the wall";
        EXPECT_LE(gap.at.y, 0.0);
    }
}

TEST(GapSizes, HolesNearlyAsWideAsTheWidestStandApart) {
    const Found found =
        found_behind({rectangle(0.2, 0.1, 0.224, 0.124), rectangle(0.245, 0.1, 0.2685, 0.1235)});  // squares of 24 and 23.5 mm
    ASSERT_EQ(found.gaps.size(), 2U);
    const double sides[] = {24 * mm, 23.5 * mm};
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_NEAR(found.gaps[i].width, sides[i], 0.05 * mm);
        EXPECT_NEAR(found.gaps[i].length, sides[i], 0.05 * mm);
        EXPECT_LE(found.gaps[i].at_most, 1.004 * sides[i]);
    }
}

TEST(GapSizes, OneThatNarrowsAlongItsLengthIsOne) {
    const double z = 0.2;  // 24 mm wide along 200 mm, 10 mm along 200 mm more
    const Found found = found_behind({{{0.1, z - 12 * mm},
                                       {0.3, z - 12 * mm},
                                       {0.3, z - 5 * mm},
                                       {0.5, z - 5 * mm},
                                       {0.5, z + 5 * mm},
                                       {0.3, z + 5 * mm},
                                       {0.3, z + 12 * mm},
                                       {0.1, z + 12 * mm}}});
    ASSERT_EQ(found.gaps.size(), 1U);
    EXPECT_NEAR(found.gaps[0].width, 24 * mm, 0.05 * mm);
    EXPECT_NEAR(found.gaps[0].length, 0.4, 0.01);
}

Loops row_of_holes(const std::vector<double>& sides, double web) {
    Loops loops;
    double x = 0.2;
    for (const double side : sides) {
        loops.push_back(rectangle(x, 0.2, x + side, 0.2 + side));
        x += side + web;
    }
    return loops;
}

TEST(GapSizes, HolesWithWebsAsWideAsTheyAreAScreen) {
    const Found found = found_behind(row_of_holes(std::vector<double>(12, 5 * mm), 5 * mm), 2 * mm);
    ASSERT_EQ(found.gaps.size(), 1U);
    EXPECT_EQ(found.gaps[0].openings, 12U);
}

TEST(GapSizes, HolesThatGrowFromOneToTheNextAreNoScreen) {
    std::vector<double> sides{4 * mm};
    while (sides.size() < 9) sides.push_back(1.085 * sides.back());
    const Found found = found_behind(row_of_holes(sides, 2 * mm), 2 * mm);
    ASSERT_EQ(found.gaps.size(), sides.size());
    for (std::size_t i = 0; i < sides.size(); ++i) EXPECT_NEAR(found.gaps[i].width, sides[sides.size() - 1 - i], 0.05 * mm);
}

TEST(HullArea, IsThatOfTheShadowAlongTheNormal) {
    const std::vector<Point> square{{0, 0, 0}, {2, 0, 0}, {2, 2, 0}, {0, 2, 0}, {1, 1, 0}, {1, 0, 0}};
    EXPECT_NEAR(hull_area(square, {0, 0, 1}), 4, 1e-12);
    EXPECT_NEAR(hull_area(square, {0, 0, -7}), 4, 1e-12);
    EXPECT_NEAR(hull_area(square, {0, 3, 3}), 4 / std::numbers::sqrt2, 1e-12) << "seen askew";
    EXPECT_NEAR(hull_area(square, {1, 0, 0}), 0, 1e-12) << "seen from the side";
}

// A body of air is a room where a person can stand; the volumes are all over 4 cubic meters.

Found found_in_box(const Point& inside, bool slot = true) {
    Scene scene;
    const double t = 0.1;
    const auto& [x, y, z] = inside;
    add_part(scene, "floor", block({-t, -t, -t}, {x + t, y + t, 0}));
    add_part(scene, "ceiling", block({-t, -t, z}, {x + t, y + t, z + t}));
    add_part(scene, "south", block({-t, -t, slot ? 3 * mm : 0}, {x + t, 0, z}));
    add_part(scene, "north", block({-t, y, 0}, {x + t, y + t, z}));
    add_part(scene, "west", block({-t, 0, 0}, {0, y, z}));
    add_part(scene, "east", block({x, 0, 0}, {x + t, y, z}));
    return found_in(scene);
}

bool has_room(const Found& found) {
    for (const FoundSpace& space : found.spaces) {
        if (space.kind == SpaceKind::living) return true;
    }
    return false;
}

TEST(GuessedRooms, HaveRoomForAPersonToStand) {
    EXPECT_TRUE(has_room(found_in_box({2, 2, 2.4})));
    EXPECT_FALSE(has_room(found_in_box({4, 3, 0.4}))) << "a void above a ceiling";
    EXPECT_FALSE(has_room(found_in_box({16, 14, 0.06}))) << "fill under a slab";
    EXPECT_FALSE(has_room(found_in_box({5, 0.4, 2.4}))) << "a shaft that nobody fits into";
    EXPECT_FALSE(has_room(found_in_box({3, 3, 1.8}))) << "a crawl space";
}

TEST(GuessedRooms, AreToldOfWhereThereIsNone) {
    const Found flat = found_in_box({4, 3, 0.4});
    ASSERT_FALSE(flat.notes.empty());
    EXPECT_NE(flat.notes.back().find("room for a person to stand"), std::string::npos) << flat.notes.back();
    EXPECT_NE(flat.notes.back().find("4.20 x 3.20 x 0.60 m"), std::string::npos) << flat.notes.back();

    Scene open;
    add_part(open, "slab", block({0, 0, 0}, {3, 3, 0.1}));
    const Found slab = found_in(open);
    ASSERT_FALSE(slab.notes.empty());
    EXPECT_NE(slab.notes.back().find("No air is shut off"), std::string::npos) << slab.notes.back();
    EXPECT_NE(slab.notes.back().find("--unit"), std::string::npos) << slab.notes.back();
}

TEST(FoundParts, ThatShareANameAreToldApartByTheirIds) {
    Scene scene;
    add_part(scene, "a", block({0, 0, 0}, {1, 1, 1}));
    add_part(scene, "b", block({2, 0, 0}, {3, 1, 1}));
    add_part(scene, "c", block({4, 0, 0}, {5, 1, 1}));
    scene.parts[0].name = scene.parts[1].name = "wall";
    const Found found = found_in(scene);
    EXPECT_TRUE(found.parts[0].shares_name);
    EXPECT_TRUE(found.parts[1].shares_name);
    EXPECT_FALSE(found.parts[2].shares_name);
}

}  // namespace
}  // namespace seamward::test
