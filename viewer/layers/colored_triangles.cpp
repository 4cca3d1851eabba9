// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/colored_triangles.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkTypeInt32Array.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>
#include <numeric>

namespace seamward::viewer {

void ColoredTriangles::add(const std::array<Point, 3>& corners, const QColor& color) {
    const Vector across = cross(corners[1] - corners[0], corners[2] - corners[0]);
    const double doubled = length(across);
    if (!(doubled > 0)) return;  // no area, no face
    add(corners, color, across * (1 / doubled));
}

void ColoredTriangles::add(const std::array<Point, 3>& corners, const QColor& color, Vector normal) {
    for (const Point& at : corners) {
        for (const double value : {at.x, at.y, at.z}) corners_.push_back(static_cast<float>(value));
        for (const double value : {normal.x, normal.y, normal.z}) normals_.push_back(static_cast<float>(value));
        for (const int value : {color.red(), color.green(), color.blue()}) colors_.push_back(static_cast<std::uint8_t>(value));
    }
}

vtkSmartPointer<vtkPolyData> ColoredTriangles::data() const {
    const auto corners = static_cast<vtkIdType>(corners_.size() / 3);
    vtkNew<vtkFloatArray> places;
    places->SetNumberOfComponents(3);
    places->SetNumberOfTuples(corners);
    std::copy(corners_.begin(), corners_.end(), places->GetPointer(0));
    vtkNew<vtkFloatArray> normals;
    normals->SetNumberOfComponents(3);
    normals->SetNumberOfTuples(corners);
    std::copy(normals_.begin(), normals_.end(), normals->GetPointer(0));
    vtkNew<vtkUnsignedCharArray> colors;
    colors->SetNumberOfComponents(3);
    colors->SetNumberOfTuples(corners);
    std::copy(colors_.begin(), colors_.end(), colors->GetPointer(0));
    return triangles_data(places, normals, colors);
}

vtkSmartPointer<vtkPolyData> triangles_data(vtkFloatArray* corners, vtkFloatArray* normals, vtkUnsignedCharArray* colors) {
    vtkNew<vtkTypeInt32Array> ids;
    ids->SetNumberOfValues(corners->GetNumberOfTuples());
    std::iota(ids->GetPointer(0), ids->GetPointer(0) + corners->GetNumberOfTuples(), 0);
    vtkNew<vtkCellArray> cells;
    cells->SetData(3, ids);
    vtkNew<vtkPoints> points;
    points->SetData(corners);
    auto data = vtkSmartPointer<vtkPolyData>::New();
    data->SetPoints(points);
    data->SetPolys(cells);
    data->GetPointData()->SetNormals(normals);
    if (colors != nullptr) data->GetPointData()->SetScalars(colors);
    return data;
}

}  // namespace seamward::viewer
