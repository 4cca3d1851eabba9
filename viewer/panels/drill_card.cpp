// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/drill_card.h"

#include <QEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <utility>

#include "document/translations.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr int pad = 12;

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}

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
    : QAbstractButton(parent), path_(path), head_(std::move(head)) {
    setObjectName("drill_" + QFileInfo(path).completeBaseName());
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    retranslate();
}

void DrillCard::retranslate() {
    if (const auto head = drill_head(path_)) head_ = *head;  // how hard it is, in the language spoken
    title_ = QString::fromStdString(head_.title.in(spoken() == "es" ? Language::spanish : Language::english));
    line_ = head_.difficulty;
    setAccessibleName(title_);
    setAccessibleDescription(line_);
    setToolTip(tr("Do this drill"));
    updateGeometry();
    update();
}

void DrillCard::changeEvent(QEvent* event) {
    QAbstractButton::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
    if (event->type() == QEvent::FontChange) updateGeometry();
}

DrillCard::Layout DrillCard::layout(int width) const {
    Layout to;
    const QFontMetrics strong(bold(font())), plain(font());
    const int side = strong.height() * 2;
    to.sign = QRect(pad, pad, side, side);
    const int left = to.sign.right() + pad;
    const int inside = std::max(60, width - left - pad);
    const auto height_of = [&](const QFontMetrics& metrics, const QString& text) {
        return metrics.boundingRect(QRect(0, 0, inside, 10'000), Qt::TextWordWrap, text).height();
    };
    to.title = QRect(left, pad - 2, inside, height_of(strong, title_));
    to.line = QRect(left, to.title.bottom() + 3, inside, height_of(plain, line_));
    to.height = std::max(to.sign.bottom(), to.line.bottom()) + pad;
    return to;
}

QSize DrillCard::sizeHint() const { return {260, layout(260).height}; }

int DrillCard::heightForWidth(int width) const { return layout(width).height; }

void DrillCard::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

void DrillCard::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Layout at = layout(width());
    const bool marked = hasFocus() || underMouse();
    painter.setPen(QPen(marked ? palette::way : palette::hairline, hasFocus() ? 2.5 : 1.2));
    painter.setBrush(isDown() ? palette::chosen_row : palette::card);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 10, 10);
    paint_glass(painter, at.sign);
    painter.setPen(palette::ink);
    painter.setFont(bold(font()));
    painter.drawText(at.title, Qt::TextWordWrap, title_);
    painter.setPen(palette::soft_ink);
    painter.setFont(font());
    painter.drawText(at.line, Qt::TextWordWrap, line_);
}

}  // namespace seamward::viewer
