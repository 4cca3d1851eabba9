// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/camera.h"

#include <gtest/gtest.h>

#include <numbers>

#include "tests/provisions/made_audit.h"

namespace seamward::test {

namespace {

const AxisBox house{{-5, -4, -0.3}, {5, 4, 6}};

bool is_inside(const Point& at, const AxisBox& box) {
    return at.x > box.low.x && at.x < box.high.x && at.y > box.low.y && at.y < box.high.y && at.z < box.high.z;
}

/// Degrees between where the camera looks and a point.
double off_axis(const Camera& camera, const Point& at) {
    const Vector to = at - camera.from;
    return std::acos(std::min(1.0, dot(to, camera.toward) / length(to))) * 180 / std::numbers::pi;
}

void expect_upright(const Camera& camera) {
    EXPECT_NEAR(length(camera.toward), 1, 1e-9);
    EXPECT_NEAR(length(camera.up), 1, 1e-9);
    EXPECT_NEAR(dot(camera.toward, camera.up), 0, 1e-9);
    EXPECT_GT(camera.up.z, 0);
    EXPECT_NEAR(cross(camera.toward, camera.up).z, 0, 1e-9) << "the horizon is level";
}

TEST(Camera, LooksAtThePlaceFromOutsideOfTheBuilding) {
    RandomAudit random(7);
    for (int i = 0; i < 3000; ++i) {
        SCOPED_TRACE(i);
        Sight sight{{random.between(-6, 6), random.between(-5, 5), random.between(-0.2, 7)}, 0.5, false, {}, {}};
        if (random.chance(2)) sight.outward = Vector{random.between(-3, 3), random.between(-3, 3), random.between(-3, 3)};
        const Camera camera = camera_for(sight, house);
        EXPECT_FALSE(is_inside(camera.from, house));
        EXPECT_GE(camera.from.z, std::min(sight.middle.z, house.low.z + 0.5)) << "above the ground";
        EXPECT_NEAR(off_axis(camera, sight.middle), 0, 1e-4);
        EXPECT_GE(distance(camera.from, sight.middle), 2);
        expect_upright(camera);
        if (camera.cut) {
            EXPECT_GT(dot(camera.from - camera.cut->at, camera.cut->toward), 0) << "the camera's side is taken away";
            EXPECT_LT(dot(sight.middle - camera.cut->at, camera.cut->toward), -0.4) << "the place is not";
        }
    }
}

TEST(Camera, HoldsAllOfAWay) {
    RandomAudit random(11);
    for (int i = 0; i < 3000; ++i) {
        SCOPED_TRACE(i);
        Sight sight{{random.between(-6, 6), random.between(-5, 5), random.between(0, 6)}, random.between(0, 9), true, {}, {}};
        if (random.chance(2)) sight.outward = Vector{random.between(-3, 3), random.between(-3, 3), 0};
        if (random.chance(2)) sight.entry = Point{random.between(-6, 6), random.between(-5, 5), 0};
        const Camera camera = camera_for(sight, random.chance(2) ? std::optional(house) : std::nullopt);
        expect_upright(camera);
        EXPECT_FALSE(camera.cut);
        // A point of the ball that is seen farthest off the middle.
        const double angle = std::asin(sight.radius / distance(camera.from, sight.middle)) * 180 / std::numbers::pi;
        EXPECT_LT(angle, Camera::field_of_view / 2);
    }
}

TEST(Camera, StandsWhereOneLooksFrom) {
    const auto from = [](Vector outward) { return camera_for({{0, -4, 2}, 0.5, false, outward, {}}, house).from; };
    EXPECT_LT(from({0, -1, 0}).y, -5);
    EXPECT_GT(from({0, 1, 0}).y, 4.8) << "a recess may face the other way";
    EXPECT_GT(from({0, 0, 1}).z, 3) << "a roof from above";
    EXPECT_LT(from({0, 0, -1}).z, 2) << "a soffit from below";
    EXPECT_GT(camera_for({{4.9, 0, 1}, 0.5, false, {}, {}}, house).from.x, 6) << "of four sides the nearest";
    EXPECT_LT(camera_for({{-4.9, 0, 1}, 0.5, false, {}, {}}, house).from.x, -6);
    EXPECT_TRUE(camera_for({{0, 0, 1}, 0.5, false, {}, {}}, house).cut) << "deep within";
    EXPECT_TRUE(camera_for({{0, -4, 2}, 0.5, false, Vector{0, 1, 0}, {}}, house).cut) << "across all of the house";
    EXPECT_FALSE(camera_for({{0, -4, 2}, 0.5, false, Vector{0, -1, 0}, {}}, house).cut) << "on its face";
    EXPECT_FALSE(camera_for({{4, 0, 1}, 0.5, false, {}, {}}, house).cut) << "behind eaves of 1 m";
}

}  // namespace

}  // namespace seamward::test
