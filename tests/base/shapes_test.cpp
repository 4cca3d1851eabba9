// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/shapes.h"

#include <gtest/gtest.h>

namespace seamward::test {
namespace {

TEST(ClearWidth, IsTheOneNumberOfEachShape) {
    EXPECT_EQ(clear_width(Slot{0.0012, 9}), 0.0012);
    EXPECT_EQ(clear_width(Hole{0.005}), 0.005);
    EXPECT_EQ(clear_width(Ring{0.0025, 0.022}), 0.0025);
    EXPECT_EQ(clear_width(Mesh{0.0057, 0.01}), 0.0057);
    EXPECT_EQ(clear_width(Slot{9, 0.0012}), 9);
}

TEST(Widened, ChangesTheClearWidthAlone) {
    const auto slot = std::get<Slot>(widened(Slot{0.001, 9}, 0.0002));
    EXPECT_EQ(slot.width, 0.001 + 0.0002);
    EXPECT_EQ(slot.length, 9);
    EXPECT_EQ(std::get<Hole>(widened(Hole{0.005}, 0.001)).diameter, 0.005 + 0.001);
    const auto ring = std::get<Ring>(widened(Ring{0.0025, 0.022}, 0.0005));
    EXPECT_EQ(ring.width, 0.0025 + 0.0005);
    EXPECT_EQ(ring.around, 0.022);
    const auto mesh = std::get<Mesh>(widened(Mesh{0.0057, 0.01}, 0.0001));
    EXPECT_EQ(mesh.opening, 0.0057 + 0.0001);
    EXPECT_EQ(mesh.area, 0.01);
}

TEST(Widened, NeverGoesBelowNothing) {
    EXPECT_EQ(clear_width(widened(Slot{0.001, 9}, -0.0004)), 0.001 - 0.0004);
    EXPECT_EQ(clear_width(widened(Slot{0.001, 9}, -0.002)), 0);
    EXPECT_EQ(clear_width(widened(Hole{0}, 0)), 0);
}

TEST(IsShut, WhenASizeThatMustBePositiveIsNothing) {
    EXPECT_TRUE(is_shut(Slot{0, 9}));
    EXPECT_TRUE(is_shut(Slot{0.001, 0}));
    EXPECT_TRUE(is_shut(Hole{0}));
    EXPECT_TRUE(is_shut(Ring{0, 0.022}));
    EXPECT_TRUE(is_shut(Mesh{0, 0.01}));
    EXPECT_FALSE(is_shut(Slot{0.001, 9}));
    EXPECT_FALSE(is_shut(Hole{1e-9}));
    EXPECT_FALSE(is_shut(Ring{0.001, 0}));  // around nothing: a slot as long as pi x width
    EXPECT_TRUE(is_shut(Mesh{0.0057, 0}));
    EXPECT_FALSE(is_shut(Mesh{0.0057}));  // its area was not stated
}

TEST(MidCircumference, IsPiTimesAroundPlusWidth) {
    EXPECT_DOUBLE_EQ(mid_circumference(Ring{0.0025, 0.022}), 3.14159265358979323846 * 0.0245);
    EXPECT_DOUBLE_EQ(mid_circumference(Ring{0.001, 0}), 3.14159265358979323846 * 0.001);
}

TEST(ShapeWord, IsTheWordOfTheJobFile) {
    EXPECT_STREQ(shape_word(Slot{}), "slot");
    EXPECT_STREQ(shape_word(Hole{}), "hole");
    EXPECT_STREQ(shape_word(Ring{}), "ring");
    EXPECT_STREQ(shape_word(Mesh{}), "mesh");
}

}  // namespace
}  // namespace seamward::test
