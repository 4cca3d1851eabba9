// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/marker_layer.h"

#include <vtkTransformPolyDataFilter.h>

#include <numbers>

#include "layers/scene_actor.h"
#include "layers/symbols.h"

namespace seamward::viewer {

MarkerLayer::MarkerLayer(vtkRenderer& renderer, const QColor& color, double growth)
    : actor_(solid_actor(color)), growth_(growth) {
    for (int i = 0; i < symbol_count; ++i) {
        vtkNew<vtkTransformPolyDataFilter> turn;
        turn->SetTransform(toward_eye_);
        turn->SetInputData(symbol_solid(static_cast<Symbol>(i)));
        mapper_->SetSourceConnection(i, turn->GetOutputPort());
    }
    mapper_->SourceIndexingOn();
    mapper_->SetSourceIndexArray(symbol_array);
    mapper_->SetScaleArray(size_array);
    mapper_->SetScaleModeToScaleByMagnitude();
    mapper_->SetScaleFactor(growth);
    mapper_->SetOrient(false);
    mapper_->ScalarVisibilityOff();
    vtkNew<vtkPolyData> nothing;
    mapper_->SetInputData(nothing);
    actor_->SetMapper(mapper_);
    actor_->VisibilityOff();
    renderer.AddActor(actor_);
}

void MarkerLayer::show(vtkPolyData* points) {
    mapper_->SetInputData(points);
    any_ = points->GetNumberOfPoints() > 0;
    actor_->SetVisibility(any_ && shown_);
}

void MarkerLayer::set_color(const QColor& color) { viewer::set_color(*actor_, color); }

void MarkerLayer::set_shown(bool shown) {
    shown_ = shown;
    actor_->SetVisibility(any_ && shown_);
}

void MarkerLayer::set_scale(double scale) { mapper_->SetScaleFactor(growth_ * scale); }

void MarkerLayer::face(const OrbitCamera& camera) {
    constexpr double degrees = 180 / std::numbers::pi;
    toward_eye_->Identity();
    toward_eye_->RotateZ(camera.azimuth * degrees + 90);
    toward_eye_->RotateX(90 - camera.elevation * degrees);
}

}  // namespace seamward::viewer
