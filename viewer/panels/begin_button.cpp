// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/begin_button.h"

#include <QPainter>

#include "layers/palette.h"
#include "panels/row_look.h"

namespace seamward::viewer {

namespace {

constexpr int sign_width = 44;

}  // namespace

BeginButton::BeginButton(Sign sign, QWidget* parent) : QPushButton(parent), sign_(sign) {
    setAutoDefault(true);
    setAttribute(Qt::WA_Hover);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize BeginButton::sizeHint() const {
    const QFontMetrics metrics(bold(font()));
    return {sign_width + metrics.boundingRect(QRect(), Qt::TextShowMnemonic, text()).width() + 12, metrics.height() + 22};
}

void BeginButton::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool first = sign_ == Sign::new_house;
    const bool marked = underMouse() || hasFocus();
    QColor fill = first ? palette::way : palette::card;
    if (isDown()) fill = first ? palette::way.darker(125) : palette::chosen_row;
    const QRectF box = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
    painter.setPen(QPen(first || marked ? palette::way : palette::grid, 1.4));
    painter.setBrush(fill);
    painter.drawRoundedRect(box, 8, 8);
    if (hasFocus()) {
        painter.setPen(QPen(first ? palette::card : palette::way, 1.2, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box.adjusted(3.5, 3.5, -3.5, -3.5), 5, 5);
    }
    const QColor ink = first ? palette::card : palette::ink;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(first ? ink : palette::way, 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    paint_sign(painter, QPointF(sign_width / 2.0, height() / 2.0), 1.15);
    painter.setPen(ink);
    painter.setFont(bold(font()));
    painter.drawText(rect().adjusted(sign_width, 0, -8, 0), Qt::AlignVCenter | Qt::AlignLeft | Qt::TextShowMnemonic, text());
}

void BeginButton::paint_sign(QPainter& painter, const QPointF& middle, double unit) const {
    const auto at = [&](double x, double y) { return middle + QPointF(x, y) * unit; };
    switch (sign_) {
        case Sign::new_house:
            painter.drawPolyline(QPolygonF({at(-8, 0), at(0, -7), at(8, 0)}));
            painter.drawPolyline(QPolygonF({at(-6, -1.5), at(-6, 7), at(6, 7), at(6, -1.5)}));
            painter.drawLine(at(0, 0), at(0, 5));
            painter.drawLine(at(-2.5, 2.5), at(2.5, 2.5));
            return;
        case Sign::job:
            painter.drawPolygon(QPolygonF({at(-5.5, -7.5), at(2, -7.5), at(5.5, -4), at(5.5, 7.5), at(-5.5, 7.5)}));
            for (const double y : {-2.0, 1.0, 4.0}) painter.drawLine(at(-3, y), at(3, y));
            return;
        case Sign::model:
            painter.drawPolygon(QPolygonF({at(0, -8), at(7, -4), at(7, 4), at(0, 8), at(-7, 4), at(-7, -4)}));
            painter.drawPolyline(QPolygonF({at(-7, -4), at(0, 0), at(7, -4)}));
            painter.drawLine(at(0, 0), at(0, 8));
            return;
    }
}

}  // namespace seamward::viewer
