// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/weld.h"

#include <algorithm>
#include <bit>

namespace seamward {

namespace {

// Cells much larger than the distance: most questions are about one cell only.
constexpr double cells_across = 16;
constexpr double least_cell = 1e-6;  ///< meters; keeps the numbers of cells whole up to the farthest point
constexpr double farthest = 1e9;     ///< meters

bool usable(const Point& p) { return std::abs(p.x) <= farthest && std::abs(p.y) <= farthest && std::abs(p.z) <= farthest; }

}  // namespace

PointGrid::PointGrid(double within, std::size_t most)
    : within_(within), cell_size_(std::max(cells_across * within, least_cell)), first_(std::bit_ceil(most + 1), none) {}

void PointGrid::add(const Point& point) {
    std::uint32_t& first = first_[slot(cell(point.x), cell(point.y), cell(point.z))];
    next_.push_back(first);
    first = static_cast<std::uint32_t>(points_.size());
    points_.push_back(point);
}

Welded weld(std::span<const Point> points, double tolerance) {
    Welded out;
    out.number.reserve(points.size());
    PointGrid grid(tolerance, points.size());
    for (const Point& point : points) {
        std::uint32_t nearest = PointGrid::none;
        if (usable(point)) {
            double least = 0;
            grid.near(point, [&](std::uint32_t i, double square) {
                if (nearest != PointGrid::none && (square > least || (square == least && i > nearest))) return;
                nearest = i;
                least = square;
            });
            if (nearest == PointGrid::none) {
                nearest = static_cast<std::uint32_t>(grid.points().size());
                grid.add(point);
            }
        }
        out.number.push_back(nearest);
    }
    out.points = std::move(grid).take_points();
    return out;
}

}  // namespace seamward
