// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/field_check.h"

#include <gtest/gtest.h>

#include "catalog/shipped.h"

namespace seamward::test {
namespace {

std::string check(double millimeters) { return field_check(millimeters / 1000, shipped_gauges().rows).english(); }

TEST(FieldCheck, NamesTheGaugeThatJustGoesIn) {
    EXPECT_EQ(check(0.76), "a card");
    EXPECT_EQ(check(1.35), "a dime");
    EXPECT_EQ(check(2.15), "a half dollar");
    EXPECT_EQ(check(12.7), "a 1/2 in drill shank");
}

TEST(FieldCheck, NamesTheGaugesOnBothSides) {
    EXPECT_EQ(check(1.2), "between a card and a dime");
    EXPECT_EQ(check(1.4), "between a dime and a cent");
    EXPECT_EQ(check(3), "between a half dollar and two stacked cents");
    EXPECT_EQ(check(6.5), "between a 1/4 in drill shank and a pencil");
}

TEST(FieldCheck, NamesTheEndsOfTheScale) {
    EXPECT_EQ(check(0.3), "thinner than a card");
    EXPECT_EQ(check(0), "thinner than a card");
    EXPECT_EQ(check(25), "more than a 1/2 in drill shank");
}

TEST(FieldCheck, TakesAFewMicrometersForTheSame) {
    EXPECT_EQ(check(0.764), "a card");
    EXPECT_EQ(check(0.756), "a card");
    EXPECT_EQ(check(0.77), "between a card and a dime");
    EXPECT_EQ(check(0.75), "thinner than a card");
    EXPECT_EQ(check(12.704), "a 1/2 in drill shank");
    EXPECT_EQ(check(12.71), "more than a 1/2 in drill shank");
}

TEST(FieldCheck, NeverSaysMoreThanTheGaugeThatGoesIn) {
    for (const Gauge& gauge : shipped_gauges().rows)
        EXPECT_EQ(field_check(gauge.thickness, shipped_gauges().rows).english(), gauge.name);
}

TEST(FieldCheck, SaysNothingWithoutGauges) { EXPECT_TRUE(field_check(0.001, {}).empty()); }

}  // namespace
}  // namespace seamward::test
