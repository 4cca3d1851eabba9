// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/survey_panel.h"

#include <QBoxLayout>
#include <QEvent>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace seamward::viewer {

namespace {

/// The layout that holds a widget, among one and those in it.
QBoxLayout* layout_of(QLayout* within, QWidget* widget) {
    if (within->indexOf(widget) >= 0) return qobject_cast<QBoxLayout*>(within);
    for (int i = 0; i < within->count(); ++i) {
        QLayout* inner = within->itemAt(i)->layout();
        if (QBoxLayout* found = inner == nullptr ? nullptr : layout_of(inner, widget)) return found;
    }
    return nullptr;
}

}  // namespace

SurveyPanel::SurveyPanel(JobDocument& document, SurveyDocument& survey, QWidget* parent)
    : QWidget(parent),
      document_(document),
      list_(new GapList(document, this)),
      form_(new GapForm(document, survey, this)),
      feature_form_(new FeatureForm(document, survey, this)),
      add_feature_(new QPushButton(this)),
      hint_(new QLabel(this)),
      scroll_(new QScrollArea(this)) {
    setObjectName("survey_panel");
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
    column->addWidget(feature_form_, 1);
    halves_ = halves;
    put_feature_button();
    feature_form_->hide();

    connect(list_, &GapList::gap_chosen, this, [this](GapIndex gap) {
        form_->show_gap(document_.filed()->survey[gap].id);
        emit gap_chosen(gap);
    });
    connect(list_, &GapList::entered, this, [this] { form_->fields().width->setFocus(); });
    connect(&survey, &SurveyDocument::edit_failed, this, [this](const QString& why) {
        if (feature_form_->isHidden()) form_->tell_failed(why);  // otherwise it was changed there, and is told there
    });
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
        feature_form_->forget();
        show_feature_form(false);
        allow_features();
    });
    connect(&document_, &JobDocument::changed, this, &SurveyPanel::read_again);
    connect_feature_form();
    retranslate();
    if (document_.has_job()) list_->refresh();
    form_->show_gap({});
}

void SurveyPanel::put_feature_button() {
    add_feature_->setObjectName("new_feature");
    auto* count = list_->findChild<QLabel*>("gap_count");
    QBoxLayout* head = layout_of(list_->layout(), count);
    const int at = head->indexOf(count);
    head->removeWidget(count);
    auto* line = new QHBoxLayout;
    line->setSpacing(8);
    line->addWidget(count, 1);
    line->addWidget(add_feature_, 0, Qt::AlignTop);
    head->insertLayout(at, line);
    setTabOrder(list_->findChild<QPushButton*>("new_gap"), add_feature_);
}

void SurveyPanel::connect_feature_form() {
    connect(add_feature_, &QPushButton::clicked, this, [this] {
        show_feature_form(true);
        feature_form_->begin();
    });
    connect(form_, &GapForm::feature_wanted, this, [this](const std::string& id) {
        if (feature_form_->begin_change(id)) show_feature_form(true);
    });
    connect(feature_form_, &FeatureForm::removed, this, [this] { show_feature_form(false); });
    connect(feature_form_, &FeatureForm::wants_point, this, &SurveyPanel::wants_point);
    connect(feature_form_, &FeatureForm::cancelled, this, [this] {
        show_feature_form(false);
        add_feature_->setFocus();
    });
    connect(feature_form_, &FeatureForm::added, this, [this](const QString& gap) {
        to_choose_ = gap.toStdString();
        tell_chosen_ = true;
        show_feature_form(false);
    });
}

void SurveyPanel::show_feature_form(bool shown) {
    feature_form_->setVisible(shown);
    halves_->setVisible(!shown);
}

void SurveyPanel::allow_features() {
    const bool can = FeatureForm::can_add(document_);
    add_feature_->setEnabled(can);
    add_feature_->setToolTip(
        can                    ? tr("A hose bibb, a light, a register: click where it is, and its gaps come with it.")
        : !document_.has_job() ? QString()
        : document_.filed()->model
            ? tr("This job has a builder's model, not a described house, so that only single gaps can be added.")
            : tr("This job has no described house, so that only single gaps can be added."));
}

void SurveyPanel::read_again() {
    allow_features();
    list_->refresh();
    if (to_choose_) {
        list_->choose(*to_choose_);
        form_->show_gap(*to_choose_);
        const std::vector<Gap>& gaps = document_.filed()->survey.gaps;
        const auto at = std::ranges::find(gaps, *to_choose_, &Gap::id);
        if (std::exchange(tell_chosen_, false) && at != gaps.end())
            emit gap_chosen({static_cast<std::uint32_t>(at - gaps.begin())});
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
    feature_form_->forget();
    show_feature_form(false);
    list_->choose({});
    form_->begin_new(at, part);
}

void SurveyPanel::begin_feature_at(const Point& at, const std::string& part) {
    show_feature_form(true);
    feature_form_->begin_at(at, part);
}

void SurveyPanel::take_point(const Point& at, const QString& part) {
    if (feature_form_->isHidden())
        form_->take_point(at);
    else
        feature_form_->take_point(at, part.toStdString());
}

void SurveyPanel::stop_waiting() {
    form_->fields().move->setChecked(false);
    feature_form_->stop_waiting();
}

void SurveyPanel::remove_chosen() { form_->remove_gap(); }

void SurveyPanel::commit() { form_->commit(); }

void SurveyPanel::retranslate() {
    hint_->setText(tr("Choose a gap here or in the picture to see it and to change it."));
    add_feature_->setText(tr("A&dd a feature..."));
    allow_features();
}

bool SurveyPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange) form_->fields().fit(scroll_->viewport()->width());
    return QWidget::eventFilter(watched, event);
}

void SurveyPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
