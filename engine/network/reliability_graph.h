// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <optional>
#include <span>
#include <vector>

#include "network/reliability.h"

/// For the reliability of this folder only: networks between two nodes, and what makes them smaller.
namespace seamward::reliability {

inline constexpr std::uint32_t source = 0, sink = 1;  ///< in every Graph
inline constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

/// `chance` is the place of its probability on a Tape.
struct Edge {
    std::uint32_t a, b, chance;
};

struct Graph {
    std::uint32_t nodes = 2;
    std::vector<Edge> edges;
};

/// The probabilities of the given edges, then those of the edges that stand for two others: enough to carry slopes
/// back through the reductions by the chain rule (the answer is linear in each probability).
class Tape {
public:
    explicit Tape(std::span<const ChanceEdge> edges) : inputs_(edges.size()) {
        for (const ChanceEdge& edge : edges) chances_.push_back(edge.open);
    }
    [[nodiscard]] double operator[](std::size_t i) const { return chances_[i]; }
    [[nodiscard]] std::size_t size() const { return chances_.size(); }
    std::uint32_t series(std::uint32_t x, std::uint32_t y) { return add({x, y, true}, chances_[x] * chances_[y]); }
    std::uint32_t parallel(std::uint32_t x, std::uint32_t y) {
        return add({x, y, false}, 1 - (1 - chances_[x]) * (1 - chances_[y]));
    }
    /// From the slope of the answer by every entry that a reduced edge uses to the slopes by the given edges.
    [[nodiscard]] std::vector<double> slopes_of_inputs(std::vector<double> slopes) const {
        for (std::size_t i = chances_.size(); i-- > inputs_;) {
            const auto [x, y, is_series] = pairs_[i - inputs_];
            slopes[x] += slopes[i] * (is_series ? chances_[y] : 1 - chances_[y]);
            slopes[y] += slopes[i] * (is_series ? chances_[x] : 1 - chances_[x]);
        }
        slopes.resize(inputs_);
        return slopes;
    }

private:
    struct Pair {
        std::uint32_t x, y;
        bool is_series;
    };
    std::uint32_t add(const Pair& pair, double chance) {
        pairs_.push_back(pair);
        chances_.push_back(chance);
        return static_cast<std::uint32_t>(chances_.size() - 1);
    }

    std::size_t inputs_;
    std::vector<double> chances_;
    std::vector<Pair> pairs_;
};

struct Way {
    std::uint32_t to, edge;
};
using Ways = std::vector<std::vector<Way>>;

/// The ways out of each node, in the order of the edges.
[[nodiscard]] Ways ways_of(const Graph& graph);

/// Each set of nodes as one node, and no loops; with `fold`, no edges that are certain or impossible. Nothing when
/// the sets share a node.
[[nodiscard]] std::optional<Graph> merged(std::uint32_t nodes, std::span<const ChanceEdge> edges,
                                          std::span<const std::uint32_t> from, std::span<const std::uint32_t> to, bool fold);

/// Leaves the edges that lie on a simple path from source to sink: the others of the biconnected component of an edge
/// added between the two (Hopcroft and Tarjan, "Algorithm 447", CACM 16(6), 1973). Linear.
void keep_simple_paths(Graph& graph);

/// Makes one edge of parallel ones and of two in series, as long as there are any. What lies on simple paths goes on
/// doing so. O(edges log edges).
[[nodiscard]] Graph without_series_and_parallel(const Graph& graph, Tape& tape);

/// The chance, and its slope by every entry of the tape that an edge of the reduced graph uses.
struct Answer {
    OpenChance now;
    std::vector<double> slopes;
};

}  // namespace seamward::reliability
