// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/price_ladder.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/report/made_page.h"

namespace seamward::test {
namespace {

/// With the gaps of a step shut, as a trace of its own finds it.
TEST(PriceSteps, KeepOutTheAnimalsThatTheyName) {
    for (const char* name : {"demo", "two-story", "brick-crawl"}) {
        const Job job = scenario(name);
        const ReportFacts facts = gather_facts(job, name, settings_for(job, Audience::homeowner), RunContext());
        const std::vector<PriceStep> steps = price_steps(facts);
        ASSERT_FALSE(steps.empty()) << name;
        for (std::size_t i = 0; i < steps.size(); ++i) {
            Survey survey = job.survey;
            for (const GapIndex gap : steps[i].gaps) close_gap(survey.gaps[gap.value], 0);
            for (const std::size_t animal : steps[i].kept_out) {
                TraceSettings settings;
                settings.pests = {facts.animals.at(animal)};
                settings.top = 1;
                EXPECT_TRUE(trace(survey, settings, RunContext()).paths.empty()) << name << ", step " << i + 1;
            }
            EXPECT_GE(steps[i].kept_out.size(), steps[i > 0 ? i - 1 : 0].kept_out.size());
        }
        // Where full closings cannot shut the widest way in, no price keeps any animal out.
        EXPECT_EQ(steps.back().kept_out.empty(),
                  facts.plan.ladder_stop && facts.plan.ladder_stop->width >= facts.animals.front().size.slit &&
                      std::all_of(facts.animals.begin(), facts.animals.end(),
                                  [&](const Pest& animal) { return animal.size.slit < steps.back().width; }))
            << name;
    }
}

TEST(PriceLadder, ChartAndTablesHaveAllSteps) {
    for (const Language language : {Language::english, Language::spanish}) {
        const Job job = scenario("demo");
        const MadePage made(job, settings_for(job, Audience::homeowner, language));
        const PageElement* figure = made.page.with_id("ladder");
        ASSERT_NE(figure, nullptr);
        const std::vector<PriceStep> steps = price_steps(made.facts);
        std::size_t dots = 0;
        for (const PageElement* circle : figure->named("circle")) dots += circle->attributes.contains("data-step") ? 1 : 0;
        EXPECT_EQ(dots, steps.size());
        std::vector<std::string> prices;
        for (const PageElement* head : figure->named("th")) prices.push_back(head->text());
        const PageWriter page(made.facts);
        for (const PriceStep& step : steps)
            EXPECT_NE(std::find(prices.begin(), prices.end(), page.say(page.money_part(step.cost))), prices.end())
                << step.cost.cents;
        for (const Pest& animal : made.facts.animals)
            EXPECT_NE(figure->text().find(page.say(as_named(animal.name))), std::string::npos) << animal.name;
    }
}

TEST(PriceLadder, IsLeftOutWhereThereIsNone) {
    const Job job = job_of_text(
        "seamward: 1\nspaces:\n  - {id: yard, kind: outdoors}\n  - {id: room, kind: living}\ngaps: []\npests: [house-mouse]\n");
    const MadePage made(job, settings_for(job, Audience::homeowner));
    EXPECT_EQ(made.page.with_id("ladder"), nullptr);
}

}  // namespace
}  // namespace seamward::test
