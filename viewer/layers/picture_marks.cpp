// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/picture_marks.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>
#include <vector>

#include "layers/palette.h"

namespace seamward::viewer {

namespace {

std::optional<QPointF> shown(const Point& at, const OrbitCamera& camera, const QRectF& area) {
    const auto pixel = camera.shown_at(at, area.width(), area.height());
    if (!pixel || !area.adjusted(-20, -20, 20, 20).contains(pixel->x, pixel->y)) return std::nullopt;
    return QPointF(pixel->x, pixel->y);
}

void paint_tick(QPainter& painter, const QRectF& in, const QColor& color) {
    painter.setPen(QPen(color, 2.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    const auto at = [&](double x, double y) { return QPointF(in.left() + in.width() * x, in.top() + in.height() * y); };
    painter.drawPolyline(QPolygonF({at(0.24, 0.54), at(0.44, 0.74), at(0.78, 0.28)}));
}

void paint_sign(QPainter& painter, const ClosingMark& mark, const QRectF& place) {
    const QColor& edge = mark.ticked ? palette::shut_sign : palette::open_sign;
    painter.setPen(QPen(edge, 1.6));
    painter.setBrush(mark.ticked ? palette::shut_sign : palette::card);
    painter.drawRoundedRect(place, 3, 3);
    if (mark.ticked) return paint_tick(painter, place, palette::card);
    painter.setPen(palette::ink);
    painter.drawText(place, Qt::AlignCenter, QString::number(mark.number));
}

/// Words on a card beside a point, inside of the picture.
void paint_words(QPainter& painter, const QPointF& beside, const QString& words, const QColor& edge, const QRectF& area) {
    const QFontMetricsF metrics(painter.font());
    // In lines, where the picture is not as wide as the words.
    const QSizeF text =
        metrics.boundingRect(QRectF(0, 0, std::max(area.width() - 30, 1.0), 1000), Qt::TextWordWrap, words).size();
    const QSizeF size(std::ceil(text.width()) + 18, text.height() + 8);
    QRectF place(beside + QPointF(14, -size.height() - 8), size);
    place.moveLeft(std::clamp(place.left(), area.left() + 6, std::max(area.left() + 6, area.right() - size.width() - 6)));
    place.moveTop(std::clamp(place.top(), area.top() + 6, std::max(area.top() + 6, area.bottom() - size.height() - 6)));
    painter.setPen(QPen(edge, 1.4));
    painter.setBrush(palette::card);
    painter.drawRoundedRect(place, 5, 5);
    painter.setPen(palette::ink);
    painter.drawText(place, Qt::AlignCenter | Qt::TextWordWrap, words);
}

}  // namespace

void paint_closings(QPainter& painter, std::span<const ClosingMark> marks, const OrbitCamera& camera, const QRectF& area) {
    painter.setRenderHint(QPainter::Antialiasing);
    QFont font = painter.font();
    font.setBold(true);
    font.setPointSizeF(font.pointSizeF() * 0.85);
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    const double side = metrics.height() + 3;
    std::vector<QRectF> taken;
    std::vector<std::pair<QPointF, const ClosingMark*>> without;
    std::vector<std::pair<QRectF, const ClosingMark*>> with;
    for (const ClosingMark& mark : marks) {
        const auto at = shown(mark.at, camera, area);
        if (!at) continue;
        const double wide = mark.ticked ? side : std::max(side, metrics.horizontalAdvance(QString::number(mark.number)) + 8);
        const QRectF place(at->x() - wide / 2, at->y() - side / 2, wide, side);
        if (std::ranges::any_of(taken, [&](const QRectF& other) { return other.intersects(place); })) {
            without.emplace_back(*at, &mark);
            continue;
        }
        taken.push_back(place.adjusted(-1, -1, 1, 1));
        with.emplace_back(place, &mark);
    }
    for (const auto& [at, mark] : without) {
        painter.setPen(QPen(palette::card, 1));
        painter.setBrush(mark->ticked ? palette::shut_sign : palette::open_sign);
        painter.drawRect(QRectF(at.x() - 3.5, at.y() - 3.5, 7, 7));
    }
    for (const auto& [place, mark] : with) paint_sign(painter, *mark, place);
}

void paint_gap_dots(QPainter& painter, std::span<const GapDot> dots, const OrbitCamera& camera, const QRectF& area) {
    painter.setRenderHint(QPainter::Antialiasing);
    for (const GapDot& dot : dots) {
        const auto at = shown(dot.at, camera, area);
        if (!at) continue;
        painter.setPen(QPen(palette::card, 1.2));
        painter.setBrush(dot.measured ? palette::ink : palette::card);
        painter.drawEllipse(*at, 4.6, 4.6);
        if (dot.measured) continue;
        painter.setPen(QPen(palette::open_sign, 2));
        painter.drawEllipse(*at, 3.6, 3.6);
    }
}

void paint_measure(QPainter& painter, const Point& from, const std::optional<Point>& to, const QString& words,
                   const OrbitCamera& camera, const QRectF& area) {
    painter.setRenderHint(QPainter::Antialiasing);
    const auto first = camera.shown_at(from, area.width(), area.height());
    if (!first) return;
    const QPointF begin(first->x, first->y);
    const auto end_mark = [&](const QPointF& at) {
        painter.setPen(QPen(palette::card, 4));
        painter.drawLine(at - QPointF(6, 0), at + QPointF(6, 0));
        painter.drawLine(at - QPointF(0, 6), at + QPointF(0, 6));
        painter.setPen(QPen(palette::measure, 2));
        painter.drawLine(at - QPointF(6, 0), at + QPointF(6, 0));
        painter.drawLine(at - QPointF(0, 6), at + QPointF(0, 6));
    };
    const auto second = to ? camera.shown_at(*to, area.width(), area.height()) : std::nullopt;
    if (second) {
        const QPointF end(second->x, second->y);
        painter.setPen(QPen(palette::card, 4.5));
        painter.drawLine(begin, end);
        painter.setPen(QPen(palette::measure, 2, Qt::DashLine));
        painter.drawLine(begin, end);
        end_mark(end);
        paint_words(painter, (begin + end) / 2, words, palette::measure, area);
    } else {
        paint_words(painter, begin, words, palette::measure, area);
    }
    end_mark(begin);
}

void paint_chosen_place(QPainter& painter, const Point& at, const QString& name, const OrbitCamera& camera, const QRectF& area) {
    const auto place = shown(at, camera, area);
    if (!place) return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette::card, 6));
    painter.drawEllipse(*place, 13, 13);
    painter.setPen(QPen(palette::selection, 3));
    painter.drawEllipse(*place, 13, 13);
    if (!name.isEmpty()) paint_words(painter, *place + QPointF(6, 0), name, palette::selection, area);
}

}  // namespace seamward::viewer
