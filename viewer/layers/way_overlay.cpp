// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/way_overlay.h"

#include <QPolygonF>

#include "layers/palette.h"

namespace seamward::viewer {

namespace {

QPolygonF shown_line(const std::vector<Point>& points, const OrbitCamera& camera, const QRectF& area) {
    QPolygonF line;
    for (const Point& at : points) {
        const auto shown = camera.shown_at(at, area.width(), area.height());
        if (shown) line << QPointF(shown->x, shown->y);
    }
    return line;
}

}  // namespace

void paint_way_overlay(QPainter& painter, const WayLine& way, std::span<const std::vector<Point>> hidden,
                       const OrbitCamera& camera, const QRectF& area) {
    painter.setRenderHint(QPainter::Antialiasing);
    QColor paper = palette::card;
    paper.setAlpha(170);
    for (const std::vector<Point>& points : hidden) {
        const QPolygonF line = shown_line(points, camera, area);
        painter.setPen(QPen(paper, 4.4, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
        painter.drawPolyline(line);
        QPen dashes(palette::way, 2.2, Qt::CustomDashLine, Qt::FlatCap, Qt::RoundJoin);
        dashes.setDashPattern({3.2, 2.0});
        painter.setPen(dashes);
        painter.drawPolyline(line);
    }
    painter.setPen(QPen(palette::way, 2, Qt::DotLine, Qt::RoundCap));
    for (const WayLeg& leg : way.legs) {
        if (!leg.sure) painter.drawPolyline(shown_line(leg.line, camera, area));
    }
}

}  // namespace seamward::viewer
