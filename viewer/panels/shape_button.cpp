// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/shape_button.h"

#include <QPainter>
#include <algorithm>

#include "layers/palette.h"

namespace seamward::viewer {

namespace {

Loop sample(NewHouse::Shape shape) {
    if (shape == NewHouse::Shape::corners) return {{0, 0}, {11, 0}, {14, 4}, {9, 10}, {2, 8}};
    NewHouse house;
    house.shape = shape;
    house.length = 14;
    house.depth = shape == NewHouse::Shape::rectangle ? 9 : 6;
    house.wing_length = shape == NewHouse::Shape::u ? 4 : 5;
    return outline_of(house);
}

}  // namespace

ShapeButton::ShapeButton(NewHouse::Shape shape, QWidget* parent) : QAbstractButton(parent), shape_(shape) {
    setCheckable(true);
    setAttribute(Qt::WA_Hover);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize ShapeButton::sizeHint() const { return {fontMetrics().horizontalAdvance(text()) + 12, 46 + fontMetrics().height() + 6}; }

void ShapeButton::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
    painter.setPen(QPen(isChecked() || hasFocus() || underMouse() ? palette::way : palette::hairline, isChecked() ? 2.5 : 1.2,
                        hasFocus() && !isChecked() ? Qt::DotLine : Qt::SolidLine));
    painter.setBrush(isChecked() ? palette::chosen_row : palette::card);
    painter.drawRoundedRect(box, 7, 7);
    if (hasFocus() && isChecked()) {
        painter.setPen(QPen(palette::way, 1, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box.adjusted(4, 4, -4, -4), 5, 5);
    }
    const Loop outline = sample(shape_);
    const QPointF middle(width() / 2.0, 27);
    constexpr double scale = 2.6;
    const auto [low, high] = std::ranges::minmax(outline, {}, &Point2::y);
    QPolygonF plan;
    for (const Point2 corner : outline)
        plan << middle + QPointF((corner.x - 7) * scale, -(corner.y - (low.y + high.y) / 2) * scale);
    painter.setPen(QPen(isChecked() ? palette::way : palette::outline, 2, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.setBrush(palette::ground);
    painter.drawPolygon(plan);
    painter.setPen(palette::ink);
    QFont fitting = font();
    const double wide = fontMetrics().horizontalAdvance(text());
    if (wide > width() - 6) fitting.setPointSizeF(fitting.pointSizeF() * (width() - 6) / wide);
    painter.setFont(fitting);
    painter.drawText(QRect(0, 46, width(), fontMetrics().height() + 2), Qt::AlignHCenter | Qt::TextShowMnemonic, text());
}

}  // namespace seamward::viewer
