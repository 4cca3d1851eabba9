// SPDX-License-Identifier: GPL-3.0-or-later
// The sum of an option, see plan/quote.h; all expected amounts are worked by hand in the comments.
#include <gtest/gtest.h>

#include "plan/quote.h"

namespace seamward {
namespace {

/// A dollar a minute; a cartridge of one cubic meter for $10, twelve for $100; a device for $28; the shares of the shipped book.
PriceBook plain_book() {
    PriceBook book;
    book.labor_per_hour = {60'00};
    book.materials = {{"sealant", "sealant", "cartridge", Material::By::volume, 1, {10'00}, 12, {100'00}},
                      {"device", "device", "piece", Material::By::piece, 1, {28'00}, 0, {}}};
    book.call_out = {95'00};
    book.overhead = 0.15;
    book.tax = 0.08;
    book.deposit = 0.30;
    book.valid_days = 30;
    book.warranty_months = 12;
    return book;
}

/// A step that takes so many minutes and cartridges, priced as options are.
PlanStep step_of(std::uint32_t gap, double minutes, double cartridges, bool waits = false) {
    PlanStep step;
    step.gap = {gap};
    step.option.minutes = minutes;
    step.option.needs = {{"sealant", cartridges}};
    step.option.cost = {static_cast<std::int64_t>(minutes * 100 + cartridges * 1000 + 0.5)};
    step.waits = waits;
    return step;
}

Plan plan_of(const std::vector<PlanStep>& steps) {
    Plan plan;
    std::vector<Need> needs;
    for (const PlanStep& step : steps) {
        plan.steps.push_back(step);
        plan.cost = plan.cost + step.option.cost;
        plan.minutes += step.option.minutes;
        needs.insert(needs.end(), step.option.needs.begin(), step.option.needs.end());
    }
    plan.materials = to_buy(needs, plain_book());
    return plan;
}

// 30 min at $1 and 1.25 cartridges at $10: 42.50. Two whole cartridges are 20.00, 7.50 more than is used: 50.00. A visit is 95.00
// at the least: 45.00 on top. 15 % of 95.00 is 14.25; 8 % of 109.25 is 8.74: 117.99. 30 % of that is 35.397, so 35.40.
TEST(QuoteSum, AddsUpByHand) {
    const QuoteSum sum = sum_of(plan_of({step_of(0, 30, 1.25)}), plain_book());
    EXPECT_EQ(sum.of(Charge::closings), Money{42'50});
    EXPECT_EQ(sum.of(Charge::packs), Money{7'50});
    EXPECT_EQ(sum.of(Charge::departures), Money{});
    EXPECT_EQ(sum.of(Charge::visits), Money{});
    EXPECT_EQ(sum.of(Charge::least), Money{45'00});
    EXPECT_EQ(sum.of(Charge::overhead), Money{14'25});
    EXPECT_EQ(sum.of(Charge::tax), Money{8'74});
    EXPECT_EQ(sum.total, Money{117'99});
    EXPECT_EQ(sum.deposit, Money{35'40});
    EXPECT_EQ(sum.balance, Money{82'59});
    EXPECT_EQ(sum.lines.size(), 5U);
    EXPECT_EQ(sum.visits, 1U);
    EXPECT_DOUBLE_EQ(sum.minutes, 30);
}

// 11.5 cartridges at $10 are in the closings; a case of twelve costs $100.
TEST(QuoteSum, CasesAreACredit) {
    const QuoteSum sum = sum_of(plan_of({step_of(0, 100, 8), step_of(1, 20, 3.5)}), plain_book());
    EXPECT_EQ(sum.of(Charge::closings), Money{235'00});
    EXPECT_EQ(sum.of(Charge::packs), Money{-15'00});
    EXPECT_EQ(sum.of(Charge::least), Money{});
    EXPECT_EQ(sum.total, Money{220'00 + 33'00 + 20'24});
}

// A device is $28 and 45 min. The step that waits takes a second visit, 95.00. The first visit: 40.00 of work and no whole pack
// more than is used, and 73.00 for the device: more than 95.00.
TEST(QuoteSum, AnAnimalInsideTakesADeviceAndAVisit) {
    Removal removal;
    removal.by = Removal::By::one_way;
    removal.material = "device";
    removal.minutes = 45;
    Departure departure;
    departure.removal = &removal;
    departure.last = {{1}};
    departure.device = GapIndex{1};
    Plan plan = plan_of({step_of(0, 20, 2), step_of(1, 5, 1, true)});
    plan.departures = {departure};
    const QuoteSum sum = sum_of(plan, plain_book());
    EXPECT_EQ(sum.of(Charge::departures), Money{73'00});
    EXPECT_EQ(sum.of(Charge::visits), Money{95'00});
    EXPECT_EQ(sum.of(Charge::least), Money{});
    EXPECT_EQ(sum.visits, 2U);
    EXPECT_DOUBLE_EQ(sum.minutes, 70);

    // Young that cannot fly: the device comes when the season is over, on a visit of its own; the first has 40.00 of work left.
    plan.departures[0].season = InSeason{};
    const QuoteSum later = sum_of(plan, plain_book());
    EXPECT_EQ(later.visits, 3U);
    EXPECT_EQ(later.of(Charge::visits), Money{190'00});
    EXPECT_EQ(later.of(Charge::least), Money{55'00});

    // Traps for one that waits; none for one that finds its way out; whoever is licensed sends a bill of his own.
    plan.departures[0].season.reset();
    plan.departures[0].device.reset();
    EXPECT_EQ(sum_of(plan, plain_book()).of(Charge::departures), Money{});
    removal.by = Removal::By::trapping;
    EXPECT_EQ(sum_of(plan, plain_book()).of(Charge::departures), Money{73'00});
    removal.by = Removal::By::licensed;
    EXPECT_EQ(sum_of(plan, plain_book()).of(Charge::departures), Money{});
    EXPECT_EQ(sum_of(plan, plain_book()).visits, 2U);
    removal.by = Removal::By::trapping;
    plan.departures[0].last.clear();
    EXPECT_EQ(sum_of(plan, plain_book()).of(Charge::departures), Money{});
}

// 42.50 and 25.00 of closings, 25.00 of it free. The rest is charged as if it were alone, see AddsUpByHand: 1.25 cartridges are
// two whole ones, 7.50 more; a visit is 95.00 at the least, so 45.00 more.
TEST(QuoteSum, WhatDidNotHoldIsDoneAgainForNothing) {
    const Plan plan = plan_of({step_of(0, 30, 1.25), step_of(1, 10, 1.5)});
    const std::vector<GapIndex> free{{1}};
    const QuoteSum sum = sum_of(plan, plain_book(), free);
    EXPECT_EQ(sum.of(Charge::closings), Money{67'50});
    EXPECT_EQ(sum.of(Charge::warranty), Money{-25'00});
    EXPECT_EQ(sum.of(Charge::packs), Money{7'50});
    EXPECT_EQ(sum.of(Charge::least), Money{45'00});
    EXPECT_EQ(sum.total, sum_of(plan_of({step_of(0, 30, 1.25)}), plain_book()).total);
    const QuoteSum all = sum_of(plan_of({step_of(1, 10, 1)}), plain_book(), free);
    EXPECT_EQ(all.total, Money{});
    EXPECT_EQ(all.lines.size(), 2U);
    EXPECT_EQ(all.visits, 1U);
}

// The first visit is under warranty alone; 5 min and a cartridge, 15.00, wait for another: 80.00 up to the least charge, and no
// further visit is charged.
TEST(QuoteSum, AVisitUnderWarrantyAloneIsFree) {
    const std::vector<GapIndex> free{{0}};
    const QuoteSum sum = sum_of(plan_of({step_of(0, 20, 2), step_of(1, 5, 1, true)}), plain_book(), free);
    EXPECT_EQ(sum.visits, 2U);
    EXPECT_EQ(sum.of(Charge::visits), Money{});
    EXPECT_EQ(sum.of(Charge::packs), Money{});
    EXPECT_EQ(sum.of(Charge::least), Money{80'00});
    // The other way round: what is done under warranty waits, and only the first visit is charged.
    const std::vector<GapIndex> waits{{1}};
    const QuoteSum later = sum_of(plan_of({step_of(0, 20, 2), step_of(1, 5, 1, true)}), plain_book(), waits);
    EXPECT_EQ(later.visits, 2U);
    EXPECT_EQ(later.of(Charge::visits), Money{});
    EXPECT_EQ(later.of(Charge::least), Money{55'00});
}

// Warranted for twelve months from 2026-03-10: until 2027-03-09.
TEST(QuoteSum, TheWarrantyEndsOnADay) {
    const auto day = [](const char* text) { return *parse_date(text).value; };
    Job job;
    ClosedGap closed;
    closed.gap = {3};
    closed.date = day("2026-03-10");
    closed.callback = Callback{day("2027-03-09"), "the bead tore", {}};
    job.closed = {closed};
    EXPECT_EQ(under_warranty(job, 12), std::vector<GapIndex>{{3}});
    job.closed[0].callback->date = day("2027-03-10");
    EXPECT_TRUE(under_warranty(job, 12).empty());
    job.closed[0].callback->date = day("2026-03-20");
    EXPECT_TRUE(under_warranty(job, 0).empty());
    job.closed[0].callback->mended = day("2026-03-21");
    EXPECT_TRUE(under_warranty(job, 12).empty());
    job.closed[0].callback.reset();
    EXPECT_TRUE(under_warranty(job, 12).empty());
}

TEST(QuoteSum, NothingToDoCostsNothing) {
    const QuoteSum sum = sum_of(Plan(), plain_book());
    EXPECT_EQ(sum.total, Money{});
    EXPECT_EQ(sum.visits, 0U);
    ASSERT_EQ(sum.lines.size(), 1U);
    EXPECT_EQ(sum.lines[0].charge, Charge::closings);
}

TEST(QuoteSum, SharesAreExactToHalfACentUp) {
    EXPECT_EQ(share_of({10'00}, 0.0825), Money{83});  // 82.5 cents
    EXPECT_EQ(share_of({50}, 0.01), Money{1});        // half a cent
    EXPECT_EQ(share_of({49}, 0.01), Money{0});
    EXPECT_EQ(share_of({3}, 1.0 / 3), Money{1});  // 0.33333333 of 3
    EXPECT_EQ(share_of({1'234'567'890'123}, 0.1), Money{123'456'789'012});
    EXPECT_EQ(share_of({999'999'999'99}, 100), Money{99'999'999'999'00});
    EXPECT_EQ(share_of({}, 0.15), Money{});
}

}  // namespace
}  // namespace seamward
