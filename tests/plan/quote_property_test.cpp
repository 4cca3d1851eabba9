// SPDX-License-Identifier: GPL-3.0-or-later
// What holds for every quote: its lines add up, more kept out never costs less, and what it says of open ways is so.
#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <set>

#include "catalog/passage.h"
#include "catalog/shipped.h"
#include "plan/quote.h"
#include "tests/support/random_survey.h"

namespace seamward {
namespace {

/// A job of a few gaps, most of them closed with what the table of treatments has, with animals about and perhaps inside.
Job random_job(std::uint64_t seed) {
    std::mt19937_64 random(seed);
    Job job;
    job.survey =
        test::random_survey({.spaces = 6, .gaps = 12, .distinct_widths = 20, .source_share = 0.1, .shapes = true}, random());
    for (Gap& gap : job.survey.gaps) {
        if (random() % 3 == 0) gap.closing.cost = Money{static_cast<std::int64_t>(random() % 5000)};
        if (random() % 12 == 0) gap.closing.never = "it drains";
        if (random() % 4 == 0) gap.evidence.how = Evidence::How::assumed;
    }
    for (std::uint64_t i = 1 + random() % 7; i > 0; --i) {
        Pest pest;
        pest.id = pest.name = "animal-" + std::to_string(i);
        pest.size.slit = 1e-3 * static_cast<double>(1 + random() % 20);
        pest.size.hole = pest.size.slit + 1e-3 * static_cast<double>(random() % 6);
        pest.gnaws = random() % 3 == 0;
        job.pests.push_back(pest);
    }
    for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) {
        if (random() % 8 != 0) continue;
        job.closed.push_back({{i}, "", job.survey.gaps[i].shape, parse_date("2026-03-01").value, std::nullopt, 0});
        job.closed.back().callback = Callback{*parse_date("2026-05-01").value, "it tore", std::nullopt};
    }
    for (const char* id : {"bat", "house-mouse", "tree-squirrel"}) {
        if (random() % 3 != 0) continue;
        Occupant occupant;
        occupant.space = {static_cast<std::uint32_t>(random() % job.survey.spaces.size())};
        occupant.animal = *shipped_pests().find(id);
        job.occupied.push_back(occupant);
    }
    return job;
}

PriceBook random_book(std::uint64_t seed) {
    std::mt19937_64 random(seed);
    PriceBook book = shipped_prices();
    book.labor_per_hour = {static_cast<std::int64_t>(random() % 15'000)};
    book.call_out = {static_cast<std::int64_t>(random() % 20'000)};
    for (double* share : {&book.overhead, &book.tax, &book.deposit}) *share = static_cast<double>(random() % 4000) / 1e4;
    for (Material& material : book.materials) {
        material.price = {static_cast<std::int64_t>(1 + random() % 4000)};
        material.holds /= 40;  // small packs, so that many are bought
        if (random() % 2 == 0) continue;
        material.in_case = 2;
        material.case_price = {static_cast<std::int64_t>(static_cast<double>(material.price.cents) * 1.4)};
    }
    return book;
}

/// Written down anew: the spaces that one animal gets to from outdoors and sources, through gaps that count `least` or wider.
bool gets_in(const Survey& survey, const std::set<std::uint32_t>& shut, const std::vector<double>& meshes, const Pest& animal,
             double least) {
    std::vector<bool> passable(survey.gaps.size(), true);
    for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) {
        Gap gap = survey.gaps[i];
        if (meshes[i] > 0) close_gap(gap, meshes[i]);
        passable[i] = !shut.contains(i) && lets_through(gap, animal.size, Sizing::with_plus_minus) &&
                      counted_width(gap, Sizing::with_plus_minus) >= least;
    }
    for (std::uint32_t start = 0; start < survey.spaces.size(); ++start) {
        if (!survey.spaces[start].starts_paths()) continue;
        std::vector<bool> reached(survey.spaces.size(), false);
        std::vector<std::uint32_t> waiting{start};
        reached[start] = true;
        for (std::size_t w = 0; w < waiting.size(); ++w) {
            for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) {
                const auto& between = survey.gaps[i].between;
                const bool here = between[0].value == waiting[w] || between[1].value == waiting[w];
                if (!here || !passable[i]) continue;
                const std::uint32_t to = between[0].value == waiting[w] ? between[1].value : between[0].value;
                if (reached[to]) continue;
                reached[to] = true;
                if (survey.spaces[to].is_living()) return true;
                if (!survey.spaces[to].starts_paths()) waiting.push_back(to);
            }
        }
    }
    return false;
}

/// What is charged: the whole without the closings that are done again under warranty.
void expect_sum(const QuoteOption& option, const PriceBook& book, const std::vector<GapIndex>& free, std::uint64_t seed) {
    Money sum;
    for (const ChargeLine& line : option.sum.lines) sum = sum + line.amount;
    ASSERT_EQ(sum, option.sum.total) << seed;
    ASSERT_EQ(option.sum.deposit + option.sum.balance, option.sum.total) << seed;
    ASSERT_EQ(option.sum.of(Charge::closings), option.plan.cost) << seed;
    if (option.plan.steps.empty()) {
        ASSERT_EQ(option.sum.total, Money{}) << seed;
        return;
    }
    // Closings and packs together are the time and what is bought, but for half a cent of rounding at each step and one of packs.
    double labor = 0;
    double stated = 0;
    Money credit;
    std::vector<Need> needs;
    for (const PlanStep& step : option.plan.steps) {
        if (std::find(free.begin(), free.end(), step.gap) != free.end()) {
            credit = credit + step.option.cost;
            continue;
        }
        needs.insert(needs.end(), step.option.needs.begin(), step.option.needs.end());
        if (step.option.treatment == stated_closing)
            stated += static_cast<double>(step.option.cost.cents);
        else
            labor += step.option.minutes * static_cast<double>(book.labor_per_hour.cents) / 60;
    }
    ASSERT_EQ(option.sum.of(Charge::warranty) + credit, Money{}) << seed;
    double bought = 0;
    for (const Purchase& purchase : to_buy(needs, book)) bought += static_cast<double>(purchase.cost.cents);
    const Money both = option.sum.of(Charge::closings) + option.sum.of(Charge::warranty) + option.sum.of(Charge::packs);
    ASSERT_NEAR(static_cast<double>(both.cents), stated + labor + bought,
                0.51 * static_cast<double>(option.plan.steps.size() + 1))
        << seed;
    const bool waits =
        std::any_of(option.plan.steps.begin(), option.plan.steps.end(), [](const PlanStep& step) { return step.waits; });
    ASSERT_GE(option.sum.visits, 1U) << seed;
    ASSERT_TRUE(waits || option.sum.visits == 1) << seed;
    ASSERT_LE(option.sum.of(Charge::visits), book.call_out * (std::int64_t{option.sum.visits} - 1)) << seed;
    ASSERT_TRUE(!free.empty() || option.sum.of(Charge::visits) == book.call_out * (std::int64_t{option.sum.visits} - 1)) << seed;
}

void expect_open_ways(const Job& job, const Quote& quote, const QuoteOption& option, std::uint64_t seed) {
    std::vector<const OpenWay*> of_animal(quote.animals.size(), nullptr);
    for (const OpenWay& way : option.stays_open) of_animal[way.pest] = &way;
    for (const std::size_t animal : option.against) ASSERT_EQ(of_animal[animal], nullptr) << seed << ' ' << animal;
    for (std::size_t i = 0; i < quote.animals.size(); ++i) {
        std::set<std::uint32_t> shut;
        std::vector<double> meshes(job.survey.gaps.size(), 0);
        for (const PlanStep& step : option.plan.steps) {
            if (quote.animals[i].gnaws && step.option.gnawed) continue;
            if (step.option.opening > 0)
                meshes[step.gap.value] = step.option.opening;
            else
                shut.insert(step.gap.value);
        }
        const double pinch = of_animal[i] != nullptr ? of_animal[i]->pinch : 0;
        ASSERT_EQ(gets_in(job.survey, shut, meshes, quote.animals[i], pinch), of_animal[i] != nullptr) << seed;
        ASSERT_FALSE(gets_in(job.survey, shut, meshes, quote.animals[i], pinch + 1e-9) && of_animal[i] != nullptr) << seed;
    }
}

TEST(QuoteProperties, HoldForRandomJobs) {
    std::size_t options = 0, merged = 0, free = 0, credits = 0, waiting = 0, everything = 0, impossible = 0, warranted = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        const Job job = random_job(seed);
        QuoteSettings settings;
        settings.against = job.pests;
        settings.prices = random_book(seed);
        settings.date = *parse_date("2026-06-10").value;
        const Quote quote = make_quote(job, settings, RunContext());
        std::set<std::size_t> told;
        std::size_t nested = 0;
        const QuoteOption* before = nullptr;
        for (const QuoteOption& option : quote.options) {
            told.insert(option.against.begin(), option.against.end());
            if (!option.plan.feasible) {
                ++impossible;
                ASSERT_TRUE(option.sum.lines.empty()) << seed;
                continue;
            }
            ++options;
            nested += option.everything ? 0 : 1;
            everything += option.everything ? 1 : 0;
            free += option.plan.steps.empty() ? 1 : 0;
            credits += option.sum.of(Charge::packs) < Money{} ? 1 : 0;
            waiting += option.sum.visits > 1 ? 1 : 0;
            expect_sum(option, settings.prices, quote.free, seed);
            warranted += option.sum.of(Charge::warranty) < Money{} ? 1 : 0;
            expect_open_ways(job, quote, option, seed);
            if (before != nullptr) {
                ASSERT_TRUE(before->plan.feasible) << seed;
                ASSERT_GT(option.sum.total, before->sum.total) << seed;
                ASSERT_TRUE(
                    std::includes(option.against.begin(), option.against.end(), before->against.begin(), before->against.end()))
                    << seed;
            }
            before = &option;
        }
        ASSERT_LE(nested, most_quote_options) << seed;
        ASSERT_EQ(told.size(), job.pests.size()) << seed << ": every animal is in an option, with or without a price";
        merged += nested < job.pests.size() ? 1 : 0;
    }
    EXPECT_GT(options, 600U);
    EXPECT_GT(merged, 100U);
    EXPECT_GT(free, 50U);
    EXPECT_GT(credits, 20U);
    EXPECT_GT(waiting, 20U);
    EXPECT_GT(everything, 50U);
    EXPECT_GT(impossible, 50U);
    EXPECT_GT(warranted, 50U);
}

}  // namespace
}  // namespace seamward
