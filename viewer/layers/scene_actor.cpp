// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/scene_actor.h"

#include <vtkNew.h>
#include <vtkPolyDataMapper.h>
#include <vtkProperty.h>

namespace seamward::viewer {

namespace {

vtkSmartPointer<vtkActor> actor_of(const QColor& color) {
    auto actor = vtkSmartPointer<vtkActor>::New();
    vtkNew<vtkPolyDataMapper> mapper;
    vtkNew<vtkPolyData> nothing;
    mapper->SetInputData(nothing);
    actor->SetMapper(mapper);
    set_color(*actor, color);
    actor->PickableOff();
    return actor;
}

}  // namespace

void set_color(vtkActor& actor, const QColor& color) {
    actor.GetProperty()->SetColor(color.redF(), color.greenF(), color.blueF());
}

vtkSmartPointer<vtkActor> solid_actor(const QColor& color) {
    auto actor = actor_of(color);
    actor->GetProperty()->SetAmbient(0.32);
    actor->GetProperty()->SetDiffuse(0.72);
    actor->GetProperty()->SetSpecular(0.12);
    actor->GetProperty()->SetSpecularPower(18);
    return actor;
}

vtkSmartPointer<vtkActor> drawn_actor(const QColor& color, double width) {
    auto actor = actor_of(color);
    actor->GetProperty()->LightingOff();
    actor->GetProperty()->SetLineWidth(static_cast<float>(width));
    return actor;
}

void set_data(vtkActor& actor, vtkPolyData* data) { static_cast<vtkPolyDataMapper*>(actor.GetMapper())->SetInputData(data); }

}  // namespace seamward::viewer
