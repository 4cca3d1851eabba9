// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QPainter>
#include <QString>
#include <cstdint>
#include <optional>
#include <span>

#include "layers/orbit_camera.h"

namespace seamward::viewer {

/// Words or a number in the picture, tied to a point of the scene.
struct Callout {
    enum class Kind : std::uint8_t {
        smallest,  ///< a box with a heading and a text under it
        step,      ///< a number in a disc
        end,       ///< a few words: where the way comes from, where it goes
        axis,      ///< a letter before the tip of an arrow on the ground, left out where something else stands
        room,      ///< a faint name, left out likewise
    };
    Kind kind = Kind::step;
    /// Scene. Nothing: the position is not given, and the words stand in a corner of the picture.
    std::optional<Point> at;
    QString heading;           ///< the number, or the words
    QString text;              ///< only of `smallest`
    bool is_smallest = false;  ///< a `step` that is the smallest gap
};

/// What callouts should not cover: a point of a line, or a ball. Scene, meters.
struct Visible {
    Point at;
    double radius = 0;
};

/// Paints callouts where they cover neither each other nor, as well as may be, what is `keep_clear`; faint ones keep off
/// `others` too. The most important come first; one whose point lies outside the picture is left out. `area` in pixels,
/// all of the picture.
void paint_callouts(QPainter& painter, std::span<const Callout> callouts, std::span<const Visible> keep_clear,
                    std::span<const Visible> others, const OrbitCamera& camera, const QRectF& area);

}  // namespace seamward::viewer
