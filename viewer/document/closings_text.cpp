// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/closings_text.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "base/measure_text.h"
#include "catalog/duties.h"
#include "catalog/shipped.h"
#include "document/translations.h"
#include "document/way_text.h"

namespace seamward::viewer {

namespace {

QString tr(const char* text, int n = -1) { return QCoreApplication::translate("closings", text, nullptr, n); }

QString words(const std::string& text) { return QString::fromStdString(text); }

QString html(const Message& text) { return spoken_text(starred(text)).toHtmlEscaped(); }

QString begun_large(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

QString paragraph(const QString& inside) { return "<p style='margin: 5px 0px'>" + inside + "</p>"; }

QString material_words(const ClosingsPlan& plan, const Need& need) {
    const Material* material = plan.settings.prices.find(need.material);
    if (material == nullptr) return words(need.material);
    const QString name = catalog_text(material->name);
    switch (material->by) {
        case Material::By::volume: return tr("%1, %2 ml").arg(name).arg(std::ceil(need.amount * 1e6));
        case Material::By::area: return tr("%1, %2 cm\u00b2").arg(name).arg(std::ceil(need.amount * 1e4));
        case Material::By::length: return tr("%1, %2 m").arg(name).arg(std::ceil(need.amount * 10) / 10);
        case Material::By::piece: break;
    }
    return tr("%1, %2 pieces").arg(name).arg(std::ceil(need.amount));
}

QString ladder_html(const OfferedClosing& offer) {
    if (!offer.planned || offer.stop.ladder_first == 0) return {};
    const QString first = QString::number(offer.stop.ladder_first);
    const QString last = QString::number(offer.stop.ladder_last);
    const QString settings = offer.stop.ladder_last > offer.stop.ladder_first
                                 ? tr("Settings %1 to %2 of the ladder.").arg(first, last)
                                 : tr("Setting %1 of the ladder.").arg(first);
    return paragraph(settings);
}

bool all_shut_out(const ClosingsDocument& closings) {
    const std::vector<AnimalOutlook>& animals = closings.outlook().animals;
    return !closings.against().empty() && !animals.empty() &&
           std::ranges::none_of(animals, [](const AnimalOutlook& one) { return one.planned_against && one.way; });
}

QString nothing_ticked_words(const ClosingsPlan& plan) {
    return plan.plan.ladder.empty() ? tr("Nothing is ticked: the house as it stands.")
                                    : tr("Nothing is ticked: the house as it stands. Slide along the price.");
}

QString all_shut_out_words(Money cost) {
    return tr("For %1 no animal planned against has a way in left.").arg(money_words(cost));
}

/// `widest` counts every gap as wide as it may be.
QString left_words(Money cost, double widest) {
    if (widest <= 0) return tr("For %1 no way in at all is left.").arg(money_words(cost));
    return tr("For %1 the widest way left is up to %2.").arg(money_words(cost), width_words(widest));
}

QString cheaper_words(Money cost, double widest, Money cheaper) {
    return tr("%1 Closing other gaps would do as much for %2.").arg(left_words(cost, widest), money_words(cheaper));
}

QString refused_html(const OfferedClosing& offer) {
    QString text;
    for (const Refusal& refusal : offer.refused) {
        const QString line =
            tr("%1: %2 (%3)")
                .arg(treatment_words(refusal.treatment), spoken_text(refusal.why), spoken_text(starred(refusal.source)));
        text += "<li>" + line.toHtmlEscaped() + "</li>";
    }
    return text.isEmpty()
               ? text
               : paragraph("<b>" + tr("Not offered here, and why") + "</b>") + "<ul style='margin: 0px'>" + text + "</ul>";
}

}  // namespace

QString money_words(Money money) { return words(money_text(money)); }

QString time_words(double minutes) {
    const auto whole = static_cast<int>(std::lround(minutes));
    if (whole < 60) return tr("%1 min").arg(whole);
    return whole % 60 == 0 ? tr("%1 h").arg(whole / 60) : tr("%1 h %2 min").arg(whole / 60).arg(whole % 60);
}

QString treatment_words(const std::string& id) {
    const Treatment* treatment = shipped_treatments().find(id);
    return treatment != nullptr ? catalog_text(treatment->name) : tr("closed at the price of the survey");
}

QString stand_words(const ClosingsPlan& plan, const OfferedClosing& offer) {
    const QString where = catalog_text(zone_words(offer.stop.zone));
    if (offer.waits) return tr("On a later visit, when the animals are gone: %1").arg(where);
    const QString zone = begun_large(where);
    if (!offer.planned) return zone;
    const auto settings = static_cast<int>(plan.plan.ladder_settings);
    if (offer.stop.zone != WorkZone::outside_high || settings == 0) return zone;
    return settings == 1 ? tr("%1, the ladder set once").arg(zone) : tr("%1, the ladder set %2 times").arg(zone).arg(settings);
}

QString counted_words(const ClosingsPlan& plan, GapIndex index) {
    const Gap& gap = plan.survey()[index];
    const QString stated = width_words(clear_width(gap.shape));
    const QString counted = width_words(counted_width(gap, plan.settings.sizing));
    if (counted == stated) return gap.count > 1 ? tr("%1, %2 pieces").arg(stated).arg(gap.count) : stated;
    return gap.count > 1 ? tr("%1, up to %2, %3 pieces").arg(stated, counted).arg(gap.count)
                         : tr("%1, up to %2").arg(stated, counted);
}

QString option_words(const OfferedClosing& offer, std::size_t option) {
    const Option& one = offer.options[option];
    QStringList parts{treatment_words(one.treatment), money_words(one.cost)};
    if (one.minutes > 0) parts << time_words(one.minutes);
    if (offer.planned && option == offer.usual) parts << tr("as planned");
    if (one.gnawed) parts << tr("rodents gnaw through it");
    if (one.opening > 0) parts << tr("leaves %1 open").arg(width_words(one.opening));
    return parts.join(", ");
}

QString closing_html(const ClosingsPlan& plan, const OfferedClosing& offer, std::size_t option) {
    const Option& chosen = offer.options[option];
    QString text;
    for (const Message& caution : offer.cautions(option)) text += paragraph("<b>" + tr("Caution:") + "</b> " + html(caution));
    text += paragraph("<b>" + tr("Gap:") + "</b> " + counted_words(plan, offer.gap).toHtmlEscaped());
    if (chosen.gnawed) text += paragraph("<b>" + tr("Rodents gnaw through it.") + "</b>");
    if (!chosen.steps.empty()) text += "<ol style='margin: 4px 0px'>";
    for (const Message& step : chosen.steps) text += "<li>" + html(step) + "</li>";
    if (!chosen.steps.empty()) text += "</ol>";
    QStringList materials;
    for (const Need& need : chosen.needs) materials << material_words(plan, need);
    if (!materials.isEmpty()) text += paragraph("<b>" + tr("Material:") + "</b> " + materials.join("; ").toHtmlEscaped());
    text += ladder_html(offer);
    if (offer.stop.two_people) text += paragraph(tr("Two people."));
    if (offer.waits) text += paragraph(tr("Not before the animal that lives here has left."));
    if (offer.planned) {
        text +=
            paragraph(offer.widest_open_after > 0
                          ? tr("When the plan is done up to here, %1 is still open.").arg(width_words(offer.widest_open_after))
                          : tr("When the plan is done up to here, no way in is left open."));
    }
    text += refused_html(offer);
    return text.contains(QLatin1Char('*')) ? text + paragraph("<i>" + star_words() + "</i>") : text;
}

QString star_words() { return tr("* Not checked against the document itself: named from memory, or as others quote it."); }

QString outlook_words(const AnimalOutlook& animal) {
    if (!animal.way) return tr("shut out");
    const QString width = width_words(animal.way->pinch).replace(' ', QChar::Nbsp);
    return animal.way->maybe ? tr("perhaps in by %1").arg(width) : tr("in by %1").arg(width);
}

QString longest_outlook_words(bool maybe) {
    AnimalOutlook animal;
    animal.way.emplace();
    animal.way->pinch = 0.02262;  // meters: 57/64 in, 22.62 mm
    animal.way->maybe = maybe;
    return outlook_words(animal);
}

QString outlook_way_words(const ClosingsPlan& plan, const AnimalOutlook& animal) {
    const QString name = catalog_text(animal.pest.name);
    if (!animal.way) return tr("%1: no way in is left, as far as this survey goes.").arg(name);
    const QString way = path_words(plan.survey(), animal.way->path);
    if (animal.gnaws.empty())
        return tr("%1 still gets in %2. Smallest gap: %3.").arg(name, way, spoken_name(plan.survey()[animal.way->pinch_gap]));
    QStringList gnawed;
    for (const GapIndex gap : animal.gnaws) gnawed << spoken_name(plan.survey()[gap]);
    return tr("%1 still gets in %2. It gnaws through what closes: %3.").arg(name, way, gnawed.join("; "));
}

QString path_words(const Survey& survey, const EntryPath& path) {
    QStringList gaps;
    for (const GapIndex gap : path.gaps) gaps << spoken_name(survey[gap]);
    return tr("from %1 by: %2; into %3")
        .arg(spoken_name(survey[path.from()]), gaps.join(tr("; then ")), spoken_name(survey[path.to()]));
}

QString price_words(const ClosingsDocument& closings) {
    const ClosingsPlan& plan = closings.plan();
    const int rung = closings.rung();
    if (rung == ClosingsDocument::none_done) return nothing_ticked_words(plan);
    const Money cost = closings.ticked().cost;
    if (all_shut_out(closings)) return all_shut_out_words(cost);
    if (rung >= 0) return left_words(cost, plan.widest_after_rung[static_cast<std::size_t>(rung)]);
    const double widest = closings.outlook().widest;
    const std::vector<LadderRung>& ladder = plan.plan.ladder;
    for (std::size_t i = 0; widest > 0 && i < ladder.size() && ladder[i].cost < cost; ++i) {
        if (plan.widest_after_rung[i] <= widest) return cheaper_words(cost, widest, ladder[i].cost);
    }
    return left_words(cost, widest);
}

QStringList possible_price_words(const ClosingsDocument& closings) {
    const ClosingsPlan& plan = closings.plan();
    const Money most = closings.most().cost;
    QStringList all{nothing_ticked_words(plan), all_shut_out_words(most), left_words(most, 0)};
    std::vector<double> widths = plan.widest_after_rung;
    widths.push_back(plan.widest_now);
    for (const double width : widths) all << left_words(most, width) << cheaper_words(most, width, most);
    return all;
}

QString budget_words(const ClosingsDocument& closings, Money budget, const BudgetResult& result) {
    if (result.reaches_all)
        return tr("The whole plan fits in %1. A quote adds whole packs, the least charge of a visit, overhead and tax.")
            .arg(money_words(budget));
    const QString paid = tr("Within %1: what is ticked costs %2; %3 is still to pay for the whole plan.")
                             .arg(money_words(budget), money_words(closings.ticked().cost), money_words(result.still_to_pay));
    if (!result.left_open) return paid;
    return tr("%1 The widest way that stays open to an animal is up to %2, %3.")
        .arg(paid, width_words(result.left_open->pinch), path_words(closings.plan().survey(), result.left_open->path));
}

}  // namespace seamward::viewer
