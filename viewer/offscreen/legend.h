// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QRectF>
#include <QString>
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

/// The heading over a picture, and the cards under it, in the picture's units: what there is to tell at the left, the scale and
/// north at the right.
class Legend {
public:
    Legend(const PictureStory& story, const QSizeF& sheet, bool closeup);

    [[nodiscard]] const QRectF& heading() const { return heading_; }
    [[nodiscard]] const QRectF& card() const { return card_; }
    [[nodiscard]] const QRectF& measures() const { return measures_; }
    /// `per_meter`: units that a meter takes at the smallest gap, or in the middle of the house.
    void paint(QPainter& painter, const OrbitCamera& camera, double per_meter) const;

private:
    enum class Sign : std::uint8_t { none, number, smallest_number, way, other_ways, ring, tick, faces };
    struct Line {
        Sign sign = Sign::none;
        QString number, text, size;
        bool strong = false;
    };

    void tell(const PictureStory& story);
    void lay_out(const QSizeF& sheet);
    [[nodiscard]] double width_of_lines(std::size_t first, std::size_t last) const;
    void paint_line(QPainter& painter, const Line& line, const QRectF& place) const;
    static void paint_sign(QPainter& painter, const Line& line, const QPointF& middle);
    void paint_scale(QPainter& painter, double per_meter) const;
    void paint_north(QPainter& painter, const OrbitCamera& camera) const;

    QString title_, way_, detail_, faded_, scale_at_;
    bool any_way_, closeup_, way_passes_;
    std::vector<Line> list_, key_;
    QRectF heading_, card_, measures_;
    std::vector<QRectF> columns_;  ///< of the list
    QRectF key_place_, foot_;
    std::size_t rows_ = 0;  ///< of the list's columns
};

}  // namespace seamward::viewer
