// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/dijkstra_shortest_paths.hpp>
#include <boost/graph/kruskal_min_spanning_tree.hpp>
#include <iterator>
#include <limits>

#include "network/pinches.h"
#include "tests/support/peers.h"

namespace seamward::test {

namespace {

using EdgeProperties = boost::property<boost::edge_weight_t, double, boost::property<boost::edge_index_t, std::uint32_t>>;
using AdjacencyList = boost::adjacency_list<boost::vecS, boost::vecS, boost::undirectedS, boost::no_property, EdgeProperties>;

}  // namespace

struct BoostForest::Graph {
    AdjacencyList list;
};

BoostForest::BoostForest(const SharedGraph& shared) : shared_(shared), graph_(std::make_unique<Graph>()) {
    graph_->list = AdjacencyList(shared.outside + 1);
    for (std::uint32_t i = 0; i < shared.edges.size(); ++i) {
        boost::add_edge(shared.edges[i].a, shared.edges[i].b, EdgeProperties(-shared.edges[i].width, i), graph_->list);
    }
}

BoostForest::~BoostForest() = default;

std::vector<double> BoostForest::pinches() const {
    std::vector<AdjacencyList::edge_descriptor> forest;
    boost::kruskal_minimum_spanning_tree(graph_->list, std::back_inserter(forest));
    std::vector<std::uint32_t> edges;
    edges.reserve(forest.size());
    for (const auto& edge : forest) edges.push_back(boost::get(boost::edge_index, graph_->list, edge));
    return shared_.finish(shared_.along_forest(edges));
}

std::vector<double> BoostForest::pinches_by_dijkstra() const {
    // Distances are negated pinches: a way is as long as its worst (largest) negated width.
    std::vector<double> distance(boost::num_vertices(graph_->list));
    constexpr double infinite = std::numeric_limits<double>::infinity();
    boost::dijkstra_shortest_paths(graph_->list, shared_.outside,
                                   boost::distance_map(distance.data())
                                       .distance_combine([](double way, double edge) { return std::max(way, edge); })
                                       .distance_inf(-no_way)
                                       .distance_zero(-infinite));
    for (double& d : distance) d = -d;
    return shared_.finish(std::move(distance));
}

}  // namespace seamward::test
