// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/text.h"

#include <gtest/gtest.h>

namespace seamward::test {
namespace {

TEST(InQuotes, CutsLongTextAfterAWholeLetter) {
    EXPECT_EQ(in_quotes("bib"), "\"bib\"");
    const std::string long_text = std::string(59, 'a') + "\u00fc and more";  // the letter takes bytes 59 and 60
    EXPECT_EQ(in_quotes(long_text), '"' + std::string(59, 'a') + "...\"");
}

TEST(IsBlank, KnowsSpaceTabsAndLineEnds) {
    EXPECT_TRUE(is_blank(" \t\r\n"));
    EXPECT_TRUE(is_blank(""));
    EXPECT_FALSE(is_blank(" x "));
}

/// Table 3-7 of the Unicode Standard, well-formed UTF-8 byte sequences: the ends of each row and what lies beyond.
TEST(IsUtf8, FollowsTheUnicodeTable) {
    for (const char* good : {"\x7f", "\xc2\x80", "\xdf\xbf", "\xe0\xa0\x80", "\xed\x9f\xbf", "\xee\x80\x80", "\xf0\x90\x80\x80",
                             "\xf4\x8f\xbf\xbf"}) {
        EXPECT_TRUE(is_utf8(good));
    }
    for (const char* bad : {"\x80", "\xc1\xbf", "\xe0\x9f\xbf", "\xed\xa0\x80", "\xf0\x8f\xbf\xbf", "\xf4\x90\x80\x80",
                            "\xf5\x80\x80\x80", "\xc3", "\xe2\x82"}) {
        EXPECT_FALSE(is_utf8(bad));
    }
}

TEST(ControlCharacters, AreThoseOfC0DelAndC1) {
    EXPECT_TRUE(has_control_character("a\x1b[31m"));
    EXPECT_TRUE(has_control_character("a\x7f"));
    EXPECT_TRUE(has_control_character("a\xc2\x9b"));
    EXPECT_FALSE(has_control_character("a\tb\nc\r\n \u00fc"));
}

TEST(Printable, ReplacesWhatMovesACursorOrIsNoText) {
    EXPECT_EQ(printable("a\x1b[2Jb\xc2\x9b\xff\nend \u00fc"), "a?[2Jb???end \u00fc");
}

}  // namespace
}  // namespace seamward::test
