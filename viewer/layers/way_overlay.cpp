// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/way_overlay.h"

#include "layers/palette.h"

namespace seamward::viewer {

void paint_way_overlay(QPainter& painter, const WayLine& way, const OrbitCamera& camera, const QRectF& area) {
    painter.setRenderHint(QPainter::Antialiasing);
    QColor faint = palette::way;
    faint.setAlpha(110);
    for (const WayLeg& leg : way.legs) {
        painter.setPen(leg.sure ? QPen(faint, 1.2) : QPen(palette::way, 2, Qt::DotLine, Qt::RoundCap));
        QPolygonF line;
        for (const Point& at : leg.line) {
            const auto shown = camera.shown_at(at, area.width(), area.height());
            if (shown) line << QPointF(shown->x, shown->y);
        }
        painter.drawPolyline(line);
    }
}

}  // namespace seamward::viewer
