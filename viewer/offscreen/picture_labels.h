// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QRectF>
#include <span>
#include <vector>

#include "offscreen/picture_story.h"
#include "offscreen/sight.h"

namespace seamward::viewer {

/// A label with its place in the picture, in the picture's units.
struct PlacedLabel {
    enum class Kind : std::uint8_t { smallest, step, end, layer, room, air, tick };
    Kind kind = Kind::step;
    QString number, text, more;
    QPointF anchor;  ///< the point in the picture that it speaks of; of a room: on its floor
    QRectF place;
    bool is_smallest = false;
    double ring = 0;         ///< radius of the ring around the smallest gap
    bool is_hidden = false;  ///< of a tick: what it marks lies behind something
    double flat = 1;         ///< of a room: how high a circle on its floor is in the picture, as a share of its width
};

/// Places for the labels of a story: inside of `area`, off `taken`, none over another; one for which there is no such place is
/// left out (the legend has it). `line` is the shown way.
[[nodiscard]] std::vector<PlacedLabel> placed_labels(const PictureStory& story, std::span<const Point> line,
                                                     const OrbitCamera& camera, const QSizeF& sheet, const QRectF& area,
                                                     std::span<const QRectF> taken);

void paint_labels(QPainter& painter, std::span<const PlacedLabel> labels);

}  // namespace seamward::viewer
