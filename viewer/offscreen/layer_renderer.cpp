// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/layer_renderer.h"

#include <vtkCamera.h>
#include <vtkLight.h>
#include <vtkPolyDataMapper.h>
#include <vtkProperty.h>

#include <numbers>

#include "layers/scene_actor.h"
#include "offscreen/draw_picture.h"

namespace seamward::viewer {

namespace {

/// A light that stays where it is beside the eye.
void add_light(vtkRenderer& renderer, double x, double y, double z, double strength, const QColor& color) {
    vtkNew<vtkLight> light;
    light->SetLightTypeToCameraLight();
    light->SetPosition(x, y, z);
    light->SetFocalPoint(0, 0, 0);
    light->SetIntensity(strength);
    light->SetColor(color.redF(), color.greenF(), color.blueF());
    renderer.AddLight(light);
}

void look(vtkCamera& eye, const Sight& sight) {
    const OrbitCamera& camera = sight.camera();
    const Point from = camera.eye();
    eye.SetPosition(from.x, from.y, from.z);
    eye.SetFocalPoint(camera.focus.x, camera.focus.y, camera.focus.z);
    eye.SetViewUp(0, 0, 1);
    eye.SetViewAngle(camera.view_angle * 180 / std::numbers::pi);
    eye.SetClippingRange(sight.near_plane(), sight.far_plane());
}

}  // namespace

LayerRenderer::LayerRenderer(const Sight& sight, int fine)
    : width_(sight.width() * fine), height_(sight.height() * fine), actor_(solid_actor(Qt::white)) {
    window_->SetOffScreenRendering(1);
    window_->SetMultiSamples(0);  // depths of single samples; several make a pixel later
    window_->SetSize(width_, height_);
    window_->AddRenderer(renderer_);
    renderer_->SetBackground(0, 0, 0);
    renderer_->AutomaticLightCreationOff();
    // Light materials stay light: the sum on the brightest faces is about 1.
    add_light(*renderer_, -0.75, 0.45, 0.9, 0.44, QColor(255, 249, 238));
    add_light(*renderer_, 0.9, 0.1, 0.8, 0.19, QColor(236, 243, 255));
    add_light(*renderer_, 0, 1, 0, 0.14, QColor(255, 255, 255));
    actor_->GetProperty()->SetAmbient(0.59);
    actor_->GetProperty()->SetDiffuse(1);
    actor_->GetProperty()->SetSpecular(0);
    actor_->GetProperty()->BackfaceCullingOn();
    renderer_->AddActor(actor_);
    look(*renderer_->GetActiveCamera(), sight);
}

DrawnLayer LayerRenderer::drawn(vtkPolyData* solids) {
    DrawnLayer layer;
    if (solids->GetNumberOfCells() == 0) return layer;
    set_data(*actor_, solids);
    window_->Render();
    layer.colors = vtkSmartPointer<vtkUnsignedCharArray>::New();
    layer.depths = vtkSmartPointer<vtkFloatArray>::New();
    const bool read = window_->GetRGBACharPixelData(0, 0, width_ - 1, height_ - 1, 0, layer.colors) != 0 &&
                      window_->GetZbufferData(0, 0, width_ - 1, height_ - 1, layer.depths) != 0;
    const vtkIdType pixels = static_cast<vtkIdType>(width_) * height_;
    if (!read || layer.depths->GetNumberOfValues() != pixels || layer.colors->GetNumberOfValues() != 4 * pixels)
        throw BadPicture("OpenGL gives back no picture of that size");
    return layer;
}

}  // namespace seamward::viewer
