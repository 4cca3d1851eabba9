// SPDX-License-Identifier: GPL-3.0-or-later
// Each rule of docs/catalog.md, "When an animal passes", at its boundary: it just passes, and a micrometer less just does not.
#include "catalog/passage.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/support/brute_force.h"
#include "tests/support/random_survey.h"

namespace seamward::test {
namespace {

constexpr double mm = 0.001;
constexpr double just = 1e-6;  // a micrometer
constexpr double pi = 3.14159265358979323846;

/// Slit 3 mm, hole 8 mm.
constexpr PassageSize roach{3 * mm, 8 * mm};

TEST(Passage, OfASlotNeedsItsWidthAndItsLength) {
    EXPECT_TRUE(passes(roach, Slot{3 * mm, 8 * mm}));
    EXPECT_FALSE(passes(roach, Slot{3 * mm - just, 8 * mm}));
    EXPECT_FALSE(passes(roach, Slot{3 * mm, 8 * mm - just}));
    EXPECT_TRUE(passes(roach, Slot{3 * mm, 9}));
    EXPECT_FALSE(passes(roach, Slot{3 * mm - just, 9}));
    EXPECT_FALSE(passes(roach, Slot{9, 8 * mm - just}));
}

TEST(Passage, OfAHoleNeedsItsDiameter) {
    EXPECT_TRUE(passes(roach, Hole{8 * mm}));
    EXPECT_FALSE(passes(roach, Hole{8 * mm - just}));
    EXPECT_TRUE(passes(roach, Hole{80 * mm}));
}

/// A ring is a slot as long as its mid circumference pi (around + width).
TEST(Passage, OfARingNeedsItsWidthAndItsMidCircumference) {
    EXPECT_TRUE(passes(roach, Ring{3 * mm, 22 * mm}));
    EXPECT_FALSE(passes(roach, Ring{3 * mm - just, 22 * mm}));
    const PassageSize flat{1 * mm, 10 * mm};
    const double around = 10 * mm / pi - 1 * mm;
    EXPECT_TRUE(passes(flat, Ring{1 * mm, around + just}));
    EXPECT_FALSE(passes(flat, Ring{1 * mm, around - just}));
    EXPECT_TRUE(passes(flat, Ring{2 * mm, around - 1 * mm + just}));
    EXPECT_TRUE(passes({1 * mm, pi * mm}, Ring{1 * mm, 0}));
    EXPECT_FALSE(passes({1 * mm, pi * mm + just}, Ring{1 * mm, 0}));
}

/// sqrt((3^2 + 4^2) / 2) = 3.5355...; 7 and 1 give exactly 5.
TEST(Passage, OfAMeshNeedsTheDiagonalOfAnEllipse) {
    EXPECT_TRUE(passes({3 * mm, 4 * mm}, Mesh{3.5356 * mm}));
    EXPECT_FALSE(passes({3 * mm, 4 * mm}, Mesh{3.5355 * mm}));
    EXPECT_TRUE(passes({1 * mm, 7 * mm}, Mesh{5 * mm}));
    EXPECT_FALSE(passes({1 * mm, 7 * mm}, Mesh{5 * mm - just}));
    EXPECT_TRUE(passes({6 * mm, 6 * mm}, Mesh{6 * mm}));
    EXPECT_FALSE(passes({6 * mm, 6 * mm}, Mesh{6 * mm - just}));
}

TEST(Passage, OfAMeshDoesNotDependOnItsAreaUnlessThatIsNothing) {
    EXPECT_TRUE(passes(roach, Mesh{10 * mm}));
    EXPECT_TRUE(passes(roach, Mesh{10 * mm, 1e-9}));
    EXPECT_TRUE(passes(roach, Mesh{10 * mm, 1}));
    EXPECT_FALSE(passes(roach, Mesh{10 * mm, 0}));
}

TEST(Passage, OfAShutOpeningIsNone) {
    const PassageSize nothing{0, 0};
    for (const Shape& shape :
         {Shape(Slot{0, 9}), Shape(Slot{1 * mm, 0}), Shape(Hole{0}), Shape(Ring{0, 22 * mm}), Shape(Mesh{0, 0.01})}) {
        EXPECT_FALSE(passes(nothing, shape)) << shape_word(shape);
        EXPECT_FALSE(passes(roach, shape)) << shape_word(shape);
    }
    EXPECT_TRUE(passes(nothing, Hole{1e-9}));
}

/// Sums such as 1.2 mm + 0.3 mm are a little off 1.5 mm in binary fractions.
TEST(Passage, IsNotDecidedByRounding) {
    for (int i = 1; i < 100; ++i) {
        for (int j = 1; j < 100; ++j) {
            const double width = i * 0.0001 + j * 0.0001;
            const double size = (i + j) / 10000.0;
            ASSERT_TRUE(passes({size, size}, Slot{width, 1})) << i << " + " << j;
            ASSERT_TRUE(passes({size, size}, Hole{width})) << i << " + " << j;
            ASSERT_TRUE(passes({size, size}, Mesh{width})) << i << " + " << j;
            ASSERT_FALSE(passes({size + 1e-9, size + 1e-9}, Hole{width})) << i << " + " << j;
        }
    }
}

TEST(Passage, NeverEndsWhenAnOpeningGrows) {
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        const Survey survey = random_survey({.gaps = 20, .shapes = true}, seed);
        for (const Gap& gap : survey.gaps) {
            for (const double slit : {0.7 * mm, 3 * mm, 12 * mm}) {
                const PassageSize size{slit, 1.7 * slit};
                ASSERT_TRUE(!passes(size, gap.shape) || passes(size, widened(gap.shape, just))) << gap.id << " of seed " << seed;
            }
        }
    }
}

/// The same rule written down anew in millimeters (tests/support/brute_force.h).
TEST(Passage, AgreesWithASecondOpinion) {
    std::size_t open = 0;
    std::size_t all = 0;
    for (std::uint64_t seed = 0; seed < 500; ++seed) {
        const Survey survey = random_survey({.gaps = 20, .shapes = true}, seed);
        for (const Gap& gap : survey.gaps) {
            for (const PassageSize& size :
                 {PassageSize{0.76 * mm, 2 * mm}, roach, PassageSize{6 * mm, 6 * mm}, PassageSize{6.35 * mm, 12.7 * mm}}) {
                Pest pest;
                pest.size = size;
                ASSERT_EQ(passes(size, gap.shape), gets_through(gap, pest, false)) << gap.id << " of seed " << seed;
                ASSERT_EQ(passes(size, widened(gap.shape, gap.evidence.plus_minus)), gets_through(gap, pest, true))
                    << gap.id << " of seed " << seed;
                open += passes(size, gap.shape) ? 1U : 0U;
                ++all;
            }
        }
    }
    EXPECT_GT(open, all / 10);
    EXPECT_LT(open, all * 9 / 10);
}

}  // namespace
}  // namespace seamward::test
