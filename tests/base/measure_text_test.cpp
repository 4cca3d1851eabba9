// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/measure_text.h"

#include <gtest/gtest.h>

#include <cmath>

#include "base/quantity.h"

namespace seamward::test {
namespace {

double length(const std::string& text) { return parse_length(text).value.value_or(NAN); }

TEST(InchesText, IsAReducedFraction) {
    EXPECT_EQ(inches_text(length("3/64 in")), "3/64 in");
    EXPECT_EQ(inches_text(length("2/64 in")), "1/32 in");
    EXPECT_EQ(inches_text(length("32/64 in")), "1/2 in");
    EXPECT_EQ(inches_text(length("1 in")), "1 in");
    EXPECT_EQ(inches_text(length("1 1/2 in")), "1 1/2 in");
    EXPECT_EQ(inches_text(length("12 ft 6 1/4 in")), "150 1/4 in");
    EXPECT_EQ(inches_text(0), "0 in");
}

TEST(InchesText, IsTheNearestSixtyFourth) {
    EXPECT_EQ(inches_text(length("1.2 mm")), "3/64 in");   // 3.02 of them
    EXPECT_EQ(inches_text(length("0.76 mm")), "1/32 in");  // 1.91
    EXPECT_EQ(inches_text(length("6 mm")), "15/64 in");    // 15.12
    EXPECT_EQ(inches_text(length("25.4 mm")), "1 in");
    EXPECT_EQ(inches_text(length("25.3 mm")), "1 in");  // 63.7
}

/// 1/64 in is 0.397 mm.
TEST(InchesText, NeverPassesAHairOffAsASixtyFourth) {
    EXPECT_EQ(width_text(length("0.4 mm")), "1/64 in (0.4 mm)");
    EXPECT_EQ(width_text(length("1/64 in")), "1/64 in (0.4 mm)");
    EXPECT_EQ(width_text(length("0.39 mm")), "under 1/64 in (0.39 mm)");
    EXPECT_EQ(width_text(length("0.2 mm")), "under 1/64 in (0.2 mm)");
    EXPECT_EQ(width_text(1e-9), "under 1/64 in (under 0.01 mm)");
}

/// Every multiple of 1/64 in is shown as itself: reading it back gives the same double.
TEST(InchesText, GivesEverySixtyFourthBack) {
    for (int n = 1; n <= 6400; ++n) {
        const double meters = length(std::to_string(n) + "/64 in");
        ASSERT_EQ(length(inches_text(meters)), meters) << n;
    }
}

TEST(MillimetersText, HasAtMostTwoDecimals) {
    EXPECT_EQ(millimeters_text(length("1.2 mm")), "1.2 mm");
    EXPECT_EQ(millimeters_text(length("0.76 mm")), "0.76 mm");
    EXPECT_EQ(millimeters_text(length("25 mm")), "25 mm");
    EXPECT_EQ(millimeters_text(length("100 mm")), "100 mm");
    EXPECT_EQ(millimeters_text(length("9 m")), "9000 mm");
    EXPECT_EQ(millimeters_text(length("1.234 mm")), "1.23 mm");
    EXPECT_EQ(millimeters_text(length("1.999 mm")), "2 mm");
    EXPECT_EQ(millimeters_text(0), "0 mm");
    EXPECT_EQ(millimeters_text(length("0.004 mm")), "under 0.01 mm");
}

/// An inch is 25.4 mm exactly; to two decimals, halves up.
TEST(MillimetersText, AgreesWithTheTableOfConversions) {
    struct Row {
        const char* inches;
        const char* millimeters;
    };
    constexpr Row table[] = {{"1/16 in", "1.59 mm"},  {"1/8 in", "3.18 mm"}, {"3/16 in", "4.76 mm"},   {"1/4 in", "6.35 mm"},
                             {"3/8 in", "9.53 mm"},   {"1/2 in", "12.7 mm"}, {"5/8 in", "15.88 mm"},   {"3/4 in", "19.05 mm"},
                             {"7/8 in", "22.23 mm"},  {"1 in", "25.4 mm"},   {"1-1/4 in", "31.75 mm"}, {"1-1/2 in", "38.1 mm"},
                             {"1-5/8 in", "41.28 mm"}};
    for (const Row& row : table) EXPECT_EQ(millimeters_text(length(row.inches)), row.millimeters) << row.inches;
}

TEST(WidthText, ShowsBothUnits) {
    EXPECT_EQ(width_text(length("1.2 mm")), "3/64 in (1.2 mm)");
    EXPECT_EQ(width_text(length("1/16 in")), "1/16 in (1.59 mm)");
    EXPECT_EQ(width_text(0), "0 in (0 mm)");
}

/// Whoever reads a tape reads feet, inches and eighths.
TEST(LengthMessage, IsReadOnATape) {
    struct Row {
        const char* length;
        const char* told;
    };
    constexpr Row table[] = {{"86 1/32 in", "7 ft 2 in (2.19 m)"},   {"168 in", "14 ft (4.27 m)"},
                             {"2185 mm", "7 ft 2 in (2.19 m)"},      {"36 in", "3 ft (914 mm)"},
                             {"830 mm", "2 ft 8 5/8 in (830 mm)"},   {"24 in", "2 ft (610 mm)"},
                             {"9 m", "29 ft 6 3/8 in (9.00 m)"},     {"12 ft 1/8 in", "12 ft 0 1/8 in (3.66 m)"},
                             {"999.4 mm", "3 ft 3 3/8 in (999 mm)"}, {"999.6 mm", "3 ft 3 3/8 in (1.00 m)"},
                             {"35 31/32 in", "3 ft (914 mm)"},       {"12.345 m", "40 ft 6 in (12.35 m)"}};
    for (const Row& row : table) EXPECT_EQ(length_message(length(row.length)).english(), row.told) << row.length;
    EXPECT_EQ(metric_length_message(length("86 1/32 in")).english(), "2.19 m");
    EXPECT_EQ(metric_length_message(length("36 in")).english(), "914 mm");
}

TEST(LengthMessage, IsAWidthBelowTwentyFourInches) {
    for (const char* text : {"0 mm", "0.2 mm", "3/8 in", "12 in", "370 mm", "23 7/8 in"}) {
        EXPECT_EQ(length_message(length(text)), width_message(length(text))) << text;
        EXPECT_EQ(metric_length_message(length(text)), millimeters_message(length(text))) << text;
    }
}

/// However wide a gap is, its clear width keeps its sixty-fourths.
TEST(WidthText, StaysInInchesHoweverWide) {
    EXPECT_EQ(width_text(length("86 1/32 in")), "86 1/32 in (2185.19 mm)");
    EXPECT_EQ(width_message(length("168 in")).english(), "168 in (4267.2 mm)");
}

TEST(MoneyText, GroupsThousandsAndShowsCents) {
    EXPECT_EQ(money_text({0}), "$0.00");
    EXPECT_EQ(money_text({5}), "$0.05");
    EXPECT_EQ(money_text({1250}), "$12.50");
    EXPECT_EQ(money_text({99999}), "$999.99");
    EXPECT_EQ(money_text({100000}), "$1,000.00");
    EXPECT_EQ(money_text({125000}), "$1,250.00");
    EXPECT_EQ(money_text({123456789}), "$1,234,567.89");
    EXPECT_EQ(money_text({-1250}), "-$12.50");
}

TEST(MoneyText, IsReadBackToTheCent) {
    for (std::int64_t cents = 0; cents < 300'000'000; cents += 12'347) {
        ASSERT_EQ(parse_money(money_text({cents})).value.value_or(Money{-1}).cents, cents);
    }
}

/// Answers for programs: rounded to 1e-6 mm and no further.
TEST(AnswerMillimeters, KeepsSixDecimals) {
    EXPECT_EQ(answer_millimeters(length("1.2 mm")), 1.2);
    EXPECT_EQ(answer_millimeters(length("1/64 in")), 0.396875);
    EXPECT_EQ(answer_millimeters(length("1/16 in")), 1.5875);
    EXPECT_EQ(answer_millimeters(length("5.71 mm")), 5.71);
    EXPECT_EQ(answer_millimeters(0.0012 + 1e-10), 1.2);
    EXPECT_EQ(answer_millimeters(length("0.000001 mm")), 1e-6);
    EXPECT_EQ(answer_millimeters(0), 0);
    for (int n = 0; n < 100'000; ++n) ASSERT_EQ(answer_millimeters(length(std::to_string(n) + "e-3 mm")), n / 1000.0);
}

}  // namespace
}  // namespace seamward::test
