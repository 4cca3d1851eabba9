// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/drill_row.h"

#include <QPainter>
#include <algorithm>

#include "layers/palette.h"
#include "layers/place_marks.h"
#include "panels/row_look.h"

namespace seamward::viewer {

namespace {

constexpr int pad = 14;

/// Where the words of a row stand.
struct Layout {
    QRect sign, title, verdict, notes;
    int height = 0;
};

Layout layout(const QRect& row, const QFont& font, const QModelIndex& index) {
    const QFontMetrics strong(bold(font)), plain(font);
    Layout to;
    const bool heading = index.data(DrillRow::heading).toBool();
    const int side = strong.height();
    const int left = row.left() + pad + (heading ? 0 : side + 10);
    const int inside = std::max(90, row.right() - pad - left);
    int y = row.top() + (heading ? 14 : 8);
    to.sign = QRect(row.left() + pad, y, side, side);
    const QString title = index.data(DrillRow::title).toString();
    const QString verdict = index.data(DrillRow::verdict).toString();
    const int width = verdict.isEmpty() ? 0 : strong.horizontalAdvance(verdict) + 2;
    const bool beside = width == 0 || width + 12 + inside * 2 / 5 <= inside;
    const int title_width = width > 0 && beside ? inside - width - 12 : inside;
    to.title = QRect(left, y, title_width, text_height(strong, title_width, title));
    y += to.title.height();
    if (beside) {
        to.verdict = QRect(left + inside - width, to.title.top(), width, strong.height());
    } else {
        to.verdict = QRect(left, y, inside, text_height(strong, inside, verdict));
        y += to.verdict.height();
    }
    const QString notes = index.data(DrillRow::notes).toString();
    to.notes = QRect(left, y + 2, inside, text_height(plain, inside, notes));
    to.height = (notes.isEmpty() ? y : to.notes.bottom()) + (heading ? 6 : 10) - row.top();
    return to;
}

}  // namespace

void DrillRow::fill(QListWidgetItem& row, int place, const QString& title, const QString& verdict, const QString& notes,
                    PlaceSign sign) {
    row.setData(DrillRow::place, place);
    row.setData(DrillRow::title, title);
    row.setData(DrillRow::verdict, verdict);
    row.setData(DrillRow::notes, notes);
    row.setData(DrillRow::sign, static_cast<int>(sign));
    QStringList all{title};
    for (const QString& one : {verdict, notes}) {
        if (!one.isEmpty()) all << one;
    }
    row.setText(all.join(". "));
}

void DrillRow::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Layout at = layout(QRect(option.rect.topLeft(), QSize(width_for_rows(option), 0)), option.font, index);
    const bool is_heading = index.data(heading).toBool();
    const bool chosen = (option.state & QStyle::State_Selected) != 0 && !is_heading;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (chosen) paint_chosen_ground(*painter, option);
    painter->setPen(palette::hairline);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (!is_heading) paint_place_sign(*painter, static_cast<PlaceSign>(index.data(sign).toInt()), at.sign);
    painter->setFont(bold(option.font));
    painter->setPen(is_heading ? palette::soft_ink : palette::ink);
    painter->drawText(at.title, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, index.data(title).toString());
    painter->setPen(palette::ink);
    const Qt::Alignment side = at.verdict.top() == at.title.top() ? Qt::AlignRight : Qt::AlignLeft;
    painter->drawText(at.verdict, static_cast<int>(side | Qt::AlignTop) | Qt::TextWordWrap, index.data(verdict).toString());
    painter->setFont(option.font);
    painter->setPen(palette::soft_ink);
    painter->drawText(at.notes, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, index.data(notes).toString());
    if (chosen) paint_row_focus(*painter, option);
    painter->restore();
}

QSize DrillRow::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const int wide = width_for_rows(option);
    return {wide, layout(QRect(0, 0, wide, 0), option.font, index).height};
}

}  // namespace seamward::viewer
