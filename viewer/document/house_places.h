// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "document/new_house.h"

namespace seamward::viewer {

/// Lengths of a new house that its openings and features go by, in meters.
struct UsualSizes {
    static constexpr double story = 2.6;       ///< from floor to ceiling
    static constexpr double stem_wall = 0.75;  ///< the floor over the yard, of a crawl space or a basement
    static constexpr double overhang = 0.45;
};

/// Where things stand in a new house: no two in one place, none at a corner.
class HousePlaces {
public:
    enum class Room : std::uint8_t { living, garage, any };
    enum class Side : std::uint8_t { front, back, left, right };

    explicit HousePlaces(const NewHouse& house);

    [[nodiscard]] const Loop& outline() const { return outline_; }
    [[nodiscard]] const std::vector<std::string>& walls() const { return walls_; }
    [[nodiscard]] std::size_t wall(Side side) const { return sides_[static_cast<std::size_t>(side)]; }
    [[nodiscard]] double length(std::size_t wall) const;
    /// How a wall is called: "front wall", "second back wall".
    [[nodiscard]] const std::string& wall_name(std::size_t wall) const { return names_[wall]; }

    /// A free place on a wall for something so wide, nearest to `share` of the wall's length from its first corner; taken from
    /// then on. `room`: what lies behind it. Nothing: there is none.
    [[nodiscard]] std::optional<double> on_wall(std::size_t wall, int story, double share, double width, Room room);
    /// The same on the first of these sides that has a place.
    struct Spot {
        std::size_t wall;
        double along;
    };
    [[nodiscard]] std::optional<Spot> on_sides(const std::vector<Side>& sides, int story, double share, double width, Room room);

    /// A free point of a story's living space, so far at least from walls and from all that was placed in the same story, nearest
    /// to these shares of the outline's box.
    [[nodiscard]] std::optional<Point2> in_plan(int story, Point2 share, double clear, Room room = Room::living);
    /// A point of the plan within one plane of the roof, as far from its edges as can be; the second and further ones are others.
    [[nodiscard]] std::optional<Point2> under_roof(std::size_t which) const;

private:
    struct Span {
        int story;
        double from, to;
    };

    [[nodiscard]] Point2 inward(std::size_t wall) const;
    [[nodiscard]] bool in_garage(Point2 point, int story) const;
    [[nodiscard]] bool fits(std::size_t wall, int story, double along, double width, Room room) const;
    [[nodiscard]] bool is_free(Point2 point, int story, double clear, Room room) const;
    void name_walls();

    Loop outline_;
    Point2 garage_;
    std::vector<std::string> walls_, names_;
    std::vector<std::size_t> sides_;
    std::vector<std::vector<Span>> taken_;  ///< for each wall
    struct Taken {
        int story;
        Point2 at;
        double clear;
    };
    std::vector<Taken> placed_;
    std::vector<Loop> planes_;  ///< of the roof, over the plan, the largest first
};

/// Distance from a point to the nearest side of a loop.
[[nodiscard]] double to_edge(const Loop& loop, Point2 point);

[[nodiscard]] bool is_inside(const Loop& loop, Point2 point);

}  // namespace seamward::viewer
