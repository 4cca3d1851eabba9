// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/measure_text.h"

#include <cmath>
#include <cstdlib>
#include <numeric>

namespace seamward {

namespace {

constexpr double meters_per_inch = 0.0254;
constexpr double parts_per_inch = 64;
/// What is longer than this is read in feet, and not to a sixty-fourth: a tape that long sags and its hook slides.
constexpr long long eighths_of_tape = 24LL * 8;
constexpr long long eighths_per_foot = 12LL * 8;

long long eighths_of_inch(double meters) { return std::llround(meters / meters_per_inch * 8); }

/// By way of whole nanometers, so that 1/8 in, 3.175 mm, rounds up whatever its double is.
long long hundredths_of_millimeter(double meters) { return (std::llround(meters * 1e9) + 5'000) / 10'000; }
/// What is under the least that is told is said so in words.
Message said_of(const std::string& text) {
    const std::string under = "under ";
    return text.starts_with(under) ? message("under {}", {as_it_stands(text.substr(under.size()))}) : as_it_stands(text);
}

}  // namespace

std::string inches_text(double meters) {
    // The nearest would be up to twice as wide as a hair's gap is. Where the millimeters read the same, it is 1/64.
    constexpr double least = meters_per_inch / parts_per_inch;
    if (meters > 0 && hundredths_of_millimeter(meters) < hundredths_of_millimeter(least)) return "under 1/64 in";
    const auto parts = static_cast<long long>(std::llround(meters / meters_per_inch * parts_per_inch));
    if (parts == 0) return "0 in";
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
    const long long hundredths = hundredths_of_millimeter(meters);
    if (hundredths == 0) return meters > 0 ? "under 0.01 mm" : "0 mm";
    std::string text = std::to_string(hundredths / 100);
    const long long rest = hundredths % 100;
    if (rest > 0) text += '.' + std::to_string(rest / 10) + (rest % 10 > 0 ? std::to_string(rest % 10) : "");
    return text + " mm";
}

std::string width_text(double meters) { return inches_text(meters) + " (" + millimeters_text(meters) + ')'; }

Message inches_message(double meters) {
    const std::string text = inches_text(meters);
    return message("{} in", {said_of(text.substr(0, text.rfind(" in")))});
}

Message millimeters_message(double meters) { return said_of(millimeters_text(meters)); }

Message width_message(double meters) { return message("{} ({})", {inches_message(meters), millimeters_message(meters)}); }

Message length_message(double meters) {
    const long long eighths = eighths_of_inch(meters);
    if (eighths < eighths_of_tape) return width_message(meters);
    const Message feet = as_it_stands(static_cast<std::size_t>(eighths / eighths_per_foot));
    const long long rest = eighths % eighths_per_foot;
    // `2 ft 3/4 in` would be read as 2 3/4 ft as well.
    const std::string inches = (rest < 8 ? "0 " : "") + inches_text(static_cast<double>(rest) / 8 * meters_per_inch);
    const Message long_as = rest == 0 ? message("{} ft", {feet})
                                      : message("{} ft {} in", {feet, as_it_stands(inches.substr(0, inches.rfind(" in")))});
    return message("{} ({})", {long_as, metric_length_message(meters)});
}

Message metric_length_message(double meters) {
    if (eighths_of_inch(meters) < eighths_of_tape) return millimeters_message(meters);
    const long long hundredths = hundredths_of_millimeter(meters);
    const long long millimeters = (hundredths + 50) / 100;
    if (millimeters < 1000) return as_it_stands(std::to_string(millimeters) + " mm");
    const std::string centimeters = std::to_string((hundredths + 500) / 1000);
    return as_it_stands(centimeters.substr(0, centimeters.size() - 2) + '.' + centimeters.substr(centimeters.size() - 2) + " m");
}

std::string money_text(Money money) {
    std::string digits = std::to_string(std::abs(money.cents) / 100);
    for (std::size_t at = digits.size(); at > 3; at -= 3) digits.insert(at - 3, ",");
    const std::string cents = std::to_string(std::abs(money.cents) % 100);
    return (money.cents < 0 ? "-$" : "$") + digits + '.' + (cents.size() < 2 ? "0" : "") + cents;
}

double answer_millimeters(double meters) { return std::round(meters * 1e9) / 1e6; }

}  // namespace seamward
