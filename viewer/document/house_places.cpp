// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/house_places.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "document/square_cuts.h"
#include "document/usual_doors.h"
#include "geometry/straight_skeleton.h"

namespace seamward::viewer {

namespace {

constexpr double corner_room = 0.35;  ///< kept free at both ends of a wall: posts stand there
constexpr double end_room = 0.15;     ///< to both sides of the middle of a partition that ends there
constexpr double between = 0.2;       ///< kept free between two things on a wall
constexpr double step = 0.05;         ///< in which places are tried

double norm(Point2 a) { return std::hypot(a.x, a.y); }

Point2 next(const Loop& loop, std::size_t i) { return loop[i + 1 < loop.size() ? i + 1 : 0]; }

double to_side(Point2 a, Point2 b, Point2 point) {
    const Point2 side = b - a;
    const double t = std::clamp(dot(point - a, side) / dot(side, side), 0.0, 1.0);
    return norm(point - (a + side * t));
}

double centimeters(double meters) { return std::round(meters * 100) / 100; }

}  // namespace

double to_edge(const Loop& loop, Point2 point) {
    double least = 1e9;
    for (std::size_t i = 0; i < loop.size(); ++i) least = std::min(least, to_side(loop[i], next(loop, i), point));
    return least;
}

bool is_inside(const Loop& loop, Point2 point) {
    bool inside = false;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 a = loop[i];
        const Point2 b = next(loop, i);
        if ((a.y > point.y) == (b.y > point.y)) continue;
        if (point.x < a.x + (b.x - a.x) * (point.y - a.y) / (b.y - a.y)) inside = !inside;
    }
    return inside;
}

HousePlaces::HousePlaces(const NewHouse& house)
    : outline_(outline_of(house)), plan_(*usual_rooms(house)), taken_(outline_.size()), taken_inside_(plan_.partitions.size()) {
    name_walls();
    take_ends_and_doors();
    if (house.roof == NewHouse::Roof::hip || house.roof == NewHouse::Roof::gable) {
        std::vector<SkeletonFace> faces = straight_skeleton(outline_);
        if (house.roof == NewHouse::Roof::gable) {  // under a gable there is no plane
            for (const std::size_t gable : gable_walls(outline_)) faces[gable].outline.clear();
        }
        for (SkeletonFace& face : faces) {
            if (!face.outline.empty()) planes_.push_back(std::move(face.outline));
        }
    }
    if (planes_.empty()) planes_.push_back(outline_);
    std::ranges::stable_sort(planes_, std::greater<>(), doubled_area);
}

void HousePlaces::take_ends_and_doors() {
    for (const UsualPartition& partition : plan_.partitions) {
        for (const Point2 end : {partition.from, partition.to}) {
            for (std::size_t i = 0; i < outline_.size(); ++i) {
                const double there = norm(end - outline_[i]);
                if (to_side(outline_[i], next(outline_, i), end) < 1e-6)
                    taken_[i].push_back({partition.story, there - end_room, there + end_room});
            }
            for (std::size_t i = 0; i < plan_.partitions.size(); ++i) {
                const UsualPartition& other = plan_.partitions[i];
                const double there = norm(end - other.from);
                if (other.story == partition.story && to_side(other.from, other.to, end) < 1e-6)
                    taken_inside_[i].push_back({other.story, there - end_room, there + end_room});
            }
        }
    }
    for (const UsualDoor& door : plan_.doors) {
        const double half = door.width / 2;
        taken_inside_[door.partition].push_back(
            {plan_.partitions[door.partition].story, door.of_line - half, door.of_line + half});
    }
}

std::vector<const UsualRoom*> HousePlaces::rooms(RoomUse use, int story) const {
    std::vector<const UsualRoom*> rooms;
    const bool any_part = use != RoomUse::hall && use != RoomUse::garage;
    for (const UsualRoom& room : plan_.rooms) {
        if (room.story == story && (room.use == use || (any_part && room.use == RoomUse::whole))) rooms.push_back(&room);
    }
    return rooms;
}

void HousePlaces::name_walls() {
    constexpr std::array<const char*, 4> words{"front", "back", "left", "right"};
    constexpr std::array<const char*, 4> counts{"", "second ", "third ", "fourth "};
    const Point2 across = (outline_[1] - outline_[0]) * (1 / length(0));
    std::array<std::size_t, 4> count{};
    std::array<double, 4> longest{};
    sides_.assign(4, 0);
    for (std::size_t i = 0; i < outline_.size(); ++i) {
        const Point2 along = (next(outline_, i) - outline_[i]) * (1 / length(i));
        const double same = dot(along, across);
        const double turn = cross(across, along);
        std::size_t side = same > 0.7 ? 0U : same < -0.7 ? 1U : turn > 0 ? 3U : 2U;
        const bool first = side == 0 && i > 0;  // of walls that face the street only the first is called the front
        if (length(i) > longest[side] && !first) {
            longest[side] = length(i);
            sides_[side] = i;
        }
        const std::size_t number = count[side]++;
        const std::string word = words[side];
        const std::string order = number < counts.size() ? counts[number] : std::to_string(number + 1) + "th ";
        names_.push_back(order + word + " wall");
        walls_.push_back(names_.back());
        std::ranges::replace(walls_.back(), ' ', '-');
    }
    for (std::size_t side = 1; side < 4; ++side) {
        if (longest[side] == 0) sides_[side] = outline_.size() - 1;
    }
}

double HousePlaces::length(std::size_t wall) const { return norm(next(outline_, wall) - outline_[wall]); }

Point2 HousePlaces::inward(std::size_t wall) const {
    const Point2 along = (next(outline_, wall) - outline_[wall]) * (1 / length(wall));
    return {-along.y, along.x};
}

const UsualRoom* HousePlaces::room_at(Point2 point, int story) const {
    for (const UsualRoom& room : plan_.rooms) {
        if (room.story == story && is_inside(room.loop, point)) return &room;
    }
    return nullptr;
}

bool HousePlaces::is_there(const UsualRoom* room, Where where) {
    switch (where.of) {
        case Where::Of::anywhere: return true;
        case Where::Of::house: return room != nullptr && room->use != RoomUse::garage;
        case Where::Of::garage: return room != nullptr && room->use == RoomUse::garage;
        case Where::Of::room: break;
    }
    return room == where.room;
}

bool HousePlaces::fits(std::size_t wall, int story, double along, double width, Where where) const {
    const double from = along - width / 2;
    const double to = along + width / 2;
    if (from < corner_room || to > length(wall) - corner_room) return false;
    for (const Span& span : taken_[wall]) {
        if (span.story == story && from < span.to + between && to > span.from - between) return false;
    }
    const Point2 direction = (next(outline_, wall) - outline_[wall]) * (1 / length(wall));
    return std::ranges::all_of(std::array{from, to}, [&](double at) {
        return is_there(room_at(outline_[wall] + direction * at + inward(wall) * 0.3, story), where);
    });
}

std::optional<double> HousePlaces::take(std::size_t wall, int story, double wanted, double width, Where where) {
    for (double away = 0; away <= length(wall); away += step) {
        for (const double along : {centimeters(wanted + away), centimeters(wanted - away)}) {
            if (!fits(wall, story, along, width, where)) continue;
            taken_[wall].push_back({story, along - width / 2, along + width / 2});
            return along;
        }
    }
    return std::nullopt;
}

std::optional<double> HousePlaces::on_wall(std::size_t wall, int story, double share, double width, Where where) {
    return take(wall, story, centimeters(share * length(wall)), width, where);
}

std::optional<HousePlaces::Spot> HousePlaces::on_sides(const std::vector<Side>& sides, int story, double share, double width,
                                                       Where where) {
    for (const Side side : sides) {
        if (const auto along = on_wall(wall(side), story, share, width, where)) return Spot{wall(side), *along};
    }
    return std::nullopt;
}

std::optional<HousePlaces::Spot> HousePlaces::on_room(const UsualRoom& room, double share, double width) {
    struct Stretch {
        std::size_t wall;
        double from, to;
    };
    std::vector<Stretch> stretches;
    for (std::size_t i = 0; i < outline_.size(); ++i) {
        const Point2 direction = (next(outline_, i) - outline_[i]) * (1 / length(i));
        for (std::size_t j = 0; j < room.loop.size(); ++j) {
            const Point2 a = room.loop[j];
            const Point2 b = next(room.loop, j);
            if (to_side(outline_[i], next(outline_, i), a) > 1e-6 || to_side(outline_[i], next(outline_, i), b) > 1e-6) continue;
            stretches.push_back({i, dot(a - outline_[i], direction), dot(b - outline_[i], direction)});
        }
    }
    std::ranges::stable_sort(stretches, std::greater<>(), [](const Stretch& stretch) { return stretch.to - stretch.from; });
    for (const Stretch& stretch : stretches) {
        const double wanted = centimeters(stretch.from + share * (stretch.to - stretch.from));
        if (const auto along = take(stretch.wall, room.story, wanted, width, {Where::Of::room, &room}))
            return Spot{stretch.wall, *along};
    }
    return std::nullopt;
}

std::optional<HousePlaces::Spot> HousePlaces::on_partition(const UsualRoom& room, double width) {
    for (std::size_t i = 0; i < plan_.partitions.size(); ++i) {
        const UsualPartition& wall = plan_.partitions[i];
        const double beginning = to_edge(outline_, wall.from) < 1e-6 ? UsualWalls::outside : UsualWalls::partition / 2;
        const Border border = border_of(room.loop, {wall.from, wall.to});
        if (wall.story != room.story || border.to - border.from < width + 2 * corner_room) continue;
        const auto from_start = [&](double at) {
            return norm((border.across == Axis::x ? Point2{border.at, at} : Point2{at, border.at}) - wall.from);
        };
        const auto [from, to] = std::minmax({from_start(border.from), from_start(border.to)});
        for (double at = centimeters(from + corner_room + width / 2); at + width / 2 < to - corner_room; at += step) {
            const bool free = std::ranges::all_of(taken_inside_[i], [&](const Span& span) {
                return at - width / 2 > span.to + between || at + width / 2 < span.from - between;
            });
            if (!free) continue;
            taken_inside_[i].push_back({wall.story, at - width / 2, at + width / 2});
            return Spot{i, at - beginning};
        }
    }
    return std::nullopt;
}

bool HousePlaces::is_free(Point2 point, int story, double clear, Where where) const {
    const UsualRoom* room = room_at(point, story);
    if (room == nullptr || !is_there(room, where) || to_edge(room->loop, point) < clear + 0.25) return false;
    return std::ranges::all_of(
        placed_, [&](const Taken& other) { return other.story != story || norm(other.at - point) >= clear + other.clear; });
}

std::optional<Point2> HousePlaces::in_plan(int story, Point2 share, double clear, Where where) {
    const Loop& box = where.room != nullptr ? where.room->loop : outline_;
    const auto [least_x, most_x] = std::ranges::minmax(box, {}, &Point2::x);
    const auto [least_y, most_y] = std::ranges::minmax(box, {}, &Point2::y);
    const double wide = most_x.x - least_x.x;
    const double deep = most_y.y - least_y.y;
    const Point2 wanted{least_x.x + share.x * wide, least_y.y + share.y * deep};
    constexpr int parts = 60;
    std::optional<Point2> best;
    for (int i = 1; i < parts; ++i) {
        for (int j = 1; j < parts; ++j) {
            const Point2 point{centimeters(least_x.x + wide * i / parts), centimeters(least_y.y + deep * j / parts)};
            if (best && norm(point - wanted) >= norm(*best - wanted)) continue;
            if (is_free(point, story, clear, where)) best = point;
        }
    }
    if (best) placed_.push_back({story, *best, clear});
    return best;
}

Point2 HousePlaces::inside_of(const UsualRoom& room) {
    const auto [least_x, most_x] = std::ranges::minmax(room.loop, {}, &Point2::x);
    const auto [least_y, most_y] = std::ranges::minmax(room.loop, {}, &Point2::y);
    constexpr int parts = 40;
    Point2 best;
    double most = 0;
    for (int i = 1; i < parts; ++i) {
        for (int j = 1; j < parts; ++j) {
            const Point2 point{centimeters(least_x.x + (most_x.x - least_x.x) * i / parts),
                               centimeters(least_y.y + (most_y.y - least_y.y) * j / parts)};
            if (!is_inside(room.loop, point) || to_edge(room.loop, point) <= most + 1e-9) continue;
            most = to_edge(room.loop, point);
            best = point;
        }
    }
    return best;
}

std::optional<Point2> HousePlaces::under_roof(std::size_t which) const {
    const Loop& plane = planes_[which % planes_.size()];
    const auto [least_x, most_x] = std::ranges::minmax(plane, {}, &Point2::x);
    const auto [least_y, most_y] = std::ranges::minmax(plane, {}, &Point2::y);
    const std::size_t round = which / planes_.size();
    constexpr int parts = 40;
    std::optional<Point2> best;
    double most = 0.45;  // a vent takes that much to each side
    for (int i = 1; i < parts; ++i) {
        for (int j = 1; j < parts; ++j) {
            const Point2 point{centimeters(least_x.x + (most_x.x - least_x.x) * i / parts),
                               centimeters(least_y.y + (most_y.y - least_y.y) * j / parts)};
            if (!is_inside(plane, point)) continue;
            // Each further round in the same plane moves on by 1.2 m.
            const double away = std::abs(point.x - (least_x.x + most_x.x) / 2 - 1.2 * static_cast<double>(round));
            const double clear = std::min({to_edge(plane, point), to_edge(outline_, point), 1.5}) - 0.02 * away;
            if (clear > most) {
                most = clear;
                best = point;
            }
        }
    }
    return best;
}

}  // namespace seamward::viewer
