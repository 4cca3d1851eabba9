// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/closing_row.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QPainterPath>
#include <QScrollBar>
#include <QStyle>
#include <algorithm>

#include "layers/palette.h"
#include "panels/row_look.h"

namespace seamward::viewer {

namespace {

constexpr int pad = 18;
constexpr int target = 46;  ///< width of where a click ticks
constexpr int box = 20;
constexpr int sign = 16;

/// Where the words of a row stand.
struct Layout {
    QRect number, title, price, below, cautions, waits;
    int height = 0;
};

int text_height(const QFont& font, int width, const QString& text) {
    if (text.isEmpty()) return 0;
    return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10'000), Qt::TextWordWrap, text).height();
}

QString text_of(const QModelIndex& index, ClosingRow::Role role) { return index.data(role).toString(); }

Layout plain_layout(const QRect& row, const QFont& font, const QModelIndex& index) {
    const int kind = index.data(ClosingRow::kind).toInt();
    const bool strong = kind == ClosingRow::heading || kind == ClosingRow::fold;
    const int left = row.left() + pad + (kind == ClosingRow::fold ? sign + 6 : 0);
    const int inside = std::max(80, row.right() - pad - left);
    Layout to;
    int y = row.top() + (strong ? 14 : 7);
    to.title = QRect(left, y, inside, text_height(strong ? bold(font) : font, inside, text_of(index, ClosingRow::title)));
    y = to.title.bottom() + 3;
    to.below = QRect(left, y, inside, text_height(font, inside, text_of(index, ClosingRow::below)));
    to.height = y + to.below.height() + (strong ? 6 : 7) - row.top();
    return to;
}

Layout closing_layout(const QRect& row, const QFont& font, const QModelIndex& index) {
    const QFontMetrics strong(bold(font));
    const int number_width = strong.horizontalAdvance("000") + 2;
    const int left = row.left() + target + number_width + 8;
    const int inside = std::max(80, row.right() - pad - left);
    const int price_width = strong.horizontalAdvance(text_of(index, ClosingRow::price)) + 2;
    const int title_width = std::max(60, inside - price_width - 10);
    Layout to;
    int y = row.top() + 9;
    to.number = QRect(row.left() + target, y, number_width, strong.height());
    to.price = QRect(left + inside - price_width, y, price_width, strong.height());
    to.title = QRect(left, y, title_width, text_height(font, title_width, text_of(index, ClosingRow::title)));
    y = to.title.bottom() + 2;
    const auto place = [&](ClosingRow::Role role, int indent) {
        const int width = inside - indent;
        const QRect at(left + indent, y, width, text_height(font, width, text_of(index, role)));
        y += at.height() + (at.height() > 0 ? 2 : 0);
        return at;
    };
    to.below = place(ClosingRow::below, 0);
    to.cautions = place(ClosingRow::cautions, sign + 6);
    to.waits = place(ClosingRow::waits, sign + 6);
    to.height = std::max(44, y + 8 - row.top());
    return to;
}

Layout layout(const QRect& row, const QFont& font, const QModelIndex& index) {
    return index.data(ClosingRow::kind).toInt() == ClosingRow::closing ? closing_layout(row, font, index)
                                                                       : plain_layout(row, font, index);
}

void paint_box(QPainter& painter, const QRect& row, bool ticked) {
    const QRectF at(row.left() + (target - box) / 2 + 4, row.top() + 8, box, box);
    painter.setPen(QPen(ticked ? palette::way : palette::outline, 1.6));
    painter.setBrush(ticked ? palette::way : palette::paper_high);
    painter.drawRoundedRect(at, 4, 4);
    if (!ticked) return;
    QPainterPath hook(at.topLeft() + QPointF(5, 10.5));
    hook.lineTo(at.topLeft() + QPointF(8.8, 14.4));
    hook.lineTo(at.topLeft() + QPointF(15.2, 6));
    painter.setPen(QPen(palette::paper_high, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(hook);
}

/// A triangle with a stroke and a dot: something can hurt somebody.
void paint_caution(QPainter& painter, const QPointF& corner) {
    const QPolygonF triangle{{corner + QPointF(8, 1), corner + QPointF(15.5, 14.5), corner + QPointF(0.5, 14.5)}};
    painter.setPen(QPen(palette::ink, 1.3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(palette::smallest);
    painter.drawPolygon(triangle);
    painter.setPen(QPen(palette::ink, 1.8, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(corner + QPointF(8, 5.5), corner + QPointF(8, 9.5));
    painter.drawPoint(corner + QPointF(8, 12.3));
}

/// A clock's face: not yet.
void paint_waits(QPainter& painter, const QPointF& corner) {
    painter.setPen(QPen(palette::way, 1.6));
    painter.setBrush(palette::paper_high);
    painter.drawEllipse(QRectF(corner + QPointF(1, 1), QSizeF(14, 14)));
    painter.drawLine(corner + QPointF(8, 8), corner + QPointF(8, 4));
    painter.drawLine(corner + QPointF(8, 8), corner + QPointF(11, 9.5));
}

void paint_fold(QPainter& painter, const QPointF& middle, bool open) {
    const QPolygonF pointer = open ? QPolygonF{{{-5, -2.5}, {5, -2.5}, {0, 4}}} : QPolygonF{{{-2.5, -5}, {4, 0}, {-2.5, 5}}};
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette::ink);
    painter.drawPolygon(pointer.translated(middle));
}

void paint_closing(QPainter& painter, const Layout& at, const QRect& row, const QFont& font, const QModelIndex& index) {
    const bool ticked = index.data(Qt::CheckStateRole).toInt() == Qt::Checked;
    paint_box(painter, row, ticked);
    painter.setFont(bold(font));
    painter.setPen(ticked ? palette::way : palette::soft_ink);
    painter.drawText(at.number, Qt::AlignRight | Qt::AlignTop, text_of(index, ClosingRow::number));
    painter.setPen(palette::ink);
    painter.drawText(at.price, Qt::AlignRight | Qt::AlignTop, text_of(index, ClosingRow::price));
    painter.setFont(font);
    painter.drawText(at.title, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, text_of(index, ClosingRow::title));
    painter.drawText(at.cautions, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, text_of(index, ClosingRow::cautions));
    painter.drawText(at.waits, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, text_of(index, ClosingRow::waits));
    painter.setPen(palette::soft_ink);
    painter.drawText(at.below, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, text_of(index, ClosingRow::below));
    const QPointF to_sign(-sign - 6, (QFontMetrics(font).height() - sign) / 2.0);
    if (at.cautions.height() > 0) paint_caution(painter, at.cautions.topLeft() + to_sign);
    if (at.waits.height() > 0) paint_waits(painter, at.waits.topLeft() + to_sign);
}

void paint_plain(QPainter& painter, const Layout& at, const QRect& row, const QFont& font, const QModelIndex& index) {
    const int kind = index.data(ClosingRow::kind).toInt();
    painter.setFont(kind == ClosingRow::note ? font : bold(font));
    painter.setPen(kind == ClosingRow::heading ? palette::way : palette::ink);
    painter.drawText(at.title, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, text_of(index, ClosingRow::title));
    painter.setFont(font);
    painter.setPen(palette::soft_ink);
    painter.drawText(at.below, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, text_of(index, ClosingRow::below));
    if (kind == ClosingRow::fold)
        paint_fold(painter, {row.left() + pad + sign / 2.0, at.title.top() + QFontMetrics(bold(font)).height() / 2.0},
                   index.data(ClosingRow::open).toBool());
}

}  // namespace

QRect ClosingRow::tick_target(const QRect& row) { return {row.left(), row.top(), target, row.height()}; }

void ClosingRow::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const int sort = index.data(ClosingRow::kind).toInt();
    if (sort == hosts_widget) return;
    const QRect row(option.rect.topLeft(), QSize(width_for_rows(option), option.rect.height()));
    const bool chosen = (option.state & QStyle::State_Selected) != 0;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (chosen) paint_chosen_ground(*painter, option);
    if (sort != note) {
        painter->setPen(palette::hairline);
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    }
    const Layout at = layout(row, option.font, index);
    if (sort == closing) {
        paint_closing(*painter, at, row, option.font, index);
    } else {
        paint_plain(*painter, at, row, option.font, index);
    }
    if (chosen) paint_row_focus(*painter, option);
    painter->restore();
}

QSize ClosingRow::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    if (index.data(ClosingRow::kind).toInt() == hosts_widget) return index.data(Qt::SizeHintRole).toSize();
    const int wide = width_for_rows(option);
    return {wide, layout(QRect(0, 0, wide, 0), option.font, index).height};
}

bool ClosingRow::editorEvent(QEvent* /*event*/, QAbstractItemModel* /*model*/, const QStyleOptionViewItem& /*option*/,
                             const QModelIndex& /*index*/) {
    return false;
}

}  // namespace seamward::viewer
