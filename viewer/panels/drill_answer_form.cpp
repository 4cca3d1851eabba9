// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/drill_answer_form.h"

#include <QButtonGroup>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QScopedValueRollback>
#include <QVBoxLayout>

#include "catalog/shipped.h"
#include "panels/choice_box.h"
#include "panels/flow_layout.h"

namespace seamward::viewer {

namespace {

QLabel* words(QWidget* parent, const char* name) {
    auto* label = new QLabel(parent);
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

QComboBox* choice(QWidget* parent, const char* name) {
    auto* box = new ChoiceBox(parent);
    box->setObjectName(name);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    return box;
}

void fill_choice(QComboBox& box, const QString& nothing, const std::vector<std::pair<std::string, std::string>>& all) {
    const QString before = box.currentData().toString();
    box.clear();
    box.addItem(nothing, QString());
    for (const auto& [id, name] : all) box.addItem(QString::fromStdString(name), QString::fromStdString(id));
    for (int i = 0; i < box.count(); ++i) box.setItemData(i, box.itemText(i), Qt::ToolTipRole);
    box.setCurrentIndex(std::max(0, box.findData(before)));
}

}  // namespace

DrillAnswerForm::DrillAnswerForm(DrillDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      title_(form_heading(this)),
      height_(words(this, "drill_height")),
      hint_(words(this, "hint")),
      looked_(words(this, "drill_look_words")),
      look_(new QPushButton(this)),
      remove_(new QPushButton(this)),
      open_(new QRadioButton(this)),
      tight_(new QRadioButton(this)),
      questions_(new QWidget(this)),
      more_(new QWidget(questions_)),
      width_name_(words(more_, "drill_width_name")),
      from_name_(words(more_, "drill_from_name")),
      to_name_(words(more_, "drill_to_name")),
      treatment_name_(words(more_, "drill_treatment_name")),
      opening_name_(words(more_, "drill_opening_name")),
      width_(new SizeField(more_)),
      opening_(new SizeField(more_)),
      from_(choice(more_, "drill_from")),
      to_(choice(more_, "drill_to")),
      treatment_(choice(more_, "drill_treatment")),
      wait_(new QCheckBox(more_)),
      came_in_(new QCheckBox(questions_)),
      sides_fault_(new FaultLabel(more_)),
      opening_fault_(new FaultLabel(more_)) {
    setObjectName("drill_form");
    title_->setObjectName("drill_place");
    title_->setTextFormat(Qt::PlainText);
    title_->setWordWrap(true);
    look_->setObjectName("drill_look");
    remove_->setObjectName("drill_remove");
    open_->setObjectName("drill_open");
    tight_->setObjectName("drill_tight");
    wait_->setObjectName("drill_wait");
    came_in_->setObjectName("drill_came_in");
    width_->setObjectName("drill_width");
    opening_->setObjectName("drill_opening");
    width_->set_optional(true);
    opening_->set_optional(true);
    make_rows();
    connect_fields();
    for (QWidget* field : findChildren<QWidget*>()) {
        if (field->focusPolicy() != Qt::NoFocus) field->installEventFilter(this);
    }
    retranslate();
    show_place();
}

void DrillAnswerForm::make_rows() {
    auto* state = new FlowLayout(nullptr, 18, 4);
    state->addWidget(open_);
    state->addWidget(tight_);
    auto* group = new QButtonGroup(this);
    group->addButton(open_);
    group->addButton(tight_);
    auto* details = new QVBoxLayout(more_);
    details->setContentsMargins(0, 0, 0, 0);
    details->setSpacing(4);
    const auto row = [details](QLabel* name, QWidget* field) {
        name->setBuddy(field);
        details->addWidget(name);
        details->addWidget(field);
        details->addSpacing(4);
    };
    row(width_name_, width_);
    row(from_name_, from_);
    row(to_name_, to_);
    details->addWidget(sides_fault_);
    row(treatment_name_, treatment_);
    row(opening_name_, opening_);
    details->addWidget(opening_fault_);
    details->addWidget(wait_);
    auto* inside = new QVBoxLayout(questions_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(8);
    auto* look = new QHBoxLayout;
    look->addWidget(look_);
    look->addStretch(1);
    inside->addLayout(look);
    inside->addWidget(looked_);
    inside->addLayout(state);
    inside->addWidget(more_);
    inside->addWidget(came_in_);
    auto* last = new QHBoxLayout;
    last->addWidget(remove_);
    last->addStretch(1);
    inside->addLayout(last);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 4, 16, 12);
    column->setSpacing(6);
    column->addWidget(hint_);
    column->addWidget(title_);
    column->addWidget(height_);
    column->addWidget(questions_);
    column->addStretch(1);
}

void DrillAnswerForm::connect_fields() {
    connect(look_, &QPushButton::clicked, this, [this] { document_.look_closely(static_cast<std::size_t>(place_)); });
    connect(open_, &QRadioButton::toggled, this, [this](bool open) {
        if (open) take();
    });
    connect(tight_, &QRadioButton::toggled, this, [this](bool tight) {
        if (tight) take();
    });
    for (SizeField* field : {width_, opening_}) {
        connect(field, &SizeField::entered, this, &DrillAnswerForm::take);
        auto* words = field->findChild<QLabel*>("size_words");  // "between a half dollar and two stacked cents" takes three lines
        words->setMinimumHeight(3 * words->fontMetrics().lineSpacing());
    }
    for (QComboBox* box : {from_, to_, treatment_})
        connect(box, qOverload<int>(&QComboBox::activated), this, &DrillAnswerForm::take);
    connect(wait_, &QCheckBox::toggled, this, &DrillAnswerForm::take);
    connect(came_in_, &QCheckBox::toggled, this, &DrillAnswerForm::take_entry);
    connect(remove_, &QPushButton::clicked, this, [this] {
        document_.remove_answer(static_cast<std::size_t>(place_));
        show_answer();
        begin();
    });
    connect(&document_, &DrillDocument::opened, this, [this] {
        fill_choices();
        show_place();
    });
    connect(&document_, &DrillDocument::closed, this, &DrillAnswerForm::show_place);
    connect(&document_, &DrillDocument::place_chosen, this, [this] {
        if (place_ != DrillDocument::no_place && !document_.is_handed_in()) {
            width_->enter();  // of the place before
            opening_->enter();
        }
        show_place();
    });
    connect(&document_, &DrillDocument::answers_changed, this, [this] {
        show_look();
        follow();
    });
}

void DrillAnswerForm::show_place() {
    place_ = document_.has_drill() && !document_.is_handed_in() ? document_.chosen() : DrillDocument::no_place;
    const bool any = place_ != DrillDocument::no_place;
    hint_->setVisible(!any);
    for (QWidget* part : {static_cast<QWidget*>(title_), static_cast<QWidget*>(height_), questions_}) part->setVisible(any);
    if (!any) return;
    const BriefedPlace& told = document_.told().places.at(static_cast<std::size_t>(place_));
    title_->setText(tr("%1. %2", "number and name of a place").arg(told.number).arg(QString::fromStdString(told.name)));
    height_->setText(QString::fromStdString(told.height));
    height_->setVisible(!told.height.empty());
    show_look();
    show_answer();
}

void DrillAnswerForm::show_answer() {
    const QScopedValueRollback<bool> filling(filling_, true);
    const auto place = static_cast<std::size_t>(place_);
    const PlaceAnswer* said = document_.answer(place);
    QButtonGroup* group = open_->group();
    group->setExclusive(false);  // none of them is checked as long as nothing is said
    open_->setChecked(said != nullptr && said->open);
    tight_->setChecked(said != nullptr && !said->open);
    group->setExclusive(true);
    width_->show_size(said == nullptr ? std::nullopt : said->width, true);
    const auto choose = [](QComboBox& box, const std::string& id) {
        box.setCurrentIndex(std::max(0, box.findData(QString::fromStdString(id))));
    };
    const Survey& survey = document_.round().job.survey;
    const bool joined = said != nullptr && said->between;
    choose(*from_, joined ? survey[(*said->between)[0]].id : std::string());
    choose(*to_, joined ? survey[(*said->between)[1]].id : std::string());
    choose(*treatment_, said == nullptr ? std::string() : said->treatment);
    opening_->show_size(said != nullptr && said->opening > 0 ? std::optional(said->opening) : std::nullopt, true);
    wait_->setChecked(said != nullptr && said->wait);
    came_in_->setChecked(document_.entry() == place);
    follow();
}

void DrillAnswerForm::show_look() {
    if (place_ == DrillDocument::no_place) return;
    const QStringList lines = document_.close_look(static_cast<std::size_t>(place_));
    look_->setVisible(lines.isEmpty());
    looked_->setText(lines.join('\n'));
    looked_->setVisible(!lines.isEmpty());
}

void DrillAnswerForm::follow() {
    if (place_ == DrillDocument::no_place) return;
    const bool said = document_.answer(static_cast<std::size_t>(place_)) != nullptr;
    more_->setVisible(open_->isChecked());
    opening_name_->setVisible(asks_opening());
    opening_->setVisible(asks_opening());
    wait_->setVisible(closes());
    came_in_->setVisible(document_.round().drill.seen.has_value());
    remove_->setVisible(said);
    const auto from = side(*from_), to = side(*to_);
    sides_fault_->set_fault(from && to && *from == *to ? tr("A gap joins two different spaces.") : QString());
    opening_fault_->set_fault(asks_opening() && !opening_->size() ? tr("Say how wide one opening of the mesh is.") : QString());
}

std::optional<SpaceIndex> DrillAnswerForm::side(const QComboBox& box) const {
    if (box.currentIndex() <= 0) return std::nullopt;
    return SpaceIndex{static_cast<std::uint32_t>(box.currentIndex() - 1)};  // in the order of the survey
}

std::string DrillAnswerForm::treatment() const { return treatment_->currentData().toString().toStdString(); }

bool DrillAnswerForm::asks_opening() const {
    const Treatment* row = shipped_treatments().find(treatment());
    return row != nullptr && row->leaves_mesh() && !(row->opening > 0);
}

bool DrillAnswerForm::closes() const { return !treatment().empty() && treatment() != leave_open; }

void DrillAnswerForm::take() {
    if (filling_ || place_ == DrillDocument::no_place || (!open_->isChecked() && !tight_->isChecked())) return;
    PlaceAnswer said;
    said.where.place = static_cast<std::size_t>(place_);
    said.open = open_->isChecked();
    if (said.open) {
        said.width = width_->size();
        const auto from = side(*from_), to = side(*to_);
        if (from && to && *from != *to) said.between = {*from, *to};
        said.opening = asks_opening() ? opening_->size().value_or(0) : 0;
        if (!asks_opening() || said.opening > 0) said.treatment = treatment();
        said.wait = wait_->isChecked() && said.closes();
    }
    document_.set_answer(said);
}

void DrillAnswerForm::take_entry() {
    if (filling_ || place_ == DrillDocument::no_place) return;
    const auto place = static_cast<std::size_t>(place_);
    if (came_in_->isChecked())
        document_.set_entry(place);
    else if (document_.entry() == place)
        document_.set_entry(std::nullopt);
}

bool DrillAnswerForm::commit() {
    if (place_ == DrillDocument::no_place || !open_->isChecked()) return true;
    width_->enter();
    opening_->enter();
    if (!width_->check()) {
        width_->setFocus();
        return false;
    }
    if (asks_opening() && (!opening_->check() || !opening_->size())) {
        opening_->setFocus();
        return false;
    }
    return true;
}

void DrillAnswerForm::begin() {
    if (place_ == DrillDocument::no_place) return;
    if (look_->isVisible())
        look_->setFocus();
    else
        (tight_->isChecked() ? tight_ : open_)->setFocus();
}

void DrillAnswerForm::fill_choices() {
    if (!document_.has_drill()) return;
    const QScopedValueRollback<bool> filling(filling_, true);
    const Briefing& told = document_.told();
    for (QComboBox* box : {from_, to_}) fill_choice(*box, tr("not said"), told.spaces);
    fill_choice(*treatment_, tr("not said"), told.treatments);
}

void DrillAnswerForm::retranslate() {
    hint_->setText(tr("Click a place on the house, or choose one in the list, to say what you found there."));
    look_->setText(tr("Loo&k closely"));
    look_->setToolTip(tr("What eyes, hands and the gauges in the bag tell of this place"));
    looked_->setAccessibleName(tr("What a close look tells"));
    open_->setText(tr("It is &open"));
    tight_->setText(tr("It is ti&ght"));
    width_name_->setText(tr("How &wide, in any unit"));
    width_->line().setPlaceholderText(tr("1/16 in, 1.6 mm"));
    width_->line().setAccessibleName(tr("How wide"));
    from_name_->setText(tr("It joins this space ..."));
    to_name_->setText(tr("... and this one"));
    from_->setAccessibleName(tr("One space that it joins"));
    to_->setAccessibleName(tr("The other space that it joins"));
    treatment_name_->setText(tr("Close &it with, or leave it as it is"));
    treatment_->setAccessibleName(tr("What to close it with"));
    opening_name_->setText(tr("One opening of the mesh"));
    opening_->line().setAccessibleName(tr("One opening of the mesh"));
    wait_->setText(tr("Close only once the animal has left"));
    came_in_->setText(tr("The animal that was seen came in here"));
    remove_->setText(tr("&Remove this answer"));
    fill_choices();
    if (place_ == DrillDocument::no_place) return;
    const BriefedPlace& told = document_.told().places.at(static_cast<std::size_t>(place_));
    title_->setText(tr("%1. %2", "number and name of a place").arg(told.number).arg(QString::fromStdString(told.name)));
    height_->setText(QString::fromStdString(told.height));
    show_look();
    follow();
}

bool DrillAnswerForm::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn && watched->isWidgetType()) emit to_be_seen(static_cast<QWidget*>(watched));
    return QWidget::eventFilter(watched, event);
}

void DrillAnswerForm::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
