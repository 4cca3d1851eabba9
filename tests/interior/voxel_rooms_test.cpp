// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/voxel_rooms.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

double uniform(std::mt19937& engine) { return static_cast<double>(engine()) / 4294967295.0; }

/// Distance to a triangle by nested bisection of its two coordinates: convex in both.
double slow_distance(const Point& p, const Point& a, const Point& b, const Point& c) {
    const auto along = [](auto&& f) {
        double low = 0, high = 1;
        for (int i = 0; i < 100; ++i) {
            const double one = low + (high - low) / 3, other = high - (high - low) / 3;
            (f(one) < f(other) ? high : low) = f(one) < f(other) ? other : one;
        }
        return f(low);
    };
    return along([&](double s) {
        const Point on = b + (c - b) * s;
        return along([&](double t) { return length(a + (on - a) * t - p); });
    });
}

TEST(TriangleDistance, AgreesWithSearchInEveryTriangle) {
    std::mt19937 engine(7);
    const auto point = [&] { return Point{uniform(engine), uniform(engine), uniform(engine)}; };
    ModelPart part;
    for (std::uint32_t i = 0; i < 20; ++i) {
        for (int k = 0; k < 3; ++k) part.mesh.points.push_back(point());
        part.mesh.triangles.push_back({3 * i, 3 * i + 1, 3 * i + 2});
    }
    const TriangleDistance distance(std::vector{part});
    for (int i = 0; i < 30; ++i) {
        const Point p = point();
        double least = 1e9;
        for (const auto& [a, b, c] : part.mesh.triangles) {
            least = std::min(least, slow_distance(p, part.mesh.points[a], part.mesh.points[b], part.mesh.points[c]));
        }
        EXPECT_NEAR(distance.to(p, 1e9), least, 1e-7);
        EXPECT_EQ(distance.to(p, least / 2), least / 2);
    }
}

TEST(VoxelRooms, TellInsideFromOutside) {
    const TriangleMesh room = hollow_block({{0, 0, 0}, {1, 1, 1}}, 0.1, {{{}, {}, {rectangle(0.4, 0.4, 0.6, 0.6)}, {}, {}, {}}});
    EXPECT_FALSE(is_in_solid(room, {0.5, 0.5, 0.5}));
    EXPECT_TRUE(is_in_solid(room, {0.2, -0.05, 0.2}));
    EXPECT_FALSE(is_in_solid(room, {0.5, -0.05, 0.5}));
    EXPECT_FALSE(is_in_solid(room, {2, 2, 2}));
}

/// Two blocks with a slot of 10 mm between them.
TEST(VoxelRooms, BracketASlot) {
    std::vector<ModelPart> parts(2);
    parts[0].mesh = block({-0.5, -0.05, -0.5}, {0.5, 0, 0});
    parts[1].mesh = block({-0.5, -0.05, 0.01}, {0.5, 0, 0.5});
    const Box box{{-1e-5, -0.07, -0.003}, {1e-5, 0.02, 0.0131}};
    const Point from{0, -0.065, 0.005}, to{0, 0.015, 0.005};
    const VoxelRooms rooms(parts, box, 2e-5);
    EXPECT_EQ(rooms.judge(from, to, 0.0099), Passage::joined);
    EXPECT_EQ(rooms.judge(from, to, 0.0101), Passage::apart);
    const WidthBracket bracket = rooms.widest_between(from, to, 0.02, 0.005);
    EXPECT_LE(bracket.low, 0.01);
    EXPECT_GE(bracket.high, 0.01);
    EXPECT_LE(bracket.high - bracket.low, 0.0005);
    // Too coarse to say.
    EXPECT_EQ(VoxelRooms(parts, box, 1e-3).judge(from, to, 0.0099), Passage::unsettled);
    EXPECT_EQ(VoxelRooms(parts, box, 1e-3).judge(from, to, 0.0101), Passage::unsettled);
}

TEST(VoxelRooms, NothingPassesWhereSolidsTouch) {
    std::vector<ModelPart> parts(2);
    parts[0].mesh = block({-0.5, -0.05, -0.5}, {0.5, 0, 0});
    parts[1].mesh = block({-0.5, -0.05, 0}, {0.5, 0, 0.5});
    const VoxelRooms rooms(parts, {{-0.001, -0.07, -0.01}, {0.001, 0.02, 0.01}}, 5e-5);
    EXPECT_EQ(rooms.judge({0, -0.065, 0}, {0, 0.015, 0}, 0.0003), Passage::apart);
}

}  // namespace
}  // namespace seamward::test
