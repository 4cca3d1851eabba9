// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRectF>
#include <optional>
#include <span>
#include <vector>

namespace seamward::viewer {

/// A label to place: pixels, y down.
struct LabelWish {
    QPointF anchor;
    QSizeF size;
    double away = 0;      ///< from the anchor to the label's border, at least
    bool pinned = false;  ///< stands with its upper left corner at the anchor, whatever is there
};

/// What labels should not cover: a point of a line, or a disc. Pixels.
struct KeptClear {
    QPointF at;
    double radius = 0;
};

/// A place for each label, inside `area`, near its anchor, free of the labels before it and, as well as may be, of
/// `keep_clear`, discs before points. The more important labels come first. O(labels * (labels + kept clear)).
[[nodiscard]] std::vector<QRectF> place_labels(std::span<const LabelWish> wishes, std::span<const KeptClear> keep_clear,
                                               const QRectF& area);

/// A place for a label that can be done without: right at its anchor, or else a little beside it; nothing when
/// each would touch one of `taken` or `keep_clear` or leave `area`.
[[nodiscard]] std::optional<QRectF> free_place(const LabelWish& wish, std::span<const QRectF> taken,
                                               std::span<const KeptClear> keep_clear, const QRectF& area);

}  // namespace seamward::viewer
