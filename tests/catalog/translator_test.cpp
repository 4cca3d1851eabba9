// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/translator.h"

#include <gtest/gtest.h>

#include "base/date.h"

namespace seamward {
namespace {

const Message list = message("{} and {}", {as_named("House mouse"), as_named("Uncle Bob's raccoon")});

TEST(Translator, EnglishIsWhatTheMessageSays) {
    const Translator say(Language::english);
    EXPECT_EQ(say(list), list.english());
    EXPECT_EQ(say("{2} of {1}", {"7", "2"}), "2 of 7");
    EXPECT_TRUE(say.missing().empty());
}

TEST(Translator, SaysThePartsInSpanishToo) {
    const Translator say(Language::spanish);
    EXPECT_EQ(say(list), "Ratón casero y Uncle Bob's raccoon");
    EXPECT_TRUE(say.missing().empty()) << "a name may have no translation";
}

TEST(Translator, WhatStandsAsItIsIsNotTranslated) {
    const Translator say(Language::spanish);
    EXPECT_EQ(say(as_it_stands("House mouse")), "House mouse");
    EXPECT_EQ(say(Message("House mouse")), "Ratón casero");
    EXPECT_TRUE(say.missing().empty());
}

TEST(Translator, WritesDaysOut) {
    const Message from = message(
        "Days are counted from {}. How long a closing holds depends on sun, water and use; these are "
        "starting values of common practice. Look earlier when one of these animals shows up again.",
        {date_message(*parse_date("2026-11-27").value)});
    EXPECT_TRUE(from.english().starts_with("Days are counted from 2026-11-27."));
    EXPECT_TRUE(Translator(Language::english)(from).starts_with("Days are counted from November 27, 2026."));
    EXPECT_TRUE(Translator(Language::spanish)(from).starts_with("Los días se cuentan desde el 27 de noviembre de 2026."));
}

TEST(Translator, NotesWhatIsMissing) {
    const Translator say(Language::spanish);
    EXPECT_EQ(say("no such text of {}", {"nobody said this"}), "no such text of nobody said this");
    EXPECT_EQ(say("{} / {}", {"1", "2"}), "1 / 2");
    EXPECT_EQ(say.missing(), (std::set<std::string, std::less<>>{"no such text of {}", "nobody said this"}));
}

TEST(Translator, HasCodes) {
    EXPECT_STREQ(language_code(Language::english), "en");
    EXPECT_STREQ(language_code(Language::spanish), "es");
}

}  // namespace
}  // namespace seamward
