// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/survey.h"

#include <gtest/gtest.h>

namespace seamward::test {
namespace {

TEST(PointDistance, IsTheLengthOfTheStraightLine) {
    EXPECT_EQ(distance({0, 0, 0}, {3, 4, 0}), 5);
    EXPECT_EQ(distance({1, 1, 1}, {2, 3, 3}), 3);
    EXPECT_EQ(distance({0, 0, -2}, {0, 0, 5}), 7);
    EXPECT_EQ(distance({4.5, 9, 0.05}, {4.5, 9, 0.05}), 0);
    EXPECT_EQ(distance({2, 3, 6}, {0, 0, 0}), distance({0, 0, 0}, {2, 3, 6}));
}

TEST(Space, StartsPathsOutdoorsAndAtSources) {
    EXPECT_TRUE((Space{"a", "", SpaceKind::outdoors, false}).starts_paths());
    EXPECT_TRUE((Space{"a", "", SpaceKind::living, true}).starts_paths());
    EXPECT_TRUE((Space{"a", "", SpaceKind::cavity, true}).starts_paths());
    for (const SpaceKind kind : {SpaceKind::cavity, SpaceKind::attached, SpaceKind::living, SpaceKind::harborage}) {
        EXPECT_FALSE((Space{"a", "", kind, false}).starts_paths());
        EXPECT_EQ((Space{"a", "", kind, false}).is_living(), kind == SpaceKind::living);
    }
}

TEST(Label, IsTheNameOrElseTheId) {
    EXPECT_EQ((Space{"a", "the yard"}).label(), "the yard");
    EXPECT_EQ((Space{"a", ""}).label(), "a");
    Gap gap;
    gap.id = "g";
    EXPECT_EQ(gap.label(), "g");
    gap.name = "the joint";
    EXPECT_EQ(gap.label(), "the joint");
}

TEST(Gap, LeadsToItsOtherSide) {
    Gap gap;
    gap.between = {SpaceIndex{4}, SpaceIndex{7}};
    EXPECT_EQ(gap.across({4}), SpaceIndex{7});
    EXPECT_EQ(gap.across({7}), SpaceIndex{4});
}

TEST(Index, IsInvalidUntilItIsSet) {
    EXPECT_FALSE(SpaceIndex().valid());
    EXPECT_TRUE(SpaceIndex{0}.valid());
    EXPECT_LT(GapIndex{1}, GapIndex{2});
}

TEST(MoneySum, IsExact) {
    EXPECT_EQ(Money{10} + Money{20}, Money{30});
    EXPECT_EQ(Money{800} * 30, Money{24'000});
    EXPECT_LT(Money{1}, Money{2});
}

}  // namespace
}  // namespace seamward::test
