// SPDX-License-Identifier: GPL-3.0-or-later
// What is there and is to be changed, moved or taken away.
#include <QFileInfo>
#include <algorithm>

#include "document/feature_words.h"
#include "document/gap_facts.h"
#include "document/translations.h"
#include "panels/feature_form.h"

namespace seamward::viewer {

bool FeatureForm::begin_change(const std::string& id) {
    forget();
    const Job& job = *document_.filed();
    const std::vector<GapIndex> gaps = gaps_of_feature(job, id);
    if (gaps.empty() || !lay_out_places()) return false;
    const FeatureDescription* described = places_->feature(id);
    if (described == nullptr) return false;
    const Gap& first = job.survey[gaps.front()];
    present_ = PresentFeature{.id = id, .name = QString::fromStdString(described->name), .described = *described};
    if (present_->name.isEmpty()) present_->name = QString::fromStdString(first.label());
    chosen_ = QString::fromStdString(described->type->id);
    if (first.at) place_ = places_->place_of(*described, *first.at);
    present_->placed = place_.has_value();
    name_->setText(present_->name);
    show_present_widths();
    show_present();
    show_place();
    show_asking(false);
    return true;
}

void FeatureForm::show_present() {
    for (QWidget* widget : {static_cast<QWidget*>(what_label_), static_cast<QWidget*>(search_), static_cast<QWidget*>(types_)})
        widget->setVisible(!present_);
    remove_->setVisible(present_.has_value());
    retranslate();
}

void FeatureForm::show_present_widths() {
    const Job& job = *document_.filed();
    for (const GapIndex gap : gaps_of_feature(job, present_->id)) {
        const GapFacts facts = gap_facts(job, gap);
        add_width({nullptr, facts.gap.id, nullptr, nullptr}, as_sentence(spoken_name(facts.gap)), facts.width());
    }
    put_in_order();
}

QString FeatureForm::house_name() const {
    return QFileInfo(QString::fromStdString(house_of(document_.text(), document_.path().toStdString()).string())).fileName();
}

/// What of its line in the house's file becomes another; nothing: it stays as it is.
std::optional<ChangeFeature> FeatureForm::feature_change() {
    ChangeFeature edit{.id = present_->id};
    const QString name = name_->text().trimmed();
    const bool renamed = name != present_->name;
    if (renamed) edit.name = name.toStdString();
    const bool typed = along_->line().isModified() || up_->line().isModified();
    if (!place_ || (!present_->moved && !typed)) return renamed ? std::optional(edit) : std::nullopt;
    take_values();
    const AddFeature entry = entry_of(*type(), *place_, along_->text().toStdString(), up_->text().toStdString());
    edit.at = entry.at;
    if (present_->moved || along_->line().isModified()) edit.along = entry.along;
    if (present_->moved || up_->line().isModified()) edit.up = entry.up;
    if (present_->moved) {
        edit.on = entry.on;
        edit.side = entry.side;
        edit.story = entry.story;
    }
    return edit;
}

void FeatureForm::apply_change() {
    if (asked_ || !check()) return;
    std::vector<Edit> edits;
    if (const auto edit = feature_change()) edits.emplace_back(*edit);
    const Job& job = *document_.filed();
    for (const GapIndex gap : gaps_of_feature(job, present_->id)) {
        const auto width = std::ranges::find(widths_, job.survey[gap].id, &WidthRow::gap);
        if (width != widths_.end() && width->field->line().isModified())
            edits.emplace_back(measured_width(gap_facts(job, gap), width->field->text().toStdString()));
    }
    if (edits.empty()) return cancel_->click();
    ask(edits, {.id = present_->id});
}

void FeatureForm::remove() {
    if (asked_) return;
    RemoveFeature edit{.id = present_->id, .gaps = {}};
    const Job& job = *document_.filed();
    for (const GapIndex gap : gaps_of_feature(job, present_->id)) edit.gaps.push_back(job.survey[gap].id);
    ask({edit}, {.id = present_->id, .removal = true});
}

}  // namespace seamward::viewer
