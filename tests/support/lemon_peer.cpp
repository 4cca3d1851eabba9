// SPDX-License-Identifier: GPL-3.0-or-later
#include <lemon/kruskal.h>
#include <lemon/smart_graph.h>

#include "tests/support/peers.h"

namespace seamward::test {

struct LemonForest::Graph {
    lemon::SmartGraph graph;
    lemon::SmartGraph::EdgeMap<double> cost{graph};
};

LemonForest::LemonForest(const SharedGraph& shared) : shared_(shared), graph_(std::make_unique<Graph>()) {
    graph_->graph.reserveNode(static_cast<int>(shared.outside + 1));
    graph_->graph.reserveEdge(static_cast<int>(shared.edges.size()));
    for (std::uint32_t i = 0; i <= shared.outside; ++i) graph_->graph.addNode();
    for (const SharedGraph::Edge& edge : shared.edges) {
        const auto added = graph_->graph.addEdge(graph_->graph.nodeFromId(static_cast<int>(edge.a)),
                                                 graph_->graph.nodeFromId(static_cast<int>(edge.b)));
        graph_->cost[added] = -edge.width;
    }
}

LemonForest::~LemonForest() = default;

std::vector<double> LemonForest::pinches() const {
    std::vector<lemon::SmartGraph::Edge> forest;
    lemon::kruskal(graph_->graph, graph_->cost, std::back_inserter(forest));
    std::vector<std::uint32_t> edges;
    edges.reserve(forest.size());
    for (const auto& edge : forest) edges.push_back(static_cast<std::uint32_t>(lemon::SmartGraph::id(edge)));
    return shared_.finish(shared_.along_forest(edges));
}

}  // namespace seamward::test
