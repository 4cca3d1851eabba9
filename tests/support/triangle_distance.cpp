// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "base/vector.h"
#include "tests/support/voxel_rooms.h"

namespace seamward::test {
namespace {

double squared(Vector v) { return dot(v, v); }

double squared_to_segment(const Point& p, const Point& a, const Point& b) {
    const Vector along = b - a;
    const double whole = dot(along, along);
    const double share = whole > 0 ? std::clamp(dot(p - a, along) / whole, 0.0, 1.0) : 0;
    return squared(p - (a + along * share));
}

/// The foot of the perpendicular when it lies in the triangle, else the nearest of the edges.
double squared_to_triangle(const Point& p, const Point& a, const Point& b, const Point& c) {
    const Vector normal = cross(b - a, c - a);
    const double area = dot(normal, normal);
    if (area > 0) {
        const bool within = dot(cross(b - a, p - a), normal) >= 0 && dot(cross(c - b, p - b), normal) >= 0 &&
                            dot(cross(a - c, p - c), normal) >= 0;
        if (within) {
            const double out = dot(p - a, normal);
            return out * out / area;
        }
    }
    return std::min({squared_to_segment(p, a, b), squared_to_segment(p, b, c), squared_to_segment(p, c, a)});
}

double squared_to_box(const Point& p, const Box& box) {
    const double x = std::max({box.lowest.x - p.x, 0.0, p.x - box.highest.x});
    const double y = std::max({box.lowest.y - p.y, 0.0, p.y - box.highest.y});
    const double z = std::max({box.lowest.z - p.z, 0.0, p.z - box.highest.z});
    return x * x + y * y + z * z;
}

void include(Box& box, const Point& p) {
    box.lowest = {std::min(box.lowest.x, p.x), std::min(box.lowest.y, p.y), std::min(box.lowest.z, p.z)};
    box.highest = {std::max(box.highest.x, p.x), std::max(box.highest.y, p.y), std::max(box.highest.z, p.z)};
}

constexpr std::uint32_t leaf_size = 4;

}  // namespace

TriangleDistance::TriangleDistance(std::span<const ModelPart> parts) {
    for (const ModelPart& part : parts) {
        for (const auto& [a, b, c] : part.mesh.triangles) {
            triangles_.push_back({part.mesh.points[a], part.mesh.points[b], part.mesh.points[c]});
        }
    }
    if (!triangles_.empty()) divide(0, static_cast<std::uint32_t>(triangles_.size()));
}

void TriangleDistance::divide(std::uint32_t first, std::uint32_t count) {
    const std::size_t own = nodes_.size();
    nodes_.push_back({{triangles_[first].a, triangles_[first].a}, first, count, 0});
    for (std::uint32_t i = first; i < first + count; ++i) {
        for (const Point& p : {triangles_[i].a, triangles_[i].b, triangles_[i].c}) include(nodes_[own].box, p);
    }
    if (count <= leaf_size) return;
    const Vector size = nodes_[own].box.highest - nodes_[own].box.lowest;
    const auto middle = [&](const Corners& t) {
        if (size.x >= size.y && size.x >= size.z) return t.a.x + t.b.x + t.c.x;
        return size.y >= size.z ? t.a.y + t.b.y + t.c.y : t.a.z + t.b.z + t.c.z;
    };
    const auto begin = triangles_.begin() + first;
    std::nth_element(begin, begin + count / 2, begin + count,
                     [&](const Corners& one, const Corners& other) { return middle(one) < middle(other); });
    nodes_[own].count = 0;
    divide(first, count / 2);
    nodes_[own].right = static_cast<std::uint32_t>(nodes_.size());
    divide(first + count / 2, count - count / 2);
}

double TriangleDistance::to(const Point& point, double at_most) const {
    double best = at_most * at_most;
    std::array<std::uint32_t, 64> open{};
    std::size_t depth = nodes_.empty() ? 0 : 1;
    while (depth > 0) {
        const std::uint32_t at = open[--depth];
        const Node& node = nodes_[at];
        if (squared_to_box(point, node.box) >= best) continue;
        for (std::uint32_t i = node.first; i < node.first + node.count; ++i) {
            best = std::min(best, squared_to_triangle(point, triangles_[i].a, triangles_[i].b, triangles_[i].c));
        }
        if (node.count > 0) continue;
        const bool left_first = squared_to_box(point, nodes_[at + 1].box) < squared_to_box(point, nodes_[node.right].box);
        open[depth++] = left_first ? node.right : at + 1;
        open[depth++] = left_first ? at + 1 : node.right;
    }
    return std::sqrt(best);
}

bool is_in_solid(const TriangleMesh& mesh, const Point& point) {
    // A direction that meets no edge of what people build.
    const Vector ray{0.5377, 0.6191, 0.5723};
    bool inside = false;
    for (const auto& triangle : mesh.triangles) {
        const Vector a = mesh.points[triangle[0]] - point, b = mesh.points[triangle[1]] - point,
                     c = mesh.points[triangle[2]] - point;
        const double ab = dot(ray, cross(a, b)), bc = dot(ray, cross(b, c)), ca = dot(ray, cross(c, a));
        const bool hit = (ab > 0 && bc > 0 && ca > 0) || (ab < 0 && bc < 0 && ca < 0);
        // The crossing is at (bc a + ca b + ab c) / (ab + bc + ca).
        if (hit && dot(a * bc + b * ca + c * ab, ray) * (ab + bc + ca) > 0) inside = !inside;
    }
    return inside;
}

}  // namespace seamward::test
