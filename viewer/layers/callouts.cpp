// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/callouts.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "layers/label_places.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr double text_width = 250;  ///< pixels, at most, before a text is broken
constexpr double edge = 12;         ///< pixels from the picture's edge
constexpr double pad_x = 12, pad_y = 8;

QFont heading_font(QFont font) {
    font.setBold(true);
    return font;
}

QFont small_font(QFont font) {
    font.setPointSizeF(font.pointSizeF() * 0.95);
    return font;
}

QSizeF text_size(const QFont& font, const QString& text, double width = text_width) {
    return QFontMetricsF(font).boundingRect(QRectF(0, 0, width, 1000), Qt::TextWordWrap, text).size();
}

QSizeF size_of(const Callout& callout, const QFont& font) {
    switch (callout.kind) {
        case Callout::Kind::smallest: {
            const QSizeF heading = text_size(heading_font(font), callout.heading, 1000);  // in one line
            const QSizeF text = text_size(font, callout.text, std::max(heading.width(), text_width));
            return {std::ceil(std::max(heading.width(), text.width())) + 2 * pad_x + 6,
                    heading.height() + text.height() + 2 * pad_y + 2};
        }
        case Callout::Kind::step: {
            const double height = QFontMetricsF(heading_font(font)).height() + 4;
            return {std::max(height, QFontMetricsF(heading_font(font)).horizontalAdvance(callout.heading) + 10), height};
        }
        case Callout::Kind::end: break;
    }
    return text_size(small_font(font), callout.heading) + QSizeF(18, 8);
}

double away(Callout::Kind kind) {
    switch (kind) {
        case Callout::Kind::smallest: return 46;
        case Callout::Kind::step: return 11;
        case Callout::Kind::end: break;
    }
    return 26;
}

void paint_leader(QPainter& painter, const QPointF& anchor, const QRectF& place, const QColor& color) {
    const QPointF end(std::clamp(anchor.x(), place.left() + 6, place.right() - 6),
                      std::clamp(anchor.y(), place.top() + 6, place.bottom() - 6));
    painter.setPen(QPen(color, 1.4));
    painter.drawLine(anchor, end);
}

void paint_box(QPainter& painter, const QRectF& place, const QColor& fill, const QColor& border, double radius) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(60, 45, 25, 28));  // a soft shadow
    painter.drawRoundedRect(place.translated(0, 2).adjusted(-1, 0, 1, 1), radius + 1, radius + 1);
    painter.setPen(QPen(border, 1));
    painter.setBrush(fill);
    painter.drawRoundedRect(place, radius, radius);
}

void paint(QPainter& painter, const Callout& callout, const QRectF& place, const QFont& font) {
    const bool orange = callout.kind == Callout::Kind::smallest || callout.is_smallest;
    switch (callout.kind) {
        case Callout::Kind::smallest: {
            paint_box(painter, place, QColor(255, 253, 249), palette::smallest, 7);
            painter.setPen(Qt::NoPen);
            painter.setBrush(palette::smallest);
            painter.drawRoundedRect(QRectF(place.left() + 5, place.top() + 6, 4, place.height() - 12), 2, 2);
            const QRectF inside = place.adjusted(pad_x + 6, pad_y, -pad_x, -pad_y);
            painter.setPen(palette::ink);
            painter.setFont(heading_font(font));
            painter.drawText(inside, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, callout.heading);
            painter.setFont(font);
            painter.drawText(inside, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, callout.text);
            return;
        }
        case Callout::Kind::step:
            paint_box(painter, place, orange ? palette::smallest : palette::way, QColor(255, 253, 249), place.height() / 2);
            painter.setPen(orange ? palette::ink : QColor(255, 253, 249));
            painter.setFont(heading_font(font));
            painter.drawText(place, Qt::AlignCenter, callout.heading);
            return;
        case Callout::Kind::end: break;
    }
    paint_box(painter, place, QColor(255, 253, 249, 235), palette::hairline, place.height() / 2);
    painter.setPen(palette::ink);
    painter.setFont(small_font(font));
    painter.drawText(place, Qt::AlignCenter | Qt::TextWordWrap, callout.heading);
}

}  // namespace

void paint_callouts(QPainter& painter, std::span<const Callout> callouts, std::span<const Point> keep_clear,
                    const OrbitCamera& camera, const QRectF& area) {
    const QFont font = painter.font();
    const auto pixel = [&](const Point& at) { return camera.shown_at(at, area.width(), area.height()); };
    std::vector<const Callout*> shown;
    std::vector<LabelWish> wishes;
    std::vector<QPointF> obstacles;
    for (const Callout& callout : callouts) {
        const auto at = pixel(callout.at);
        if (!at || !area.contains(at->x, at->y)) continue;
        shown.push_back(&callout);
        wishes.push_back({{at->x, at->y}, size_of(callout, font), away(callout.kind)});
    }
    for (const Point& point : keep_clear) {
        if (const auto at = pixel(point)) obstacles.emplace_back(at->x, at->y);
    }
    const std::vector<QRectF> places = place_labels(wishes, obstacles, area.adjusted(edge, edge, -edge, -edge));
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < shown.size(); ++i) {
        const bool orange = shown[i]->kind == Callout::Kind::smallest || shown[i]->is_smallest;
        paint_leader(painter, wishes[i].anchor, places[i], orange ? palette::smallest : palette::way);
    }
    for (std::size_t i = 0; i < shown.size(); ++i) paint(painter, *shown[i], places[i], font);
}

}  // namespace seamward::viewer
