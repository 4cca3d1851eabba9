// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/house_edges.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkIdTypeArray.h>
#include <vtkNew.h>
#include <vtkPoints.h>

#include <algorithm>
#include <cmath>

#include "base/vector.h"

namespace seamward::viewer {

namespace {

constexpr double sharp = 0.906;  ///< cosine of 25 degrees

struct Edge {
    std::uint32_t low, high, triangle;
};

Vector normal_of(const TriangleMesh& mesh, std::uint32_t triangle) {
    const auto& [a, b, c] = mesh.triangles[triangle];
    const Vector across = cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a]);
    const double doubled = length(across);
    return doubled > 0 ? across * (1 / doubled) : Vector{};
}

}  // namespace

void EdgeLines::add(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles, const HouseFrame& frame,
                    bool only_over_ground) {
    std::vector<Edge> edges;
    edges.reserve(triangles.size() * 3);
    for (const std::uint32_t i : triangles) {
        const auto& corners = mesh.triangles[i];
        for (std::size_t k = 0; k < 3; ++k) {
            const auto [low, high] = std::minmax(corners.at(k), corners.at((k + 1) % 3));
            edges.push_back({low, high, i});
        }
    }
    std::ranges::sort(edges, {}, [](const Edge& e) { return std::array{e.low, e.high, e.triangle}; });
    for (std::size_t i = 0; i < edges.size();) {
        std::size_t end = i + 1;
        while (end < edges.size() && edges[end].low == edges[i].low && edges[end].high == edges[i].high) ++end;
        const bool smooth = end == i + 2 && dot(normal_of(mesh, edges[i].triangle), normal_of(mesh, edges[i + 1].triangle)) > sharp;
        const double lower = std::min(frame.to_scene(mesh.points[edges[i].low]).z, frame.to_scene(mesh.points[edges[i].high]).z);
        if (!smooth && !(only_over_ground && lower < frame.ground - 0.005)) {
            for (const std::uint32_t corner : {edges[i].low, edges[i].high}) {
                const Point at = frame.to_scene(mesh.points[corner]);
                for (const double value : {at.x, at.y, at.z}) corners_.push_back(static_cast<float>(value));
            }
        }
        i = end;
    }
}

vtkSmartPointer<vtkPolyData> EdgeLines::data() const {
    const auto corners = static_cast<vtkIdType>(corners_.size() / 3);
    vtkNew<vtkFloatArray> places;
    places->SetNumberOfComponents(3);
    places->SetNumberOfTuples(corners);
    std::copy(corners_.begin(), corners_.end(), places->GetPointer(0));
    vtkNew<vtkIdTypeArray> ids;
    ids->SetNumberOfValues(corners);
    for (vtkIdType i = 0; i < corners; ++i) ids->SetValue(i, i);
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
