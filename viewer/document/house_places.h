// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "document/new_house.h"
#include "document/usual_rooms.h"

namespace seamward::viewer {

/// Lengths of a new house that its openings and features go by, in meters.
struct UsualSizes {
    static constexpr double story = 2.6;       ///< from floor to ceiling
    static constexpr double stem_wall = 0.75;  ///< the floor over the yard, of a crawl space or a basement
    static constexpr double overhang = 0.45;
};

/// What lies behind a wall, or at a point of the plan.
struct HouseWhere {
    enum class Of : std::uint8_t { anywhere, house, garage, room } of = Of::anywhere;
    const UsualRoom* room = nullptr;  ///< of Of::room
};

/// Where things stand in a new house: no two in one place, none at a corner.
class HousePlaces {
public:
    enum class Side : std::uint8_t { front, back, left, right };
    using Where = HouseWhere;
    static constexpr Where anywhere{}, in_house{Where::Of::house, nullptr}, in_garage{Where::Of::garage, nullptr};

    /// The house must be one that usual_rooms() divides.
    explicit HousePlaces(const NewHouse& house);
    HousePlaces(const HousePlaces&) = delete;  // rooms are told by their address
    HousePlaces& operator=(const HousePlaces&) = delete;

    [[nodiscard]] const Loop& outline() const { return outline_; }
    [[nodiscard]] const RoomPlan& plan() const { return plan_; }
    /// Rooms of one use in a story; where it is not divided, the whole of it for all uses but a hall and a garage.
    [[nodiscard]] std::vector<const UsualRoom*> rooms(RoomUse use, int story) const;
    [[nodiscard]] const std::vector<std::string>& walls() const { return walls_; }
    [[nodiscard]] std::size_t wall(Side side) const { return sides_[static_cast<std::size_t>(side)]; }
    [[nodiscard]] double length(std::size_t wall) const;
    /// How a wall is called: "front wall", "second back wall".
    [[nodiscard]] const std::string& wall_name(std::size_t wall) const { return names_[wall]; }

    /// A free place on a wall for something so wide, nearest to `share` of the wall's length from its first corner; taken from
    /// then on. `where`: what lies behind all of it. Nothing: there is none.
    [[nodiscard]] std::optional<double> on_wall(std::size_t wall, int story, double share, double width, Where where);
    /// The same on the first of these sides that has a place.
    struct Spot {
        std::size_t wall;
        double along;
    };
    [[nodiscard]] std::optional<Spot> on_sides(const std::vector<Side>& sides, int story, double share, double width,
                                               Where where);
    /// The same on an outside wall of a room, nearest to `share` of the stretch that the room has of it; of its walls the longest
    /// that has a place.
    [[nodiscard]] std::optional<Spot> on_room(const UsualRoom& room, double share, double width);
    /// A free place on a partition of a room for something so wide: the partition by position, and `along` as house files count.
    [[nodiscard]] std::optional<Spot> on_partition(const UsualRoom& room, double width);

    /// A free point, so far at least from walls and from all that was placed in the same story, nearest to these shares of the
    /// box round the room, or round the outline.
    [[nodiscard]] std::optional<Point2> in_plan(int story, Point2 share, double clear, Where where = in_house);
    /// A point of a room far from its walls.
    [[nodiscard]] static Point2 inside_of(const UsualRoom& room);
    /// A point of the plan within one plane of the roof, as far from its edges as can be; the second and further ones are others.
    [[nodiscard]] std::optional<Point2> under_roof(std::size_t which) const;

private:
    struct Span {
        int story;
        double from, to;
    };

    [[nodiscard]] Point2 inward(std::size_t wall) const;
    [[nodiscard]] const UsualRoom* room_at(Point2 point, int story) const;
    [[nodiscard]] static bool is_there(const UsualRoom* room, Where where);
    [[nodiscard]] bool fits(std::size_t wall, int story, double along, double width, Where where) const;
    [[nodiscard]] bool is_free(Point2 point, int story, double clear, Where where) const;
    std::optional<double> take(std::size_t wall, int story, double wanted, double width, Where where);
    void take_ends_and_doors();
    void name_walls();

    Loop outline_;
    RoomPlan plan_;
    std::vector<std::string> walls_, names_;
    std::vector<std::size_t> sides_;
    std::vector<std::vector<Span>> taken_;         ///< for each wall
    std::vector<std::vector<Span>> taken_inside_;  ///< for each partition, from its `from`
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
