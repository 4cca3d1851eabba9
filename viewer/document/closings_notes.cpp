// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/closings_notes.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <map>

#include "base/date.h"
#include "base/phrases.h"
#include "catalog/duties.h"
#include "catalog/shipped.h"
#include "document/closings_text.h"
#include "document/translations.h"
#include "document/way_text.h"

namespace seamward::viewer {

namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("closings", text, nullptr, n); }

QString words(const std::string& text) { return QString::fromStdString(text); }

QString names(const std::vector<Pest>& pests) {
    QStringList all;
    for (const Pest& pest : pests) all << catalog_text(pest.name);
    return all.join(", ");
}

QString labels(const Survey& survey, const std::vector<GapIndex>& gaps) {
    QStringList all;
    for (const GapIndex gap : gaps) all << spoken_name(survey[gap]);
    return all.join("; ");
}

QString departure_text(const Survey& survey, const Occupant& occupant, const Departure& departure) {
    const QString who =
        occupant.seen.empty()
            ? tr("%1 in %2").arg(catalog_text(occupant.animal.name), spoken_name(survey[occupant.space]))
            : tr("%1 in %2 (seen: %3)")
                  .arg(catalog_text(occupant.animal.name), spoken_name(survey[occupant.space]), words(occupant.seen));
    if (!departure.waits()) {
        if (departure.removal != nullptr && departure.removal->by == Removal::By::nothing)
            return tr("%1: nothing waits for it.").arg(who);
        return departure.way_known
                   ? tr("%1: these closings leave it a way out. They keep it out of the rooms and do not drive it away.").arg(who)
                   : tr("%1: no way out is known, and these closings do not touch its space. Look for the way it came.").arg(who);
    }
    const QString gaps = labels(survey, departure.last);
    return departure.way_known
               ? tr("%1 must not be shut in. Its main way out stays open until it is gone: %2.").arg(who, gaps)
               : tr("%1 must not be shut in. No way out is known, so all around its space waits until it is gone: %2.")
                     .arg(who, gaps);
}

QString leaving_text(const Survey& survey, const Departure& departure) {
    if (departure.removal == nullptr)
        return departure.waits()
                   ? tr("The tables do not know this animal: nobody closes these before somebody who knows it has looked.")
                   : QString();
    const Removal& removal = *departure.removal;
    if (!departure.waits() && removal.by != Removal::By::nothing) return {};
    const std::vector<CatalogSource>& sources = shipped_removals().sources;
    const auto cited_words = [&](const std::string& id) { return spoken_text(starred(cited(sources, id))); };
    QStringList lines{tr("%1. (%2)").arg(catalog_text(removal.how), cited_words(removal.source))};
    if (departure.device) lines << tr("Here: %1.").arg(spoken_name(survey[*departure.device]));
    if (departure.season) {
        const ClosedSeason& season = *departure.season->season;
        lines << tr("Not now: %1. Begin on %2 at the earliest. (%3)")
                     .arg(catalog_text(season.why), words(date_text(departure.begin)), cited_words(season.source));
    }
    if (departure.waits()) {
        const QString day = words(date_text(departure.close_from));
        lines << (removal.quiet_nights > 0 ? tr("After %n nights without a sign, on %1 at the earliest, close what waits.",
                                                static_cast<int>(removal.quiet_nights))
                                                 .arg(day)
                                           : tr("Once it is gone, on %1 at the earliest, close what waits.").arg(day));
    }
    for (const Caution& caution : removal.cautions)
        lines << tr("Caution: %1 (%2)").arg(catalog_text(caution.text), cited_words(caution.source));
    return lines.join('\n');
}

}  // namespace

std::vector<ClosingNote> lack_notes(const ClosingsPlan& plan) {
    std::vector<ClosingNote> notes;
    const auto& spaces = plan.survey().spaces;
    if (std::ranges::none_of(spaces, &Space::starts_paths))
        notes.push_back(
            {tr("This survey has no outdoors and no source space: no way in can begin, so there is nothing to plan."), {}, {}});
    if (std::ranges::none_of(spaces, &Space::is_living))
        notes.push_back({tr("This survey has no living space: no way in can end, so there is nothing to plan."), {}, {}});
    if (plan.settings.against.empty())
        notes.push_back(
            {tr("No animals are chosen, so there is no plan yet. Choose above whom to keep out. The price curve and single "
                "closings do not need them."),
             {},
             {}});
    return notes;
}

std::vector<ClosingNote> no_plan_notes(const ClosingsPlan& plan) {
    std::vector<ClosingNote> notes;
    if (!plan.plan.open_way) return notes;
    const OpenWay& way = *plan.plan.open_way;
    const Pest& pest = plan.settings.against[way.pest];
    notes.push_back({tr("There is a way in that must not or cannot be closed: %1.").arg(path_words(plan.survey(), way.path)),
                     tr("It is open to %1, by %2.").arg(catalog_text(pest.name), width_words(way.pinch)), way.pinch_gap});
    for (std::size_t i = 0; i < way.path.gaps.size(); ++i)
        notes.push_back({tr("%1 stays open").arg(spoken_name(plan.survey()[way.path.gaps[i]])),
                         spoken_text(plan.plan.open_way_reasons[i]), way.path.gaps[i]});
    std::vector<Pest> can;
    std::vector<Pest> cannot;
    for (std::size_t i = 0; i < plan.alone.size(); ++i) (plan.alone[i] ? can : cannot).push_back(plan.settings.against[i]);
    notes.push_back({tr("Measure these gaps anew, look for another place to stop the way, or plan against other animals."),
                     can.empty() ? tr("None of these animals can be shut out as things stand.")
                                 : tr("Can be shut out: %1. Cannot: %2.").arg(names(can), names(cannot)),
                     {}});
    return notes;
}

std::vector<ClosingNote> wrong_notes(const ClosingsPlan& plan) {
    std::vector<ClosingNote> notes;
    for (const WrongClosing& wrong : plan.plan.wrong_closings)
        notes.push_back({spoken_text(wrong_closing_text(plan.survey(), wrong)), spoken_text(starred(wrong.source)), wrong.gap});
    return notes;
}

std::vector<ClosingNote> before_notes(const ClosingsPlan& plan) {
    std::vector<ClosingNote> notes;
    for (const Message& line : plan.plan.before) notes.push_back({spoken_text(line), {}, {}});
    return notes;
}

std::vector<ClosingNote> departure_notes(const ClosingsPlan& plan, const std::vector<Departure>& departures) {
    std::vector<ClosingNote> notes;
    for (const Departure& departure : departures) {
        const Occupant& occupant = plan.job->occupied[departure.occupant];
        notes.push_back(
            {departure_text(plan.survey(), occupant, departure), leaving_text(plan.survey(), departure), departure.device});
    }
    return notes;
}

std::vector<ClosingNote> stays_open_notes(const ClosingsPlan& plan) {
    std::map<std::pair<std::string, std::string>, std::pair<const Refusal*, std::vector<GapIndex>>> by_reason;
    for (const RefusedGap& refused : plan.plan.refused) {
        if (!refused.refusal.treatment.empty()) continue;
        auto& [refusal, gaps] = by_reason[{refused.refusal.why.english(), refused.refusal.source.english()}];
        refusal = &refused.refusal;
        gaps.push_back(refused.gap);
    }
    std::vector<ClosingNote> notes;
    for (const auto& [english, reason] : by_reason) {
        const auto& [refusal, gaps] = reason;
        notes.push_back({labels(plan.survey(), gaps),
                         tr("%1 (%2)").arg(spoken_text(refusal->why), spoken_text(starred(refusal->source))), gaps.front()});
    }
    return notes;
}

std::vector<ClosingNote> limit_notes(const ClosingsPlan& plan) {
    if (!plan.plan.ladder_stop) return {};
    const LadderStop& stop = *plan.plan.ladder_stop;
    const QString gap = spoken_name(plan.survey()[stop.gap]);
    return {
        {tr("No price goes further: %1 stays open at %2.").arg(width_words(stop.width), gap), spoken_text(stop.why), stop.gap}};
}

std::vector<ClosingNote> check_notes(const ClosingsPlan& plan) {
    std::vector<ClosingNote> notes;
    // The first notes are the wrong closings, which stand above.
    for (std::size_t i = plan.plan.wrong_closings.size(); i < plan.plan.notes.size(); ++i)
        notes.push_back({spoken_text(plan.plan.notes[i]), {}, {}});
    for (const MarginalStop& stop : plan.plan.marginal)
        notes.push_back(
            {tr("Close call: %1").arg(spoken_name(plan.survey()[stop.gap])),
             tr("It is too narrow for %1 by only %2, and that animal's size is not known so exactly.")
                 .arg(catalog_text(plan.settings.against[stop.pest].name), words(percent_text(std::max(0.01, stop.share_short)))),
             stop.gap});
    for (const Message& check : plan.plan.last_checks) notes.push_back({tr("At the end: %1").arg(spoken_text(check)), {}, {}});
    return notes;
}

std::vector<ClosingNote> proof_notes(const ClosingsPlan& plan) {
    const Proof& proof = plan.plan.proof;
    if (proof.routes.empty() || !plan.plan.feasible) return {};
    const auto count = static_cast<int>(proof.routes.size());
    const QString bound = money_words(proof.lower_bound);
    if (proof.kind == Proof::Kind::flow)
        return {{tr("No set of closings is cheaper: %n ways in have to be closed, each at a price of its own, and these add up "
                    "to %1, the "
                    "price of the plan.",
                    count)
                     .arg(bound),
                 {},
                 {}}};
    if (proof.lower_bound == plan.plan.cost)
        return {{tr("No cheaper set was found: %n ways in cost at least %1 to close, the price of the plan.", count).arg(bound),
                 {},
                 {}}};
    if (proof.solver_gap > 0)
        return {{tr("No cheaper set was found: %n ways in cost at least %1 to close, and whatever lies between that and the "
                    "price of the plan was tried and does not do, but for %2.",
                    count)
                     .arg(bound, words(percent_text(proof.solver_gap))),
                 {},
                 {}}};
    return {{tr("No cheaper set was found: %n ways in cost at least %1 to close, and whatever lies between that and the "
                "price of the plan was tried and does not do.",
                count)
                 .arg(bound),
             {},
             {}}};
}

std::vector<ClosingNote> material_notes(const ClosingsDocument& closings) {
    std::vector<Need> needs;
    for (const OfferedClosing& offer : closings.plan().offers) {
        if (!closings.is_ticked(offer)) continue;
        const std::vector<Need>& more = closings.chosen(offer).needs;
        needs.insert(needs.end(), more.begin(), more.end());
    }
    const PriceBook& prices = closings.plan().settings.prices;
    std::vector<ClosingNote> notes;
    for (const Purchase& purchase : to_buy(needs, prices)) {
        const Material* material = prices.find(purchase.material);
        const QString name = catalog_text(material->name);
        const QString cost = money_words(purchase.cost);
        const QString unit = material->unit == "piece" ? name : tr("%1 %2").arg(catalog_text(material->unit), name);
        const QString cases = tr("%n cases of %1", static_cast<int>(purchase.cases)).arg(material->in_case);
        if (purchase.cases == 0)
            notes.push_back({tr("%1 x %2, %3").arg(purchase.units).arg(unit, cost), {}, {}});
        else if (purchase.units == 0)
            notes.push_back({tr("%1, %2, %3").arg(cases, unit, cost), {}, {}});
        else
            notes.push_back({tr("%1 and %2 x %3, %4").arg(cases).arg(purchase.units).arg(unit, cost), {}, {}});
    }
    return notes;
}

}  // namespace seamward::viewer
