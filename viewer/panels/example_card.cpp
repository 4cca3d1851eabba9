// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/example_card.h"

#include <QFileInfo>
#include <QPainter>
#include <QPainterPath>

#include "layers/palette.h"
#include "panels/row_look.h"

namespace seamward::viewer {

ExampleCard::ExampleCard(const QString& path, QWidget* parent) : FileCard(path, "example_", parent) {
    ExampleCard::retranslate();
}

ExampleCard::Words ExampleCard::words(const QString& path) {
    const QString name = QFileInfo(path).completeBaseName();
    if (name == "demo")
        return {tr("Stucco house on a slab"), tr("One story with a garage: the joint at the foot of the stucco, and the doors.")};
    if (name == "two-story")
        return {tr("Two stories with gables"), tr("From the eaves and the gable vents into the attic, and down into the rooms.")};
    if (name == "brick-crawl")
        return {tr("Brick house on a crawl space"), tr("Weeps and vents stay open; what is closed is the floor above.")};
    if (name == "townhouse") return {tr("Middle house of a row"), tr("Neighbors on both sides: party walls and a shared attic.")};
    if (name == "wall-corner")
        return {tr("Wall corner to teach on"), tr("One corner of a house, with every gap large enough to see.")};
    if (name == "apartments") return {tr("Building of 24 dwellings"), tr("Kitchens, baths and corridors over three floors.")};
    return {name, tr("A job to look around in.")};
}

void ExampleCard::retranslate() {
    words_ = words(path());
    say(words_.title, words_.line, tr("Open this example"));
}

void ExampleCard::set_picture(const QImage& picture) {
    picture_ = picture;
    update();
}

ExampleCard::Layout ExampleCard::layout(int width) const {
    Layout to;
    to.picture = QRect(0, 0, width, width * 545 / 1000);
    const int inside = width - 2 * pad;
    const auto below = [&](int y, const QFont& font, const QString& text) {
        return QRect(pad, y, inside, text_height(QFontMetrics(font), inside, text));
    };
    to.title = below(to.picture.bottom() + 10, bold(font()), words_.title);
    to.line = below(to.title.bottom() + 4, font(), words_.line);
    to.height = to.line.bottom() + pad;
    return to;
}

void ExampleCard::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const Layout at = layout(width());
    QPainterPath shape;
    shape.addRoundedRect(border(), corner, corner);
    painter.fillPath(shape, ground());
    painter.save();
    painter.setClipPath(shape);
    painter.fillRect(at.picture, palette::paper_low);
    if (picture_.isNull()) {
        paint_house_sign(painter, at.picture);
    } else {
        const QSizeF whole = picture_.size();
        QSizeF part = QSizeF(at.picture.size()).scaled(whole, Qt::KeepAspectRatio);
        const QRectF source(QPointF((whole.width() - part.width()) / 2, (whole.height() - part.height()) / 2), part);
        painter.drawImage(at.picture, picture_, source);
    }
    painter.setPen(palette::hairline);
    painter.drawLine(at.picture.bottomLeft(), at.picture.bottomRight());
    painter.restore();
    paint_words(painter, at.title, words_.title, at.line, words_.line);
    painter.setPen(edge());
    painter.drawPath(shape);
}

void ExampleCard::paint_house_sign(QPainter& painter, const QRectF& in) const {
    const QPointF c = in.center();
    const double u = in.height() / 10;
    const auto at = [&](double x, double y) { return c + QPointF(x * u, y * u); };
    painter.setPen(QPen(palette::grid, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(QPolygonF({at(-3.4, -0.2), at(0, -2.6), at(3.4, -0.2)}));
    painter.drawPolyline(QPolygonF({at(-2.7, -0.2), at(-2.7, 2.4), at(2.7, 2.4), at(2.7, -0.2)}));
    painter.drawPolyline(QPolygonF({at(-0.6, 2.4), at(-0.6, 0.7), at(0.6, 0.7), at(0.6, 2.4)}));
}

}  // namespace seamward::viewer
