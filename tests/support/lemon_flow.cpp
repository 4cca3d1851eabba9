// SPDX-License-Identifier: GPL-3.0-or-later
#include <lemon/preflow.h>
#include <lemon/smart_graph.h>

#include "tests/support/flow_peers.h"

namespace seamward::test {

struct LemonFlow::Graph {
    lemon::SmartDigraph graph;
    lemon::SmartDigraph::ArcMap<std::int64_t> capacity{graph};
};

LemonFlow::LemonFlow(std::uint32_t nodes, std::span<const FlowEdge> edges) : graph_(std::make_unique<Graph>()) {
    lemon::SmartDigraph& graph = graph_->graph;
    graph.reserveNode(static_cast<int>(nodes));
    graph.reserveArc(static_cast<int>(2 * edges.size()));
    for (std::uint32_t i = 0; i < nodes; ++i) graph.addNode();
    for (const FlowEdge& edge : edges) {
        if (edge.a == edge.b) continue;
        const auto a = lemon::SmartDigraph::nodeFromId(static_cast<int>(edge.a));
        const auto b = lemon::SmartDigraph::nodeFromId(static_cast<int>(edge.b));
        graph_->capacity[graph.addArc(a, b)] = edge.along;
        graph_->capacity[graph.addArc(b, a)] = edge.back;
    }
}

LemonFlow::~LemonFlow() = default;

std::int64_t LemonFlow::value(std::uint32_t from, std::uint32_t to) {
    lemon::Preflow<lemon::SmartDigraph, lemon::SmartDigraph::ArcMap<std::int64_t>> flow(
        graph_->graph, graph_->capacity, lemon::SmartDigraph::nodeFromId(static_cast<int>(from)),
        lemon::SmartDigraph::nodeFromId(static_cast<int>(to)));
    flow.runMinCut();
    return flow.flowValue();
}

}  // namespace seamward::test
