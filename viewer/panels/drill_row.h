// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QListWidgetItem>
#include <QStyledItemDelegate>

#include "document/drill_signs.h"

namespace seamward::viewer {

/// Paints a place of a drill as a row: its sign, number and name, the verdict in a word or two, and notes under them; or a
/// heading between rows. Rows are as high as their words need at the list's width; nothing is cut off.
class DrillRow : public QStyledItemDelegate {
    Q_OBJECT

public:
    enum Role {
        place = Qt::UserRole,  ///< its position in the drill, or -1
        title,
        verdict,
        notes,
        sign,    ///< a PlaceSign
        heading  ///< whether the row is one
    };

    using QStyledItemDelegate::QStyledItemDelegate;

    /// Sets what a row says, and the sentence for screen readers.
    static void fill(QListWidgetItem& row, int place, const QString& title, const QString& verdict, const QString& notes,
                     PlaceSign sign);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace seamward::viewer
