// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/fit_sketch.h"

#include <QEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "document/gap_facts.h"
#include "document/way_text.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr double wire = 3;  ///< pixels; of a mesh, whose wires the survey does not tell

/// A window with torn edges where what is in it goes on; `tears`: those edges alone.
QPainterPath torn_window(const QRectF& window, Qt::Edges edges, QPainterPath& tears) {
    constexpr double tooth = 3, step = 5;
    QPolygonF outline;
    const auto side = [&](Qt::Edge edge, QPointF from, QPointF to, QPointF in) {
        const QLineF line(from, to);
        const int teeth = (edges & edge) != 0 ? std::max(2, static_cast<int>(line.length() / step)) : 1;
        QPolygonF points;
        for (int i = 0; i <= teeth; ++i)
            points << line.pointAt(i / static_cast<double>(teeth)) + in * (i % 2 * (teeth > 1 ? tooth : 0));
        outline << points;
        if (teeth > 1) tears.addPolygon(points);
    };
    side(Qt::TopEdge, window.topLeft(), window.topRight(), {0, 1});
    side(Qt::RightEdge, window.topRight(), window.bottomRight(), {-1, 0});
    side(Qt::BottomEdge, window.bottomRight(), window.bottomLeft(), {0, 0});
    side(Qt::LeftEdge, window.bottomLeft(), window.topLeft(), {1, 0});
    QPainterPath path;
    path.addPolygon(outline);
    path.closeSubpath();
    return path;
}

/// What is clear in an opening, as far as its window shows it.
QPainterPath clear_path(const Shape& shape, const FitLayout& layout) {
    const QRectF& clear = layout.opening.shape;
    const QRectF window = layout.opening.window.adjusted(-8, -8, 8, 8);
    QPainterPath path;
    if (is_shut(shape)) return path;
    if (std::holds_alternative<Slot>(shape)) {
        path.addRect(clear & window);
    } else {
        path.addEllipse(clear);
        if (!layout.pipe.isEmpty()) path.addEllipse(layout.pipe);
    }
    return path;
}

void paint_body(QPainter& painter, const Shape& shape, const FitLayout& layout) {
    painter.fillRect(layout.opening.window, palette::floor);
    painter.fillRect(layout.opening.window, QBrush(palette::grid, Qt::BDiagPattern));
    painter.setPen(QPen(palette::ink, 1.4));
    painter.setBrush(palette::card);
    painter.drawPath(clear_path(shape, layout));
    if (layout.pipe.isEmpty()) return;
    painter.setBrush(palette::gap);
    painter.drawEllipse(layout.pipe);
}

/// Around one clear square in the middle, and on to all sides.
void paint_wires(QPainter& painter, const FitLayout::Column& mesh) {
    const QRectF& window = mesh.window;
    const double pitch = mesh.shape.width() + wire;
    painter.fillRect(window, palette::card);
    painter.setPen(QPen(palette::ink, 1));
    painter.setBrush(palette::gap);
    const auto first = [&](double at, double from) { return at - wire - std::max(0.0, std::floor((at - from) / pitch)) * pitch; };
    for (double x = first(mesh.shape.left(), window.left()); x < window.right(); x += pitch)
        painter.drawRect(QRectF(x, window.top() - 2, wire, window.height() + 4));
    for (double y = first(mesh.shape.top(), window.top()); y < window.bottom(); y += pitch)
        painter.drawRect(QRectF(window.left() - 2, y, window.width() + 4, wire));
}

void paint_opening(QPainter& painter, const FitSubject& subject, const FitLayout& layout) {
    const QRectF& window = layout.opening.window;
    QPainterPath tears;
    const QPainterPath whole = torn_window(window, layout.opening.torn(), tears);
    painter.save();
    painter.setClipPath(whole);
    if (std::holds_alternative<Mesh>(subject.shape) && !is_shut(subject.shape)) {
        paint_wires(painter, layout.opening);
    } else {
        paint_body(painter, subject.shape, layout);
    }
    if (is_shut(subject.shape)) {
        painter.setPen(QPen(palette::shut_sign, 2));
        painter.drawLine(QPointF(window.left(), window.center().y()), QPointF(window.right(), window.center().y()));
    }
    const bool small = layout.lying.boundingRect().width() < 16;
    QPen dashes(palette::way, small ? 1.2 : 1.8);
    dashes.setDashPattern({small ? 1.8 : 2.5, small ? 1.2 : 1.8});
    painter.setBrush(Qt::NoBrush);
    painter.setPen(dashes);
    painter.drawPath(layout.lying);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette::ink, 1.2));
    painter.drawPath(tears);
}

/// The edges of a slot go on lightly past the animals, so that one sees who is higher.
void paint_guides(QPainter& painter, const FitSubject& subject, const FitLayout& layout) {
    if (!std::holds_alternative<Slot>(subject.shape) || is_shut(subject.shape) || layout.animals.empty()) return;
    const FitLayout::Column& opening = layout.opening;
    if ((opening.torn() & Qt::TopEdge) != 0) return;
    painter.setPen(QPen(palette::outline, 1, Qt::DotLine));
    for (const double height : {opening.shape.top(), opening.shape.bottom()})
        painter.drawLine(QPointF(opening.window.right() + 3, height), QPointF(layout.animals.back().window.right(), height));
}

void paint_animal(QPainter& painter, const FitLayout::Column& column, bool first) {
    QPainterPath tears, body;
    const QPainterPath whole = torn_window(column.window, column.torn(), tears);
    body.addEllipse(column.shape);
    painter.save();
    painter.setClipPath(whole);
    QColor fill = first ? palette::way : palette::gap;
    fill.setAlphaF(first ? 0.30 : 0.45);
    painter.setBrush(fill);
    painter.setPen(QPen(first ? palette::way : palette::ink, first ? 1.8 : 1.2));
    painter.drawPath(body);
    painter.restore();
    painter.save();
    painter.setClipPath(body);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette::ink, 1.2));
    painter.drawPath(tears);
    painter.restore();
}

/// An arrow that goes on, one that a bar stops, or a question mark, in a square.
void paint_sign(QPainter& painter, const QRectF& box, Fit fit) {
    const double y = box.center().y();
    const double stop = fit == Fit::kept_out ? box.right() - 3 : box.right();
    const double head = box.height() * 0.28;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(
        QPen(fit == Fit::through ? palette::open_sign : palette::shut_sign, 2, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    if (fit == Fit::perhaps) {
        painter.setPen(palette::ink);
        painter.drawText(box, Qt::AlignCenter, QStringLiteral("?"));
        return;
    }
    painter.drawLine(QPointF(box.left(), y), QPointF(stop - 2, y));
    painter.drawPolyline(QPolygonF() << QPointF(stop - head - 1, y - head) << QPointF(stop - 1, y)
                                     << QPointF(stop - head - 1, y + head));
    if (fit == Fit::kept_out) painter.drawLine(QPointF(box.right(), box.top() + 1), QPointF(box.right(), box.bottom() - 1));
}

/// The name, in the middle of its column, down to the last line, which is left free.
void paint_name(QPainter& painter, const FitLayout::Column& column, double line) {
    const QFontMetricsF metrics(painter.font());
    double top = column.words.bottom() - line * (column.lines.size() + 1);
    painter.setPen(palette::ink);
    for (const QString& words : column.lines) {
        const QRectF box(column.words.left(), top, column.words.width(), line);
        painter.drawText(box, Qt::AlignCenter, metrics.elidedText(words, Qt::ElideRight, box.width()));
        top += line;
    }
}

void paint_verdict(QPainter& painter, const FitLayout::Column& column, double line, Fit fit) {
    const QFontMetricsF metrics(painter.font());
    const double sign = metrics.ascent();
    const QString words = metrics.elidedText(fit_words(fit), Qt::ElideRight, column.words.width() - sign * 1.4);
    const double wide = sign * 1.4 + metrics.horizontalAdvance(words);
    const double left = column.words.center().x() - wide / 2;
    const double top = column.words.bottom() - line;
    paint_sign(painter, QRectF(left, top + (line - sign * 0.8) / 2, sign, sign * 0.8), fit);
    painter.setPen(palette::ink);
    painter.drawText(QRectF(left + sign * 1.4, top, wide, line), Qt::AlignLeft | Qt::AlignVCenter, words);
}

void paint_bar(QPainter& painter, const FitLayout& layout) {
    if (layout.bar.isNull()) return;
    painter.setPen(QPen(palette::soft_ink, 1.4));
    painter.drawLine(layout.bar);
    for (const QPointF end : {layout.bar.p1(), layout.bar.p2()}) painter.drawLine(end - QPointF(0, 3), end + QPointF(0, 3));
    painter.setPen(palette::soft_ink);
    painter.drawText(layout.bar_box, Qt::AlignCenter, layout.bar_words);
}

}  // namespace

FitSketch::FitSketch(QWidget* parent) : QWidget(parent) {
    setObjectName("fit_sketch");
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    retranslate();
}

void FitSketch::show_gap(const Job& job, GapIndex gap, std::optional<std::size_t> chosen_animal) {
    subject_ = fit_subject(job, gap, chosen_animal);
    retranslate();
}

void FitSketch::show_gap(const JobDocument& document, GapIndex gap) {
    const int animal = document.animal();
    show_gap(document.job(), gap, animal < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(animal)));
}

QFont FitSketch::small_font() const {
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * 0.92);
    return small;
}

QSize FitSketch::sizeHint() const { return {300, 62 + 3 * static_cast<int>(std::ceil(QFontMetricsF(small_font()).height()))}; }

QSize FitSketch::minimumSizeHint() const {
    return {200, 42 + 2 * static_cast<int>(std::ceil(QFontMetricsF(small_font()).height()))};
}

void FitSketch::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    retranslate();
}

void FitSketch::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) updateGeometry();
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) retranslate();
}

void FitSketch::retranslate() {
    setAccessibleName(tr("The gap and the animals, to the same scale"));
    const QStringList sentences = description();
    setAccessibleDescription(sentences.join(' '));
    QString html;
    for (const QString& sentence : sentences) html += "<p style='margin: 2px'>" + sentence.toHtmlEscaped() + "</p>";
    setToolTip(html);
    update();
}

QStringList FitSketch::description() const {
    QStringList all;
    const FitLayout layout = laid_out();
    if (is_shut(subject_.shape)) {
        all << tr("The gap is closed.");
    } else {
        all << tr("The gap: %1, clear width %2.").arg(shape_words(subject_.shape), width_words(clear_width(subject_.shape)));
    }
    for (const FitAnimal& animal : subject_.animals) {
        const QString sentence = animal.fit == Fit::through ? tr("%1, cross-section %2 by %3: fits.")
                                 : animal.fit == Fit::perhaps
                                     ? tr("%1, cross-section %2 by %3: perhaps fits, if the gap is as wide as it may be.")
                                     : tr("%1, cross-section %2 by %3: kept out.");
        all << sentence.arg(animal_text(animal.pest), width_words(animal.pest.size.slit), width_words(animal.pest.size.hole));
    }
    if (subject_.animals.empty()) all << tr("This job names no animals.");
    if (!layout.lying.isEmpty())
        all << tr("The dashed outline in the gap is that of: %1.").arg(animal_text(subject_.inside()->pest));
    if (!layout.bar.isNull()) all << tr("All is drawn to one scale; the bar is %1 long.").arg(layout.bar_words);
    const bool high = (layout.opening.torn() & Qt::TopEdge) != 0;
    if (high) all << tr("The gap is too large to be drawn whole beside them.");
    for (std::size_t i = 0; i < layout.animals.size(); ++i) {
        if (layout.animals[i].torn() != 0)
            all << tr("%1 is too large to be drawn whole beside it.").arg(animal_text(subject_.animals[i].pest));
    }
    return all;
}

void FitSketch::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const FitLayout layout = laid_out();
    const QFont plain = small_font();
    QFont strong = plain;
    strong.setBold(true);
    painter.setFont(plain);
    paint_opening(painter, subject_, layout);
    paint_guides(painter, subject_, layout);
    paint_name(painter, layout.opening, layout.line);
    paint_bar(painter, layout);
    for (std::size_t i = 0; i < layout.animals.size(); ++i) {
        const bool asked = subject_.chosen && i == 0;
        paint_animal(painter, layout.animals[i], i == 0 && subject_.inside() != nullptr);
        painter.setFont(asked ? strong : plain);
        paint_name(painter, layout.animals[i], layout.line);
        painter.setFont(plain);
        paint_verdict(painter, layout.animals[i], layout.line, subject_.animals[i].fit);
    }
    if (subject_.animals.empty()) {
        painter.setPen(palette::soft_ink);
        painter.drawText(layout.note, Qt::AlignCenter | Qt::TextWordWrap, tr("This job names no animals."));
    }
}

}  // namespace seamward::viewer
