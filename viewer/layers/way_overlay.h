// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "adapt/way_line.h"
#include "layers/orbit_camera.h"

namespace seamward::viewer {

/// Paints the chosen way over everything: a faint line, so that it is seen where something stands before it, and dots
/// past gaps whose position is not given. `area` in pixels, all of the picture.
void paint_way_overlay(QPainter& painter, const WayLine& way, const OrbitCamera& camera, const QRectF& area);

}  // namespace seamward::viewer
