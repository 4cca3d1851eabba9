// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/edge_uses.h"

#include <algorithm>

#include "base/vector.h"
#include "geometry/box_tree.h"

namespace seamward {

namespace {

/// Sorts by counting the lower ends: there are few uses of each.
void sort_uses(std::vector<EdgeUse>& uses, std::size_t points) {
    std::vector<std::uint32_t> starts(points + 1, 0);
    for (const EdgeUse& use : uses) ++starts[use.low + 1];
    for (std::size_t i = 0; i < points; ++i) starts[i + 1] += starts[i];
    std::vector<EdgeUse> sorted(uses.size());
    std::vector<std::uint32_t> ends(starts.begin(), starts.end() - 1);
    for (const EdgeUse& use : uses) sorted[ends[use.low]++] = use;
    for (std::size_t i = 0; i < points; ++i) std::sort(sorted.begin() + starts[i], sorted.begin() + starts[i + 1]);
    uses = std::move(sorted);
}

EdgeUse use_of(std::uint32_t from, std::uint32_t to, std::uint32_t triangle) {
    return {std::min(from, to), std::max(from, to), triangle, from < to};
}

/// A segment with what is within a distance of it.
class Strip {
public:
    Strip(const Point& from, const Point& to, double within) : from_(from), along_(to - from), within_(within) {
        length_ = length(along_);
        if (length_ > 0) along_ = along_ * (1 / length_);
    }

    /// False only when no point of the box is within the distance of the segment.
    [[nodiscard]] bool may_meet(const AxisBox& box) const {
        double first = -within_, last = length_ + within_;
        return narrow(box.low.x - from_.x, box.high.x - from_.x, along_.x, first, last) &&
               narrow(box.low.y - from_.y, box.high.y - from_.y, along_.y, first, last) &&
               narrow(box.low.z - from_.z, box.high.z - from_.z, along_.z, first, last);
    }

    /// How far along the segment a point within the distance is; below 0 when it is beyond the ends or too far off.
    [[nodiscard]] double place_of(const Point& p) const {
        const Vector off = p - from_;
        const double along = dot(off, along_);
        const Vector aside = off - along_ * along;
        return along > 0 && along < length_ && dot(aside, aside) <= within_ * within_ ? along : -1;
    }

private:
    bool narrow(double low, double high, double slope, double& first, double& last) const {
        low -= within_;
        high += within_;
        if (slope == 0) return low <= 0 && high >= 0;
        const double a = low / slope, b = high / slope;
        first = std::max(first, std::min(a, b));
        last = std::min(last, std::max(a, b));
        return first <= last;
    }

    Point from_;
    Vector along_;
    double within_, length_ = 0;
};

}  // namespace

std::vector<EdgeUse> edge_uses(std::size_t points, std::span<const Corners> triangles) {
    std::vector<EdgeUse> uses;
    uses.reserve(3 * triangles.size());
    for (std::uint32_t t = 0; t < triangles.size(); ++t) {
        const auto [a, b, c] = triangles[t];
        if (a == b || b == c || c == a) continue;
        uses.push_back(use_of(a, b, t));
        uses.push_back(use_of(b, c, t));
        uses.push_back(use_of(c, a, t));
    }
    sort_uses(uses, points);
    return uses;
}

void cut_where_they_touch(std::vector<EdgeUse>& uses, std::span<const Point> points, double tolerance) {
    std::vector<std::uint32_t> ends;
    for_each_edge(uses, [&](std::span<const EdgeUse> edge) {
        if (edge.size() % 2 == 1) ends.insert(ends.end(), {edge.front().low, edge.front().high});
    });
    if (ends.empty()) return;
    std::sort(ends.begin(), ends.end());
    ends.erase(std::unique(ends.begin(), ends.end()), ends.end());
    std::vector<AxisBox> boxes;
    boxes.reserve(ends.size());
    for (const std::uint32_t end : ends) boxes.push_back({points[end], points[end]});
    const BoxTree tree(boxes);

    std::vector<EdgeUse> cut;
    cut.reserve(uses.size());
    std::vector<std::pair<double, std::uint32_t>> on_edge;
    for_each_edge(uses, [&](std::span<const EdgeUse> edge) {
        on_edge.clear();
        const std::uint32_t low = edge.front().low, high = edge.front().high;
        if (edge.size() % 2 == 1) {
            const Strip strip(points[low], points[high], tolerance);
            tree.walk([&](const AxisBox& box) { return strip.may_meet(box); },
                      [&](std::uint32_t i) {
                          const double place = strip.place_of(points[ends[i]]);
                          if (place > 0 && ends[i] != low && ends[i] != high) on_edge.emplace_back(place, ends[i]);
                      });
        }
        std::sort(on_edge.begin(), on_edge.end());
        on_edge.emplace_back(0, high);
        for (const EdgeUse& use : edge) {
            std::uint32_t from = low;
            for (const auto& [place, to] : on_edge) {
                cut.push_back(use.forward ? use_of(from, to, use.triangle) : use_of(to, from, use.triangle));
                from = to;
            }
        }
    });
    uses = std::move(cut);
    sort_uses(uses, points.size());
}

}  // namespace seamward
