// SPDX-License-Identifier: GPL-3.0-or-later
#include "graph/flow.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <random>

#include "tests/support/flow_peers.h"

namespace seamward {
namespace {

constexpr std::int64_t inf = GrowingFlow::most_flow;

GrowingFlow flow_of(std::uint32_t nodes, std::uint32_t from, std::uint32_t to, const std::vector<FlowEdge>& edges) {
    GrowingFlow flow(nodes, from, to, edges);
    flow.open(edges.size());
    return flow;
}

/// A flow keeps what comes in and what goes out of every inner node equal, and stays within its edges.
void expect_sound(const GrowingFlow& flow, std::uint32_t nodes, std::uint32_t from, std::uint32_t to,
                  const std::vector<FlowEdge>& edges) {
    std::vector<std::int64_t> net(nodes, 0);
    std::int64_t across = 0;
    for (std::size_t i = 0; i < flow.open_edges(); ++i) {
        const FlowEdge& edge = edges[i];
        if (edge.a == edge.b) continue;
        const std::int64_t along = flow.flow(i);
        EXPECT_LE(along, edge.along);
        EXPECT_GE(along, -edge.back);
        net[edge.a] -= along;
        net[edge.b] += along;
        if (flow.on_source_side(edge.a) && !flow.on_source_side(edge.b)) across += edge.along;
        if (flow.on_source_side(edge.b) && !flow.on_source_side(edge.a)) across += edge.back;
    }
    for (std::uint32_t node = 0; node < nodes; ++node)
        EXPECT_EQ(net[node], node == from ? -flow.value() : node == to ? flow.value() : 0) << node;
    EXPECT_EQ(across, flow.value()) << "a cut as cheap as the flow proves that both are best";
}

// Cormen, Leiserson, Rivest and Stein, Introduction to Algorithms, the chapter's running example; also test_digraph2 of networkx.
TEST(Flow, TextbookExample) {
    const std::vector<FlowEdge> edges{{0, 1, 16}, {0, 2, 13}, {1, 2, 10}, {2, 1, 4},  {1, 3, 12},
                                      {3, 2, 9},  {2, 4, 14}, {4, 3, 7},  {3, 5, 20}, {4, 5, 4}};
    const GrowingFlow flow = flow_of(6, 0, 5, edges);
    EXPECT_EQ(flow.value(), 23);
    for (const std::uint32_t node : {0U, 1U, 2U, 4U}) EXPECT_TRUE(flow.on_source_side(node)) << node;
    for (const std::uint32_t node : {3U, 5U}) EXPECT_FALSE(flow.on_source_side(node)) << node;
    expect_sound(flow, 6, 0, 5, edges);
}

// networkx, test_digraph3 and test_graph2: nodes x a b c d e y.
TEST(Flow, DirectedAndUndirectedDiffer) {
    std::vector<FlowEdge> edges{{0, 1, 3}, {0, 2, 1}, {1, 3, 3}, {2, 3, 5}, {2, 4, 4}, {4, 5, 2}, {3, 6, 2}, {5, 6, 3}};
    const GrowingFlow directed = flow_of(7, 0, 6, edges);
    EXPECT_EQ(directed.value(), 3);
    std::vector<std::uint32_t> side;
    for (std::uint32_t node = 0; node < 7; ++node) {
        if (directed.on_source_side(node)) side.push_back(node);
    }
    EXPECT_EQ(side, (std::vector<std::uint32_t>{0, 1, 3}));
    for (FlowEdge& edge : edges) edge.back = edge.along;
    const GrowingFlow undirected = flow_of(7, 0, 6, edges);
    EXPECT_EQ(undirected.value(), 4);
    EXPECT_FALSE(undirected.on_source_side(1)) << "of three cuts that tie, the one nearest to the source";
    expect_sound(undirected, 7, 0, 6, edges);
}

// networkx, test_digraph4, test_digraph1 and test_digraph_infcap_edges.
TEST(Flow, SmallPublishedCases) {
    EXPECT_EQ(flow_of(4, 0, 3, {{0, 1, 2}, {0, 2, 2}, {1, 2, 5}, {1, 3, 1}, {2, 1, 1}, {2, 3, 3}}).value(), 4);
    EXPECT_EQ(flow_of(4, 0, 3, {{0, 1, 1000}, {0, 2, 1000}, {2, 1, 1}, {1, 3, 1000}, {2, 3, 1000}}).value(), 2000);
    EXPECT_EQ(flow_of(5, 0, 4, {{0, 1, inf}, {0, 2, 30}, {1, 3, 25}, {2, 3, 12}, {1, 4, 60}, {3, 4, inf}}).value(), 97);
}

/// The least cut that parts the nodes in any two sides: node 0 against each other one.
std::int64_t least_cut_of_all(std::uint32_t nodes, const std::vector<FlowEdge>& edges,
                              std::vector<std::uint32_t>* side = nullptr) {
    std::int64_t least = inf;
    for (std::uint32_t other = 1; other < nodes; ++other) {
        const GrowingFlow flow = flow_of(nodes, 0, other, edges);
        if (flow.value() >= least) continue;
        least = flow.value();
        if (side == nullptr) continue;
        side->clear();
        for (std::uint32_t node = 0; node < nodes; ++node) {
            if (!flow.on_source_side(node)) side->push_back(node);
        }
    }
    return least;
}

std::vector<FlowEdge> both_ways(std::vector<FlowEdge> edges) {
    for (FlowEdge& edge : edges) edge.back = edge.along;
    return edges;
}

// Boost Graph Library, example stoer_wagner.cpp: assert(w == 7). The edge 3-4 stands there twice on purpose.
TEST(Flow, LeastCutOfTheBoostExample) {
    std::vector<std::uint32_t> side;
    const auto edges = both_ways({{3, 4, 0},
                                  {3, 6, 3},
                                  {3, 5, 1},
                                  {0, 4, 3},
                                  {0, 1, 1},
                                  {0, 6, 2},
                                  {0, 7, 6},
                                  {0, 5, 1},
                                  {0, 2, 8},
                                  {4, 1, 1},
                                  {1, 6, 1},
                                  {1, 5, 80},
                                  {6, 7, 2},
                                  {7, 5, 1},
                                  {5, 2, 1},
                                  {3, 4, 4}});
    EXPECT_EQ(least_cut_of_all(8, edges, &side), 7);
    EXPECT_EQ(side, (std::vector<std::uint32_t>{1, 5}));
}

// Stoer and Wagner, A simple min-cut algorithm, J. ACM 44, 1997: the example of figure 1, minimum cut 4.
TEST(Flow, LeastCutOfStoerAndWagner) {
    std::vector<FlowEdge> edges{{1, 2, 2}, {1, 5, 3}, {2, 3, 3}, {2, 5, 2}, {2, 6, 2}, {3, 4, 4},
                                {3, 7, 2}, {4, 7, 2}, {4, 8, 2}, {5, 6, 3}, {6, 7, 1}, {7, 8, 3}};
    for (FlowEdge& edge : edges) {
        --edge.a;
        --edge.b;
    }
    EXPECT_EQ(least_cut_of_all(8, both_ways(edges)), 4);
}

TEST(Flow, EdgeToItselfCarriesNothing) {
    const std::vector<FlowEdge> edges{{0, 0, 5, 5}, {0, 1, 3, 3}, {1, 1, 9, 9}};
    EXPECT_EQ(flow_of(2, 0, 1, edges).value(), 3);
}

std::vector<FlowEdge> random_edges(std::mt19937_64& random, std::uint32_t nodes, std::uint32_t count, bool directed) {
    std::vector<FlowEdge> edges;
    for (std::uint32_t i = 0; i < count; ++i) {
        FlowEdge edge{static_cast<std::uint32_t>(random() % nodes), static_cast<std::uint32_t>(random() % nodes),
                      static_cast<std::int64_t>(random() % 12), 0};
        edge.back = directed ? static_cast<std::int64_t>(random() % 12) : edge.along;
        edges.push_back(edge);
    }
    return edges;
}

// Boost.Graph and LEMON as second opinions.
TEST(Flow, AgreesWithBoostAndLemon) {
    std::mt19937_64 random(20261126);
    for (int i = 0; i < 1000; ++i) {
        const auto nodes = static_cast<std::uint32_t>(2 + random() % 40);
        const auto edges = random_edges(random, nodes, static_cast<std::uint32_t>(random() % (5 * nodes)), i % 3 == 0);
        const GrowingFlow flow = flow_of(nodes, 0, 1, edges);
        ASSERT_EQ(flow.value(), test::BoostFlow(nodes, edges).value(0, 1)) << i;
        ASSERT_EQ(flow.value(), test::LemonFlow(nodes, edges).value(0, 1)) << i;
        expect_sound(flow, nodes, 0, 1, edges);
    }
}

// A flow that grows edge by edge is at every step what a new one would be.
TEST(Flow, GrowingIsTheSameAsStartingAnew) {
    std::mt19937_64 random(7);
    for (int i = 0; i < 200; ++i) {
        const auto nodes = static_cast<std::uint32_t>(2 + random() % 25);
        const auto edges = random_edges(random, nodes, static_cast<std::uint32_t>(random() % (5 * nodes)), i % 2 == 0);
        GrowingFlow growing(nodes, 0, 1, edges);
        while (growing.open_edges() < edges.size()) {
            growing.open(1 + random() % 4);
            const std::vector<FlowEdge> so_far(edges.begin(), edges.begin() + static_cast<std::ptrdiff_t>(growing.open_edges()));
            ASSERT_EQ(growing.value(), flow_of(nodes, 0, 1, so_far).value()) << i;
            expect_sound(growing, nodes, 0, 1, so_far);
        }
    }
}

// Long chains and grids, where the trees grow deep.
TEST(Flow, DeepNetworks) {
    std::mt19937_64 random(11);
    std::vector<FlowEdge> chain{{0, 2, 40, 40}};
    for (std::uint32_t i = 2; i < 3000; ++i) {
        for (int twin = 0; twin < 2; ++twin) {
            const auto price = static_cast<std::int64_t>(1 + random() % 30);
            chain.push_back({i, i + 1, price, price});
        }
    }
    chain.push_back({3000, 1, 40, 40});
    std::shuffle(chain.begin(), chain.end(), random);
    EXPECT_EQ(flow_of(3001, 0, 1, chain).value(), test::LemonFlow(3001, chain).value(0, 1));
    constexpr std::uint32_t side = 40;
    std::vector<FlowEdge> grid;
    for (std::uint32_t i = 0; i < side * side; ++i) {
        const auto price = [&] { return static_cast<std::int64_t>(1 + random() % 30); };
        if (i % side + 1 < side) grid.push_back({2 + i, 3 + i, price(), price()});
        if (i + side < side * side) grid.push_back({2 + i, 2 + i + side, price(), price()});
        if (i % side == 0) grid.push_back({0, 2 + i, price(), price()});
        if (i % side + 1 == side) grid.push_back({2 + i, 1, price(), price()});
    }
    const GrowingFlow flow = flow_of(side * side + 2, 0, 1, grid);
    EXPECT_EQ(flow.value(), test::LemonFlow(side * side + 2, grid).value(0, 1));
    expect_sound(flow, side * side + 2, 0, 1, grid);
}

}  // namespace
}  // namespace seamward
