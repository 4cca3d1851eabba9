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

/// A length as it may stand in the file.
QString meters(double length) { return QString::number(length, 'g', 6) + QStringLiteral(" m"); }

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
      remove_(named<QPushButton>(this, "feature_remove")),
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
    asked_.reset();
    present_.reset();
    place_.reset();
    chosen_.clear();
    clear_widths();
    for (SizeField* field : {along_, up_}) field->show_size(std::nullopt, true);
    name_->clear();
    name_->setModified(false);
    search_->clear();
    problem_->set_fault({});
    show_->setChecked(false);
    show_asking(false);
    show_present();
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

bool FeatureForm::lay_out_places() {
    try {
        if (!places_) {
            std::string shown_as;
            const std::string text = house_text(shown_as);
            places_ = std::make_unique<FeaturePlaces>(text, shown_as);
        }
    } catch (const BadInput& bad) {
        problem_->set_fault(reason_of(QString::fromUtf8(bad.what())));
    }
    return places_ != nullptr;
}

void FeatureForm::take_point(const Point& at, const std::string& part) {
    if (!can_add(document_) || asked_ || !lay_out_places()) return;
    std::optional<FeaturePlace> found = places_->place(at, part);
    if (!found) {
        problem_->set_fault(
            tr("Nothing can be added there. Click a wall, a ceiling, a floor, the roof, an eave, a door or a window."));
        return;
    }
    if (present_ && !goes_on(*type(), *found)) {
        problem_->set_fault(tr("It cannot stand there: %1.", "a place").arg(place_words(*found, {})));
        return;
    }
    place_ = std::move(found);
    if (present_) present_->moved = true;
    problem_->set_fault({});
    show_->setChecked(false);
    show_place();
    if (present_) return along_->setFocus();
    if (types_->count() > 0 && chosen_.isEmpty()) search_->setFocus();
}

void FeatureForm::show_place() {
    tell_sides();
    body_->setVisible(place_.has_value() || present_);
    add_->setVisible(place_.has_value() || present_);
    if (place_) {
        const QSignalBlocker quiet_along(along_->line()), quiet_up(up_->line());
        const Point2 off = place_->at - place_->corner;
        // What says the same stays in the words that somebody typed.
        const auto put = [](SizeField& field, double value) {
            if (const auto now = field.size(); now && std::abs(*now - value) < same) return;
            field.type(meters(value));
            field.line().setModified(false);
        };
        put(*along_, place_->level() ? off.x : place_->along);
        put(*up_, place_->level() ? off.y : place_->up - place_->base);
        fill_types();
    }
    if (present_) show_type();
    tell_place();
}

void FeatureForm::fill_types() {
    if (present_) return;  // what it is stays
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
    const bool known = (place_ || present_) && type() != nullptr;
    rest_->setVisible(known);
    add_->setEnabled(known && !asked_);
    if (known) {
        const PlaceNeeds needs = place_ ? needs_of(*type(), *place_) : PlaceNeeds{};
        const bool underground = place_ && !place_->level() && place_->up < place_->base - same;  // nobody measures that
        for (QWidget* widget : {static_cast<QWidget*>(along_label_), static_cast<QWidget*>(along_)})
            widget->setVisible(needs.along || needs.at);
        for (QWidget* widget : {static_cast<QWidget*>(up_label_), static_cast<QWidget*>(up_)})
            widget->setVisible((needs.up || needs.at) && !underground);
        if (!present_) {
            if (!name_->isModified()) name_->setText(usual_name(*type(), *place_));
            show_widths();
        }
    }
    tell_place();
}

void FeatureForm::clear_widths() {
    for (const WidthRow& width : widths_) {
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
    if (std::ranges::equal(rows, widths_, {}, {}, &WidthRow::row)) {
        for (const WidthRow& width : widths_) width.label->setText(called(*width.row));
        return;
    }
    clear_widths();
    for (const FeatureGap* row : rows) add_width({row, {}, nullptr, nullptr}, called(*row), row->width);
    put_in_order();
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
    show_->setVisible(!present_ || present_->placed);
    if (present_ && !place_) {
        where_->setText(
            tr("Where it is cannot be told by one place: it runs along several parts of the house, or through air that something "
               "else encloses. Its place is changed in the file of the house, %1.")
                .arg(house_name()));
        return;
    }
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
    for (const WidthRow& width : widths_) look(*width.field);
    if (name_->text().trimmed().isEmpty()) {
        problem_->set_fault(tr("Give it a name by which everybody finds it."));
        right = false;
    }
    return right;
}

void FeatureForm::add() {
    if (present_) return apply_change();
    if (!place_ || type() == nullptr || asked_ || !check()) return;
    take_values();
    AddFeature entry = entry_of(*type(), *place_, along_->text().toStdString(), up_->text().toStdString());
    entry.name = name_->text().trimmed().toStdString();
    for (const Gap& gap : document_.filed()->survey.gaps) entry.taken.push_back(gap.id);
    for (const WidthRow& width : widths_) {
        const auto size = width.field->size();
        if (size && std::abs(*size - width.row->width) > same)
            entry.measured.emplace_back(width.row->id, width.field->text().toStdString());
    }
    ask({entry}, {});
}

void FeatureForm::ask(const std::vector<Edit>& edits, AskedFeature asked) {
    problem_->set_fault({});
    asked_ = std::move(asked);
    show_asking(true);
    if (!survey_.change(edits)) {
        if (asked_) take_failed(tr("Another job is being opened."));
        return;
    }
    if (asked_ && asked_->id.empty()) asked_->id = survey_.changed_id();
    if (survey_.is_read()) take_read();  // it was so before
}

void FeatureForm::take_read() {
    places_.reset();
    if (!asked_) {
        // Somebody took a change back: what is shown may be another.
        if (present_ && !begin_change(std::string(present_->id))) {
            forget();
            emit cancelled();
        }
        return;
    }
    if (asked_->id.empty() || !survey_.is_read()) return;
    const AskedFeature done = *std::exchange(asked_, std::nullopt);
    const Job& job = *document_.filed();
    const std::vector<GapIndex> gaps = gaps_of_feature(job, done.id);
    const QString first = gaps.empty() ? QString() : QString::fromStdString(job.survey[gaps.front()].id);
    forget();
    if (done.removal)
        emit removed();
    else
        emit added(first);
}

void FeatureForm::take_failed(const QString& why) {
    if (!asked_) return;
    asked_.reset();
    show_asking(false);
    problem_->set_fault(reason_of(QString(why).remove(QStringLiteral(" (in the house of %1)").arg(document_.path()))));
}

void FeatureForm::show_asking(bool asking) {
    add_->setEnabled(!asking && (place_ || present_) && type() != nullptr);
    remove_->setEnabled(!asking);
    body_->setEnabled(!asking);
    show_->setEnabled(!asking);
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
