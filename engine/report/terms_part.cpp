// SPDX-License-Identifier: GPL-3.0-or-later
#include <map>
#include <set>

#include "catalog/pest_sizes.h"
#include "catalog/shipped.h"
#include "materials/treatment_name.h"
#include "plan/last_checks.h"
#include "report/page_parts.h"

namespace seamward {

namespace {

constexpr unsigned months_of_year = 12;

std::vector<Message> as_messages(const auto& texts) { return {texts.begin(), texts.end()}; }

/// Of one treatment: so many closings of the plan, or one that holds already, since that day.
struct Life {
    const Treatment* treatment = nullptr;
    std::size_t closings = 0;
};

std::vector<Life> lives_of(const Plan& plan) {
    std::vector<Life> lives;
    for (const Treatment& treatment : shipped_treatments().rows) {
        Life life{&treatment, 0};
        for (const PlanStep& step : plan.steps) life.closings += step.option.treatment == treatment.id ? 1 : 0;
        if (life.closings > 0) lives.push_back(life);
    }
    return lives;
}

/// What is expected to hold for so long from that day on, and when to look at it again.
std::vector<Message> row_of_life(const PageWriter& page, const Message& what, const Treatment& treatment, Date since) {
    if (treatment.years == 0) return {what, "not known", "no day is known"};
    return {what, counted_message(treatment.years, "1 year", "{} years"),
            page.date_part(months_after(since, static_cast<int>(treatment.years * months_of_year)))};
}

}  // namespace

void before_part(PageWriter& page) {
    std::vector<Message> items = as_messages(page.facts.terms.approvals);
    if (items.empty()) items = as_messages(page.facts.plan.before);
    if (items.empty()) return;
    page.begin_section("before", "To be settled before the work begins");
    page.list(items);
    page.end_section();
}

void promises_part(PageWriter& page) {
    page.begin_section("promises", "What this work cannot promise");
    page.list(
        {"It deals with the gaps that were surveyed. One that nobody saw may still let animals in, and a width that was written "
         "down wrong "
         "makes the answer wrong.",
         "Doors and windows that stand open, and animals that are carried in with boxes, plants or firewood, are no gaps.",
         "Houses settle, sealant ages, somebody drills a hole, animals gnaw: new gaps come later.",
         "Animals that are inside already may show up for some weeks more.",
         "Other animals than those named here may be smaller, and get in where these do not."});
    std::vector<Message> uncovered = as_messages(page.facts.terms.exclusions);
    // What stays open has a section of its own.
    uncovered.erase(uncovered.begin(), uncovered.begin() + static_cast<std::ptrdiff_t>(page.facts.terms.stays_open));
    page.titled_list("Not in the price", uncovered);
    page.titled_list("To know besides", as_messages(page.facts.terms.notes));
    page.end_section();
}

void upkeep_part(PageWriter& page) {
    std::vector<std::vector<Message>> rows;
    for (const Life& life : lives_of(page.facts.plan))
        rows.push_back(row_of_life(
            page, message("{}, {}", {as_named(life.treatment->name), counted_message(life.closings, "1 closing", "{} closings")}),
            *life.treatment, page.facts.settings.planning.date));
    for (const ClosedGap& closed : page.job().closed) {
        const Treatment* treatment = shipped_treatments().find(closed.with);
        const std::optional<Date> since = closed.held_since();
        if (!closed.holds() || treatment == nullptr || !since) continue;
        rows.push_back(row_of_life(page,
                                   message("{}, at {} since {}", {as_named(treatment->name), page.survey()[closed.gap].called(),
                                                                  page.date_part(*since)}),
                                   *treatment, *since));
    }
    if (rows.empty()) return;
    page.begin_section("upkeep", "Upkeep: what to look at, and when");
    page.paragraph(message(
        "Days are counted from {}. How long a closing holds depends on sun, water and use; these are starting values of common "
        "practice. Look earlier when one of these animals shows up again.",
        {page.date_part(page.facts.settings.planning.date)}));
    page.table("How long closings are expected to hold", {"Closing", "Expected to hold", "Look again by"}, rows);
    page.end_section();
}

void warranty_part(PageWriter& page) {
    if (!page.facts.quote.feasible()) return;
    const Warranty& warranty = page.facts.terms.warranty;
    page.begin_section("warranty", "Warranty");
    if (warranty.months == 0) {
        page.paragraph("None.");
    } else {
        page.paragraph(message("{}.", {Message(warranty.covers)}));
        page.paragraph(message("{}.", {Message(warranty.callback)}));
        page.titled_list("It ends where", as_messages(warranty.void_if));
    }
    page.end_section();
}

void cautions_part(PageWriter& page) {
    const std::vector<Message> cautions = as_messages(page.facts.terms.cautions);
    if (cautions.empty()) return;
    page.begin_section("cautions", "Cautions for who lives here");
    page.list(cautions, "cautions");
    page.end_section();
}

void checks_part(PageWriter& page) {
    const std::vector<Message> checks = as_messages(last_checks(page.job()));
    if (checks.empty()) return;
    page.begin_section("checks", "To be checked by a licensed person when the work is done");
    page.list(checks, "cautions");
    page.end_section();
}

void sources_part(PageWriter& page) {
    page.begin_section("sources", "What this rests on");
    std::vector<std::pair<Message, Message>> rows;
    std::set<std::string> ids;
    const std::vector<Pest>& animals = page.facts.animals.empty() ? page.job().pests : page.facts.animals;
    for (const Pest& pest : animals) {
        rows.push_back({as_named(pest.name), sizes_text(pest)});
        for (const std::string& id : {pest.slit_source, pest.hole_source}) ids.insert(id);
    }
    std::vector<Message> documents;
    for (const CatalogSource& source : shipped_pests().sources) {
        if (ids.contains(source.id)) documents.emplace_back(cited(source));
    }
    if (!rows.empty()) {
        page.heading(3, "The sizes that animals get through");
        page.terms(rows, "brief");
    }
    page.titled_list("Where these sizes stand", documents);
    page.paragraph(page.facts.settings.planning.sizing == Sizing::with_plus_minus
                       ? "For the plan every gap counts as wide as its width and its plus-minus together. The ways in and the "
                         "rooms are told by the widths as stated."
                       : "Every gap counts as wide as stated; how far that may be off is not counted.");
    page.paragraph(
        "Reasons and cautions name their sources where they stand. \"From memory\" and \"second hand\" say that the document "
        "itself was not read.",
        "note");
    page.end_section();
}

}  // namespace seamward
