// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkActor.h>
#include <vtkPolyData.h>
#include <vtkSmartPointer.h>

#include <QColor>

namespace seamward::viewer {

/// An actor of one color that light shapes: solids. Shown by the renderer that it is added to.
[[nodiscard]] vtkSmartPointer<vtkActor> solid_actor(const QColor& color);

/// An actor of one color that light leaves alone: lines and areas on the ground. `width` of lines in pixels.
[[nodiscard]] vtkSmartPointer<vtkActor> drawn_actor(const QColor& color, double width = 1);

void set_color(vtkActor& actor, const QColor& color);

/// What an actor shows.
void set_data(vtkActor& actor, vtkPolyData* data);

}  // namespace seamward::viewer
