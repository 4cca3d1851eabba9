// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <span>
#include <vector>

#include "adapt/way_line.h"
#include "layers/orbit_camera.h"

namespace seamward::viewer {

/// Paints over everything those parts of the chosen way that something hides, as dashes, and dots past gaps whose position is not
/// given. `area` in pixels, all of the picture.
void paint_way_overlay(QPainter& painter, const WayLine& way, std::span<const std::vector<Point>> hidden,
                       const OrbitCamera& camera, const QRectF& area);

}  // namespace seamward::viewer
