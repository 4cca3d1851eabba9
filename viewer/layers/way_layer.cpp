// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/way_layer.h"

#include <vtkConeSource.h>
#include <vtkMapper.h>
#include <vtkPlane.h>
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
    if (way.before.size() > 1) {
        lines.push_back(way.before);
        joined = true;
    }
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
    if (way.after.size() < 2) return lines;
    if (joined) {
        lines.back().insert(lines.back().end(), way.after.begin() + 1, way.after.end());
    } else {
        lines.push_back(way.after);
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
    chosen_ = chosen != nullptr ? std::optional(*chosen) : std::nullopt;
    smallest_at_ = smallest;
    other_lines_.assign(others.begin(), others.end());
    reach_ = frame.reach;
    draw();
}

void WayLayer::set_scale(double scale) {
    constexpr double seen = 1.12;  // a difference that can be seen
    if (scale < scale_ * seen && scale_ < scale * seen) return;
    scale_ = scale;
    draw();
}

void WayLayer::cut_others(const std::optional<CutPlane>& plane) {
    others_->GetMapper()->RemoveAllClippingPlanes();
    if (!plane) return;
    vtkNew<vtkPlane> keep;
    keep->SetOrigin(plane->at.x, plane->at.y, plane->at.z);
    keep->SetNormal(-plane->normal.x, -plane->normal.y, -plane->normal.z);
    others_->GetMapper()->AddClippingPlane(keep);
}

void WayLayer::recolor() {
    for (const auto& actor : {tube_, arrows_, posts_}) set_color(*actor, palette::way);
    set_color(*shadow_, palette::way_shadow);
    set_color(*halo_, palette::smallest);
    set_color(*others_, palette::other_way);
}

void WayLayer::set_shown(bool shown) {
    shown_ = shown;
    draw();
}

void WayLayer::draw() {
    others_->SetVisibility(shown_);
    if (!shown_) {
        for (const auto& actor : {shadow_, posts_, tube_, arrows_, halo_}) actor->VisibilityOff();
        return;
    }
    show_others();
    for (const auto& actor : {shadow_, posts_, tube_, arrows_}) actor->SetVisibility(chosen_.has_value());
    if (chosen_) show_chosen(*chosen_);
    halo_->SetVisibility(smallest_at_.has_value());
    if (!smallest_at_) return;
    vtkNew<vtkSphereSource> ball;
    ball->SetCenter(smallest_at_->x, smallest_at_->y, smallest_at_->z);
    ball->SetRadius(halo_share * reach_ * scale_);
    ball->SetThetaResolution(40);
    ball->SetPhiResolution(28);
    ball->Update();
    set_data(*halo_, ball->GetOutput());
}

void WayLayer::show_chosen(const WayLine& chosen) {
    const double size = reach_ * scale_;
    const std::vector<std::vector<Point>> lines = tube_lines(chosen);
    set_data(*tube_, tubes(lines, tube_radius * size));
    tube_->SetVisibility(!lines.empty());
    arrow_mapper_->SetInputData(arrow_points(chosen, 0.16 * size, 0.035 * size));
    arrow_mapper_->SetScaleFactor(arrow_size * size);
    arrows_->SetVisibility(arrow_mapper_->GetInput()->GetNumberOfPoints() > 0);

    const double ground = 0.0008 * reach_;
    std::vector<std::vector<Point>> flat = lines;
    for (std::vector<Point>& line : flat) {
        for (Point& at : line) at.z = ground;
    }
    set_data(*shadow_, lines_data(flat));
    std::vector<std::vector<Point>> posts;
    for (const WayStop& stop : chosen.stops) posts.push_back({{stop.at.x, stop.at.y, ground}, stop.at});
    set_data(*posts_, lines_data(posts));
    // A way that runs through a house needs neither.
    if (!chosen.before.empty()) {
        shadow_->VisibilityOff();
        posts_->VisibilityOff();
    }
}

void WayLayer::show_others() {
    std::vector<std::vector<Point>> lines;
    for (const std::vector<Point>& line : other_lines_) append(lines, dashes(line, dash_length * reach_ * scale_));
    set_data(*others_, lines_data(lines));
}

}  // namespace seamward::viewer
