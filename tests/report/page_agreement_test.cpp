// SPDX-License-Identifier: GPL-3.0-or-later
// What pages say is what the plan and the quote are, as a reader finds it that shares no code with what wrote it.
#include <gtest/gtest.h>

#include <cstdio>
#include <set>
#include <sstream>

#include "catalog/shipped.h"
#include "tests/report/made_page.h"

namespace seamward::test {
namespace {

/// $1,234.50, worked out anew.
std::string dollars(Money money) {
    char digits[32];
    std::snprintf(digits, sizeof digits, "%lld.%02lld", static_cast<long long>(money.cents / 100),
                  static_cast<long long>(money.cents % 100));
    std::string text = digits;
    for (std::size_t at = text.size() - 3; at > 3; at -= 3) text.insert(at - 3, ",");
    return '$' + text;
}

/// Millimeters of a text such as "Now 7/32 in (5.6 mm). ...": the first number before " mm".
double first_millimeters(const std::string& text) {
    const std::size_t end = text.find(" mm");
    if (end == std::string::npos) return -1;
    std::size_t begin = end;
    while (begin > 0 && (std::isdigit(static_cast<unsigned char>(text[begin - 1])) != 0 || text[begin - 1] == '.')) --begin;
    return std::stod(text.substr(begin, end - begin));
}

std::string term(const PageElement& element, const std::string& name) {
    for (const auto& [key, text] : element.terms()) {
        if (key == name) return text;
    }
    return "";
}

/// Steps stand in the order of the plan, each with its gap, treatment, width and price.
void expect_step(const PageElement& item, const MadePage& made, std::size_t i, bool priced) {
    const PlanStep& step = made.facts.plan.steps[i];
    const Gap& gap = made.job.survey[step.gap];
    EXPECT_EQ(item.attribute("id"), "closing-" + std::to_string(i + 1));
    EXPECT_EQ(item.attribute("value"), std::to_string(i + 1));
    EXPECT_EQ(item.attribute("data-gap"), std::to_string(step.gap.value));
    EXPECT_TRUE(item.named("h3").front()->text().starts_with(gap.label())) << item.named("h3").front()->text();
    const Treatment* treatment = shipped_treatments().find(step.option.treatment);
    if (treatment != nullptr) {
        EXPECT_EQ(term(item, "With"), treatment->name);
    }
    const std::string width = term(item, "Width");
    EXPECT_NEAR(first_millimeters(width), clear_width(gap.shape) * 1e3, 0.0051) << width;
    EXPECT_EQ(width.find("shut") != std::string::npos, step.option.opening == 0) << width;
    if (priced) {
        EXPECT_TRUE(term(item, "Price").starts_with(dollars(step.option.cost))) << term(item, "Price");
    }
    std::vector<std::string> cautions;
    for (const PageElement* list : item.named("ul")) {
        if (list->attribute("class") != "cautions") continue;
        for (const PageElement& one : list->children) cautions.push_back(one.text());
    }
    std::vector<std::string> wanted;
    for (const Message& caution : step.cautions()) wanted.push_back("Caution: " + caution.english());
    EXPECT_EQ(cautions, wanted);
}

class ScenarioPage : public testing::TestWithParam<std::string> {};

TEST_P(ScenarioPage, TellsTheHomeownerThePlan) {
    const Job job = scenario(GetParam());
    const MadePage made(job, settings_for(job, Audience::homeowner));
    const PageElement* list = made.page.with_id("closings");
    ASSERT_NE(list, nullptr);
    ASSERT_EQ(list->children.size(), made.facts.plan.steps.size());
    for (std::size_t i = 0; i < list->children.size(); ++i) expect_step(list->children[i], made, i, true);
}

TEST_P(ScenarioPage, TellsTheHomeownerEveryWayIn) {
    const Job job = scenario(GetParam());
    const MadePage made(job, settings_for(job, Audience::homeowner));
    for (std::size_t i = 0; i < made.facts.ways.size(); ++i) {
        const PageElement* item = made.page.with_id("way-" + std::to_string(i + 1));
        ASSERT_NE(item, nullptr) << i;
        const std::string text = item->text();
        EXPECT_NEAR(first_millimeters(text), made.facts.ways[i].ranked.pinch * 1e3, 0.0051) << text;
        for (const GapIndex gap : made.facts.ways[i].ranked.path.gaps)
            EXPECT_NE(text.find(job.survey[gap].label()), std::string::npos) << text << " lacks " << job.survey[gap].label();
        for (const std::size_t animal : made.facts.ways[i].open_to)
            EXPECT_NE(text.find(made.facts.animals[animal].name), std::string::npos) << text;
    }
}

TEST_P(ScenarioPage, TellsTheHomeownerTheQuote) {
    const Job job = scenario(GetParam());
    const MadePage made(job, settings_for(job, Audience::homeowner));
    std::size_t number = 0;
    const std::string order = made.page.with_id("approval") != nullptr ? made.page.with_id("approval")->text() : "";
    for (const QuoteOption& option : made.facts.quote.options) {
        if (!option.plan.feasible) continue;
        const PageElement* card = made.page.with_id("option-" + std::to_string(++number));
        ASSERT_NE(card, nullptr);
        const std::string text = card->text();
        EXPECT_NE(text.find(dollars(option.sum.total)), std::string::npos) << text;
        EXPECT_NE(order.find(dollars(option.sum.total)), std::string::npos) << order;
        for (const std::size_t animal : option.against)
            EXPECT_NE(term(*card, "Keeps out").find(made.facts.quote.animals[animal].name), std::string::npos) << text;
        for (const OpenWay& way : option.stays_open)
            EXPECT_NE(text.find(made.facts.quote.animals[way.pest].name), std::string::npos) << text;
    }
    EXPECT_GT(number, 0U);
    const std::string prices = made.page.with_id("prices")->text();
    for (const QuoteOption& option : made.facts.quote.options) {
        for (const ChargeLine& line : option.sum.lines) {
            if (option.plan.feasible && line.amount.cents >= 0) {
                EXPECT_NE(prices.find(dollars(line.amount)), std::string::npos);
            }
        }
    }
}

TEST_P(ScenarioPage, SaysWhatStaysOpenAndWhy) {
    const Job job = scenario(GetParam());
    const MadePage made(job, settings_for(job, Audience::homeowner));
    const PageElement* section = made.page.with_id("stays-open");
    std::set<std::string> whys;
    for (const RefusedGap& refused : made.facts.plan.refused) {
        if (!refused.refusal.treatment.empty()) continue;
        ASSERT_NE(section, nullptr);
        const std::string text = section->text();
        EXPECT_NE(text.find(job.survey[refused.gap].label()), std::string::npos) << job.survey[refused.gap].label();
        EXPECT_NE(text.find(refused.refusal.why.english()), std::string::npos);
        EXPECT_NE(text.find(refused.refusal.source.english()), std::string::npos);
        whys.insert(refused.refusal.why.english() + '|' + refused.refusal.source.english());
    }
    if (section != nullptr) {
        const auto groups = section->all([](const PageElement& one) { return one.attribute("class") == "open-groups"; });
        EXPECT_EQ(groups.empty() ? 0U : groups.front()->children.size(), whys.size());
    }
}

TEST_P(ScenarioPage, TellsTheOwnerHisStepsAndWhatToHire) {
    const Job job = scenario(GetParam());
    const MadePage made(job, settings_for(job, Audience::diy));
    std::size_t seen = 0;
    for (std::size_t i = 0; i < made.facts.plan.steps.size(); ++i) {
        const PageElement* item = made.page.with_id("closing-" + std::to_string(i + 1));
        ASSERT_NE(item, nullptr) << i + 1;
        const bool owner = made.facts.plan.steps[i].owner;
        expect_step(*item, made, i, !owner);
        EXPECT_EQ(term(*item, "Why not you").empty(), owner) << item->text();
        if (owner) {
            const std::string text = item->text();
            for (const Message& step : made.facts.plan.steps[i].option.steps)
                EXPECT_NE(text.find(step.english()), std::string::npos) << step.english();
        }
        ++seen;
    }
    EXPECT_EQ(seen, made.facts.plan.steps.size());
    for (const Message& check : made.facts.plan.last_checks) EXPECT_NE(made.page.text().find(check.english()), std::string::npos);
}

/// Every page: one id once, every link of the page has its target, headings go down one by one, images have a text.
TEST_P(ScenarioPage, IsWellMadeForAllReaders) {
    const Job job = scenario(GetParam());
    for (const Audience audience : {Audience::homeowner, Audience::crew, Audience::builder, Audience::diy, Audience::survey}) {
        for (const Language language : {Language::english, Language::spanish}) {
            const MadePage made(job, settings_for(job, audience, language));
            SCOPED_TRACE(std::string(audience_id(audience)) + ' ' + language_code(language));
            EXPECT_EQ(made.page.attribute("lang"), language_code(language));
            std::set<std::string> ids;
            for (const PageElement* one : made.page.all([](const PageElement& e) { return e.attributes.contains("id"); }))
                EXPECT_TRUE(ids.insert(one->attribute("id")).second) << one->attribute("id");
            for (const PageElement* one :
                 made.page.all([](const PageElement& e) { return e.attribute("href").starts_with("#"); }))
                EXPECT_TRUE(ids.contains(one->attribute("href").substr(1))) << one->attribute("href");
            for (const char* reference : {"aria-labelledby", "aria-describedby", "for"}) {
                for (const PageElement* one :
                     made.page.all([&](const PageElement& e) { return e.attributes.contains(reference); })) {
                    std::istringstream words(one->attribute(reference));
                    for (std::string id; words >> id;) EXPECT_TRUE(ids.contains(id)) << reference << ' ' << id;
                }
            }
            EXPECT_EQ(made.page.named("h1").size(), 1U);
            EXPECT_EQ(made.page.named("main").size(), 1U);
            int level = 0;
            for (const PageElement* one : made.page.all([](const PageElement& e) {
                     return e.name.size() == 2 && e.name[0] == 'h' && e.name[1] >= '1' && e.name[1] <= '6';
                 })) {
                EXPECT_LE(one->name[1] - '0', level + 1) << one->text();
                level = one->name[1] - '0';
            }
            EXPECT_TRUE(made.page.all([](const PageElement& e) { return e.attributes.contains("style"); }).empty());
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Scenarios, ScenarioPage, testing::ValuesIn(scenarios()), [](const auto& one) {
    std::string name = one.param;
    std::erase(name, '-');
    return name;
});

}  // namespace
}  // namespace seamward::test
