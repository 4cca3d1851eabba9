// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <deque>
#include <span>
#include <vector>

namespace seamward {

/// An edge of a flow, and how much may go along it each way: the same both ways where it stands for a gap.
struct FlowEdge {
    std::uint32_t a = 0, b = 0;
    std::int64_t along = 0;  ///< from a to b
    std::int64_t back = 0;   ///< from b to a
};

/// A largest flow from one node to another that grows with its network: edges are opened one after another, and the flow is
/// augmented from where it stands. The two search trees of Boykov and Kolmogorov ("An experimental comparison of min-cut/max-flow
/// algorithms", IEEE PAMI 26, 2004) are kept from one edge to the next, so that an edge that changes little costs little.
/// Capacities are whole numbers; their sum must stay below `most_flow`. O(edges) memory; O(edges * nodes^2 * flow) time at worst,
/// nearly linear on the networks of houses.
class GrowingFlow {
public:
    /// No sum of capacities that a cut can have may reach this; an edge that must not be cut has it for its capacity.
    static constexpr std::int64_t most_flow = std::int64_t{1} << 61;

    /// Nodes are 0 to `nodes` - 1; edges that join a node to itself carry nothing. None is open yet.
    GrowingFlow(std::uint32_t nodes, std::uint32_t source, std::uint32_t sink, std::span<const FlowEdge> edges);

    /// Opens the next `count` edges, in the order in which they were given, and augments the flow.
    void open(std::size_t count);

    [[nodiscard]] std::int64_t value() const { return value_; }
    [[nodiscard]] std::size_t open_edges() const { return open_; }
    /// Whether what leaves the source could reach this node: the source's side of the least cut that lies nearest to the source.
    [[nodiscard]] bool on_source_side(std::uint32_t node) const { return tree_[node] == source_tree; }
    /// The open edges from the source's side to the other, in no order. O(nodes + edges at the source's side)
    [[nodiscard]] std::vector<std::uint32_t> edges_across() const;
    /// What flows along an edge from its `a` to its `b`, negative the other way.
    [[nodiscard]] std::int64_t flow(std::size_t edge) const { return edges_[edge].along - residual_[2 * edge]; }

private:
    static constexpr std::uint8_t no_tree = 0, source_tree = 1, sink_tree = 2;
    static constexpr std::uint32_t none = 0xffffffff, root = 0xfffffffe, orphaned = 0xfffffffd;

    [[nodiscard]] std::uint32_t head(std::uint32_t arc) const { return head_[arc]; }
    /// Whether the tree of `node` can grow along an arc that leaves it.
    [[nodiscard]] bool can_grow(std::uint32_t node, std::uint32_t arc) const {
        return residual_[tree_[node] == source_tree ? arc : arc ^ 1] > 0;
    }
    void activate(std::uint32_t node);
    void look_along(std::uint32_t node, std::uint32_t arc);
    void grow();
    void augment(std::uint32_t arc);
    std::int64_t least_on_the_way(std::uint32_t arc) const;
    void push(std::uint32_t arc, std::int64_t amount);
    void adopt_orphans();
    void adopt(std::uint32_t node);
    void set_free(std::uint32_t node);
    std::uint32_t steps_to_root(std::uint32_t node);
    void make_orphan(std::uint32_t node);

    std::uint32_t source_, sink_;
    std::size_t open_ = 0;
    std::int64_t value_ = 0;
    std::vector<FlowEdge> edges_;
    std::vector<std::int64_t> residual_;  ///< of arc 2e from a to b of edge e, and of arc 2e + 1 back
    std::vector<std::uint32_t> head_;
    std::vector<std::uint32_t> first_, open_end_, arcs_;  ///< arcs that leave a node, the open ones in front
    std::vector<std::uint8_t> tree_, waiting_;
    std::vector<std::uint32_t> parent_;  ///< arc from a node to the next one toward the root of its tree
    std::vector<std::uint32_t> steps_;   ///< to the root, as far as known at `seen_`
    std::vector<std::uint64_t> seen_;
    std::uint64_t time_ = 0;
    std::deque<std::uint32_t> active_, orphans_;
};

}  // namespace seamward
