// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>
#include <span>

#include "graph/flow.h"

namespace seamward::test {

/// Second opinion: a graph of Boost.Graph, and its largest flow from one node to another.
class BoostFlow {
public:
    BoostFlow(std::uint32_t nodes, std::span<const FlowEdge> edges);
    ~BoostFlow();
    /// boykov_kolmogorov_max_flow; may be called again.
    [[nodiscard]] std::int64_t value(std::uint32_t from, std::uint32_t to);

private:
    struct Graph;
    std::unique_ptr<Graph> graph_;
};

/// Second opinion: the same with LEMON's Preflow, its first phase, which settles the minimum cut.
class LemonFlow {
public:
    LemonFlow(std::uint32_t nodes, std::span<const FlowEdge> edges);
    ~LemonFlow();
    [[nodiscard]] std::int64_t value(std::uint32_t from, std::uint32_t to);

private:
    struct Graph;
    std::unique_ptr<Graph> graph_;
};

}  // namespace seamward::test
