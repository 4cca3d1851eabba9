// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/date.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdio>
#include <ctime>
#include <optional>

#include "base/text.h"

namespace seamward {

namespace {

using std::chrono::day;
using std::chrono::month;
using std::chrono::year;

/// Exactly so many digits.
std::optional<unsigned> digits(std::string_view text, std::size_t count) {
    const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
    if (text.size() != count || !std::all_of(text.begin(), text.end(), is_digit)) return std::nullopt;
    unsigned value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

/// `06-15`; nothing where the text has another form.
std::optional<std::chrono::month_day> month_and_day(std::string_view text) {
    if (text.size() != 5 || text[2] != '-') return std::nullopt;
    const std::optional<unsigned> m = digits(text.substr(0, 2), 2);
    const std::optional<unsigned> d = digits(text.substr(3), 2);
    if (!m || !d) return std::nullopt;
    return std::chrono::month_day(month(*m), day(*d));
}

}  // namespace

Parsed<Date> parse_date(std::string_view text) {
    const std::string mend = "write year, month and day, such as 2026-06-15";
    const std::optional<unsigned> y = text.size() == 10 && text[4] == '-' ? digits(text.substr(0, 4), 4) : std::nullopt;
    const std::optional<std::chrono::month_day> rest = y ? month_and_day(text.substr(5)) : std::nullopt;
    if (!rest) return {std::nullopt, {in_quotes(text) + " is no date", mend}};
    const Date date = year(static_cast<int>(*y)) / *rest;
    if (!date.ok()) return {std::nullopt, {"there is no day " + in_quotes(text), mend}};
    if (*y < 1900 || *y > 2999) return {std::nullopt, {in_quotes(text) + " is not of this time", "check the year"}};
    return {date, {}};
}

Parsed<std::chrono::month_day> parse_day_of_year(std::string_view text) {
    const std::optional<std::chrono::month_day> found = month_and_day(text);
    if (found && found->ok()) return {found, {}};
    return {std::nullopt, {in_quotes(text) + " is no day of the year", "write month and day, such as 06-15"}};
}

std::string date_text(Date date) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", int(date.year()), unsigned(date.month()), unsigned(date.day()));
    return text.data();
}

Date days_after(Date date, int days) { return {std::chrono::sys_days(date) + std::chrono::days(days)}; }

Date months_after(Date date, int months) {
    const Date moved = date + std::chrono::months(months);
    return moved.ok() ? moved : moved.year() / moved.month() / std::chrono::last;
}

Date today() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    localtime_r(&now, &local);
    return year(local.tm_year + 1900) / month(static_cast<unsigned>(local.tm_mon + 1)) /
           day(static_cast<unsigned>(local.tm_mday));
}

Message date_message(Date date) {
    Message day(date_text(date));
    day.kind = Message::Kind::day;
    return day;
}

}  // namespace seamward
