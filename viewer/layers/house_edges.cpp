// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/house_edges.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkNew.h>
#include <vtkPoints.h>
#include <vtkTypeInt32Array.h>

#include <algorithm>
#include <numeric>

#include "base/vector.h"

namespace seamward::viewer {

namespace {

constexpr double sharp = 0.906;  ///< cosine of 25 degrees

struct Edge {
    std::uint64_t ends;      ///< the lower corner before the higher
    std::uint32_t triangle;  ///< position among the triangles given
};

Vector normal_of(const TriangleMesh& mesh, std::uint32_t triangle) {
    const auto& [a, b, c] = mesh.triangles[triangle];
    const Vector across = cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a]);
    const double doubled = length(across);
    return doubled > 0 ? across * (1 / doubled) : Vector{};
}

std::vector<Edge> sorted_edges(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles) {
    std::vector<Edge> edges;
    edges.reserve(triangles.size() * 3);
    for (std::uint32_t i = 0; i < triangles.size(); ++i) {
        const auto& corners = mesh.triangles[triangles[i]];
        for (std::size_t k = 0; k < 3; ++k) {
            const auto [low, high] = std::minmax({corners.at(k), corners.at((k + 1) % 3)});
            edges.push_back({std::uint64_t{low} << 32U | high, i});
        }
    }
    std::sort(edges.begin(), edges.end(), [](const Edge& a, const Edge& b) {
        return a.ends != b.ends ? a.ends < b.ends : a.triangle < b.triangle;
    });
    return edges;
}

}  // namespace

void EdgeLines::add(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles, const HouseFrame& frame,
                    bool only_over_ground) {
    const std::vector<Edge> edges = sorted_edges(mesh, triangles);
    std::vector<Vector> normals;
    normals.reserve(triangles.size());
    for (const std::uint32_t triangle : triangles) normals.push_back(normal_of(mesh, triangle));
    for (std::size_t i = 0; i < edges.size();) {
        std::size_t end = i + 1;
        while (end < edges.size() && edges[end].ends == edges[i].ends) ++end;
        const bool smooth = end == i + 2 && dot(normals[edges[i].triangle], normals[edges[i + 1].triangle]) > sharp;
        const auto low = static_cast<std::uint32_t>(edges[i].ends >> 32U);
        const auto high = static_cast<std::uint32_t>(edges[i].ends);
        i = end;
        if (smooth) continue;
        const Point from = frame.to_scene(mesh.points[low]);
        const Point to = frame.to_scene(mesh.points[high]);
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
