// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <cstdint>
#include <vector>

#include "offscreen/picture_story.h"
#include "offscreen/sight.h"

namespace seamward::viewer {

/// A length that is round in inches or feet, and how long it is in the picture.
struct ScaleBar {
    double meters = 0;
    QString text;  ///< "5 ft (1.52 m)"
    double shown = 0;
};

/// The longest round length that takes no more than `most` units, where a meter takes `per_meter`.
[[nodiscard]] ScaleBar scale_bar(double per_meter, double most);

/// Text in lines that are no wider than `width`, `most` of them, broken at spaces; the last one is cut off with dots where even
/// that does not do. The end of the last line is at least `after` from `width`, or another line, an empty one, is added.
[[nodiscard]] QStringList in_lines(const QFont& font, const QString& text, double width, int most, double after = 0);

/// The heading over a picture, and the cards under it, in the picture's units: what there is to tell at the left, the scale and
/// north at the right.
class Legend {
public:
    Legend(const PictureStory& story, const QSizeF& sheet, bool closeup);

    [[nodiscard]] const QRectF& heading() const { return heading_; }
    [[nodiscard]] const QRectF& card() const { return card_; }
    [[nodiscard]] const QRectF& measures() const { return measures_; }
    /// Whether all that there is to tell is there, and no word cut off.
    [[nodiscard]] bool is_whole() const;
    /// `per_meter`: units that a meter takes at the smallest gap, or in the middle of the house.
    void paint(QPainter& painter, const OrbitCamera& camera, double per_meter) const;

private:
    enum class Sign : std::uint8_t { none, number, smallest_number, way, other_ways, ring, tick, faces };
    struct Line {
        Sign sign = Sign::none;
        QString number, text, size;
        bool strong = false;
        QStringList rows{};  ///< the text as it is laid out; empty at its end: the size stands there alone
    };

    void tell(const PictureStory& story);
    void lay_out(const QSizeF& sheet);
    void lay_out_heading(double whole);
    /// Breaks the list into rows and columns; the height of the highest column.
    double lay_out_list(double room, double most_height);
    [[nodiscard]] double width_of_lines(std::size_t first, std::size_t last) const;
    void paint_heading(QPainter& painter) const;
    void paint_list(QPainter& painter) const;
    void paint_line(QPainter& painter, const Line& line, const QRectF& place) const;
    static void paint_sign(QPainter& painter, const Line& line, const QPointF& middle);
    void paint_scale(QPainter& painter, double per_meter) const;
    void paint_north(QPainter& painter, const OrbitCamera& camera) const;

    QString title_, way_, detail_, faded_, scale_at_;
    bool any_way_, known_, closeup_, way_passes_;
    std::vector<Line> list_, key_;
    QRectF heading_, card_, measures_;
    QStringList title_rows_, way_rows_, foot_rows_;
    bool detail_apart_ = false;    ///< the detail has a row of its own
    std::vector<double> columns_;  ///< widths, of the list
    QRectF key_place_, foot_;
    std::size_t in_column_ = 0;  ///< lines in a column
    std::size_t told_ = 0;       ///< lines of the list that there is room for
};

}  // namespace seamward::viewer
