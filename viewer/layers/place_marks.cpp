// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/place_marks.h"

#include <QFontMetricsF>
#include <algorithm>
#include <vector>

#include "layers/palette.h"
#include "layers/picture_marks.h"

namespace seamward::viewer {

namespace {

void paint_tick(QPainter& painter, const QRectF& in, const QColor& color) {
    const auto at = [&](double x, double y) { return QPointF(in.left() + in.width() * x, in.top() + in.height() * y); };
    painter.setPen(QPen(color, in.width() * 0.13, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF({at(0.27, 0.53), at(0.44, 0.70), at(0.74, 0.32)}));
}

void paint_triangle(QPainter& painter, const QRectF& in) {
    painter.setPen(QPen(palette::ink, 1.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(palette::smallest);
    painter.drawPolygon(QPolygonF({QPointF(in.center().x(), in.top()), in.bottomRight(), in.bottomLeft()}));
    painter.setPen(QPen(palette::ink, in.width() * 0.11, Qt::SolidLine, Qt::RoundCap));
    const double x = in.center().x();
    painter.drawLine(QPointF(x, in.top() + in.height() * 0.40), QPointF(x, in.top() + in.height() * 0.66));
    painter.drawPoint(QPointF(x, in.top() + in.height() * 0.84));
}

void paint_cross(QPainter& painter, const QRectF& in) {
    const QRectF box = in.adjusted(1, 1, -1, -1);
    painter.setPen(QPen(palette::ink, 1.6));
    painter.setBrush(palette::card);
    painter.drawRect(box);
    const double pad = box.width() * 0.24;
    const QRectF cross = box.adjusted(pad, pad, -pad, -pad);
    painter.setPen(QPen(palette::ink, in.width() * 0.12, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(cross.topLeft(), cross.bottomRight());
    painter.drawLine(cross.bottomLeft(), cross.topRight());
}

/// Two halves of a ring with nothing between them.
void paint_broken_ring(QPainter& painter, const QRectF& in) {
    const double pen = in.width() * 0.16;
    const QRectF ring = in.adjusted(pen, pen, -pen, -pen);
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette::card);
    painter.drawEllipse(in);
    painter.setPen(QPen(palette::open_sign, pen, Qt::SolidLine, Qt::FlatCap));
    painter.setBrush(Qt::NoBrush);
    painter.drawArc(ring, 25 * 16, 130 * 16);
    painter.drawArc(ring, 205 * 16, 130 * 16);
}

struct Shown {
    const PlaceMark* mark;
    QPointF at;
};

std::vector<Shown> shown_marks(std::span<const PlaceMark> marks, const OrbitCamera& camera, const QRectF& area) {
    std::vector<Shown> all;
    for (const PlaceMark& mark : marks) {
        const auto pixel = camera.shown_at(mark.at, area.width(), area.height());
        if (pixel && area.adjusted(-20, -20, 20, 20).contains(pixel->x, pixel->y))
            all.push_back({&mark, QPointF(pixel->x, pixel->y)});
    }
    // What was done wrong comes first where there is no room for all.
    std::ranges::stable_sort(all, [](const Shown& a, const Shown& b) { return a.mark->sign > b.mark->sign; });
    return all;
}

}  // namespace

void paint_place_sign(QPainter& painter, PlaceSign sign, const QRectF& in) {
    const QRectF round = in.adjusted(1.5, 1.5, -1.5, -1.5);
    switch (sign) {
        case PlaceSign::nothing:
            painter.setPen(QPen(palette::outline, 1.2, Qt::DotLine));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(round);
            return;
        case PlaceSign::told_open:
            painter.setPen(QPen(palette::way, 2.4));
            painter.setBrush(palette::card);
            painter.drawEllipse(round.adjusted(1, 1, -1, -1));
            return;
        case PlaceSign::told_tight:
            painter.setPen(Qt::NoPen);
            painter.setBrush(palette::way);
            painter.drawRoundedRect(QRectF(in.left(), in.center().y() - in.height() * 0.19, in.width(), in.height() * 0.38), 2,
                                    2);
            return;
        case PlaceSign::right:
            painter.setPen(Qt::NoPen);
            painter.setBrush(palette::shut_sign);
            painter.drawEllipse(in);
            return paint_tick(painter, in, palette::card);
        case PlaceSign::partly:
            painter.setPen(QPen(palette::shut_sign, 1.6));
            painter.setBrush(palette::card);
            painter.drawEllipse(round);
            return paint_tick(painter, in, palette::shut_sign);
        case PlaceSign::missed: return paint_broken_ring(painter, in);
        case PlaceSign::false_alarm: return paint_cross(painter, in);
        case PlaceSign::harm: return paint_triangle(painter, in);
    }
}

void paint_place_marks(QPainter& painter, std::span<const PlaceMark> marks, const OrbitCamera& camera, const QRectF& area) {
    painter.setRenderHint(QPainter::Antialiasing);
    QFont font = painter.font();
    font.setBold(true);
    const QFontMetricsF metrics(font);
    const double side = metrics.height();
    const std::vector<Shown> all = shown_marks(marks, camera, area);
    std::vector<QRectF> taken;
    for (const Shown& one : all) taken.emplace_back(one.at.x() - side / 2, one.at.y() - side / 2, side, side);
    painter.setFont(font);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const auto& [mark, at] = all[i];
        const QRectF sign(at.x() - side / 2, at.y() - side / 2, side, side);
        if (mark->sign != PlaceSign::nothing) paint_place_sign(painter, mark->sign, sign);
        if (!mark->name.isEmpty() || mark->sign == PlaceSign::nothing) continue;  // the card of the chosen one says it
        const QString words = QString("%1  %2").arg(mark->number).arg(sign_words(mark->sign));
        const double wide = metrics.horizontalAdvance(words) + 12;
        for (const double left : {sign.right() + 3, sign.left() - 3 - wide}) {
            const QRectF label(left, sign.top(), wide, side);
            const bool free = std::ranges::none_of(taken, [&](const QRectF& other) { return other.intersects(label); });
            if (!free || !area.contains(label)) continue;
            taken.push_back(label);
            painter.setPen(QPen(palette::hairline, 1));
            painter.setBrush(palette::card);
            painter.drawRoundedRect(label, 4, 4);
            painter.setPen(palette::ink);
            painter.drawText(label, Qt::AlignCenter, words);
            break;
        }
    }
    for (const auto& [mark, at] : all) {
        if (!mark->name.isEmpty()) paint_chosen_place(painter, mark->at, mark->name, camera, area);
    }
}

}  // namespace seamward::viewer
