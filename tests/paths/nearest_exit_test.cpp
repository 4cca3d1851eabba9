// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/nearest_exit.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

#include "paths/entry_path.h"

namespace seamward::test {
namespace {

/// Against trying every exit, for few and many, spread out, in a line, and many at one point.
TEST(NearestExit, AgreesWithTryingAll) {
    std::mt19937_64 dice(23);
    for (const unsigned count : {1U, 2U, 16U, 17U, 300U, 3000U}) {
        for (const unsigned grid : {1U, 3U, 1000U}) {
            std::vector<NearestExit::Exit> exits;
            for (unsigned i = 0; i < count; ++i) {
                exits.push_back(
                    {{0.1 * static_cast<double>(dice() % grid), 0.1 * static_cast<double>(dice() % grid), grid == 3 ? 0.0 : 1.0},
                     static_cast<std::int64_t>(dice() % 4) * 100'000'000});
            }
            const NearestExit index(exits);
            for (int query = 0; query < 200; ++query) {
                const Point from{0.05 * static_cast<double>(dice() % 3000) - 20, 0.05 * static_cast<double>(dice() % 3000) - 20,
                                 0.5};
                std::int64_t shortest = std::numeric_limits<std::int64_t>::max();
                for (const auto& exit : exits) shortest = std::min(shortest, exit.rest + nanometers_between(from, exit.at));
                std::uint32_t first = 0;
                while (exits[first].rest + nanometers_between(from, exits[first].at) != shortest) ++first;
                ASSERT_EQ(index.shortest(from), shortest) << count << " exits, grid " << grid;
                ASSERT_EQ(index.first_of_length(from, shortest), first) << count << " exits, grid " << grid;
            }
        }
    }
}

}  // namespace
}  // namespace seamward::test
