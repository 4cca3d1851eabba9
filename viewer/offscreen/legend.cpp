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
constexpr double more_row = 20;       ///< from one row of a line to the next
constexpr double least_column = 300;  ///< width of a column where there are two
constexpr double most_height = 0.36;  ///< of the list, as a share of the picture's
constexpr int title_row = 42, way_row = 28;
constexpr std::size_t most_rows = 5;  ///< of the list, before it takes another column
constexpr int line_size = 16;
constexpr double inch = 0.0254;

/// Text in one line, cut off with dots where it does not fit.
void write(QPainter& painter, const QFont& font, const QColor& color, const QRectF& place, const QString& text,
           int flags = Qt::AlignLeft | Qt::AlignVCenter) {
    painter.setFont(font);
    painter.setPen(color);
    painter.drawText(place, flags | Qt::TextSingleLine, QFontMetricsF(font).elidedText(text, Qt::ElideRight, place.width() + 1));
}

/// From a line's left edge to its words.
double left_of(bool has_sign) { return has_sign ? sign - 6 : 0; }

/// What a gap's width takes behind its name.
double width_of_size(const QString& size) { return size.isEmpty() ? 0 : width_of(words(line_size - 1), size) + 14; }

}  // namespace

QStringList in_lines(const QFont& font, const QString& text, double width, int most, double after) {
    const QFontMetricsF metrics(font);
    QStringList rows;
    QString rest = text.simplified();
    while (!rest.isEmpty()) {
        QString line = rest;
        if (rows.size() + 1 < most) {
            while (metrics.horizontalAdvance(line) > width && line.contains(' ')) line.truncate(line.lastIndexOf(' '));
        }
        rest = rest.mid(line.size()).trimmed();
        rows << metrics.elidedText(line, Qt::ElideRight, width + 1);
    }
    if (rows.isEmpty() || (after > 0 && metrics.horizontalAdvance(rows.back()) + after > width + 1)) rows << QString();
    return rows;
}

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
      known_(story.known),
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
        const QString name = step.at ? step.name : step.name + QStringLiteral(" (not drawn: it has no place)");
        list_.push_back({step.smallest ? Sign::smallest_number : Sign::number, step.number, name, step.width, step.smallest});
    }
    if (!any_way_) {
        for (const PictureStory::Closed& closed : story.closed) list_.push_back({Sign::tick, {}, closed.name, {}});
        return;
    }
    key_.push_back({Sign::way, {}, QStringLiteral("the way in shown"), {}});
    key_.push_back({Sign::ring, {}, QStringLiteral("its smallest gap"), {}});
    if (story.thin_ways > 0) {
        const bool all = story.thin_ways == story.other_ways && !story.more_ways;
        const QString text = !all                   ? QStringLiteral("the %1 best other ways").arg(story.thin_ways)
                             : story.thin_ways == 1 ? QStringLiteral("the other way in")
                                                    : QStringLiteral("the %1 other ways in").arg(story.thin_ways);
        key_.push_back({Sign::other_ways, {}, text, {}});
    }
    if (!story.closed.empty()) key_.push_back({Sign::tick, {}, closed_text, {}});
}

double Legend::width_of_lines(std::size_t first, std::size_t last) const {
    double most = 0;
    for (std::size_t i = first; i < std::min(last, list_.size()); ++i)
        most = std::max(most, left_of(list_[i].sign != Sign::none) + width_of(words(line_size, list_[i].strong), list_[i].text) +
                                  width_of_size(list_[i].size));
    return std::ceil(most) + 4;
}

void Legend::lay_out_heading(double whole) {
    title_rows_ = in_lines(title(), title_, whole, 2);
    way_rows_ = in_lines(words(19, true), way_, whole, 2);
    double widest = 0;
    for (const QString& row : title_rows_) widest = std::max(widest, width_of(title(), row) + 8);
    for (const QString& row : way_rows_) widest = std::max(widest, width_of(words(19, true), row) + 8);
    const double last = way_rows_.isEmpty() ? 0 : width_of(words(19, true), way_rows_.back());
    const double detail = width_of(words(19), detail_);
    detail_apart_ = !detail_.isEmpty() && last + detail + 44 > whole;
    widest = std::max(widest, detail_apart_ ? detail + 8 : last + detail + 44);
    const auto rows = static_cast<double>(way_rows_.size() + (detail_apart_ ? 1 : 0));
    heading_ =
        QRectF(margin, 18, std::min(widest, whole), 8 + title_row * static_cast<double>(title_rows_.size()) + way_row * rows);
}

double Legend::lay_out_list(double room, double most) {
    if (list_.empty()) return 0;
    const std::size_t columns = list_.size() > most_rows && room >= 2 * least_column + apart ? 2 : 1;
    in_column_ = (list_.size() + columns - 1) / columns;
    std::vector<double> wishes;
    for (std::size_t i = 0; i < columns; ++i) wishes.push_back(width_of_lines(i * in_column_, (i + 1) * in_column_));
    const double free = room - apart * static_cast<double>(columns - 1);
    columns_ = wishes;
    if (columns == 1) columns_[0] = std::min(wishes[0], free);
    if (columns == 2 && wishes[0] + wishes[1] > free) {  // what one column leaves is the other's
        columns_[0] = std::min(wishes[0], std::max(free / 2, free - wishes[1]));
        columns_[1] = std::min(wishes[1], free - columns_[0]);
    }
    double highest = 0;
    told_ = 0;
    for (std::size_t column = 0; column < columns; ++column) {
        double height = 0;
        for (std::size_t i = column * in_column_; i < std::min((column + 1) * in_column_, list_.size()); ++i) {
            Line& line = list_[i];
            line.rows = in_lines(words(line_size, line.strong), line.text, columns_[column] - left_of(line.sign != Sign::none), 3,
                                 width_of_size(line.size));
            height += row + more_row * static_cast<double>(line.rows.size() - 1);
            const bool is_last = i + 1 == list_.size();
            if (height + (is_last ? 0 : row) > most && columns == 1) {  // a line is left to say how many more there are
                highest = std::max(highest, height - more_row * static_cast<double>(line.rows.size() - 1));
                return highest;
            }
            ++told_;
        }
        highest = std::max(highest, height);
    }
    return highest;
}

void Legend::lay_out(const QSizeF& sheet) {
    const double whole = sheet.width() - 2 * margin;
    lay_out_heading(whole);
    // The card is as wide as its columns, and leaves room for the scale beside it.
    double key_width = 0;
    for (const Line& line : key_) key_width = std::max(key_width, sign + 6 + width_of(words(line_size), line.text) + 4);
    const double room = whole - measures_width - 16 - 2 * pad;
    const double list_height = lay_out_list(room - key_width - (key_.empty() ? 0 : apart), sheet.height() * most_height);
    double total = key_width;
    for (const double width : columns_) total += width + apart;
    if (key_.empty() && !columns_.empty()) total -= apart;
    const double inside = std::min(std::max(total, std::ceil(width_of(slanted(14), faded_)) + 4), room);
    foot_rows_ = faded_.isEmpty() ? QStringList() : in_lines(slanted(14), faded_, inside, 2);
    const double foot_height = foot_rows_.isEmpty() ? 0 : foot + more_row * static_cast<double>(foot_rows_.size() - 1);
    const double height = std::max(list_height, static_cast<double>(key_.size()) * row) + foot_height + 2 * pad - 8;
    card_ = QRectF(margin, sheet.height() - margin - height, inside + 2 * pad, height);
    measures_ =
        QRectF(margin + whole - measures_width, sheet.height() - margin - measures_height, measures_width, measures_height);
    key_place_ =
        QRectF(card_.left() + pad + total - key_width, card_.top() + pad - 4, key_width, static_cast<double>(key_.size()) * row);
    foot_ = QRectF(card_.left() + pad, card_.bottom() - pad + 8 - foot_height, inside, foot_height);
}

bool Legend::is_whole() const {
    const auto is_cut = [](const QStringList& rows) {
        return std::ranges::any_of(rows, [](const QString& text) { return text.endsWith(QChar(0x2026)); });
    };
    return told_ == list_.size() && !is_cut(title_rows_) && !is_cut(way_rows_) && !is_cut(foot_rows_) &&
           std::ranges::none_of(list_, [&](const Line& line) { return is_cut(line.rows); });
}

void Legend::paint(QPainter& painter, const OrbitCamera& camera, double per_meter) const {
    paint_heading(painter);
    paint_card(painter, card_, QColor(255, 253, 249, 240), palette::hairline, 12);
    paint_list(painter);
    for (std::size_t i = 0; i < key_.size(); ++i) {
        const QRectF place(key_place_.left(), key_place_.top() + static_cast<double>(i) * row, key_place_.width(), row);
        paint_sign(painter, key_[i], QPointF(place.left() + 18, place.center().y()));
        write(painter, words(line_size), palette::ink, place.adjusted(sign + 6, 0, 0, 0), key_[i].text);
    }
    if (!foot_rows_.isEmpty()) {
        painter.setPen(QPen(palette::hairline, 1));
        if (!list_.empty() || !key_.empty()) painter.drawLine(foot_.topLeft(), foot_.topRight());
        QRectF place(foot_.left(), foot_.top() + 5, foot_.width(), 24);
        for (const QString& text : foot_rows_) {
            write(painter, slanted(14), palette::soft_ink, place, text);
            place.translate(0, more_row);
        }
    }
    paint_card(painter, measures_, QColor(255, 253, 249, 240), palette::hairline, 12);
    paint_scale(painter, per_meter);
    paint_north(painter, camera);
}

void Legend::paint_heading(QPainter& painter) const {
    if (closeup_) paint_card(painter, heading_.adjusted(-12, -6, 16, 2), QColor(255, 253, 249, 225), palette::hairline, 12);
    QRectF place(heading_.left(), heading_.top(), heading_.width(), title_row);
    for (const QString& text : title_rows_) {
        write(painter, title(), palette::ink, place, text);
        place.translate(0, title_row);
    }
    place = QRectF(place.left(), place.top() + 2, heading_.width(), way_row);
    for (const QString& text : way_rows_) {
        write(painter, words(19, true), any_way_ ? palette::way : known_ ? closed_green : palette::ink, place, text);
        place.translate(0, way_row);
    }
    if (detail_.isEmpty()) return;
    if (detail_apart_) return write(painter, words(19), palette::soft_ink, place, detail_);
    const double bold = way_rows_.isEmpty() ? 0 : width_of(words(19, true), way_rows_.back()) + 12;
    place.translate(bold, -way_row);
    place.setRight(heading_.right());
    write(painter, words(19), palette::soft_ink, place, QStringLiteral("\u2013  ") + detail_);
}

void Legend::paint_list(QPainter& painter) const {
    double left = card_.left() + pad;
    for (std::size_t column = 0; column < columns_.size(); ++column) {
        QRectF place(left, card_.top() + pad - 4, columns_[column], row);
        for (std::size_t i = column * in_column_; i < std::min((column + 1) * in_column_, told_); ++i) {
            paint_line(painter, list_[i], place);
            place.translate(0, row + more_row * static_cast<double>(list_[i].rows.size() - 1));
        }
        if (told_ < list_.size())
            write(painter, slanted(line_size), palette::soft_ink, place.adjusted(sign - 6, 0, 0, 0),
                  QStringLiteral("and %1 more").arg(list_.size() - told_));
        left += columns_[column] + apart;
    }
}

void Legend::paint_line(QPainter& painter, const Line& line, const QRectF& place) const {
    paint_sign(painter, line, QPointF(place.left() + 12, place.center().y()));
    const QFont font = words(line_size, line.strong);
    QRectF text(place.left() + left_of(line.sign != Sign::none), place.top(), 0, row);
    text.setRight(place.right());
    for (const QString& part : line.rows) {
        write(painter, font, palette::ink, text, part);
        text.translate(0, more_row);
    }
    if (line.size.isEmpty()) return;
    text.translate(line.rows.back().isEmpty() ? 0 : width_of(font, line.rows.back()) + 11, -more_row);
    text.setRight(place.right() + 4);
    write(painter, words(line_size - 1), palette::soft_ink, text, line.size);
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
