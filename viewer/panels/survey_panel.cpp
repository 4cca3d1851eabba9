// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/survey_panel.h"

#include <QEvent>
#include <QSplitter>
#include <QVBoxLayout>

namespace seamward::viewer {

SurveyPanel::SurveyPanel(JobDocument& document, SurveyDocument& survey, QWidget* parent)
    : QWidget(parent),
      document_(document),
      list_(new GapList(document, this)),
      form_(new GapForm(document, survey, this)),
      hint_(new QLabel(this)),
      scroll_(new QScrollArea(this)) {
    setObjectName("survey_panel");
    setMinimumWidth(300);
    auto* upper = new QWidget(this);
    auto* upper_column = new QVBoxLayout(upper);
    upper_column->setContentsMargins(0, 0, 0, 0);
    upper_column->setSpacing(0);
    upper_column->addWidget(list_, 1);
    upper_column->addWidget(hint_);
    hint_->setObjectName("hint");
    hint_->setWordWrap(true);
    hint_->setContentsMargins(18, 10, 18, 12);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setWidget(form_);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->viewport()->installEventFilter(this);
    auto* halves = new QSplitter(Qt::Vertical, this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(upper);
    halves->addWidget(scroll_);
    halves->setStretchFactor(0, 9);
    halves->setStretchFactor(1, 11);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(halves);

    connect(list_, &GapList::gap_chosen, this, [this](GapIndex gap) {
        form_->show_gap(document_.filed()->survey[gap].id);
        emit gap_chosen(gap);
    });
    connect(list_, &GapList::entered, this, [this] { form_->fields().width->setFocus(); });
    connect(form_, &GapForm::wants_point, this, &SurveyPanel::wants_point);
    connect(form_, &GapForm::added, this, [this](const std::string& id) { to_choose_ = id; });
    connect(form_, &GapForm::cancelled, this, [this] { form_->show_gap(list_->chosen()); });
    connect(form_, &GapForm::shows, this, [this](bool anything) {
        scroll_->setVisible(anything);
        hint_->setVisible(!anything);
    });
    connect(list_, &GapList::add_wanted, this, [this] {
        list_->choose({});
        form_->begin_new(std::nullopt, {});
    });
    connect(&document_, &JobDocument::opened, this, [this] {
        list_->choose({});
        list_->refresh();
        form_->forget();
    });
    connect(&document_, &JobDocument::changed, this, &SurveyPanel::read_again);
    retranslate();
    if (document_.has_job()) list_->refresh();
    form_->show_gap({});
}

void SurveyPanel::read_again() {
    list_->refresh();
    if (to_choose_) {
        list_->choose(*to_choose_);
        form_->show_gap(*to_choose_);
        to_choose_.reset();
        return;
    }
    form_->refresh();
}

void SurveyPanel::choose_gap(GapIndex gap) {
    if (!document_.has_job() || gap.value >= document_.filed()->survey.gaps.size()) return;
    const std::string id = document_.filed()->survey[gap].id;
    list_->choose(id);
    form_->show_gap(id);
}

void SurveyPanel::begin_gap_at(const Point& at, const QString& part) {
    list_->choose({});
    form_->begin_new(at, part);
}

void SurveyPanel::take_point(const Point& at) { form_->take_point(at); }

void SurveyPanel::remove_chosen() { form_->remove_gap(); }

void SurveyPanel::commit() { form_->commit(); }

void SurveyPanel::retranslate() { hint_->setText(tr("Choose a gap here or in the picture to see it and to change it.")); }

bool SurveyPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange) form_->fields().fit(scroll_->viewport()->width());
    return QWidget::eventFilter(watched, event);
}

void SurveyPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
