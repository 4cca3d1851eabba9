// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/legend.h"

#include <QFontMetricsF>
#include <algorithm>
#include <array>
#include <cmath>

#include "base/measure_text.h"
#include "layers/palette.h"
#include "offscreen/lettering.h"

namespace seamward::viewer {

namespace {

using namespace lettering;

constexpr double margin = 26;  ///< from the picture's edge
constexpr double pad = 18;     ///< inside of a card
constexpr double row = 27;     ///< from one line to the next
constexpr double sign = 40;    ///< what a line's sign takes
constexpr double apart = 30;   ///< two columns
constexpr double foot = 30;    ///< what the line under the columns takes
constexpr double measures_width = 246, measures_height = 98;
constexpr double most_in_line = 640;    ///< width of a line, at most
constexpr double most_in_column = 440;  ///< the same where there are two columns
constexpr std::size_t most_rows = 5;    ///< of the list, before it takes another column
constexpr int line_size = 16;
constexpr double inch = 0.0254;

/// Text in one line, cut off with dots where it does not fit.
void write(QPainter& painter, const QFont& font, const QColor& color, const QRectF& place, const QString& text,
           int flags = Qt::AlignLeft | Qt::AlignVCenter) {
    painter.setFont(font);
    painter.setPen(color);
    painter.drawText(place, flags | Qt::TextSingleLine, QFontMetricsF(font).elidedText(text, Qt::ElideRight, place.width() + 1));
}

}  // namespace

ScaleBar scale_bar(double per_meter, double most) {
    constexpr std::array<double, 5> inches{0.25, 0.5, 1, 2, 6};
    constexpr std::array<double, 10> feet{1, 2, 3, 4, 5, 10, 20, 50, 100, 200};
    ScaleBar bar{inches.front() * inch, QStringLiteral("1/4 in")};
    for (const double length : inches) {
        if (length * inch * per_meter <= most) bar = {length * inch, QString::fromStdString(inches_text(length * inch))};
    }
    for (const double length : feet) {
        if (length * 12 * inch * per_meter <= most) bar = {length * 12 * inch, QStringLiteral("%1 ft").arg(length)};
    }
    const double millimeters = bar.meters * 1000;
    const QString metric = millimeters < 10    ? QString::fromStdString(millimeters_text(bar.meters))
                           : millimeters < 300 ? QStringLiteral("%1 mm").arg(millimeters, 0, 'f', 0)
                                               : QStringLiteral("%1 m").arg(bar.meters, 0, 'f', bar.meters < 10 ? 2 : 1);
    bar.text += QStringLiteral(" (%1)").arg(metric);
    bar.shown = bar.meters * per_meter;
    return bar;
}

Legend::Legend(const PictureStory& story, const QSizeF& sheet, bool closeup)
    : title_(story.heading),
      way_(story.way),
      detail_(story.detail),
      faded_(story.faded),
      any_way_(!story.steps.empty()),
      closeup_(closeup),
      way_passes_(story.way_passes) {
    scale_at_ = closeup    ? QStringLiteral("at the gap")
                : any_way_ ? QStringLiteral("at the smallest gap")
                           : QStringLiteral("at mid-house");
    tell(story);
    lay_out(sheet);
}

void Legend::tell(const PictureStory& story) {
    const QString closed_text =
        story.closed.size() == 1 ? QStringLiteral("closed: 1 gap") : QStringLiteral("closed: %1 gaps").arg(story.closed.size());
    if (closeup_) {
        for (const QString& note : story.notes) list_.push_back({Sign::none, {}, note, {}});
        key_.push_back({Sign::faces, {}, QStringLiteral("sides of the gap"), {}});
        if (way_passes_) key_.push_back({Sign::way, {}, QStringLiteral("way through the gap"), {}});
        return;
    }
    for (const PictureStory::Step& step : story.steps) {
        list_.push_back(
            {step.smallest ? Sign::smallest_number : Sign::number, step.number, step.name, step.width, step.smallest});
    }
    if (!any_way_) {
        for (const PictureStory::Closed& closed : story.closed) list_.push_back({Sign::tick, {}, closed.name, {}});
        return;
    }
    key_.push_back({Sign::way, {}, QStringLiteral("the way in shown"), {}});
    key_.push_back({Sign::ring, {}, QStringLiteral("its smallest gap"), {}});
    if (story.thin_ways > 0) {
        const QString text = story.more_thin_ways   ? QStringLiteral("%1 of the other ways in")
                             : story.thin_ways == 1 ? QStringLiteral("the other way in")
                                                    : QStringLiteral("%1 other ways in");
        key_.push_back(
            {Sign::other_ways, {}, story.thin_ways == 1 && !story.more_thin_ways ? text : text.arg(story.thin_ways), {}});
    }
    if (!story.closed.empty()) key_.push_back({Sign::tick, {}, closed_text, {}});
}

double Legend::width_of_lines(std::size_t first, std::size_t last) const {
    double most = 0;
    for (std::size_t i = first; i < std::min(last, list_.size()); ++i) {
        const double size = list_[i].size.isEmpty() ? 0 : width_of(words(line_size - 1), list_[i].size) + 12;
        most = std::max(
            most, (list_[i].sign == Sign::none ? 0 : sign) + width_of(words(line_size, list_[i].strong), list_[i].text) + size);
    }
    return std::ceil(most) + 4;
}

void Legend::lay_out(const QSizeF& sheet) {
    const double whole = sheet.width() - 2 * margin;
    const double title_width = width_of(title(), title_) + 8;
    const double way_width = width_of(words(19, true), way_) + width_of(words(19), detail_) + 44;
    heading_ = QRectF(margin, 18, std::min(std::max(title_width, way_width), whole), 78);

    // The card is as wide as its columns, and leaves room for the scale beside it.
    double key_width = 0;
    for (const Line& line : key_) key_width = std::max(key_width, sign + 6 + width_of(words(line_size), line.text) + 4);
    const double room = whole - measures_width - 16 - 2 * pad;
    const std::size_t columns = list_.size() > most_rows ? 2 : 1;
    const double widest = columns == 1 ? most_in_line : most_in_column;
    rows_ = std::min((list_.size() + columns - 1) / columns, most_rows + 2);
    std::vector<double> widths;
    double total = key_width;
    for (std::size_t i = 0; i < columns && !list_.empty(); ++i) {
        widths.push_back(std::min(width_of_lines(i * rows_, (i + 1) * rows_), widest));
        total += widths.back() + apart;
    }
    const double faded_width = width_of(slanted(14), faded_) + 4;
    const double fixed = key_width + apart * static_cast<double>(widths.size());
    const double shrink = total > room ? (room - fixed) / (total - fixed) : 1;
    const double inside = std::min(std::max(total, faded_width), room);
    const double height = static_cast<double>(std::max(rows_, key_.size())) * row + (faded_.isEmpty() ? 0 : foot) + 2 * pad - 8;
    card_ = QRectF(margin, sheet.height() - margin - height, inside + 2 * pad, height);
    measures_ =
        QRectF(margin + whole - measures_width, sheet.height() - margin - measures_height, measures_width, measures_height);
    double left = card_.left() + pad;
    const double top = card_.top() + pad - 4;
    for (const double width : widths) {
        columns_.emplace_back(left, top, width * shrink, static_cast<double>(rows_) * row);
        left += width * shrink + apart;
    }
    key_place_ = QRectF(left, top, key_width, static_cast<double>(key_.size()) * row);
    foot_ = QRectF(card_.left() + pad, card_.bottom() - pad - 16, inside, 24);
}

void Legend::paint(QPainter& painter, const OrbitCamera& camera, double per_meter) const {
    if (closeup_) paint_card(painter, heading_.adjusted(-12, -6, 16, 2), QColor(255, 253, 249, 225), palette::hairline, 12);
    write(painter, title(), palette::ink, QRectF(heading_.topLeft(), QSizeF(heading_.width(), 42)), title_);
    const QRectF line(heading_.left(), heading_.top() + 44, heading_.width(), 30);
    const double bold = width_of(words(19, true), way_) + 2;
    write(painter, words(19, true), any_way_ ? palette::way : closed_green, line, way_);
    if (bold + 60 < line.width() && !detail_.isEmpty())
        write(painter, words(19), palette::soft_ink, line.adjusted(bold + 10, 0, 0, 0), QStringLiteral("\u2013  ") + detail_);

    paint_card(painter, card_, QColor(255, 253, 249, 240), palette::hairline, 12);
    const std::size_t places = rows_ * columns_.size();
    const std::size_t shown = list_.size() > places ? places - 1 : list_.size();
    for (std::size_t i = 0; i < std::min(list_.size(), places); ++i) {
        const QRectF& column = columns_[i / rows_];
        const QRectF place(column.left(), column.top() + static_cast<double>(i % rows_) * row, column.width(), row);
        if (i < shown) {
            paint_line(painter, list_[i], place);
        } else {
            write(painter, slanted(line_size), palette::soft_ink, place.adjusted(sign - 6, 0, 0, 0),
                  QStringLiteral("and %1 more").arg(list_.size() - shown));
        }
    }
    for (std::size_t i = 0; i < key_.size(); ++i) {
        const QRectF place(key_place_.left(), key_place_.top() + static_cast<double>(i) * row, key_place_.width(), row);
        paint_sign(painter, key_[i], QPointF(place.left() + 18, place.center().y()));
        write(painter, words(line_size), palette::ink, place.adjusted(sign + 6, 0, 0, 0), key_[i].text);
    }
    if (!faded_.isEmpty()) {
        painter.setPen(QPen(palette::hairline, 1));
        if (!list_.empty() || !key_.empty()) painter.drawLine(foot_.topLeft() - QPointF(0, 3), foot_.topRight() - QPointF(0, 3));
        write(painter, slanted(14), palette::soft_ink, foot_.adjusted(0, 2, 0, 2), faded_);
    }
    paint_card(painter, measures_, QColor(255, 253, 249, 240), palette::hairline, 12);
    paint_scale(painter, per_meter);
    paint_north(painter, camera);
}

void Legend::paint_line(QPainter& painter, const Line& line, const QRectF& place) const {
    paint_sign(painter, line, QPointF(place.left() + 12, place.center().y()));
    const QFont font = words(line_size, line.strong);
    const QFont size_font = words(line_size - 1);
    const double left = place.left() + (line.sign == Sign::none ? 0 : sign - 6);
    const double size = line.size.isEmpty() ? 0 : width_of(size_font, line.size) + 3;
    const double taken =
        std::min(width_of(font, line.text) + 2, std::max(place.right() - left - (size > 0 ? size + 10 : 0), 30.0));
    write(painter, font, palette::ink, QRectF(left, place.top(), taken, row), line.text);
    if (size > 0) write(painter, size_font, palette::soft_ink, QRectF(left + taken + 9, place.top(), size, row), line.size);
}

void Legend::paint_sign(QPainter& painter, const Line& line, const QPointF& middle) {
    const QPointF left = middle - QPointF(17, 0);
    const QPointF right = middle + QPointF(17, 0);
    switch (line.sign) {
        case Sign::none: return;
        case Sign::number: return paint_disc(painter, middle, 11.5, line.number, false);
        case Sign::smallest_number: return paint_disc(painter, middle, 11.5, line.number, true);
        case Sign::way: {
            painter.setPen(QPen(palette::way, 6, Qt::SolidLine, Qt::RoundCap));
            painter.drawLine(left, right - QPointF(6, 0));
            painter.setPen(Qt::NoPen);
            painter.setBrush(palette::way);
            const std::array<QPointF, 3> head{right, right - QPointF(14, 8), right - QPointF(14, -8)};
            return painter.drawPolygon(head.data(), static_cast<int>(head.size()));
        }
        case Sign::other_ways: {
            QPen dashed(other_way, 3.2, Qt::SolidLine, Qt::FlatCap);
            dashed.setDashPattern({2.6, 2.6});  // pen widths: three dashes
            painter.setPen(dashed);
            return painter.drawLine(left - QPointF(3, 0), right + QPointF(3, 0));
        }
        case Sign::ring: return paint_ring(painter, middle, 8.5);
        case Sign::tick: return paint_tick(painter, middle, 17);
        case Sign::faces: break;
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette::smallest);
    painter.drawRoundedRect(QRectF(left - QPointF(0, 7), right + QPointF(0, 7)), 3, 3);
}

void Legend::paint_scale(QPainter& painter, double per_meter) const {
    const ScaleBar bar = scale_bar(per_meter, 138);
    const QPointF from(measures_.left() + pad, measures_.top() + 46);
    constexpr int pieces = 4;
    for (int i = 0; i < pieces; ++i) {
        painter.setPen(QPen(palette::ink, 1));
        painter.setBrush(i % 2 == 0 ? palette::ink : light_paper);
        painter.drawRect(QRectF(from.x() + bar.shown * i / pieces, from.y(), bar.shown / pieces, 6));
    }
    write(painter, words(line_size), palette::ink, QRectF(from.x() - 1, from.y() - 29, 160, 24), bar.text);
    write(painter, words(13), palette::soft_ink, QRectF(from.x() - 1, from.y() + 12, 180, 20), scale_at_);
}

/// North as it lies on the ground in the picture.
void Legend::paint_north(QPainter& painter, const OrbitCamera& camera) const {
    constexpr double radius = 26;
    const QPointF middle(measures_.right() - radius - 20, measures_.center().y());
    const double flat = std::max(std::abs(std::sin(camera.elevation)), 0.3);
    const QPointF north(std::cos(camera.azimuth), std::sin(camera.azimuth));  // to the right, and down the page
    const auto on_ground = [&](double along, double across) {
        const QPointF turned(north.x() * along - north.y() * across, north.y() * along + north.x() * across);
        return middle + QPointF(turned.x() * radius, turned.y() * radius * flat);
    };
    painter.setPen(QPen(palette::outline, 1.3));
    painter.setBrush(QColor(0xf6, 0xee, 0xe0));
    painter.drawEllipse(middle, radius, radius * flat);
    painter.setPen(QPen(palette::ink, 1, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const std::array<QPointF, 3> dark{on_ground(0.86, 0), on_ground(-0.62, 0.42), on_ground(-0.36, 0)};
    const std::array<QPointF, 3> light{on_ground(0.86, 0), on_ground(-0.62, -0.42), on_ground(-0.36, 0)};
    painter.setBrush(palette::ink);
    painter.drawPolygon(dark.data(), static_cast<int>(dark.size()));
    painter.setBrush(light_paper);
    painter.drawPolygon(light.data(), static_cast<int>(light.size()));
    const QPointF letter = on_ground(1, 0) + north * 11;
    write(painter, words(14, true), palette::ink, QRectF(letter - QPointF(10, 10), QSizeF(20, 20)), QStringLiteral("N"),
          Qt::AlignCenter);
}

}  // namespace seamward::viewer
