// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRectF>
#include <span>
#include <vector>

namespace seamward::viewer {

/// A label to place: pixels, y down.
struct LabelWish {
    QPointF anchor;
    QSizeF size;
    double away = 0;  ///< from the anchor to the label's border, at least
};

/// A place for each label, inside `area`, near its anchor, free of the labels before it and, as well as may be, of the
/// points `keep_clear`. The more important labels come first. O(labels * (labels + points)).
[[nodiscard]] std::vector<QRectF> place_labels(std::span<const LabelWish> wishes, std::span<const QPointF> keep_clear,
                                               const QRectF& area);

}  // namespace seamward::viewer
