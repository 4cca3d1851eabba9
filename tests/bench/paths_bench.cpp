// SPDX-License-Identifier: GPL-3.0-or-later
// Ranked paths. No library at hand lists them in our order, so the peers are one run of Boost's Dijkstra for widest
// paths on the same network, and Yen's algorithm as in the textbook with such a Dijkstra for every deviation.
#include "network/pinches.h"
#include "paths/ranked_paths.h"
#include "tests/bench/bench.h"
#include "tests/support/peers.h"
#include "tests/support/random_survey.h"
#include "tests/support/textbook_yen.h"

namespace seamward::bench {

namespace {

std::vector<EntryPath> best_paths(const Survey& survey, const Network& network, const Roles& roles, std::size_t k) {
    const RunContext context;
    RankedPaths ranked(survey, network, roles, false, context);
    std::vector<EntryPath> paths;
    while (paths.size() < k) {
        std::optional<EntryPath> path = ranked.next();
        if (!path) break;
        paths.push_back(std::move(*path));
    }
    return paths;
}

test::RandomSurveySettings network_of(std::uint32_t gaps, std::uint32_t widths) {
    return {.spaces = gaps / 10,
            .gaps = gaps,
            .distinct_widths = widths,
            .outdoors_share = 0.001,
            .living_share = 0.02,
            .source_share = 0,
            .located_share = 0};
}

}  // namespace

std::vector<Row> bench_ranked_paths() {
    std::vector<Row> rows;
    for (const std::uint32_t widths : {100'000'000U, 16U}) {
        const Survey survey = test::random_survey(network_of(100'000, widths), 3);
        const Network network = make_network(survey, [](const Gap&) { return true; });
        const Roles roles(survey, {});
        const test::SharedGraph shared(network, roles);
        const test::BoostForest boost(shared);
        require(boost.pinches_by_dijkstra() == pinches(network, roles), "pinches against Boost's Dijkstra");
        require(best_paths(survey, network, roles, 100).size() == 100, "100 paths");
        rows.push_back({"100 best paths, 1e5 gaps, " + std::string(widths == 16 ? "16 widths" : "all widths differ"),
                        median_seconds([&] { (void)best_paths(survey, network, roles, 100); }),
                        median_seconds([&] { (void)boost.pinches_by_dijkstra(); }), "peer: one Dijkstra of Boost.Graph"});
    }
    const Survey survey = test::random_survey(network_of(3'000, 100'000'000), 5);
    const Network network = make_network(survey, [](const Gap&) { return true; });
    const Roles roles(survey, {});
    require(best_paths(survey, network, roles, 20) == test::textbook_yen(survey, network, roles, 20), "paths against Yen");
    rows.push_back(
        {"20 best paths, 3e3 gaps, textbook Yen", median_seconds([&] { (void)best_paths(survey, network, roles, 20); }),
         median_seconds([&] { (void)test::textbook_yen(survey, network, roles, 20); }), "peer: a Dijkstra for every deviation"});
    return rows;
}

}  // namespace seamward::bench
