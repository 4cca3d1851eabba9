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

void paint_row_focus(QPainter& painter, const QStyleOptionViewItem& option) {
    if ((option.state & QStyle::State_HasFocus) == 0) return;
    painter.setPen(QPen(palette::way, 1, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(option.rect.adjusted(6, 2, -3, -4));
}

}  // namespace seamward::viewer
