// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/width_tally.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <random>
#include <vector>

namespace seamward::test {
namespace {

using Ranks = std::vector<WidthTallies::Rank>;

/// The order written down anew: sorted lists filled up with infinity; larger at the first difference is better.
std::strong_ordering expected_order(Ranks x, Ranks y) {
    std::sort(x.begin(), x.end());
    std::sort(y.begin(), y.end());
    x.resize(64, std::numeric_limits<WidthTallies::Rank>::max());
    y.resize(64, std::numeric_limits<WidthTallies::Rank>::max());
    return y <=> x;
}

TEST(WidthTallies, OrderSumsLikeSortedLists) {
    std::mt19937_64 dice(5);
    for (const WidthTallies::Rank rank_count : {1U, 2U, 3U, 8U, 100U, 100'000U}) {
        WidthTallies tallies(rank_count);
        const auto draw = [&](Ranks& all) {
            WidthTallies::Sum sum;
            for (auto& part : sum.parts) {
                for (std::size_t n = dice() % 5; n > 0; --n) {
                    all.push_back(static_cast<WidthTallies::Rank>(dice() % rank_count));
                    part = tallies.plus(part, all.back());
                }
            }
            if (dice() % 2 == 0) {
                sum.extra = static_cast<WidthTallies::Rank>(dice() % rank_count);
                all.push_back(sum.extra);
            }
            return sum;
        };
        for (int round = 0; round < 3000; ++round) {
            Ranks x;
            Ranks y;
            const WidthTallies::Sum x_sum = draw(x);
            const WidthTallies::Sum y_sum = draw(y);
            ASSERT_EQ(tallies.compare(x_sum, y_sum), expected_order(x, y)) << rank_count << " ranks, round " << round;
            ASSERT_EQ(tallies.equal(x_sum, y_sum), expected_order(x, y) == std::strong_ordering::equal);
        }
    }
}

TEST(WidthTallies, TheEmptyTallyIsBest) {
    WidthTallies tallies(4);
    const WidthTallies::Sum nothing;
    const WidthTallies::Sum widest{{}, 3};
    EXPECT_TRUE(tallies.compare(nothing, widest) < 0);
}

}  // namespace
}  // namespace seamward::test
