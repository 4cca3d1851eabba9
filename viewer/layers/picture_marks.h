// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QString>
#include <optional>
#include <span>

#include "layers/orbit_camera.h"

namespace seamward::viewer {

/// A gap of the list of closings in the picture.
struct ClosingMark {
    Point at;  ///< scene
    int number = 0;
    bool ticked = false;
};

/// Paints a small sign at each: its number in a square, or a tick in a filled one. Where signs would cover each other the later
/// ones are small squares without a number. `area` in pixels, all of the picture.
void paint_closings(QPainter& painter, std::span<const ClosingMark> marks, const OrbitCamera& camera, const QRectF& area);

/// A gap of the survey in the picture.
struct GapDot {
    Point at;  ///< scene
    bool measured = false;
};

/// Paints a dot at each: filled where its size was measured, hollow where it was not.
void paint_gap_dots(QPainter& painter, std::span<const GapDot> dots, const OrbitCamera& camera, const QRectF& area);

/// Paints what is measured: its ends, the line between them, and how long it is, as `words` say.
void paint_measure(QPainter& painter, const Point& from, const std::optional<Point>& to, const QString& words,
                   const OrbitCamera& camera, const QRectF& area);

/// Paints a ring around a place that was chosen, with its name.
void paint_chosen_place(QPainter& painter, const Point& at, const QString& name, const OrbitCamera& camera, const QRectF& area);

}  // namespace seamward::viewer
