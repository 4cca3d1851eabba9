// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "base/survey.h"

namespace seamward {

/// The smallest box along the axes around something, in meters.
struct AxisBox {
    Point low, high;
};

/// A tree of boxes over things that are only known by theirs. Those near each other stand together in its order.
/// Building O(n log n).
class BoxTree {
public:
    struct Node {
        AxisBox box;
        std::uint32_t first = 0, last = 0;  ///< what it holds: positions [first, last) of the order
        std::uint32_t beyond = 0;           ///< the node that follows when this one and all below it are done
        bool leaf = false;
    };

    BoxTree() = default;
    explicit BoxTree(std::span<const AxisBox> boxes, std::uint32_t leaf_size = 4);

    [[nodiscard]] const std::vector<std::uint32_t>& order() const { return order_; }
    [[nodiscard]] const std::vector<Node>& nodes() const { return nodes_; }  ///< each before those below it

    /// Calls visit(i) for what is in the leaves under nodes for which enter(box) holds; i is a position of what was given.
    template <class Enter, class Visit>
    void walk(Enter enter, Visit visit) const {
        for (std::uint32_t at = 0; at < nodes_.size();) {
            const Node& node = nodes_[at];
            if (!enter(node.box)) {
                at = node.beyond;
                continue;
            }
            if (node.leaf)
                for (std::uint32_t i = node.first; i < node.last; ++i) visit(order_[i]);
            ++at;
        }
    }

private:
    void add_node(std::span<const AxisBox> boxes, std::uint32_t first, std::uint32_t last, std::uint32_t leaf_size);

    std::vector<std::uint32_t> order_;
    std::vector<Node> nodes_;
};

}  // namespace seamward
