// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/gap_form.h"

#include <QEvent>
#include <QFileInfo>
#include <QVBoxLayout>
#include <algorithm>
#include <limits>
#include <utility>

#include "panels/space_dialog.h"

namespace seamward::viewer {

namespace {

/// The reason alone, without file and line: the file is the one that is open.
QString reason_of(const QString& why) {
    const QString first = why.section('\n', 0, 0);
    const int at = first.indexOf(": error: ");
    return at < 0 ? first : first.mid(at + 9);
}

std::vector<std::string> ids_of_house(const Job& job) {
    std::vector<std::string> ids;
    for (std::size_t i = 0; i < job.gaps_of_house; ++i) ids.push_back(job.survey.gaps[i].id);
    return ids;
}

}  // namespace

GapForm::GapForm(JobDocument& document, SurveyDocument& survey, QWidget* parent)
    : QWidget(parent), document_(document), survey_(survey), fields_(new GapFields(this)) {
    setObjectName("gap_form");
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(fields_);
    fields_->note->installEventFilter(this);
    connect_fields();
}

void GapForm::connect_fields() {
    GapFields& f = *fields_;
    connect(f.name, &QLineEdit::editingFinished, this, &GapForm::enter_name);
    connect(f.width, &SizeField::entered, this, [this] { change_shape(fields_->width); });
    connect(f.second, &SizeField::entered, this, [this] { change_shape(fields_->second); });
    connect(f.plus_minus, &SizeField::entered, this,
            [this](const QString& text) { change_evidence(std::nullopt, text, fields_->plus_minus); });
    connect(f.how_known, qOverload<int>(&QComboBox::activated), this,
            [this] { change_evidence(fields_->how(), std::nullopt, nullptr); });
    connect(f.shape_choice, qOverload<int>(&QComboBox::activated), this, [this] {
        fields_->follow_shape();
        change_shape(nullptr);
    });
    connect(f.from, qOverload<int>(&QComboBox::activated), this, [this] { change_sides(0); });
    connect(f.to, qOverload<int>(&QComboBox::activated), this, [this] { change_sides(1); });
    connect(f.move, &QPushButton::toggled, this, &GapForm::wants_point);
    connect(f.photo, &PhotoField::chosen, this, [this](const QString& path) {
        ChangeGap edit{.id = id_};
        edit.photo = path.toStdString();
        change(std::move(edit));
    });
    connect(f.close, &QPushButton::clicked, this, &GapForm::mark_closed);
    connect(f.remove, &QPushButton::clicked, this, &GapForm::remove_gap);
    connect(f.feature, &QPushButton::clicked, this, [this] {
        commit();
        if (const auto at = gap()) emit feature_wanted(gap_facts(*document_.filed(), *at).feature);
    });
    connect(f.add, &QPushButton::clicked, this, &GapForm::add_gap);
    connect(f.cancel, &QPushButton::clicked, this, [this] {
        is_new_ = false;
        fields_->move->setChecked(false);
        emit cancelled();
    });
}

std::optional<GapIndex> GapForm::gap() const {
    if (!document_.has_job()) return std::nullopt;
    const std::vector<Gap>& gaps = document_.filed()->survey.gaps;
    const auto at = std::ranges::find(gaps, id_, &Gap::id);
    if (at == gaps.end()) return std::nullopt;
    return GapIndex{static_cast<std::uint32_t>(at - gaps.begin())};
}

void GapForm::show_gap(const std::string& id) {
    const bool afresh = id != id_ || is_new_;
    if (afresh) commit();
    is_new_ = false;
    id_ = id;
    if (afresh) {
        changing_ = nullptr;
        fields_->move->setChecked(false);  // the point that was to come was the other's
    }
    const std::optional<GapIndex> at = gap();
    emit shows(at.has_value());
    if (!at) return;
    const Job& job = *document_.filed();
    fields_->show_gap(job, gap_facts(job, *at), QFileInfo(document_.path()).absolutePath(), afresh);
}

void GapForm::refresh() {
    if (!is_new_) {
        show_gap(id_);
        return;
    }
    fields_->fill_spaces(*document_.filed());
    for (const std::size_t which : {0U, 1U}) {
        if (std::string& wanted = new_sides_.at(which); !wanted.empty()) fields_->choose_side(which, std::exchange(wanted, {}));
    }
}

void GapForm::forget() {
    id_.clear();
    is_new_ = false;
    changing_ = nullptr;
    fields_->move->setChecked(false);
    emit shows(false);
}

void GapForm::begin_new(const std::optional<Point>& at, const QString& part) {
    if (!document_.has_job()) return;
    if (!is_new_) commit();
    is_new_ = true;
    new_at_ = at;
    changing_ = nullptr;
    fields_->show_new(*document_.filed(), likely_sides(at));
    fields_->show_place(at);
    fields_->move->setChecked(false);
    if (!part.isEmpty()) fields_->name->setText(tr("gap in %1").arg(part));
    emit shows(true);
    fields_->name->setFocus();
    fields_->name->selectAll();
}

std::array<SpaceIndex, 2> GapForm::likely_sides(const std::optional<Point>& at) const {
    const Survey& survey = document_.filed()->survey;
    std::array<SpaceIndex, 2> sides{SpaceIndex{0}, SpaceIndex{survey.spaces.size() > 1 ? 1U : 0U}};
    double nearest = std::numeric_limits<double>::infinity();
    for (const Gap& gap : survey.gaps) {
        if (!at || !gap.at || distance(*gap.at, *at) >= nearest) continue;
        nearest = distance(*gap.at, *at);
        sides = gap.between;
    }
    return sides;
}

void GapForm::take_point(const Point& at) {
    fields_->move->setChecked(false);
    if (is_new_) {
        new_at_ = at;
        fields_->show_place(at);
        return;
    }
    if (!gap()) return;
    ChangeGap edit{.id = id_};
    edit.at = at;
    change(std::move(edit));
}

void GapForm::commit() {
    if (is_new_ || !gap()) return;
    for (SizeField* field : {fields_->width, fields_->second, fields_->plus_minus}) field->enter();
    enter_name();
    enter_note();
}

bool GapForm::change(ChangeGap edit, SizeField* from) {
    if (is_new_ || !gap()) return false;
    changing_ = from;
    fields_->show_problem({});
    return survey_.change(edit);
}

void GapForm::change_evidence(std::optional<Evidence::How> how, std::optional<QString> plus_minus, SizeField* from) {
    const std::optional<GapIndex> at = gap();
    if (is_new_ || !at) return;
    ChangeGap edit{.id = id_};
    edit.how = how;
    if (plus_minus) edit.plus_minus = plus_minus->toStdString();
    complete_evidence(edit, gap_facts(*document_.filed(), *at));
    change(std::move(edit), from);
}

void GapForm::change_shape(SizeField* from) {
    const std::optional<GapIndex> at = gap();
    if (is_new_ || !at) return;
    const GapFacts facts = gap_facts(*document_.filed(), *at);
    const bool other = fields_->shape_word() != seamward::shape_word(facts.gap.shape);
    const auto text = [](const SizeField* field) { return field->text().toStdString(); };
    if (!other && from == nullptr) return;
    ChangeGap edit = from == fields_->width ? measured_width(facts, text(from)) : ChangeGap{.id = id_};
    if (!edit.shape) edit.shape = ShapeText{};
    edit.shape->word = fields_->shape_word();
    if (other) {
        if (from == nullptr && fields_->needs_second()) fields_->second->show_size(std::nullopt, true);
        if (!fields_->width->check() || (fields_->needs_second() && !fields_->second->check())) return;
        edit.shape->width = text(fields_->width);
    }
    if ((other && fields_->needs_second()) || from == fields_->second) edit.shape->second = text(fields_->second);
    change(std::move(edit), from);
}

std::string GapForm::made_space() {
    SpaceDialog dialog(this);
    if (dialog.exec() != QDialog::Accepted) return {};
    AddSpace space = dialog.space();
    for (const Space& known : document_.filed()->survey.spaces) space.taken.push_back(known.id);
    changing_ = nullptr;
    return survey_.change(space) ? survey_.changed_id() : std::string();
}

void GapForm::change_sides(std::size_t which) {
    std::array<std::string, 2> between{fields_->side(0), fields_->side(1)};
    const bool fresh = between.at(which).empty();
    if (fresh) between.at(which) = made_space();
    if (is_new_) {
        if (fresh) new_sides_.at(which) = between.at(which);
        return;
    }
    if (between.at(which).empty()) {
        refresh();
        return;
    }
    ChangeGap edit{.id = id_};
    edit.between = between;
    change(std::move(edit));
}

void GapForm::enter_name() {
    if (is_new_ || !gap() || !fields_->name->isModified()) return;
    fields_->name->setModified(false);
    const Gap& now = document_.filed()->survey[*gap()];
    const std::string name = fields_->name->text().trimmed().toStdString();
    if (name == now.label()) return;
    ChangeGap edit{.id = id_};
    edit.name = name == now.id ? "" : name;
    change(std::move(edit));
}

void GapForm::enter_note() {
    if (is_new_ || !gap()) return;
    const std::string note = fields_->note->toPlainText().trimmed().toStdString();
    if (!fields_->note->document()->isModified() || note == document_.filed()->survey[*gap()].note) return;
    fields_->note->document()->setModified(false);
    ChangeGap edit{.id = id_};
    edit.note = note;
    change(std::move(edit));
}

void GapForm::mark_closed() {
    const std::optional<GapIndex> at = gap();
    if (!at) return;
    changing_ = nullptr;
    fields_->show_problem({});
    if (gap_facts(*document_.filed(), *at).closed != nullptr)
        survey_.change(OpenGap{id_});
    else
        survey_.change(CloseGap{id_, "", "", ""});
}

void GapForm::remove_gap() {
    if (is_new_ || !gap()) return;
    changing_ = nullptr;
    fields_->show_problem({});
    survey_.change(RemoveGap{id_});
}

void GapForm::add_gap() {
    const Job& job = *document_.filed();
    AddGap gap;
    gap.name = fields_->name->text().trimmed().toStdString();
    fields_->show_problem({});
    const bool sizes =
        fields_->width->check() & (!fields_->has_second() || fields_->second->check()) & fields_->plus_minus->check();
    if (gap.name.empty()) fields_->show_problem(tr("Give the gap a name by which everybody finds it."));
    gap.between = {fields_->side(0), fields_->side(1)};
    const bool sides = !gap.between[0].empty() && !gap.between[1].empty();
    if (!sides) fields_->show_problem(tr("Choose the spaces on both sides."));
    if (gap.name.empty() || !sizes || !sides) return;
    gap.shape = {fields_->shape_word(), fields_->width->text().toStdString(), std::nullopt};
    if (fields_->has_second() && !fields_->second->text().isEmpty()) gap.shape.second = fields_->second->text().toStdString();
    gap.how = fields_->how();
    gap.plus_minus = fields_->plus_minus->text().toStdString();
    gap.note = fields_->note->toPlainText().trimmed().toStdString();
    gap.at = new_at_;
    gap.taken = ids_of_house(job);
    changing_ = nullptr;
    if (!survey_.change(gap)) return;
    is_new_ = false;
    id_ = survey_.changed_id();
    emit added(id_);
}

void GapForm::tell_failed(const QString& why) {
    const QString reason = reason_of(why);
    if (changing_ != nullptr)
        changing_->refuse(reason);
    else
        fields_->show_problem(reason);
}

bool GapForm::eventFilter(QObject* watched, QEvent* event) {
    if (watched == fields_->note && event->type() == QEvent::FocusOut) enter_note();
    return QWidget::eventFilter(watched, event);
}

void GapForm::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) {
        refresh();
    }
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
