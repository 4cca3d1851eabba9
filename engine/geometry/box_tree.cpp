// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/box_tree.h"

#include <algorithm>
#include <numeric>

namespace seamward {

BoxTree::BoxTree(std::span<const AxisBox> boxes, std::uint32_t leaf_size) : order_(boxes.size()) {
    std::iota(order_.begin(), order_.end(), 0U);
    nodes_.reserve(2 * boxes.size() / leaf_size + 1);
    if (!boxes.empty()) add_node(boxes, 0, static_cast<std::uint32_t>(boxes.size()), leaf_size);
}

void BoxTree::add_node(std::span<const AxisBox> boxes, std::uint32_t first, std::uint32_t last, std::uint32_t leaf_size) {
    const std::size_t at = nodes_.size();
    AxisBox box = boxes[order_[first]];
    for (std::uint32_t i = first + 1; i < last; ++i) {
        const auto& [low, high] = boxes[order_[i]];
        box.low = {std::min(box.low.x, low.x), std::min(box.low.y, low.y), std::min(box.low.z, low.z)};
        box.high = {std::max(box.high.x, high.x), std::max(box.high.y, high.y), std::max(box.high.z, high.z)};
    }
    nodes_.push_back({box, first, last, 0, last - first <= leaf_size});
    if (!nodes_[at].leaf) {
        const double x = box.high.x - box.low.x, y = box.high.y - box.low.y, z = box.high.z - box.low.z;
        const auto coordinate = x >= y && x >= z ? &Point::x : y >= z ? &Point::y : &Point::z;
        const auto before = [&](std::uint32_t a, std::uint32_t b) {
            const double in_a = boxes[a].low.*coordinate + boxes[a].high.*coordinate;
            const double in_b = boxes[b].low.*coordinate + boxes[b].high.*coordinate;
            return in_a != in_b ? in_a < in_b : a < b;
        };
        const std::uint32_t middle = first + (last - first) / 2;
        std::nth_element(order_.begin() + first, order_.begin() + middle, order_.begin() + last, before);
        add_node(boxes, first, middle, leaf_size);
        add_node(boxes, middle, last, leaf_size);
    }
    nodes_[at].beyond = static_cast<std::uint32_t>(nodes_.size());
}

}  // namespace seamward
