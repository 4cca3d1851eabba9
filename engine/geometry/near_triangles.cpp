// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/near_triangles.h"

#include <cmath>

namespace seamward {

namespace {

constexpr double rounding = 1e-12;  // meters; what a sum of distances may be off in a model of some hundred meters

}  // namespace

NearTriangles::NearTriangles(const TriangleTree& tree, const Point& middle, double reach, std::size_t most)
    : tree_(tree), middle_(middle), reach_(reach) {
    tree.around(middle, reach, [&](std::uint32_t i) { return take(i, tree[i], most); });
    sort();
}

NearTriangles::NearTriangles(const NearTriangles& wider, const Point& middle, double reach, std::size_t most)
    : tree_(wider.tree_), middle_(middle), reach_(reach) {
    const double off = distance(middle, wider.middle_);
    if (!wider.complete_ || reach + off > wider.reach_) {
        tree_.around(middle, reach, [&](std::uint32_t i) { return take(i, tree_[i], most); });
    } else {
        for (const Entry& entry : wider.list_) {
            if (entry.distance - off > reach + rounding) break;
            if (!take(entry.triangle, entry.corners, most)) break;
        }
    }
    sort();
}

bool NearTriangles::take(std::uint32_t triangle, const TriangleTree::Triangle& corners, std::size_t most) {
    const double d = seamward::distance(corners, middle_);
    if (d > reach_) return true;
    complete_ = list_.size() < most;
    if (complete_) list_.push_back({d, triangle, corners});
    return complete_;
}

void NearTriangles::sort() {
    if (!complete_) list_.clear();
    std::sort(list_.begin(), list_.end(), [](const Entry& a, const Entry& b) {
        return a.distance != b.distance ? a.distance < b.distance : a.triangle < b.triangle;
    });
}

Nearest NearTriangles::nearest(const Point& to, double at_most) const {
    const double off = distance(to, middle_) + rounding;
    if (!complete_ || off >= reach_) return tree_.nearest(to, at_most);
    Nearest best{at_most, Nearest::none, to, to};
    double limit = at_most * at_most;
    for (const Entry& entry : list_) {
        const double least = entry.distance - off;
        if (least > 0 && least * least >= limit) break;
        const Point on = nearest_of(entry.corners, to);
        const Vector d = on - to;
        const double square = dot(d, d);
        if (square >= limit) continue;
        limit = square;
        best.triangle = entry.triangle;
        best.on_triangle = on;
    }
    if (best.found()) best.distance = std::sqrt(limit);
    if (best.distance > reach_ - off) return tree_.nearest(to, at_most);
    return best;
}

}  // namespace seamward
