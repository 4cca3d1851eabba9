// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/inside.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

namespace seamward {

namespace {

constexpr std::size_t always_exact = 64;  ///< triangles
constexpr std::uint32_t leaf_size = 8;
/// A group counts as far from this many times its own size on; dense meshes err by up to 0.008, and by 0.013 from 1.8 on.
constexpr double far_by = 2;

/// The solid angle of a triangle seen from a point, halved (van Oosterom and Strackee 1983).
double half_solid_angle(const std::array<Point, 3>& triangle, const Point& at) {
    const Vector a = triangle[0] - at, b = triangle[1] - at, c = triangle[2] - at;
    const double la = length(a), lb = length(b), lc = length(c);
    const double over = dot(a, cross(b, c));
    const double under = la * lb * lc + dot(a, b) * lc + dot(b, c) * la + dot(c, a) * lb;
    return over == 0 && under >= 0 ? 0 : std::atan2(over, under);
}

}  // namespace

Inside::Inside(const TriangleMesh& mesh) {
    std::vector<std::array<Point, 3>> given;
    std::vector<AxisBox> boxes;
    given.reserve(mesh.triangles.size());
    for (const auto& [a, b, c] : mesh.triangles) given.push_back({mesh.points[a], mesh.points[b], mesh.points[c]});
    if (given.size() <= always_exact) {
        triangles_ = std::move(given);
        return;
    }
    boxes.reserve(given.size());
    for (const auto& [a, b, c] : given) {
        boxes.push_back({{std::min({a.x, b.x, c.x}), std::min({a.y, b.y, c.y}), std::min({a.z, b.z, c.z})},
                         {std::max({a.x, b.x, c.x}), std::max({a.y, b.y, c.y}), std::max({a.z, b.z, c.z})}});
    }
    tree_ = BoxTree(boxes, leaf_size);
    triangles_.reserve(given.size());
    for (const std::uint32_t i : tree_.order()) triangles_.push_back(given[i]);
    groups_.reserve(tree_.nodes().size());
    for (const BoxTree::Node& node : tree_.nodes()) groups_.push_back(group_of(node.first, node.last));
}

namespace {

Point middle_of(const std::array<Point, 3>& t) { return t[0] + ((t[1] - t[0]) + (t[2] - t[0])) * (1.0 / 3); }

Vector facing_of(const std::array<Point, 3>& t) { return cross(t[1] - t[0], t[2] - t[0]) * 0.5; }

}  // namespace

Inside::Group Inside::group_of(std::size_t begin, std::size_t end) const {
    Group group;
    Vector sum;
    double area = 0;
    const std::span group_triangles = std::span(triangles_).subspan(begin, end - begin);
    const Point origin = group_triangles.front()[0];
    for (const auto& t : group_triangles) {
        const double own = length(facing_of(t));
        sum = sum + (middle_of(t) - origin) * own;
        area += own;
    }
    group.middle = area > 0 ? origin + sum * (1 / area) : origin;
    double reach = 0;
    for (const auto& t : group_triangles) {
        add_moments(t, group);
        for (const Point& corner : t) reach = std::max(reach, dot(corner - group.middle, corner - group.middle));
    }
    group.reach = far_by * std::sqrt(reach);
    return group;
}

void Inside::add_moments(const std::array<Point, 3>& triangle, Group& group) {
    const Vector n = facing_of(triangle), off = middle_of(triangle) - group.middle;
    group.facing = group.facing + n;
    group.first[0] += n.x * off.x;
    group.first[1] += n.y * off.y;
    group.first[2] += n.z * off.z;
    group.first[3] += n.x * off.y + n.y * off.x;
    group.first[4] += n.y * off.z + n.z * off.y;
    group.first[5] += n.z * off.x + n.x * off.z;
    // The means of products of two coordinates over the triangle.
    double xx = 0, yy = 0, zz = 0, xy = 0, yz = 0, zx = 0;
    const auto add = [&](Vector d, double weight) {
        xx += weight * d.x * d.x;
        yy += weight * d.y * d.y;
        zz += weight * d.z * d.z;
        xy += weight * d.x * d.y;
        yz += weight * d.y * d.z;
        zx += weight * d.z * d.x;
    };
    for (const Point& corner : triangle) add(corner - group.middle, 1.0 / 12);
    add(off, 9.0 / 12);
    group.second[0] += n.x * xx;
    group.second[1] += n.y * yy;
    group.second[2] += n.z * zz;
    group.second[3] += 2 * n.x * xy + n.y * xx;
    group.second[4] += 2 * n.x * zx + n.z * xx;
    group.second[5] += 2 * n.y * xy + n.x * yy;
    group.second[6] += 2 * n.y * yz + n.z * yy;
    group.second[7] += 2 * n.z * zx + n.x * zz;
    group.second[8] += 2 * n.z * yz + n.y * zz;
    group.second[9] += 2 * (n.x * yz + n.y * zx + n.z * xy);
    const double trace = xx + yy + zz;
    group.second_trace = group.second_trace + Vector{2 * (n.x * xx + n.y * xy + n.z * zx) + n.x * trace,
                                                     2 * (n.x * xy + n.y * yy + n.z * yz) + n.y * trace,
                                                     2 * (n.x * zx + n.y * yz + n.z * zz) + n.z * trace};
}

/// The solid angle of a group: its normals' field n.q / |q|^3 expanded about the middle, q from the point asked about.
double Inside::solid_angle(const Group& group, Vector q, double square) {
    const auto& [xx, yy, zz, xy, yz, zx] = group.first;
    const auto& [xxx, yyy, zzz, xxy, xxz, yyx, yyz, zzx, zzy, xyz] = group.second;
    const double inverse = 1 / square, cube = inverse / std::sqrt(square);
    const double x2 = q.x * q.x, y2 = q.y * q.y, z2 = q.z * q.z;
    const double first = xx * x2 + yy * y2 + zz * z2 + xy * q.x * q.y + yz * q.y * q.z + zx * q.z * q.x;
    const double second = q.x * (xxx * x2 + yyx * y2 + zzx * z2) + q.y * (yyy * y2 + xxy * x2 + zzy * z2) +
                          q.z * (zzz * z2 + xxz * x2 + yyz * y2 + xyz * q.x * q.y);
    return cube * (dot(group.facing, q) + xx + yy + zz - 3 * inverse * first - 1.5 * inverse * dot(group.second_trace, q) +
                   7.5 * inverse * inverse * second);
}

double Inside::winding(const Point& at) const {
    double sum = 0;  // of solid angles, halved
    if (groups_.empty())
        for (const auto& triangle : triangles_) sum += half_solid_angle(triangle, at);
    const std::vector<BoxTree::Node>& nodes = tree_.nodes();
    for (std::size_t i = 0; i < nodes.size();) {
        const Vector to = groups_[i].middle - at;
        const double square = dot(to, to);
        if (square > groups_[i].reach * groups_[i].reach) {
            sum += solid_angle(groups_[i], to, square) / 2;
            i = nodes[i].beyond;
            continue;
        }
        if (nodes[i].leaf)
            for (std::size_t k = nodes[i].first; k < nodes[i].last; ++k) sum += half_solid_angle(triangles_[k], at);
        ++i;
    }
    return sum / (2 * std::numbers::pi);
}

}  // namespace seamward
