// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkActor.h>
#include <vtkGlyph3DMapper.h>
#include <vtkNew.h>
#include <vtkRenderer.h>
#include <vtkTransform.h>

#include <QColor>

#include "layers/orbit_camera.h"

namespace seamward::viewer {

/// Gaps as symbols that always face the eye: a survey says where a gap is, not which way it looks.
class MarkerLayer {
public:
    /// `growth`: how many times their plain size the symbols are drawn.
    MarkerLayer(vtkRenderer& renderer, const QColor& color, double growth);

    /// `points` as gap_points() makes them.
    void show(vtkPolyData* points);
    void face(const OrbitCamera& camera);
    void set_color(const QColor& color);
    void set_shown(bool shown);
    /// How many times as large as they are otherwise.
    void set_scale(double scale);

private:
    vtkNew<vtkTransform> toward_eye_;
    vtkNew<vtkGlyph3DMapper> mapper_;
    vtkSmartPointer<vtkActor> actor_;
    double growth_;
    bool any_ = false, shown_ = true;
};

}  // namespace seamward::viewer
