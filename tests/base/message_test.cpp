// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/message.h"

#include <gtest/gtest.h>

#include <stdexcept>
#include <vector>

namespace seamward {
namespace {

TEST(Message, PutsItsPartsIn) {
    EXPECT_EQ(message("{} leads to {}", {"screed", "den"}).english(), "screed leads to den");
    EXPECT_EQ(message("{}: {}", {message("{} of {}", {as_it_stands(std::size_t{2}), "3"}), "gaps"}).english(), "2 of 3: gaps");
    EXPECT_EQ(message("{2} {1}", {"a", "b"}).english(), "b a");
}

// What a job names may have braces in it.
TEST(Message, BracesOfPartsAreNoPlaces) {
    EXPECT_EQ(Message("a {} b {1}").english(), "a {} b {1}");
    EXPECT_EQ(message("{}, {}", {"{}", "{1}"}).english(), "{}, {1}");
    EXPECT_EQ(message("{0} {x} { } {", {}).english(), "{0} {x} { } {");
}

TEST(Message, PartsAndPlacesAreAsMany) {
    EXPECT_THROW((void)message("{} and {}", {"a"}), std::invalid_argument);
    EXPECT_THROW((void)message("nothing", {"a"}), std::invalid_argument);
}

TEST(Message, FillsInByTurnAndByPosition) {
    EXPECT_EQ(fill_in("{2}, {1}", {"a", "b"}), "b, a");
    EXPECT_EQ(fill_in("{}{}", {"a", "b"}), "ab");
    EXPECT_EQ(fill_in("{3}", {"a"}), "");
    EXPECT_EQ(fill_in("{} stays", {}), "{} stays");
}

TEST(Message, CountsOneAndMany) {
    EXPECT_EQ(counted_message(1, "1 gap", "{} gaps").english(), "1 gap");
    EXPECT_EQ(counted_message(0, "1 gap", "{} gaps").english(), "0 gaps");
    EXPECT_EQ(counted_message(7, "1 gap", "{} gaps").english(), "7 gaps");
}

TEST(Message, ListsAndJoins) {
    EXPECT_EQ(listed_message({}).english(), "");
    EXPECT_EQ(listed_message({"A"}).english(), "A");
    EXPECT_EQ(listed_message({"A", "B"}).english(), "A and B");
    EXPECT_EQ(listed_message({"A", "B", "C"}).english(), "A, B and C");
    EXPECT_EQ(joined_message({"A", "B", "C"}, "; ").english(), "A; B; C");
    EXPECT_EQ(joined_message({"A"}, "; ").english(), "A");
    EXPECT_TRUE(joined_message({}, "; ").empty());
}

/// One row of a table says `bath of {}` for all apartments; what only looks like one stays whole.
TEST(Message, TakesTheNumberOfAnApartmentApart) {
    const Message bath = as_named("bath of 103");
    EXPECT_EQ(bath.pattern, "bath of {}");
    EXPECT_EQ(bath.parts, std::vector{as_it_stands("103")});
    EXPECT_EQ(bath.kind, Message::Kind::name);
    EXPECT_EQ(bath.english(), "bath of 103");
    EXPECT_EQ(as_named("hall wall 2104").english(), "hall wall 2104");
    for (const char* whole :
         {"bedroom 2", "story 12", "103", " 103", "Building Code 2018", "bath {} 103", "wall-103", "", "kitchen"}) {
        EXPECT_EQ(as_named(whole).pattern, whole);
        EXPECT_TRUE(as_named(whole).parts.empty()) << whole;
    }
}

TEST(Message, SlotsAreFoundWhereTheyStand) {
    std::string found;
    for_each_slot("a {} b {2}{9} {0} {12}", [&](const MessageSlot& slot) {
        found += std::to_string(slot.at) + '-' + std::to_string(slot.end) +
                 (slot.which ? '=' + std::to_string(*slot.which) : "") + ' ';
    });
    EXPECT_EQ(found, "2-4 7-10=1 10-13=8 ");
}

}  // namespace
}  // namespace seamward
