// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/pinches.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "tests/support/brute_force.h"
#include "tests/support/peers.h"
#include "tests/support/random_survey.h"
#include "tests/support/survey_builder.h"

namespace seamward::test {
namespace {

Network open_gaps(const Survey& survey) {
    return make_network(survey, [](const Gap& gap) { return !is_shut(gap.shape); });
}

double pinch_of(const SurveyBuilder& house, const std::string& space) {
    const double pinch = pinches(open_gaps(house.survey()), Roles(house.survey(), {}))[house[space].value];
    return pinch == no_way ? no_way : 1000 * pinch;
}

/// Sizes that make the engine take each of its branches: fewer and many more gaps than spaces, ties or none.
RandomSurveySettings settings_for(std::uint64_t seed) {
    const auto spaces = static_cast<std::uint32_t>(5 + seed % 60);
    constexpr std::array widths{1U, 2U, 7U, 1'000'000U};
    return {.spaces = spaces,
            .gaps = static_cast<std::uint32_t>(spaces * (1 + seed % 17)),
            .distinct_widths = widths.at(seed % widths.size()),
            .outdoors_share = 0.1,
            .living_share = 0.2,
            .source_share = 0.05};
}

/// Boost.Graph: kruskal_minimum_spanning_tree and, apart from it, dijkstra_shortest_paths with max-min.
TEST(Pinches, AgreeWithBoostGraphOnRandomNetworks) {
    for (std::uint64_t seed = 0; seed < 1000; ++seed) {
        const Survey survey = random_survey(settings_for(seed), seed);
        const Network network = open_gaps(survey);
        const Roles roles(survey, {});
        const SharedGraph shared(network, roles);
        const BoostForest boost(shared);
        const std::vector<double> ours = pinches(network, roles);
        ASSERT_EQ(ours, boost.pinches()) << "seed " << seed;
        ASSERT_EQ(ours, boost.pinches_by_dijkstra()) << "seed " << seed;
    }
}

/// LEMON: kruskal.
TEST(Pinches, AgreeWithLemonOnRandomNetworks) {
    for (std::uint64_t seed = 0; seed < 1000; ++seed) {
        const Survey survey = random_survey(settings_for(seed), seed + 5000);
        const Network network = open_gaps(survey);
        const Roles roles(survey, {});
        const SharedGraph shared(network, roles);
        ASSERT_EQ(pinches(network, roles), LemonForest(shared).pinches()) << "seed " << seed;
    }
}

TEST(Pinches, AreThoseOfTheBestPathOfAllPaths) {
    for (std::uint64_t seed = 0; seed < 500; ++seed) {
        const Survey survey = random_survey({.spaces = 7, .gaps = 12, .distinct_widths = 30, .source_share = 0.05}, seed);
        const std::vector<double> ours = pinches(open_gaps(survey), Roles(survey, {}));
        std::vector<double> expected(survey.spaces.size(), no_way);
        for (std::uint32_t i = 0; i < survey.spaces.size(); ++i) {
            const std::vector<SpaceIndex> to{SpaceIndex{i}};
            for (const EntryPath& path : all_paths(survey, to, [](const Gap&) { return true; })) {
                expected[i] = std::max(expected[i], clear_width(survey[pinch_gap(survey, path)].shape));
            }
            if (survey.spaces[i].starts_paths()) expected[i] = std::numeric_limits<double>::infinity();
        }
        ASSERT_EQ(ours, expected) << "seed " << seed;
    }
}

/// The widest path from Maldon to Feering has bandwidth 29; its edges have 40, 29, 31, 40 and 46 (encyclopedia article on
/// the widest path problem; the whole map is in a figure there, so only the path itself is used).
TEST(Pinches, PublishedMaldonToFeering) {
    SurveyBuilder map;
    map.outdoors("Maldon").cavity("Clacton").cavity("Tiptree").cavity("Harwich").cavity("Blaxhall").living("Feering");
    map.slot("1", "Maldon", "Clacton", 40).slot("2", "Clacton", "Tiptree", 29).slot("3", "Tiptree", "Harwich", 31);
    map.slot("4", "Harwich", "Blaxhall", 40).slot("5", "Blaxhall", "Feering", 46);
    EXPECT_NEAR(pinch_of(map, "Feering"), 29, 1e-9);
    EXPECT_NEAR(pinch_of(map, "Clacton"), 40, 1e-9);
}

/// The flow network of Cormen et al., Introduction to Algorithms, as undirected gaps: the widest way from s to t is 12.
TEST(Pinches, TextbookNetwork) {
    const SurveyBuilder net = textbook_network();
    EXPECT_NEAR(pinch_of(net, "t"), 12, 1e-9);
}

TEST(Pinches, ALivingSpaceIsNoWayToTheNext) {
    SurveyBuilder house;
    house.outdoors("yard").living("hall").living("bedroom").slot("door", "yard", "hall", 9).slot("under", "hall", "bedroom", 8);
    EXPECT_NEAR(pinch_of(house, "hall"), 9, 1e-9);
    EXPECT_EQ(pinch_of(house, "bedroom"), no_way);
}

TEST(Pinches, AreInfiniteWherePathsStartAndSayWhereNoWayLeads) {
    SurveyBuilder house;
    house.outdoors("yard").cavity("attic").living("den");
    EXPECT_TRUE(std::isinf(pinch_of(house, "yard")));
    EXPECT_EQ(pinch_of(house, "attic"), no_way);
    EXPECT_EQ(pinch_of(house, "den"), no_way);
}

}  // namespace
}  // namespace seamward::test
