// SPDX-License-Identifier: GPL-3.0-or-later
// Minimum cuts: the cheapest closing for every width over 10^5 gaps, where a peer makes one cut for each rung, and one cut over
// 10^6 gaps. Both sides get the same edges. A peer's graph holds just the edges that count and is there before its time starts;
// our time begins with the gaps and ends with the closings of all rungs, or, in the rows that say so, it is the flow alone, on a
// graph that is there too.
#include <algorithm>
#include <chrono>
#include <numeric>
#include <random>

#include "network/cut.h"
#include "tests/bench/bench.h"
#include "tests/support/flow_peers.h"
#include "tests/support/random_survey.h"

namespace seamward::bench {

namespace {

struct Case {
    Survey survey;
    std::vector<PricedLink> links;
    std::vector<FlowEdge> edges;  ///< of `links`, in falling order of width; node 0 is outside, 1 inside
    std::vector<double> widths;   ///< of `edges`
    std::uint32_t nodes = 0;
};

Case make_case(std::uint32_t spaces, std::uint32_t gaps, std::uint32_t widths, std::uint64_t seed) {
    Case made;
    made.survey = test::random_survey({.spaces = spaces,
                                       .gaps = gaps,
                                       .distinct_widths = widths,
                                       .outdoors_share = 0.002,
                                       .living_share = 0.1,
                                       .source_share = 0,
                                       .located_share = 0},
                                      seed);
    std::mt19937_64 random(seed);
    for (std::uint32_t i = 0; i < gaps; ++i) {
        const Gap& gap = made.survey.gaps[i];
        made.links.push_back({gap.between[0],
                              gap.between[1],
                              {i},
                              clear_width(gap.shape),
                              Money{static_cast<std::int64_t>(300 + random() % 20'000)}});
    }
    const Roles roles(made.survey, {});
    std::vector<std::uint32_t> node(spaces);
    made.nodes = 2;
    for (std::uint32_t i = 0; i < spaces; ++i) node[i] = roles.starts({i}) ? 0 : roles.ends({i}) ? 1 : made.nodes++;
    std::vector<std::uint32_t> order(gaps);
    std::iota(order.begin(), order.end(), 0U);
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return made.links[a].width > made.links[b].width; });
    for (const std::uint32_t link : order) {
        const PricedLink& of = made.links[link];
        made.edges.push_back({node[of.a.value], node[of.b.value], of.price->cents, of.price->cents});
        made.widths.push_back(of.width);
    }
    return made;
}

/// How many edges count at each width.
std::vector<std::size_t> ends_of_widths(const Case& of) {
    std::vector<std::size_t> ends;
    for (std::size_t i = 0; i < of.widths.size(); ++i) {
        if (i + 1 == of.widths.size() || of.widths[i + 1] != of.widths[i]) ends.push_back(i + 1);
    }
    return ends;
}

/// Seconds that a peer takes for one cut a width, and its prices.
template <class Peer>
double one_cut_a_width(const Case& of, std::vector<std::int64_t>& values) {
    double seconds = 0;
    values.clear();
    for (const std::size_t end : ends_of_widths(of)) {
        Peer peer(of.nodes, std::span(of.edges).first(end));
        const auto begin = std::chrono::steady_clock::now();
        values.push_back(peer.value(0, 1));
        seconds += std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    }
    return seconds;
}

template <class Peer>
double median_of_ladders(const Case& of, std::vector<std::int64_t>& values) {
    std::vector<double> times;
    for (int i = 0; i < 5; ++i) times.push_back(one_cut_a_width<Peer>(of, values));
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

/// Seconds of our flow over a graph that is there, opened width by width, and its prices.
double median_of_growing_flows(const Case& of, std::vector<std::int64_t>& values) {
    std::vector<double> times;
    for (int i = 0; i < 5; ++i) {
        GrowingFlow flow(of.nodes, 0, 1, of.edges);
        values.clear();
        const auto begin = std::chrono::steady_clock::now();
        for (const std::size_t end : ends_of_widths(of)) {
            flow.open(end - flow.open_edges());
            values.push_back(flow.value());
        }
        times.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
    }
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

/// The prices that a ladder has, one for each time that they rise.
bool same_prices(const CutLadder& ladder, const std::vector<std::int64_t>& values) {
    std::vector<std::int64_t> rising;
    for (const std::int64_t value : values) {
        if (value > (rising.empty() ? 0 : rising.back())) rising.push_back(value);
    }
    return std::equal(rising.begin(), rising.end(), ladder.rungs.begin(), ladder.rungs.end(),
                      [](std::int64_t value, const Rung& rung) { return value == rung.price.cents; });
}

}  // namespace

std::vector<Row> bench_cuts() {
    std::vector<Row> rows;
    {
        const Case of = make_case(20'000, 100'000, 100, 5);
        const Roles roles(of.survey, {});
        const auto ours = [&] { return cut_ladder(roles, of.survey.spaces.size(), of.links); };
        const CutLadder ladder = ours();
        std::vector<std::int64_t> values;
        const double boost = median_of_ladders<test::BoostFlow>(of, values);
        require(same_prices(ladder, values), "ladder against Boost.Graph");
        const double lemon = median_of_ladders<test::LemonFlow>(of, values);
        require(same_prices(ladder, values), "ladder against LEMON");
        std::vector<std::int64_t> of_flow;
        const double flow_time = median_of_growing_flows(of, of_flow);
        require(of_flow == values, "growing flow against LEMON");
        const double our_time = median_seconds([&] { (void)ours(); });
        const std::string name = "price ladder, 1e5 gaps, " + std::to_string(values.size()) + " widths";
        rows.push_back({name + ", Boost.Graph", our_time, boost, "one boykov_kolmogorov_max_flow a width"});
        rows.push_back({name + ", LEMON", our_time, lemon, "one Preflow::runMinCut a width"});
        rows.push_back({name + ", flow alone, Boost.Graph", flow_time, boost, "one boykov_kolmogorov_max_flow a width"});
        rows.push_back({name + ", flow alone, LEMON", flow_time, lemon, "one Preflow::runMinCut a width"});
    }
    const Case of = make_case(100'000, 1'000'000, 1'000'000, 6);
    const Roles roles(of.survey, {});
    const auto ours = [&] { return cheapest_cut(roles, of.survey.spaces.size(), of.links); };
    const Cut cut = ours();
    test::BoostFlow boost(of.nodes, of.edges);
    test::LemonFlow lemon(of.nodes, of.edges);
    require(cut.price.cents == boost.value(0, 1), "cut against Boost.Graph");
    require(cut.price.cents == lemon.value(0, 1), "cut against LEMON");
    const double our_time = median_seconds([&] { (void)ours(); });
    std::vector<double> flow_times;
    for (int i = 0; i < 5; ++i) {
        GrowingFlow flow(of.nodes, 0, 1, of.edges);
        const auto begin = std::chrono::steady_clock::now();
        flow.open(of.edges.size());
        flow_times.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
        require(flow.value() == cut.price.cents, "growing flow against the cut");
    }
    std::sort(flow_times.begin(), flow_times.end());
    const double boost_time = median_seconds([&] { (void)boost.value(0, 1); });
    const double lemon_time = median_seconds([&] { (void)lemon.value(0, 1); });
    rows.push_back({"one cheapest cut, 1e6 gaps, Boost.Graph", our_time, boost_time, "boykov_kolmogorov_max_flow"});
    rows.push_back({"one cheapest cut, 1e6 gaps, LEMON", our_time, lemon_time, "Preflow::runMinCut"});
    rows.push_back({"one flow alone, 1e6 gaps, Boost.Graph", flow_times[2], boost_time, "boykov_kolmogorov_max_flow"});
    rows.push_back({"one flow alone, 1e6 gaps, LEMON", flow_times[2], lemon_time, "Preflow::runMinCut"});
    return rows;
}

}  // namespace seamward::bench
