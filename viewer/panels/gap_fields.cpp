// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/gap_fields.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLocale>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <array>

#include "document/translations.h"
#include "panels/choice_box.h"

namespace seamward::viewer {

namespace {

constexpr std::array<const char*, 4> file_words{"slot", "hole", "ring", "mesh"};

std::optional<double> second_size(const Shape& shape) {
    if (const auto* slot = std::get_if<Slot>(&shape)) return slot->length;
    if (const auto* ring = std::get_if<Ring>(&shape)) return ring->around;
    if (const auto* mesh = std::get_if<Mesh>(&shape)) return mesh->area;
    return std::nullopt;
}

template <class Made>
Made* named(QWidget* parent, const char* name) {
    auto* made = new Made(parent);
    made->setObjectName(name);
    return made;
}

}  // namespace

GapFields::GapFields(QWidget* parent)
    : QWidget(parent),
      heading(named<QLabel>(this, "gap_heading")),
      origin(named<QLabel>(this, "gap_origin")),
      name(named<QLineEdit>(this, "gap_name")),
      width(named<SizeField>(this, "gap_width")),
      plus_minus(named<SizeField>(this, "gap_plus_minus")),
      second(named<SizeField>(this, "gap_second")),
      how_known(named<ChoiceBox>(this, "gap_how")),
      from(named<ChoiceBox>(this, "gap_from")),
      to(named<ChoiceBox>(this, "gap_to")),
      move(named<QPushButton>(this, "gap_move")),
      photo(named<PhotoField>(this, "gap_photo")),
      note(named<QPlainTextEdit>(this, "gap_note")),
      close(named<QPushButton>(this, "gap_close")),
      remove(named<QPushButton>(this, "gap_remove")),
      feature(named<QPushButton>(this, "gap_feature")),
      add(named<QPushButton>(this, "gap_add")),
      cancel(named<QPushButton>(this, "gap_cancel")),
      shape_choice(named<ChoiceBox>(this, "gap_shape")),
      place_(named<QLabel>(this, "gap_place")),
      problem_(named<QLabel>(this, "gap_problem")),
      grid_(new QGridLayout) {
    set_up();
    make_rows();
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {add, cancel, close, remove, feature}) buttons->addWidget(button);
    buttons->addStretch();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(18, 14, 18, 16);
    column->setSpacing(9);
    column->addWidget(heading);
    column->addWidget(origin);
    column->addLayout(grid_);
    column->addWidget(problem_);
    column->addLayout(buttons);
    column->addStretch();
    problem_->hide();
    lay_out();
    retranslate();
}

void GapFields::set_up() {
    QFont strong = font();
    strong.setBold(true);
    strong.setPointSizeF(strong.pointSizeF() * 1.15);
    heading->setFont(strong);
    for (QLabel* label : {heading, origin, place_, problem_}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
    }
    origin->setForegroundRole(QPalette::PlaceholderText);
    plus_minus->set_of(SizeField::Of::plus_minus);
    plus_minus->set_optional(true);
    how_known->addItems({{}, {}, {}, {}});
    shape_choice->addItems({{}, {}, {}, {}});
    for (QComboBox* box : {how_known, shape_choice, from, to})
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);  // long names do not widen the window
    move->setCheckable(true);
    note->setTabChangesFocus(true);
    note->setFixedHeight(fontMetrics().lineSpacing() * 3 + 14);
    add->setDefault(true);
}

void GapFields::make_rows() {
    grid_->setHorizontalSpacing(12);
    grid_->setColumnStretch(1, 1);
    name_label_ = add_row(name);
    width_label_ = add_row(width);
    plus_minus_label_ = add_row(plus_minus);
    how_label_ = add_row(how_known);
    shape_label_ = add_row(shape_choice);
    second_label_ = add_row(second);
    from_label_ = add_row(from);
    to_label_ = add_row(to);
    auto* place_row = new QWidget(this);
    auto* place_box = new QHBoxLayout(place_row);
    place_box->setContentsMargins(0, 0, 0, 0);
    place_box->addWidget(place_, 1);
    place_box->addWidget(move);
    place_row->setFocusProxy(move);
    place_label_ = add_row(place_row);
    place_label_->setBuddy(move);
    of_job_ = {name_label_, name, shape_label_, shape_choice, second_label_, second,
               from_label_, from, to_label_,    to,           place_label_,  place_row};
    note_label_ = add_row(note);
    photo_label_ = add_row(photo);
}

QLabel* GapFields::add_row(QWidget* field) {
    auto* label = new QLabel(this);
    label->setBuddy(field);
    rows_.push_back({label, field});
    return label;
}

void GapFields::fit(int wide) {
    constexpr int letters_side_by_side = 48;
    const bool stacked = wide < letters_side_by_side * fontMetrics().averageCharWidth();
    if (stacked == stacked_ && grid_->count() > 0) return;
    stacked_ = stacked;
    lay_out();
}

void GapFields::lay_out() {
    while (QLayoutItem* item = grid_->takeAt(0)) delete item;
    grid_->setVerticalSpacing(stacked_ ? 3 : 9);
    int line = 0;
    for (const auto& [label, field] : rows_) {
        if (stacked_) {
            label->setMinimumHeight(fontMetrics().height() + 8);
            label->setAlignment(Qt::AlignLeft | Qt::AlignBottom);
            grid_->addWidget(label, line++, 0, 1, 2);
            grid_->addWidget(field, line++, 0, 1, 2);
        } else {
            // The words stand at the height of the line that they name, whatever stands under it.
            label->setMinimumHeight(name->sizeHint().height());
            label->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
            grid_->addWidget(label, line, 0, Qt::AlignTop);
            grid_->addWidget(field, line++, 1);
        }
    }
}

void GapFields::fill_spaces(const Job& job) {
    for (const std::size_t which : {0U, 1U}) {
        QComboBox* box = which == 0 ? from : to;
        const QSignalBlocker quiet(box);
        const std::string chosen = side(which);
        box->clear();
        for (const Space& space : job.survey.spaces) box->addItem(spoken_name(space), QString::fromStdString(space.id));
        box->insertSeparator(box->count());
        box->addItem(tr("Another space..."), QString());
        choose_side(which, chosen);
    }
}

void GapFields::show_gap(const Job& job, const GapFacts& facts, const QString& folder, bool afresh) {
    show_states(false, facts);
    fill_spaces(job);
    if (afresh) show_problem({});
    heading->setText(spoken_name(facts.gap));
    if (afresh || !(name->hasFocus() && name->isModified())) name->setText(QString::fromStdString(facts.gap.label()));
    shape_choice->setCurrentIndex(static_cast<int>(facts.gap.shape.index()));
    follow_shape();
    width->show_size(facts.width(), afresh);
    const double off = facts.gap.evidence.plus_minus;
    plus_minus->show_size(off > 0 ? std::optional(off) : std::nullopt, afresh);
    second->show_size(second_size(facts.gap.shape), afresh);
    how_known->setCurrentIndex((static_cast<int>(facts.gap.evidence.how) + 3) % 4);
    for (const std::size_t which : {0U, 1U}) choose_side(which, job.survey[facts.gap.between.at(which)].id);
    show_place(facts.gap.at);
    photo->show_photo(QString::fromStdString(facts.gap.photo), folder);
    const QString remark = QString::fromStdString(facts.gap.note);
    if (note->toPlainText() != remark && (afresh || !note->hasFocus())) note->setPlainText(remark);
    origin->setText(as_sentence(origin_words(job, facts)));
    origin->setVisible(!origin->text().isEmpty());
}

QString GapFields::origin_words(const Job& job, const GapFacts& facts) {
    const QString closed =
        facts.closed != nullptr ? tr("This gap is %1.", "closed, on a day").arg(known_words(facts)) : QString();
    if (!facts.of_house) return closed;
    const QString shape =
        tr("%1, %2.", "sides of a gap, its shape").arg(sides_words(job.survey, facts.gap), shape_words(facts.gap.shape));
    const QString house =
        facts.feature.empty()
            ? tr("It is part of the described house, so that it cannot be removed here, only marked as closed.")
            : tr("It is part of the described house: what makes it can be moved or removed, with all of its gaps.");
    return closed.isEmpty() ? tr("%1 %2", "two sentences").arg(shape, house)
                            : tr("%1 %2 %3", "three sentences").arg(shape, closed, house);
}

void GapFields::show_new(const Job& job, std::array<SpaceIndex, 2> between) {
    show_states(true, {});
    fill_spaces(job);
    show_problem({});
    name->clear();
    shape_choice->setCurrentIndex(slot);
    follow_shape();
    for (SizeField* field : {width, plus_minus, second}) field->show_size(std::nullopt, true);
    how_known->setCurrentIndex(0);
    for (const std::size_t which : {0U, 1U}) choose_side(which, job.survey[between.at(which)].id);
    show_place(std::nullopt);
    photo->show_photo({}, {});
    note->clear();
}

void GapFields::show_states(bool is_new, const GapFacts& facts) {
    is_new_ = is_new;
    of_house_ = facts.of_house;
    closed_ = facts.closed != nullptr;
    for (QWidget* widget : of_job_) widget->setVisible(!of_house_);
    heading->setVisible(is_new || of_house_);
    photo_label_->setVisible(!is_new);
    photo->setVisible(!is_new);
    add->setVisible(is_new);
    cancel->setVisible(is_new);
    close->setVisible(!is_new);
    remove->setVisible(!is_new && !of_house_);
    feature->setVisible(!facts.feature.empty());
    origin->setVisible(!is_new);
    retranslate();
}

void GapFields::show_place(const std::optional<Point>& at) {
    at_ = at;
    const auto number = [](double meters) { return QLocale::c().toString(meters, 'f', 2); };
    place_->setText(at ? tr("%1, %2, %3 m", "x, y and height").arg(number(at->x), number(at->y), number(at->z)) : QString());
    place_->setVisible(at.has_value());
    move->setText(at ? tr("Mo&ve...") : tr("Sh&ow..."));
}

void GapFields::show_problem(const QString& why) {
    problem_->setText(why.isEmpty() ? QString() : tr("⚠ %1").arg(as_sentence(why)));
    problem_->setVisible(!why.isEmpty());
}

void GapFields::follow_shape() {
    second->setVisible(has_second() && !of_house_);
    second_label_->setVisible(has_second() && !of_house_);
    second->set_optional(shape() == mesh);
    second->set_of(shape() == mesh ? SizeField::Of::area : shape() == slot ? SizeField::Of::length : SizeField::Of::plus_minus);
    switch (shape()) {
        case slot: second_label_->setText(tr("&Length")); break;
        case ring: second_label_->setText(tr("P&ipe")); break;
        default: second_label_->setText(tr("Screen")); break;
    }
    second->line().setPlaceholderText(shape() == slot   ? tr("9 m or 12 ft 6 in")
                                      : shape() == ring ? tr("its diameter, such as 22 mm")
                                                        : tr("its area, such as 100 cm2"));
    second->line().setToolTip(shape() == slot   ? tr("How long the opening is, such as 9 m or 12 ft 6 in.")
                              : shape() == ring ? tr("The outer diameter of the pipe, such as 22 mm.")
                                                : tr("The area of the screen, such as 100 cm2; it may be left out."));
    second->line().setAccessibleName(second_label_->text().remove('&'));
    width_label_->setText(shape() == hole ? tr("D&iameter") : shape() == mesh ? tr("Open&ing") : tr("&Width"));
    width->line().setAccessibleName(width_label_->text().remove('&'));
}

std::string GapFields::shape_word() const { return file_words.at(static_cast<std::size_t>(shape())); }

Evidence::How GapFields::how() const { return static_cast<Evidence::How>((how_known->currentIndex() + 1) % 4); }

std::string GapFields::side(std::size_t which) const { return (which == 0 ? from : to)->currentData().toString().toStdString(); }

void GapFields::choose_side(std::size_t which, const std::string& id) {
    QComboBox* box = which == 0 ? from : to;
    box->setCurrentIndex(id.empty() ? -1 : box->findData(QString::fromStdString(id)));
}

void GapFields::retranslate_choices() {
    how_known->setItemText(0, tr("measured at the house"));
    how_known->setItemText(1, tr("taken from drawings or a model"));
    how_known->setItemText(2, tr("assumed"));
    how_known->setItemText(3, tr("not said"));
    shape_choice->setItemText(slot, tr("slot: a long opening"));
    shape_choice->setItemText(hole, tr("hole: a round opening"));
    shape_choice->setItemText(ring, tr("ring: around a pipe"));
    shape_choice->setItemText(mesh, tr("mesh: a screened opening"));
}

void GapFields::retranslate() {
    retranslate_choices();
    if (is_new_) heading->setText(tr("A new gap"));
    name_label_->setText(tr("Na&me"));
    plus_minus_label_->setText(tr("Give or ta&ke"));
    how_label_->setText(tr("Known &by"));
    shape_label_->setText(tr("&Shape"));
    from_label_->setText(tr("F&rom"));
    to_label_->setText(tr("To"));
    place_label_->setText(tr("Place"));
    note_label_->setText(tr("&Note"));
    photo_label_->setText(tr("Photo"));
    name->setPlaceholderText(tr("such as hose bibb, north wall"));
    width->line().setPlaceholderText(tr("1/16 in or 1.6 mm"));
    plus_minus->line().setPlaceholderText(tr("how far off it may be"));
    note->setPlaceholderText(tr("for whoever works there"));
    note->setAccessibleName(tr("Note"));
    plus_minus->line().setAccessibleName(tr("Give or take"));
    how_known->setAccessibleName(tr("How the width is known"));
    shape_choice->setAccessibleName(tr("Shape"));
    from->setAccessibleName(tr("From which space"));
    to->setAccessibleName(tr("To which space"));
    name->setAccessibleName(tr("Name"));
    width->line().setToolTip(tr("The clear width, in any unit. The widest place of it counts."));
    move->setToolTip(tr("Then click in the picture where the gap is."));
    close->setText(closed_ ? tr("M&ark as open") : tr("M&ark as closed"));
    close->setToolTip(closed_ ? tr("The gap is taken out of the list of what was closed.")
                              : tr("The gap was closed for good; ways in no longer lead through it."));
    remove->setText(tr("Remove"));
    remove->setToolTip(tr("Takes the gap out of the survey. It can be undone."));
    feature->setText(tr("Mo&ve or remove..."));
    feature->setToolTip(tr("What makes this gap, such as a pipe or a door's sweep: its place, its name and all of its gaps."));
    add->setText(tr("&Add this gap"));
    cancel->setText(tr("Cancel"));
    follow_shape();
    show_place(at_);
}

void GapFields::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    if (event->type() == QEvent::FontChange) note->setFixedHeight(fontMetrics().lineSpacing() * 3 + 14);
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
