// SPDX-License-Identifier: GPL-3.0-or-later
#include "graph/flow.h"

#include <algorithm>
#include <limits>

namespace seamward {

GrowingFlow::GrowingFlow(std::uint32_t nodes, std::uint32_t source, std::uint32_t sink, std::span<const FlowEdge> edges)
    : source_(source),
      sink_(sink),
      edges_(edges.begin(), edges.end()),
      residual_(edges.size() * 2, 0),
      head_(edges.size() * 2),
      first_(nodes + 1, 0),
      arcs_(edges.size() * 2),
      tree_(nodes, no_tree),
      waiting_(nodes, 0),
      parent_(nodes, none),
      steps_(nodes, 0),
      seen_(nodes, 0) {
    for (std::uint32_t i = 0; i < edges.size(); ++i) {
        head_[2 * i] = edges[i].b;
        head_[2 * i + 1] = edges[i].a;
        ++first_[edges[i].a + 1];
        ++first_[edges[i].b + 1];
    }
    for (std::uint32_t node = 0; node < nodes; ++node) first_[node + 1] += first_[node];
    // Arcs of a node stand in the order of their edges, hence in the order in which they are opened.
    std::vector<std::uint32_t> next(first_.begin(), first_.end() - 1);
    for (std::uint32_t arc = 0; arc < arcs_.size(); ++arc) arcs_[next[head_[arc ^ 1]]++] = arc;
    open_end_.assign(first_.begin(), first_.end() - 1);
    tree_[source] = source_tree;
    tree_[sink] = sink_tree;
    parent_[source] = parent_[sink] = root;
}

void GrowingFlow::open(std::size_t count) {
    const std::size_t begin = open_;
    open_ = std::min(open_ + count, edges_.size());
    for (std::size_t edge = begin; edge < open_; ++edge) {
        const auto arc = static_cast<std::uint32_t>(2 * edge);
        ++open_end_[head_[arc ^ 1]];
        ++open_end_[head_[arc]];
        if (head_[arc] == head_[arc ^ 1]) continue;
        residual_[arc] = edges_[edge].along;
        residual_[arc ^ 1] = edges_[edge].back;
    }
    for (std::size_t edge = begin; edge < open_; ++edge) {
        const auto arc = static_cast<std::uint32_t>(2 * edge);
        if (residual_[arc] == 0 && residual_[arc ^ 1] == 0) continue;
        look_along(head_[arc ^ 1], arc);
        look_along(head_[arc], arc ^ 1);
    }
    grow();
}

std::vector<std::uint32_t> GrowingFlow::edges_across() const {
    std::vector<std::uint32_t> across;
    for (std::uint32_t node = 0; node < tree_.size(); ++node) {
        if (!on_source_side(node)) continue;
        for (std::uint32_t i = first_[node]; i < open_end_[node]; ++i) {
            if (!on_source_side(head_[arcs_[i]])) across.push_back(arcs_[i] / 2);
        }
    }
    return across;
}

void GrowingFlow::activate(std::uint32_t node) {
    if (waiting_[node] != 0) return;
    waiting_[node] = 1;
    active_.push_back(node);
}

/// Takes in what the arc leads to; augments as long as it joins the two trees.
void GrowingFlow::look_along(std::uint32_t node, std::uint32_t arc) {
    while (tree_[node] != no_tree && can_grow(node, arc)) {
        const std::uint32_t other = head_[arc];
        if (tree_[other] == no_tree) {
            tree_[other] = tree_[node];
            parent_[other] = arc ^ 1;
            steps_[other] = steps_[node] + 1;
            seen_[other] = seen_[node];
            activate(other);
            return;
        }
        if (tree_[other] == tree_[node]) {
            // The shorter way to the root is the better parent.
            if (parent_[other] != root && seen_[other] <= seen_[node] && steps_[other] > steps_[node] + 1) {
                parent_[other] = arc ^ 1;
                steps_[other] = steps_[node] + 1;
                seen_[other] = seen_[node];
            }
            return;
        }
        augment(tree_[node] == source_tree ? arc : arc ^ 1);
    }
}

void GrowingFlow::grow() {
    while (!active_.empty()) {
        const std::uint32_t node = active_.front();
        active_.pop_front();
        waiting_[node] = 0;
        for (std::uint32_t i = first_[node]; i < open_end_[node] && tree_[node] != no_tree; ++i) look_along(node, arcs_[i]);
    }
}

/// The least residual on the way from the source through the arc to the sink.
std::int64_t GrowingFlow::least_on_the_way(std::uint32_t arc) const {
    std::int64_t least = residual_[arc];
    for (std::uint32_t node = head_[arc ^ 1]; parent_[node] != root; node = head_[parent_[node]])
        least = std::min(least, residual_[parent_[node] ^ 1]);
    for (std::uint32_t node = head_[arc]; parent_[node] != root; node = head_[parent_[node]])
        least = std::min(least, residual_[parent_[node]]);
    return least;
}

void GrowingFlow::push(std::uint32_t arc, std::int64_t amount) {
    residual_[arc] -= amount;
    residual_[arc ^ 1] += amount;
}

/// `arc` leads from the source's tree into the sink's.
void GrowingFlow::augment(std::uint32_t arc) {
    const std::int64_t amount = least_on_the_way(arc);
    push(arc, amount);
    for (std::uint32_t node = head_[arc ^ 1]; parent_[node] != root;) {
        const std::uint32_t up = parent_[node];
        push(up ^ 1, amount);
        if (residual_[up ^ 1] == 0) make_orphan(node);
        node = head_[up];
    }
    for (std::uint32_t node = head_[arc]; parent_[node] != root;) {
        const std::uint32_t up = parent_[node];
        push(up, amount);
        if (residual_[up] == 0) make_orphan(node);
        node = head_[up];
    }
    value_ += amount;
    adopt_orphans();
}

void GrowingFlow::make_orphan(std::uint32_t node) {
    parent_[node] = orphaned;
    orphans_.push_back(node);
}

void GrowingFlow::adopt_orphans() {
    ++time_;
    seen_[source_] = seen_[sink_] = time_;
    while (!orphans_.empty()) {
        const std::uint32_t node = orphans_.front();
        orphans_.pop_front();
        adopt(node);
    }
}

/// How many steps a node is from the root of its tree, `none` when an orphan stands on the way. Remembers what it learns.
std::uint32_t GrowingFlow::steps_to_root(std::uint32_t node) {
    std::uint32_t steps = 0;
    std::uint32_t here = node;
    while (seen_[here] != time_) {
        if (parent_[here] == orphaned) return none;
        here = head_[parent_[here]];
        ++steps;
    }
    steps += steps_[here];
    for (std::uint32_t left = steps, at = node; seen_[at] != time_; at = head_[parent_[at]]) {
        seen_[at] = time_;
        steps_[at] = left--;
    }
    return steps;
}

void GrowingFlow::adopt(std::uint32_t node) {
    const bool of_source = tree_[node] == source_tree;
    std::uint32_t best = none;
    std::uint32_t fewest = none;
    for (std::uint32_t i = first_[node]; i < open_end_[node]; ++i) {
        const std::uint32_t arc = arcs_[i];
        const std::uint32_t other = head_[arc];
        if (tree_[other] != tree_[node] || residual_[of_source ? arc ^ 1 : arc] == 0 || other == node) continue;
        const std::uint32_t steps = steps_to_root(other);
        if (steps >= fewest) continue;
        fewest = steps;
        best = arc;
    }
    if (best == none) {
        set_free(node);
        return;
    }
    parent_[node] = best;
    seen_[node] = time_;
    steps_[node] = fewest + 1;
}

void GrowingFlow::set_free(std::uint32_t node) {
    const bool of_source = tree_[node] == source_tree;
    for (std::uint32_t i = first_[node]; i < open_end_[node]; ++i) {
        const std::uint32_t arc = arcs_[i];
        const std::uint32_t other = head_[arc];
        if (tree_[other] != tree_[node] || other == node) continue;
        if (residual_[of_source ? arc ^ 1 : arc] > 0) activate(other);
        const std::uint32_t up = parent_[other];
        if (up != root && up != orphaned && head_[up] == node && up == (arc ^ 1)) make_orphan(other);
    }
    tree_[node] = no_tree;
    parent_[node] = none;
}

}  // namespace seamward
