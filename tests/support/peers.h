// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "network/network.h"

namespace seamward::test {

/// The network as plain arrays for other libraries: all starts are one node, spaces that may not stand in the middle
/// of a path are no nodes, links between the rest are edges.
struct SharedGraph {
    SharedGraph(const Network& network, const Roles& roles);

    struct Edge {
        std::uint32_t a, b;
        double width;
    };

    const Network* network;
    const Roles* roles;
    std::uint32_t outside;  ///< the node of all starts; the others are spaces
    std::vector<Edge> edges;

    /// Pinches of all spaces from those of the nodes: ends are joined to them, starts are infinite.
    [[nodiscard]] std::vector<double> finish(std::vector<double> of_nodes) const;
    /// Pinches of the nodes along the edges of a maximum spanning forest.
    [[nodiscard]] std::vector<double> along_forest(const std::vector<std::uint32_t>& forest_edges) const;
};

/// Second opinion: kruskal_minimum_spanning_tree of Boost.Graph on negated widths, and Dijkstra with max-min.
class BoostForest {
public:
    explicit BoostForest(const SharedGraph& shared);
    ~BoostForest();
    [[nodiscard]] std::vector<double> pinches() const;
    /// The pinch of every space by Boost's Dijkstra with the operations of widest paths.
    [[nodiscard]] std::vector<double> pinches_by_dijkstra() const;

private:
    struct Graph;
    const SharedGraph& shared_;
    std::unique_ptr<Graph> graph_;
};

/// Second opinion: kruskal of LEMON on negated widths.
class LemonForest {
public:
    explicit LemonForest(const SharedGraph& shared);
    ~LemonForest();
    [[nodiscard]] std::vector<double> pinches() const;

private:
    struct Graph;
    const SharedGraph& shared_;
    std::unique_ptr<Graph> graph_;
};

}  // namespace seamward::test
