// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/date.h"

#include <gtest/gtest.h>

namespace seamward {
namespace {

using namespace std::chrono;

Date day_of(const char* text) {
    const Parsed<Date> date = parse_date(text);
    EXPECT_TRUE(date) << text;
    return date.value.value_or(Date{});
}

TEST(Date, ReadsIsoDates) {
    EXPECT_EQ(day_of("2026-06-15"), Date(year(2026), June, day(15)));
    EXPECT_EQ(day_of("2024-02-29"), Date(year(2024), February, day(29)));
    EXPECT_EQ(date_text(day_of("1984-01-09")), "1984-01-09");
}

// 2000 was a leap year and 1900 was none: the rule of the Gregorian calendar.
TEST(Date, KnowsTheCalendar) {
    EXPECT_TRUE(parse_date("2000-02-29"));
    for (const char* text : {"1900-02-29", "2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "2026-04-00"}) {
        const Parsed<Date> date = parse_date(text);
        EXPECT_FALSE(date) << text;
        EXPECT_EQ(date.fault.what, "there is no day \"" + std::string(text) + '"');
        EXPECT_NE(date.fault.mend.find("2026-06-15"), std::string::npos);
    }
}

TEST(Date, OtherFormsAreFaults) {
    for (const char* text :
         {"", "2026", "2026-6-15", "06/15/2026", "15.6.2026", "2026-06-15 ", "2026-06-1a", "20260615", "+026-06-15"}) {
        EXPECT_FALSE(parse_date(text)) << text;
    }
    EXPECT_FALSE(parse_date("0206-06-15"));
    EXPECT_FALSE(parse_date("3000-01-01"));
}

TEST(Date, DaysOfTheYear) {
    EXPECT_EQ(*parse_day_of_year("05-01"), May / 1);
    EXPECT_EQ(*parse_day_of_year("02-29"), February / 29);
    for (const char* text : {"5-1", "05-32", "13-01", "0501", ""}) EXPECT_FALSE(parse_day_of_year(text)) << text;
}

TEST(Date, DaysLater) {
    EXPECT_EQ(date_text(days_after(day_of("2026-12-30"), 7)), "2027-01-06");
    EXPECT_EQ(date_text(days_after(day_of("2024-03-01"), -1)), "2024-02-29");
    EXPECT_EQ(date_text(days_after(day_of("2026-06-15"), 365)), "2027-06-15");
}

TEST(Date, MonthsLaterEndWithTheirMonth) {
    EXPECT_EQ(date_text(months_after(day_of("2026-01-31"), 1)), "2026-02-28");
    EXPECT_EQ(date_text(months_after(day_of("2024-02-29"), 12)), "2025-02-28");
    EXPECT_EQ(date_text(months_after(day_of("2026-11-26"), 60)), "2031-11-26");
}

TEST(Date, TodayIsADay) { EXPECT_TRUE(today().ok()); }

}  // namespace
}  // namespace seamward
