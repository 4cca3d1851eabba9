// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/on_ways.h"

#include <gtest/gtest.h>

#include "tests/support/brute_force.h"
#include "tests/support/random_survey.h"

namespace seamward {
namespace {

TEST(LinksOnWays, AreThoseOfAllPaths) {
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Survey survey = test::random_survey({.spaces = 8, .gaps = 13}, seed);
        std::vector<bool> expected(survey.gaps.size(), false);
        for (const EntryPath& path : test::all_paths(survey, {}, [](const Gap&) { return true; })) {
            for (const GapIndex gap : path.gaps) expected[gap.value] = true;
        }
        const Network network = make_network(survey, [](const Gap&) { return true; });
        std::vector<bool> on(survey.gaps.size(), false);
        for (const Roles& roles : one_way_roles(survey)) {
            const std::vector<bool> on_these = links_on_ways(network, roles);
            for (std::size_t i = 0; i < on.size(); ++i) on[i] = on[i] || on_these[i];
        }
        EXPECT_EQ(on, expected) << seed;
    }
}

}  // namespace
}  // namespace seamward
