// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/closings_panel.h"

#include <QEvent>
#include <QVBoxLayout>

#include "panels/closings_head.h"
#include "panels/closings_list.h"
#include "panels/price_part.h"

namespace seamward::viewer {

ClosingsPanel::ClosingsPanel(ClosingsDocument& closings, QWidget* parent) : QWidget(parent) {
    setObjectName("closings_panel");
    setMinimumWidth(300);
    auto* head = new ClosingsHead(closings, this);
    auto* price = new PricePart(closings, this);
    list_ = new ClosingsList(closings, price, this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(head);
    column->addWidget(list_, 1);
    connect(list_, &ClosingsList::gap_chosen, this, &ClosingsPanel::gap_chosen);
    connect(price, &PricePart::said, head, &ClosingsHead::say);
    setAccessibleName(tr("Closings"));
}

void ClosingsPanel::show_gap(GapIndex gap) { list_->show_gap(gap); }

void ClosingsPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) setAccessibleName(tr("Closings"));
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
