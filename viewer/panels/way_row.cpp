// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/way_row.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QScrollBar>
#include <QStyle>
#include <algorithm>

#include "layers/palette.h"
#include "panels/row_look.h"

namespace seamward::viewer {

namespace {

constexpr int pad = 10;

/// Where the words of a row stand.
struct Layout {
    QRect number, room, width, gap, stays;
    int height = 0;
};

Layout layout(const QRect& row, const QFont& font, const QModelIndex& index) {
    const QFontMetrics strong(bold(font));
    const QFontMetrics plain(font);
    Layout to;
    const int number_width = strong.horizontalAdvance("00") + 18;
    const int left = row.left() + pad + number_width;
    const int inside = std::max(80, row.right() - pad - left);
    const int width = strong.horizontalAdvance(index.data(WayRow::width).toString()) + 2;
    const QString room = index.data(WayRow::room).toString();
    int y = row.top() + 8;
    const bool side_by_side = strong.horizontalAdvance(room) + 12 + width <= inside;
    const int room_width = side_by_side ? inside - width : inside;
    const int room_height = strong.boundingRect(QRect(0, 0, room_width, 1000), Qt::TextWordWrap, room).height();
    to.room = QRect(left, y, room_width, room_height);
    to.number = QRect(row.left() + pad, y, number_width - 8, strong.height());
    if (side_by_side) {
        to.width = QRect(left + inside - width, y, width, strong.height());
    } else {
        to.width = QRect(left, y + room_height, inside, strong.height());
        y += strong.height();
    }
    y += room_height + 2;
    const auto place = [&](WayRow::Role role) {
        const QString text = index.data(role).toString();
        const int height = text.isEmpty() ? 0 : plain.boundingRect(QRect(0, 0, inside, 1000), Qt::TextWordWrap, text).height();
        const QRect rect(left, y, inside, height);
        y += height;
        return rect;
    };
    to.gap = place(WayRow::gap);
    to.stays = place(WayRow::stays);
    to.height = y + 9 - row.top();
    return to;
}

}  // namespace

void WayRow::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Layout at = layout(QRect(option.rect.topLeft(), QSize(width_for_rows(option), 0)), option.font, index);
    const bool chosen = (option.state & QStyle::State_Selected) != 0;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (chosen) paint_chosen_ground(*painter, option);
    painter->setPen(palette::hairline);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    painter->setFont(bold(option.font));
    painter->setPen(chosen ? palette::way : palette::soft_ink);
    painter->drawText(at.number, Qt::AlignRight | Qt::AlignTop, QString::number(index.row() + 1));
    painter->setPen(palette::ink);
    painter->drawText(at.room, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, index.data(room).toString());
    const Qt::Alignment side = at.width.top() == at.room.top() ? Qt::AlignRight : Qt::AlignLeft;
    painter->drawText(at.width, static_cast<int>(side | Qt::AlignTop), index.data(width).toString());
    painter->setFont(option.font);
    painter->setPen(palette::soft_ink);
    painter->drawText(at.gap, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, index.data(gap).toString());
    painter->setPen(palette::ink);
    painter->drawText(at.stays, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, index.data(stays).toString());
    if (chosen) paint_row_focus(*painter, option);
    painter->restore();
}

QSize WayRow::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const int wide = width_for_rows(option);
    return {wide, layout(QRect(0, 0, wide, 0), option.font, index).height};
}

}  // namespace seamward::viewer
