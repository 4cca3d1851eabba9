// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/depth.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "geometry/polyline.h"

namespace seamward {

namespace {

/// A line with corners, by meters from its beginning.
class Run {
public:
    explicit Run(const std::vector<Point>& corners) : corners_(corners), at_(corners.size(), 0) {
        for (std::size_t i = 1; i < corners.size(); ++i) at_[i] = at_[i - 1] + distance(corners[i - 1], corners[i]);
    }
    [[nodiscard]] double length() const { return at_.back(); }
    [[nodiscard]] Point operator[](double meters) const {
        const auto next = std::upper_bound(at_.begin(), at_.end(), meters);
        if (next == at_.end()) return corners_.back();
        if (next == at_.begin()) return corners_.front();
        const auto i = static_cast<std::size_t>(next - at_.begin());
        return corners_[i - 1] + (corners_[i] - corners_[i - 1]) * ((meters - at_[i - 1]) / (at_[i] - at_[i - 1]));
    }
    /// Where it comes nearest to a point.
    [[nodiscard]] double beside(const Point& p) const {
        const PlaceOnLine place = nearest_on(corners_, p);
        return at_[place.leg] + place.part * (at_[place.leg + 1] - at_[place.leg]);
    }

private:
    const std::vector<Point>& corners_;
    std::vector<double> at_;
};

}  // namespace

double depth_of(const Clearance& clearance, const std::vector<Point>& way, const Point& at, double radius,
                const std::optional<MeasuredOpening::Cut>& cut) {
    constexpr double hardly_wider = 1.1, stride = 0.5, exact = 0.05, barred = 0.5;  // radii
    if (way.size() < 2) return 0;
    const double wide = std::min(hardly_wider * radius, 0.99 * clearance.cap());
    // Beside a wall a larger ball fits once it moves off.
    const auto is_wide = [&](const Point& p) {
        const Nearest near = clearance.tree().nearest(p, wide);
        if (!near.found()) return true;
        if (!(near.distance > 0)) return false;
        const Vector off = (p - near.on_triangle) * (1 / near.distance);
        return clearance.at(p + off * ((wide - near.distance) * 1.01)) >= wide;
    };
    // Along a line from one of its places, both ways, as far as it is narrow; nothing where a wall is in the way.
    const auto along = [&](const Run& run, double start) -> std::optional<double> {
        double depth = 0;
        for (const double sign : {1.0, -1.0}) {
            const double end = sign > 0 ? run.length() : 0;
            double here = start, beyond = start;  // as far as it is narrow, and the next place looked at
            bool is_out = false;
            while (!is_out && (end - here) * sign > 0) {
                beyond = here + sign * stride * radius;
                if (clearance.at(run[beyond]) < barred * radius) return std::nullopt;
                is_out = is_wide(run[beyond]);
                if (!is_out) here = beyond;
            }
            while (is_out && std::abs(beyond - here) > exact * radius) {
                const double middle = (here + beyond) / 2;
                (is_wide(run[middle]) ? beyond : here) = middle;
            }
            depth += std::min(std::abs(here - start), std::abs(end - start));
        }
        return depth;
    };
    const Run run(way);
    const double by_way = along(run, run.beside(at)).value_or(0);
    if (!cut || by_way <= 2 * radius) return by_way;
    // A way may run along a slot for a stretch before it leads through.
    const std::vector<Point> across{at + cut->normal * -by_way, at, at + cut->normal * by_way};
    return std::min(by_way, along(Run(across), by_way).value_or(by_way));
}

void settle_depth(const Clearance& clearance, MeasuredOpening& opening) {
    if (!std::exchange(opening.depth_of_other, false)) return;
    opening.depth = depth_of(clearance, opening.through, opening.at, opening.width / 2, opening.cut);
}

}  // namespace seamward
