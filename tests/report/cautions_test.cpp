// SPDX-License-Identifier: GPL-3.0-or-later
// Every caution of the tables stands on the pages of a job whose plan does what it warns of. The tables are read here as they
// are; nothing of what puts cautions to steps is asked.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "catalog/shipped.h"
#include "tests/report/made_page.h"

namespace seamward::test {
namespace {

constexpr std::array pages{Audience::homeowner, Audience::crew, Audience::builder, Audience::diy};

/// Rooms, an attic, a crawl space, a garage, and an animal that gets through everything.
std::string job_text(const std::string& gaps, const std::string& more = "") {
    return R"(
seamward: 1
job: {name: "Larkspur Court 4"}
spaces:
  - {id: yard, kind: outdoors}
  - {id: garage, kind: attached}
  - {id: kitchen, kind: living}
  - {id: attic, kind: cavity}
  - {id: far-attic, kind: cavity}
  - {id: crawl, kind: cavity}
gaps:
  - {id: eave, between: [yard, attic], hole: {diameter: 40 mm}, closing: {never: "the attic breathes through it"}}
  - {id: low-vent, between: [yard, crawl], hole: {diameter: 40 mm}, at: [0 m, 0 m, 0 m], closing: {never: "the ground dries through it"}}
  - {id: hatch, between: [far-attic, kitchen], hole: {diameter: 40 mm}, closing: {never: "it stays as it is"}}
)" + gaps + "pests: [{id: mite, slit: 0.2 mm, hole: 0.2 mm}]\n" +
           more;
}

std::string said(const std::string& text, Language language) {
    if (language == Language::english) return text;
    const auto row = spanish_texts().find(text);
    return row == spanish_texts().end() ? "no Spanish for: " + text : row->second;
}

/// The entry of a gap's closing on a page; null where it has none.
const PageElement* entry_of(const MadePage& made, GapIndex gap) {
    const auto found = made.page.all(
        [&](const PageElement& one) { return one.name == "li" && one.attribute("data-gap") == std::to_string(gap.value); });
    return found.size() == 1 ? found.front() : nullptr;
}

/// On every page in both languages: what `wanted` says of a gap stands at its closing, marked as a caution.
void expect_cautions(const Job& job, const std::map<std::string, std::vector<std::string>>& wanted) {
    for (const Audience audience : pages) {
        for (const Language language : {Language::english, Language::spanish}) {
            SCOPED_TRACE(std::string(audience_id(audience)) + ' ' + language_code(language));
            const MadePage made(job, settings_for(job, audience, language));
            ASSERT_TRUE(made.facts.plan.feasible);
            for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) {
                const auto cautions = wanted.find(job.survey.gaps[i].id);
                if (cautions == wanted.end()) continue;
                const PageElement* entry = entry_of(made, {i});
                ASSERT_NE(entry, nullptr) << cautions->first << " has no closing";
                std::string told;
                for (const PageElement* list : entry->named("ul"))
                    if (list->attribute("class") == "cautions") told += list->text() + '\n';
                for (const std::string& text : cautions->second)
                    EXPECT_NE(told.find(said(text, language)), std::string::npos)
                        << cautions->first << ": " << text << "\nis not in\n"
                        << told;
            }
        }
    }
}

/// Full closings: the job says with what each gap is closed.
TEST(CautionsOnPages, OfEveryTreatmentThatCloses) {
    std::string gaps;
    std::map<std::string, std::vector<std::string>> wanted;
    for (const Treatment& row : shipped_treatments().rows) {
        if (row.leaves != Treatment::Leaves::nothing) continue;
        gaps += "  - {id: with-" + row.id +
                ", between: [yard, kitchen], slot: {width: 2 mm, length: 1 m}, closing: {cost: $10.00, with: " + row.id + "}}\n";
        for (const Caution& caution : row.cautions) wanted["with-" + row.id].push_back(caution.text);
    }
    ASSERT_GE(wanted.size(), 10U);
    const Job job = job_of_text(job_text(gaps));
    expect_cautions(job, wanted);
    const MadePage made(job, settings_for(job, Audience::crew));
    std::set<std::string> used;
    for (const PlanStep& step : made.facts.plan.steps) used.insert(step.option.treatment);
    for (const Treatment& row : shipped_treatments().rows)
        EXPECT_EQ(used.contains(row.id), row.leaves == Treatment::Leaves::nothing) << row.id;
}

/// Meshes that air still gets through: the step of an opening that a plan screens, given each mesh in turn that fits it.
TEST(CautionsOnPages, OfEveryMesh) {
    const Job job = job_of_text(R"(
seamward: 1
spaces: [{id: yard, kind: outdoors}, {id: kitchen, kind: living}]
gaps:
  - {id: vent, between: [yard, kitchen], mesh: {opening: 12 mm, area: 400 cm2}, duty: vent}
  - {id: grate, between: [yard, kitchen], mesh: {opening: 12 mm, area: 400 cm2}}
  - {id: weep, between: [yard, kitchen], slot: {width: 10 mm, length: 60 mm}, duty: weep, substrates: [brick]}
pests: [house-mouse]
)");
    std::set<std::string> seen;
    MadePage made(job, settings_for(job, Audience::crew));
    ASSERT_EQ(made.facts.plan.steps.size(), 3U);
    for (const PlanStep& step : std::vector<PlanStep>(made.facts.plan.steps)) {
        for (const Option& option : options_for(job.survey[step.gap], job.survey, shipped_prices()).options) {
            const Treatment& row = *shipped_treatments().find(option.treatment);
            if (row.leaves == Treatment::Leaves::mesh) seen.insert(row.id);
            const auto at = std::find_if(made.facts.plan.steps.begin(), made.facts.plan.steps.end(),
                                         [&](const PlanStep& one) { return one.gap == step.gap; });
            at->option = option;
            for (const Audience audience : pages) {
                made.facts.settings.audience = audience;
                const PageElement page = read_page(report_page(made.facts));
                const std::string id = "closing-" + std::to_string(at - made.facts.plan.steps.begin() + 1);
                ASSERT_NE(page.with_id(id), nullptr);
                for (const Caution& caution : row.cautions)
                    EXPECT_NE(page.with_id(id)->text().find(caution.text), std::string::npos) << row.id << ": " << caution.text;
            }
        }
    }
    for (const Treatment& row : shipped_treatments().rows) {
        // One row is a word for job files alone: it has no opening of its own.
        if (row.leaves == Treatment::Leaves::mesh && row.opening > 0) {
            EXPECT_TRUE(seen.contains(row.id)) << row.id;
        }
    }
}

/// At its closing, or, of a feature that must stay open, under its detail on the builder's page.
TEST(CautionsOnPages, OfEveryFeature) {
    std::string closed, open;
    std::map<std::string, std::vector<std::string>> wanted;
    std::vector<std::string> of_open;
    for (const Feature& row : shipped_features().rows) {
        const std::string gap = "  - {id: at-" + row.id + ", type: " + row.id +
                                ", between: [yard, kitchen], slot: {width: 2 mm, length: 1 m}, closing: {cost: $10.00}}\n";
        const Survey alone = job_of_text(job_text(gap)).survey;
        const bool may_close = !options_for(alone.gaps.back(), alone, shipped_prices()).options.empty();
        (may_close ? closed : open) += gap;
        if (row.caution.text.empty()) continue;
        if (may_close)
            wanted["at-" + row.id] = {row.caution.text};
        else
            of_open.push_back(row.caution.text);
    }
    ASSERT_GT(wanted.size(), 10U);
    expect_cautions(job_of_text(job_text(closed)), wanted);
    if (of_open.empty()) return;
    const Job job = job_of_text(job_text(open));
    for (const Language language : {Language::english, Language::spanish}) {
        const std::string text = MadePage(job, settings_for(job, Audience::builder, language)).page.text();
        for (const std::string& caution : of_open) EXPECT_NE(text.find(said(caution, language)), std::string::npos) << caution;
    }
}

/// Of places: by height, by the space, by the roof, and by what a name tells of a gap without a type.
TEST(CautionsOnPages, OfEveryPlace) {
    using When = SiteCaution::When;
    const std::vector<std::pair<const char*, When>> roofs{{"tile", When::tile_roof},
                                                          {"shingle", When::shingle_roof},
                                                          {"metal", When::metal_roof},
                                                          {"membrane", When::membrane_roof},
                                                          {"foam", When::foam_roof}};
    const auto text_of = [](When when) { return site_caution(shipped_site_cautions(), when).text; };
    std::string gaps =
        "  - {id: gable, between: [yard, kitchen], hole: {diameter: 9 mm}, at: [1 m, 1 m, 3 m], closing: {cost: $9.00}}\n"
        "  - {id: high-gable, between: [yard, kitchen], hole: {diameter: 9 mm}, at: [1 m, 1 m, 5 m], closing: {cost: $9.00}}\n"
        "  - {id: beam, between: [attic, far-attic], hole: {diameter: 9 mm}, closing: {cost: $9.00}}\n"
        "  - {id: pier, between: [crawl, far-attic], hole: {diameter: 9 mm}, closing: {cost: $9.00}}\n"
        "  - {id: ridge, between: [yard, kitchen], hole: {diameter: 9 mm}, type: roof-to-wall-joint, closing: {cost: $9.00}}\n";
    std::map<std::string, std::vector<std::string>> wanted{{"gable", {text_of(When::ladder)}},
                                                           {"high-gable", {text_of(When::ladder), text_of(When::high_ladder)}},
                                                           {"beam", {text_of(When::attic)}},
                                                           {"pier", {text_of(When::crawl_space)}}};
    for (const SiteCaution& row : shipped_site_cautions().rows) {
        for (const std::string& word : row.words) {
            gaps += "  - {id: hole-" + row.id + '-' + word + ", name: \"old " + word +
                    " hole\", between: [yard, kitchen], hole: {diameter: 9 mm}, closing: {cost: $9.00}}\n";
            wanted["hole-" + row.id + '-' + word] = {row.text};
        }
    }
    for (const auto& [word, when] : roofs) {
        wanted["ridge"] = {text_of(When::roof), text_of(when)};
        expect_cautions(job_of_text(job_text(gaps, std::string("site: {roof: ") + word + "}\n")), wanted);
    }
}

/// What is settled once for a house: old paint and old plaster, droppings of who lives there.
TEST(CautionsOnPages, OfTheHouse) {
    // Such that an owner can do something too.
    const std::string gap =
        "  - {id: crack, between: [yard, kitchen], slot: {width: 3 mm, length: 0.5 m}, substrates: [stucco], at: [1 m, 1 m, 1 "
        "m]}\n";
    const Job job = job_of_text(job_text(gap, "site: {built: 1950}\noccupied: [{space: attic, animal: roof-rat}]\n"));
    for (const Audience audience : pages) {
        for (const Language language : {Language::english, Language::spanish}) {
            const MadePage made(job, settings_for(job, audience, language));
            const std::string text = made.page.text();
            for (const SiteCaution& row : shipped_site_cautions().rows) {
                if (row.when != SiteCaution::When::built_before && row.when != SiteCaution::When::droppings) continue;
                EXPECT_NE(text.find(said(row.text, language)), std::string::npos) << audience_id(audience) << ": " << row.text;
            }
        }
    }
}

}  // namespace
}  // namespace seamward::test
