// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/plane_index.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace seamward {

namespace {

constexpr std::uint32_t leaf_size = 12;

/// Three of the points, as far from each other as can be had in two looks.
std::array<Vector, 3> spread_out(std::span<const Point> points, const Point& about) {
    const Point& a = points.front();
    Point b = a, c = a;
    double most = 0;
    for (const Point& p : points)
        if (const double square = dot(p - a, p - a); square > most) most = square, b = p;
    most = 0;
    for (const Point& p : points) {
        const Vector aside = cross(b - a, p - a);
        if (const double square = dot(aside, aside); square > most) most = square, c = p;
    }
    return {a - about, b - about, c - about};
}

}  // namespace

PlaneIndex::PlaneIndex(std::span<const Plane3> planes, const Point& about)
    : about_(about), order_(planes.size()), place_(planes.size()), number_(planes.size(), none) {
    double farthest = 1;
    for (const Plane3& plane : planes) {
        keys_.push_back({plane.normal.x, plane.normal.y, plane.normal.z, -plane.height_of(about)});
        farthest = std::max(farthest, std::abs(keys_.back()[3]));
    }
    reach_ = farthest;
    std::iota(order_.begin(), order_.end(), 0U);
    nodes_.reserve(planes.size() + 1);
    if (!planes.empty()) add_node(0, static_cast<std::uint32_t>(planes.size()));
    for (std::uint32_t i = 0; i < order_.size(); ++i) place_[order_[i]] = i;
}

void PlaneIndex::add_node(std::uint32_t first, std::uint32_t last) {
    const std::size_t at = nodes_.size();
    Node node{keys_[order_[first]], keys_[order_[first]], first, last, 0, none, last - first <= leaf_size};
    for (std::uint32_t i = first + 1; i < last; ++i) {
        for (std::size_t axis = 0; axis < 4; ++axis) {
            node.low[axis] = std::min(node.low[axis], keys_[order_[i]][axis]);
            node.high[axis] = std::max(node.high[axis], keys_[order_[i]][axis]);
        }
    }
    nodes_.push_back(node);
    if (!node.leaf) {
        std::size_t widest = 3;
        double most = node.high[3] - node.low[3];
        for (std::size_t axis = 0; axis < 3; ++axis)
            if (const double wide = (node.high[axis] - node.low[axis]) * reach_; wide > most) most = wide, widest = axis;
        // Halves of the space, not of the planes: walls along the axes part from each other at once.
        const double halfway = (node.low[widest] + node.high[widest]) / 2;
        const auto cut = std::partition(order_.begin() + first, order_.begin() + last,
                                        [&](std::uint32_t i) { return keys_[i][widest] < halfway; });
        auto middle = static_cast<std::uint32_t>(cut - order_.begin());
        if (middle == first || middle == last) middle = first + (last - first) / 2;  // they are all the same
        add_node(first, middle);
        add_node(middle, last);
    }
    nodes_[at].beyond = static_cast<std::uint32_t>(nodes_.size());
}

void PlaneIndex::let_in(std::uint32_t plane, std::uint32_t number) {
    const std::uint32_t place = place_[plane];
    number_[plane] = number;
    for (std::uint32_t at = 0;;) {
        Node& node = nodes_[at];
        node.least = std::min(node.least, number);
        if (node.leaf) return;
        ++at;
        if (place >= nodes_[at].last) at = nodes_[at].beyond;
    }
}

std::optional<std::uint32_t> PlaneIndex::find(std::span<const Point> points, const Plane3& own, double width,
                                              double tolerance) const {
    const std::array<Vector, 3> asked = spread_out(points, about_);
    // Two planes that stay within twice the tolerance of each other, up and down, over the width of a face.
    const double turn = std::min(1.0, 4 * tolerance / std::max(width, tolerance));
    const auto is_near = [&](const Node& node, double sign) {
        const auto off = [&](double n, std::size_t axis) { return std::max({0.0, node.low[axis] - n, n - node.high[axis]}); };
        const double x = off(sign * own.normal.x, 0), y = off(sign * own.normal.y, 1), z = off(sign * own.normal.z, 2);
        return x * x + y * y + z * z <= turn * turn;
    };
    // The range of the height of a point over all normals and offsets of a node.
    const auto may_pass = [&](const Node& node, Vector p) {
        const Key &low = node.low, &high = node.high;
        const double least = std::min(low[0] * p.x, high[0] * p.x) + std::min(low[1] * p.y, high[1] * p.y) +
                             std::min(low[2] * p.z, high[2] * p.z) - high[3];
        const double most = std::max(low[0] * p.x, high[0] * p.x) + std::max(low[1] * p.y, high[1] * p.y) +
                            std::max(low[2] * p.z, high[2] * p.z) - low[3];
        return least <= tolerance && most >= -tolerance;
    };
    const auto passes = [&](const Key& key) {
        const Vector normal{key[0], key[1], key[2]};
        if (std::abs(dot(normal, own.normal)) < 0.5) return false;
        return std::all_of(points.begin(), points.end(),
                           [&](const Point& p) { return std::abs(dot(normal, p - about_) - key[3]) <= tolerance; });
    };
    std::uint32_t best = none;
    for (std::uint32_t at = 0; at < nodes_.size();) {
        const Node& node = nodes_[at];
        if (node.least >= best || !(is_near(node, 1) || is_near(node, -1)) || !may_pass(node, asked[0]) ||
            !may_pass(node, asked[1]) || !may_pass(node, asked[2])) {
            at = node.beyond;
            continue;
        }
        if (node.leaf) {
            for (std::uint32_t i = node.first; i < node.last; ++i)
                if (number_[order_[i]] < best && passes(keys_[order_[i]])) best = number_[order_[i]];
        }
        ++at;
    }
    return best == none ? std::nullopt : std::optional(best);
}

}  // namespace seamward
