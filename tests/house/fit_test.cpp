// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/fit.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace seamward::test {
namespace {

using Stretches = std::vector<std::pair<double, double>>;

/// A base of 7 m with prongs from x = 0 to 1, 2 to 4 and 6 to 7, 3 m high.
Loop comb() { return {{0, 0}, {7, 0}, {7, 3}, {6, 3}, {6, 1}, {4, 1}, {4, 3}, {2, 3}, {2, 1}, {1, 1}, {1, 3}, {0, 3}}; }

/// Whichever way the loop runs and wherever it begins: of the edges to the left and right the nearest ones count.
TEST(StretchAt, IsBetweenTheNearestEdges) {
    for (const bool turned : {false, true}) {
        Loop loop = comb();
        if (turned) std::reverse(loop.begin(), loop.end());
        for (std::size_t begin = 0; begin < loop.size(); ++begin) {
            std::rotate(loop.begin(), loop.begin() + 1, loop.end());
            EXPECT_EQ(stretch_at(loop, {0.5, 2}), (std::pair(0.0, 1.0)));
            EXPECT_EQ(stretch_at(loop, {3.5, 2}), (std::pair(2.0, 4.0)));
            EXPECT_EQ(stretch_at(loop, {6.5, 2}), (std::pair(6.0, 7.0)));
            EXPECT_EQ(stretch_at(loop, {3.5, 0.5}), (std::pair(0.0, 7.0)));
        }
    }
}

TEST(StretchAt, IsTheWholeWidthFromOutside) {
    EXPECT_EQ(stretch_at(comb(), {5, 2}), (std::pair(0.0, 7.0)));
    EXPECT_EQ(stretch_at(comb(), {3, 9}), (std::pair(0.0, 7.0)));
}

TEST(StretchesOf, AreAllThatALineMeets) {
    const Figure figure{comb(), {{{2.5, 2}, {2.5, 2.5}, {3.5, 2.5}, {3.5, 2}}}};
    EXPECT_EQ(stretches_of(figure, 0.5, false), (Stretches{{0, 7}}));
    EXPECT_EQ(stretches_of(figure, 1.5, false), (Stretches{{0, 1}, {2, 4}, {6, 7}}));
    EXPECT_EQ(stretches_of(figure, 2.2, false), (Stretches{{0, 1}, {2, 2.5}, {3.5, 4}, {6, 7}}));
    EXPECT_EQ(stretches_of(figure, 3, true), (Stretches{{0, 2}, {2.5, 3}}));
    EXPECT_EQ(stretches_of(figure, 5, true), (Stretches{{0, 1}}));
    EXPECT_TRUE(stretches_of(figure, 4, false).empty());
}

}  // namespace
}  // namespace seamward::test
