// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/file_card.h"

#include <QEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QPainter>

#include "layers/palette.h"
#include "panels/row_look.h"

namespace seamward::viewer {

FileCard::FileCard(const QString& path, const QString& called, QWidget* parent) : QAbstractButton(parent), path_(path) {
    setObjectName(called + QFileInfo(path).completeBaseName());
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

QSize FileCard::sizeHint() const {
    constexpr int usual_width = 260;
    return {usual_width, height_for(usual_width)};
}

void FileCard::say(const QString& title, const QString& line, const QString& tip) {
    setAccessibleName(title);
    setAccessibleDescription(line);
    setToolTip(tip);
    updateGeometry();
    update();
}

QColor FileCard::ground() const { return isDown() ? palette::chosen_row : palette::card; }

QPen FileCard::edge() const { return {hasFocus() || underMouse() ? palette::way : palette::hairline, hasFocus() ? 2.5 : 1.2}; }

void FileCard::paint_words(QPainter& painter, const QRect& title_at, const QString& title, const QRect& line_at,
                           const QString& line) const {
    painter.setPen(palette::ink);
    painter.setFont(bold(font()));
    painter.drawText(title_at, Qt::TextWordWrap, title);
    painter.setPen(palette::soft_ink);
    painter.setFont(font());
    painter.drawText(line_at, Qt::TextWordWrap, line);
}

void FileCard::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

void FileCard::changeEvent(QEvent* event) {
    QAbstractButton::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
    if (event->type() == QEvent::FontChange) updateGeometry();
}

}  // namespace seamward::viewer
