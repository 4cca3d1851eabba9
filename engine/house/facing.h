// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "base/plane.h"
#include "base/vector.h"
#include "house/house.h"

namespace seamward {

/// Which parts of a house hide its rooms from an eye, and from where: what a picture draws faint.
class Facings {
public:
    explicit Facings(const House& house);

    /// Of unit length: up for roofs and ceilings; level, out of the house or toward its nearer side, for walls. Nothing where
    /// the part is before nothing, as floors and pipes are. O(triangles).
    [[nodiscard]] std::optional<Vector> of(const Part& part) const;

    /// The direction across a wall whose middle is `at`, turned so that it points out of the house: to where no room is; where
    /// both sides or none have one, away from the middle of the house. O(rooms).
    [[nodiscard]] Vector outward(const Point& at, Vector across) const;

private:
    struct Room {
        Frame frame;
        Figure floor;  ///< the outline alone: what stands in a room does not end it
    };
    [[nodiscard]] bool in_room(const Point& at) const;

    Point middle_;  ///< of the house without its yard, at z = 0
    std::vector<Room> rooms_;
};

/// The direction that most of the area of these triangles faces, or the opposite: in which the sum of area * (normal .
/// direction)^2 is largest. Of a plate that is its thickness. Unit; up where the triangles have no area.
[[nodiscard]] Vector main_axis(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles);
[[nodiscard]] Vector main_axis(const TriangleMesh& mesh);

}  // namespace seamward
