// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <string>
#include <string_view>

#include "base/message.h"
#include "base/quantity.h"

namespace seamward {

/// A day of the Gregorian calendar.
using Date = std::chrono::year_month_day;

/// A day from ISO 8601 text, `2026-06-15`, of the years 1900 to 2999.
[[nodiscard]] Parsed<Date> parse_date(std::string_view text);

/// A day of any year from `06-15`.
[[nodiscard]] Parsed<std::chrono::month_day> parse_day_of_year(std::string_view text);

/// `2026-06-15`
[[nodiscard]] std::string date_text(Date date);

/// The same, for sentences; said to people it is written out, "June 15, 2026".
[[nodiscard]] Message date_message(Date date);

/// The day so many days later, or earlier where `days` is negative.
[[nodiscard]] Date days_after(Date date, int days);

/// The day so many months later; the last of its month where that has no such day.
[[nodiscard]] Date months_after(Date date, int months);

/// Today where this computer is.
[[nodiscard]] Date today();

}  // namespace seamward
