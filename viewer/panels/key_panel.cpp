// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/key_panel.h"

#include <QEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "document/units_text.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr int sign_width = 30;
constexpr int between = 20;  ///< pixels from one entry to the next
constexpr int side = 16;

}  // namespace

KeyPanel::KeyPanel(QWidget* parent) : QWidget(parent) {
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * 0.92);
    setFont(small);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    retranslate();
}

void KeyPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
    if (event->type() == QEvent::FontChange) updateGeometry();
}

void KeyPanel::set_grid_step(double grid_step) {
    grid_step_ = grid_step;
    retranslate();
}

void KeyPanel::set_house(bool house) {
    house_ = house;
    retranslate();
}

void KeyPanel::retranslate() {
    entries_ = {{Sign::way, tr("chosen way in")},
                {Sign::unplaced, tr("position not given")},
                {Sign::smallest, tr("its smallest gap")},
                {Sign::other_way, tr("other ways in")},
                {Sign::slot, tr("slot")},
                {Sign::hole, tr("hole")},
                {Sign::ring, tr("ring around a pipe")},
                {Sign::mesh, tr("mesh")},
                {Sign::shut, tr("closed")},
                {Sign::room, tr("room, amid its gaps")},
                {Sign::arrows, tr("the survey's x and y")},
                {Sign::box, tr("box around the surveyed gaps, not the house")},
                {Sign::square, tr("one square: %1").arg(distance_words(grid_step_))}};
    if (house_) {
        entries_ = {{Sign::way, tr("chosen way in")},
                    {Sign::hidden, tr("where something hides it")},
                    {Sign::smallest, tr("its smallest gap")},
                    {Sign::other_way, tr("other ways in")},
                    {Sign::slot, tr("slot")},
                    {Sign::hole, tr("hole")},
                    {Sign::ring, tr("ring around a pipe")},
                    {Sign::mesh, tr("mesh")},
                    {Sign::to_close, tr("can be closed, by its number in the list")},
                    {Sign::ticked, tr("ticked, as if closed")}};
    }
    QStringList words;
    for (const Entry& entry : entries_) words << entry.text;
    setAccessibleName(tr("What the signs mean"));
    setAccessibleDescription(words.join(", "));
    updateGeometry();
    update();
}

std::vector<QRect> KeyPanel::places(int width, int& height) const {
    const QFontMetrics metrics(font());
    const int row = metrics.height() + 8;
    std::vector<QRect> all;
    int x = side;
    int y = 7;
    for (const Entry& entry : entries_) {
        const int wide = sign_width + 6 + metrics.horizontalAdvance(entry.text) + 2;
        if (x > side && x + wide > width - side) {
            x = side;
            y += row;
        }
        all.emplace_back(x, y, wide, row);
        x += wide + between;
    }
    height = y + row + 7;
    return all;
}

int KeyPanel::heightForWidth(int width) const {
    int height = 0;
    (void)places(width, height);
    return height;
}

QSize KeyPanel::sizeHint() const { return {500, heightForWidth(std::max(width(), 500))}; }

void KeyPanel::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), palette::panel);
    painter.setPen(palette::hairline);
    painter.drawLine(rect().topLeft(), rect().topRight());
    int height = 0;
    const std::vector<QRect> all = places(width(), height);
    for (std::size_t i = 0; i < entries_.size(); ++i) {
        paint_sign(painter, entries_[i].sign, QRectF(all[i].left(), all[i].top(), sign_width, all[i].height()));
        painter.setPen(palette::soft_ink);
        painter.drawText(all[i].adjusted(sign_width + 6, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, entries_[i].text);
    }
}

void KeyPanel::paint_sign(QPainter& painter, Sign sign, const QRectF& in) {
    const QPointF c = in.center();
    const QColor gap = palette::gap.darker(125);
    painter.setBrush(Qt::NoBrush);
    const auto line = [&](double x1, double y1, double x2, double y2) {
        painter.drawLine(c + QPointF(x1, y1), c + QPointF(x2, y2));
    };
    switch (sign) {
        case Sign::way: {
            painter.setPen(QPen(palette::way, 4, Qt::SolidLine, Qt::RoundCap));
            line(-12, 0, 10, 0);
            painter.setPen(Qt::NoPen);
            painter.setBrush(palette::way);
            painter.drawPolygon(QVector<QPointF>{c + QPointF(-3, -6), c + QPointF(9, 0), c + QPointF(-3, 6)});
            return;
        }
        case Sign::hidden: {
            QPen dashes(palette::way, 2.2, Qt::CustomDashLine, Qt::FlatCap);
            dashes.setDashPattern({3.2, 2.0});
            painter.setPen(dashes);
            return line(-14, 0, 14, 0);
        }
        case Sign::unplaced: painter.setPen(QPen(palette::way, 2, Qt::DotLine, Qt::RoundCap)); return line(-13, 0, 13, 0);
        case Sign::other_way: painter.setPen(QPen(palette::other_way, 1.5, Qt::DashLine)); return line(-14, 0, 14, 0);
        case Sign::smallest:
            painter.setPen(Qt::NoPen);
            painter.setBrush(QColor(palette::smallest.red(), palette::smallest.green(), palette::smallest.blue(), 70));
            painter.drawEllipse(c, 10, 10);
            painter.setBrush(palette::smallest);
            painter.drawEllipse(c, 5, 5);
            return;
        case Sign::slot: painter.setPen(QPen(gap, 5, Qt::SolidLine, Qt::RoundCap)); return line(-7, 0, 7, 0);
        case Sign::hole:
            painter.setPen(Qt::NoPen);
            painter.setBrush(gap);
            painter.drawEllipse(c, 5.5, 5.5);
            return;
        case Sign::ring:
            painter.setPen(QPen(gap, 3));
            painter.drawEllipse(c, 5.5, 5.5);
            return;
        case Sign::mesh:
            painter.setPen(QPen(gap, 2));
            for (const double at : {-5.0, 0.0, 5.0}) {
                line(at, -7, at, 7);
                line(-7, at, 7, at);
            }
            return;
        case Sign::shut:
            painter.setPen(QPen(gap, 3));
            line(-5, -5, 5, 5);
            return line(-5, 5, 5, -5);
        case Sign::to_close:
        case Sign::ticked: return paint_closing_sign(painter, sign == Sign::ticked, c);
        case Sign::box:
        case Sign::arrows:
        case Sign::room:
        case Sign::square: return paint_ground_sign(painter, sign, c);
    }
}

void KeyPanel::paint_closing_sign(QPainter& painter, bool ticked, const QPointF& middle) {
    const QRectF place(middle - QPointF(7, 7), QSizeF(14, 14));
    painter.setPen(QPen(ticked ? palette::shut_sign : palette::open_sign, 1.6));
    painter.setBrush(ticked ? palette::shut_sign : palette::card);
    painter.drawRoundedRect(place, 3, 3);
    if (ticked) {
        painter.setPen(QPen(palette::card, 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(
            QPolygonF(QVector<QPointF>{middle + QPointF(-3.5, 0.5), middle + QPointF(-1, 3), middle + QPointF(4, -3)}));
        return;
    }
    painter.setPen(palette::ink);
    painter.drawText(place, Qt::AlignCenter, QStringLiteral("7"));
}

void KeyPanel::paint_ground_sign(QPainter& painter, Sign sign, const QPointF& middle) {
    const auto at = [&](double x, double y) { return middle + QPointF(x, y); };
    const QPolygonF slab(QVector<QPointF>{at(-13, 5), at(-5, -5), at(13, -5), at(5, 5)});
    switch (sign) {
        case Sign::box:
            painter.setPen(QPen(palette::outline, 1));
            painter.drawRect(QRectF(at(-10, -2), QSizeF(14, 9)));
            painter.drawRect(QRectF(at(-4, -7), QSizeF(14, 9)));
            painter.drawLines(
                QVector<QPointF>{at(-10, -2), at(-4, -7), at(4, -2), at(10, -7), at(-10, 7), at(-4, 2), at(4, 7), at(10, 2)});
            return;
        case Sign::arrows:
            painter.setPen(QPen(palette::soft_ink, 1.5));
            painter.drawPolyline(QPolygonF(QVector<QPointF>{at(9, 2), at(12, 5), at(9, 8)}));
            painter.drawPolyline(QPolygonF(QVector<QPointF>{at(-11, -4), at(-8, -7), at(-5, -4)}));
            painter.drawPolyline(QPolygonF(QVector<QPointF>{at(12, 5), at(-8, 5), at(-8, -7)}));
            return;
        case Sign::room: {
            QFont slanted = painter.font();
            slanted.setItalic(true);
            painter.save();
            painter.setFont(slanted);
            painter.setPen(palette::soft_ink);
            painter.drawText(QRectF(at(-15, -10), QSizeF(30, 20)), Qt::AlignCenter, tr("abc"));
            painter.restore();
            return;
        }
        default:
            painter.setPen(QPen(palette::grid.darker(115), 1));
            painter.setBrush(palette::ground);
            painter.drawPolygon(slab);
    }
}

}  // namespace seamward::viewer
