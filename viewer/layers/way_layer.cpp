// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/way_layer.h"

#include <vtkConeSource.h>
#include <vtkProperty.h>
#include <vtkSphereSource.h>
#include <vtkTubeFilter.h>

#include "adapt/polydata.h"
#include "layers/palette.h"
#include "layers/scene_actor.h"

namespace seamward::viewer {

namespace {

// Sizes as shares of the picture's reach.
constexpr double tube_radius = 0.0042;
constexpr double arrow_size = 0.022;
constexpr double dash_length = 0.010;

vtkSmartPointer<vtkPolyData> tubes(std::span<const std::vector<Point>> lines, double radius) {
    vtkNew<vtkTubeFilter> filter;
    filter->SetInputData(lines_data(lines));
    filter->SetRadius(radius);
    filter->SetNumberOfSides(20);
    filter->CappingOn();
    filter->Update();
    return filter->GetOutput();
}

void append(std::vector<std::vector<Point>>& all, std::vector<std::vector<Point>> more) {
    all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

/// The legs joined where the way is sure.
std::vector<std::vector<Point>> tube_lines(const WayLine& way) {
    std::vector<std::vector<Point>> lines;
    bool joined = false;
    for (const WayLeg& leg : way.legs) {
        if (!leg.sure) {
            joined = false;
        } else if (joined && !leg.line.empty()) {
            lines.back().insert(lines.back().end(), leg.line.begin() + 1, leg.line.end());
        } else if (!leg.line.empty()) {
            lines.push_back(leg.line);
            joined = true;
        }
    }
    return lines;
}

}  // namespace

WayLayer::WayLayer(vtkRenderer& renderer)
    : tube_(solid_actor(palette::way)),
      arrows_(solid_actor(palette::way)),
      shadow_(drawn_actor(palette::way_shadow, 4)),
      posts_(drawn_actor(palette::way, 1)),
      halo_(drawn_actor(palette::smallest)),
      others_(drawn_actor(palette::other_way, 1.3)) {
    shadow_->GetProperty()->SetOpacity(0.55);
    posts_->GetProperty()->SetOpacity(0.45);
    halo_->GetProperty()->SetOpacity(0.26);
    others_->GetProperty()->SetOpacity(0.6);
    vtkNew<vtkConeSource> cone;
    cone->SetHeight(1.6);
    cone->SetRadius(0.44);
    cone->SetResolution(28);
    arrow_mapper_->SetSourceConnection(cone->GetOutputPort());
    arrow_mapper_->SetOrientationArray(heading_array);
    arrow_mapper_->SetOrientationModeToDirection();
    arrow_mapper_->SetScaleModeToNoDataScaling();
    arrow_mapper_->ScalarVisibilityOff();
    vtkNew<vtkPolyData> nothing;
    arrow_mapper_->SetInputData(nothing);
    arrows_->SetMapper(arrow_mapper_);
    for (const auto& actor : {shadow_, others_, posts_, tube_, arrows_, halo_}) renderer.AddActor(actor);
}

void WayLayer::show(const WayLine* chosen, std::optional<Point> smallest, std::span<const std::vector<Point>> others,
                    const PictureFrame& frame) {
    show_others(others, frame);
    for (const auto& actor : {shadow_, posts_, tube_, arrows_}) actor->SetVisibility(chosen != nullptr);
    if (chosen != nullptr) show_chosen(*chosen, frame);
    halo_->SetVisibility(smallest.has_value());
    if (!smallest) return;
    vtkNew<vtkSphereSource> ball;
    ball->SetCenter(smallest->x, smallest->y, smallest->z);
    ball->SetRadius(halo_share * frame.reach);
    ball->SetThetaResolution(40);
    ball->SetPhiResolution(28);
    ball->Update();
    set_data(*halo_, ball->GetOutput());
}

void WayLayer::show_chosen(const WayLine& chosen, const PictureFrame& frame) {
    const std::vector<std::vector<Point>> lines = tube_lines(chosen);
    set_data(*tube_, tubes(lines, tube_radius * frame.reach));
    tube_->SetVisibility(!lines.empty());
    arrow_mapper_->SetInputData(arrow_points(chosen, 0.16 * frame.reach, 0.035 * frame.reach));
    arrow_mapper_->SetScaleFactor(arrow_size * frame.reach);
    arrows_->SetVisibility(arrow_mapper_->GetInput()->GetNumberOfPoints() > 0);

    const double ground = 0.0008 * frame.reach;
    std::vector<std::vector<Point>> flat = lines;
    for (std::vector<Point>& line : flat) {
        for (Point& at : line) at.z = ground;
    }
    set_data(*shadow_, lines_data(flat));
    std::vector<std::vector<Point>> posts;
    for (const WayStop& stop : chosen.stops) posts.push_back({{stop.at.x, stop.at.y, ground}, stop.at});
    set_data(*posts_, lines_data(posts));
}

void WayLayer::show_others(std::span<const std::vector<Point>> others, const PictureFrame& frame) {
    std::vector<std::vector<Point>> lines;
    for (const std::vector<Point>& line : others) append(lines, dashes(line, dash_length * frame.reach));
    set_data(*others_, lines_data(lines));
}

}  // namespace seamward::viewer
