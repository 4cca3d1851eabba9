// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/house_space.h"

#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/AABB_triangle_primitive.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/polygon_soup_to_polygon_mesh.h>
#include <CGAL/Side_of_triangle_mesh.h>
#include <CGAL/Surface_mesh.h>

#include <algorithm>
#include <array>
#include <boost/variant/apply_visitor.hpp>
#include <map>
#include <type_traits>

#include "tests/support/solid_check.h"

namespace seamward::test {

namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Triangles = std::vector<Kernel::Triangle_3>;
using Primitive = CGAL::AABB_triangle_primitive<Kernel, Triangles::const_iterator>;
using Tree = CGAL::AABB_tree<CGAL::AABB_traits<Kernel, Primitive>>;
using Surface = CGAL::Surface_mesh<Kernel::Point_3>;

Kernel::Point_3 theirs(const Point& p) { return {p.x, p.y, p.z}; }
Point ours(const Kernel::Point_3& p) { return {p.x(), p.y(), p.z()}; }

}  // namespace

struct HouseSpace::Impl {
    struct Body {
        std::size_t part = 0;
        Bounds bounds;
        Surface surface;
        std::unique_ptr<CGAL::Side_of_triangle_mesh<Surface, Kernel>> side;
    };
    Triangles triangles;
    std::vector<std::size_t> part_of;
    Tree tree;
    std::vector<std::unique_ptr<Body>> bodies;

    void add_triangles(std::span<const Part> parts) {
        for (std::size_t part = 0; part < parts.size(); ++part) {
            const TriangleMesh& mesh = parts[part].mesh;
            for (const auto& [a, b, c] : mesh.triangles) {
                const Kernel::Triangle_3 triangle(theirs(mesh.points[a]), theirs(mesh.points[b]), theirs(mesh.points[c]));
                if (triangle.is_degenerate()) continue;
                triangles.push_back(triangle);
                part_of.push_back(part);
            }
        }
        tree.insert(triangles.cbegin(), triangles.cend());
        tree.build();
    }

    void add_body(std::size_t number, const TriangleMesh& mesh) {
        namespace processing = CGAL::Polygon_mesh_processing;
        std::vector<std::array<std::size_t, 3>> soup;
        for (const auto& [a, b, c] : mesh.triangles) soup.push_back({a, b, c});
        if (!processing::is_polygon_soup_a_polygon_mesh(soup)) return;
        std::vector<Kernel::Point_3> points;
        auto body = std::make_unique<Body>();
        body->part = number;
        for (const Point& p : mesh.points) {
            points.push_back(theirs(p));
            body->bounds.include(p);
        }
        processing::polygon_soup_to_polygon_mesh(points, soup, body->surface);
        if (!CGAL::is_closed(body->surface)) return;
        body->side = std::make_unique<CGAL::Side_of_triangle_mesh<Surface, Kernel>>(body->surface);
        bodies.push_back(std::move(body));
    }

    [[nodiscard]] std::size_t part(Triangles::const_iterator triangle) const {
        return part_of[static_cast<std::size_t>(triangle - triangles.cbegin())];
    }
};

HouseSpace::HouseSpace(std::span<const Part> parts) : impl_(std::make_unique<Impl>()) {
    impl_->add_triangles(parts);
    for (std::size_t i = 0; i < parts.size(); ++i) impl_->add_body(i, parts[i].mesh);
}

HouseSpace::~HouseSpace() = default;

std::vector<HouseSpace::Hit> HouseSpace::met_by(const Point& from, const Point& to) const {
    const Kernel::Point_3 begin = theirs(from);
    std::map<std::size_t, Hit> first;
    const auto meet = [&](std::size_t part, const Kernel::Point_3& at) {
        const auto [entry, fresh] = first.try_emplace(part, Hit{part, ours(at)});
        if (!fresh && CGAL::has_smaller_distance_to_point(begin, at, theirs(entry->second.at))) entry->second.at = ours(at);
    };
    if (from.x == to.x && from.y == to.y && from.z == to.z) return {};
    const Kernel::Segment_3 line(begin, theirs(to));
    std::vector<Triangles::const_iterator> met;
    impl_->tree.all_intersected_primitives(line, std::back_inserter(met));
    for (const Triangles::const_iterator triangle : met) {
        const auto where = CGAL::intersection(line, *triangle);
        if (!where) {
            meet(impl_->part(triangle), begin);  // rounding hides the place
            continue;
        }
        boost::apply_visitor(
            [&](const auto& place) {
                if constexpr (std::is_same_v<std::decay_t<decltype(place)>, Kernel::Point_3>)
                    meet(impl_->part(triangle), place);
                else
                    meet(impl_->part(triangle), place.source());
            },
            *where);
    }
    std::vector<Hit> hits;
    for (const auto& [part, hit] : first) hits.push_back(hit);
    std::stable_sort(hits.begin(), hits.end(),
                     [&](const Hit& a, const Hit& b) { return distance(from, a.at) < distance(from, b.at); });
    return hits;
}

std::vector<std::size_t> HouseSpace::around(const Point& point) const {
    std::vector<std::size_t> parts;
    for (const auto& body : impl_->bodies) {
        const auto& [low, high] = body->bounds;
        if (point.x < low.x || point.y < low.y || point.z < low.z || point.x > high.x || point.y > high.y || point.z > high.z)
            continue;
        if ((*body->side)(theirs(point)) != CGAL::ON_UNBOUNDED_SIDE) parts.push_back(body->part);
    }
    return parts;
}

}  // namespace seamward::test
