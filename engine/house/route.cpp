// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/route.h"

#include <algorithm>
#include <cmath>

#include "house/inner_way.h"

namespace seamward {

namespace {

/// So far before the first gap the line begins, and so far past the last one it goes on. Meters; both only need to show where the
/// animal comes from and that it has arrived.
constexpr double step_before = 0.5;
/// At most so far it then goes toward the middle of the space.
constexpr double most_toward_middle = 1;
/// So far it keeps off corners and edges: it does not scrape along them in a picture.
constexpr double off_corners = 0.015;
/// Points nearer than this are one.
constexpr double same_point = 1e-9;

/// A point in the frame of a middle surface.
struct Projected {
    Point2 on_plane;
    double height = 0;  ///< along n
};

Projected projected(const Frame& frame, const Point& p) {
    const Vector from_origin = p - frame.origin;
    return {{dot(from_origin, frame.u), dot(from_origin, frame.v)}, dot(from_origin, frame.n)};
}

const MiddleSurface* middle_of(const House& house, SpaceIndex space) {
    if (space.value >= house.middles.size() || house.middles[space.value].figure.outline.empty()) return nullptr;
    return &house.middles[space.value];
}

/// The way through a gap from one of its spaces to the other; empty when nothing tells where it is.
std::vector<Point> way_through(const House& house, GapIndex index, SpaceIndex from) {
    const Gap& gap = house.survey[index];
    std::vector<Point> way;
    if (index.value < house.places.size()) way = house.places[index.value].through;
    if (way.empty() && gap.at) way.push_back(*gap.at);
    if (gap.between[0] != from) std::reverse(way.begin(), way.end());
    return way;
}

/// The direction in which a way begins, as a unit vector; zero for a single point.
Vector direction(const std::vector<Point>& way) {
    for (const Point& p : way) {
        const Vector step = p - way.front();
        if (const double size = length(step); size > same_point) return step * (1 / size);
    }
    return {0, 0, 0};
}

/// Between two gaps of one space, both ends left out.
std::vector<Point> across(const House& house, SpaceIndex space, const Point& from, const Point& to) {
    const MiddleSurface* middle = middle_of(house, space);
    if (middle == nullptr) return {};
    const Frame& frame = middle->frame;
    std::vector<Point> points;
    for (const Point2 p :
         shortest_inside(middle->figure, projected(frame, from).on_plane, projected(frame, to).on_plane, off_corners))
        points.push_back(frame.at(p.x, p.y, 0));
    return points;
}

void append(std::vector<Point>& line, const std::vector<Point>& points) {
    for (const Point& p : points) {
        if (line.empty() || distance(line.back(), p) > same_point) line.push_back(p);
    }
}

}  // namespace

std::optional<Point> entry_of(const MiddleSurface& middle, const Point& from) {
    const InnerRoom room(middle.figure);
    return entry_of(middle, &room, from);
}

std::optional<Point> entry_of(const MiddleSurface& middle, const InnerRoom* room, const Point& from) {
    if (room == nullptr) return std::nullopt;
    const std::optional<Point2> inside = room->nearest_inside(projected(middle.frame, from).on_plane, off_corners);
    if (!inside) return std::nullopt;
    return middle.frame.at(inside->x, inside->y, 0);
}

std::vector<Point> steps_into(const House& house, SpaceIndex space, const Point& end, Vector onward, double step) {
    const MiddleSurface* middle = middle_of(house, space);
    if (middle == nullptr) return {end + onward * step};
    const InnerRoom room(middle->figure);
    return steps_into(house, space, &room, end, onward, step);
}

std::vector<Point> steps_into(const House& house, SpaceIndex space, const InnerRoom* room, const Point& end, Vector onward,
                              double step) {
    const MiddleSurface* middle = middle_of(house, space);
    if (middle == nullptr || room == nullptr) return {end + onward * step};
    const Frame& frame = middle->frame;
    const Projected here = projected(frame, end);
    const std::optional<Point2> inside = room->nearest_inside(here.on_plane, off_corners);
    if (!inside) return {end + onward * step};
    const double rising = dot(onward, frame.n);
    if (here.height * rising > same_point)
        step = 0;
    else if (std::abs(rising) > same_point)
        step = std::min(step, std::abs(here.height / rising));
    Point2 there = *inside;
    const Point2 along{dot(onward, frame.u), dot(onward, frame.v)};
    if (const double size = std::sqrt(dot(along, along)); size > same_point) {
        const Point2 ahead = along * (1 / size);
        const double wanted = dot(here.on_plane + along * step - there, ahead);
        there = there + ahead * std::clamp(room->room_ahead(there, ahead) - off_corners, 0.0, std::max(0.0, wanted));
    }
    if (house.survey[space].kind == SpaceKind::cavity)  // narrow, and low under a roof: along the middle only
        return {frame.at(inside->x, inside->y, 0), frame.at(there.x, there.y, 0)};
    const double height = here.height + rising * step;
    const double left = std::copysign(std::max(0.0, std::abs(height) - most_toward_middle), height);
    return {frame.at(there.x, there.y, height), frame.at(there.x, there.y, left)};
}

std::vector<Point> route(const House& house, std::span<const GapIndex> gaps, std::span<const SpaceIndex> spaces) {
    std::vector<Point> line;
    std::size_t last = gaps.size();  // the gap before, where its place is known
    for (std::size_t i = 0; i < gaps.size() && i + 1 < spaces.size(); ++i) {
        const std::vector<Point> way = way_through(house, gaps[i], spaces[i]);
        if (way.empty()) continue;
        if (i == 0) {
            std::vector<Point> before = steps_into(house, spaces[0], way.front(), direction(way) * -1, step_before);
            append(line, {before.rbegin(), before.rend()});
        } else if (last + 1 == i) {
            append(line, across(house, spaces[i], line.back(), way.front()));
        }
        append(line, way);
        last = i;
    }
    if (gaps.empty() || last + 1 != gaps.size() || spaces.size() != gaps.size() + 1) return line;
    std::vector<Point> back = way_through(house, gaps[last], spaces[last]);
    std::reverse(back.begin(), back.end());
    append(line, steps_into(house, spaces.back(), back.front(), direction(back) * -1, longest_step));
    return line;
}

}  // namespace seamward
