// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/example_card.h"

#include <QEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>

#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr int pad = 12;
constexpr double corner = 10;

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}

}  // namespace

ExampleCard::ExampleCard(const QString& path, QWidget* parent) : QAbstractButton(parent), path_(path) {
    setObjectName("example_" + QFileInfo(path).completeBaseName());
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    retranslate();
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
    words_ = words(path_);
    setAccessibleName(words_.title);
    setAccessibleDescription(words_.line);
    setToolTip(tr("Open this example"));
    updateGeometry();
    update();
}

void ExampleCard::changeEvent(QEvent* event) {
    QAbstractButton::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
    if (event->type() == QEvent::FontChange) updateGeometry();
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
        const QRect box = QFontMetrics(font).boundingRect(QRect(0, 0, inside, 10'000), Qt::TextWordWrap, text);
        return QRect(pad, y, inside, box.height());
    };
    to.title = below(to.picture.bottom() + 10, bold(font()), words_.title);
    to.line = below(to.title.bottom() + 4, font(), words_.line);
    to.height = to.line.bottom() + pad;
    return to;
}

QSize ExampleCard::sizeHint() const { return {260, layout(260).height}; }

int ExampleCard::heightForWidth(int width) const { return layout(width).height; }

void ExampleCard::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

void ExampleCard::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const Layout at = layout(width());
    const QRectF border = QRectF(rect()).adjusted(1, 1, -1, -1);
    QPainterPath shape;
    shape.addRoundedRect(border, corner, corner);
    painter.fillPath(shape, isDown() ? palette::chosen_row : palette::card);
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
    painter.setPen(palette::ink);
    painter.setFont(bold(font()));
    painter.drawText(at.title, Qt::TextWordWrap, words_.title);
    painter.setPen(palette::soft_ink);
    painter.setFont(font());
    painter.drawText(at.line, Qt::TextWordWrap, words_.line);
    const bool marked = hasFocus() || underMouse();
    painter.setPen(QPen(marked ? palette::way : palette::hairline, hasFocus() ? 2.5 : 1.2));
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
