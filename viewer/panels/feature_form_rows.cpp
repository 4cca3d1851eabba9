// SPDX-License-Identifier: GPL-3.0-or-later
// What the form shows, and its words.
#include <QEvent>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "document/feature_words.h"
#include "document/gap_facts.h"
#include "panels/feature_form.h"

namespace seamward::viewer {

void FeatureForm::set_up() {
    for (QLabel* label : {where_, gaps_hint_}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
    }
    gaps_hint_->setForegroundRole(QPalette::PlaceholderText);
    show_->setCheckable(true);
    search_->setClearButtonEnabled(true);
    what_label_->setBuddy(search_);
    types_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    types_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    types_->setWordWrap(true);
    for (SizeField* field : {along_, up_}) field->set_of(SizeField::Of::length);
    along_label_->setBuddy(along_);
    up_label_->setBuddy(up_);
    name_label_->setBuddy(name_);
    name_->setMaxLength(120);
    add_->setDefault(true);
    remove_->hide();
}

void FeatureForm::lay_out() {
    gap_rows_->setContentsMargins(0, 0, 0, 0);
    gap_rows_->setSpacing(4);
    auto* rest = new QVBoxLayout(rest_);
    rest->setContentsMargins(0, 4, 0, 0);
    rest->setSpacing(4);
    for (QWidget* widget : {static_cast<QWidget*>(along_label_), static_cast<QWidget*>(along_), static_cast<QWidget*>(up_label_),
                            static_cast<QWidget*>(up_), static_cast<QWidget*>(name_label_), static_cast<QWidget*>(name_)})
        rest->addWidget(widget);
    rest->addWidget(gaps_label_);
    rest->addWidget(gaps_hint_);
    rest->addWidget(gap_box_);
    auto* body = new QVBoxLayout(body_);
    body->setContentsMargins(0, 2, 0, 0);
    body->setSpacing(7);
    body->addWidget(what_label_);
    body->addWidget(search_);
    body->addWidget(types_);
    body->addWidget(rest_);
    auto* inner = new QWidget;
    auto* column = new QVBoxLayout(inner);
    column->setContentsMargins(18, 8, 18, 8);
    column->setSpacing(8);
    auto* place = new QHBoxLayout;
    place->setSpacing(10);
    place->addWidget(where_, 1);
    place->addWidget(show_, 0, Qt::AlignTop);
    column->addWidget(heading_);
    column->addLayout(place);
    column->addWidget(body_);
    column->addStretch(1);
    scroll_ = new QScrollArea(this);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->setWidget(inner);
    for (QObject* watched : {static_cast<QObject*>(inner), static_cast<QObject*>(scroll_->viewport())})
        watched->installEventFilter(this);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    buttons->addWidget(add_);
    buttons->addWidget(cancel_);
    buttons->addWidget(remove_);
    buttons->addStretch();
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(18, 6, 18, 14);
    foot->addWidget(problem_);
    foot->addLayout(buttons);
    const std::array<QWidget*, 6> order{show_, search_, types_, &along_->line(), &up_->line(), name_};
    for (std::size_t i = 0; i + 1 < order.size(); ++i) setTabOrder(order.at(i), order.at(i + 1));
    put_in_order();
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    whole->addWidget(scroll_, 1);
    whole->addLayout(foot);
}

void FeatureForm::add_width(WidthRow width, const QString& called, double size) {
    width.label = new QLabel(called, gap_box_);
    width.label->setWordWrap(true);
    width.field = new SizeField(gap_box_);
    width.field->setObjectName(QStringLiteral("feature_width"));
    width.field->show_size(size, true);
    width.field->line().setAccessibleName(called);
    width.label->setBuddy(width.field);
    width.label->ensurePolished();
    width.field->line().ensurePolished();
    gap_rows_->addWidget(width.label);
    gap_rows_->addWidget(width.field);
    widths_.push_back(std::move(width));
}

void FeatureForm::put_in_order() {
    QWidget* before = name_;
    for (const WidthRow& width : widths_) {
        setTabOrder(before, &width.field->line());
        before = &width.field->line();
    }
    for (QPushButton* button : {add_, cancel_, remove_}) {
        setTabOrder(before, button);
        before = button;
    }
}

bool FeatureForm::eventFilter(QObject* watched, QEvent* event) {
    // Lines that wrap are higher than what they ask for at least; rather than be squeezed, they are scrolled.
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Resize) {
        QWidget* inner = scroll_->widget();
        inner->setMinimumHeight(std::max(0, inner->layout()->totalHeightForWidth(scroll_->viewport()->width())));
    }
    return QWidget::eventFilter(watched, event);
}

void FeatureForm::connect_fields() {
    connect(show_, &QPushButton::toggled, this, [this](bool wanted) {
        emit wants_point(wanted);
        show_place();
    });
    connect(search_, &QLineEdit::textChanged, this, &FeatureForm::fill_types);
    connect(types_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* row) {
        if (row == nullptr) return;
        chosen_ = row->data(Qt::UserRole).toString();
        show_type();
    });
    connect(types_, &QListWidget::itemActivated, this, [this] { name_->setFocus(); });
    for (SizeField* field : {along_, up_})
        connect(&field->line(), &QLineEdit::textChanged, this, [this] {
            problem_->set_fault({});
            take_values();
        });
    connect(add_, &QPushButton::clicked, this, &FeatureForm::add);
    connect(remove_, &QPushButton::clicked, this, &FeatureForm::remove);
    connect(cancel_, &QPushButton::clicked, this, [this] {
        forget();
        emit cancelled();
    });
    connect(&document_, &JobDocument::changed, this, &FeatureForm::take_read);
    connect(&survey_, &SurveyDocument::edit_failed, this, &FeatureForm::take_failed);
}

void FeatureForm::retranslate() {
    heading_->setText(present_ ? tr("Change %1", "something on the house").arg(present_->name) : tr("Add to the house"));
    what_label_->setText(tr("What &is there?"));
    search_->setPlaceholderText(tr("Find it by a word, such as pipe"));
    search_->setAccessibleName(tr("Find a type by a word"));
    types_->setAccessibleName(tr("What can stand there"));
    name_label_->setText(tr("&Name"));
    name_->setAccessibleName(tr("Name"));
    gaps_label_->setText(tr("Its gaps"));
    gaps_hint_->setText(
        present_ ? tr("A width that you change counts as measured.")
                 : tr("These are the usual widths, assumed until somebody measures. One that you change counts as measured."));
    show_->setToolTip(tr("Then click in the picture where it is."));
    add_->setText(present_ ? tr("&Apply the changes") : tr("&Add to the house"));
    add_->setToolTip(present_
                         ? tr("Its place goes into the file of the house, %1, measured widths into that of the job. It can be "
                              "undone.")
                               .arg(house_name())
                         : tr("It stands in the file of the house from then on. It can be undone."));
    cancel_->setText(tr("Cancel"));
    remove_->setText(tr("Remove"));
    remove_->setToolTip(
        present_ ? tr("Takes it out of the file of the house, %1, with all of its gaps, and what the job says of them. "
                      "It can be undone.")
                       .arg(house_name())
                 : QString());
    tell_sides();
    if (place_) fill_types();
    tell_place();
}

void FeatureForm::tell_sides() {
    if (!place_) return;
    const QString along = as_sentence(place_->level() ? across_words(*place_) : from_words(*place_));
    const QString up = place_->level()     ? as_sentence(deep_words(*place_))
                       : place_->base != 0 ? tr("Up from the yard")
                                           : tr("Up from the floor");
    along_label_->setText(along);
    up_label_->setText(up);
    along_->line().setAccessibleName(along);
    up_->line().setAccessibleName(up);
}

}  // namespace seamward::viewer
