// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace seamward::viewer {

/// Paints a way in as a row of the list: its number, the room and the smallest gap's width, and under them the gap
/// and, darker, whether it must stay open. Rows are as high as their words need at the list's width; nothing is cut off.
class WayRow : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// What a row is made of, beside the sentence for screen readers.
    enum Role { room = Qt::UserRole, width, gap, stays };

    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace seamward::viewer
