// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>

namespace seamward {

/// An amount in whole cents: sums are exact.
struct Money {
    std::int64_t cents = 0;

    friend constexpr auto operator<=>(Money, Money) = default;
    friend constexpr Money operator+(Money a, Money b) { return {a.cents + b.cents}; }
    friend constexpr Money operator*(Money a, std::int64_t n) { return {a.cents * n}; }
};

}  // namespace seamward
