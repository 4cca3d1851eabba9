// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace seamward {

/// An exact non-negative number `mantissa` * 10^`exponent` / `divisor`, as it was typed. Kept exact until it is
/// rounded once by to_double(), so that 1/16 in and 1.5875 mm become the same double.
struct Exact {
    __extension__ using Wide = unsigned __int128;

    Wide mantissa = 0;
    int exponent = 0;
    std::uint64_t divisor = 1;  ///< has no common factor with mantissa, nor with 10

    /// A whole number small enough to stand in a fraction.
    [[nodiscard]] bool is_small_whole() const { return exponent == 0 && divisor == 1 && mantissa <= 1'000'000'000; }

    /// The nearest double; infinity when it is out of range.
    [[nodiscard]] double to_double() const;
};

/// Takes an unsigned decimal number such as `12`, `.5`, `1.25`, `2e-3` off the front of `text`. More than 18
/// significant digits are cut. Nothing when no number stands there.
[[nodiscard]] std::optional<Exact> take_decimal(std::string_view& text);

/// number * mantissa * 10^exponent
[[nodiscard]] Exact scaled(const Exact& number, std::uint64_t mantissa, int exponent);

/// number / divisor, for a small whole number; divisor must not be 0.
[[nodiscard]] Exact divided(const Exact& number, std::uint64_t divisor);

/// a + b; exact as long as the digits fit (always for sizes as people write them).
[[nodiscard]] Exact sum(const Exact& a, const Exact& b);

}  // namespace seamward
