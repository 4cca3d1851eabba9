// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/reliability_graph.h"

#include <algorithm>
#include <map>

#include "graph/union_find.h"

namespace seamward::reliability {

Ways ways_of(const Graph& graph) {
    Ways ways(graph.nodes);
    for (std::uint32_t i = 0; i < graph.edges.size(); ++i) {
        ways[graph.edges[i].a].push_back({graph.edges[i].b, i});
        ways[graph.edges[i].b].push_back({graph.edges[i].a, i});
    }
    return ways;
}

std::optional<Graph> merged(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
                            std::span<const std::uint32_t> to, bool fold) {
    UnionFind sets(std::size_t{nodes} + 2);
    const auto unite = [&](std::uint32_t x, std::uint32_t y) { sets.join(sets.find(x), sets.find(y)); };
    for (const std::uint32_t node : from) unite(nodes, node);
    for (const std::uint32_t node : to) unite(nodes + 1, node);
    for (const ChanceEdge& edge : edges) {
        if (fold && edge.open == 1) unite(edge.a, edge.b);
    }
    if (sets.find(nodes) == sets.find(nodes + 1)) return std::nullopt;
    Graph graph;
    std::vector<std::uint32_t> name(std::size_t{nodes} + 2, none);
    name[sets.find(nodes)] = source;
    name[sets.find(nodes + 1)] = sink;
    const auto name_of = [&](std::uint32_t node) {
        std::uint32_t& its = name[sets.find(node)];
        return its == none ? its = graph.nodes++ : its;
    };
    for (std::uint32_t i = 0; i < edges.size(); ++i) {
        if ((fold && edges[i].open == 0) || sets.find(edges[i].a) == sets.find(edges[i].b)) continue;
        const std::uint32_t a = name_of(edges[i].a);
        graph.edges.push_back({a, name_of(edges[i].b), i});
    }
    return graph;
}

void keep_simple_paths(Graph& graph) {
    const Ways ways = ways_of(graph);
    std::vector<std::uint32_t> found(graph.nodes, 0), low(graph.nodes, 0), next(graph.nodes, 0), via(graph.nodes, none);
    std::vector<std::size_t> mark(graph.nodes, 0);
    std::vector<std::uint32_t> kept, path{sink};
    found[source] = low[sink] = 1;
    found[sink] = 2;
    for (std::uint32_t count = 2; !path.empty();) {
        const std::uint32_t node = path.back();
        if (next[node] < ways[node].size()) {
            const auto [to, edge] = ways[node][next[node]++];
            if (edge == via[node]) continue;
            if (found[to] == 0) {
                found[to] = low[to] = ++count;
                via[to] = edge;
                mark[to] = kept.size();
                kept.push_back(edge);
                path.push_back(to);
            } else if (found[to] < found[node]) {
                kept.push_back(edge);
                low[node] = std::min(low[node], found[to]);
            }
            continue;
        }
        path.pop_back();
        if (path.empty()) break;
        if (low[node] >= found[path.back()]) kept.resize(mark[node]);  // what hangs from there
        low[path.back()] = std::min(low[path.back()], low[node]);
    }
    std::vector<Edge> edges;
    std::sort(kept.begin(), kept.end());
    for (const std::uint32_t edge : kept) edges.push_back(graph.edges[edge]);
    graph.edges = std::move(edges);
}

Graph without_series_and_parallel(const Graph& graph, Tape& tape) {
    std::vector<std::map<std::uint32_t, std::uint32_t>> links(graph.nodes);
    const auto add = [&](std::uint32_t a, std::uint32_t b, std::uint32_t chance) {
        const auto [at, is_first] = links[a].try_emplace(b, chance);
        if (!is_first) at->second = tape.parallel(at->second, chance);
        links[b][a] = at->second;
    };
    for (const Edge& edge : graph.edges) add(edge.a, edge.b, edge.chance);
    std::vector<std::uint32_t> to_try;
    for (std::uint32_t node = sink + 1; node < graph.nodes; ++node) to_try.push_back(node);
    while (!to_try.empty()) {
        const std::uint32_t node = to_try.back();
        to_try.pop_back();
        if (node <= sink || links[node].size() != 2) continue;
        const auto [a, x] = *links[node].begin();
        const auto [b, y] = *links[node].rbegin();
        links[node].clear();
        links[a].erase(node);
        links[b].erase(node);
        add(a, b, tape.series(x, y));
        to_try.insert(to_try.end(), {a, b});
    }
    Graph reduced;
    std::vector<std::uint32_t> name(graph.nodes, none);
    for (std::uint32_t node = 0; node < graph.nodes; ++node) {
        if (node <= sink || !links[node].empty()) name[node] = node <= sink ? node : reduced.nodes++;
        for (const auto& [to, chance] : links[node]) {
            if (to < node) reduced.edges.push_back({name[to], name[node], chance});
        }
    }
    return reduced;
}

}  // namespace seamward::reliability
