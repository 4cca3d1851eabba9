// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/phrases.h"

#include <gtest/gtest.h>

namespace seamward {
namespace {

TEST(Phrases, Lists) {
    EXPECT_EQ(listed({}), "");
    EXPECT_EQ(listed({"a"}), "a");
    EXPECT_EQ(listed({"a", "b"}), "a and b");
    EXPECT_EQ(listed({"a", "b", "c"}), "a, b and c");
    EXPECT_EQ(joined({"a", "b", "c"}, "; "), "a; b; c");
    EXPECT_EQ(counted(1, "gap", "gaps"), "1 gap");
    EXPECT_EQ(counted(0, "gap", "gaps"), "0 gaps");
}

TEST(Phrases, Times) {
    EXPECT_EQ(time_text(0.4), "0 min");
    EXPECT_EQ(time_text(59.4), "59 min");
    EXPECT_EQ(time_text(59.6), "1 h");
    EXPECT_EQ(time_text(190), "3 h 10 min");
}

TEST(Phrases, Percents) {
    EXPECT_EQ(percent_text(0), "0 %");
    EXPECT_EQ(percent_text(0.08), "8 %");
    EXPECT_EQ(percent_text(0.125), "12.5 %");
    EXPECT_EQ(percent_text(0.0825), "8.25 %");
    EXPECT_EQ(percent_text(1), "100 %");
}

}  // namespace
}  // namespace seamward
