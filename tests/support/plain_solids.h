// SPDX-License-Identifier: GPL-3.0-or-later
// Meshes of known shape, and what files do to them.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <random>
#include <utility>

#include "base/solid.h"
#include "base/vector.h"

namespace seamward::test {

using Triangle = std::array<std::uint32_t, 3>;

inline void add_quad(TriangleMesh& mesh, std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    mesh.triangles.push_back({a, b, c});
    mesh.triangles.push_back({a, c, d});
}

inline TriangleMesh box_mesh(const Point& low, const Point& high) {
    TriangleMesh mesh;
    for (int i = 0; i < 8; ++i)
        mesh.points.push_back({(i & 1) != 0 ? high.x : low.x, (i & 2) != 0 ? high.y : low.y, (i & 4) != 0 ? high.z : low.z});
    add_quad(mesh, 0, 2, 3, 1);
    add_quad(mesh, 4, 5, 7, 6);
    add_quad(mesh, 0, 1, 5, 4);
    add_quad(mesh, 2, 6, 7, 3);
    add_quad(mesh, 0, 4, 6, 2);
    add_quad(mesh, 1, 3, 7, 5);
    return mesh;
}

/// An upright prism over a regular polygon, its ends fans about their first corner.
inline TriangleMesh prism_mesh(std::uint32_t sides, double radius, double low, double high) {
    TriangleMesh mesh;
    for (std::uint32_t i = 0; i < sides; ++i) {
        const double angle = 2 * std::numbers::pi * i / sides;
        mesh.points.push_back({radius * std::cos(angle), radius * std::sin(angle), low});
        mesh.points.push_back({radius * std::cos(angle), radius * std::sin(angle), high});
    }
    for (std::uint32_t i = 0; i < sides; ++i) {
        const std::uint32_t next = (i + 1) % sides;
        add_quad(mesh, 2 * i, 2 * next, 2 * next + 1, 2 * i + 1);
        if (i == 0 || next == 0) continue;
        mesh.triangles.push_back({0, 2 * next, 2 * i});
        mesh.triangles.push_back({1, 2 * i + 1, 2 * next + 1});
    }
    return mesh;
}

/// A ring around the z axis, with `around` times `across` quads.
inline TriangleMesh ring_mesh(std::uint32_t around, std::uint32_t across, double radius, double thick) {
    TriangleMesh mesh;
    for (std::uint32_t i = 0; i < around; ++i) {
        for (std::uint32_t k = 0; k < across; ++k) {
            const double u = 2 * std::numbers::pi * i / around, v = 2 * std::numbers::pi * k / across;
            const double out = radius + thick * std::cos(v);
            mesh.points.push_back({out * std::cos(u), out * std::sin(u), thick * std::sin(v)});
        }
    }
    for (std::uint32_t i = 0; i < around; ++i) {
        for (std::uint32_t k = 0; k < across; ++k) {
            const std::uint32_t i2 = (i + 1) % around, k2 = (k + 1) % across;
            add_quad(mesh, i * across + k, i2 * across + k, i2 * across + k2, i * across + k2);
        }
    }
    return mesh;
}

/// Each triangle cut into four, edges in their middles.
inline TriangleMesh cut_in_four(const TriangleMesh& mesh) {
    TriangleMesh out{mesh.points, {}};
    std::map<std::pair<std::uint32_t, std::uint32_t>, std::uint32_t> middles;
    const auto middle = [&](std::uint32_t a, std::uint32_t b) {
        const auto [at, fresh] =
            middles.try_emplace({std::min(a, b), std::max(a, b)}, static_cast<std::uint32_t>(out.points.size()));
        if (fresh) out.points.push_back(mesh.points[a] + (mesh.points[b] - mesh.points[a]) * 0.5);
        return at->second;
    };
    for (const auto& [a, b, c] : mesh.triangles) {
        const std::uint32_t ab = middle(a, b), bc = middle(b, c), ca = middle(c, a);
        for (const Triangle& t : {Triangle{a, ab, ca}, {ab, b, bc}, {ca, bc, c}, {ab, bc, ca}}) out.triangles.push_back(t);
    }
    return out;
}

inline TriangleMesh cut_in_four(TriangleMesh mesh, int times) {
    for (int i = 0; i < times; ++i) mesh = cut_in_four(mesh);
    return mesh;
}

inline void add_mesh(TriangleMesh& to, const TriangleMesh& mesh) {
    const auto base = static_cast<std::uint32_t>(to.points.size());
    to.points.insert(to.points.end(), mesh.points.begin(), mesh.points.end());
    for (const auto& [a, b, c] : mesh.triangles) to.triangles.push_back({base + a, base + b, base + c});
}

inline TriangleMesh turned_over(TriangleMesh mesh) {
    for (Triangle& t : mesh.triangles) std::swap(t[1], t[2]);
    return mesh;
}

/// Every triangle with corners of its own, as STL files have them.
inline TriangleMesh as_soup(const TriangleMesh& mesh) {
    TriangleMesh soup;
    for (const Triangle& t : mesh.triangles) {
        const auto base = static_cast<std::uint32_t>(soup.points.size());
        for (const std::uint32_t corner : t) soup.points.push_back(mesh.points[corner]);
        soup.triangles.push_back({base, base + 1, base + 2});
    }
    return soup;
}

/// A turn about a random axis and a shift.
struct Placement {
    Vector x{1, 0, 0}, y{0, 1, 0}, z{0, 0, 1}, shift;

    Placement() = default;
    Placement(std::mt19937& random, double farthest) {
        std::normal_distribution<double> any;
        double a = any(random), b = any(random), c = any(random), d = any(random);
        const double size = std::sqrt(a * a + b * b + c * c + d * d);
        a /= size, b /= size, c /= size, d /= size;
        x = {a * a + b * b - c * c - d * d, 2 * (b * c + a * d), 2 * (b * d - a * c)};
        y = {2 * (b * c - a * d), a * a - b * b + c * c - d * d, 2 * (c * d + a * b)};
        z = {2 * (b * d + a * c), 2 * (c * d - a * b), a * a - b * b - c * c + d * d};
        std::uniform_real_distribution<double> along(-farthest, farthest);
        shift = {along(random), along(random), along(random)};
    }

    [[nodiscard]] Point of(const Point& p) const { return Point{} + (x * p.x + y * p.y + z * p.z + shift); }
    [[nodiscard]] TriangleMesh of(TriangleMesh mesh) const {
        for (Point& p : mesh.points) p = of(p);
        return mesh;
    }
};

inline TriangleMesh with_noise(TriangleMesh mesh, std::mt19937& random, double most) {
    std::uniform_real_distribution<double> off(-most, most);
    for (Point& p : mesh.points) p = {p.x + off(random), p.y + off(random), p.z + off(random)};
    return mesh;
}

inline TriangleMesh rounded_to_float(TriangleMesh mesh) {
    const auto rounded = [](double c) { return static_cast<double>(static_cast<float>(c)); };
    for (Point& p : mesh.points) p = {rounded(p.x), rounded(p.y), rounded(p.z)};
    return mesh;
}

inline double area_of(const TriangleMesh& mesh) {
    double area = 0;
    for (const auto& [a, b, c] : mesh.triangles)
        area += length(cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a])) / 2;
    return area;
}

inline double volume_of(const TriangleMesh& mesh) {
    double volume = 0;
    for (const auto& [a, b, c] : mesh.triangles) {
        const Point& o = mesh.points[mesh.triangles[0][0]];
        volume += dot(mesh.points[a] - o, cross(mesh.points[b] - o, mesh.points[c] - o)) / 6;
    }
    return volume;
}

}  // namespace seamward::test
