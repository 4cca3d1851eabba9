// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/row_look.h"

#include <QAbstractItemView>
#include <QScrollBar>

#include "layers/palette.h"

namespace seamward::viewer {

int width_for_rows(const QStyleOptionViewItem& option) {
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    if (view == nullptr) return option.rect.width();
    return view->width() - view->style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, view->verticalScrollBar());
}

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}

int text_height(const QFontMetrics& metrics, int width, const QString& text) {
    constexpr int any_height = 20'000;
    return text.isEmpty() ? 0 : metrics.boundingRect(QRect(0, 0, width, any_height), Qt::TextWordWrap, text).height();
}

void paint_chosen_ground(QPainter& painter, const QStyleOptionViewItem& option) {
    painter.fillRect(option.rect, palette::chosen_row);
    painter.fillRect(QRect(option.rect.left(), option.rect.top(), 4, option.rect.height()), palette::way);
}

void paint_row_focus(QPainter& painter, const QStyleOptionViewItem& option) {
    if ((option.state & QStyle::State_HasFocus) == 0) return;
    painter.setPen(QPen(palette::way, 1, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(option.rect.adjusted(6, 2, -3, -4));
}

}  // namespace seamward::viewer
