// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/house_edges.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkNew.h>
#include <vtkPoints.h>
#include <vtkTypeInt32Array.h>

#include <algorithm>
#include <array>
#include <bit>
#include <numeric>

#include "base/vector.h"

namespace seamward::viewer {

namespace {

constexpr double sharp = 0.906;  ///< cosine of 25 degrees

/// An edge and the first two of the triangles that meet there.
struct Edge {
    std::uint64_t ends = 0;  ///< the lower corner before the higher
    std::array<std::uint32_t, 2> sides{};
    std::uint32_t count = 0;
};

Vector normal_of(const TriangleMesh& mesh, std::uint32_t triangle) {
    const auto& [a, b, c] = mesh.triangles[triangle];
    const Vector across = cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a]);
    const double doubled = length(across);
    return doubled > 0 ? across * (1 / doubled) : Vector{};
}

/// In the order in which the triangles bring them. A table of numbers, at least half of it free, finds those that are known.
std::vector<Edge> edges_of(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles) {
    constexpr std::uint32_t none = 0xffffffff;
    std::vector<Edge> edges;
    edges.reserve(triangles.size() * 3 / 2);  // of a closed mesh
    std::vector<std::uint32_t> table(std::bit_ceil(6 * triangles.size() + 1), none);
    const std::size_t mask = table.size() - 1;
    for (const std::uint32_t triangle : triangles) {
        const auto& corners = mesh.triangles[triangle];
        for (std::size_t k = 0; k < 3; ++k) {
            const auto [low, high] = std::minmax({corners.at(k), corners.at((k + 1) % 3)});
            const std::uint64_t ends = std::uint64_t{low} << 32U | high;
            std::size_t at = (ends * 0x9E3779B97F4A7C15U >> 32U) & mask;
            while (table[at] != none && edges[table[at]].ends != ends) at = (at + 1) & mask;
            if (table[at] == none) {
                table[at] = static_cast<std::uint32_t>(edges.size());
                edges.push_back({.ends = ends});
            }
            Edge& edge = edges[table[at]];
            if (edge.count < 2) edge.sides.at(edge.count) = triangle;
            ++edge.count;
        }
    }
    return edges;
}

}  // namespace

void EdgeLines::add(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles, const HouseFrame& frame,
                    bool only_over_ground) {
    for (const Edge& edge : edges_of(mesh, triangles)) {
        if (edge.count == 2 && dot(normal_of(mesh, edge.sides[0]), normal_of(mesh, edge.sides[1])) > sharp) continue;
        const Point from = frame.to_scene(mesh.points[edge.ends >> 32U]);
        const Point to = frame.to_scene(mesh.points[edge.ends & 0xffffffffU]);
        if (only_over_ground && std::min(from.z, to.z) < frame.ground - 0.005) continue;
        for (const double value : {from.x, from.y, from.z, to.x, to.y, to.z}) corners_.push_back(static_cast<float>(value));
    }
}

void EdgeLines::append(const EdgeLines& others) {
    corners_.insert(corners_.end(), others.corners_.begin(), others.corners_.end());
}

vtkSmartPointer<vtkPolyData> EdgeLines::data() const {
    const auto corners = static_cast<vtkIdType>(corners_.size() / 3);
    vtkNew<vtkFloatArray> places;
    places->SetNumberOfComponents(3);
    places->SetNumberOfTuples(corners);
    std::copy(corners_.begin(), corners_.end(), places->GetPointer(0));
    vtkNew<vtkTypeInt32Array> ids;
    ids->SetNumberOfValues(corners);
    std::iota(ids->GetPointer(0), ids->GetPointer(0) + corners, 0);
    vtkNew<vtkCellArray> cells;
    cells->SetData(2, ids);
    vtkNew<vtkPoints> points;
    points->SetData(places);
    auto data = vtkSmartPointer<vtkPolyData>::New();
    data->SetPoints(points);
    data->SetLines(cells);
    return data;
}

}  // namespace seamward::viewer
