// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/measure_text.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <numeric>

namespace seamward {

namespace {

constexpr double meters_per_inch = 0.0254;
constexpr double parts_per_inch = 64;

}  // namespace

std::string inches_text(double meters) {
    const auto parts = static_cast<long long>(std::llround(meters / meters_per_inch * parts_per_inch));
    if (parts == 0) return meters > 0 ? "under 1/64 in" : "0 in";
    constexpr auto per_inch = static_cast<long long>(parts_per_inch);
    const long long whole = parts / per_inch;
    const long long above = parts % per_inch;
    std::string text;
    if (whole > 0 || above == 0) text = std::to_string(whole);
    if (above > 0) {
        const long long factor = std::gcd(above, per_inch);
        text += (text.empty() ? "" : " ") + std::to_string(above / factor) + '/' + std::to_string(per_inch / factor);
    }
    return text + " in";
}

std::string millimeters_text(double meters) {
    std::array<char, 64> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%.2f", meters * 1000);
    std::string text = buffer.data();
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
    if (text == "0" && meters > 0) return "under 0.01 mm";
    return text + " mm";
}

std::string width_text(double meters) { return inches_text(meters) + " (" + millimeters_text(meters) + ')'; }

std::string money_text(Money money) {
    std::string digits = std::to_string(std::abs(money.cents) / 100);
    for (std::size_t at = digits.size(); at > 3; at -= 3) digits.insert(at - 3, ",");
    const std::string cents = std::to_string(std::abs(money.cents) % 100);
    return (money.cents < 0 ? "-$" : "$") + digits + '.' + (cents.size() < 2 ? "0" : "") + cents;
}

double answer_millimeters(double meters) { return std::round(meters * 1e9) / 1e6; }

}  // namespace seamward
