// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/solid_builders.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <numbers>
#include <tuple>

#include "geometry/remainder.h"

namespace seamward::test {
namespace {

std::uint32_t count_of(const TriangleMesh& mesh) { return static_cast<std::uint32_t>(mesh.points.size()); }

void add_quad(TriangleMesh& mesh, std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    mesh.triangles.push_back({a, b, c});
    mesh.triangles.push_back({a, c, d});
}

std::vector<const Loop*> loops_of(const Figure& figure) {
    std::vector<const Loop*> loops{&figure.outline};
    for (const Loop& hole : figure.holes) loops.push_back(&hole);
    return loops;
}

TriangleMesh pulled(const Frame& frame, const Figure& figure, double from, double to) {
    TriangleMesh mesh;
    for (const double n : {from, to}) {
        for (const Loop* loop : loops_of(figure)) {
            for (const Point2 p : *loop) mesh.points.push_back(frame.at(p.x, p.y, n));
        }
    }
    const std::uint32_t half = count_of(mesh) / 2;
    for (const auto& [a, b, c] : triangulate(figure)) {
        mesh.triangles.push_back({a, c, b});
        mesh.triangles.push_back({a + half, b + half, c + half});
    }
    std::uint32_t first = 0;
    for (const Loop* loop : loops_of(figure)) {
        const auto corners = static_cast<std::uint32_t>(loop->size());
        for (std::uint32_t i = 0; i < corners; ++i) {
            const std::uint32_t a = first + i, b = first + (i + 1) % corners;
            add_quad(mesh, a, b, b + half, a + half);
        }
        first += corners;
    }
    return mesh;
}

Vector unit(Vector v) { return v * (1 / length(v)); }

/// One side of a hollow block, with points of its own.
struct SideBuilder {
    TriangleMesh& mesh;
    int axis;
    bool high;

    [[nodiscard]] Point at(Point2 p, double w) const {
        std::array<double, 3> c{};
        const auto a = static_cast<std::size_t>(axis);
        c[a] = w;
        c[(a + 1) % 3] = p.x;
        c[(a + 2) % 3] = p.y;
        return {c[0], c[1], c[2]};
    }
    void add_face(const Loop& outline, const std::vector<Loop>& holes, double w, bool up) const {
        for (const CutFigure& piece : remainder(outline, holes)) {
            const std::uint32_t first = count_of(mesh);
            for (const Loop* loop : loops_of(piece.figure)) {
                for (const Point2 p : *loop) mesh.points.push_back(at(p, w));
            }
            for (const auto& [a, b, c] : triangulate(piece.figure)) {
                if (up) {
                    mesh.triangles.push_back({first + a, first + b, first + c});
                } else {
                    mesh.triangles.push_back({first + a, first + c, first + b});
                }
            }
        }
    }
    /// The walls of a hole between two heights, w0 below w1.
    void add_bore(Loop hole, double w0, double w1) const {
        if (doubled_area(hole) > 0) std::reverse(hole.begin(), hole.end());
        for (std::size_t i = 0; i < hole.size(); ++i) {
            const Point2 a = hole[i], b = hole[(i + 1) % hole.size()];
            const std::uint32_t first = count_of(mesh);
            for (const Point& p : {at(a, w0), at(b, w0), at(b, w1), at(a, w1)}) mesh.points.push_back(p);
            add_quad(mesh, first, first + 1, first + 2, first + 3);
        }
    }
};

std::array<double, 3> coordinates(const Point& p) { return {p.x, p.y, p.z}; }

}  // namespace

TriangleMesh block(const Point& lowest, const Point& highest) {
    return pulled(Frame{}, {rectangle(lowest.x, lowest.y, highest.x, highest.y), {}}, lowest.z, highest.z);
}

Loop rectangle(double u0, double v0, double u1, double v1) { return {{u0, v0}, {u1, v0}, {u1, v1}, {u0, v1}}; }

Loop round_loop(Point2 center, double radius, int sides, double turn) {
    const double step = 2 * std::numbers::pi / sides;
    const double corner = radius / std::cos(step / 2);
    Loop loop;
    for (int i = 0; i < sides; ++i) {
        const double angle = turn + (i + 0.5) * step;
        loop.push_back(center + Point2{std::cos(angle), std::sin(angle)} * corner);
    }
    return loop;
}

Loop turned_loop(const Loop& loop, Point2 about, double angle) {
    const double c = std::cos(angle), s = std::sin(angle);
    Loop turned;
    for (const Point2 p : loop) {
        const Point2 d = p - about;
        turned.push_back(about + Point2{c * d.x - s * d.y, s * d.x + c * d.y});
    }
    return turned;
}

std::vector<TriangleMesh> extruded(const Frame& frame, const Loop& outline, const Loops& cuts, double from, double to) {
    std::vector<TriangleMesh> meshes;
    for (const CutFigure& piece : remainder(outline, cuts)) meshes.push_back(pulled(frame, piece.figure, from, to));
    return meshes;
}

Frame frame_along(const Point& from, const Point& to) {
    const Vector n = unit(to - from);
    const Vector u = std::abs(n.z) > 0.9 ? Vector{1, 0, 0} : unit(cross({0, 0, 1}, n));
    const Vector v = unit(cross(n, u));
    return {from, cross(v, n), v, n};
}

TriangleMesh bar(const Point& from, const Point& to, double radius, int sides) {
    return pulled(frame_along(from, to), {round_loop({0, 0}, radius, sides), {}}, 0, length(to - from));
}

TriangleMesh tube(std::span<const Point> way, double inner, double outer, int sides) {
    const Frame frame = frame_along(way[0], way[1]);
    std::vector<Point> ring;
    for (const double radius : {outer, inner}) {
        for (const Point2 p : round_loop({0, 0}, radius, sides)) ring.push_back(frame.at(p.x, p.y, 0));
    }
    const auto n = static_cast<std::uint32_t>(sides);
    TriangleMesh mesh;
    mesh.points = ring;
    for (std::uint32_t i = 0; i < n; ++i) add_quad(mesh, i, n + i, n + (i + 1) % n, (i + 1) % n);
    for (std::size_t k = 1; k < way.size(); ++k) {
        const Vector along = unit(way[k] - way[k - 1]);
        const Vector normal = k + 1 < way.size() ? along + unit(way[k + 1] - way[k]) : along;
        for (Point& p : ring) p = p + along * (dot(way[k] - p, normal) / dot(along, normal));
        const std::uint32_t back = count_of(mesh) - 2 * n, front = count_of(mesh);
        mesh.points.insert(mesh.points.end(), ring.begin(), ring.end());
        for (std::uint32_t i = 0; i < n; ++i) {
            const std::uint32_t j = (i + 1) % n;
            add_quad(mesh, back + i, back + j, front + j, front + i);
            add_quad(mesh, back + n + j, back + n + i, front + n + i, front + n + j);
        }
    }
    const std::uint32_t last = count_of(mesh) - 2 * n;
    for (std::uint32_t i = 0; i < n; ++i) {
        add_quad(mesh, last + i, last + (i + 1) % n, last + n + (i + 1) % n, last + n + i);
    }
    return mesh;
}

TriangleMesh hollow_block(const Box& air, double thickness, const std::array<std::vector<Loop>, 6>& holes) {
    TriangleMesh mesh;
    const std::array<double, 3> low = coordinates(air.lowest), high = coordinates(air.highest);
    for (std::size_t side = 0; side < 6; ++side) {
        const std::size_t a = side / 2, u = (a + 1) % 3, v = (a + 2) % 3;
        const bool is_high = side % 2 == 1;
        const SideBuilder builder{mesh, static_cast<int>(a), is_high};
        const double inner = is_high ? high[a] : low[a], outer = is_high ? high[a] + thickness : low[a] - thickness;
        const double t = thickness;
        builder.add_face(rectangle(low[u] - t, low[v] - t, high[u] + t, high[v] + t), holes[side], outer, is_high);
        builder.add_face(rectangle(low[u], low[v], high[u], high[v]), holes[side], inner, !is_high);
        for (const Loop& hole : holes[side]) builder.add_bore(hole, std::min(inner, outer), std::max(inner, outer));
    }
    return merged_points(mesh);
}

TriangleMesh joined(std::span<const TriangleMesh> meshes) {
    TriangleMesh all;
    for (const TriangleMesh& mesh : meshes) {
        const std::uint32_t first = count_of(all);
        all.points.insert(all.points.end(), mesh.points.begin(), mesh.points.end());
        for (const auto& [a, b, c] : mesh.triangles) all.triangles.push_back({first + a, first + b, first + c});
    }
    return all;
}

TriangleMesh merged_points(const TriangleMesh& mesh) {
    TriangleMesh merged;
    std::map<std::tuple<double, double, double>, std::uint32_t> place;
    for (const auto& triangle : mesh.triangles) {
        std::array<std::uint32_t, 3> now{};
        for (std::size_t i = 0; i < 3; ++i) {
            const Point& p = mesh.points[triangle[i]];
            const auto [found, added] = place.try_emplace({p.x, p.y, p.z}, count_of(merged));
            if (added) merged.points.push_back(p);
            now[i] = found->second;
        }
        merged.triangles.push_back(now);
    }
    return merged;
}

}  // namespace seamward::test
