// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/exact.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <limits>

namespace seamward {

namespace {

using Wide = Exact::Wide;

constexpr int most_digits = 18;
/// Sums scale one side by up to this power of ten: 10^18 * 10^18 still fits into 128 bits.
constexpr int widest_alignment = 18;

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

constexpr std::uint64_t power_of_ten(int n) {
    std::uint64_t value = 1;
    while (n-- > 0) value *= 10;
    return value;
}

/// Common factors out, and every 2 and 5 of the divisor into the decimal exponent.
Exact normalized(Exact x) {
    for (const std::uint64_t prime : {std::uint64_t{2}, std::uint64_t{5}}) {
        while (x.divisor % prime == 0) {
            x.divisor /= prime;
            x.mantissa *= 10 / prime;
            --x.exponent;
        }
    }
    Wide a = x.mantissa;
    Wide b = x.divisor;
    while (b != 0) {
        const Wide rest = a % b;
        a = b;
        b = rest;
    }
    if (x.divisor > 1 && a > 1) {
        x.mantissa /= a;
        x.divisor /= static_cast<std::uint64_t>(a);
    }
    while (x.mantissa != 0 && x.mantissa % 10 == 0) {
        x.mantissa /= 10;
        ++x.exponent;
    }
    return x;
}

}  // namespace

double Exact::to_double() const {
    if (mantissa == 0) return 0;
    Wide digits = mantissa;
    int power = exponent;
    if (divisor != 1) {
        // A decimal of 19 digits and more, cut off; a last digit 1 says that something was cut, so that it rounds right.
        constexpr Wide enough = Wide{10'000'000'000'000'000'000ULL} * 10'000'000'000'000'000ULL;
        while (digits < enough) {
            digits *= 10;
            --power;
        }
        const bool cut = digits % divisor != 0;
        digits = digits / divisor * 10 + (cut ? 1U : 0U);
        --power;
    }
    std::array<char, 64> text{};  // 39 digits at most, e, sign, exponent
    char* first = text.data() + 40;
    for (Wide rest = digits; rest != 0; rest /= 10) *--first = static_cast<char>('0' + static_cast<int>(rest % 10));
    char* last = text.data() + 40;
    *last++ = 'e';
    last = std::to_chars(last, text.data() + text.size(), power).ptr;
    double value = 0;
    const auto [end, error] = std::from_chars(first, last, value);
    if (error == std::errc::result_out_of_range) return power > 0 ? std::numeric_limits<double>::infinity() : 0.0;
    return value;
}

std::optional<Exact> take_decimal(std::string_view& text) {
    Exact x;
    int kept = 0;
    bool any = false;
    std::size_t i = 0;
    const auto take_digits = [&](bool after_point) {
        for (; i < text.size() && is_digit(text[i]); ++i) {
            any = true;
            const bool leading_zero = x.mantissa == 0 && text[i] == '0';
            if (kept < most_digits) {
                x.mantissa = x.mantissa * 10 + static_cast<unsigned>(text[i] - '0');
                if (!leading_zero) ++kept;
                if (after_point) --x.exponent;
            } else if (!after_point) {
                ++x.exponent;
            }
        }
    };
    take_digits(false);
    if (i < text.size() && text[i] == '.') {
        ++i;
        take_digits(true);
    }
    if (!any) return std::nullopt;
    if (i + 1 < text.size() && (text[i] == 'e' || text[i] == 'E')) {
        std::size_t j = i + 1;
        if (text[j] == '+') ++j;
        int exponent = 0;
        const auto [end, error] = std::from_chars(text.data() + j, text.data() + text.size(), exponent);
        if (error == std::errc()) {
            x.exponent += std::clamp(exponent, -10'000, 10'000);
            i = static_cast<std::size_t>(end - text.data());
        } else if (error == std::errc::result_out_of_range) {
            x.exponent += text[j] == '-' ? -10'000 : 10'000;
            i = static_cast<std::size_t>(end - text.data());
        }
    }
    text.remove_prefix(i);
    return x;
}

Exact scaled(const Exact& number, std::uint64_t mantissa, int exponent) {
    return normalized({number.mantissa * mantissa, number.exponent + exponent, number.divisor});
}

Exact divided(const Exact& number, std::uint64_t divisor) {
    return normalized({number.mantissa, number.exponent, number.divisor * divisor});
}

Exact sum(const Exact& a, const Exact& b) {
    if (a.mantissa == 0) return b;
    if (b.mantissa == 0) return a;
    const Exact& high = a.exponent >= b.exponent ? a : b;
    const Exact& low = a.exponent >= b.exponent ? b : a;
    const int shift = high.exponent - low.exponent;
    constexpr Wide safe = Wide{1} << 60;
    const bool exact = shift <= widest_alignment && high.mantissa < safe && low.mantissa < safe && a.divisor < (1U << 30) &&
                       b.divisor < (1U << 30) && high.mantissa * power_of_ten(std::min(shift, widest_alignment)) < safe;
    if (!exact) {  // far more digits than anyone types: the nearest decimal of the rounded sum will do
        const double rounded = a.to_double() + b.to_double();
        if (std::isinf(rounded)) return {1, 10'000, 1};  // stays out of range
        std::array<char, 64> digits{};
        const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), rounded, std::chars_format::scientific).ptr;
        std::string_view text(digits.data(), static_cast<std::size_t>(end - digits.data()));
        return take_decimal(text).value_or(Exact{});
    }
    const Wide above = high.mantissa * power_of_ten(shift) * low.divisor + low.mantissa * high.divisor;
    return normalized({above, low.exponent, a.divisor * b.divisor});
}

}  // namespace seamward
