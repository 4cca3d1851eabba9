// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/gap_ruler.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/exchange/sample_parts.h"

namespace seamward::test {
namespace {

constexpr GapIndex seam{0};
/// Boxes list the triangles of their sides in this order.
const std::vector<std::size_t> low_x{0, 1}, high_x{2, 3}, high_y{6, 7};

/// Two boxes side by side along x, their near sides that far apart.
std::vector<Part> two_boxes(double apart) {
    std::vector<Part> parts{part_of("left", box({19.1, 0.3, 0.7}, {20.3, 1.3, 2.7})),
                            part_of("right", box({20.3 + apart, 0.3, 0.7}, {21.9, 1.3, 2.7}))};
    bind(parts[0], seam, high_x);
    bind(parts[1], seam, low_x);
    return parts;
}

TEST(GapRuler, MeasuresASlotExactly) {
    for (const double apart : {0.5, 0.0127, 0.0003175, 1e-5}) {
        const MeasuredWidth width = clear_width_between(two_boxes(apart), seam);
        EXPECT_NEAR(width.smallest, apart, 1e-12);
        EXPECT_EQ(width.samples, 4 * 19U);
        EXPECT_EQ(width.hits, width.samples);
    }
}

TEST(GapRuler, FacesThatTouchAreNoWidthApart) {
    EXPECT_EQ(clear_width_between(two_boxes(0), seam).smallest, 0);
    // Three boxes: what lies behind the one that touches is not what is seen.
    std::vector<Part> parts = two_boxes(0.4);
    parts.push_back(part_of("plug", box({20.3, 0.3, 0.7}, {20.4, 1.3, 2.7})));
    EXPECT_EQ(clear_width_between(parts, seam).smallest, 0);
}

TEST(GapRuler, SeesPartsThatBoundNoGap) {
    std::vector<Part> parts = two_boxes(0.1);
    parts.push_back(part_of("pipe", box({20.32, 0.5, 0.7}, {20.38, 0.9, 2.7})));
    const MeasuredWidth width = clear_width_between(parts, seam);
    EXPECT_NEAR(width.smallest, 0.02, 1e-12);
    EXPECT_EQ(width.hits, width.samples);
}

TEST(GapRuler, LooksAsFarAsItReachesAndNoFarther) {
    EXPECT_EQ(clear_width_between(two_boxes(0.601), seam).hits, 0U);
    EXPECT_TRUE(std::isinf(clear_width_between(two_boxes(0.601), seam).smallest));
    EXPECT_NEAR(clear_width_between(two_boxes(0.599), seam).smallest, 0.599, 1e-12);
    std::vector<Part> alone{two_boxes(0.1).front()};
    const MeasuredWidth width = clear_width_between(alone, seam);
    EXPECT_EQ(width.hits, 0U);
    EXPECT_EQ(width.samples, 2 * 19U);
    EXPECT_EQ(clear_width_between(two_boxes(0.1), GapIndex{1}).samples, 0U);
    EXPECT_EQ(clear_width_between(two_boxes(0.1), GapIndex{}).samples, 0U);
    EXPECT_EQ(clear_width_between({}, seam).samples, 0U);
}

/// Looks outward: a face that bounds a gap at the wrong side measures something else.
TEST(GapRuler, LooksOutward) {
    std::vector<Part> parts = two_boxes(0.1);
    parts[0].bounds.assign(12, GapIndex{});
    parts[1].bounds.assign(12, GapIndex{});
    bind(parts[0], seam, high_y);
    EXPECT_EQ(clear_width_between(parts, seam).hits, 0U);
    std::vector<Part> inside_out = two_boxes(0.1);
    inside_out[0].mesh = turned(inside_out[0].mesh);
    inside_out[1].bounds.assign(12, GapIndex{});
    EXPECT_EQ(clear_width_between(inside_out, seam).hits, 0U);  // its far side is 1.2 m away
}

/// A wedge: the narrow end counts, to a thousandth of the difference.
TEST(GapRuler, FindsTheNarrowEnd) {
    std::vector<Part> parts = two_boxes(0.1);
    for (Point& point : parts[1].mesh.points) {
        if (point.x < 21 && point.z < 1) point.x -= 0.08;
    }
    EXPECT_NEAR(clear_width_between(parts, seam).smallest, 0.02, 0.08 * 0.003);
}

/// A pipe of many sides in a square hole; the hole is in one part, which sees itself where there is no pipe.
TEST(GapRuler, MeasuresAroundAPipeAndWithinOnePart) {
    Part wall = part_of("wall", tube({0, 0, 0}, {0.5, 0.5, 0.1}, 0.2));
    bind(wall, seam, {2, 3, 10, 11, 18, 19, 26, 27});
    EXPECT_NEAR(clear_width_between(std::vector{wall}, seam).smallest, 0.1, 1e-12);
    Part pipe = part_of("pipe", {});
    constexpr int sides = 48;
    constexpr double radius = 0.04;
    for (int i = 0; i < sides; ++i) {
        const double angle = 2 * std::numbers::pi * i / sides;
        for (const double z : {-1.0, 1.0})
            pipe.mesh.points.push_back({0.25 + radius * std::cos(angle), 0.25 + radius * std::sin(angle), z});
    }
    for (std::uint32_t i = 0; i < sides; ++i) {
        const std::uint32_t a = 2 * i, b = 2 * ((i + 1) % sides);
        pipe.mesh.triangles.push_back({a, b, b + 1});
        pipe.mesh.triangles.push_back({a, b + 1, a + 1});
    }
    pipe.bounds.assign(pipe.mesh.triangles.size(), seam);
    const MeasuredWidth width = clear_width_between(std::vector{wall, pipe}, seam);
    EXPECT_NEAR(width.smallest, 0.01, 0.0003);
    EXPECT_GT(width.hits, 0U);
    EXPECT_LT(width.hits, width.samples);  // the pipe is longer than the wall is thick
}

TEST(GapRuler, FlatTrianglesAreNeitherLookedFromNorSeen) {
    std::vector<Part> parts = two_boxes(0.1);
    const auto flat = static_cast<std::uint32_t>(parts[1].mesh.points.size());
    for (const double y : {0.4, 0.5, 0.6}) parts[1].mesh.points.push_back({20.32, y, 1.7});
    parts[1].mesh.triangles.push_back({flat, flat + 1, flat + 2});
    parts[1].bounds.push_back(seam);
    const MeasuredWidth width = clear_width_between(parts, seam);
    EXPECT_NEAR(width.smallest, 0.1, 1e-12);
    EXPECT_EQ(width.samples, 4 * 19U);
}

TEST(GapRuler, OneRulerMeasuresAllGapsOfAHouse) {
    const SampleHouse house = sample_house();
    const GapRuler ruler(house.parts);
    EXPECT_NEAR(ruler.width_of(GapIndex{0}).smallest, 0.01, 1e-12);
    EXPECT_NEAR(ruler.width_of(GapIndex{1}).smallest, 0.6 - 2 * 0.07, 1e-12);
}

}  // namespace
}  // namespace seamward::test
