// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/price_curve.h"

#include <QEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <cstdint>

#include "document/closings_text.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr int side = 18;  ///< room at both sides, for half the knob
constexpr int top = 14;
constexpr double knob_size = 7;
constexpr double no_way_room = 16;  ///< between the narrowest width and the line on which nothing gets in
constexpr double grasp = 4;         ///< so many pixels from a stair it is taken
constexpr int nothing_dragged = -2;
constexpr std::int64_t beyond_plan = 5;  ///< the scale ends a fifth above the plan, so that one sees what comes next
constexpr int arrow = 9;                 ///< room for the arrow where the stairs go on

QFont small(QFont font) {
    font.setPointSizeF(font.pointSizeF() * 0.88);
    return font;
}

}  // namespace

PriceCurve::PriceCurve(QWidget* parent) : QWidget(parent) {
    setObjectName("price_curve");
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    retranslate();
}

void PriceCurve::retranslate() {
    setAccessibleName(tr("What each price keeps out"));
    setToolTip(tr("Drag along the price, or use the arrow keys: what gives the most for that price is ticked."));
}

void PriceCurve::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

void PriceCurve::show(Shown shown) {
    shown_ = std::move(shown);
    // A scale that changed under the mouse would take the knob with it.
    if (!dragged_) scale();
    setAccessibleDescription(goes_on() ? tr("%1 The prices go on to %2.").arg(shown_.words, money_words(dearest()))
                                       : shown_.words);
    update();
}

QSize PriceCurve::sizeHint() const { return {360, 120 + 2 * QFontMetrics(small(font())).height()}; }

QSize PriceCurve::minimumSizeHint() const { return {240, sizeHint().height()}; }

QPointF PriceCurve::stair_place(int stair) const {
    return stair == beginning ? place({Money{}, shown_.width_now}) : place(shown_.stairs[static_cast<std::size_t>(stair)]);
}

QRectF PriceCurve::field() const {
    const int words = QFontMetrics(small(font())).height() + 4;
    return QRectF(rect()).adjusted(side, top, -side, -words);
}

void PriceCurve::scale() {
    const Money around_plan{shown_.plan.cents + shown_.plan.cents / beyond_plan};
    const bool far = around_plan > Money{} && dearest().cents > around_plan.cents + around_plan.cents / beyond_plan;
    const bool knob_inside = shown_.knob.price <= around_plan;
    up_to_ = std::max({far && knob_inside ? around_plan : dearest(), shown_.knob.price, Money{1}});
}

double PriceCurve::x_of(Money price) const {
    return field().left() + field().width() * static_cast<double>(price.cents) / static_cast<double>(up_to_.cents);
}

int PriceCurve::last_shown() const {
    const auto inside = [this](const Stair& one) { return one.price <= up_to_; };
    return static_cast<int>(std::ranges::count_if(shown_.stairs, inside)) - 1;
}

double PriceCurve::y_of(double width) const {
    double low = shown_.width_now > 0 ? shown_.width_now : 1e-3;
    double high = low;
    const auto take = [&](double value) {
        if (value <= 0) return;
        low = std::min(low, value);
        high = std::max(high, value);
    };
    for (int i = 0; i <= last_shown(); ++i) take(shown_.stairs[static_cast<std::size_t>(i)].width);
    for (const Animal& animal : shown_.animals) take(animal.needs);
    take(shown_.knob.width);
    const QRectF in = field();
    if (width <= 0) return in.bottom();
    high *= 1.1;
    return in.top() + (in.height() - no_way_room) * std::log(high / width) / std::log(high / (low * 0.85));
}

void PriceCurve::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(small(font()));
    paint_stairs(painter);
    paint_animals(painter);
    paint_scale(painter);
    paint_knob(painter);
    if (!hasFocus()) return;
    painter.setPen(QPen(palette::way, 1, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(4.5, 1.5, -4.5, -1.5));
}

QPainterPath PriceCurve::stairs() const {
    QPainterPath path({field().left(), y_of(shown_.width_now)});
    for (int i = 0; i <= last_shown(); ++i) {
        const Stair& stair = shown_.stairs[static_cast<std::size_t>(i)];
        path.lineTo(x_of(stair.price), path.currentPosition().y());
        path.lineTo(place(stair));
    }
    path.lineTo(field().right(), path.currentPosition().y());
    return path;
}

void PriceCurve::paint_stairs(QPainter& painter) const {
    const QRectF in = field();
    const QPainterPath path = stairs();
    QPainterPath under = path;
    under.lineTo(in.bottomRight());
    under.lineTo(in.bottomLeft());
    painter.fillPath(under, palette::paper_low);
    painter.setPen(QPen(palette::outline, 2));
    painter.drawPath(path);
    painter.setPen(QPen(palette::outline, 1));
    painter.drawLine(in.bottomLeft(), in.bottomRight());
    if (!goes_on()) return;
    const QPointF tip(in.right() + arrow, path.currentPosition().y());
    painter.setPen(QPen(palette::outline, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawLine(path.currentPosition(), tip);
    painter.drawPolyline(QPolygonF{{tip + QPointF(-4, -4), tip, tip + QPointF(-4, 4)}});
}

QRectF PriceCurve::free_place(QSizeF size, double y, const std::vector<QRectF>& taken) const {
    const QRectF in = field();
    const QList<QPolygonF> parts = stairs().toSubpathPolygons();
    const double left = in.left() + 4;
    const double right = in.right() - size.width() - 4;
    const double above = y - size.height() - 1;
    const auto is_free = [&](const QRectF& at) {
        if (std::ranges::any_of(taken, [&](const QRectF& other) { return other.intersects(at); })) return false;
        for (const QPolygonF& part : parts) {
            for (int i = 1; i < part.size(); ++i) {
                if (at.intersects(QRectF(part[i - 1], part[i]).normalized().adjusted(-1, -1, 1, 1))) return false;
            }
        }
        return at.top() >= 0 && at.bottom() <= in.bottom();
    };
    for (const QPointF corner : {QPointF(left, y + 1), QPointF(right, above), QPointF(right, y + 1), QPointF(left, above)}) {
        if (is_free(QRectF(corner, size))) return {corner, size};
    }
    for (double x = left; x < right; x += 10) {
        if (is_free(QRectF(QPointF(x, y + 1), size))) return {QPointF(x, y + 1), size};
    }
    return {QPointF(left, y + 1), size};
}

void PriceCurve::paint_animals(QPainter& painter) const {
    const QRectF in = field();
    const QFontMetrics metrics(painter.font());
    std::vector<QRectF> taken;
    for (const Animal& animal : shown_.animals) {
        const double y = y_of(animal.needs);
        painter.setPen(QPen(palette::other_way, 1, Qt::DashLine));
        painter.drawLine(QPointF(in.left(), y), QPointF(in.right(), y));
        const QRectF name = free_place(QSizeF(metrics.horizontalAdvance(animal.name) + 4, metrics.height()), y, taken);
        taken.push_back(name);
        painter.setPen(animal.shut_out ? palette::soft_ink : palette::ink);
        painter.drawText(name, Qt::AlignLeft | Qt::AlignVCenter, animal.name);
    }
}

void PriceCurve::paint_scale(QPainter& painter) const {
    const QRectF in = field();
    const QRectF words(in.left() - 10, in.bottom() + 2, in.width() + 20, height() - in.bottom() - 2);
    const QFontMetrics metrics(painter.font());
    const auto wide = [&](const QString& text) { return metrics.horizontalAdvance(text) + 2; };
    const bool planned = shown_.plan > Money{} && shown_.plan <= up_to_;
    const bool ends_at_plan = shown_.plan == up_to_;
    const QString left = money_words({});
    // Where prices go on it is said over the line, so that the plan's price stands under its mark.
    const QString right = goes_on() || ends_at_plan ? QString() : money_words(up_to_);
    painter.setPen(palette::soft_ink);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, left);
    painter.drawText(words, Qt::AlignRight | Qt::AlignVCenter, right);
    if (goes_on()) {
        const QRectF over(in.left(), in.bottom() - metrics.height() - 1, in.width() - 2, metrics.height());
        painter.drawText(over, Qt::AlignRight | Qt::AlignVCenter, tr("goes on to %1").arg(money_words(dearest())));
    }
    const QRectF between = words.adjusted(wide(left) + 10, 0, right.isEmpty() ? 0 : -wide(right) - 10, 0);
    if (!planned) {
        if (wide(tr("price")) <= between.width()) painter.drawText(between, Qt::AlignCenter, tr("price"));
        return;
    }
    const double at = x_of(shown_.plan);
    painter.setPen(QPen(palette::ink, 1.5));
    painter.drawLine(QPointF(at, in.bottom() - 4), QPointF(at, in.bottom() + 3));
    for (const QString& text : {tr("plan %1").arg(money_words(shown_.plan)), tr("plan")}) {
        const double size = wide(text);
        if (size > between.width()) continue;
        const double from = std::clamp(at - size / 2, between.left(), between.right() - size);
        painter.drawText(QRectF(from, between.top(), size, between.height()), Qt::AlignCenter, text);
        break;
    }
}

void PriceCurve::paint_knob(QPainter& painter) const {
    const QPointF at = knob_place();
    painter.setPen(QPen(palette::way, 1.5));
    painter.drawLine(QPointF(at.x(), field().top()), QPointF(at.x(), field().bottom()));
    painter.setPen(QPen(palette::paper_high, 2));
    painter.setBrush(palette::way);
    painter.drawEllipse(at, knob_size, knob_size);
}

int PriceCurve::stair_at(double x) const {
    // What can be had for that price; the nearest stair where one is close by.
    if (x <= field().left()) return beginning;
    int stair = beginning;
    double nearest = grasp;
    for (int i = 0; i <= last_shown(); ++i) {
        const double to = x - x_of(shown_.stairs[static_cast<std::size_t>(i)].price);
        if (std::abs(to) < nearest || (to > 0 && nearest == grasp)) stair = i;
        nearest = std::min(nearest, std::abs(to));
    }
    return stair;
}

int PriceCurve::before_knob() const {
    const auto cheaper = [this](const Stair& one) { return one.price < shown_.knob.price; };
    return static_cast<int>(std::ranges::count_if(shown_.stairs, cheaper)) - 1;
}

int PriceCurve::after_knob() const {
    const auto next = std::ranges::find_if(shown_.stairs, [this](const Stair& one) { return one.price > shown_.knob.price; });
    return next == shown_.stairs.end() ? static_cast<int>(shown_.stairs.size()) - 1
                                       : static_cast<int>(next - shown_.stairs.begin());
}

void PriceCurve::go(int stair) {
    if (stair == last_) return;
    last_ = stair;
    emit chosen(stair);
}

void PriceCurve::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || shown_.stairs.empty()) return;
    last_ = nothing_dragged;
    dragged_ = true;
    go(stair_at(event->localPos().x()));
}

void PriceCurve::mouseMoveEvent(QMouseEvent* event) {
    if ((event->buttons() & Qt::LeftButton) != 0 && !shown_.stairs.empty()) go(stair_at(event->localPos().x()));
}

void PriceCurve::mouseReleaseEvent(QMouseEvent* /*event*/) {
    dragged_ = false;
    scale();
    update();
}

void PriceCurve::keyPressEvent(QKeyEvent* event) {
    if (shown_.stairs.empty()) return QWidget::keyPressEvent(event);
    last_ = nothing_dragged;
    switch (event->key()) {
        case Qt::Key_Left:
        case Qt::Key_Down: return go(before_knob());
        case Qt::Key_Right:
        case Qt::Key_Up: return go(after_knob());
        case Qt::Key_Home: return go(beginning);
        case Qt::Key_End: return go(static_cast<int>(shown_.stairs.size()) - 1);
        default: QWidget::keyPressEvent(event);
    }
}

}  // namespace seamward::viewer
