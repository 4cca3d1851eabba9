// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/spanning.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/support/random_survey.h"

namespace seamward::test {
namespace {

struct Edge {
    std::uint32_t a, b;
    double width;
    std::uint32_t link;
};

struct Spanning {
    std::set<std::uint32_t> links;
    std::vector<double> class_widths;
    bool classes_alike = true;
};

Spanning spanning_of(const Network& network) {
    Spanning spanning;
    UnionFind sets(network.space_count());
    const auto for_each_edge = [&](auto&& wanted, auto&& sink) {
        for (std::uint32_t i = 0; i < network.links().size(); ++i) {
            const Link& link = network.links()[i];
            if (wanted(link.width)) sink(Edge{link.a.value, link.b.value, link.width, i});
        }
    };
    visit_spanning_classes<Edge>(network, sets, for_each_edge, [&](std::span<const Edge> alike) {
        spanning.class_widths.push_back(alike.front().width);
        for (const Edge& edge : alike) {
            spanning.links.insert(edge.link);
            spanning.classes_alike = spanning.classes_alike && edge.width == alike.front().width;
            const std::uint32_t a = sets.find(edge.a);
            const std::uint32_t b = sets.find(edge.b);
            if (a != b) sets.join(a, b);
        }
    });
    return spanning;
}

/// An edge is in some maximum spanning forest exactly when strictly wider edges do not join its ends (cycle property).
TEST(SpanningClasses, AreTheUnionOfAllMaximumSpanningForests) {
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        const auto widths = static_cast<std::uint32_t>(1 + seed % 12);
        const Survey survey =
            random_survey({.spaces = 12, .gaps = static_cast<std::uint32_t>(6 + seed % 90), .distinct_widths = widths}, seed);
        const Network network = make_network(survey, [](const Gap&) { return true; });
        std::set<std::uint32_t> expected;
        for (std::uint32_t i = 0; i < network.links().size(); ++i) {
            UnionFind wider(network.space_count());
            for (const Link& link : network.links()) {
                if (link.width <= network.links()[i].width) continue;
                const std::uint32_t a = wider.find(link.a.value);
                const std::uint32_t b = wider.find(link.b.value);
                if (a != b) wider.join(a, b);
            }
            if (wider.find(network.links()[i].a.value) != wider.find(network.links()[i].b.value)) expected.insert(i);
        }
        const Spanning spanning = spanning_of(network);
        ASSERT_EQ(spanning.links, expected) << "seed " << seed;
        ASSERT_TRUE(spanning.classes_alike);
        ASSERT_TRUE(std::is_sorted(spanning.class_widths.begin(), spanning.class_widths.end(), std::greater<>()))
            << "seed " << seed;
        ASSERT_EQ(std::set<double>(spanning.class_widths.begin(), spanning.class_widths.end()).size(),
                  spanning.class_widths.size());
    }
}

TEST(SpanningClasses, OfANetworkWithoutLinksAreNone) { EXPECT_TRUE(spanning_of(Network(3, {})).links.empty()); }

TEST(UnionFind, JoinsFindsAndFlattens) {
    UnionFind sets(6);
    for (const auto& [a, b] : {std::pair(0U, 1U), std::pair(2U, 3U), std::pair(1U, 3U)}) sets.join(sets.find(a), sets.find(b));
    EXPECT_EQ(sets.find(0), sets.find(2));
    EXPECT_NE(sets.find(0), sets.find(4));
    sets.flatten();
    EXPECT_TRUE(sets.same_in_flat(1, 2));
    EXPECT_FALSE(sets.same_in_flat(4, 5));
}

}  // namespace
}  // namespace seamward::test
