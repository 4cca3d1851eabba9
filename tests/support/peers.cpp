// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/peers.h"

#include <algorithm>
#include <limits>

#include "network/pinches.h"

namespace seamward::test {

SharedGraph::SharedGraph(const Network& the_network, const Roles& the_roles)
    : network(&the_network), roles(&the_roles), outside(static_cast<std::uint32_t>(the_network.space_count())) {
    for (const Link& link : network->links()) {
        const auto node = [&](SpaceIndex space) { return roles->starts(space) ? outside : space.value; };
        const auto counts = [&](SpaceIndex space) { return roles->starts(space) || roles->passable(space); };
        if (counts(link.a) && counts(link.b) && node(link.a) != node(link.b))
            edges.push_back({node(link.a), node(link.b), link.width});
    }
}

std::vector<double> SharedGraph::finish(std::vector<double> of_nodes) const {
    of_nodes.resize(network->space_count());
    for (std::uint32_t i = 0; i < of_nodes.size(); ++i) {
        if (roles->starts({i})) of_nodes[i] = std::numeric_limits<double>::infinity();
        if (roles->starts({i}) || roles->passable({i})) continue;
        of_nodes[i] = no_way;
        for (const Arc& arc : network->arcs({i})) {
            const double width = network->links()[arc.link].width;
            if (roles->starts(arc.to)) of_nodes[i] = std::max(of_nodes[i], width);
            if (roles->passable(arc.to)) of_nodes[i] = std::max(of_nodes[i], std::min(width, of_nodes[arc.to.value]));
        }
    }
    return of_nodes;
}

std::vector<double> SharedGraph::along_forest(const std::vector<std::uint32_t>& forest_edges) const {
    std::vector<std::uint32_t> first(outside + 2, 0);
    for (const std::uint32_t e : forest_edges) {
        ++first[edges[e].a + 1];
        ++first[edges[e].b + 1];
    }
    for (std::size_t i = 1; i < first.size(); ++i) first[i] += first[i - 1];
    std::vector<std::uint32_t> at(first.begin(), first.end() - 1);
    std::vector<std::uint32_t> incident(forest_edges.size() * 2);
    for (const std::uint32_t e : forest_edges) {
        incident[at[edges[e].a]++] = e;
        incident[at[edges[e].b]++] = e;
    }
    std::vector<double> pinch(outside + 1, no_way);
    pinch[outside] = std::numeric_limits<double>::infinity();
    std::vector<std::uint32_t> waiting{outside};
    while (!waiting.empty()) {
        const std::uint32_t node = waiting.back();
        waiting.pop_back();
        for (std::uint32_t i = first[node]; i < first[node + 1]; ++i) {
            const Edge& edge = edges[incident[i]];
            const std::uint32_t other = edge.a == node ? edge.b : edge.a;
            if (pinch[other] != no_way || other == outside) continue;
            pinch[other] = std::min(pinch[node], edge.width);
            waiting.push_back(other);
        }
    }
    return pinch;
}

}  // namespace seamward::test
