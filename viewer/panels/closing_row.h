// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>
#include <optional>

#include "base/survey.h"

namespace seamward::viewer {

/// Paints a row of the list of closings: a heading, a heading that folds, a note, or a closing with its box to tick, number, gap,
/// price, treatment and signs. Rows are as high as their words need at the list's width; nothing is cut off.
class ClosingRow : public QStyledItemDelegate {
    Q_OBJECT

public:
    enum Kind { heading, fold, closing, note, hosts_widget };
    /// What a row is made of, beside the sentence for screen readers and the box of Qt::CheckStateRole.
    enum Role {
        kind = Qt::UserRole,
        number,
        title,  ///< of any row
        below,  ///< under it: the treatment; the reason of a note
        price,
        cautions,  ///< "2 cautions"; empty: none
        waits,     ///< "waits until ..."; empty: it does not
        open,      ///< of a fold: whether what is under it shows
        gap,       ///< its index, or `no_gap`
        offer      ///< of a closing: position in the plan's offers
    };

    static constexpr int no_gap = -1;
    /// As the role `gap` has it.
    [[nodiscard]] static int gap_value(std::optional<GapIndex> gap) { return gap ? static_cast<int>(gap->value) : no_gap; }

    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    /// Where a click ticks, of a row at `row`: as high as the row.
    [[nodiscard]] static QRect tick_target(const QRect& row);

protected:
    /// The list ticks, not the row.
    bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                     const QModelIndex& index) override;
};

}  // namespace seamward::viewer
