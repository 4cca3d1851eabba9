// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <limits>

#include "provisions/measures.h"

namespace seamward {

namespace {

constexpr double step = 0.1;         ///< meters: nothing narrower than this is paved
constexpr double before_wall = 0.1;  ///< meters: so far before the face the ground is looked at

/// Points along the edges of a gap's faces.
void along_edges(const std::vector<TriangleTree::Triangle>& faces, auto&& visit) {
    for (const TriangleTree::Triangle& face : faces) {
        for (std::size_t i = 0; i < 3; ++i) {
            const Point &from = face.at(i), &to = face.at((i + 1) % 3);
            const int pieces = std::max(1, static_cast<int>(std::ceil(distance(from, to) / step)));
            for (int k = 0; k < pieces; ++k) visit(from + (to - from) * (static_cast<double>(k) / pieces));
        }
    }
}

struct Stretch {
    double from = 0, to = 0;
};

/// Overlapping ones made one, from the least on.
std::vector<Stretch> joined(std::vector<Stretch> all) {
    std::sort(all.begin(), all.end(), [](const Stretch& a, const Stretch& b) { return a.from < b.from; });
    std::vector<Stretch> out;
    for (const Stretch& one : all) {
        if (!out.empty() && one.from <= out.back().to + 1e-6)
            out.back().to = std::max(out.back().to, one.to);
        else
            out.push_back(one);
    }
    return out;
}

Stretch along(const auto& points, Vector tangent) {
    Stretch out{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    for (const Point& p : points) {
        const double t = p.x * tangent.x + p.y * tangent.y;
        out.from = std::min(out.from, t);
        out.to = std::max(out.to, t);
    }
    return out;
}

/// Doors of the wall that a gap is in: stretches along it where there is no wall at the gap's height.
std::vector<Stretch> doors_beside(const AuditFacts& facts, const std::vector<TriangleTree::Triangle>& faces, Vector tangent,
                                  Vector normal) {
    constexpr double in_wall = 0.6, over = 0.3;  // meters: thickness of a wall and its frame; a window's sill is higher
    const double depth = faces.front()[0].x * normal.x + faces.front()[0].y * normal.y;
    std::vector<Stretch> doors;
    for (const Part& part : facts.job.house.parts) {
        if (part.layer != Layer::opening || part.mesh.points.empty()) continue;
        const Stretch deep = along(part.mesh.points, normal);
        double low = std::numeric_limits<double>::infinity();
        for (const Point& p : part.mesh.points) low = std::min(low, p.z);
        if (deep.to < depth - in_wall || deep.from > depth + in_wall || low > faces.front()[0].z + over) continue;
        doors.push_back(along(part.mesh.points, tangent));
    }
    return doors;
}

/// The outside wall with that outward side that a point is at, along it.
std::optional<Stretch> wall_of(const AuditFacts& facts, const Point& at, Vector normal, Vector tangent) {
    constexpr double in_wall = 0.6;  // meters
    const Loop& outline = facts.job.house.outline;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 &from = outline[i], &to = outline[(i + 1) % outline.size()];
        const double deep = (at.x - from.x) * normal.x + (at.y - from.y) * normal.y;
        const std::array<Point, 2> ends{Point{from.x, from.y, 0}, Point{to.x, to.y, 0}};
        const double level = (to.x - from.x) * normal.x + (to.y - from.y) * normal.y;
        if (std::abs(deep) > in_wall || std::abs(level) > 1e-3) continue;
        const Stretch wall = along(ends, tangent);
        const double t = at.x * tangent.x + at.y * tangent.y;
        if (t >= wall.from - in_wall && t <= wall.to + in_wall) return wall;
    }
    return std::nullopt;
}

}  // namespace

std::optional<GroundClearance> clearance_over_ground(const AuditFacts& facts, GapIndex gap) {
    const std::vector<TriangleTree::Triangle>& faces = facts.faces(gap);
    if (faces.empty()) return std::nullopt;
    const Vector out = facts.outward(gap).value_or(Vector{});
    GroundClearance clear;
    bool any = false;
    along_edges(faces, [&](const Point& p) {
        const std::optional<AuditFacts::Ground> ground = facts.ground_at(p + out * before_wall);
        if (!ground) return;
        any = true;
        std::optional<double>& height = ground->earth ? clear.earth : clear.paving;
        if (height && p.z - ground->z >= *height) return;
        height = p.z - ground->z;
        (ground->earth ? clear.earth_at : clear.paving_at) = p;
    });
    if (!any) return std::nullopt;
    return clear;
}

std::optional<Spacing> spacing_of(const AuditFacts& facts, GapIndex gap) {
    const std::vector<TriangleTree::Triangle>& faces = facts.faces(gap);
    const std::optional<Vector> normal = facts.outward(gap);
    if (faces.empty() || !normal) return std::nullopt;
    const Vector tangent{-normal->y, normal->x, 0};
    std::vector<Stretch> pieces;
    for (const TriangleTree::Triangle& face : faces) pieces.push_back(along(face, tangent));
    pieces = joined(std::move(pieces));
    const std::vector<Stretch> doors = doors_beside(facts, faces, tangent, *normal);
    std::optional<Spacing> spacing;
    const auto take = [&](double distance, bool from_piece_to_piece) {
        if (!spacing) spacing = Spacing{std::numeric_limits<double>::infinity(), 0};
        if (from_piece_to_piece) spacing->narrowest = std::min(spacing->narrowest, distance);
        spacing->widest = std::max(spacing->widest, distance);
    };
    for (std::size_t i = 1; i < pieces.size(); ++i) {
        const double from = (pieces[i - 1].from + pieces[i - 1].to) / 2, to = (pieces[i].from + pieces[i].to) / 2;
        double at = from;  // the stretch of wall up to a door, between doors, and from the last one on
        bool door_between = false;
        for (const Stretch& door : joined(doors)) {
            if (door.from < from - 1e-6 || door.to > to + 1e-6) continue;
            take(door.from - at, false);
            at = door.to;
            door_between = true;
        }
        take(to - at, !door_between);
    }
    if (!spacing) return std::nullopt;
    if (const std::optional<Stretch> wall = wall_of(facts, faces.front()[0], *normal, tangent)) {
        const double first = (pieces.front().from + pieces.front().to) / 2, last = (pieces.back().from + pieces.back().to) / 2;
        double from = wall->from, to = wall->to;  // where no wall goes on beside a door, none is due
        for (const Stretch& door : joined(doors)) {
            if (door.to <= first) from = std::max(from, door.to);
            if (door.from >= last) to = std::min(to, door.from);
        }
        take(first - from, false);
        take(to - last, false);
    }
    return spacing;
}

}  // namespace seamward
