// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/drawn_way.h"

#include <vtkConeSource.h>
#include <vtkIdList.h>
#include <vtkTriangleFilter.h>
#include <vtkTubeFilter.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "adapt/polydata.h"
#include "adapt/way_line.h"
#include "layers/colored_triangles.h"
#include "layers/palette.h"
#include "offscreen/lettering.h"

namespace seamward::viewer {

namespace {

constexpr double tube_radius = 2.9;  ///< units of the picture at the middle of the house
constexpr double thin_radius = 1.5;
constexpr double roof_line_radius = 0.85;
const QColor roof_ink{0x6d, 0x4a, 0x3c};
constexpr double dash_length = 10;
constexpr double head_size = 20;  ///< of an arrowhead, likewise
constexpr double head_radius = 8.2;
constexpr double head_spacing = 140;
constexpr double rim = 1.7;

enum class Side : std::uint8_t { near, far };

/// Adds the faces of a solid in one color, those that look toward the eye or those that look away from it: around a slightly
/// smaller solid the latter make a rim. With a `lit_from` all of them are lit as if they looked there.
void add(ColoredTriangles& all, vtkPolyData* solid, const QColor& color, Side side = Side::near,
         std::optional<Vector> lit_from = std::nullopt) {
    vtkNew<vtkTriangleFilter> triangles;
    triangles->SetInputData(solid);
    triangles->PassLinesOff();
    triangles->PassVertsOff();
    triangles->Update();
    vtkPolyData* faces = triangles->GetOutput();
    vtkNew<vtkIdList> ids;
    for (vtkIdType cell = 0; cell < faces->GetNumberOfCells(); ++cell) {
        faces->GetCellPoints(cell, ids);
        std::array<Point, 3> corners;
        for (int i = 0; i < 3; ++i) {
            std::array<double, 3> at{};
            faces->GetPoint(ids->GetId(side == Side::far ? 2 - i : i), at.data());
            corners.at(static_cast<std::size_t>(i)) = {at[0], at[1], at[2]};
        }
        lit_from ? all.add(corners, color, *lit_from) : all.add(corners, color);
    }
}

vtkSmartPointer<vtkPolyData> tubes(std::span<const std::vector<Point>> lines, double radius) {
    vtkNew<vtkTubeFilter> filter;
    filter->SetInputData(lines_data(lines));
    filter->SetRadius(radius);
    filter->SetNumberOfSides(14);
    filter->CappingOn();
    filter->Update();
    return filter->GetOutput();
}

vtkSmartPointer<vtkPolyData> cone(const Point& middle, Vector along, double size, double radius) {
    vtkNew<vtkConeSource> source;
    source->SetCenter(middle.x, middle.y, middle.z);
    source->SetDirection(along.x, along.y, along.z);
    source->SetHeight(size);
    source->SetRadius(radius);
    source->SetResolution(24);
    source->Update();
    return source->GetOutput();
}

double length_of(const std::vector<Point>& line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i) sum += distance(line[i - 1], line[i]);
    return sum;
}

/// A point of a line and its direction there.
struct Stance {
    Point at;
    Vector along;
};

Stance stance_at(const std::vector<Point>& line, double along) {
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Vector step = line[i] - line[i - 1];
        const double size = length(step);
        if (along <= size || i + 1 == line.size()) {
            const double share = std::clamp(along / size, 0.0, 1.0);
            return {line[i - 1] + step * share, step * (1 / size)};
        }
        along -= size;
    }
    return {};
}

/// Where arrowheads stand: at the end, and before it about evenly spaced as the eye sees it, off the marks. `one`: meters of a
/// unit.
std::vector<Stance> arrowheads(const std::vector<Point>& line, std::span<const Point> marks, const Sight& sight, double one) {
    const auto seen = [&](Vector step) { return length(cross(step, sight.forward())); };
    double whole = 0;
    for (std::size_t i = 1; i < line.size(); ++i) whole += seen(line[i] - line[i - 1]);
    Stance tip = stance_at(line, length_of(line));
    tip.at = tip.at + tip.along * (head_size * 0.3 * one);
    std::vector<Stance> all{tip};
    const auto stance = [&](double along) {
        for (std::size_t i = 1; i < line.size(); ++i) {
            const Vector step = line[i] - line[i - 1];
            if (along <= seen(step)) return Stance{line[i - 1] + step * (along / seen(step)), step * (1 / length(step))};
            along -= seen(step);
        }
        return tip;
    };
    const int heads = std::max(1, static_cast<int>(whole / (head_spacing * one)));
    for (int i = 0; i < heads; ++i) {
        for (const double aside : {0.0, 28.0, -28.0, 44.0, -44.0}) {
            const Stance head = stance(std::clamp(whole * (i + 0.5) / heads + aside * one, 0.0, whole));
            const auto near = [&](const Point& mark) { return seen(mark - head.at) < 27 * one; };
            if (near(tip.at) || seen(head.along) < 0.45 || std::any_of(marks.begin(), marks.end(), near)) continue;
            all.push_back(head);
            break;
        }
    }
    return all;
}

}  // namespace

void add_way(ColoredTriangles& all, const std::vector<Point>& line, std::span<const Point> marks, const Sight& sight,
             double unit) {
    if (line.size() < 2) return;
    const double one = sight.pixel(sight.camera().distance) * unit;
    const Vector to_eye = sight.forward() * -1;
    const std::array<std::vector<Point>, 1> only{line};
    add(all, tubes(only, tube_radius * one), palette::way);
    add(all, tubes(only, (tube_radius + rim) * one), lettering::light_paper, Side::far, to_eye);
    for (const Stance& stance : arrowheads(line, marks, sight, one)) {
        add(all, cone(stance.at, stance.along, head_size * one, head_radius * one), palette::way);
        add(all,
            cone(stance.at + stance.along * (0.6 * rim * one), stance.along, (head_size + 2.6 * rim) * one,
                 (head_radius + 1.3 * rim) * one),
            lettering::light_paper, Side::far, to_eye);
    }
}

void add_roof_lines(ColoredTriangles& all, std::span<const std::vector<Point>> lines, const Sight& sight, double unit) {
    if (lines.empty()) return;
    const double one = sight.pixel(sight.camera().distance) * unit;
    add(all, tubes(lines, roof_line_radius * one), roof_ink, Side::near, sight.forward() * -1);
}

void add_thin_ways(ColoredTriangles& all, std::span<const std::vector<Point>> lines, const Sight& sight, double unit) {
    const double one = sight.pixel(sight.camera().distance) * unit;
    std::vector<std::vector<Point>> pieces;
    for (const std::vector<Point>& line : lines) {
        for (std::vector<Point>& dash : dashes(line, dash_length * one)) pieces.push_back(std::move(dash));
    }
    add(all, tubes(pieces, thin_radius * one), lettering::other_way, Side::near, sight.forward() * -1);
}

}  // namespace seamward::viewer
