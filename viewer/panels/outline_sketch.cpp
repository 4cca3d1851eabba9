// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/outline_sketch.h"

#include <QEvent>
#include <algorithm>
#include <cmath>

#include "document/house_places.h"
#include "document/units_text.h"
#include "geometry/straight_skeleton.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

QPolygonF polygon(const Loop& loop, const QTransform& to_screen) {
    QPolygonF shape;
    for (const Point2 corner : loop) shape << to_screen.map(QPointF(corner.x, corner.y));
    return shape;
}

/// The same as a path that ends where it began.
QPolygonF ring(const Loop& loop, const QTransform& to_screen) {
    QPolygonF shape = polygon(loop, to_screen);
    shape << shape.front();
    return shape;
}

QString length_of(QPointF from, QPointF to) {
    const double meters = std::hypot(to.x() - from.x(), to.y() - from.y());
    return distance_words(std::round(meters * 100) / 100);
}

}  // namespace

OutlineSketch::OutlineSketch(QWidget* parent) : QWidget(parent) {
    setObjectName("outline_sketch");
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    retranslate();
}

void OutlineSketch::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
}

void OutlineSketch::retranslate() {
    setAccessibleName(tr("Sketch of the house from above"));
    const int walls = static_cast<int>(outline_.size());
    setAccessibleDescription(whole_ ? tr("An outline of %n wall(s).", "", walls) : tr("The outline is not complete yet."));
    update();
}

void OutlineSketch::show_house(const NewHouse& house, bool whole) {
    house_ = house;
    outline_ = outline_of(house);
    whole_ = whole && !outline_.empty();
    plan_ = whole_ ? usual_rooms(house) : std::nullopt;
    retranslate();
}

void OutlineSketch::show_story(int story) {
    story_ = story;
    update();
}

QString OutlineSketch::room_words(const UsualRoom& room) {
    switch (room.use) {
        case RoomUse::living: return tr("living room");
        case RoomUse::kitchen: return tr("kitchen");
        case RoomUse::hall: return tr("hall");
        case RoomUse::bedroom: return room.id == "main-bedroom" ? tr("main bedroom") : tr("bedroom");
        case RoomUse::bath: return tr("bath");
        case RoomUse::garage: return tr("garage");
        case RoomUse::whole: break;
    }
    return {};
}

void OutlineSketch::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette::hairline, 1));
    painter.setBrush(palette::card);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 8, 8);
    const int line = fontMetrics().height();
    const QRectF street(0, height() - line * 2.1, width(), line * 1.4);
    painter.setPen(palette::soft_ink);
    painter.drawText(street, Qt::AlignCenter, tr("street"));
    painter.setPen(QPen(palette::grid, 1.5, Qt::DashLine));
    const double words = fontMetrics().horizontalAdvance(tr("street")) / 2.0 + 14;
    painter.drawLine(QPointF(20, street.center().y()), QPointF(width() / 2.0 - words, street.center().y()));
    painter.drawLine(QPointF(width() / 2.0 + words, street.center().y()), QPointF(width() - 20, street.center().y()));
    if (outline_.empty()) {
        painter.setPen(palette::soft_ink);
        painter.drawText(rect().adjusted(20, 20, -20, -line * 3), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("The outline shows here as soon as it has three corners."));
        return;
    }
    const auto [left, right] = std::ranges::minmax(outline_, {}, &Point2::x);
    const auto [low, high] = std::ranges::minmax(outline_, {}, &Point2::y);
    const QSizeF house(std::max(0.1, right.x - left.x), std::max(0.1, high.y - low.y));
    const double edge = line * 2.2 + 8;
    const QRectF room(edge, edge, width() - 2 * edge, height() - 2 * edge - line * 1.6);
    const double scale = std::max(0.01, std::min(room.width() / house.width(), room.height() / house.height()));
    QTransform to_screen;
    to_screen.translate(room.center().x(), room.center().y());
    to_screen.scale(scale, -scale);
    to_screen.translate(-(left.x + right.x) / 2, -(low.y + high.y) / 2);
    const QPolygonF shape = polygon(outline_, to_screen);
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette::way_shadow);
    painter.setOpacity(0.35);
    painter.drawPolygon(shape.translated(4, 5));
    painter.setOpacity(1);
    painter.setBrush(palette::ground);
    painter.drawPolygon(shape);
    if (whole_) {
        painter.setOpacity(plan_ && house_.bedrooms > 0 ? 0.4 : 1);  // rooms are easier to read then
        paint_roof(painter, to_screen);
        painter.setOpacity(1);
        if (plan_ && house_.bedrooms > 0)
            paint_rooms(painter, to_screen);
        else
            paint_garage(painter, to_screen);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(
        QPen(whole_ ? palette::way : palette::outline, 3, whole_ ? Qt::SolidLine : Qt::DotLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPolygon(shape);
    paint_lengths(painter, to_screen);
}

void OutlineSketch::paint_rooms(QPainter& painter, const QTransform& to_screen) const {
    const auto map = [&](Point2 point) { return to_screen.map(QPointF(point.x, point.y)); };
    painter.setBrush(Qt::NoBrush);
    for (const UsualPartition& partition : plan_->partitions) {
        if (partition.story != story_) continue;
        painter.setPen(QPen(palette::way, 2));
        painter.drawLine(map(partition.from), map(partition.to));
    }
    for (const UsualDoor& door : plan_->doors) {
        const UsualPartition& in = plan_->partitions[door.partition];
        if (in.story != story_) continue;
        const Point2 way = in.to - in.from;
        const Point2 along = way * (1 / std::hypot(way.x, way.y));
        painter.setPen(QPen(palette::ground, 4));
        painter.drawLine(map(in.from + along * (door.of_line - door.width / 2)),
                         map(in.from + along * (door.of_line + door.width / 2)));
    }
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * 0.85);
    painter.setFont(small);
    const QFontMetrics metrics(small);
    painter.setPen(palette::ink);
    for (const UsualRoom& room : plan_->rooms) {
        if (room.story != story_) continue;
        const double reach = to_edge(room.loop, HousePlaces::inside_of(room));
        const QPointF middle = map(HousePlaces::inside_of(room));
        const double wide = std::max(2 * reach * std::abs(to_screen.m11()), static_cast<double>(metrics.averageCharWidth() * 9));
        QRectF box(0, 0, wide - 4, metrics.height() * 3);
        box.moveCenter(middle);
        painter.drawText(box, Qt::AlignCenter | Qt::TextWordWrap, room_words(room));
    }
    painter.setFont(font());
}

void OutlineSketch::paint_garage(QPainter& painter, const QTransform& to_screen) const {
    const Point2 size = garage_size(house_);
    if (size.x == 0) return;
    const QPolygonF shape = polygon({{0, 0}, {size.x, 0}, size, {0, size.y}}, to_screen);
    painter.setPen(QPen(palette::outline, 1.5));
    painter.setBrush(palette::floor);
    painter.drawPolygon(shape);
    painter.setPen(palette::ink);
    painter.drawText(shape.boundingRect(), Qt::AlignCenter | Qt::TextWordWrap, tr("garage"));
}

void OutlineSketch::paint_roof(QPainter& painter, const QTransform& to_screen) const {
    painter.setPen(QPen(palette::outline, 1.2, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    if (house_.roof == NewHouse::Roof::flat) return;
    if (house_.roof == NewHouse::Roof::shed) {
        const std::size_t low = low_wall(outline_);
        const Point2 a = outline_[low];
        const Point2 b = outline_[low + 1 < outline_.size() ? low + 1 : 0];
        const Point2 along = (b - a) * (1 / std::hypot(b.x - a.x, b.y - a.y));
        const Point2 middle = (a + b) * 0.5;
        const Point2 in{-along.y, along.x};
        const QPointF tip = to_screen.map(QPointF(middle.x + in.x * 0.8, middle.y + in.y * 0.8));
        const QPointF tail = to_screen.map(QPointF(middle.x + in.x * 3.5, middle.y + in.y * 3.5));
        const QLineF way(tail, tip);
        painter.setPen(QPen(palette::outline, 2));
        painter.drawLine(way);
        for (const double turn : {150.0, -150.0}) {
            QLineF barb = QLineF::fromPolar(9, way.angle() + turn);
            barb.translate(tip);
            painter.drawLine(barb);
        }
        return;
    }
    const std::vector<std::size_t> gables =
        house_.roof == NewHouse::Roof::gable ? gable_walls(outline_) : std::vector<std::size_t>();
    const std::vector<SkeletonFace> faces = straight_skeleton(outline_);
    for (std::size_t i = 0; i < faces.size(); ++i) {
        const bool gable = std::ranges::count(gables, i) > 0;
        const Loop& face = faces[i].outline;
        if (gable) {  // the ridge runs on to the wall
            const Point2 middle = (face[0] + face[1]) * 0.5;
            painter.drawLine(to_screen.map(QPointF(middle.x, middle.y)), to_screen.map(QPointF(face[2].x, face[2].y)));
            continue;
        }
        for (std::size_t j = 1; j < face.size(); ++j) {
            const Point2 from = face[j];
            const Point2 to = face[j + 1 < face.size() ? j + 1 : 0];
            if (std::pair(to.x, to.y) < std::pair(from.x, from.y)) continue;  // its neighbor draws it
            const bool hip_of_gable = std::ranges::any_of(gables, [&](std::size_t wall) {
                const Loop& triangle = faces[wall].outline;
                return std::ranges::count(triangle, from) > 0 && std::ranges::count(triangle, to) > 0;
            });
            if (!hip_of_gable) painter.drawLine(to_screen.map(QPointF(from.x, from.y)), to_screen.map(QPointF(to.x, to.y)));
        }
    }
}

void OutlineSketch::paint_lengths(QPainter& painter, const QTransform& to_screen) const {
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * 0.92);
    painter.setFont(small);
    const QFontMetricsF metrics(small);
    const QPolygonF shape = ring(outline_, to_screen);
    std::vector<QRectF> used;
    for (int i = 0; i + 1 < shape.size(); ++i) {
        const auto at = static_cast<std::size_t>(i);
        const Point2 a = outline_[at];
        const Point2 b = outline_[at + 1 < outline_.size() ? at + 1 : 0];
        const QString text = length_of({a.x, a.y}, {b.x, b.y});
        const QLineF side(shape[i], shape[i + 1]);
        const double wide = metrics.horizontalAdvance(text) + 6;
        if (side.length() < wide) continue;
        // Outside of the wall: to its right, as the outline runs counterclockwise.
        const double angle = -side.angle();
        const bool upside_down = std::cos(angle * M_PI / 180) < -1e-9;
        painter.save();
        painter.translate(side.center());
        painter.rotate(upside_down ? angle + 180 : angle);
        const double high = metrics.height();
        const QRectF box(-wide / 2, upside_down ? -high - 5 : 5, wide, high);
        painter.setPen(palette::ink);
        painter.drawText(box, Qt::AlignCenter, text);
        painter.restore();
    }
}

}  // namespace seamward::viewer
