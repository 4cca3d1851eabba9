// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"

#include <gtest/gtest.h>

#include <cmath>

namespace seamward::test {
namespace {

struct Sized {
    const char* text;
    double value;
};

double length(const char* text) { return parse_length(text).value.value_or(NAN); }

TEST(Length, IsTheSameDoubleWhateverTheUnit) {
    EXPECT_EQ(length("1/16 in"), 0.0015875);
    EXPECT_EQ(length("1.5875 mm"), 0.0015875);
    EXPECT_EQ(length("0.15875 cm"), 0.0015875);
    EXPECT_EQ(length("0.0625 in"), 0.0015875);
    EXPECT_EQ(length("1/192 ft"), 0.0015875);
    EXPECT_EQ(length("0.0015875 m"), 0.0015875);
    EXPECT_EQ(length("2/32\""), 0.0015875);
}

/// Expected meters are literals: the compiler rounds them once, from the exact decimal.
TEST(Length, ReadsWhatPeopleWrite) {
    constexpr Sized table[] = {
        // One number and a unit.
        {"0 mm", 0},
        {"1 mm", 0.001},
        {"0.9 mm", 0.0009},
        {"1.2 mm", 0.0012},
        {"0.50 mm", 0.0005},
        {"22 mm", 0.022},
        {"007 mm", 0.007},
        {"0.000001 mm", 1e-9},
        {"25 cm", 0.25},
        {"2.4 m", 2.4},
        {"9 m", 9},
        {"100000 m", 100000},
        {"1 in", 0.0254},
        {"1\"", 0.0254},
        {"0.030 in", 0.000762},
        {"0.053 in", 0.0013462},
        {"1 ft", 0.3048},
        {"1'", 0.3048},
        {"8.5 ft", 2.5908},
        // Fractions and mixed numbers.
        {"3/8\"", 0.009525},
        {"3/8 in", 0.009525},
        {"1/64 in", 0.000396875},
        {"33/64 in", 0.013096875},
        {"63/64 in", 0.025003125},
        {"64/64 in", 0.0254},
        {"10/16 in", 0.015875},
        {"0/16 in", 0},
        {"1 1/2 in", 0.0381},
        {"1-1/2 in", 0.0381},
        {"1  1/2 in", 0.0381},
        {"6-3/4\"", 0.17145},
        {"1 5/8 in", 0.041275},
        {"1/2 ft", 0.1524},
        {"1/3 ft", 0.1016},
        {"2/3 ft", 0.2032},
        {"1 1/3 ft", 0.4064},
        {"1/4 m", 0.25},
        {"3/4 mm", 0.00075},
        // Several terms, from the larger unit to the smaller.
        {"12 ft 6 in", 3.81},
        {"12' 6\"", 3.81},
        {"12'6\"", 3.81},
        {"12ft 6in", 3.81},
        {"12 ft 0 in", 3.6576},
        {"5' 11 3/4\"", 1.82245},
        {"5'11-3/4\"", 1.82245},
        {"8 ft 1 1/16 in", 2.4653875},
        {"0 ft 7 in", 0.1778},
        {"1 m 20 cm", 1.2},
        {"1 m 20 cm 5 mm", 1.205},
        // Decimal notations and spacing.
        {".5 in", 0.0127},
        {"1e-3 m", 0.001},
        {"2.5E1 mm", 0.025},
        {"1e+2 mm", 0.1},
        {"+3 mm", 0.003},
        {"  3 mm  ", 0.003},
        {"3mm", 0.003},
        {"3\tmm", 0.003},
    };
    for (const Sized& row : table) EXPECT_EQ(length(row.text), row.value) << row.text;
}

TEST(Length, ZeroHasNoSign) {
    for (const char* text : {"0 mm", "-0 mm", "-0.000 in", "0 ft 0 in", "0/16 in"}) {
        EXPECT_EQ(length(text), 0) << text;
        EXPECT_FALSE(std::signbit(length(text))) << text;
    }
}

/// An inch is 25.4 mm exactly; to two decimals of a millimeter.
TEST(Length, AgreesWithTheTableOfConversions) {
    constexpr Sized table[] = {{"1/16 in", 1.59},   {"1/8 in", 3.18},    {"3/16 in", 4.76},  {"1/4 in", 6.35},  {"3/8 in", 9.53},
                               {"1/2 in", 12.70},   {"5/8 in", 15.88},   {"3/4 in", 19.05},  {"7/8 in", 22.23}, {"1 in", 25.40},
                               {"1-1/4 in", 31.75}, {"1-1/2 in", 38.10}, {"1-5/8 in", 41.28}};
    constexpr double half_of_the_last_digit = 0.005 + 1e-12;
    for (const Sized& row : table) EXPECT_NEAR(length(row.text) * 1000, row.value, half_of_the_last_digit) << row.text;
}

/// Sizes of walls and houses are the same lengths; only what a message proposes differs.
TEST(Distance, IsALengthWhoseFixIsInMeters) {
    EXPECT_EQ(parse_distance("9 m").value, 9);
    EXPECT_EQ(parse_distance("1/16 in").value, 0.0015875);
    EXPECT_FALSE(parse_distance("-1 m"));
    EXPECT_NE(parse_distance("9").fault.mend.find("9 m"), std::string::npos);
    EXPECT_NE(parse_distance("9").fault.mend.find("9 in"), std::string::npos);
}

TEST(Coordinate, IsALengthThatMayBeNegative) {
    constexpr Sized table[] = {{"4.5 m", 4.5},         {"-0.5 m", -0.5}, {"-1/16 in", -0.0015875}, {"-12 ft 6 in", -3.81},
                               {"-1 1/2 in", -0.0381}, {"0 m", 0},       {"- 2 cm", -0.02},        {"+2 cm", 0.02}};
    for (const Sized& row : table) EXPECT_EQ(parse_coordinate(row.text).value.value_or(NAN), row.value) << row.text;
    EXPECT_FALSE(std::signbit(parse_coordinate("-0 m").value.value_or(NAN)));
    EXPECT_FALSE(parse_coordinate("4.5"));
    EXPECT_FALSE(parse_coordinate("-inf m"));
    EXPECT_FALSE(parse_coordinate("-100001 m"));
}

TEST(Area, ReadsEveryUnit) {
    constexpr Sized table[] = {{"100 cm2", 0.01},       {"1 mm2", 1e-6},       {"2.5 m2", 2.5},         {"1 in2", 0.00064516},
                               {"144 in2", 0.09290304}, {"1 ft2", 0.09290304}, {"1/2 ft2", 0.04645152}, {"0 cm2", 0}};
    for (const Sized& row : table) EXPECT_EQ(parse_area(row.text).value.value_or(NAN), row.value) << row.text;
}

/// An inch is 25.4 mm exactly: 10 in2 are 6,451.6 mm2, and 144 in2, a square foot, 0.0929 m2.
TEST(Area, AgreesWithTheInch) {
    EXPECT_NEAR(parse_area("10 in2").value.value_or(NAN) * 1e6, 6452, 0.5);
    EXPECT_NEAR(parse_area("144 in2").value.value_or(NAN), 0.0929, 0.00005);
}

TEST(Area, NeedsAUnitOfArea) {
    for (const char* text : {"100", "100 mm", "100 in", "5 m3", "-1 cm2", "nan cm2", "1e999 m2", ""}) {
        EXPECT_FALSE(parse_area(text)) << text;
    }
    EXPECT_NE(parse_area("100").fault.mend.find("100 cm2"), std::string::npos);
    EXPECT_NE(parse_area("100 cm").fault.mend.find("cm2"), std::string::npos);
}

TEST(Duration, IsInMinutes) {
    EXPECT_EQ(parse_duration("45 min").value, 45);
    EXPECT_EQ(parse_duration("1 h 30 min").value, 90);
    EXPECT_EQ(parse_duration("1.5 h").value, 90);
    EXPECT_EQ(parse_duration("1/3 h").value, 20);
    EXPECT_EQ(parse_duration("0 min").value, 0);
    for (const char* text : {"45", "45 s", "-1 min", "inf min", "30 min 1 h"}) EXPECT_FALSE(parse_duration(text)) << text;
    EXPECT_NE(parse_duration("45").fault.mend.find("45 min"), std::string::npos);
}

TEST(Percent, IsAShareOfOne) {
    EXPECT_EQ(parse_percent("10 %").value, 0.1);
    EXPECT_EQ(parse_percent("10%").value, 0.1);
    EXPECT_EQ(parse_percent("12.5 %").value, 0.125);
    EXPECT_EQ(parse_percent("100 %").value, 1);
    EXPECT_EQ(parse_percent("0 %").value, 0);
    for (const char* text : {"10", "0.1", "10 percent", "-1 %", "nan %", "% 10"}) EXPECT_FALSE(parse_percent(text)) << text;
    EXPECT_NE(parse_percent("10").fault.mend.find("10 %"), std::string::npos);
}

TEST(Money, IsInWholeCents) {
    struct Row {
        const char* text;
        std::int64_t cents;
    };
    constexpr Row table[] = {{"$12.50", 1250},
                             {"$12.5", 1250},
                             {"$8.00", 800},
                             {"$8", 800},
                             {"$0", 0},
                             {"$0.01", 1},
                             {"$ 12.50", 1250},
                             {"$1,250", 125000},
                             {"$1,250.75", 125075},
                             {"$1250.75", 125075},
                             {"$1,234,567.89", 123456789},
                             {"$999,999,999,999.99", 99999999999999}};
    for (const Row& row : table) EXPECT_EQ(parse_money(row.text).value.value_or(Money{-1}).cents, row.cents) << row.text;
}

/// 0.10 + 0.20 and the like are sums of cents, not of binary fractions.
TEST(Money, KeepsEveryCent) {
    for (std::int64_t cents = 0; cents < 100'000; ++cents) {
        const std::string digits = std::to_string(cents % 100);
        const std::string text = '$' + std::to_string(cents / 100) + '.' + (digits.size() < 2 ? "0" : "") + digits;
        ASSERT_EQ(parse_money(text).value.value_or(Money{-1}).cents, cents) << text;
    }
}

TEST(Money, RefusesWhatIsNoAmount) {
    for (const char* text :
         {"12.50", "12",   "$12.505", "$1,25", "$12,50",    "$1,2500",  "$,250", "$1250,000",      "$-5",  "-$5", "$",
          "",      "$inf", "nan",     "$1e3",  "12.50 USD", "$12.50 x", "$12.",  "$1000000000000", "$0x10"}) {
        EXPECT_FALSE(parse_money(text)) << text;
    }
    EXPECT_NE(parse_money("12.50").fault.what.find("bare number"), std::string::npos);
    EXPECT_NE(parse_money("12.50").fault.mend.find("$12.50"), std::string::npos);
    EXPECT_NE(parse_money("-$5").fault.what.find("negative"), std::string::npos);
}

TEST(Count, IsAWholeNumberFromOne) {
    EXPECT_EQ(parse_count("1").value, 1U);
    EXPECT_EQ(parse_count("30").value, 30U);
    EXPECT_EQ(parse_count("1000000000").value, 1'000'000'000U);
    for (const char* text : {"0", "-1", "1.5", "2.0", "1e3", "+3", "thirty", "", " 3", "3 ", "0x3", "1/2", "nan", "inf",
                             "1000000001", "99999999999999999999999"}) {
        EXPECT_FALSE(parse_count(text)) << text;
        EXPECT_FALSE(parse_count(text).fault.mend.empty()) << text;
    }
}

}  // namespace
}  // namespace seamward::test
