// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyData.h>
#include <vtkRenderWindow.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>

#include "offscreen/blend_layers.h"
#include "offscreen/sight.h"

namespace seamward::viewer {

/// Draws solids one group at a time, each as if it were alone, in memory. Needs a screen that OpenGL draws on.
class LayerRenderer {
public:
    /// Pictures have `fine` times the pixels of `sight`, each way.
    LayerRenderer(const Sight& sight, int fine);

    /// The faces of `solids` that look toward the eye, lit; colors and normals are those of the data. Throws BadPicture when
    /// OpenGL fails.
    [[nodiscard]] DrawnLayer drawn(vtkPolyData* solids);

private:
    int width_, height_;
    vtkNew<vtkRenderer> renderer_;
    vtkNew<vtkRenderWindow> window_;
    vtkSmartPointer<vtkActor> actor_;
};

}  // namespace seamward::viewer
