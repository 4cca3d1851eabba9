// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QPainter>
#include <QString>
#include <cstdint>
#include <span>

#include "layers/orbit_camera.h"

namespace seamward::viewer {

/// Words or a number in the picture, tied to a point of the scene.
struct Callout {
    enum class Kind : std::uint8_t {
        smallest,  ///< a box with a heading and a text under it
        step,      ///< a number in a disc
        end,       ///< a few words: where the way comes from, where it goes
    };
    Kind kind = Kind::step;
    Point at;                  ///< scene
    QString heading;           ///< the number, or the words
    QString text;              ///< only of `smallest`
    bool is_smallest = false;  ///< a `step` that is the smallest gap
};

/// Paints callouts where they cover neither each other nor, as well as may be, the points `keep_clear` (scene). The
/// most important come first; one whose point lies outside the picture is left out. `area` in pixels, all of the picture.
void paint_callouts(QPainter& painter, std::span<const Callout> callouts, std::span<const Point> keep_clear,
                    const OrbitCamera& camera, const QRectF& area);

}  // namespace seamward::viewer
