// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/feature_form.h"

#include <QEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QSignalBlocker>
#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <utility>

#include "base/diagnostics.h"
#include "base/document.h"
#include "base/file_io.h"
#include "catalog/shipped.h"
#include "document/feature_words.h"
#include "document/gap_facts.h"
#include "document/translations.h"

namespace seamward::viewer {

namespace {

constexpr int rows_shown = 6;
constexpr double same = 1e-9;  ///< meters; far below what can be typed

template <class Made>
Made* named(QWidget* parent, const char* name) {
    auto* made = new Made(parent);
    made->setObjectName(name);
    return made;
}

/// The reason alone, without the file, its line and the id of what is not there yet.
QString reason_of(const QString& why) {
    QString text = why.section('\n', 0, 0);
    if (const int at = text.indexOf(QStringLiteral(": error: ")); at >= 0) text.remove(0, at + 9);
    if (text.startsWith(QStringLiteral("feature "))) text.remove(0, text.indexOf(QStringLiteral(": ")) + 2);
    return as_sentence(text);
}

QString meters(double length) { return QString::number(length, 'g', 6) + QStringLiteral(" m"); }

std::string shape_word(ShapeKind shape) {
    constexpr std::array<const char*, 4> words{"slot", "hole", "ring", "mesh"};
    return words.at(static_cast<std::size_t>(shape));
}

}  // namespace

FeatureForm::FeatureForm(JobDocument& document, SurveyDocument& survey, QWidget* parent)
    : QWidget(parent),
      document_(document),
      survey_(survey),
      heading_(form_heading(this)),
      where_(named<QLabel>(this, "feature_place")),
      what_label_(new QLabel(this)),
      gaps_label_(form_heading(this)),
      gaps_hint_(new QLabel(this)),
      name_label_(new QLabel(this)),
      along_label_(new QLabel(this)),
      up_label_(new QLabel(this)),
      show_(named<QPushButton>(this, "feature_show")),
      add_(named<QPushButton>(this, "feature_add")),
      cancel_(named<QPushButton>(this, "feature_cancel")),
      search_(named<QLineEdit>(this, "feature_search")),
      name_(named<QLineEdit>(this, "feature_name")),
      types_(named<QListWidget>(this, "feature_types")),
      along_(named<SizeField>(this, "feature_along")),
      up_(named<SizeField>(this, "feature_up")),
      body_(new QWidget(this)),
      rest_(new QWidget(this)),
      gap_box_(new QWidget(this)),
      gap_rows_(new QVBoxLayout(gap_box_)),
      problem_(new FaultLabel(this)) {
    setObjectName("feature_form");
    set_up();
    lay_out();
    connect_fields();
    retranslate();
    show_place();
}

bool FeatureForm::can_add(const JobDocument& document) {
    return document.has_job() && !document.filed()->model && !document.filed()->house.survey.spaces.empty();
}

void FeatureForm::begin() {
    forget();
    places_.reset();
    show_->setChecked(true);
    show_->setFocus();
}

void FeatureForm::begin_at(const Point& at, const std::string& part) {
    forget();
    places_.reset();
    take_point(at, part);
}

void FeatureForm::forget() {
    adding_.reset();
    place_.reset();
    chosen_.clear();
    clear_widths();
    name_->clear();
    name_->setModified(false);
    search_->clear();
    problem_->set_fault({});
    show_->setChecked(false);
    show_adding(false);
    show_place();
}

void FeatureForm::stop_waiting() { show_->setChecked(false); }

std::string FeatureForm::house_text(std::string& shown_as) const {
    const std::filesystem::path job = QFileInfo(document_.path()).absoluteFilePath().toStdString();
    const std::filesystem::path house = house_of(document_.text(), job);
    shown_as = house.string();
    std::error_code error;
    const auto newer = document_.newer().find(std::filesystem::weakly_canonical(house, error));
    return newer != document_.newer().end() ? newer->second : read_file(house, shown_as, Document::most_bytes);
}

void FeatureForm::take_point(const Point& at, const std::string& part) {
    if (!can_add(document_) || adding_) return;
    try {
        if (!places_) {
            std::string shown_as;
            const std::string text = house_text(shown_as);
            places_ = std::make_unique<FeaturePlaces>(text, shown_as);
        }
    } catch (const BadInput& bad) {
        problem_->set_fault(reason_of(QString::fromUtf8(bad.what())));
        return;
    }
    std::optional<FeaturePlace> found = places_->place(at, part);
    if (!found) {
        problem_->set_fault(
            tr("Nothing can be added there. Click a wall, a ceiling, a floor, the roof, an eave, a door or a window."));
        return;
    }
    place_ = std::move(found);
    problem_->set_fault({});
    show_->setChecked(false);
    show_place();
    if (types_->count() > 0 && chosen_.isEmpty()) search_->setFocus();
}

void FeatureForm::show_place() {
    tell_sides();
    body_->setVisible(place_.has_value());
    add_->setVisible(place_.has_value());
    if (place_) {
        const QSignalBlocker quiet_along(along_->line()), quiet_up(up_->line());
        const Point2 off = place_->at - place_->corner;
        along_->type(meters(place_->level() ? off.x : place_->along));
        up_->type(meters(place_->level() ? off.y : place_->up - place_->base));
        fill_types();
    }
    tell_place();
}

void FeatureForm::fill_types() {
    const QSignalBlocker quiet(types_);
    types_->clear();
    const QStringList words = search_->text().split(' ', Qt::SkipEmptyParts);
    const int tall = types_->fontMetrics().height() + 7;
    bool there = false;
    for (const Feature* type : place_ ? features_for(*place_) : std::vector<const Feature*>()) {
        const QString id = QString::fromStdString(type->id), called = catalog_text(type->name);
        there = there || id == chosen_;
        const QString text = id + ' ' + called;
        if (!std::ranges::all_of(words, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); })) continue;
        auto* row = new QListWidgetItem(as_sentence(called), types_);
        row->setData(Qt::UserRole, id);
        row->setToolTip(row->text());
        row->setSizeHint(QSize(0, tall));
        if (id == chosen_) types_->setCurrentItem(row);
    }
    if (!there) chosen_.clear();
    types_->setFixedHeight(tall * rows_shown + 2 * types_->frameWidth());
    show_type();
}

const Feature* FeatureForm::type() const { return chosen_.isEmpty() ? nullptr : shipped_features().find(chosen_.toStdString()); }

void FeatureForm::show_type() {
    problem_->set_fault({});
    const bool known = place_ && type() != nullptr;
    rest_->setVisible(known);
    add_->setEnabled(known && !adding_);
    if (known) {
        const PlaceNeeds needs = needs_of(*type(), *place_);
        for (QWidget* widget : {static_cast<QWidget*>(along_label_), static_cast<QWidget*>(along_)})
            widget->setVisible(needs.along || needs.at);
        for (QWidget* widget : {static_cast<QWidget*>(up_label_), static_cast<QWidget*>(up_)})
            widget->setVisible(needs.up || needs.at);
        if (!name_->isModified()) name_->setText(usual_name(*type(), *place_));
        show_widths();
    }
    tell_place();
}

void FeatureForm::clear_widths() {
    for (const Width& width : widths_) {
        delete width.label;
        delete width.field;
    }
    widths_.clear();
}

void FeatureForm::show_widths() {
    const std::vector<const FeatureGap*> rows = gaps_of(*type(), *place_);
    const auto called = [this](const FeatureGap& row) {
        return as_sentence(catalog_text(row.name.empty() ? type()->name : row.name));
    };
    // Of the same type, what was typed stays.
    if (std::ranges::equal(rows, widths_, {}, {}, &Width::row)) {
        for (const Width& width : widths_) width.label->setText(called(*width.row));
        return;
    }
    clear_widths();
    QWidget* before = name_;
    for (const FeatureGap* row : rows) {
        auto* label = new QLabel(called(*row), gap_box_);
        label->setWordWrap(true);
        auto* field = new SizeField(gap_box_);
        field->setObjectName(QStringLiteral("feature_width"));
        field->show_size(row->width, true);
        field->line().setAccessibleName(label->text());
        label->setBuddy(field);
        label->ensurePolished();
        field->line().ensurePolished();
        gap_rows_->addWidget(label);
        gap_rows_->addWidget(field);
        widths_.push_back({row, label, field});
        setTabOrder(before, &field->line());
        before = &field->line();
    }
    setTabOrder(before, add_);
    setTabOrder(add_, cancel_);
}

/// What is typed, as far as it is a length.
void FeatureForm::take_values() {
    if (!place_) return;
    const auto along = along_->size(), up = up_->size();
    if (place_->level()) {
        if (along) place_->at.x = place_->corner.x + *along;
        if (up) place_->at.y = place_->corner.y + *up;
    } else {
        if (along) place_->along = *along;
        if (up) place_->up = place_->base + *up;
    }
    tell_place();
}

void FeatureForm::tell_place() {
    show_->setText(place_ ? tr("&Move...") : tr("Sh&ow..."));
    if (!place_) {
        where_->setText(
            show_->isChecked()
                ? tr("Click the place on the house in the picture: on a wall, a ceiling, a floor, the roof, an eave, a door "
                     "or a window.")
                : tr("Show the place on the house in the picture."));
        return;
    }
    PlaceNeeds needs;
    if (type() != nullptr)
        needs = needs_of(*type(), *place_);
    else if (place_->level())
        needs.at = true;
    else
        needs.along = needs.up = !place_->is(Host::opening) && !place_->is(Host::block_wall);
    where_->setText(as_sentence(place_words(*place_, needs)));
}

bool FeatureForm::check() {
    bool right = true;
    const auto look = [&](SizeField& field) {
        if (!field.isHidden() && !field.check()) right = false;
    };
    look(*along_);
    look(*up_);
    for (const Width& width : widths_) look(*width.field);
    if (name_->text().trimmed().isEmpty()) {
        problem_->set_fault(tr("Give it a name by which everybody finds it."));
        right = false;
    }
    return right;
}

void FeatureForm::add() {
    if (!place_ || type() == nullptr || adding_ || !check()) return;
    take_values();
    problem_->set_fault({});
    AddFeature entry = entry_of(*type(), *place_, along_->text().toStdString(), up_->text().toStdString());
    entry.name = name_->text().trimmed().toStdString();
    Adding adding{.place = *place_};
    for (const Gap& gap : document_.filed()->survey.gaps) adding.before.insert(gap.id);
    entry.taken.assign(adding.before.begin(), adding.before.end());
    for (const Width& width : widths_) {
        const auto size = width.field->size();
        if (size && std::abs(*size - width.row->width) > same)
            adding.measured.emplace_back(width.row, width.field->text().toStdString());
    }
    adding_ = std::move(adding);
    show_adding(true);
    if (!survey_.change(entry)) {
        if (adding_) take_failed(tr("Another job is being opened."));
        return;
    }
    adding_->id = survey_.changed_id();
}

void FeatureForm::take_read() {
    places_.reset();
    if (!adding_ || adding_->id.empty() || type() == nullptr) return;
    std::vector<std::string> made;
    for (const Gap& gap : document_.filed()->survey.gaps) {
        if (!adding_->before.contains(gap.id) && gap.id.starts_with(adding_->id)) made.push_back(gap.id);
    }
    if (made.empty()) return;  // read for an earlier change
    const Adding done = *std::exchange(adding_, std::nullopt);
    const Feature& added_type = *type();
    for (const auto& [row, width] : done.measured) {
        const std::string id = gap_id(added_type, done.place, *row, done.id);
        for (const std::string& gap : made) {
            if (gap != id && !gap.starts_with(id + "-")) continue;
            ChangeGap edit{.id = gap};
            edit.shape = ShapeText{shape_word(row->shape), width, std::nullopt};
            edit.how = Evidence::How::measured;
            edit.plus_minus = "";
            (void)survey_.change(edit);
        }
    }
    forget();
    emit added(QString::fromStdString(made.front()));
}

void FeatureForm::take_failed(const QString& why) {
    if (!adding_) return;
    adding_.reset();
    show_adding(false);
    problem_->set_fault(reason_of(QString(why).remove(QStringLiteral(" (in the house of %1)").arg(document_.path()))));
}

void FeatureForm::show_adding(bool adding) {
    add_->setEnabled(!adding && place_ && type() != nullptr);
    body_->setEnabled(!adding);
    show_->setEnabled(!adding);
}

void FeatureForm::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return cancel_->click();
    QWidget::keyPressEvent(event);
}

void FeatureForm::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) retranslate();
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
