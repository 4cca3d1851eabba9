// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/lettering.h"

#include <QFontMetricsF>
#include <array>

#include "layers/palette.h"

namespace seamward::viewer::lettering {

namespace {

QFont font(const char* family, int height) {
    QFont one(QString::fromLatin1(family));
    one.setPixelSize(height);
    one.setHintingPreference(QFont::PreferNoHinting);
    one.setStyleStrategy(QFont::PreferAntialias);
    return one;
}

}  // namespace

QFont title() {
    QFont one = font("DejaVu Serif", 31);
    one.setBold(true);
    return one;
}

QFont words(int height, bool bold) {
    QFont one = font("DejaVu Sans", height);
    one.setBold(bold);
    return one;
}

QFont slanted(int height) {
    QFont one = font("DejaVu Sans", height);
    one.setItalic(true);
    return one;
}

double width_of(const QFont& font, const QString& text) { return QFontMetricsF(font).horizontalAdvance(text); }

double height_of(const QFont& font) { return QFontMetricsF(font).height(); }

void paint_card(QPainter& painter, const QRectF& place, const QColor& fill, const QColor& border, double radius) {
    painter.setPen(Qt::NoPen);
    for (int i = 3; i > 0; --i) {
        painter.setBrush(QColor(70, 52, 30, 11));
        painter.drawRoundedRect(place.adjusted(-i, -i + 2, i, i + 2), radius + i, radius + i);
    }
    painter.setPen(QPen(border, 1.2));
    painter.setBrush(fill);
    painter.drawRoundedRect(place, radius, radius);
}

void paint_disc(QPainter& painter, const QPointF& middle, double radius, const QString& number, bool smallest) {
    painter.setPen(QPen(light_paper, 2));
    painter.setBrush(smallest ? palette::smallest : palette::way);
    painter.drawEllipse(middle, radius, radius);
    painter.setPen(smallest ? palette::ink : light_paper);
    painter.setFont(words(number.size() > 2 ? 12 : 15, true));
    painter.drawText(QRectF(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius), Qt::AlignCenter, number);
}

void paint_ring(QPainter& painter, const QPointF& middle, double radius) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(light_paper, 8));
    painter.drawEllipse(middle, radius, radius);
    painter.setPen(QPen(palette::smallest, 4.5));
    painter.drawEllipse(middle, radius, radius);
}

void paint_dot(QPainter& painter, const QPointF& middle) {
    painter.setPen(QPen(palette::way, 2.6));
    painter.setBrush(light_paper);
    painter.drawEllipse(middle, 5.0, 5.0);
}

void paint_tick(QPainter& painter, const QPointF& middle, double size) {
    const double half = size / 2;
    painter.setPen(QPen(closed_green, 1.6));
    painter.setBrush(light_paper);
    painter.drawRoundedRect(QRectF(middle.x() - half, middle.y() - half, size, size), size * 0.25, size * 0.25);
    painter.setPen(QPen(closed_green, size * 0.15, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const std::array<QPointF, 3> tick{middle + QPointF(-0.24, 0.02) * size, middle + QPointF(-0.06, 0.22) * size,
                                      middle + QPointF(0.26, -0.22) * size};
    painter.drawPolyline(tick.data(), static_cast<int>(tick.size()));
}

}  // namespace seamward::viewer::lettering
