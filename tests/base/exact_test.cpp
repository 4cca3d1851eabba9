// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/exact.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <string>

#include "tests/support/nearest_double.h"

namespace seamward::test {
namespace {

double value(std::string_view text) {
    const std::optional<Exact> taken = take_decimal(text);
    return taken ? taken->to_double() : NAN;
}

std::string_view left_over(std::string_view text) {
    (void)take_decimal(text);
    return text;
}

TEST(TakeDecimal, ReadsDecimals) {
    EXPECT_EQ(value("0"), 0);
    EXPECT_EQ(value("12"), 12);
    EXPECT_EQ(value(".5"), 0.5);
    EXPECT_EQ(value("1.25"), 1.25);
    EXPECT_EQ(value("2e-3"), 0.002);
    EXPECT_EQ(value("2E+3"), 2000);
    EXPECT_EQ(value("0.1"), 0.1);
    EXPECT_EQ(value("000.3"), 0.3);
    EXPECT_EQ(value("4.35"), 4.35);
}

TEST(TakeDecimal, TakesTheNumberAndNoMore) {
    EXPECT_EQ(left_over("12 mm"), " mm");
    EXPECT_EQ(left_over("1.5.2"), ".2");
    EXPECT_EQ(left_over("3em"), "em");
    EXPECT_EQ(left_over("3e"), "e");
    EXPECT_EQ(left_over("3e-x"), "e-x");
    EXPECT_EQ(left_over("2e-3m"), "m");
    EXPECT_EQ(left_over("1/16"), "/16");
}

TEST(TakeDecimal, FindsNoNumberInOtherText) {
    for (const char* text : {"", ".", "-1", "+1", "x1", " 1", "e5", ".e5", "/2"}) {
        std::string_view rest = text;
        EXPECT_FALSE(take_decimal(rest)) << text;
        EXPECT_EQ(rest, text);
    }
}

TEST(TakeDecimal, HasNoTroubleWithHugeExponents) {
    EXPECT_EQ(value("1e999"), std::numeric_limits<double>::infinity());
    EXPECT_EQ(value("1e99999999999999999999"), std::numeric_limits<double>::infinity());
    EXPECT_EQ(value("1e-999"), 0);
    EXPECT_EQ(value("1e-99999999999999999999"), 0);
    EXPECT_EQ(value("0e99999999999999999999"), 0);
    EXPECT_EQ(value('0' + std::string(5000, '0') + "7"), 7);
    EXPECT_EQ(value("0." + std::string(400, '0') + "7e401"), 7);
    EXPECT_EQ(value("7" + std::string(400, '0') + "e-400"), 7);
}

TEST(TakeDecimal, KeepsEighteenDigits) {
    EXPECT_EQ(value("0.123456789012345678"), 0.123456789012345678);
    EXPECT_EQ(value("123456789.123456789"), 123456789.123456789);
    EXPECT_NEAR(value("1.00000000000000000000000001"), 1, 1e-17);
    EXPECT_EQ(value("1" + std::string(30, '0')), 1e30);
}

TEST(Exact, SixteenthOfAnInchIsAFiniteDecimal) {
    const Exact sixteenth = scaled(divided(Exact{1, 0, 1}, 16), 254, -4);
    EXPECT_EQ(sixteenth.divisor, 1U);
    EXPECT_EQ(sixteenth.to_double(), 0.0015875);
}

TEST(Exact, CommonFactorsCancel) {
    const Exact third_of_a_foot = scaled(divided(Exact{1, 0, 1}, 3), 3048, -4);
    EXPECT_EQ(third_of_a_foot.divisor, 1U);
    EXPECT_EQ(third_of_a_foot.to_double(), 0.1016);
    const Exact two_sixths = divided(Exact{2, 0, 1}, 6);
    EXPECT_EQ(two_sixths.divisor, 3U);
    EXPECT_EQ(two_sixths.to_double(), 2.0 / 6.0);
}

/// The divisor has no factor in common with the numerator, nor with 10.
TEST(Exact, FormIsTheSmallest) {
    for (unsigned above = 1; above <= 60; ++above) {
        for (unsigned below = 1; below <= 60; ++below) {
            const Exact x = divided(Exact{above, 0, 1}, below);
            EXPECT_NE(x.divisor % 2, 0U) << above << '/' << below;
            EXPECT_NE(x.divisor % 5, 0U) << above << '/' << below;
            for (std::uint64_t p = 3; p <= x.divisor; ++p)
                EXPECT_FALSE(x.divisor % p == 0 && x.mantissa % p == 0) << above << '/' << below;
            EXPECT_EQ(x.to_double(), nearest_double(above, below)) << above << '/' << below;
        }
    }
}

/// Halfway between two doubles and a third more: the digits that fit end exactly halfway, and what is cut off decides.
/// Lengths and areas within their limits never come to that; the number itself can.
TEST(Exact, WhatIsCutOffDecidesAHalf) {
    constexpr Exact::Wide half = ((Exact::Wide{1} << 53U) + 1) << 62U;
    EXPECT_EQ((Exact{half, 0, 1}).to_double(), std::ldexp(1.0, 115));  // to even
    EXPECT_EQ((Exact{3 * half + 1, 0, 3}).to_double(), std::ldexp(1.0, 115) + std::ldexp(1.0, 63));
}

TEST(Exact, SumsAreExact) {
    const auto tenths = [](unsigned n) { return Exact{n, -1, 1}; };
    EXPECT_EQ(sum(tenths(1), tenths(2)).to_double(), 0.3);  // binary fractions give 0.30000000000000004
    EXPECT_EQ(sum(divided(Exact{1, 0, 1}, 3), divided(Exact{1, 0, 1}, 6)).to_double(), 0.5);
    EXPECT_EQ(sum(Exact{12, 0, 1}, divided(Exact{1, 0, 1}, 16)).to_double(), 12.0625);
    EXPECT_EQ(sum(Exact{}, tenths(7)).to_double(), 0.7);
    EXPECT_EQ(sum(tenths(7), Exact{}).to_double(), 0.7);
    EXPECT_EQ(sum(tenths(3), Exact{5, 3, 1}).to_double(), 5000.3);
}

TEST(Exact, SumsOfFarApartTermsAreTheNearestDouble) {
    EXPECT_EQ(sum(Exact{1, 0, 1}, Exact{1, -40, 1}).to_double(), 1);
    EXPECT_EQ(sum(Exact{1, 40, 1}, Exact{1, 0, 1}).to_double(), 1e40);
    EXPECT_EQ(sum(Exact{123456789012345678ULL, 0, 1}, Exact{1, -9, 1}).to_double(), 123456789012345678.0);
}

/// What is out of the range of doubles stays so when something is added.
TEST(Exact, SumsDoNotLoseWhatIsOutOfRange) {
    EXPECT_EQ(sum(Exact{1, 400, 1}, Exact{6, 0, 1}).to_double(), std::numeric_limits<double>::infinity());
    EXPECT_EQ(sum(Exact{6, 0, 1}, Exact{1, 9000, 1}).to_double(), std::numeric_limits<double>::infinity());
}

TEST(Exact, SmallWholesCanStandInFractions) {
    EXPECT_TRUE((Exact{1, 0, 1}).is_small_whole());
    EXPECT_TRUE((Exact{1'000'000'000, 0, 1}).is_small_whole());
    EXPECT_FALSE((Exact{1'000'000'001, 0, 1}).is_small_whole());
    EXPECT_FALSE((Exact{15, -1, 1}).is_small_whole());
    EXPECT_FALSE((Exact{1, 0, 3}).is_small_whole());
}

}  // namespace
}  // namespace seamward::test
