// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstdint>
#include <span>
#include <vector>

#include "base/vector.h"

namespace seamward {

/// Points in a grid of cells, to find those within one distance of a place. All expected O(1).
class PointGrid {
public:
    /// `within` in meters, 0 or more; `most` points at most.
    PointGrid(double within, std::size_t most);

    /// Coordinates up to 1e9 m; numbers count the points added.
    void add(const Point& point);

    /// Calls visit(number, square of the distance) for all points no farther from a place than the distance; for some of them
    /// several times, and in no order.
    template <class Visit>
    void near(const Point& at, Visit visit) const {
        for (std::int64_t x = cell(at.x - within_); x <= cell(at.x + within_); ++x)
            for (std::int64_t y = cell(at.y - within_); y <= cell(at.y + within_); ++y)
                for (std::int64_t z = cell(at.z - within_); z <= cell(at.z + within_); ++z)
                    for (std::uint32_t i = first_[slot(x, y, z)]; i != none; i = next_[i]) {
                        const Vector off = points_[i] - at;
                        if (const double square = dot(off, off); square <= within_ * within_) visit(i, square);
                    }
    }

    [[nodiscard]] const std::vector<Point>& points() const { return points_; }
    [[nodiscard]] std::vector<Point> take_points() && { return std::move(points_); }

    static constexpr std::uint32_t none = 0xffffffff;

private:
    [[nodiscard]] std::int64_t cell(double coordinate) const {
        return static_cast<std::int64_t>(std::floor(coordinate / cell_size_));
    }
    [[nodiscard]] std::size_t slot(std::int64_t x, std::int64_t y, std::int64_t z) const {
        std::uint64_t mixed = static_cast<std::uint64_t>(x) * 0x9e3779b97f4a7c15U;
        mixed = (mixed ^ (mixed >> 32) ^ static_cast<std::uint64_t>(y)) * 0xbf58476d1ce4e5b9U;
        mixed = (mixed ^ (mixed >> 29) ^ static_cast<std::uint64_t>(z)) * 0x94d049bb133111ebU;
        return (mixed ^ (mixed >> 31)) & (first_.size() - 1);
    }

    double within_, cell_size_;
    std::vector<Point> points_;
    std::vector<std::uint32_t> first_, next_;  ///< chains of the points whose cells fall into one slot
};

/// Points of which no two are within the tolerance of each other.
struct Welded {
    std::vector<Point> points;          ///< some of those given, in their order
    std::vector<std::uint32_t> number;  ///< for each one given the point that stands for it; PointGrid::none if unusable
};

/// Each point becomes the nearest one within `tolerance` (meters) of those that came before it and stayed. Unusable are
/// coordinates that are not finite or beyond 1e9 m. Expected O(n).
[[nodiscard]] Welded weld(std::span<const Point> points, double tolerance);

}  // namespace seamward
