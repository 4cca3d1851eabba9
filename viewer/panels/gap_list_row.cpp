// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/gap_list_row.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QScrollBar>
#include <QStyle>
#include <algorithm>

#include "layers/palette.h"
#include "panels/row_look.h"

namespace seamward::viewer {

namespace {

constexpr int pad = 12;

/// Where the words of a row stand.
struct Layout {
    QRect sign, name, width, below;
    int height = 0;
};

QString below_text(const QModelIndex& index) {
    return GapListRow::tr("%1 · %2", "how known, sides of a gap")
        .arg(index.data(GapListRow::known).toString(), index.data(GapListRow::sides).toString());
}

Layout layout(const QRect& row, const QFont& font, const QModelIndex& index) {
    const QFontMetrics strong(bold(font)), plain(font);
    Layout to;
    const int side = strong.ascent();
    const int left = row.left() + pad + side + 10;
    const int inside = std::max(90, row.right() - pad - left);
    int y = row.top() + 7;
    to.sign = QRect(row.left() + pad, y + (strong.height() - side) / 2, side, side);
    const QString name = index.data(GapListRow::name).toString();
    const int width = strong.horizontalAdvance(index.data(GapListRow::width).toString()) + 2;
    constexpr int least_letters = 14;  // of a name beside its width
    const bool side_by_side = width + 10 + std::max(least_letters * strong.averageCharWidth(), inside * 2 / 5) <= inside;
    const int name_width = side_by_side ? inside - width - 10 : inside;
    const auto height_of = [](const QFontMetrics& metrics, int wide, const QString& text) {
        return metrics.boundingRect(QRect(0, 0, wide, 4000), Qt::TextWordWrap, text).height();
    };
    to.name = QRect(left, y, name_width, height_of(strong, name_width, name));
    y += to.name.height();
    to.width = QRect(left + inside - width, to.name.top(), width, strong.height());
    if (!side_by_side) {
        to.width = QRect(left, y, inside, strong.height());
        y += strong.height();
    }
    to.below = QRect(left, y + 1, inside, height_of(plain, inside, below_text(index)));
    to.height = to.below.bottom() + 9 - row.top();
    return to;
}

/// Told apart by their filling: full when measured, half when from drawings, empty when nobody measured, crossed out when closed.
void paint_sign(QPainter* painter, const QRect& box, int sign) {
    const QRectF round = QRectF(box).adjusted(1.5, 1.5, -1.5, -1.5);
    const QColor color = sign == GapListRow::unmeasured ? palette::open_sign
                         : sign == GapListRow::closed   ? palette::shut_sign
                                                        : palette::ink;
    painter->setPen(QPen(color, 1.8));
    painter->setBrush(Qt::NoBrush);
    if (sign == GapListRow::measured) painter->setBrush(color);
    painter->drawEllipse(round);
    if (sign == GapListRow::drawn) {
        painter->setBrush(color);
        painter->drawPie(round, 90 * 16, 180 * 16);
    }
    if (sign == GapListRow::closed) {
        painter->drawLine(round.topLeft() + QPointF(round.width() * 0.15, round.height() * 0.85),
                          round.topRight() + QPointF(-round.width() * 0.15, round.height() * 0.15));
    }
}

}  // namespace

void GapListRow::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Layout at = layout(QRect(option.rect.topLeft(), QSize(width_for_rows(option), 0)), option.font, index);
    const bool chosen = (option.state & QStyle::State_Selected) != 0;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (chosen) paint_chosen_ground(*painter, option);
    painter->setPen(palette::hairline);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    paint_sign(painter, at.sign, index.data(sign).toInt());
    painter->setFont(bold(option.font));
    painter->setPen(palette::ink);
    painter->drawText(at.name, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, index.data(name).toString());
    const Qt::Alignment side = at.width.top() == at.name.top() ? Qt::AlignRight : Qt::AlignLeft;
    painter->drawText(at.width, static_cast<int>(side | Qt::AlignTop), index.data(width).toString());
    painter->setFont(option.font);
    painter->setPen(palette::soft_ink);
    painter->drawText(at.below, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, below_text(index));
    if (chosen) paint_row_focus(*painter, option);
    painter->restore();
}

QSize GapListRow::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const int wide = width_for_rows(option);
    return {wide, layout(QRect(0, 0, wide, 0), option.font, index).height};
}

}  // namespace seamward::viewer
