// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/drill_card.h"

#include <QPainter>
#include <algorithm>
#include <utility>

#include "document/translations.h"
#include "layers/palette.h"
#include "panels/row_look.h"

namespace seamward::viewer {

namespace {

/// A gable under a round glass with a handle.
void paint_glass(QPainter& painter, const QRectF& in) {
    const double u = in.width() / 10;
    const auto at = [&](double x, double y) { return in.topLeft() + QPointF(x * u, y * u); };
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette::outline, u * 0.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(QPolygonF({at(1.9, 4.6), at(4.2, 2.7), at(6.5, 4.6)}));
    painter.drawPolyline(QPolygonF({at(2.7, 4.4), at(2.7, 6), at(5.7, 6), at(5.7, 4.4)}));
    painter.setPen(QPen(palette::way, u * 0.9, Qt::SolidLine, Qt::RoundCap));
    painter.drawEllipse(QRectF(at(0.5, 0.5), at(7.9, 7.9)));
    painter.drawLine(at(6.9, 6.9), at(9.4, 9.4));
}

}  // namespace

DrillCard::DrillCard(const QString& path, DrillHead head, QWidget* parent)
    : FileCard(path, "drill_", parent), head_(std::move(head)) {
    DrillCard::retranslate();
}

void DrillCard::retranslate() {
    if (const auto head = drill_head(path())) head_ = *head;  // how hard it is, in the language spoken
    title_ = QString::fromStdString(head_.title.in(spoken() == "es" ? Language::spanish : Language::english));
    line_ = head_.difficulty;
    say(title_, line_, tr("Do this drill"));
}

DrillCard::Layout DrillCard::layout(int width) const {
    Layout to;
    const QFontMetrics strong(bold(font())), plain(font());
    const int side = strong.height() * 2;
    to.sign = QRect(pad, pad, side, side);
    const int left = to.sign.right() + pad;
    const int inside = std::max(60, width - left - pad);
    to.title = QRect(left, pad - 2, inside, text_height(strong, inside, title_));
    to.line = QRect(left, to.title.bottom() + 3, inside, text_height(plain, inside, line_));
    to.height = std::max(to.sign.bottom(), to.line.bottom()) + pad;
    return to;
}

void DrillCard::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Layout at = layout(width());
    painter.setPen(edge());
    painter.setBrush(ground());
    painter.drawRoundedRect(border(), corner, corner);
    paint_glass(painter, at.sign);
    paint_words(painter, at.title, title_, at.line, line_);
}

}  // namespace seamward::viewer
