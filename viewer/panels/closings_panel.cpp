// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/closings_panel.h"

#include <QEvent>

#include "panels/closings_head.h"
#include "panels/closings_list.h"
#include "panels/price_part.h"

namespace seamward::viewer {

namespace {

constexpr int most_of_height = 45;  ///< percent that the head may take

}  // namespace

ClosingsPanel::ClosingsPanel(ClosingsDocument& closings, QWidget* parent)
    : QWidget(parent), column_(new QVBoxLayout(this)), head_(new ClosingsHead(closings, this)) {
    setObjectName("closings_panel");
    setMinimumWidth(300);
    auto* top = new QWidget(this);
    scrolled_ = new QVBoxLayout(top);
    auto* price = new PricePart(closings, top);
    list_ = new ClosingsList(closings, top, this);
    for (QVBoxLayout* layout : {column_, scrolled_}) {
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(0);
    }
    scrolled_->addWidget(price);
    column_->addWidget(head_);
    column_->addWidget(list_, 1);
    connect(list_, &ClosingsList::gap_chosen, this, &ClosingsPanel::gap_chosen);
    connect(price, &PricePart::said, head_, &ClosingsHead::say);
    connect(&closings, &ClosingsDocument::outlook_found, this, &ClosingsPanel::place_head);
    setAccessibleName(tr("Closings"));
}

void ClosingsPanel::place_head() {
    const bool scrolls = head_->heightForWidth(width()) * 100 > height() * most_of_height;
    QVBoxLayout* to = scrolls ? scrolled_ : column_;
    if (to->indexOf(head_) >= 0) return;
    (scrolls ? column_ : scrolled_)->removeWidget(head_);
    to->insertWidget(0, head_);
    head_->show();
}

bool ClosingsPanel::event(QEvent* event) {
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Resize) place_head();
    return done;
}

void ClosingsPanel::show_gap(GapIndex gap) { list_->show_gap(gap); }

void ClosingsPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) setAccessibleName(tr("Closings"));
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
