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

QColor thinned(QColor color, int alpha) {
    color.setAlpha(alpha);
    return color;
}

QFont heading_font(QFont font) {
    font.setBold(true);
    return font;
}

QFont small_font(QFont font) {
    font.setPointSizeF(font.pointSizeF() * 0.95);
    return font;
}

QFont room_font(QFont font) {
    font.setItalic(true);
    return small_font(font);
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
        case Callout::Kind::axis: return text_size(heading_font(font), callout.heading) + QSizeF(4, 0);
        case Callout::Kind::room: return text_size(room_font(font), callout.heading) + QSizeF(10, 2);
        case Callout::Kind::end: break;
    }
    return text_size(small_font(font), callout.heading) + QSizeF(18, 8);
}

double away(Callout::Kind kind) {
    switch (kind) {
        case Callout::Kind::smallest: return 46;
        case Callout::Kind::step: return 11;
        case Callout::Kind::axis:
        case Callout::Kind::room: return 1;
        case Callout::Kind::end: break;
    }
    return 26;
}

/// Left out where something else stands, and close to its point otherwise.
bool is_faint(const Callout& callout) { return callout.kind == Callout::Kind::axis || callout.kind == Callout::Kind::room; }

bool is_orange(const Callout& callout) { return callout.kind == Callout::Kind::smallest || callout.is_smallest; }

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

void paint_smallest(QPainter& painter, const Callout& callout, const QRectF& place, const QFont& font) {
    paint_box(painter, place, palette::card, palette::smallest, 7);
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette::smallest);
    painter.drawRoundedRect(QRectF(place.left() + 5, place.top() + 6, 4, place.height() - 12), 2, 2);
    const QRectF inside = place.adjusted(pad_x + 6, pad_y, -pad_x, -pad_y);
    painter.setPen(palette::ink);
    painter.setFont(heading_font(font));
    painter.drawText(inside, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, callout.heading);
    painter.setFont(font);
    painter.drawText(inside, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, callout.text);
}

/// Words without a box; `paper` sets them off from what is behind.
void paint_plain(QPainter& painter, const Callout& callout, const QRectF& place, const QFont& font, const QColor& paper) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(paper);
    painter.drawRoundedRect(place, 4, 4);
    painter.setPen(palette::soft_ink);
    painter.setFont(font);
    painter.drawText(place, Qt::AlignCenter | Qt::TextWordWrap, callout.heading);
}

void paint(QPainter& painter, const Callout& callout, const QRectF& place, const QFont& font) {
    switch (callout.kind) {
        case Callout::Kind::smallest: return paint_smallest(painter, callout, place, font);
        case Callout::Kind::step:
            paint_box(painter, place, is_orange(callout) ? palette::smallest : palette::way, palette::card, place.height() / 2);
            painter.setPen(is_orange(callout) ? palette::ink : palette::card);
            painter.setFont(heading_font(font));
            painter.drawText(place, Qt::AlignCenter, callout.heading);
            return;
        case Callout::Kind::axis: return paint_plain(painter, callout, place, heading_font(font), Qt::transparent);
        case Callout::Kind::room: return paint_plain(painter, callout, place, room_font(font), thinned(palette::paper_high, 150));
        case Callout::Kind::end: break;
    }
    paint_box(painter, place, thinned(palette::card, 235), palette::hairline, std::min(place.height() / 2, 12.0));
    painter.setPen(palette::ink);
    painter.setFont(small_font(font));
    painter.drawText(place, Qt::AlignCenter | Qt::TextWordWrap, callout.heading);
}

/// Callouts with the places that they got.
struct Placed {
    std::vector<const Callout*> callouts;
    std::vector<LabelWish> wishes;
    std::vector<QRectF> places;
};

Placed placed(std::span<const Callout> callouts, std::span<const KeptClear> keep_clear, std::span<const KeptClear> for_faint,
              const OrbitCamera& camera, const QRectF& area, const QFont& font) {
    const QRectF inside = area.adjusted(edge, edge, -edge, -edge);
    Placed all;
    std::vector<const Callout*> faint;
    std::vector<LabelWish> faint_wishes;
    for (const Callout& callout : callouts) {
        LabelWish wish{inside.topLeft(), size_of(callout, font), away(callout.kind), !callout.at};
        if (callout.at) {
            const auto at = camera.shown_at(*callout.at, area.width(), area.height());
            if (!at || !area.contains(at->x, at->y)) continue;
            wish.anchor = {at->x, at->y};
        }
        (is_faint(callout) ? faint : all.callouts).push_back(&callout);
        (is_faint(callout) ? faint_wishes : all.wishes).push_back(wish);
    }
    all.places = place_labels(all.wishes, keep_clear, inside);
    for (std::size_t i = 0; i < faint.size(); ++i) {
        const auto place = free_place(faint_wishes[i], all.places, for_faint, inside);
        if (!place) continue;
        all.callouts.push_back(faint[i]);
        all.wishes.push_back(faint_wishes[i]);
        all.places.push_back(*place);
    }
    return all;
}

std::vector<KeptClear> shown(std::span<const Visible> visible, const OrbitCamera& camera, const QRectF& area) {
    std::vector<KeptClear> all;
    for (const auto& [at, radius] : visible) {
        const auto pixel = camera.shown_at(at, area.width(), area.height());
        if (pixel) all.push_back({{pixel->x, pixel->y}, camera.shown_length(at, radius, area.height())});
    }
    return all;
}

}  // namespace

void paint_callouts(QPainter& painter, std::span<const Callout> callouts, std::span<const Visible> keep_clear,
                    std::span<const Visible> others, const OrbitCamera& camera, const QRectF& area) {
    const QFont font = painter.font();
    std::vector<KeptClear> kept = shown(keep_clear, camera, area);
    std::vector<KeptClear> for_faint = shown(others, camera, area);
    for_faint.insert(for_faint.end(), kept.begin(), kept.end());
    const Placed all = placed(callouts, kept, for_faint, camera, area, font);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < all.places.size(); ++i) {
        const QColor& color = is_orange(*all.callouts[i]) ? palette::smallest : palette::way;
        if (all.callouts[i]->at && !is_faint(*all.callouts[i])) paint_leader(painter, all.wishes[i].anchor, all.places[i], color);
    }
    // The faint ones lie under the rest.
    for (std::size_t i = all.places.size(); i-- > 0;) paint(painter, *all.callouts[i], all.places[i], font);
}

}  // namespace seamward::viewer
