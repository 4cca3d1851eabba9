// SPDX-License-Identifier: GPL-3.0-or-later
// Ways uphill from narrow places: what is told of them is checked by exact distances, stand by stand.
#include "interior/slope.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "geometry/clean_part.h"
#include "tests/support/scene_room.h"
#include "tests/support/solid_builders.h"

namespace seamward::test {
namespace {

constexpr double cap = 12.75 * mm, least = 0.15 * mm, rise = 1.25;
constexpr RoomSize small{0.6, 0.5, 0.4, 0.1};

std::vector<CleanPart> clean(const Scene& scene) {
    std::vector<CleanPart> parts;
    for (const ModelPart& part : scene.parts) parts.push_back(clean_part(part.mesh));
    return parts;
}

/// The air of a scene and the balls in it.
struct World {
    explicit World(const Scene& scene)
        : air(cut_air(clean(scene), std::vector<char>(scene.parts.size(), 0), 1, RunContext())),
          clearance(air.tree, cap),
          passages(air, clearance, least, RunContext()) {}

    /// The radius of the largest ball that gets from a stand over the corners to the top.
    [[nodiscard]] double radius_of(std::uint32_t stand, const Slope& slope) const {
        double radius = cap;
        Point from = passages[stand].at;
        std::vector<Point> way = slope.corners;
        way.push_back(passages[slope.top].at);
        for (const Point& to : way) {
            radius = std::min(radius, air.tree.nearest(from, to, cap).distance);
            from = to;
        }
        return radius;
    }

    Air air;
    Clearance clearance;
    Passages passages;
};

Scene wall_with_slot(double width) {
    Scene scene = room_without_south("slot", small);
    add_south(scene, small, {{{0.1, 0.2}, {0.5, 0.2}, {0.5, 0.2 + width}, {0.1, 0.2 + width}}});
    return scene;
}

/// A pipe through a hole larger by `play` on all sides.
Scene wall_with_ring(double play) {
    Scene scene = room_without_south("ring", small);
    constexpr double radius = 20 * mm;
    Loop hole;
    for (int i = 0; i < 24; ++i) {
        const double angle = 2 * std::numbers::pi * i / 24;
        hole.push_back({0.3 + (radius + play) * std::cos(angle), 0.2 + (radius + play) * std::sin(angle)});
    }
    add_south(scene, small, {hole});
    add_part(scene, "pipe", bar({0.3, -0.3, 0.2}, {0.3, 0.2, 0.2}, radius));
    return scene;
}

void expect_true_slopes(const World& world) {
    std::size_t found = 0;
    for (std::uint32_t i = 0; i < world.passages.size(); ++i) {
        const double clearance = world.passages[i].clearance;
        if (clearance < least || clearance * rise >= cap) continue;
        const Slope slope = slope_from(world.passages, i, rise * clearance);
        if (slope.top == Slope::none) continue;
        ++found;
        EXPECT_GE(world.passages[slope.top].clearance, rise * clearance);
        EXPECT_GE(world.radius_of(i, slope), slope.clearance * (1 - 1e-9));
        EXPECT_NEAR(slope.clearance, clearance, clearance * 1e-3);
    }
    EXPECT_GE(found, 2U);
}

TEST(Slope, LeadsABallAsWideAsItsStandToWhereThereIsMoreRoom) {
    expect_true_slopes(World(wall_with_slot(3 * mm)));
    expect_true_slopes(World(wall_with_ring(2 * mm)));
}

/// In the middle of a joint nothing is uphill; at its mouths there is.
TEST(Slope, BeginsAtTheMouthsOfAJointAndNotWithin) {
    const World world(wall_with_ring(2 * mm));
    std::size_t mouths = 0, within = 0;
    for (std::uint32_t i = 0; i < world.passages.size(); ++i) {
        const Stand& stand = world.passages[i];
        if (stand.clearance < 0.9 * mm || stand.clearance > 1.1 * mm) continue;
        const double deep = std::min(-stand.at.y, stand.at.y + small.wall);
        const bool slopes = slope_from(world.passages, i, rise * stand.clearance).top != Slope::none;
        if (deep > 10 * mm) {
            ++within;
            EXPECT_FALSE(slopes) << stand.at.x << ' ' << stand.at.y << ' ' << stand.at.z;
        } else if (std::abs(deep) < 1e-6 && world.passages.is_portal(i)) {
            ++mouths;
            EXPECT_TRUE(slopes) << stand.at.x << ' ' << stand.at.y << ' ' << stand.at.z;
        }
    }
    EXPECT_GT(mouths, 4U);
    EXPECT_GT(within, 4U);
}

TEST(Slope, GoesStraightOffAPortalToRoomyStandsOnly) {
    const World world(wall_with_slot(3 * mm));
    const double ball = 12 * mm;
    std::size_t found = 0;
    for (std::uint32_t i = 0; i < world.passages.size(); ++i) {
        if (!world.passages.is_portal(i) || world.passages[i].clearance < ball) continue;
        for (const Slope& way : straight_off(world.passages, i, ball)) {
            ++found;
            EXPECT_NE(way.top, i);
            EXPECT_GE(world.passages[way.top].clearance, ball);
            EXPECT_GE(world.radius_of(i, way), ball * (1 - 1e-9));
        }
    }
    EXPECT_GT(found, 4U);
}

/// Passages that were added are led over their corners, either way round.
TEST(Slope, IsFollowedAsAPassage) {
    World world(wall_with_ring(2 * mm));
    std::size_t bent = 0;
    const auto stands = static_cast<std::uint32_t>(world.passages.size());
    for (std::uint32_t i = 0; i < stands; ++i) {
        const double clearance = world.passages[i].clearance;
        if (clearance < least || clearance * rise >= cap) continue;
        Slope slope = slope_from(world.passages, i, rise * clearance);
        if (slope.top == Slope::none || slope.corners.empty()) continue;
        ++bent;
        const Point from = world.passages[i].at, to = world.passages[slope.top].at;
        const std::uint32_t added = world.passages.add(i, slope.top, slope.clearance, std::move(slope.corners));
        EXPECT_TRUE(world.passages.was_added(added));
        EXPECT_GE(world.passages.way(added, i, from, to, {slope.clearance}).clearance, slope.clearance * (1 - 1e-9));
        EXPECT_GE(world.passages.way(added, slope.top, to, from, {slope.clearance}).clearance, slope.clearance * (1 - 1e-9));
    }
    EXPECT_GT(bent, 4U);
    world.passages.list_by_stand();
    std::size_t listed = 0;
    for (std::uint32_t i = 0; i < stands; ++i) {
        listed += static_cast<std::size_t>(
            std::ranges::count_if(world.passages.of(i), [&](std::uint32_t p) { return world.passages.was_added(p); }));
    }
    EXPECT_EQ(listed, 2 * bent);
}

}  // namespace
}  // namespace seamward::test
