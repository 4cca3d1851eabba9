// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in the list of closings.
#include <algorithm>

#include "document/closings_text.h"
#include "document/translations.h"
#include "panels/closing_row.h"
#include "panels/closings_list.h"

namespace seamward::viewer {

QListWidgetItem* ClosingsList::add(int kind, const QString& title, const QString& below) {
    auto* row = new QListWidgetItem(this);
    row->setText(below.isEmpty() ? title : title.isEmpty() ? below : tr("%1: %2").arg(title, below));
    row->setData(ClosingRow::kind, kind);
    row->setData(ClosingRow::title, title);
    row->setData(ClosingRow::below, below);
    row->setData(ClosingRow::gap, ClosingRow::no_gap);
    return row;
}

void ClosingsList::add_heading(const QString& text) { add(ClosingRow::heading, text)->setFlags(Qt::NoItemFlags); }

QListWidgetItem* ClosingsList::add_fold(const QString& name, const QString& text, bool open) {
    folds_.emplace(name, open);
    QListWidgetItem* row = add(ClosingRow::fold, text);
    row->setData(ClosingRow::number, name);
    return row;
}

void ClosingsList::add_notes(const std::vector<ClosingNote>& notes) {
    for (const ClosingNote& note : notes) {
        QListWidgetItem* row = add(ClosingRow::note, note.text, note.reason);
        row->setData(ClosingRow::gap, ClosingRow::gap_value(note.gap));
    }
}

void ClosingsList::fill_notes_above() {
    const ClosingsPlan& plan = closings_.plan();
    const std::vector<ClosingNote> lack = lack_notes(plan);
    if (!lack.empty()) add_heading(tr("There is nothing to plan"));
    add_notes(lack);
    const std::vector<ClosingNote> no_plan = no_plan_notes(plan);
    if (!no_plan.empty()) add_heading(tr("No plan: there is a way in that must not or cannot be closed"));
    add_notes(no_plan);
    if (lack.empty() && plan.plan.feasible && plan.plan.steps.empty()) {
        add_heading(tr("Nothing needs closing"));
        add_notes({{tr("None of these animals has a way in, as far as this survey goes."), {}, {}}});
    }
    const std::vector<ClosingNote> wrong = wrong_notes(plan);
    if (!wrong.empty()) add_heading(tr("Wrong closings to open again"));
    add_notes(wrong);
    const std::vector<ClosingNote> departures = departure_notes(plan, plan.plan.departures);
    if (!departures.empty()) add_heading(tr("Animals that live in the house"));
    for (const ClosingNote& departure : departures) {
        departures_.push_back(add(ClosingRow::note, departure.text));
        departures_.back()->setData(ClosingRow::gap, ClosingRow::gap_value(departure.gap));
    }
    if (!departures.empty()) {
        add_fold("leaving", tr("How they leave the house, and what to mind"), false);
        leaving_ = add(ClosingRow::note, {});
    }
    const std::vector<ClosingNote> before = before_notes(plan);
    if (!before.empty()) add_fold("before", tr("Before the work (%n)", nullptr, static_cast<int>(before.size())), false);
    add_notes(before);
}

void ClosingsList::fill_offers(bool planned) {
    const ClosingsPlan& plan = closings_.plan();
    const auto count = std::ranges::count(plan.offers, planned, &OfferedClosing::planned);
    if (count == 0) return;
    if (!planned) {
        const bool needless = plan.plan.feasible && !plan.settings.against.empty();
        add_fold("others",
                 needless ? tr("Not needed for these animals (%n)", nullptr, static_cast<int>(count))
                          : tr("Can be closed (%n)", nullptr, static_cast<int>(count)),
                 !needless);
    }
    QString stand;
    for (const OfferedClosing& offer : plan.offers) {
        if (offer.planned != planned) continue;
        if (planned && stand_words(plan, offer) != stand) add_heading(stand_words(plan, offer));
        stand = stand_words(plan, offer);
        add_offer(offer);
    }
}

void ClosingsList::add_offer(const OfferedClosing& offer) {
    QListWidgetItem* row = add(ClosingRow::closing, spoken_name(closings_.plan().survey()[offer.gap]));
    row->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    row->setData(ClosingRow::offer, offer.number - 1);
    row->setData(ClosingRow::gap, ClosingRow::gap_value(offer.gap));
    row->setData(ClosingRow::number, QString::number(offer.number));
}

void ClosingsList::fill_notes_below() {
    const ClosingsPlan& plan = closings_.plan();
    std::vector<ClosingNote> open = stays_open_notes(plan);
    for (ClosingNote& limit : limit_notes(plan)) open.push_back(std::move(limit));
    if (!open.empty()) add_heading(tr("What stays open, and why"));
    add_notes(open);
    const bool stars = std::ranges::any_of(open, [](const ClosingNote& note) { return note.reason.contains(QLatin1Char('*')); });
    if (stars) add_notes({{{}, star_words(), {}}});
    const std::vector<ClosingNote> check = check_notes(plan);
    checks_ = add_fold("check", tr("To check"), false);
    checks_->setData(ClosingRow::offer, static_cast<int>(check.size()));
    air_ = add(ClosingRow::note, {});
    add_notes(check);
    add_fold("materials", tr("To bring for what is ticked"), false);
    materials_ = add(ClosingRow::note, {});
    const std::vector<ClosingNote> proof = proof_notes(plan);
    if (!proof.empty()) add_fold("proof", tr("Why nothing cheaper will do"), false);
    add_notes(proof);
}

void ClosingsList::refresh_notes() {
    const auto set = [](QListWidgetItem& row, const QString& title, const QString& below) {
        row.setData(ClosingRow::title, title);
        row.setData(ClosingRow::below, below);
        row.setText(below.isEmpty() ? title : tr("%1: %2").arg(title, below));
    };
    // As long as nothing is ticked, what holds of the whole plan is told.
    const bool any = closings_.ticked().gaps > 0;
    const std::vector<ClosingNote> departures =
        departure_notes(closings_.plan(), any ? closings_.outlook().departures : closings_.plan().plan.departures);
    for (std::size_t i = 0; i < std::min(departures.size(), departures_.size()); ++i)
        set(*departures_[i], departures[i].text, {});
    QStringList leaving;
    for (const ClosingNote& departure : departures) leaving << departure.reason;
    leaving.removeAll(QString());
    if (leaving.join(QString()).contains(QLatin1Char('*'))) leaving << star_words();
    if (leaving_ != nullptr)
        set(*leaving_, leaving.isEmpty() ? tr("None of them has to leave for these closings.") : leaving.join("\n\n"), {});
    QStringList air;
    for (const Message& doubt : closings_.outlook().air_doubts) air << tr("Air: %1").arg(spoken_text(doubt));
    if (air_ != nullptr) set(*air_, air.join('\n'), {});
    QStringList packs;
    for (const ClosingNote& note : material_notes(closings_)) packs << note.text;
    if (materials_ != nullptr) set(*materials_, packs.isEmpty() ? tr("Nothing is ticked that takes any.") : packs.join('\n'), {});
}

}  // namespace seamward::viewer
