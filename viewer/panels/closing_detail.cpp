// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/closing_detail.h"

#include <QAbstractItemView>
#include <QEvent>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "document/closings_text.h"
#include "document/translations.h"
#include "panels/choice_box.h"

namespace seamward::viewer {

ClosingDetail::ClosingDetail(ClosingsDocument& closings, QWidget* parent)
    : QWidget(parent),
      closings_(closings),
      lead_(new QLabel(this)),
      treatments_(new ChoiceBox(this)),
      refused_(new QLabel(this)),
      words_(new QLabel(this)) {
    setObjectName("closing_detail");
    treatments_->setObjectName("treatments");
    refused_->setObjectName("treatment_refused");
    words_->setObjectName("closing_words");
    treatments_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    treatments_->setMinimumContentsLength(12);
    treatments_->setMinimumHeight(30);
    treatments_->setFocusPolicy(Qt::StrongFocus);
    lead_->setBuddy(treatments_);
    refused_->setWordWrap(true);
    refused_->setTextFormat(Qt::PlainText);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::RichText);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(28, 8, 18, 12);
    column->setSpacing(5);
    column->addWidget(lead_);
    column->addWidget(treatments_);
    column->addWidget(refused_);
    column->addWidget(words_);
    connect(treatments_, qOverload<int>(&QComboBox::currentIndexChanged), this, [this](int row) {
        const OfferedClosing* offer = closings_.offer_of(gap_);
        refused_->hide();
        if (offer != nullptr && row >= 0)
            closings_.choose_treatment(gap_, offer->options[static_cast<std::size_t>(row)].treatment);
        refresh();
    });
    connect(&closings_, &ClosingsDocument::state_changed, this, &ClosingDetail::refresh);
    retranslate();
}

void ClosingDetail::retranslate() {
    lead_->setText(tr("C&lose it with"));
    treatments_->setAccessibleName(tr("Close it with"));
    treatments_->setToolTip(tr("Everything that fits this gap and may be used here, cheapest first"));
    words_->setAccessibleName(tr("What it takes"));
    refresh();
}

void ClosingDetail::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

void ClosingDetail::show(GapIndex gap) {
    gap_ = gap;
    refused_->hide();
    refresh();
}

void ClosingDetail::refuse(const Refusal& refusal) {
    refused_->setText(tr("%1 must not be used here: %2 (%3)")
                          .arg(treatment_words(refusal.treatment), spoken_text(refusal.why), spoken_text(refusal.source)));
    refused_->show();
    emit size_changed();
}

void ClosingDetail::refresh() {
    const OfferedClosing* offer = gap_.valid() ? closings_.offer_of(gap_) : nullptr;
    if (offer == nullptr) return;
    const QSignalBlocker quiet(treatments_);
    treatments_->clear();
    for (std::size_t i = 0; i < offer->options.size(); ++i) {
        treatments_->addItem(option_words(*offer, i));
        treatments_->setItemData(static_cast<int>(i), treatments_->itemText(static_cast<int>(i)), Qt::ToolTipRole);
    }
    treatments_->setCurrentIndex(static_cast<int>(closings_.choice(*offer)));
    treatments_->view()->setMinimumWidth(treatments_->view()->sizeHintForColumn(0) + 24);
    words_->setText(closing_html(closings_.plan(), *offer, closings_.choice(*offer)));
    emit size_changed();
}

int ClosingDetail::heightForWidth(int width) const { return layout()->totalHeightForWidth(width); }

}  // namespace seamward::viewer
