// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace seamward::viewer {

/// Paints a row of the list of gaps: a round sign of how its width is known, its name, its width, and what is known in words.
class GapListRow : public QStyledItemDelegate {
    Q_OBJECT

public:
    enum Role {
        gap = Qt::UserRole,  ///< its index
        name,
        width,
        sides,
        known,
        sign  ///< a Sign
    };
    enum Sign { measured, drawn, unmeasured, closed };

    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace seamward::viewer
