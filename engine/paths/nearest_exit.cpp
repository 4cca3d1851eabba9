// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/nearest_exit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "paths/entry_path.h"

namespace seamward {

namespace {

constexpr std::uint32_t leaf_size = 16;

double along(const Point& p, int axis) { return axis == 0 ? p.x : axis == 1 ? p.y : p.z; }

}  // namespace

NearestExit::NearestExit(std::vector<Exit> exits) : exits_(std::move(exits)), order_(exits_.size()) {
    std::iota(order_.begin(), order_.end(), 0U);
    if (!exits_.empty()) build(0, static_cast<std::uint32_t>(exits_.size()));
}

std::uint32_t NearestExit::build(std::uint32_t begin, std::uint32_t end) {
    const auto index = static_cast<std::uint32_t>(nodes_.size());
    constexpr double infinite = std::numeric_limits<double>::infinity();
    Node node{
        {infinite, infinite, infinite}, {-infinite, -infinite, -infinite}, std::numeric_limits<std::int64_t>::max(), begin, end};
    for (std::uint32_t i = begin; i < end; ++i) {
        const Exit& exit = exits_[order_[i]];
        node.low = {std::min(node.low.x, exit.at.x), std::min(node.low.y, exit.at.y), std::min(node.low.z, exit.at.z)};
        node.high = {std::max(node.high.x, exit.at.x), std::max(node.high.y, exit.at.y), std::max(node.high.z, exit.at.z)};
        node.least_rest = std::min(node.least_rest, exit.rest);
    }
    nodes_.push_back(node);
    if (end - begin <= leaf_size) return index;
    int widest = 0;
    for (int axis = 1; axis < 3; ++axis) {
        if (along(node.high, axis) - along(node.low, axis) > along(node.high, widest) - along(node.low, widest)) widest = axis;
    }
    const std::uint32_t middle = begin + (end - begin) / 2;
    std::nth_element(order_.begin() + begin, order_.begin() + middle, order_.begin() + end,
                     [&](std::uint32_t a, std::uint32_t b) { return along(exits_[a].at, widest) < along(exits_[b].at, widest); });
    const std::uint32_t left = build(begin, middle);
    const std::uint32_t right = build(middle, end);
    nodes_[index].left = left;
    nodes_[index].right = right;
    return index;
}

std::int64_t NearestExit::bound(const Node& node, const Point& from) const {
    const Point nearest{std::clamp(from.x, node.low.x, node.high.x), std::clamp(from.y, node.low.y, node.high.y),
                        std::clamp(from.z, node.low.z, node.high.z)};
    constexpr std::int64_t rounding = 1;  // nanometers, of a distance
    return node.least_rest + std::max<std::int64_t>(0, nanometers_between(from, nearest) - rounding);
}

std::int64_t NearestExit::shortest(const Point& from) const {
    std::int64_t best = std::numeric_limits<std::int64_t>::max();
    std::vector<std::uint32_t> waiting{0};
    while (!waiting.empty()) {
        const Node& node = nodes_[waiting.back()];
        waiting.pop_back();
        if (bound(node, from) >= best) continue;
        if (node.left == 0) {
            for (std::uint32_t i = node.begin; i < node.end; ++i) {
                const Exit& exit = exits_[order_[i]];
                best = std::min(best, exit.rest + nanometers_between(from, exit.at));
            }
            continue;
        }
        const bool left_first = bound(nodes_[node.left], from) <= bound(nodes_[node.right], from);
        waiting.push_back(left_first ? node.right : node.left);
        waiting.push_back(left_first ? node.left : node.right);
    }
    return best;
}

std::uint32_t NearestExit::first_of_length(const Point& from, std::int64_t length) const {
    std::uint32_t first = std::numeric_limits<std::uint32_t>::max();
    std::vector<std::uint32_t> waiting{0};
    while (!waiting.empty()) {
        const Node& node = nodes_[waiting.back()];
        waiting.pop_back();
        if (bound(node, from) > length) continue;
        if (node.left != 0) {
            waiting.push_back(node.left);
            waiting.push_back(node.right);
            continue;
        }
        for (std::uint32_t i = node.begin; i < node.end; ++i) {
            const Exit& exit = exits_[order_[i]];
            if (exit.rest + nanometers_between(from, exit.at) == length) first = std::min(first, order_[i]);
        }
    }
    return first;
}

}  // namespace seamward
