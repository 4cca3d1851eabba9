// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/money.h"

namespace seamward {

/// Why a text is not the quantity that was due, and what to write instead.
struct QuantityFault {
    std::string what;
    std::string mend;
};

/// A value, or else the reason why there is none.
template <class Value>
struct Parsed {
    std::optional<Value> value;
    QuantityFault fault;

    [[nodiscard]] explicit operator bool() const { return value.has_value(); }
    [[nodiscard]] const Value& operator*() const { return *value; }
};

/// A size in meters, 0 or more, from text such as `0.9 mm`, `1/16 in`, `3/8"`, `1 1/2 in`, `12 ft 6 in`, `2.4 m`.
/// The same length written in another unit gives the same double: the value is worked out exactly and rounded
/// once. A bare number, an unknown unit, a negative, infinite or not-a-number value is a fault.
[[nodiscard]] Parsed<double> parse_length(std::string_view text);

/// The same for sizes of whole walls and houses: messages propose meters.
[[nodiscard]] Parsed<double> parse_distance(std::string_view text);

/// A coordinate in meters: as a distance, and it may be negative.
[[nodiscard]] Parsed<double> parse_coordinate(std::string_view text);

/// Square meters from `100 cm2` (mm2, cm2, m2, in2, ft2).
[[nodiscard]] Parsed<double> parse_area(std::string_view text);

/// Minutes from `45 min`, `1 h 30 min`.
[[nodiscard]] Parsed<double> parse_duration(std::string_view text);

/// A share of one from `10 %`.
[[nodiscard]] Parsed<double> parse_percent(std::string_view text);

/// Whole cents from `$12.50`, `$1,250`.
[[nodiscard]] Parsed<Money> parse_money(std::string_view text);

/// A whole number from 1 up to 10^9, without a sign, a point or an exponent.
[[nodiscard]] Parsed<std::uint32_t> parse_count(std::string_view text);

}  // namespace seamward
