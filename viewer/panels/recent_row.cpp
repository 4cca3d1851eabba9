// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/recent_row.h"

#include <QDir>
#include <QEvent>
#include <QKeyEvent>
#include <QLocale>
#include <QPainter>
#include <utility>

#include "layers/palette.h"
#include "panels/row_look.h"

namespace seamward::viewer {

namespace {

constexpr int pad = 10;

}  // namespace

RecentRow::RecentRow(RecentJob job, QWidget* parent)
    : QAbstractButton(parent), job_(std::move(job)), remove_(new QToolButton(this)) {
    setObjectName("recent_row");
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setCursor(job_.missing ? Qt::ArrowCursor : Qt::PointingHandCursor);
    remove_->setObjectName("remove_recent");
    remove_->setAutoRaise(true);
    remove_->setText(QStringLiteral("\u00d7"));
    remove_->setCursor(Qt::ArrowCursor);
    remove_->setFocusPolicy(Qt::NoFocus);  // the Delete key does the same
    remove_->setVisible(job_.missing);
    connect(this, &QAbstractButton::clicked, this, [this] {
        if (!job_.missing) emit open_wanted(job_.path);
    });
    connect(remove_, &QToolButton::clicked, this, [this] { emit remove_wanted(job_.path); });
    retranslate();
}

void RecentRow::retranslate() {
    const QString day =
        job_.surveyed.isEmpty() ? tr("opened %1").arg(QLocale().toString(job_.opened, QLocale::ShortFormat)) : job_.surveyed;
    if (job_.missing)
        second_line_ = tr("Gone: there is no such file now");
    else if (job_.place.isEmpty())
        second_line_ = day;
    else
        second_line_ = tr("%1, %2", "place, day").arg(job_.place, day);
    setAccessibleName(tr("%1, %2", "job, what is known of it").arg(job_.name, second_line_));
    setToolTip(QDir::toNativeSeparators(job_.path));
    remove_->setToolTip(tr("Take it off this list; the file stays"));
    remove_->setAccessibleName(tr("Take %1 off the list").arg(job_.name));
    updateGeometry();
    update();
}

void RecentRow::changeEvent(QEvent* event) {
    QAbstractButton::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
    if (event->type() == QEvent::FontChange) updateGeometry();
}

QSize RecentRow::sizeHint() const { return {220, QFontMetrics(bold(font())).height() + fontMetrics().height() + 14}; }

void RecentRow::resizeEvent(QResizeEvent* event) {
    QAbstractButton::resizeEvent(event);
    const int side = fontMetrics().height() + 8;
    remove_->setGeometry(width() - side - 4, (height() - side) / 2, side, side);
}

bool RecentRow::event(QEvent* event) {
    const bool marked = event->type() == QEvent::HoverEnter || event->type() == QEvent::FocusIn;
    const bool left = event->type() == QEvent::HoverLeave || event->type() == QEvent::FocusOut;
    if (marked) remove_->show();
    if (left) remove_->setVisible(job_.missing || hasFocus());
    return QAbstractButton::event(event);
}

void RecentRow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Delete)
        emit remove_wanted(job_.path);
    else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

void RecentRow::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
    const bool marked = !job_.missing && (hasFocus() || underMouse());
    if (marked || isDown()) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette::chosen_row);
        painter.drawRoundedRect(box, 6, 6);
    }
    if (hasFocus()) {
        painter.setPen(QPen(palette::way, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box, 6, 6);
    }
    const int wide = remove_->x() - 2 * pad;
    const QFont strong = bold(font());
    const QFontMetrics metrics(strong);
    painter.setFont(strong);
    painter.setPen(job_.missing ? palette::soft_ink : palette::ink);
    painter.drawText(QRect(pad, 6, wide, metrics.height()), Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(job_.name, Qt::ElideRight, wide));
    QFont plain = font();
    plain.setItalic(job_.missing);
    painter.setFont(plain);
    painter.setPen(palette::soft_ink);
    painter.drawText(QRect(pad, 7 + metrics.height(), wide, fontMetrics().height()), Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(plain).elidedText(second_line_, Qt::ElideRight, wide));
}

}  // namespace seamward::viewer
