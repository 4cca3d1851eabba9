// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "base/plane.h"

namespace seamward {

/// The shortest way inside of a figure from one point to another, both included, as the corners of a line. It keeps about
/// `clearance` meters off the corners that it bends round, less where a passage is narrower than twice that; so its length is a
/// little more than the shortest there is. No part of it touches an edge of the figure.
/// An end that is not inside is moved to the nearest place that is, `clearance` off the edges where there is room.
/// Where no way leads from one to the other, or the figure has no inside: the two ends as they were given, joined straight.
/// Loops may run either way round, and holes may overlap each other and the outline; a hole of less than three corners is none.
/// A* on the corners' visibility graph, an edge of which is tested when its turn comes: O(n^2 log n) and a test of O(n) for
/// each edge that could be on the way, n corners in all.
[[nodiscard]] std::vector<Point2> shortest_inside(const Figure& figure, Point2 from, Point2 to, double clearance);

/// The point itself where it is inside of the figure, else the nearest place that is, `margin` off the edges where there is room;
/// nothing when the figure has no inside. O(n), O(n^2) at worst.
[[nodiscard]] std::optional<Point2> nearest_inside(const Figure& figure, Point2 point, double margin);

/// How far it is from a point inside of a figure to the first edge in a direction, which is a unit vector; 0 from a point that is
/// not inside. O(n).
[[nodiscard]] double room_ahead(const Figure& figure, Point2 from, Point2 direction);

/// The same for many questions about one figure, each in about the time that it takes to look at the edges near by.
class InnerRoom {
public:
    explicit InnerRoom(const Figure& figure);
    ~InnerRoom();
    InnerRoom(InnerRoom&&) noexcept;
    InnerRoom& operator=(InnerRoom&&) noexcept;
    InnerRoom(const InnerRoom&) = delete;
    InnerRoom& operator=(const InnerRoom&) = delete;

    [[nodiscard]] std::optional<Point2> nearest_inside(Point2 point, double margin) const;
    [[nodiscard]] double room_ahead(Point2 from, Point2 direction) const;

private:
    struct Prepared;
    std::unique_ptr<Prepared> prepared_;
};

}  // namespace seamward
