// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/reliability.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>
#include <stdexcept>
#include <utility>

namespace seamward::test {
namespace {

struct Case {
    std::uint32_t nodes = 0;
    std::vector<ChanceEdge> edges;
    std::vector<std::uint32_t> from{0}, to;
};

OpenChance open_chance_of(const Case& net, const ReliabilitySettings& settings = {}) {
    return open_chance(net.nodes, net.edges, net.from, net.to, settings);
}

Importance importance_of(const Case& net, const ReliabilitySettings& settings = {}) {
    return importance(net.nodes, net.edges, net.from, net.to, settings);
}

double exact_chance(const Case& net) {
    const OpenChance found = open_chance_of(net);
    EXPECT_TRUE(found.exact);
    EXPECT_EQ(found.low, found.chance);
    EXPECT_EQ(found.high, found.chance);
    const Importance all = importance_of(net);
    EXPECT_TRUE(all.now.exact);
    EXPECT_NEAR(all.now.chance, found.chance, 1e-12);
    return found.chance;
}

/// Between opposite corners.
Case grid(std::uint32_t rows, std::uint32_t columns, double open) {
    Case net{.nodes = rows * columns, .to = {rows * columns - 1}};
    for (std::uint32_t node = 0; node < net.nodes; ++node) {
        if (node % columns + 1 < columns) net.edges.push_back({node, node + 1, open});
        if (node + columns < net.nodes) net.edges.push_back({node, node + columns, open});
    }
    return net;
}

Case complete(std::uint32_t nodes, double open) {
    Case net{.nodes = nodes, .to = {nodes - 1}};
    for (std::uint32_t a = 0; a < nodes; ++a) {
        for (std::uint32_t b = a + 1; b < nodes; ++b) net.edges.push_back({a, b, open});
    }
    return net;
}

Case bridge(double p) { return {4, {{0, 1, p}, {0, 2, p}, {1, 2, p}, {1, 3, p}, {2, 3, p}}, {0}, {3}}; }

Case petersen(std::uint32_t to) {
    Case net{.nodes = 10, .to = {to}};
    for (std::uint32_t i = 0; i < 5; ++i) {
        net.edges.push_back({i, (i + 1) % 5, 0.9});
        net.edges.push_back({i, i + 5, 0.9});
        net.edges.push_back({i + 5, (i + 2) % 5 + 5, 0.9});
    }
    return net;
}

double random_chance(std::mt19937_64& random) { return static_cast<double>(random() >> 11U) * 0x1p-53; }

/// Small, with parallel edges, loops, certain and impossible edges, and sets of several nodes that may overlap.
Case random_case(std::mt19937_64& random) {
    Case net{.nodes = static_cast<std::uint32_t>(1 + random() % 7), .from = {}};
    const auto any_node = [&] { return static_cast<std::uint32_t>(random() % net.nodes); };
    for (std::uint64_t left = random() % 13; left > 0; --left) {
        const std::uint64_t kind = random() % 10;
        const double open = kind == 0 ? 0 : kind == 1 ? 1 : random_chance(random);
        net.edges.push_back({any_node(), any_node(), open});
    }
    for (auto* set : {&net.from, &net.to}) {
        for (std::uint64_t left = random() % 8 == 0 ? 2 : 1; left > 0; --left) set->push_back(any_node());
    }
    if (random() % 50 == 0) net.to.clear();
    return net;
}

/// By the definition: all states of the edges, and who is reached from `from` in each.
double by_enumeration(const Case& net) {
    std::uint32_t from = 0, to = 0;  // nodes as bits
    std::vector<std::uint32_t> ends;
    for (const std::uint32_t node : net.from) from |= 1U << node;
    for (const std::uint32_t node : net.to) to |= 1U << node;
    for (const ChanceEdge& edge : net.edges) ends.push_back(1U << edge.a | 1U << edge.b);
    double sum = 0;
    for (std::uint32_t state = 0; state < 1U << ends.size(); ++state) {
        double chance = 1;
        for (std::size_t i = 0; i < ends.size() && chance > 0; ++i)
            chance *= (state >> i & 1U) != 0 ? net.edges[i].open : 1 - net.edges[i].open;
        if (chance == 0) continue;
        std::uint32_t reached = from;
        for (std::uint32_t before = ~reached; before != reached;) {
            before = reached;
            for (std::size_t i = 0; i < ends.size(); ++i) {
                if ((state >> i & 1U) != 0 && (reached & ends[i]) != 0) reached |= ends[i];
            }
        }
        if ((reached & to) != 0) sum += chance;
    }
    return sum;
}

/// p = .9: Hardy, Lucet, Limnios 2007, table 1, and any textbook. The others: the polynomial at p.
TEST(Reliability, OfTheBridgeNetworkIsItsPolynomial) {
    EXPECT_NEAR(exact_chance(bridge(0.9)), 0.97848, 1e-12);
    EXPECT_NEAR(exact_chance(bridge(0.5)), 0.5, 1e-12);
    EXPECT_NEAR(exact_chance(bridge(0.8)), 0.91136, 1e-12);
    EXPECT_NEAR(exact_chance(bridge(0.95)), 0.994780625, 1e-12);
    EXPECT_NEAR(exact_chance(bridge(0.99)), 0.9997980498, 1e-12);
    for (double p = 0; p <= 1; p += 0.0625) {
        EXPECT_NEAR(exact_chance(bridge(p)), 2 * p * p + 2 * std::pow(p, 3) - 5 * std::pow(p, 4) + 2 * std::pow(p, 5), 1e-12);
    }
}

/// Hardy, Lucet, Limnios, "K-terminal network reliability measures with binary decision diagrams", IEEE Trans.
/// Reliability 56(3), 2007, table 1, p = .9: 0.99555, 0.97555, 0.975644995 and 0.30429. Further digits: our own.
TEST(Reliability, IsThePublishedOneForRingsAndGrids) {
    Case rings{.nodes = 16, .to = {4}};
    for (std::uint32_t i = 0; i < 8; ++i) {
        rings.edges.push_back({i, (i + 1) % 8, 0.9});
        rings.edges.push_back({i, i + 8, 0.9});
        rings.edges.push_back({i + 8, (i + 1) % 8 + 8, 0.9});
    }
    EXPECT_NEAR(exact_chance(rings), 0.99555277, 5e-9);
    EXPECT_NEAR(exact_chance(grid(5, 5, 0.9)), 0.97555659, 5e-9);
    EXPECT_NEAR(exact_chance(grid(6, 6, 0.9)), 0.9756449953, 5e-11);
    EXPECT_NEAR(exact_chance(grid(2, 100, 0.9)), 0.3042931782, 5e-11);
}

/// Sums over all states of the edges, computed once by a program of its own; p = .9.
TEST(Reliability, IsTheEnumeratedOneForSmallNetworks) {
    EXPECT_NEAR(exact_chance(complete(4, 0.9)), 0.997848, 1e-12);
    EXPECT_NEAR(exact_chance(complete(5, 0.9)), 0.9997948026, 1e-12);
    EXPECT_NEAR(exact_chance(grid(2, 2, 0.9)), 0.9639, 1e-12);
    EXPECT_NEAR(exact_chance(grid(2, 3, 0.9)), 0.9587808, 1e-12);
    EXPECT_NEAR(exact_chance(grid(3, 3, 0.9)), 0.972502171407, 1e-12);
    EXPECT_NEAR(exact_chance(grid(3, 4, 0.9)), 0.972593251893, 1e-12);
    EXPECT_NEAR(exact_chance(petersen(1)), 0.997537635419, 1e-12);
    EXPECT_NEAR(exact_chance(petersen(2)), 0.997271880181, 1e-12);
}

TEST(Reliability, AndImportanceAreTheEnumeratedOnesForRandomNetworks) {
    std::mt19937_64 random(7);
    for (int round = 0; round < 2000; ++round) {
        Case net = random_case(random);
        ASSERT_NEAR(exact_chance(net), by_enumeration(net), 1e-12) << "round " << round;
        const Importance all = importance_of(net);
        ASSERT_EQ(all.birnbaum.size(), net.edges.size());
        for (std::size_t i = 0; i < net.edges.size(); ++i) {
            const double open = std::exchange(net.edges[i].open, 1);
            const double if_open = by_enumeration(net);
            net.edges[i].open = 0;
            const double if_shut = by_enumeration(net);
            net.edges[i].open = open;
            ASSERT_NEAR(all.birnbaum[i], if_open - if_shut, 1e-12) << "round " << round << " edge " << i;
            ASSERT_NEAR(all.if_open[i], if_open, 1e-12) << "round " << round << " edge " << i;
            ASSERT_NEAR(all.if_shut[i], if_shut, 1e-12) << "round " << round << " edge " << i;
        }
    }
}

/// Larger than what can be enumerated: the importance is the difference of two conditioned runs.
TEST(Reliability, ImportanceInAGridIsTheDifferenceOfTwoConditionedRuns) {
    std::mt19937_64 random(3);
    Case net = grid(5, 7, 0);
    for (ChanceEdge& edge : net.edges) edge.open = random() % 5 == 0 ? 1 : random_chance(random);
    const Importance all = importance_of(net);
    ASSERT_TRUE(all.now.exact);
    for (std::size_t i = 0; i < net.edges.size(); ++i) {
        const double open = std::exchange(net.edges[i].open, 1);
        const double if_open = open_chance_of(net).chance;
        net.edges[i].open = 0;
        EXPECT_NEAR(all.birnbaum[i], if_open - open_chance_of(net).chance, 1e-12) << i;
        net.edges[i].open = open;
    }
}

TEST(Reliability, NeedsFewStates) {
    EXPECT_TRUE(open_chance_of(grid(6, 6, 0.9), {.most_states = 7'000}).exact);
    Case hanging = complete(10, 0.5);  // the bridge at a corner of what leads nowhere
    for (ChanceEdge& edge : hanging.edges) edge = {edge.a + 3, edge.b + 3, edge.open};
    for (const ChanceEdge& edge : bridge(0.9).edges) hanging.edges.push_back(edge);
    const OpenChance found = open_chance(13, hanging.edges, hanging.from, bridge(0.9).to, {.most_states = 10});
    EXPECT_TRUE(found.exact);
    EXPECT_NEAR(found.chance, 0.97848, 1e-12);
    Case sure = complete(10, 1);
    for (ChanceEdge& edge : sure.edges) edge.open = edge.b == 9 ? 0.5 : edge.open;
    EXPECT_TRUE(open_chance_of(sure, {.most_states = 1}).exact);
    EXPECT_NEAR(open_chance_of(sure).chance, 1 - std::pow(0.5, 9), 1e-12);
    for (ChanceEdge& edge : sure.edges) edge.open = edge.a == 0 ? 0.5 : 0;
    EXPECT_TRUE(open_chance_of(sure, {.most_states = 1}).exact);
    EXPECT_EQ(open_chance_of(sure).chance, 0.5);
}

TEST(Reliability, GrowsWithTheChanceOfAnyEdge) {
    std::mt19937_64 random(11);
    for (int round = 0; round < 300; ++round) {
        Case net = random_case(random);
        if (net.edges.empty()) continue;
        const double before = open_chance_of(net).chance;
        double& open = net.edges[random() % net.edges.size()].open;
        open += (1 - open) * random_chance(random);
        ASSERT_GE(open_chance_of(net).chance, before - 1e-12) << "round " << round;
    }
}

/// 95 % intervals of 400 independent estimates hold 380 exact values on average; 366 or fewer have a chance of 0.002.
TEST(Reliability, IntervalsOfSamplesHoldTheExactValue) {
    std::mt19937_64 random(5);
    int held = 0;
    for (std::uint64_t round = 0; round < 400; ++round) {
        Case net = grid(3, 4, 0);
        for (ChanceEdge& edge : net.edges) edge.open = random_chance(random);
        const OpenChance sampled = open_chance_of(net, {.most_states = 1, .samples = 500, .seed = round});
        ASSERT_FALSE(sampled.exact);
        ASSERT_LE(sampled.low, sampled.chance);
        ASSERT_LE(sampled.chance, sampled.high);
        const double exact = open_chance_of(net).chance;
        if (sampled.low <= exact && exact <= sampled.high) ++held;
    }
    EXPECT_GT(held, 366);
}

/// Within 5 standard deviations of a share of 40,000 samples, which are at most 0.0125.
TEST(Reliability, SampledImportanceIsNearTheExactOne) {
    std::mt19937_64 random(9);
    for (int round = 0; round < 40; ++round) {
        const Case net = [&] {
            Case made = round % 2 == 0 ? grid(4, 4, 0.0) : complete(6, 0.0);
            for (ChanceEdge& edge : made.edges) edge.open = random() % 6 == 0 ? 0 : random() % 6 == 0 ? 1 : random_chance(random);
            return made;
        }();
        const Importance exact = importance_of(net);
        const Importance sampled = importance_of(net, {.most_states = 1, .samples = 40'000});
        ASSERT_FALSE(sampled.now.exact);
        EXPECT_NEAR(sampled.now.chance, exact.now.chance, 0.0125);
        for (std::size_t i = 0; i < net.edges.size(); ++i) {
            EXPECT_NEAR(sampled.birnbaum[i], exact.birnbaum[i], 0.0125) << "round " << round << " edge " << i;
        }
        EXPECT_EQ(importance_of(net, {.most_states = 1, .samples = 40'000}).birnbaum, sampled.birnbaum);
    }
}

TEST(Reliability, OfSetsThatShareANodeIsOneAndOfSetsApartIsZero) {
    EXPECT_EQ(exact_chance({3, {{0, 1, 0.5}}, {0, 2}, {1, 2}}), 1);
    EXPECT_EQ(importance_of({3, {{0, 1, 0.5}}, {0, 2}, {1, 2}}).if_shut, std::vector<double>{1});
    EXPECT_EQ(exact_chance({0, {}, {}, {}}), 0);
    EXPECT_EQ(exact_chance({2, {{0, 1, 1}}, {}, {1}}), 0);
    EXPECT_EQ(exact_chance({4, {{0, 1, 1}, {2, 3, 1}, {0, 0, 1}}, {0}, {3}}), 0);
    EXPECT_EQ(importance_of({4, {{0, 1, 1}, {2, 3, 1}}, {0}, {3}}).birnbaum, (std::vector<double>{0, 0}));
    EXPECT_EQ(exact_chance({3, {{0, 1, 1}, {1, 2, 1}}, {0}, {2}}), 1);
    EXPECT_EQ(importance_of({3, {{0, 1, 0}, {1, 2, 1}}, {0}, {2}}).if_open, (std::vector<double>{1, 0}));
}

/// 33,334 rungs are narrow enough to be exact; as many edges at random are sampled.
TEST(Reliability, OfAHundredThousandEdgesComesToAnEnd) {
    const Case ladder = grid(2, 33'334, 0.99999);
    EXPECT_GT(exact_chance(ladder), 0.99);
    std::mt19937_64 random(1);
    Case net{.nodes = 30'000, .to = {29'999}};
    for (int i = 0; i < 100'000; ++i)
        net.edges.push_back(
            {static_cast<std::uint32_t>(random() % net.nodes), static_cast<std::uint32_t>(random() % net.nodes), 0.2});
    const OpenChance found = open_chance_of(net, {.samples = 300});
    EXPECT_FALSE(found.exact);
    EXPECT_LT(found.high - found.low, 0.12);
    const OpenChance coarse = open_chance_of(net, {.samples = 300, .most_draws = 3'000'000});
    EXPECT_GT(coarse.high - coarse.low, 1.5 * (found.high - found.low));
    EXPECT_EQ(importance_of(net, {.samples = 20}).birnbaum.size(), net.edges.size());
}

TEST(Reliability, RefusesWhatIsNoProbabilityAndNoNode) {
    for (const double wrong : {-0.1, 1.1, std::nan(""), std::numeric_limits<double>::infinity()}) {
        EXPECT_THROW((void)open_chance_of({2, {{0, 1, wrong}}, {0}, {1}}), std::invalid_argument) << wrong;
        EXPECT_THROW((void)importance_of({2, {{0, 1, wrong}}, {0}, {1}}), std::invalid_argument) << wrong;
    }
    EXPECT_THROW((void)open_chance_of({2, {{0, 2, 0.5}}, {0}, {1}}), std::invalid_argument);
    EXPECT_THROW((void)open_chance_of({2, {{0, 1, 0.5}}, {2}, {1}}), std::invalid_argument);
    EXPECT_THROW((void)open_chance_of({2, {{0, 1, 0.5}}, {0}, {2}}), std::invalid_argument);
    EXPECT_THROW((void)open_chance_of({2, {{0, 1, 0.5}}, {0}, {1}}, {.samples = 0}), std::invalid_argument);
}

}  // namespace
}  // namespace seamward::test
