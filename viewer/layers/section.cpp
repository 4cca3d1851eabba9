// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/section.h"

#include <vtkCellArray.h>
#include <vtkCellData.h>
#include <vtkClipClosedSurface.h>
#include <vtkDataArray.h>
#include <vtkIdList.h>
#include <vtkNew.h>
#include <vtkPlane.h>
#include <vtkPlaneCollection.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkSmartPointer.h>

#include <algorithm>
#include <array>
#include <map>

namespace seamward::viewer {

namespace {

constexpr int of_the_cut = 1;  ///< vtkClipClosedSurface's label for the faces that it adds

vtkSmartPointer<vtkPolyData> data_of(const TriangleMesh& mesh) {
    vtkNew<vtkPoints> points;
    points->SetDataTypeToDouble();
    for (const Point& at : mesh.points) points->InsertNextPoint(at.x, at.y, at.z);
    vtkNew<vtkCellArray> cells;
    for (const auto& [a, b, c] : mesh.triangles) {
        const std::array<vtkIdType, 3> corners{a, b, c};
        cells->InsertNextCell(3, corners.data());
    }
    auto data = vtkSmartPointer<vtkPolyData>::New();
    data->SetPoints(points);
    data->SetPolys(cells);
    return data;
}

/// The triangles that close a mesh after the cut.
TriangleMesh closing_faces(const TriangleMesh& mesh, const CutPlane& plane) {
    vtkNew<vtkPlane> cut;  // its normal points to what stays
    cut->SetOrigin(plane.at.x, plane.at.y, plane.at.z);
    cut->SetNormal(-plane.normal.x, -plane.normal.y, -plane.normal.z);
    vtkNew<vtkPlaneCollection> planes;
    planes->AddItem(cut);
    vtkNew<vtkClipClosedSurface> filter;
    filter->SetInputData(data_of(mesh));
    filter->SetClippingPlanes(planes);
    filter->SetScalarModeToLabels();
    filter->TriangulationErrorDisplayOff();
    filter->Update();
    vtkPolyData* all = filter->GetOutput();
    vtkDataArray* labels = all->GetCellData()->GetScalars();
    TriangleMesh faces;
    if (labels == nullptr) return faces;
    std::map<vtkIdType, std::uint32_t> position;
    const auto corner = [&](vtkIdType id) {
        const auto [entry, is_new] = position.try_emplace(id, static_cast<std::uint32_t>(faces.points.size()));
        if (is_new) {
            std::array<double, 3> at{};
            all->GetPoint(id, at.data());
            faces.points.push_back({at[0], at[1], at[2]});
        }
        return entry->second;
    };
    vtkNew<vtkIdList> ids;
    for (vtkIdType cell = 0; cell < all->GetNumberOfCells(); ++cell) {
        if (labels->GetComponent(cell, 0) != of_the_cut) continue;
        all->GetCellPoints(cell, ids);
        for (vtkIdType i = 2; i < ids->GetNumberOfIds(); ++i) {
            std::array<std::uint32_t, 3> triangle{corner(ids->GetId(0)), corner(ids->GetId(i - 1)), corner(ids->GetId(i))};
            const std::vector<Point>& p = faces.points;
            const Vector across = cross(p[triangle[1]] - p[triangle[0]], p[triangle[2]] - p[triangle[0]]);
            if (dot(across, plane.normal) < 0) std::swap(triangle[1], triangle[2]);
            faces.triangles.push_back(triangle);
        }
    }
    return faces;
}

/// The edges that only one triangle has.
std::vector<std::pair<Point, Point>> border_of(const TriangleMesh& mesh) {
    std::map<std::pair<std::uint32_t, std::uint32_t>, int> uses;
    for (const auto& triangle : mesh.triangles) {
        for (std::size_t i = 0; i < 3; ++i) ++uses[std::minmax(triangle.at(i), triangle.at((i + 1) % 3))];
    }
    std::vector<std::pair<Point, Point>> border;
    for (const auto& [edge, count] : uses) {
        if (count == 1) border.emplace_back(mesh.points[edge.first], mesh.points[edge.second]);
    }
    return border;
}

/// Takes away what of a mesh lies over the plane, and leaves it open there.
class Cutter {
public:
    Cutter(const Part& part, const CutPlane& plane) : part_(part), left_(part) {
        left_.mesh = {};
        left_.bounds.clear();
        over_.reserve(part.mesh.points.size());
        for (const Point& at : part.mesh.points) over_.push_back(plane.over(at));
        position_.assign(over_.size(), none);
    }

    /// What is left; `gap_edges` as in CutFace.
    [[nodiscard]] Part cut(std::vector<CutFace::GapEdge>& gap_edges) {
        for (std::size_t i = 0; i < part_.mesh.triangles.size(); ++i) {
            const GapIndex gap = i < part_.bounds.size() ? part_.bounds[i] : GapIndex{};
            std::vector<std::uint32_t> corners;
            std::vector<Point> ends;
            for (std::size_t k = 0; k < 3; ++k) {
                const std::uint32_t from = part_.mesh.triangles[i].at(k);
                const std::uint32_t to = part_.mesh.triangles[i].at((k + 1) % 3);
                if (over_[from] <= 0) corners.push_back(kept(from));
                if ((over_[from] <= 0) == (over_[to] <= 0)) continue;
                corners.push_back(between(from, to));
                ends.push_back(left_.mesh.points[corners.back()]);
            }
            if (gap.valid() && ends.size() == 2) gap_edges.push_back({gap, ends[0], ends[1]});
            for (std::size_t k = 2; k < corners.size(); ++k) {
                left_.mesh.triangles.push_back({corners[0], corners[k - 1], corners[k]});
                left_.bounds.push_back(gap);
            }
        }
        return std::move(left_);
    }

private:
    static constexpr std::uint32_t none = 0xffffffff;

    [[nodiscard]] std::uint32_t add(const Point& at) {
        left_.mesh.points.push_back(at);
        return static_cast<std::uint32_t>(left_.mesh.points.size() - 1);
    }
    [[nodiscard]] std::uint32_t kept(std::uint32_t corner) {
        if (position_[corner] == none) position_[corner] = add(part_.mesh.points[corner]);
        return position_[corner];
    }
    /// Where an edge meets the plane: the same point for the triangles on both of its sides.
    [[nodiscard]] std::uint32_t between(std::uint32_t a, std::uint32_t b) {
        if (a > b) std::swap(a, b);
        const auto [entry, is_new] = crossings_.try_emplace({a, b}, none);
        if (is_new) {
            const Point& from = part_.mesh.points[a];
            entry->second = add(from + (part_.mesh.points[b] - from) * (over_[a] / (over_[a] - over_[b])));
        }
        return entry->second;
    }

    const Part& part_;
    Part left_;
    std::vector<double> over_;  ///< for each point its height over the plane
    std::vector<std::uint32_t> position_;
    std::map<std::pair<std::uint32_t, std::uint32_t>, std::uint32_t> crossings_;
};

void close(Part& part, const TriangleMesh& faces) {
    const auto first = static_cast<std::uint32_t>(part.mesh.points.size());
    part.mesh.points.insert(part.mesh.points.end(), faces.points.begin(), faces.points.end());
    for (const auto& [a, b, c] : faces.triangles) part.mesh.triangles.push_back({first + a, first + b, first + c});
    part.bounds.resize(part.mesh.triangles.size());
}

}  // namespace

void CutFace::move(Vector by) {
    for (Point& at : mesh.points) at = at + by;
    for (auto& [from, to] : outline) {
        from = from + by;
        to = to + by;
    }
    for (GapEdge& edge : gap_edges) edge = {edge.gap, edge.from + by, edge.to + by};
}

Section section(std::span<const Part> parts, const CutPlane& plane) {
    Section all;
    for (const Part& part : parts) {
        const auto is_over = [&](const Point& at) { return plane.over(at) > 0; };
        const auto over = std::ranges::count_if(part.mesh.points, is_over);
        if (over == static_cast<std::ptrdiff_t>(part.mesh.points.size())) continue;
        if (over == 0) {
            all.parts.push_back(part);
            continue;
        }
        CutFace face;
        face.material = part.material;
        face.layer = part.layer;
        Part left = Cutter(part, plane).cut(face.gap_edges);
        face.mesh = closing_faces(part.mesh, plane);
        face.outline = border_of(face.mesh);
        close(left, face.mesh);
        all.parts.push_back(std::move(left));
        all.faces.push_back(std::move(face));
    }
    return all;
}

}  // namespace seamward::viewer
