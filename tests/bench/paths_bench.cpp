// SPDX-License-Identifier: GPL-3.0-or-later
// Ranked paths. No library at hand lists them in our order. The peer that gives the same answer is Yen's algorithm as in the
// textbook, with a Dijkstra for every deviation, at a size that it can bear. At 10^5 gaps one run of Boost's Dijkstra for
// widest paths on the same network stands beside our 100 paths for scale; it gives the pinches only.
#include "network/pinches.h"
#include "paths/ranked_paths.h"
#include "tests/bench/bench.h"
#include "tests/support/peers.h"
#include "tests/support/random_survey.h"
#include "tests/support/textbook_yen.h"

namespace seamward::bench {

namespace {

std::vector<EntryPath> best_paths(const Survey& survey, const Network& network, const Roles& roles, bool by_length,
                                  std::size_t k) {
    const RunContext context;
    RankedPaths ranked(survey, network, roles, by_length, context);
    std::vector<EntryPath> paths;
    while (paths.size() < k) {
        std::optional<EntryPath> path = ranked.next();
        if (!path) break;
        paths.push_back(std::move(*path));
    }
    return paths;
}

constexpr std::uint32_t all_differ = 100'000'000;

/// Ten gaps to a space, as random networks go.
Survey sparse(std::uint32_t gaps, std::uint32_t widths, bool located) {
    return test::random_survey({.spaces = gaps / 10,
                                .gaps = gaps,
                                .distinct_widths = widths,
                                .outdoors_share = 0.001,
                                .living_share = 0.02,
                                .source_share = 0,
                                .located_share = located ? 1.0 : 0.0},
                               3);
}

/// A yard with half of all gaps, four cavities, ten rooms, every gap of one width and with a position.
Survey hub(std::uint32_t gaps) {
    Survey survey;
    const auto add_space = [&](const std::string& id, SpaceKind kind) { survey.spaces.push_back({id, "", kind}); };
    add_space("yard", SpaceKind::outdoors);
    for (int i = 0; i < 4; ++i) add_space("cavity-" + std::to_string(i), SpaceKind::cavity);
    for (int i = 0; i < 10; ++i) add_space("room-" + std::to_string(i), SpaceKind::living);
    for (std::uint32_t i = 0; i < gaps; ++i) {
        Gap gap;
        gap.id = "g" + std::to_string(i);
        const SpaceIndex cavity{1 + i / 2 % 4};
        gap.between = {i % 2 == 0 ? SpaceIndex{0} : SpaceIndex{5 + i / 8 % 10}, cavity};
        gap.shape = Slot{0.005, 1};
        gap.at = Point{0.01 * (i * 7919 % 3000), 0.01 * (i * 104'729 % 2000), 0.1 * (i % 30)};
        survey.gaps.push_back(std::move(gap));
    }
    return survey;
}

Row beside_one_dijkstra(const std::string& name, const Survey& survey, bool by_length) {
    const Network network = make_network(survey, [](const Gap&) { return true; });
    const Roles roles(survey, {});
    const test::SharedGraph shared(network, roles);
    const test::BoostForest boost(shared);
    require(boost.pinches_by_dijkstra() == pinches(network, roles), "pinches against Boost's Dijkstra");
    require(best_paths(survey, network, roles, by_length, 100).size() == 100, "100 paths");
    return {"100 best paths, 1e5 gaps, " + name,
            median_seconds([&] { (void)best_paths(survey, network, roles, by_length, 100); }),
            median_seconds([&] { (void)boost.pinches_by_dijkstra(); }), "for scale: one Dijkstra of Boost.Graph"};
}

}  // namespace

std::vector<Row> bench_ranked_paths() {
    const Survey survey = sparse(2'000, all_differ, false);
    const Network network = make_network(survey, [](const Gap&) { return true; });
    const Roles roles(survey, {});
    require(best_paths(survey, network, roles, false, 100) == test::textbook_yen(survey, network, roles, 100),
            "paths against Yen");
    return {
        {"100 best paths, 2e3 gaps, textbook Yen", median_seconds([&] { (void)best_paths(survey, network, roles, false, 100); }),
         median_seconds([&] { (void)test::textbook_yen(survey, network, roles, 100); }), "a Dijkstra for every deviation"},
        beside_one_dijkstra("all widths differ", sparse(100'000, all_differ, false), false),
        beside_one_dijkstra("16 widths, located", sparse(100'000, 16, true), true),
        beside_one_dijkstra("one width, one hub", hub(100'000), true)};
}

}  // namespace seamward::bench
