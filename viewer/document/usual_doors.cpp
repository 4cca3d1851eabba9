// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/usual_doors.h"

#include <algorithm>
#include <cmath>

#include "document/house_places.h"
#include "document/square_cuts.h"

namespace seamward::viewer {

namespace {

using Use = RoomUse;

constexpr double door_wide = 0.76, garage_door_wide = 0.81, archway_wide = 1.2, least_archway = 0.7;
constexpr double beside_corner = 0.2;  ///< from the middle of a wall at the end to the opening: half that wall and the frame
constexpr double beside_wall = 0.16;   ///< the same of a wall that ends there

double norm(Point2 a) { return std::hypot(a.x, a.y); }

class Doors {
public:
    Doors(const Loop& outline, RoomPlan& plan) : outline_(outline), plan_(plan) {}

    bool hang() {
        for (const UsualRoom& room : plan_.rooms) {
            switch (room.use) {
                case Use::bedroom:
                    if (!lead(room, {Use::hall, Use::living, Use::kitchen})) return false;
                    break;
                case Use::bath:
                    if (room.id == "main-bath" && lead_to_main(room)) break;
                    if (!lead(room, {Use::hall, Use::living, Use::kitchen})) return false;
                    break;
                case Use::hall:
                    if (room.story == 1 && !join(room)) return false;
                    break;
                case Use::kitchen:
                    if (!join(room)) return false;
                    break;
                case Use::garage:
                    if (!lead(room, {Use::hall, Use::kitchen, Use::living, Use::whole})) return false;
                    break;
                case Use::living:
                case Use::whole: break;
            }
        }
        return true;
    }

private:
    bool lead(const UsualRoom& room, const std::vector<Use>& others) {
        const bool garage = room.use == Use::garage;
        for (const Use use : others) {
            for (const UsualRoom& other : plan_.rooms) {
                if (other.use != use || other.story != room.story) continue;
                const std::string id = garage ? "garage-house-door" : room.id + "-door";
                const std::string name = garage ? "door from the garage into the house" : "door of the " + room.name;
                const double wide = garage ? garage_door_wide : door_wide;
                if (put(room, other, {id, name, 0, 0, wide, 0, false}, wide)) return true;
            }
        }
        return false;
    }
    bool lead_to_main(const UsualRoom& bath) {
        return std::ranges::any_of(plan_.rooms, [&](const UsualRoom& room) {
            return room.id == "main-bedroom" && room.story == bath.story &&
                   put(bath, room, {"main-bath-door", "door of the main bath", 0, 0, door_wide, 0, false}, door_wide);
        });
    }
    bool join(const UsualRoom& room) {
        return std::ranges::any_of(
                   plan_.rooms,
                   [&](const UsualRoom& other) {
                       return other.use == Use::living && other.story == room.story &&
                              put(room, other, {room.id + "-archway", "archway to the " + room.name, 0, 0, archway_wide, 0, true},
                                  least_archway);
                   }) ||
               (room.use == Use::hall && std::ranges::any_of(plan_.rooms, [&](const UsualRoom& other) {
                    return other.use == Use::kitchen && other.story == room.story &&
                           put(room, other, {room.id + "-archway", "archway to the " + room.name, 0, 0, archway_wide, 0, true},
                               least_archway);
                }));
    }

    /// Puts a door in the middle of the longest free stretch between two rooms, narrower than it should be but not than `least`.
    bool put(const UsualRoom& a, const UsualRoom& b, UsualDoor door, double least) {
        const Border border = border_of(a.loop, b.loop);
        const auto point = [&](double at) { return border.across == Axis::x ? Point2{border.at, at} : Point2{at, border.at}; };
        for (std::size_t i = 0; i < plan_.partitions.size(); ++i) {
            const UsualPartition& wall = plan_.partitions[i];
            if (wall.story != a.story || to_line(wall, point(border.from)) > 1e-6 || to_line(wall, point(border.to)) > 1e-6)
                continue;
            const double from = norm(point(border.from) - wall.from);
            const double to = norm(point(border.to) - wall.from);
            const auto [free_from, free_to] = longest_free(i, std::min(from, to), std::max(from, to));
            if (free_to - free_from < least) return false;
            door.width = std::floor(std::min(door.width, free_to - free_from) * 100 + 1e-6) / 100;
            door.partition = i;
            door.of_line = (free_from + free_to) / 2;
            door.along = door.of_line - (is_on_outline(wall.from) ? UsualWalls::outside : UsualWalls::partition / 2);
            plan_.doors.push_back(std::move(door));
            return true;
        }
        return false;
    }

    static double to_line(const UsualPartition& wall, Point2 point) { return to_edge({wall.from, wall.to}, point); }
    [[nodiscard]] bool is_on_outline(Point2 point) const { return to_edge(outline_, point) < 1e-6; }

    /// Of a stretch of a partition, by distances from its beginning, what no other partition and no door takes.
    [[nodiscard]] std::pair<double, double> longest_free(std::size_t at, double from, double to) const {
        const UsualPartition& wall = plan_.partitions[at];
        std::vector<std::pair<double, double>> taken{{from, from + beside_corner}, {to - beside_corner, to}};
        for (const UsualPartition& other : plan_.partitions) {
            if (&other == &wall || other.story != wall.story) continue;
            for (const Point2 end : {other.from, other.to}) {
                if (to_line(wall, end) > 1e-6) continue;
                const double there = norm(end - wall.from);
                taken.emplace_back(there - beside_wall, there + beside_wall);
            }
        }
        for (const UsualDoor& door : plan_.doors) {
            if (door.partition != at) continue;
            taken.emplace_back(door.of_line - door.width / 2 - beside_corner, door.of_line + door.width / 2 + beside_corner);
        }
        std::ranges::sort(taken);
        std::pair<double, double> best{0, 0};
        double reached = from;
        for (const auto& [begin, end] : taken) {
            if (std::min(begin, to) - reached > best.second - best.first) best = {reached, std::min(begin, to)};
            reached = std::max(reached, end);
        }
        return best;
    }

    const Loop& outline_;
    RoomPlan& plan_;
};

}  // namespace

bool hang_doors(const Loop& outline, RoomPlan& plan) { return Doors(outline, plan).hang(); }

}  // namespace seamward::viewer
