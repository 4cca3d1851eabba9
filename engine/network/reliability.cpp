// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/reliability.h"

#include <algorithm>
#include <stdexcept>

#include "network/reliability_diagram.h"
#include "network/reliability_sampler.h"

namespace seamward {

using namespace reliability;

namespace {

void check(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
           std::span<const std::uint32_t> to, const ReliabilitySettings& settings) {
    const auto is_node = [&](std::uint32_t node) { return node < nodes; };
    for (const auto& [a, b, open] : edges) {
        if (!is_node(a) || !is_node(b) || !(open >= 0 && open <= 1))
            throw std::invalid_argument("edges must join nodes, with a probability from 0 to 1");
    }
    if (!std::all_of(from.begin(), from.end(), is_node) || !std::all_of(to.begin(), to.end(), is_node))
        throw std::invalid_argument("both sets must be of nodes");
    if (settings.samples == 0) throw std::invalid_argument("there must be samples");
}

/// The slopes are by the given edges.
Answer solve(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
             std::span<const std::uint32_t> to, const ReliabilitySettings& settings, bool with_slopes) {
    check(nodes, edges, from, to, settings);
    std::optional<Graph> graph = merged(nodes, edges, from, to, !with_slopes);
    Answer answer{.slopes = std::vector<double>(edges.size(), 0)};
    if (!graph) answer.now = {1, true, 1, 1};
    if (graph) keep_simple_paths(*graph);
    if (!graph || graph->edges.empty()) return answer;
    Tape tape(edges);
    *graph = without_series_and_parallel(*graph, tape);
    if (std::optional<Answer> exact = answer_by_diagram(*graph, tape, settings.most_states))
        answer = std::move(*exact);
    else
        answer = sample(*graph, tape, settings, with_slopes);
    if (with_slopes) answer.slopes = tape.slopes_of_inputs(std::move(answer.slopes));
    return answer;
}

}  // namespace

OpenChance open_chance(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
                       std::span<const std::uint32_t> to, const ReliabilitySettings& settings) {
    return solve(nodes, edges, from, to, settings, false).now;
}

Importance importance(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
                      std::span<const std::uint32_t> to, const ReliabilitySettings& settings) {
    Answer answer = solve(nodes, edges, from, to, settings, true);
    Importance result{.now = answer.now, .birnbaum = std::move(answer.slopes)};
    for (std::size_t i = 0; i < edges.size(); ++i) {
        double& slope = result.birnbaum[i] = std::clamp(result.birnbaum[i], 0.0, 1.0);
        result.if_shut.push_back(std::clamp(answer.now.chance - edges[i].open * slope, 0.0, 1.0));
        result.if_open.push_back(std::clamp(answer.now.chance + (1 - edges[i].open) * slope, 0.0, 1.0));
    }
    return result;
}

}  // namespace seamward
