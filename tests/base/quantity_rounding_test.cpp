// SPDX-License-Identifier: GPL-3.0-or-later
// A length is worked out exactly and rounded once: on random lengths it equals the double that whole-number
// arithmetic gives (tests/support/nearest_double.h).
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "base/quantity.h"
#include "tests/support/nearest_double.h"

namespace seamward::test {
namespace {

constexpr int rounds = 10'000;

/// Distributions of the standard library differ between implementations; this does not.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    std::uint64_t below(std::uint64_t n) { return engine_() % n; }

private:
    std::mt19937_64 engine_;
};

constexpr Whole ten_to(unsigned n) { return n == 0 ? Whole{1} : 10 * ten_to(n - 1); }

/// One of a unit is `above` / `below` meters.
struct Unit {
    const char* word;
    unsigned above;
    unsigned below;
};

constexpr Unit units[] = {{"mm", 1, 1000},    {"cm", 1, 100},      {"m", 1, 1},       {"in", 254, 10000},
                          {"\"", 254, 10000}, {"ft", 3048, 10000}, {"'", 3048, 10000}};

double length(const std::string& text) { return parse_length(text).value.value_or(NAN); }

TEST(LengthRounding, OfSixtyFourths) {
    Dice dice(1);
    for (int i = 0; i < rounds; ++i) {
        const std::uint64_t n = dice.below(1'000'000);
        const std::string text = std::to_string(n) + "/64 in";
        ASSERT_EQ(length(text), nearest_double(Whole{n} * 254, 640000)) << text;
    }
}

TEST(LengthRounding, OfMixedSixtyFourths) {
    Dice dice(2);
    for (int i = 0; i < rounds; ++i) {
        const std::uint64_t whole = dice.below(1000);
        const std::uint64_t n = dice.below(64);
        const std::string text = std::to_string(whole) + (i % 2 == 0 ? " " : "-") + std::to_string(n) + "/64\"";
        ASSERT_EQ(length(text), nearest_double(Whole{whole * 64 + n} * 254, 640000)) << text;
    }
}

TEST(LengthRounding, OfDecimalsInEveryUnit) {
    Dice dice(3);
    for (int i = 0; i < rounds; ++i) {
        const Unit& unit = units[dice.below(std::size(units))];
        const auto decimals = static_cast<unsigned>(dice.below(10));
        const std::uint64_t whole = dice.below(10'000);
        const std::uint64_t part = dice.below(static_cast<std::uint64_t>(ten_to(decimals)));
        std::string digits = std::to_string(part);
        digits.insert(0, decimals > digits.size() ? decimals - digits.size() : 0, '0');
        const std::string text = std::to_string(whole) + (decimals > 0 ? "." + digits : "") + ' ' + unit.word;
        const Whole above = (Whole{whole} * ten_to(decimals) + part) * unit.above;
        ASSERT_EQ(length(text), nearest_double(above, ten_to(decimals) * unit.below)) << text;
    }
}

TEST(LengthRounding, OfFeetInchesAndFractions) {
    Dice dice(4);
    for (int i = 0; i < rounds; ++i) {
        const std::uint64_t feet = dice.below(200);
        const std::uint64_t inches = dice.below(12);
        const std::uint64_t below = std::uint64_t{1} << dice.below(8);
        const std::uint64_t above = dice.below(below);
        const std::string text = std::to_string(feet) + " ft " + std::to_string(inches) + ' ' + std::to_string(above) + '/' +
                                 std::to_string(below) + " in";
        ASSERT_EQ(length(text), nearest_double(Whole{(feet * 12 + inches) * below + above} * 254, Whole{below} * 10000)) << text;
    }
}

/// Thirds, sevenths and the like are no finite decimals and no finite binary fractions either.
TEST(LengthRounding, OfAnyFraction) {
    Dice dice(5);
    for (int i = 0; i < rounds; ++i) {
        const Unit& unit = units[dice.below(std::size(units))];
        const std::uint64_t below = 1 + dice.below(1000);
        const std::uint64_t above = dice.below(10'000);
        const std::string text = std::to_string(above) + '/' + std::to_string(below) + ' ' + unit.word;
        EXPECT_EQ(length(text), nearest_double(Whole{above} * unit.above, Whole{below} * unit.below)) << text;
    }
}

TEST(LengthRounding, OfEighteenDigits) {
    Dice dice(6);
    for (int i = 0; i < rounds; ++i) {
        const std::uint64_t part = dice.below(100'000'000'000'000'000ULL);
        std::string digits = std::to_string(part);
        digits.insert(0, 17 - digits.size(), '0');
        const std::string text = "7." + digits + " in";
        ASSERT_EQ(length(text), nearest_double((7 * ten_to(17) + part) * 254, ten_to(21))) << text;
    }
}

/// The other way round: the shortest decimal in meters of what was read is read as the same double.
TEST(LengthRounding, SurvivesBeingWrittenInMeters) {
    Dice dice(7);
    for (int i = 0; i < rounds; ++i) {
        const std::string text = std::to_string(dice.below(10'000)) + '/' + std::to_string(1 + dice.below(128)) + " in";
        const double meters = length(text);
        std::array<char, 40> written{};
        std::snprintf(written.data(), written.size(), "%.17g m", meters);
        ASSERT_EQ(length(written.data()), meters) << text << " = " << written.data();
    }
}

}  // namespace
}  // namespace seamward::test
