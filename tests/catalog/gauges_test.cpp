// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "catalog/shipped.h"

namespace seamward::test {
namespace {

double thickness(const char* id) {
    const Gauge* gauge = shipped_gauges().find(id);
    return gauge == nullptr ? -1 : gauge->thickness;
}

/// ISO/IEC 7810, size ID-1: 0.76 mm, tolerance 0.68 to 0.84 mm.
TEST(ShippedGauges, CardIsWithinItsStandard) {
    EXPECT_EQ(thickness("card"), 0.00076);
    EXPECT_GE(thickness("card"), 0.00068);
    EXPECT_LE(thickness("card"), 0.00084);
}

/// United States Mint, Coin Specifications.
TEST(ShippedGauges, CoinsAreAsMinted) {
    EXPECT_EQ(thickness("dime"), 0.00135);
    EXPECT_EQ(thickness("cent"), 0.00152);
    EXPECT_EQ(thickness("quarter"), 0.00175);
    EXPECT_EQ(thickness("nickel"), 0.00195);
    EXPECT_EQ(thickness("dollar"), 0.002);
    EXPECT_EQ(thickness("half-dollar"), 0.00215);
    for (const char* id : {"dime", "cent", "quarter", "nickel", "dollar", "half-dollar"})
        EXPECT_EQ(shipped_gauges().find(id)->source, "us-mint") << id;
}

/// Two stacked cents: 2 x 1.52 mm, a cent in the United States Mint's Coin Specifications.
TEST(ShippedGauges, StackedCentsSayHowTheyWereWorkedOut) {
    EXPECT_EQ(thickness("two-cents"), 0.00304);
    EXPECT_EQ(thickness("three-cents"), 0.00456);
    EXPECT_FALSE(shipped_gauges().find("two-cents")->computed.empty());
    EXPECT_FALSE(shipped_gauges().find("three-cents")->computed.empty());
}

/// No document was seen for these; drills by their nominal size.
TEST(ShippedGauges, PencilAndDrillsAreFromMemory) {
    for (const char* id : {"pencil", "drill-1-4-in", "drill-3-8-in", "drill-1-2-in"}) {
        ASSERT_NE(shipped_gauges().find(id), nullptr) << id;
        EXPECT_EQ(shipped_gauges().find(id)->source, "memory") << id;
    }
    EXPECT_EQ(thickness("drill-1-4-in"), 0.00635);
    EXPECT_EQ(thickness("drill-3-8-in"), 0.009525);
    EXPECT_EQ(thickness("drill-1-2-in"), 0.0127);
    EXPECT_GT(thickness("pencil"), 0.00635);  // a pencil that goes in proves more than 1/4 in
}

TEST(ShippedGauges, GoFromThinToThick) {
    double thinner = 0;
    for (const Gauge& gauge : shipped_gauges().rows) {
        EXPECT_GT(gauge.thickness, thinner) << gauge.id;
        thinner = gauge.thickness;
    }
}

}  // namespace
}  // namespace seamward::test
