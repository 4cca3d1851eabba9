// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/quote.h"

#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "plan/quote_terms.h"
#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

using test::SurveyBuilder;

// ---------------------------------------------------------------- Options

Pest animal(const std::string& name, double millimeters) {
    Pest pest;
    pest.id = pest.name = name;
    pest.size = {millimeters * 1e-3, millimeters * 1e-3};
    return pest;
}

/// Slots of 1, 2, 3 ... mm straight into the kitchen, each with its price in dollars, and an animal half a millimeter smaller
/// than each.
Job side_by_side(const std::vector<int>& dollars) {
    SurveyBuilder build;
    build.outdoors("yard").living("kitchen");
    Job job;
    for (std::size_t i = 0; i < dollars.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        build.slot("slot-" + number, "yard", "kitchen", static_cast<double>(i + 1));
        build.last().closing.cost = Money{dollars[i] * 100};
        job.pests.push_back(animal("animal-" + number, static_cast<double>(i) + 0.5));
    }
    job.survey = build.survey();
    return job;
}

/// Nothing but the closings is charged.
QuoteSettings bare(const Job& job) {
    QuoteSettings settings;
    settings.against = job.pests;
    settings.prices.call_out = {};
    settings.prices.overhead = settings.prices.tax = 0;
    settings.date = *parse_date("2026-11-26").value;
    return settings;
}

std::vector<std::int64_t> totals(const Quote& quote) {
    std::vector<std::int64_t> all;
    for (const QuoteOption& option : quote.options) all.push_back(option.sum.total.cents / 100);
    return all;
}

TEST(Quote, OptionsKeepOutMoreAndMore) {
    const Job job = side_by_side({10, 20, 40});
    const Quote quote = make_quote(job, bare(job), RunContext());
    ASSERT_EQ(totals(quote), (std::vector<std::int64_t>{40, 60, 70}));
    EXPECT_EQ(quote.options[0].name.english(), "animal-3");
    EXPECT_EQ(quote.options[1].name.english(), "animal-3 and animal-2");
    EXPECT_EQ(quote.options[2].name.english(), "animal-3, animal-2 and animal-1");
    // With the widest slot shut the other two animals have the slot of 2 mm.
    ASSERT_EQ(quote.options[0].stays_open.size(), 2U);
    EXPECT_EQ(quote.animals[quote.options[0].stays_open[0].pest].name, "animal-2");
    EXPECT_NEAR(quote.options[0].stays_open[0].pinch, 2e-3, 1e-12);
    EXPECT_EQ(job.survey[quote.options[0].stays_open[0].pinch_gap].id, "slot-2");
    EXPECT_EQ(quote.options[1].stays_open.size(), 1U);
    EXPECT_TRUE(quote.options[2].stays_open.empty());
    EXPECT_EQ(date_text(quote.valid_until), "2026-12-26");
    EXPECT_EQ(quote.left_out, 0U);
}

TEST(Quote, AnimalsWithTheSamePlanAreOneOption) {
    Job job = side_by_side({10, 20});
    job.pests.push_back(animal("other", 1.2));  // 2 mm lets it in, 1 mm does not
    const Quote quote = make_quote(job, bare(job), RunContext());
    ASSERT_EQ(totals(quote), (std::vector<std::int64_t>{20, 30}));
    EXPECT_EQ(quote.options[0].name.english(), "animal-2 and other");
}

// Prices rise by 1, 2, 30, 4, 50, 6, 7 from the largest animal on: the steps of 30 and 50 are the largest in the middle.
TEST(Quote, OfManyOptionsTheLargestStepsStay) {
    const Job job = side_by_side({7, 6, 50, 4, 30, 2, 1});
    const Quote quote = make_quote(job, bare(job), RunContext());
    EXPECT_EQ(totals(quote), (std::vector<std::int64_t>{1, 33, 87, 100}));
    EXPECT_EQ(quote.left_out, 3U);
}

TEST(Quote, WhatElseCanBeClosedIsOneMore) {
    Job job = side_by_side({10, 20, 40});
    job.pests = {job.pests[2]};
    const Quote quote = make_quote(job, bare(job), RunContext());
    ASSERT_EQ(totals(quote), (std::vector<std::int64_t>{40, 70}));
    EXPECT_TRUE(quote.options[1].everything);
    EXPECT_NEAR(quote.options[1].nothing_from, 1e-3, 1e-12);
    EXPECT_EQ(quote.options[1].against, std::vector<std::size_t>{0});
}

// The small one gets in where nobody may close; the large one does not.
TEST(Quote, WhoCannotBeKeptOutIsNamedWithoutAPrice) {
    Job job = side_by_side({10, 20, 40});
    job.survey.gaps[1].closing.never = "the wall drains there";
    const Quote quote = make_quote(job, bare(job), RunContext());
    ASSERT_EQ(quote.options.size(), 2U);
    EXPECT_TRUE(quote.feasible());
    EXPECT_EQ(quote.options[0].sum.total, Money{40'00});
    EXPECT_FALSE(quote.options[1].plan.feasible);
    EXPECT_EQ(quote.options[1].name.english(), "animal-2 and animal-1");
    ASSERT_EQ(quote.options[1].plan.open_way_reasons.size(), 1U);
    EXPECT_EQ(quote.options[1].plan.open_way_reasons[0].english(), "the wall drains there");
    EXPECT_EQ(quote.options[1].sum.total, Money{});
    job.pests.pop_back();
    EXPECT_FALSE(make_quote(job, bare(job), RunContext()).feasible());
}

// The round one, 2 mm thick, gets in by a hole of 5 mm that nobody may close; the flat one, 1 mm thick and 9 mm wide, does not.
TEST(Quote, WhoCannotBeKeptOutDoesNotSpoilTheRest) {
    Job job = side_by_side({10, 20});
    job.survey.gaps[0].shape = Hole{5e-3};
    job.survey.gaps[0].closing.never = "the wall drains there";
    job.pests = {animal("round", 2), animal("flat", 1)};
    job.pests[1].size.hole = 9e-3;
    const Quote quote = make_quote(job, bare(job), RunContext());
    ASSERT_EQ(quote.options.size(), 2U);
    EXPECT_EQ(quote.options[0].name.english(), "flat");
    EXPECT_EQ(quote.options[0].sum.total, Money{20'00});
    EXPECT_EQ(quote.options[1].name.english(), "round");
    EXPECT_FALSE(quote.options[1].plan.feasible);
}

// Only the animals asked for are planned against; what is left open is told for all of the job.
TEST(Quote, TellsWhatStaysOpenToTheOthers) {
    const Job job = side_by_side({10, 20, 40});
    QuoteSettings settings = bare(job);
    settings.against = {job.pests[1]};
    const Quote quote = make_quote(job, settings, RunContext());
    EXPECT_EQ(quote.options[0].name.english(), "animal-2");
    ASSERT_EQ(quote.options[0].stays_open.size(), 1U);
    EXPECT_EQ(quote.animals[quote.options[0].stays_open[0].pest].name, "animal-1");
}

// ---------------------------------------------------------------- Terms

bool any_has(const std::vector<Message>& texts, const std::string& part) {
    return std::any_of(texts.begin(), texts.end(),
                       [&](const Message& text) { return text.english().find(part) != std::string::npos; });
}

/// Cracks in stucco and in a block wall's joint, both closed with what the table has; a weep that stays.
Job stucco_job() {
    SurveyBuilder build;
    build.outdoors("yard").space("block-cells", SpaceKind::harborage, true).cavity("wall").living("kitchen");
    build.slot("crack", "yard", "kitchen", 4).slot("joint", "block-cells", "kitchen", 4).slot("weep", "yard", "wall", 5);
    build.last().duty = Duty::weep;
    Job job;
    job.survey = build.survey();
    job.survey.gaps[0].evidence.how = job.survey.gaps[1].evidence.how = Evidence::How::assumed;
    job.pests = {animal("beetle", 1)};
    return job;
}

TEST(QuoteTerms, FollowFromTheClosings) {
    Job job = stucco_job();
    const QuoteSettings settings = bare(job);
    const Quote quote = make_quote(job, settings, RunContext());
    const QuoteTerms terms = terms_of(job, settings, quote);
    ASSERT_EQ(quote.options.front().plan.steps.size(), 2U);
    EXPECT_TRUE(any_has(terms.exclusions, "Stays open: weep: "));
    EXPECT_TRUE(any_has(terms.exclusions, "option 1: 2 of 2 gaps"));
    job.survey.gaps[0].evidence.how = Evidence::How::unstated;
    const Quote unstated = make_quote(job, settings, RunContext());
    EXPECT_EQ(unstated.options.front().guessed, 1U);
    EXPECT_EQ(unstated.options.front().unmeasured, 2U) << "what nobody stated is not measured either";
    EXPECT_TRUE(any_has(terms.approvals, "sealant bead (smooth; paintable unless it is silicone, to choose from white"));
    EXPECT_TRUE(any_has(terms.approvals, "The neighbor, before anybody works at what may be shared: joint"));
    EXPECT_FALSE(any_has(terms.approvals, "association"));
    EXPECT_FALSE(any_has(terms.approvals, "tenant"));
    EXPECT_EQ(terms.warranty.months, 12U);
    EXPECT_TRUE(any_has(terms.warranty.void_if, "sealant bead"));
    job.site.association = true;
    job.site.occupancy = Site::Occupancy::tenant;
    const QuoteTerms let = terms_of(job, settings, make_quote(job, settings, RunContext()));
    EXPECT_TRUE(any_has(let.approvals, "association"));
    EXPECT_TRUE(any_has(let.approvals, "tenant"));
}

TEST(QuoteTerms, APriceBookOfOnesOwnWithInventedPricesLeftIsTold) {
    const Job job = stucco_job();
    QuoteSettings settings = bare(job);
    const Quote quote = make_quote(job, settings, RunContext());
    EXPECT_TRUE(terms_of(job, settings, quote).warning.english().starts_with("All prices here are invented"));
    settings.invented = false;  // visits, overhead and tax are 0 here, and in the shipped book they are not
    EXPECT_NE(terms_of(job, settings, quote).warning.english().find("program: an hour of labor; polyurethane sealant."),
              std::string::npos);
    settings.prices.labor_per_hour = {70'00};
    EXPECT_NE(terms_of(job, settings, quote).warning.english().find("program: polyurethane sealant."), std::string::npos);
    for (Material& material : settings.prices.materials) material.price = material.price + Money{1};
    EXPECT_EQ(terms_of(job, settings, quote).warning.english(), "");
}

// Season in Arizona: young bats from May to September (table of removals); seven quiet nights from October 1 on end on October 8.
TEST(QuoteTerms, AnimalsInsideAreTold) {
    SurveyBuilder build;
    build.outdoors("yard").cavity("attic").living("kitchen");
    build.slot("eave", "yard", "attic", 20).slot("light", "attic", "kitchen", 20);
    Job job;
    job.survey = build.survey();
    job.survey.gaps[0].closing.cost = Money{20'00};
    job.survey.gaps[1].closing.cost = Money{500'00};
    job.site.state = "AZ";
    job.pests = {*shipped_pests().find("bat")};
    for (const char* id : {"bat", "honey-bee"}) {
        Occupant occupant;
        occupant.space = {1};
        occupant.animal = *shipped_pests().find(id);
        job.occupied.push_back(occupant);
    }
    QuoteSettings settings = bare(job);
    settings.date = *parse_date("2026-06-10").value;
    const Quote quote = make_quote(job, settings, RunContext());
    ASSERT_EQ(quote.options.size(), 1U);
    EXPECT_EQ(quote.options[0].sum.visits, 2U) << "nothing can be done before the season is over";
    const QuoteTerms terms = terms_of(job, settings, quote);
    EXPECT_TRUE(any_has(terms.notes, "not before 2026-10-01: bats rear young"));
    EXPECT_TRUE(any_has(terms.notes, "the last closings follow on 2026-10-08 at the earliest (option 1)"));
    EXPECT_TRUE(any_has(terms.exclusions, "Honey bee, in attic: Somebody licensed takes the colony"));
    EXPECT_TRUE(any_has(terms.cautions, "any bite is a case for a doctor"));
    EXPECT_FALSE(any_has(terms.exclusions, "traps"));
    EXPECT_TRUE(who_stays_inside(job, quote.options[0].plan).empty()) << "the bat is let out, and the bees are taken away";
    job.occupied[0].left = settings.date;
    EXPECT_FALSE(any_has(terms_of(job, settings, make_quote(job, settings, RunContext())).notes, "Bat"));
}

TEST(QuoteTerms, WithoutAPlanNothingIsPromised) {
    Job job = side_by_side({10});
    job.survey.gaps[0].closing.never = "the wall drains there";
    const QuoteTerms terms = terms_of(job, bare(job), make_quote(job, bare(job), RunContext()));
    ASSERT_EQ(terms.exclusions.size(), 1U);
    EXPECT_EQ(terms.exclusions[0].english(), "Stays open: slot-1: the wall drains there (the survey)");
    EXPECT_EQ(terms.warranty.months, 0U);
}

// The cheap closing is between the attic and the rooms: the bat keeps its way out.
TEST(QuoteTerms, WhoStaysInsideIsTold) {
    SurveyBuilder build;
    build.outdoors("yard").cavity("attic").living("kitchen");
    build.slot("eave", "yard", "attic", 20).slot("light", "attic", "kitchen", 20);
    Job job;
    job.survey = build.survey();
    job.survey.gaps[0].closing.cost = Money{500'00};
    job.survey.gaps[1].closing.cost = Money{20'00};
    job.pests = {*shipped_pests().find("bat")};
    for (const char* id : {"bat", "bark-scorpion"}) job.occupied.push_back({{1}, *shipped_pests().find(id), "", {}, {}});
    const Quote quote = make_quote(job, bare(job), RunContext());
    const std::vector<Message> told = who_stays_inside(job, quote.options.at(0).plan);
    ASSERT_EQ(told.size(), 1U) << "scorpions are shut in or out as it comes";
    EXPECT_EQ(told[0].english(), "Bat stays in attic: getting it out and closing its way is not in this option");
    EXPECT_FALSE(any_has(terms_of(job, bare(job), quote).notes, "Bat"));
}

// What hurts those who work there stands in the plan; who lives there has to know when to come back to fresh foam.
TEST(QuoteTerms, CautionsAreForTheCustomer) {
    Job job = side_by_side({10});
    job.pests = {animal("beetle", 0.5)};
    job.survey.gaps[0].closing = {};
    job.survey.gaps[0].shape = Slot{20e-3, 1};
    const Quote quote = make_quote(job, bare(job), RunContext());
    ASSERT_EQ(quote.options.at(0).plan.steps.size(), 1U);
    Quote foamed = quote;
    foamed.options[0].plan.steps[0].option.treatment = "foam";
    const std::vector<Message> cautions = terms_of(job, bare(job), foamed).cautions;
    ASSERT_EQ(cautions.size(), 1U);
    EXPECT_TRUE(any_has(cautions, "comes back for 8 to 24 hours"));
    foamed.options[0].plan.steps[0].option.treatment = "mortar";
    EXPECT_TRUE(terms_of(job, bare(job), foamed).cautions.empty());
}

TEST(QuoteTerms, WorkUnderWarrantyIsToldAsFree) {
    Job job = side_by_side({10, 20});
    job.closed.push_back({{1}, "", job.survey.gaps[1].shape, parse_date("2026-03-01").value, std::nullopt, 0});
    job.closed[0].callback = Callback{*parse_date("2026-05-01").value, "it tore", std::nullopt};
    const Quote quote = make_quote(job, bare(job), RunContext());
    EXPECT_EQ(quote.options.back().sum.total, Money{10'00});
    EXPECT_TRUE(any_has(terms_of(job, bare(job), quote).notes, "The visit for the work under warranty is free."));
    job.closed.clear();
    const Quote charged = make_quote(job, bare(job), RunContext());
    EXPECT_FALSE(any_has(terms_of(job, bare(job), charged).notes, "warranty is free"));
}

}  // namespace
}  // namespace seamward
