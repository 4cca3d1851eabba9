// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/ground_layer.h"

#include <vtkCellArray.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkPolyDataMapper.h>
#include <vtkProperty.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "adapt/polydata.h"
#include "layers/palette.h"
#include "layers/scene_actor.h"

namespace seamward::viewer {

namespace {

/// Points on the ground that fade away with their distance from a box.
class FadingPoints {
public:
    FadingPoints(const PictureFrame& frame, const QColor& color, double strength, double height)
        : frame_(frame), color_(color), strength_(strength), height_(height) {
        colors_->SetNumberOfComponents(4);
    }

    vtkIdType add(double x, double y) {
        const Box& box = frame_.gaps;
        const double beyond =
            std::hypot(std::max({box.low.x - x, 0.0, x - box.high.x}), std::max({box.low.y - y, 0.0, y - box.high.y}));
        const double t = std::clamp(1 - beyond / margin(frame_), 0.0, 1.0);
        colors_->InsertNextTuple4(color_.red(), color_.green(), color_.blue(), 255 * strength_ * t * t * (3 - 2 * t));
        return points_->InsertNextPoint(x, y, height_);
    }

    void give_to(vtkPolyData& data) {
        data.SetPoints(points_);
        data.GetPointData()->SetScalars(colors_);
    }

    static double margin(const PictureFrame& frame) { return frame.reach * 0.17; }

private:
    const PictureFrame& frame_;
    QColor color_;
    double strength_, height_;
    vtkNew<vtkPoints> points_;
    vtkNew<vtkUnsignedCharArray> colors_;
};

struct Area {
    double west, east, south, north;
};

Area ground_area(const PictureFrame& frame) {
    const double margin = FadingPoints::margin(frame);
    return {frame.gaps.low.x - margin, frame.gaps.high.x + margin, frame.gaps.low.y - margin, frame.gaps.high.y + margin};
}

constexpr int fade_pieces = 56;

vtkSmartPointer<vtkPolyData> ground_data(const PictureFrame& frame) {
    const Area area = ground_area(frame);
    FadingPoints points(frame, palette::ground, 0.9, 0);
    vtkNew<vtkCellArray> cells;
    for (int j = 0; j <= fade_pieces; ++j) {
        for (int i = 0; i <= fade_pieces; ++i) {
            const vtkIdType corner = points.add(std::lerp(area.west, area.east, static_cast<double>(i) / fade_pieces),
                                                std::lerp(area.south, area.north, static_cast<double>(j) / fade_pieces));
            if (i == 0 || j == 0) continue;
            constexpr vtkIdType row = fade_pieces + 1;
            const std::array<vtkIdType, 4> quad{corner - row - 1, corner - row, corner, corner - 1};
            cells->InsertNextCell(quad.size(), quad.data());
        }
    }
    auto data = vtkSmartPointer<vtkPolyData>::New();
    points.give_to(*data);
    data->SetPolys(cells);
    return data;
}

/// Lines at whole multiples of `step` meters in the frame of the job.
vtkSmartPointer<vtkPolyData> grid_data(const PictureFrame& frame, double step) {
    const Area area = ground_area(frame);
    FadingPoints points(frame, palette::grid, 0.6, frame.reach * 0.0004);
    vtkNew<vtkCellArray> cells;
    const auto lines = [&](double low, double high, double origin, auto&& point_at) {
        for (double at = std::ceil((low + origin) / step) * step - origin; at <= high; at += step) {
            cells->InsertNextCell(fade_pieces + 1);
            for (int i = 0; i <= fade_pieces; ++i) cells->InsertCellPoint(point_at(at, static_cast<double>(i) / fade_pieces));
        }
    };
    lines(area.west, area.east, frame.origin.x,
          [&](double x, double share) { return points.add(x, std::lerp(area.south, area.north, share)); });
    lines(area.south, area.north, frame.origin.y,
          [&](double y, double share) { return points.add(std::lerp(area.west, area.east, share), y); });
    auto data = vtkSmartPointer<vtkPolyData>::New();
    points.give_to(*data);
    data->SetLines(cells);
    return data;
}

/// The box's outline at one height, closed.
std::vector<Point> rectangle(const Box& box, double z) {
    return {{box.low.x, box.low.y, z},
            {box.high.x, box.low.y, z},
            {box.high.x, box.high.y, z},
            {box.low.x, box.high.y, z},
            {box.low.x, box.low.y, z}};
}

vtkSmartPointer<vtkPolyData> floor_data(const Box& box, double z) {
    vtkNew<vtkPoints> points;
    const std::vector<Point> corners = rectangle(box, z);
    for (std::size_t i = 0; i < 4; ++i) points->InsertNextPoint(corners[i].x, corners[i].y, corners[i].z);
    const std::array<vtkIdType, 4> quad{0, 1, 2, 3};
    vtkNew<vtkCellArray> cells;
    cells->InsertNextCell(quad.size(), quad.data());
    auto data = vtkSmartPointer<vtkPolyData>::New();
    data->SetPoints(points);
    data->SetPolys(cells);
    return data;
}

/// An arrow flat on the ground: its shaft and its head.
void add_arrow(std::vector<std::vector<Point>>& lines, const Point& from, const Point& tip) {
    const Point along{(tip.x - from.x) * 0.2, (tip.y - from.y) * 0.2, 0};
    const auto barb = [&](double side) {
        return Point{tip.x - along.x - side * along.y * 0.5, tip.y - along.y + side * along.x * 0.5, tip.z};
    };
    lines.push_back({from, tip});
    lines.push_back({barb(-1), tip, barb(1)});
}

}  // namespace

GroundArrows ground_arrows(const PictureFrame& frame) {
    const double aside = frame.reach * 0.04;
    const double length = frame.reach * 0.09;
    const Point corner{frame.gaps.low.x - aside, frame.gaps.low.y - aside, frame.reach * 0.0008};
    const auto at = [&](double x, double y) { return Point{corner.x + x * length, corner.y + y * length, corner.z}; };
    return {corner, at(1, 0), at(0, 1), at(1.25, 0), at(0, 1.25)};
}

double round_grid_step(double reach) {
    double step = 1;
    while (reach / step > 60) step *= 10;
    if (step > 1 && reach / step < 12)
        step /= 5;
    else if (step > 1 && reach / step < 30)
        step /= 2;
    return step;
}

GroundLayer::GroundLayer(vtkRenderer& renderer)
    : ground_(drawn_actor(palette::ground)),
      grid_(drawn_actor(palette::grid)),
      floor_(drawn_actor(palette::floor)),
      base_(drawn_actor(palette::outline, 1.6)),
      box_(drawn_actor(palette::outline, 0.9)),
      arrows_(drawn_actor(palette::soft_ink, 1.5)) {
    floor_->GetProperty()->SetOpacity(0.55);
    base_->GetProperty()->SetOpacity(0.75);
    box_->GetProperty()->SetOpacity(0.38);
    for (const auto& actor : {ground_, grid_}) actor->ForceTranslucentOn();
    for (const auto& actor : {ground_, floor_, grid_, base_, box_, arrows_}) renderer.AddActor(actor);
}

void GroundLayer::recolor() {
    set_color(*floor_, palette::floor);
    for (const auto& actor : {base_, box_}) set_color(*actor, palette::outline);
    set_color(*arrows_, palette::soft_ink);
}

void GroundLayer::set_shown(bool ground, bool box) {
    for (const auto& actor : {ground_, grid_}) actor->SetVisibility(ground);
    for (const auto& actor : {floor_, base_, box_, arrows_}) actor->SetVisibility(ground && box);
}

void GroundLayer::show(const PictureFrame& frame) {
    grid_step_ = round_grid_step(frame.reach);
    set_data(*ground_, ground_data(frame));
    set_data(*grid_, grid_data(frame, grid_step_));
    const Box& box = frame.gaps;
    set_data(*floor_, floor_data(box, frame.reach * 0.0002));
    set_data(*base_, lines_data(std::vector<std::vector<Point>>{rectangle(box, frame.reach * 0.0006)}));
    std::vector<std::vector<Point>> edges{rectangle(box, box.high.z)};
    for (const Point& corner : rectangle(box, 0)) edges.push_back({corner, {corner.x, corner.y, box.high.z}});
    edges.pop_back();
    set_data(*box_, lines_data(edges));
    const GroundArrows arrows = ground_arrows(frame);
    std::vector<std::vector<Point>> lines;
    add_arrow(lines, arrows.corner, arrows.x_tip);
    add_arrow(lines, arrows.corner, arrows.y_tip);
    set_data(*arrows_, lines_data(lines));
}

}  // namespace seamward::viewer
