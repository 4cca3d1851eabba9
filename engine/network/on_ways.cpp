// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/on_ways.h"

#include <limits>

#include "network/reliability_graph.h"

namespace seamward {

std::vector<bool> links_on_ways(const Network& network, const Roles& roles) {
    constexpr std::uint32_t nowhere = std::numeric_limits<std::uint32_t>::max();
    reliability::Graph graph;
    std::vector<std::uint32_t> node(network.space_count(), nowhere);
    for (std::uint32_t i = 0; i < node.size(); ++i) {
        if (roles.starts({i}))
            node[i] = reliability::source;
        else if (roles.ends({i}))
            node[i] = reliability::sink;
        else if (roles.passable({i}))
            node[i] = graph.nodes++;
    }
    // The place of the probability tells the link.
    for (std::uint32_t i = 0; i < network.links().size(); ++i) {
        const std::uint32_t a = node[network.links()[i].a.value];
        const std::uint32_t b = node[network.links()[i].b.value];
        if (a != nowhere && b != nowhere && a != b) graph.edges.push_back({a, b, i});
    }
    reliability::keep_simple_paths(graph);
    std::vector<bool> on(network.links().size(), false);
    for (const reliability::Edge& edge : graph.edges) on[edge.chance] = true;
    return on;
}

}  // namespace seamward
