// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/form_field.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

#include "layers/palette.h"

namespace seamward::viewer {

FaultLabel::FaultLabel(QWidget* parent) : QLabel(parent) {
    setObjectName("fault");
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    setTextInteractionFlags(Qt::TextSelectableByMouse);
    setContentsMargins(fontMetrics().height() + 6, 1, 0, 3);
    hide();
}

void FaultLabel::set_fault(const QString& text) {
    setText(text);
    setVisible(!text.isEmpty());
}

void FaultLabel::paintEvent(QPaintEvent* event) {
    QLabel::paintEvent(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double side = fontMetrics().height() * 0.95;
    const QRectF sign(1, 2, side, side);
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette::smallest);
    painter.drawPolygon(QPolygonF({QPointF(sign.center().x(), sign.top()), sign.bottomRight(), sign.bottomLeft()}));
    painter.setPen(QPen(palette::ink, 1.6, Qt::SolidLine, Qt::RoundCap));
    const double x = sign.center().x();
    painter.drawLine(QPointF(x, sign.top() + side * 0.38), QPointF(x, sign.top() + side * 0.66));
    painter.drawPoint(QPointF(x, sign.top() + side * 0.84));
}

FormField::FormField(QWidget* field, QWidget* parent, bool with_button)
    : QWidget(parent), question_(new QLabel(this)), field_(field), fault_(new FaultLabel(this)) {
    field_->setParent(this);
    question_->setBuddy(field_);
    question_->setWordWrap(true);
    auto* line = new QHBoxLayout;
    line->setSpacing(6);
    line->addWidget(field_, 1);
    if (with_button) {
        button_ = new QPushButton(this);
        button_->setAutoDefault(false);
        line->addWidget(button_);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    column->addWidget(question_);
    column->addLayout(line);
    column->addWidget(fault_);
}

void FormField::set_question(const QString& text) {
    question_->setText(text);
    field_->setAccessibleName(QString(text).remove('&'));
}

void FormField::set_fault(const QString& text) {
    fault_->set_fault(text);
    field_->setAccessibleDescription(text);
}

QLabel* form_heading(QWidget* parent) {
    auto* heading = new QLabel(parent);
    QFont strong = heading->font();
    strong.setBold(true);
    strong.setPointSizeF(strong.pointSizeF() * 1.12);
    heading->setFont(strong);
    heading->setContentsMargins(0, 8, 0, 0);
    return heading;
}

}  // namespace seamward::viewer
