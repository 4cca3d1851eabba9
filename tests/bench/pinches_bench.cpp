// SPDX-License-Identifier: GPL-3.0-or-later
// Pinches of all spaces, 10^6 gaps and 10^5 spaces, against Kruskal of Boost.Graph and of LEMON on the same edges. Each
// side starts from a graph in its own form that is there already, and ends with the pinch of every space.
#include "network/pinches.h"
#include "tests/bench/bench.h"
#include "tests/support/peers.h"
#include "tests/support/random_survey.h"

namespace seamward::bench {

std::vector<Row> bench_pinches() {
    const Survey survey = test::random_survey({.spaces = 100'000,
                                               .gaps = 1'000'000,
                                               .outdoors_share = 0.0001,
                                               .living_share = 0.02,
                                               .source_share = 0,
                                               .located_share = 0},
                                              1);
    const Network network = make_network(survey, [](const Gap&) { return true; });
    const Roles roles(survey, {});
    const test::SharedGraph shared(network, roles);
    const test::BoostForest boost(shared);
    const test::LemonForest lemon(shared);

    const std::vector<double> ours = pinches(network, roles);
    require(ours == boost.pinches(), "pinches against Boost.Graph");
    require(ours == lemon.pinches(), "pinches against LEMON");

    const double our_time = median_seconds([&] { (void)pinches(network, roles); });
    return {{"pinches of all spaces, 1e6 gaps, Boost.Graph", our_time, median_seconds([&] { (void)boost.pinches(); }),
             "kruskal_minimum_spanning_tree"},
            {"pinches of all spaces, 1e6 gaps, LEMON", our_time, median_seconds([&] { (void)lemon.pinches(); }), "kruskal"}};
}

}  // namespace seamward::bench
