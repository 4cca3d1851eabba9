// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/solid_check.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/orientation.h>
#include <CGAL/Polygon_mesh_processing/polygon_soup_to_polygon_mesh.h>
#include <CGAL/Polygon_mesh_processing/repair_polygon_soup.h>
#include <CGAL/Polygon_mesh_processing/self_intersections.h>
#include <CGAL/Surface_mesh.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <map>
#include <numeric>
#include <utility>

namespace seamward::test {

namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Corners = std::array<std::uint32_t, 3>;
using Edge = std::pair<std::uint32_t, std::uint32_t>;

std::array<Edge, 3> edges_of(const Corners& corners) {
    return {{{corners[0], corners[1]}, {corners[1], corners[2]}, {corners[2], corners[0]}}};
}

bool all_edges_met(const TriangleMesh& mesh) {
    std::map<Edge, int> count;
    for (const Corners& corners : mesh.triangles) {
        for (const Edge& edge : edges_of(corners)) ++count[edge];
    }
    return std::all_of(count.begin(), count.end(), [&](const auto& entry) {
        const auto& [edge, times] = entry;
        const auto back = count.find({edge.second, edge.first});
        return edge.first != edge.second && times == 1 && back != count.end() && back->second == 1;
    });
}

/// For each triangle the number of its shell, counted in the order of first triangles.
std::vector<std::size_t> shells_of(const TriangleMesh& mesh, std::size_t& count) {
    std::vector<std::size_t> above(mesh.triangles.size());
    std::iota(above.begin(), above.end(), std::size_t{0});
    const auto top = [&](std::size_t i) {
        while (above[i] != i) i = above[i] = above[above[i]];
        return i;
    };
    std::map<Edge, std::size_t> first;
    for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
        for (const auto& [a, b] : edges_of(mesh.triangles[i])) {
            const std::size_t other = top(first.try_emplace(std::minmax(a, b), i).first->second);
            const std::size_t own = top(i);
            above[std::max(own, other)] = std::min(own, other);
        }
    }
    std::vector<std::size_t> shell(mesh.triangles.size());
    count = 0;
    for (std::size_t i = 0; i < shell.size(); ++i) shell[i] = top(i) == i ? count++ : shell[top(i)];
    return shell;
}

void judge_surface(std::vector<Kernel::Point_3> points, const TriangleMesh& mesh, SolidFacts& facts) {
    namespace processing = CGAL::Polygon_mesh_processing;
    std::vector<std::array<std::size_t, 3>> soup;
    for (const auto& [a, b, c] : mesh.triangles) soup.push_back({a, b, c});
    if (!processing::is_polygon_soup_a_polygon_mesh(soup)) return;
    processing::remove_isolated_points_in_polygon_soup(points, soup);  // does_bound_a_volume() does not bear them
    CGAL::Surface_mesh<Kernel::Point_3> surface;
    processing::polygon_soup_to_polygon_mesh(points, soup, surface);
    facts.self_intersects = processing::does_self_intersect(surface);
    facts.bounds_a_volume = facts.closed && !*facts.self_intersects && processing::does_bound_a_volume(surface);
}

}  // namespace

void Bounds::include(const Point& point) {
    lowest = {std::min(lowest.x, point.x), std::min(lowest.y, point.y), std::min(lowest.z, point.z)};
    highest = {std::max(highest.x, point.x), std::max(highest.y, point.y), std::max(highest.z, point.z)};
}

SolidFacts facts_of(const TriangleMesh& mesh) {
    SolidFacts facts;
    for (const Corners& corners : mesh.triangles) {
        if (*std::max_element(corners.begin(), corners.end()) >= mesh.points.size()) return facts;
    }
    std::vector<Kernel::Point_3> points;
    for (const Point& point : mesh.points) points.emplace_back(point.x, point.y, point.z);
    std::size_t shell_count = 0;
    const std::vector<std::size_t> shell = shells_of(mesh, shell_count);
    facts.shell_volumes.assign(shell_count, 0);
    for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
        const auto [a, b, c] = mesh.triangles[i];
        for (const std::uint32_t corner : mesh.triangles[i]) facts.bounds.include(mesh.points[corner]);
        if (CGAL::collinear(points[a], points[b], points[c])) ++facts.flat;
        facts.area += std::sqrt(CGAL::squared_area(points[a], points[b], points[c]));
        facts.shell_volumes[shell[i]] += CGAL::volume(points.front(), points[a], points[b], points[c]);
    }
    facts.volume = std::accumulate(facts.shell_volumes.begin(), facts.shell_volumes.end(), 0.0);
    facts.closed = !mesh.triangles.empty() && all_edges_met(mesh);
    judge_surface(points, mesh, facts);
    return facts;
}

std::string fault_of_solid(const TriangleMesh& mesh, bool hollows) {
    const SolidFacts facts = facts_of(mesh);
    if (!facts.closed) return "it is not closed";
    if (facts.flat > 0) return std::to_string(facts.flat) + " of its triangles have no area";
    if (!facts.self_intersects) return "too many triangles share an edge or a point";
    if (*facts.self_intersects) return "it intersects itself";
    if (facts.volume <= 0) return "it is inside out";
    if (!facts.bounds_a_volume) return "its shells lie in one another without being hollows";
    const auto inward = [](double volume) { return volume <= 0; };
    if (!hollows && std::any_of(facts.shell_volumes.begin(), facts.shell_volumes.end(), inward))
        return "one of its shells is inside out";
    return "";
}

}  // namespace seamward::test
