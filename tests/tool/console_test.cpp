// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/console.h"

#include <gtest/gtest.h>

#include <sstream>

namespace seamward::test {
namespace {

TEST(Letters, CountsCharactersAndNotBytes) {
    EXPECT_EQ(letters(""), 0U);
    EXPECT_EQ(letters("abc"), 3U);
    EXPECT_EQ(letters("é"), 1U);
    EXPECT_EQ(letters("漢字"), 2U);
    EXPECT_EQ(letters("🏠"), 1U);
    EXPECT_EQ(letters("Gärten"), 6U);
}

TEST(Padded, FillsUpToAWidth) {
    EXPECT_EQ(padded("ab", 5), "ab   ");
    EXPECT_EQ(padded("é", 3), "é  ");
    EXPECT_EQ(padded("", 2), "  ");
    EXPECT_EQ(padded("abc", 3), "abc");
    EXPECT_EQ(padded("abcd", 3), "abcd");
    EXPECT_EQ(padded("abc", 0), "abc");
}

TEST(Wrapped, BreaksAtSpaces) {
    EXPECT_EQ(wrapped("aa bb cc", 5), (std::vector<std::string>{"aa bb", "cc"}));
    EXPECT_EQ(wrapped("aa bb cc", 8), (std::vector<std::string>{"aa bb cc"}));
    EXPECT_EQ(wrapped("aa bb cc", 7), (std::vector<std::string>{"aa bb", "cc"}));
    EXPECT_EQ(wrapped("éé éé", 5), (std::vector<std::string>{"éé éé"}));
}

TEST(Wrapped, GivesALongWordALineOfItsOwn) {
    EXPECT_EQ(wrapped("a abcdefgh b", 4), (std::vector<std::string>{"a", "abcdefgh", "b"}));
    EXPECT_EQ(wrapped("abcdefgh", 1), (std::vector<std::string>{"abcdefgh"}));
    EXPECT_EQ(wrapped("a b", 0), (std::vector<std::string>{"a", "b"}));
}

TEST(Wrapped, TakesRunsOfSpacesForOne) {
    EXPECT_EQ(wrapped("  a   b  ", 10), (std::vector<std::string>{"a b"}));
    EXPECT_TRUE(wrapped("", 10).empty());
    EXPECT_TRUE(wrapped("   ", 10).empty());
}

TEST(Wrapped, LosesNoWordAndExceedsNoWidth) {
    std::string text;
    for (int i = 0; i < 500; ++i)
        text += std::string(static_cast<std::size_t>(i * 7 % 9 + 1), static_cast<char>('a' + i % 26)) + ' ';
    for (std::size_t width = 9; width < 40; ++width) {
        std::string joined;
        for (const std::string& line : wrapped(text, width)) {
            EXPECT_LE(letters(line), width);
            joined += line + ' ';
        }
        EXPECT_EQ(joined, text) << width;
    }
}

TEST(Console, IsBoldOnlyWhereStylesAreUnderstood) {
    std::ostringstream out;
    std::ostringstream err;
    EXPECT_EQ((Console{out, err, 100, true}).bold("x"), "\x1b[1mx\x1b[0m");
    EXPECT_EQ((Console{out, err, 100, false}).bold("x"), "x");
    EXPECT_EQ((Console{out, err}).bold("x"), "x");
}

}  // namespace
}  // namespace seamward::test
