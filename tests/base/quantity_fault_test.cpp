// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "base/quantity.h"

namespace seamward::test {
namespace {

struct Fault {
    const char* text;
    const char* what;
    const char* mend;
};

void expect_faults(std::initializer_list<Fault> table) {
    for (const Fault& row : table) {
        const Parsed<double> parsed = parse_length(row.text);
        EXPECT_FALSE(parsed) << row.text << " was read as " << parsed.value.value_or(0);
        EXPECT_NE(parsed.fault.what.find(row.what), std::string::npos) << row.text << ": " << parsed.fault.what;
        EXPECT_NE(parsed.fault.mend.find(row.mend), std::string::npos) << row.text << ": " << parsed.fault.mend;
        EXPECT_FALSE(parsed.fault.mend.empty()) << row.text;
    }
}

TEST(LengthFault, BareNumberShowsTheFix) {
    expect_faults({{"1.2", "bare number", "1.2 mm"},
                   {"1.2", "bare number", "1.2 in"},
                   {"0", "bare number", "0 mm"},
                   {"1/16", "bare number", "1/16 in"},
                   {"1 1/2", "bare number", "1 1/2 in"},
                   {"1-1/2", "bare number", "1-1/2 in"},
                   {"2e-3", "bare number", "2e-3 mm"},
                   {"12 ft 6", "bare number", "6 in"},
                   {"5 5 mm", "bare number", "5 mm"},
                   {"5 mm 3", "bare number", "3 mm"}});
}

TEST(LengthFault, MisspelledUnitNamesTheNearest) {
    expect_faults({{"5 mn", "unknown unit \"mn\"", "did you mean mm?"},
                   {"5 MM", "unknown unit \"MM\"", "did you mean mm?"},
                   {"5 mmm", "unknown unit \"mmm\"", "did you mean mm?"},
                   {"5 cn", "unknown unit \"cn\"", "did you mean cm?"},
                   {"5 IN", "unknown unit \"IN\"", "did you mean in?"},
                   {"5 in.", "unknown unit \"in.\"", "did you mean in?"},
                   {"5 ft.", "unknown unit \"ft.\"", "did you mean ft?"},
                   {"5 tf", "unknown unit \"tf\"", "did you mean ft?"},
                   {"5 M", "unknown unit \"M\"", "did you mean m?"}});
}

TEST(LengthFault, UnknownUnitListsTheUnits) {
    for (const char* unit : {"mm", "cm", "m", "in", "\"", "ft", "'"})
        expect_faults({{"5 furlongs", "unknown unit \"furlongs\"", unit}});
    expect_faults({{"5 cm2", "unknown unit \"cm2\"", "cm"},
                   {"5 min", "unknown unit \"min\"", "in"},
                   {"5 %", "unknown unit \"%\"", "mm"},
                   {"$5 mm", "not a length", "1.5 mm"},
                   {"0x10 mm", "unknown unit", "mm"},
                   {"1,000 mm", "comma", "1500"},
                   {"5 ''", "unknown unit", "\""}});
}

TEST(LengthFault, Negative) {
    expect_faults({{"-1 mm", "negative", "0"},
                   {"-0.0001 mm", "negative", "0"},
                   {"- 1 mm", "negative", "0"},
                   {"-1/16 in", "negative", "0"},
                   {"-12 ft 6 in", "negative", "0"},
                   {"-1 1/2 in", "negative", "0"},
                   {"--1 mm", "", ""},
                   {"12 ft -6 in", "", ""},
                   {"-1", "bare number", "mm"}});
}

TEST(LengthFault, NotANumberOrInfinite) {
    for (const char* text : {"nan mm", "NaN mm", "nan", ".nan", ".NaN mm", "-nan mm", "inf mm", "-inf mm", "+inf mm", "inf",
                             ".inf", "-.INF", "Infinity mm", "infinity"}) {
        expect_faults({{text, "not a finite number", ""}});
    }
}

TEST(LengthFault, TooLarge) {
    for (const char* text :
         {"1e999 mm", "1e400 m", "100001 m", "1e99999999999999999999 mm", "999999999999999999999999 mm", "1e9 ft"}) {
        expect_faults({{text, "too large", "100 km"}});
    }
}

/// A sum whose first term is out of the range of doubles is as far too large as that term alone.
TEST(LengthFault, TooLargeInOneOfItsTerms) {
    for (const char* text : {"1e400 ft 6 in", "1e999 ft 1 in", "1e400 m 1 mm", "6 ft 1e400 in"})
        expect_faults({{text, "too large", "100 km"}});
    EXPECT_FALSE(parse_area("1e400 m2 5 cm2"));
    EXPECT_FALSE(parse_duration("1e400 h 5 min"));
}

TEST(LengthFault, NoNumberOrNoLength) {
    for (const char* text : {"", "   ", "\t"}) expect_faults({{text, "length is due", "1.5 mm"}});
    for (const char* text : {"mm", "/2 in", "one mm", "e5 mm", ". mm", "in 5", "½ in", "5 mm x", "5 mm mm", "5 mm,", "+-5 mm",
                             "1/0 in", "1/2/3 in", "1.5/2 in", "1 1.5/2 in", "1/ in", "1//2 in", "1/-2 in", "99999999999/2 in"}) {
        expect_faults({{text, "", ""}});
    }
}

TEST(LengthFault, UnitsInTheWrongOrder) {
    expect_faults({{"6 in 12 ft", "larger to smaller", "12 ft 6 in"},
                   {"1 ft 1 ft", "larger to smaller", "12 ft 6 in"},
                   {"5 mm 6 mm", "larger to smaller", "12 ft 6 in"},
                   {"1 ft 2'", "larger to smaller", "12 ft 6 in"}});
}

/// The text of a file stands in messages; a letter of several bytes must not be cut in two.
TEST(LengthFault, LongTextIsCutBetweenLetters) {
    for (int shift = 0; shift < 4; ++shift) {
        std::string text = "5 " + std::string(static_cast<std::size_t>(shift), 'x');
        for (int i = 0; i < 100; ++i) text += "\u00e9";
        const std::string what = parse_length(text).fault.what;
        const std::size_t dots = what.find("...");
        ASSERT_NE(dots, std::string::npos) << what;
        std::size_t bytes_of_letters = 0;
        for (std::size_t at = what.find("\u00e9"); at + 1 < dots && what.compare(at, 2, "\u00e9") == 0; at += 2)
            bytes_of_letters += 2;
        EXPECT_EQ(what.find("\u00e9") + bytes_of_letters, dots) << what;
    }
}

TEST(LengthFault, AnyBytesAreAnsweredWithAFaultOrALength) {
    std::uint64_t state = 1;
    for (int round = 0; round < 200'000; ++round) {
        constexpr std::string_view letters = "0123456789./-+eE \"'mcfitn$%,\xC3\xBD";
        std::string text;
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        for (std::uint64_t rest = state >> 20U; rest > 0; rest /= 32) text += letters[rest % letters.size()];
        const Parsed<double> parsed = parse_length(text);
        if (parsed)
            ASSERT_TRUE(*parsed >= 0 && *parsed <= 1e5) << text;
        else
            ASSERT_FALSE(parsed.fault.what.empty()) << text;
    }
}

}  // namespace
}  // namespace seamward::test
