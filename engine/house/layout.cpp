// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/layout.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace seamward {

SpaceIndex Layout::add_space(const NamedSpace& named, SpaceKind kind, Place place, bool source) {
    const SpaceIndex index{static_cast<std::uint32_t>(house.survey.spaces.size())};
    if (const auto [first, is_new] = space_ids.emplace(named.id, index); !is_new) {
        const std::uint32_t line = space_places[first->second.value].line;
        faults.add(place,
                   "space id \"" + named.id + "\" stands twice, first " +
                       (line > 0 ? "on line " + std::to_string(line) : "as a space that the house has by itself"),
                   "give each its own");
    }
    Space space;
    space.id = named.id;
    space.name = named.name;
    space.spoken = named.spoken;
    space.kind = kind;
    space.source = source;
    house.survey.spaces.push_back(std::move(space));
    house.middles.emplace_back();
    space_places.push_back(place);
    return index;
}

std::size_t Layout::add_panel(Panel panel) {
    const std::string id = panel.id;
    // The number goes on from the last one: a row may have thousands alike.
    while (!panel_ids.emplace(panel.id, 1).second) panel.id = id + "-" + std::to_string(++panel_ids.at(id));
    panels.push_back(std::move(panel));
    return panels.size() - 1;
}

std::size_t Layout::add_panel(std::string id, std::string name, std::string material, Layer layer, Prism prism) {
    return add_panel({std::move(id), std::move(name), std::move(material), layer, {std::move(prism)}});
}

void Layout::set_middle(SpaceIndex space, const Frame& frame, Figure figure) {
    MiddleSurface& middle = house.middles[space.value];
    if (middle.figure.outline.empty()) middle = {frame, std::move(figure)};
}

const RoomLayout* Layout::room_at(std::size_t story, Point2 at) const {
    for (const RoomLayout& room : stories[story].rooms) {
        if (!is_inside(room.figure.outline, at)) continue;
        bool in_hole = false;
        for (const Loop& hole : room.figure.holes) in_hole = in_hole || is_inside(hole, at);
        if (!in_hole) return &room;
    }
    return nullptr;
}

SpaceIndex Layout::room_space(std::size_t story, Point2 at) const {
    const RoomLayout* room = room_at(story, at);
    return room != nullptr ? room->space : SpaceIndex();
}

SpaceIndex Layout::under_ceiling(std::size_t story, Point2 at) const {
    for (const BulkheadLayout& bulkhead : bulkheads) {
        if (bulkhead.story == story && is_inside(bulkhead.plan, at)) return bulkhead.space;
    }
    return room_space(story, at);
}

const BulkheadLayout* Layout::bulkhead_at(const Point& at) const {
    for (const BulkheadLayout& bulkhead : bulkheads) {
        const bool high = at.z > bulkhead.bottom.back && at.z < stories[bulkhead.story].ceiling;
        if (high && is_inside(bulkhead.plan, {at.x, at.y})) return &bulkhead;
    }
    return nullptr;
}

SpaceIndex Layout::above_ceiling(std::size_t story, Point2 at) const {
    if (story + 1 == stories.size()) return attic;
    for (const WallLayout& wall : walls) {
        if (wall.story != story + 1 || !wall.open_below) continue;
        const Vector off = Point{at.x, at.y, 0} - wall.frame.origin;
        const double u = dot(off, wall.frame.u), n = dot(off, wall.frame.n);
        const WallCavity& air = wall.cavities.back();
        if (u > 0 && u < wall.length && n > air.back && n < air.front) return air.space;
    }
    return below_floor(story + 1, at);
}

SpaceIndex Layout::below_floor(std::size_t story, Point2 at) const {
    for (const auto& [figure, space] : stories[story].parts_below) {
        bool inside = is_inside(figure.outline, at);
        for (const Loop& hole : figure.holes) inside = inside && !is_inside(hole, at);
        if (inside) return space;
    }
    return stories[story].below;
}

std::optional<std::size_t> WallCavity::bay_at(Point2 p) const {
    for (std::size_t i = 0; i < bays.size(); ++i) {
        const Figure& figure = bays[i].first;
        bool inside = is_inside(figure.outline, p);
        for (const Loop& hole : figure.holes) inside = inside && !is_inside(hole, p);
        if (inside) return i;
    }
    return std::nullopt;
}

SpaceIndex WallCavity::at(Point2 p) const {
    if (bays.empty()) return space;
    const std::optional<std::size_t> bay = bay_at(p);
    return bay ? bays[*bay].second : SpaceIndex();
}

Prism plain_prism(const Frame& frame, Loop outline, double back, double front, const Slant& slant) {
    Prism prism;
    prism.frame = frame;
    prism.outline = std::move(outline);
    prism.heights = {{back}, {front}};
    prism.slant = slant;
    return prism;
}

Loop rectangle(Point2 least, Point2 most) { return {least, {most.x, least.y}, most, {least.x, most.y}}; }

Loop around_circle(Point2 middle, double radius, int sides) {
    Loop loop;
    const double out = radius / std::cos(std::numbers::pi / sides);
    for (int i = 0; i < sides; ++i) {
        const double angle = 2 * std::numbers::pi * (i + 0.5) / sides;
        loop.push_back(middle + Point2{std::cos(angle), std::sin(angle)} * out);
    }
    return loop;
}

Loop hole_round(const Loop& part, double width) {
    // A side that touches the arc of radius w round a corner of the part lies at w. Two that turn by 2h from one to the next meet
    // at w / cos h from that corner, and the ball that touches both and the corner is 2w / (1 + cos h) wide.
    constexpr double excess = 2e-5;  // of that ball, meters
    const double least_cosine = 2 * width / (width + excess) - 1;
    const std::size_t n = part.size();
    const auto along = [&](std::size_t i) {
        const Point2 side = part[(i + 1) % n] - part[i % n];
        const double far = std::sqrt(dot(side, side));
        return Point2{side.x / far, side.y / far};
    };
    Loop hole;
    for (std::size_t i = 0; i < n; ++i) {
        const Point2 a = along(i + n - 1), b = along(i), out_of_a{a.y, -a.x}, out_of_b{b.y, -b.x};
        const double turn = std::atan2(cross(a, b), dot(a, b));
        const int count = std::max(1, static_cast<int>(std::ceil(turn / (2 * std::acos(least_cosine)))));
        const double half = turn / (2 * count), reach = width * std::tan(half);
        // The first and the last stand on the straight sides, without rounding off them.
        hole.push_back(part[i] + out_of_a * width + a * reach);
        for (int k = 1; k + 1 < count; ++k) {
            const double angle = (2 * k + 1) * half;
            hole.push_back(part[i] + (out_of_a * std::cos(angle) + a * std::sin(angle)) * (width / std::cos(half)));
        }
        if (count > 1) hole.push_back(part[i] + out_of_b * width - b * reach);
    }
    return hole;
}

Loop offset_outline(const Loop& outline, const std::vector<double>& outward) {
    const std::size_t n = outline.size();
    Loop moved;
    for (std::size_t i = 0; i < n; ++i) {
        const Point2 before = outline[(i + n - 1) % n], here = outline[i], after = outline[(i + 1) % n];
        const auto unit = [](Point2 p) { return p * (1 / std::sqrt(dot(p, p))); };
        const Point2 a = unit(here - before), b = unit(after - here);
        const double da = outward[(i + n - 1) % n], db = outward[i];
        // The point at distance da right of the line along a, and db right of the line along b.
        const double turn = cross(a, b);
        if (std::abs(turn) < 1e-12) {
            moved.push_back(here + Point2{b.y, -b.x} * db);
            continue;
        }
        moved.push_back(here + (b * da - a * db) * (-1 / turn));
    }
    return moved;
}

std::string spoken(std::string id) {
    std::replace(id.begin(), id.end(), '-', ' ');
    return id;
}

bool keeps_shape(const Loop& outline, const Loop& moved) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const std::size_t next = (i + 1) % outline.size();
        if (dot(outline[next] - outline[i], moved[next] - moved[i]) <= 0) return false;
    }
    return is_simple(moved);
}

Frame level_frame(double z) { return {{0, 0, z}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}}; }

Frame plan_frame(const Frame& wall) { return {wall.origin, wall.u, wall.n * -1, {0, 0, 1}}; }

}  // namespace seamward
