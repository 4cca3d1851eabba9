// SPDX-License-Identifier: GPL-3.0-or-later
// A second opinion on ways of balls between solids, by brute force: cubes, halved where it matters, with the exact distance from
// their centers to all triangles. Shares no code with the engine. For small boxes.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "base/solid.h"
#include "exchange/model.h"
#include "tests/support/solid_builders.h"

namespace seamward::test {

/// Distance to the nearest of a set of triangles.
class TriangleDistance {
public:
    explicit TriangleDistance(std::span<const ModelPart> parts);

    /// Meters, or `at_most` when nothing is nearer.
    [[nodiscard]] double to(const Point& point, double at_most) const;

private:
    struct Node {
        Box box;
        std::uint32_t first = 0, count = 0;  ///< of triangles in a leaf
        std::uint32_t right = 0;             ///< the left child follows its parent
    };
    struct Corners {
        Point a, b, c;
    };

    void divide(std::uint32_t first, std::uint32_t count);

    std::vector<Corners> triangles_;
    std::vector<Node> nodes_;
};

/// Whether a point is in a part, by the parity of crossings of one ray. Meaningless for open parts and doubled triangles.
[[nodiscard]] bool is_in_solid(const TriangleMesh& mesh, const Point& point);

/// Whether the center of a ball can go from one point to another.
enum class Passage : std::uint8_t { joined, apart, unsettled };

/// Between which diameters the widest ball lies that gets from one point to another.
struct WidthBracket {
    double low = 0, high = 0;
};

/// Ways of balls whose centers stay in a box; solids outside of it count as well. `joined` holds for the whole scene, `apart` for
/// the box only.
class VoxelRooms {
public:
    /// The first cubes have the middle side of the box, or a 256th of the longest; they are halved until they are as small as
    /// `finest`, or there are `most_cubes` (some 100 bytes each). A box may be as thin as one likes where the way keeps to a
    /// plane.
    VoxelRooms(std::span<const ModelPart> parts, const Box& box, double finest, std::size_t most_cubes = 4'000'000);

    /// Sure unless unsettled: joined rests on a chain of points a ball can follow, apart on a cut of cubes that hold no center.
    [[nodiscard]] Passage judge(const Point& from, const Point& to, double diameter) const;

    /// Bisects for the sure answers nearest to each other, to within a share of `high`.
    [[nodiscard]] WidthBracket widest_between(const Point& from, const Point& to, double high, double share = 0.02) const;

private:
    TriangleDistance distance_;
    Box box_;
    double finest_;
    std::size_t most_cubes_;
};

}  // namespace seamward::test
