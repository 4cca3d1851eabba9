// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/boykov_kolmogorov_max_flow.hpp>

#include "tests/support/flow_peers.h"

namespace seamward::test {

namespace {

using Traits = boost::adjacency_list_traits<boost::vecS, boost::vecS, boost::directedS>;

struct OfNode {
    Traits::edge_descriptor before;
    boost::default_color_type color = boost::white_color;
    long distance = 0;
};
struct OfArc {
    std::int64_t capacity = 0, residual = 0;
    Traits::edge_descriptor back;
};
using AdjacencyList = boost::adjacency_list<boost::vecS, boost::vecS, boost::directedS, OfNode, OfArc>;

}  // namespace

struct BoostFlow::Graph {
    AdjacencyList list;
};

BoostFlow::BoostFlow(std::uint32_t nodes, std::span<const FlowEdge> edges) : graph_(std::make_unique<Graph>()) {
    AdjacencyList& list = graph_->list;
    list = AdjacencyList(nodes);
    for (const FlowEdge& edge : edges) {
        if (edge.a == edge.b) continue;
        const auto along = boost::add_edge(edge.a, edge.b, list).first;
        const auto back = boost::add_edge(edge.b, edge.a, list).first;
        list[along].capacity = edge.along;
        list[back].capacity = edge.back;
        list[along].back = back;
        list[back].back = along;
    }
}

BoostFlow::~BoostFlow() = default;

std::int64_t BoostFlow::value(std::uint32_t from, std::uint32_t to) {
    AdjacencyList& list = graph_->list;
    return boost::boykov_kolmogorov_max_flow(list, get(&OfArc::capacity, list), get(&OfArc::residual, list),
                                             get(&OfArc::back, list), get(&OfNode::before, list), get(&OfNode::color, list),
                                             get(&OfNode::distance, list), get(boost::vertex_index, list), from, to);
}

}  // namespace seamward::test
