// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/choice_box.h"

#include <QHelpEvent>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <QToolTip>

namespace seamward::viewer {

QString ChoiceBox::shown_text() const {
    QStyleOptionComboBox option;
    initStyleOption(&option);
    const QRect field = style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this);
    return fontMetrics().elidedText(currentText(), Qt::ElideRight, field.width() - 2);  // the style leaves a pixel on each side
}

void ChoiceBox::paintEvent(QPaintEvent* /*event*/) {
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    option.currentText = shown_text();
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

bool ChoiceBox::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && shown_text() != currentText()) {
        const QStringList lines{currentText(), toolTip()};
        QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), toolTip().isEmpty() ? currentText() : lines.join('\n'),
                           this);
        return true;
    }
    return QComboBox::event(event);
}

}  // namespace seamward::viewer
