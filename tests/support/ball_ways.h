// SPDX-License-Identifier: GPL-3.0-or-later
// Straight ways of balls between triangles, by exact distances. Shares no code with the engine.
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

#include "exchange/model.h"
#include "tests/support/voxel_rooms.h"

namespace seamward::test {

/// Distance from straight ways to the nearest of a set of triangles. Looks at all of them.
class StraightWays {
public:
    explicit StraightWays(std::span<const ModelPart> parts);

    /// Of all points from a to b; `at_most` when nothing is nearer, 0 when a triangle is crossed.
    [[nodiscard]] double to(const Point& a, const Point& b, double at_most) const;

    /// Around all triangles.
    [[nodiscard]] const Box& box() const { return box_; }

private:
    struct Triangle {
        std::array<Point, 3> corners;
        Box box;
    };

    TriangleDistance distance_;
    std::vector<Triangle> triangles_;
    Box box_;
};

/// Which places a ball gets to from each other, by straight ways between them and some hundred points strewn around. What is
/// joined is so; what is not may be so all the same.
class BallWays {
public:
    BallWays(const StraightWays& ways, double radius, std::vector<Point> places);

    [[nodiscard]] bool joined(std::size_t one, std::size_t other) const { return group_[one] == group_[other]; }

private:
    std::vector<std::size_t> group_;
};

}  // namespace seamward::test
