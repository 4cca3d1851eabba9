// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawing_openings.h"

#include <algorithm>
#include <cmath>

namespace seamward {

namespace {

constexpr double at_floor = 0.15;    ///< meters: sills of doors are no higher
constexpr double half_wall = 0.35;   ///< meters from a leaf to the room beside it
constexpr double widest_leaf = 1.6;  ///< meters: wider ones go up

std::string group_of(const Part& part) { return part.id.substr(0, part.id.rfind('/')); }

/// The extent of a part on the paper of a plan.
struct Extent {
    Point low{1e9, 1e9, 1e9}, high{-1e9, -1e9, -1e9};
};

Extent extent_of(const Part& part) {
    Extent extent;
    for (const Point& p : part.mesh.points) {
        extent.low = {std::min(extent.low.x, p.x), std::min(extent.low.y, p.y), std::min(extent.low.z, p.z)};
        extent.high = {std::max(extent.high.x, p.x), std::max(extent.high.y, p.y), std::max(extent.high.z, p.z)};
    }
    return extent;
}

bool has_glass(const DrawnHouse& house, const std::string& group) {
    return std::any_of(house.house.parts.begin(), house.house.parts.end(), [&](const Part& part) {
        return part.layer == Layer::opening && part.material == "glass" && group_of(part) == group;
    });
}

/// The middles of the two ends of a leaf in the plan; leaves may stand at any angle.
struct LeafLine {
    Point2 from, to;
};

LeafLine line_of(const Part& part) {
    // A leaf is a plate: its largest upright triangle lies in its face.
    Point2 aside{1, 0};
    double largest = 0;
    for (const auto& [a, b, c] : part.mesh.triangles) {
        const Vector n = cross(part.mesh.points[b] - part.mesh.points[a], part.mesh.points[c] - part.mesh.points[a]);
        const double area = std::hypot(n.x, n.y);
        if (area <= largest) continue;
        largest = area;
        aside = {n.x / area, n.y / area};
    }
    const Point2 along{aside.y, -aside.x};
    double least = 1e9, most = -1e9, back = 1e9, front = -1e9;
    for (const Point& p : part.mesh.points) {
        least = std::min(least, dot({p.x, p.y}, along));
        most = std::max(most, dot({p.x, p.y}, along));
        back = std::min(back, dot({p.x, p.y}, aside));
        front = std::max(front, dot({p.x, p.y}, aside));
    }
    const Point2 middle = aside * ((back + front) / 2);
    return {middle + along * least, middle + along * most};
}

const PlanRoom* room_at(const std::vector<PlanRoom>& rooms, Point2 at) {
    for (const PlanRoom& room : rooms) {
        if (is_within(room.figure, at)) return &room;
    }
    return nullptr;
}

double area_of(const PlanRoom* room) { return room == nullptr ? 1e9 : std::abs(doubled_area(room->figure.outline)); }

}  // namespace

bool is_within(const Figure& figure, Point2 at) {
    bool inside = false;
    const auto pass = [&](const Loop& loop) {
        for (std::size_t i = 0, j = loop.size() - 1; i < loop.size(); j = i++) {
            if ((loop[i].y > at.y) == (loop[j].y > at.y)) continue;
            if (at.x < loop[i].x + (at.y - loop[i].y) / (loop[j].y - loop[i].y) * (loop[j].x - loop[i].x)) inside = !inside;
        }
    };
    pass(figure.outline);
    for (const Loop& hole : figure.holes) pass(hole);
    return inside;
}

double distance_to_border(const Figure& figure, Point2 at) {
    double nearest = 1e9;
    const auto pass = [&](const Loop& loop) {
        for (std::size_t i = 0, j = loop.size() - 1; i < loop.size(); j = i++) {
            const Point2 step = loop[i] - loop[j];
            const double size = dot(step, step);
            const double share = size > 0 ? std::clamp(dot(at - loop[j], step) / size, 0.0, 1.0) : 0;
            const Point2 off = at - (loop[j] + step * share);
            nearest = std::min(nearest, std::hypot(off.x, off.y));
        }
    };
    pass(figure.outline);
    for (const Loop& hole : figure.holes) pass(hole);
    return nearest;
}

std::vector<PlanRoom> rooms_of_story(const DrawnHouse& house, double floor) {
    std::vector<PlanRoom> rooms;
    const House& of = house.house;
    for (std::size_t i = 0; i < std::min(of.middles.size(), of.survey.spaces.size()); ++i) {
        const Space& space = of.survey.spaces[i];
        const MiddleSurface& middle = of.middles[i];
        if (space.kind != SpaceKind::living && space.kind != SpaceKind::attached) continue;
        if (middle.figure.outline.size() < 3 || std::abs(middle.frame.origin.z - room_over_floor - floor) > 0.5) continue;
        if (middle.frame.n.z < 0.5) continue;
        PlanRoom room{space.called(), {}};
        const auto moved = [&](const Loop& loop) {
            Loop out;
            for (const Point2 p : loop) {
                const Point at = middle.frame.at(p.x, p.y, 0);
                out.push_back({at.x, at.y});
            }
            return out;
        };
        room.figure.outline = moved(middle.figure.outline);
        for (const Loop& hole : middle.figure.holes) room.figure.holes.push_back(moved(hole));
        rooms.push_back(std::move(room));
    }
    return rooms;
}

bool is_leaf_with_sign(const DrawnHouse& house, const Part& part, double floor) {
    if (!house.described || part.layer != Layer::opening || !part.id.ends_with("/leaf")) return false;
    const Extent extent = extent_of(part);
    return std::abs(extent.low.z - floor) <= at_floor && !has_glass(house, group_of(part));
}

std::vector<PlanOpening> openings_of_story(const DrawnHouse& house, double floor, const std::vector<PlanRoom>& rooms) {
    std::vector<PlanOpening> openings;
    for (const Part& part : house.house.parts) {
        if (part.layer != Layer::opening || !part.id.ends_with("/leaf")) continue;
        const Extent extent = extent_of(part);
        if (std::abs(extent.low.z - floor) > at_floor) continue;
        const LeafLine line = line_of(part);
        const Point2 step = line.to - line.from;
        const double width = std::hypot(step.x, step.y);
        if (!(width > 0)) continue;
        PlanOpening opening{PlanOpening::Kind::hinged, line.from, line.to, {}, extent.high.z - extent.low.z};
        if (has_glass(house, group_of(part))) continue;  // its frame and its glass are cut as they are
        if (width > widest_leaf) opening.kind = PlanOpening::Kind::overhead;
        const Point2 along = step * (1 / width), aside{-along.y, along.x}, middle = line.from + step * 0.5;
        const PlanRoom* left = room_at(rooms, middle + aside * half_wall);
        const PlanRoom* right = room_at(rooms, middle - aside * half_wall);
        opening.into = area_of(left) <= area_of(right) ? aside : aside * -1;
        const PlanRoom* room = area_of(left) <= area_of(right) ? left : right;
        if (room != nullptr) {
            const auto to_wall = [&](Point2 end, Point2 away) {
                for (double far = 0; far < 5; far += 0.05) {
                    if (!is_within(room->figure, end + opening.into * half_wall + away * far)) return far;
                }
                return 5.0;
            };
            if (to_wall(line.to, along) < to_wall(line.from, along * -1)) std::swap(opening.hinge, opening.far);
        }
        openings.push_back(opening);
    }
    return openings;
}

}  // namespace seamward
