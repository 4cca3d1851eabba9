// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/level_section.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <utility>

#include "base/vector.h"

namespace seamward {

namespace {

using MeshEdge = std::pair<std::uint32_t, std::uint32_t>;  ///< the lower corner first

/// Where the edge of a mesh crosses a height: worked out the same way for all triangles that share it.
Point crossing(const TriangleMesh& mesh, const MeshEdge& edge, double z) {
    const Point& a = mesh.points[edge.first];
    const Point& b = mesh.points[edge.second];
    const double share = (z - a.z) / (b.z - a.z);
    return {a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share, z};
}

MeshEdge edge_of(std::uint32_t a, std::uint32_t b) { return {std::min(a, b), std::max(a, b)}; }

/// One end of a cut through a triangle goes to the other; the solid on the left.
std::multimap<MeshEdge, MeshEdge> cuts_of(const TriangleMesh& mesh, double z) {
    std::multimap<MeshEdge, MeshEdge> next;
    const auto above = [&](std::uint32_t corner) { return mesh.points[corner].z >= z; };
    for (const auto& triangle : mesh.triangles) {
        MeshEdge down, up;
        bool cut = false;
        for (std::size_t i = 0; i < 3; ++i) {
            const std::uint32_t from = triangle.at(i), to = triangle.at((i + 1) % 3);
            if (above(from) == above(to)) continue;
            cut = true;
            (above(from) ? down : up) = edge_of(from, to);
        }
        // Counterclockwise seen from outside: the cut goes from the side that comes down to the one that rises.
        if (cut) next.emplace(down, up);
    }
    return next;
}

constexpr double half_turn = std::numbers::pi;
constexpr double alike = 0.02;         ///< radians between edges that run alongside
constexpr double least_face = 5e-3;    ///< meters: shorter edges bound no cavity
constexpr double least_cavity = 1e-4;  ///< meters: nearer faces touch

struct Face {
    Point2 from, along;  ///< solid on the left
    double run = 0;
};

/// The stretch of a face's opposite that looks at it over air, as a quadrilateral; empty: none.
Loop air_between(const Face& face, const Face& other, double across) {
    const auto out = [&](Point2 p) { return -cross(face.along, p - face.from); };  // out of the solid, to the right
    const Point2 end = other.from + other.along * other.run;
    const double begin_out = out(other.from), end_out = out(end);
    if (std::min(begin_out, end_out) < least_cavity || std::max(begin_out, end_out) > across) return {};
    // The other runs against this one.
    const double from = std::max(0.0, dot(end - face.from, face.along));
    const double to = std::min(face.run, dot(other.from - face.from, face.along));
    if (to - from < least_face) return {};
    const auto opposite = [&](double at) {
        const double share = (at - dot(other.from - face.from, face.along)) / dot(other.along, face.along);
        return other.from + other.along * share;
    };
    return {opposite(from), opposite(to), face.from + face.along * to, face.from + face.along * from};
}

}  // namespace

std::vector<Loop> level_section(const TriangleMesh& mesh, double z, double bridge) {
    std::multimap<MeshEdge, MeshEdge> next = cuts_of(mesh, z);
    std::map<MeshEdge, int> arrivals;
    for (const auto& [from, to] : next) ++arrivals[to];
    std::vector<Loop> loops;
    const auto follow = [&](MeshEdge at) {
        const MeshEdge begin = at;
        Loop loop;
        while (true) {
            const Point p = crossing(mesh, at, z);
            loop.push_back({p.x, p.y});
            const auto found = next.find(at);
            if (found == next.end()) break;
            at = found->second;
            next.erase(found);
            if (at == begin) return loop;
        }
        const Point2 open = loop.back() - loop.front();
        return std::hypot(open.x, open.y) <= bridge ? loop : Loop{};
    };
    // Chains of open meshes first, from where they begin.
    std::vector<MeshEdge> begins;
    for (const auto& [from, to] : next) {
        if (!arrivals.contains(from)) begins.push_back(from);
    }
    const auto keep = [&](Loop loop) {
        if (loop.size() > 2) loops.push_back(std::move(loop));
    };
    for (const MeshEdge& begin : begins) keep(follow(begin));
    while (!next.empty()) keep(follow(next.begin()->first));
    return loops;
}

TriangleMesh below_level(const TriangleMesh& mesh, double z) {
    TriangleMesh left;
    std::vector<std::uint32_t> place(mesh.points.size(), 0xffffffff);
    std::map<MeshEdge, std::uint32_t> cuts;
    const auto kept = [&](std::uint32_t corner) {
        if (place[corner] == 0xffffffff) {
            place[corner] = static_cast<std::uint32_t>(left.points.size());
            left.points.push_back(mesh.points[corner]);
        }
        return place[corner];
    };
    const auto cut = [&](std::uint32_t a, std::uint32_t b) {
        const MeshEdge edge = edge_of(a, b);
        const auto [entry, is_new] = cuts.try_emplace(edge, static_cast<std::uint32_t>(left.points.size()));
        if (is_new) left.points.push_back(crossing(mesh, edge, z));
        return entry->second;
    };
    for (const auto& triangle : mesh.triangles) {
        std::array<std::uint32_t, 4> corners{};
        std::size_t count = 0;
        for (std::size_t i = 0; i < 3; ++i) {
            const std::uint32_t from = triangle.at(i), to = triangle.at((i + 1) % 3);
            const bool from_below = mesh.points[from].z < z, to_below = mesh.points[to].z < z;
            if (from_below) corners.at(count++) = kept(from);
            if (from_below != to_below) corners.at(count++) = cut(from, to);
        }
        for (std::size_t i = 2; i < count; ++i) left.triangles.push_back({corners[0], corners.at(i - 1), corners.at(i)});
    }
    return left;
}

std::vector<Loop> filled_cavities(const std::vector<Loop>& loops, double across) {
    constexpr int directions = 180;
    std::vector<std::vector<Face>> faces(directions);  // by direction, over a whole turn
    const auto bucket = [](Point2 along) {
        double angle = std::atan2(along.y, along.x);
        if (angle < 0) angle += 2 * half_turn;
        return static_cast<int>(std::lround(angle / (2 * half_turn) * directions)) % directions;
    };
    for (const Loop& loop : loops) {
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Point2 step = loop[i + 1 < loop.size() ? i + 1 : 0] - loop[i];
            const double run = std::hypot(step.x, step.y);
            if (run < least_face) continue;
            const Point2 along = step * (1 / run);
            faces[static_cast<std::size_t>(bucket(along))].push_back({loop[i], along, run});
        }
    }
    std::vector<Loop> filled;
    for (int direction = 0; direction < directions / 2; ++direction) {  // each pair once
        for (const Face& face : faces[static_cast<std::size_t>(direction)]) {
            for (int turn = -1; turn <= 1; ++turn) {
                for (const Face& other : faces[static_cast<std::size_t>((direction + directions / 2 + turn) % directions)]) {
                    if (std::abs(cross(face.along, other.along)) > alike) continue;
                    Loop air = air_between(face, other, across);
                    if (!air.empty()) filled.push_back(std::move(air));
                }
            }
        }
    }
    return filled;
}

}  // namespace seamward
