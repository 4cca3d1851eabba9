// SPDX-License-Identifier: GPL-3.0-or-later
#include "adapt/polydata.h"

#include <vtkCellArray.h>
#include <vtkDoubleArray.h>
#include <vtkIntArray.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPoints.h>

#include <algorithm>
#include <cmath>

namespace seamward::viewer {

namespace {

constexpr double largest_symbol = 0.021;  ///< share of the picture's reach

double length_of(std::span<const Point> line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i) sum += distance(line[i - 1], line[i]);
    return sum;
}

/// Adds the point at `along` meters of a line and the line's direction there.
void add_arrow(std::span<const Point> line, double along, vtkPoints& points, vtkDoubleArray& headings) {
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Point& a = line[i - 1];
        const Point& b = line[i];
        const double piece = distance(a, b);
        if (along > piece && i + 1 < line.size()) {
            along -= piece;
            continue;
        }
        const double share = std::min(along / piece, 1.0);
        points.InsertNextPoint(std::lerp(a.x, b.x, share), std::lerp(a.y, b.y, share), std::lerp(a.z, b.z, share));
        headings.InsertNextTuple3((b.x - a.x) / piece, (b.y - a.y) / piece, (b.z - a.z) / piece);
        return;
    }
}

}  // namespace

Symbol symbol_of(const Gap& gap) {
    if (is_shut(gap.shape)) return Symbol::shut;
    return static_cast<Symbol>(gap.shape.index());
}
static_assert(std::is_same_v<std::variant_alternative_t<static_cast<std::size_t>(Symbol::slot), Shape>, Slot>);
static_assert(std::is_same_v<std::variant_alternative_t<static_cast<std::size_t>(Symbol::hole), Shape>, Hole>);
static_assert(std::is_same_v<std::variant_alternative_t<static_cast<std::size_t>(Symbol::ring), Shape>, Ring>);
static_assert(std::is_same_v<std::variant_alternative_t<static_cast<std::size_t>(Symbol::mesh), Shape>, Mesh>);

double symbol_share(double width) {
    constexpr double narrow = 0.0005;
    constexpr double wide = 0.05;
    const double rise = std::log(std::clamp(width, narrow, wide) / narrow) / std::log(wide / narrow);
    return std::lerp(0.5, 1.0, rise);
}

vtkSmartPointer<vtkPolyData> gap_points(const Survey& survey, std::span<const GapIndex> gaps, const PictureFrame& frame) {
    vtkNew<vtkPoints> points;
    vtkNew<vtkIntArray> symbols;
    symbols->SetName(symbol_array);
    vtkNew<vtkDoubleArray> sizes;
    sizes->SetName(size_array);
    for (const GapIndex index : gaps) {
        const Gap& gap = survey[index];
        if (!gap.at) continue;
        const Point at = frame.to_scene(*gap.at);
        points->InsertNextPoint(at.x, at.y, at.z);
        symbols->InsertNextValue(static_cast<int>(symbol_of(gap)));
        sizes->InsertNextValue(frame.reach * largest_symbol * symbol_share(clear_width(gap.shape)));
    }
    auto data = vtkSmartPointer<vtkPolyData>::New();
    data->SetPoints(points);
    data->GetPointData()->AddArray(symbols);
    data->GetPointData()->AddArray(sizes);
    return data;
}

vtkSmartPointer<vtkPolyData> lines_data(std::span<const std::vector<Point>> lines) {
    vtkNew<vtkPoints> points;
    vtkNew<vtkCellArray> cells;
    for (const std::vector<Point>& line : lines) {
        if (line.size() < 2) continue;
        cells->InsertNextCell(static_cast<int>(line.size()));
        for (const Point& at : line) cells->InsertCellPoint(points->InsertNextPoint(at.x, at.y, at.z));
    }
    auto data = vtkSmartPointer<vtkPolyData>::New();
    data->SetPoints(points);
    data->SetLines(cells);
    return data;
}

vtkSmartPointer<vtkPolyData> arrow_points(const WayLine& way, double spacing, double least) {
    vtkNew<vtkPoints> points;
    vtkNew<vtkDoubleArray> headings;
    headings->SetName(heading_array);
    headings->SetNumberOfComponents(3);
    for (const WayLeg& leg : way.legs) {
        const double length = length_of(leg.line);
        if (!leg.sure || length < least) continue;
        const double arrows = std::max(1.0, std::floor(length / spacing));
        for (double i = 0; i < arrows; ++i) add_arrow(leg.line, length * (i + 0.5) / arrows, *points, *headings);
    }
    auto data = vtkSmartPointer<vtkPolyData>::New();
    data->SetPoints(points);
    data->GetPointData()->AddArray(headings);
    return data;
}

}  // namespace seamward::viewer
