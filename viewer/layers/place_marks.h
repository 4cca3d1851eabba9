// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QString>
#include <span>

#include "document/drill_signs.h"
#include "layers/orbit_camera.h"

namespace seamward::viewer {

/// A place of a drill in the picture.
struct PlaceMark {
    Point at;  ///< scene
    int number = 0;
    PlaceSign sign = PlaceSign::nothing;
    QString name;  ///< of the chosen one, which has a ring and a card; empty: it is another
};

/// Paints a sign, told apart by its shape: a ring for open, a bar for tight, a tick for right, half a tick's disc for partly
/// right, a broken ring for missed, a cross for a false alarm, a triangle for harm. `in`: a square, pixels.
void paint_place_sign(QPainter& painter, PlaceSign sign, const QRectF& in);

/// Paints sign, number and word of each mark; where they would cover another's, only the sign. `area` in pixels, all of the
/// picture.
void paint_place_marks(QPainter& painter, std::span<const PlaceMark> marks, const OrbitCamera& camera, const QRectF& area);

}  // namespace seamward::viewer
