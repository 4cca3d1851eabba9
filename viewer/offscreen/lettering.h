// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QRectF>
#include <QString>

namespace seamward::viewer {

/// Letters and small drawings of a picture. Sizes are the picture's units: a picture of 1600 by 1100 pixels has a unit of 1.
namespace lettering {

inline const QColor light_paper{0xff, 0xfd, 0xf9};
inline const QColor other_way{0x7f, 0x93, 0xa8};
inline const QColor closed_green{0x2f, 0x7d, 0x4f};

[[nodiscard]] QFont title();
[[nodiscard]] QFont words(int height, bool bold = false);
[[nodiscard]] QFont slanted(int height);

[[nodiscard]] double width_of(const QFont& font, const QString& text);
[[nodiscard]] double height_of(const QFont& font);

/// A sheet of paper with a soft shadow.
void paint_card(QPainter& painter, const QRectF& place, const QColor& fill, const QColor& border, double radius);

/// A disc with a number.
void paint_disc(QPainter& painter, const QPointF& middle, double radius, const QString& number, bool smallest);

/// The ring around the smallest gap.
void paint_ring(QPainter& painter, const QPointF& middle, double radius);

/// The dot on any other gap of the shown way.
void paint_dot(QPainter& painter, const QPointF& middle);

/// The mark of a gap that is closed: a tick in a square with round corners.
void paint_tick(QPainter& painter, const QPointF& middle, double size);

}  // namespace lettering
}  // namespace seamward::viewer
