// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>

#include "closings_fixture.h"
#include "document/closings_document.h"
#include "document/closings_notes.h"
#include "document/closings_text.h"

namespace seamward::viewer::test {
namespace {

class ClosingsOfAJob : public Closings {};

TEST_F(ClosingsOfAJob, BeginsWithTheHouseAsItIs) {
    open(demo);
    const Plan expected = plan_of(*document.filed());
    EXPECT_EQ(closings.ticked().cost, Money{});
    EXPECT_EQ(closings.ticked().gaps, 0U);
    EXPECT_TRUE(document.on_trial().empty());
    EXPECT_EQ(closings.rung(), ClosingsDocument::none_done);
    EXPECT_EQ(closings.whole_plan().cost, expected.cost);
    EXPECT_DOUBLE_EQ(closings.whole_plan().minutes, expected.minutes);
    const std::vector<NumberedGap> numbered = closings.numbered();
    ASSERT_EQ(numbered.size(), expected.steps.size());
    for (std::size_t i = 0; i < numbered.size(); ++i) {
        EXPECT_EQ(numbered[i].gap, expected.steps[i].gap);
        EXPECT_EQ(numbered[i].number, static_cast<int>(i) + 1);
        EXPECT_FALSE(numbered[i].ticked);
    }
}

TEST_F(ClosingsOfAJob, TicksChangeThePriceByTheStepsCostAndTheWaysAsTheEngineSays) {
    open(demo);
    const Plan plan = closings.plan().plan;
    Survey after = document.filed()->survey;
    Money sum;
    for (const std::size_t at : {4U, 5U, 22U}) {
        const PlanStep& step = plan.steps[at];
        tick(step.gap, true);
        close_gap(after.gaps[step.gap.value], step.option.opening);
        sum = sum + step.option.cost;
        EXPECT_EQ(closings.ticked().cost, sum);
        expect_ways_of(after);
        expect_animals_of(after);
    }
    EXPECT_EQ(closings.ticked().gaps, 3U);
    tick(plan.steps[5].gap, false);
    EXPECT_EQ(closings.ticked().cost + plan.steps[5].option.cost, sum);
}

TEST_F(ClosingsOfAJob, AllTickedShutEveryAnimalOut) {
    open(demo);
    act([&] { closings.tick_all(); });
    EXPECT_EQ(closings.ticked().cost, closings.plan().plan.cost);
    EXPECT_EQ(closings.ticked().cost, closings.whole_plan().cost);
    ASSERT_EQ(closings.outlook().animals.size(), document.filed()->pests.size());
    for (const AnimalOutlook& animal : closings.outlook().animals) {
        EXPECT_FALSE(animal.way.has_value()) << animal.pest.id;
        EXPECT_TRUE(animal.planned_against);
    }
    act([&] { closings.untick_all(); });
    EXPECT_EQ(closings.ticked().cost, Money{});
    EXPECT_TRUE(document.on_trial().empty());
    for (const AnimalOutlook& animal : closings.outlook().animals) EXPECT_TRUE(animal.way.has_value());
}

TEST_F(ClosingsOfAJob, RungsCloseWhatTheLadderSays) {
    open(demo);
    const std::vector<LadderRung> ladder = plan_of(*document.filed()).ladder;
    ASSERT_GT(ladder.size(), 3U);
    for (std::size_t i = 0; i < ladder.size(); ++i) {
        act([&] { closings.tick_rung(static_cast<int>(i)); });
        EXPECT_EQ(closings.ticked().cost, ladder[i].cost);
        EXPECT_EQ(closings.rung(), static_cast<int>(i));
        std::vector<GapIndex> gaps = ladder[i].gaps;
        std::ranges::sort(gaps);
        std::vector<GapIndex> closed;
        for (const TreatedGap& gap : document.on_trial()) closed.push_back(gap.gap);
        EXPECT_EQ(closed, gaps);
        EXPECT_LT(closings.outlook().widest, ladder[i].width);
        EXPECT_EQ(closings.outlook().widest, closings.plan().widest_after_rung[i]);
    }
}

TEST_F(ClosingsOfAJob, AnotherTreatmentHasItsOwnPriceAndCautions) {
    open(demo);
    const OfferedClosing& offer = closings.plan().offers[6];
    ASSERT_GT(offer.options.size(), 1U);
    tick(offer.gap, true);
    const std::size_t other = offer.usual == 0 ? offer.options.size() - 1 : 0;
    QSignalSpy told(&closings, &ClosingsDocument::state_changed);
    closings.choose_treatment(offer.gap, offer.options[other].treatment);
    EXPECT_EQ(told.count(), 1);
    EXPECT_TRUE(closings.chosen_by_hand(offer));
    EXPECT_EQ(closings.ticked().cost, offer.options[other].cost);
    EXPECT_EQ(closings.whole_plan().cost.cents,
              closings.plan().plan.cost.cents - offer.options[offer.usual].cost.cents + offer.options[other].cost.cents);
    for (const Message& caution : offer.cautions(other))
        EXPECT_TRUE(
            closing_html(closings.plan(), offer, other).contains(QString::fromStdString(caution.english()).toHtmlEscaped()));
}

TEST_F(ClosingsOfAJob, WhatIsGnawedThroughStopsNoRodent) {
    open(demo);
    for (const OfferedClosing& offer : closings.plan().offers) {
        const auto gnawed = std::ranges::find_if(offer.options, &Option::gnawed);
        if (gnawed == offer.options.end() || !closings.plan().gnawed_at(offer.gap)) continue;
        act([&] {
            closings.tick(offer.gap, true);
            closings.choose_treatment(offer.gap, gnawed->treatment);
        });
        break;
    }
    ASSERT_EQ(closings.ticked().gaps, 1U);
    const auto mouse =
        std::ranges::find(closings.outlook().animals, "house-mouse", [](const AnimalOutlook& one) { return one.pest.id; });
    ASSERT_NE(mouse, closings.outlook().animals.end());
    const Trace before = trace(document.filed()->survey, {.pests = {mouse->pest}, .to = {}, .top = 1}, RunContext());
    ASSERT_TRUE(mouse->way.has_value());
    EXPECT_EQ(mouse->way->path, before.paths.front().path);
}

TEST_F(ClosingsOfAJob, StatesAreValuesThatComeBack) {
    open(demo);
    QSignalSpy told(&closings, &ClosingsDocument::state_changed);
    const OfferedClosing& first = closings.plan().offers[0];
    const OfferedClosing& extra = closings.plan().offers.back();
    ASSERT_FALSE(extra.planned);
    tick(first.gap, true);
    tick(extra.gap, true);
    EXPECT_EQ(closings.numbered().back().gap, extra.gap);
    EXPECT_EQ(closings.numbered().back().number, extra.number);
    const std::vector<ClosingState> state = closings.state();
    EXPECT_EQ(state.size(), 2U);
    const Money cost = closings.ticked().cost;
    act([&] { closings.set_state({}); });
    EXPECT_EQ(closings.ticked().gaps, 0U);
    act([&] { closings.set_state(state); });
    EXPECT_EQ(closings.state(), state);
    EXPECT_EQ(closings.ticked().cost, cost);
    EXPECT_EQ(told.count(), 4);
    // A job that is read again keeps them.
    QSignalSpy planned(&closings, &ClosingsDocument::planned);
    document.read({demo, std::nullopt}, true, false);
    ASSERT_TRUE(planned.wait(20'000));
    EXPECT_EQ(closings.state(), state);
    EXPECT_EQ(document.on_trial().size(), 2U);
}

TEST_F(ClosingsOfAJob, ABudgetTicksWhatThePlanWithinItSays) {
    open(demo);
    PlanSettings settings = closings.plan().settings;
    settings.budget = Money{30'000};
    const Plan expected = make_plan(*document.filed(), settings, RunContext());
    QSignalSpy spent(&closings, &ClosingsDocument::budget_spent);
    closings.tick_within(Money{30'000});
    ASSERT_TRUE(spent.wait(20'000));
    EXPECT_EQ(closings.ticked().cost, expected.cost);
    EXPECT_EQ(closings.ticked().gaps, expected.steps.size());
    EXPECT_TRUE(budget_words(closings, Money{30'000}, *expected.budget).contains(money_words(expected.budget->still_to_pay)));
}

TEST_F(ClosingsOfAJob, PlansAgainstOtherAnimals) {
    open(demo);
    const Pest mouse = document.filed()->pests.back();
    tick(closings.plan().offers[4].gap, true);
    const std::vector<ClosingState> state = closings.state();
    QSignalSpy planned(&closings, &ClosingsDocument::planned);
    closings.plan_against({mouse});
    ASSERT_TRUE(planned.wait(20'000));
    PlanSettings settings;
    settings.against = {mouse};
    EXPECT_EQ(closings.plan().plan.cost, make_plan(*document.filed(), settings, RunContext()).cost);
    EXPECT_EQ(closings.state().size(), state.size());
}

TEST_F(ClosingsOfAJob, TellsWhatStandsOpenWithReasonAndSource) {
    open(demo);
    std::size_t gaps = 0;
    for (const ClosingNote& note : stays_open_notes(closings.plan())) gaps += static_cast<std::size_t>(note.text.count(';')) + 1;
    std::size_t expected = 0;
    for (const RefusedGap& refused : closings.plan().plan.refused) expected += refused.refusal.treatment.empty() ? 1 : 0;
    EXPECT_EQ(gaps, expected);
}

TEST_F(ClosingsOfAJob, NobodyIsShutIn) {
    open_text(bats_job);
    ASSERT_EQ(closings.plan().plan.steps.size(), 2U);
    const OfferedClosing& eave = closings.plan().offers[1];
    EXPECT_EQ(closings.plan().survey()[eave.gap].id, "eave");
    EXPECT_TRUE(eave.waits);
    EXPECT_TRUE(closing_html(closings.plan(), eave, eave.usual).contains("Not before the animal that lives here has left."));
    EXPECT_TRUE(stand_words(closings.plan(), eave).startsWith("On a later visit"));
    // The door leaves the bat its way, the eave does not.
    tick(closings.plan().offers[0].gap, true);
    ASSERT_EQ(closings.outlook().departures.size(), 1U);
    EXPECT_FALSE(closings.outlook().departures[0].waits());
    tick(eave.gap, true);
    EXPECT_EQ(closings.outlook().departures[0].last, std::vector<GapIndex>{eave.gap});
    const std::vector<ClosingNote> notes = departure_notes(closings.plan(), closings.outlook().departures);
    EXPECT_TRUE(notes[0].text.contains("must not be shut in"));
    EXPECT_TRUE(notes[0].reason.contains("Caution: "));
}

TEST_F(ClosingsOfAJob, MeshesThatTakeTooMuchAirTogetherAreRefused) {
    open_text(vents_job);
    const Survey& survey = closings.plan().survey();
    QSignalSpy refused(&closings, &ClosingsDocument::refused);
    tick(GapIndex{0}, true);
    EXPECT_TRUE(refused.isEmpty());
    const Money cost = closings.ticked().cost;
    closings.tick(GapIndex{1}, true);
    ASSERT_EQ(refused.count(), 1);
    EXPECT_EQ(refused[0][1].value<GapIndex>(), GapIndex{1});
    EXPECT_FALSE(refused[0][0].value<Refusal>().why.empty());
    EXPECT_FALSE(refused[0][0].value<Refusal>().source.empty());
    EXPECT_EQ(closings.ticked().cost, cost);
    EXPECT_EQ(document.on_trial().size(), 1U);
    // Nor do they come back together from elsewhere.
    closings.set_state({{survey.gaps[0].id, {}, true, true}, {survey.gaps[1].id, {}, true, true}});
    EXPECT_EQ(refused.count(), 2);
    EXPECT_EQ(closings.ticked().gaps, 1U);
}

TEST_F(ClosingsOfAJob, NoPlanSaysWhyAndWhatHelps) {
    open_text(no_plan_job);
    EXPECT_FALSE(closings.plan().plan.feasible);
    const std::vector<ClosingNote> notes = no_plan_notes(closings.plan());
    ASSERT_EQ(notes.size(), 3U);
    EXPECT_TRUE(notes[0].text.contains("weeping brick"));
    EXPECT_TRUE(notes[1].reason.contains("water has to leave"));
    EXPECT_EQ(notes[2].reason, "Can be shut out: Norway rat. Cannot: Bark scorpion.");
    // What can be closed can be ticked all the same.
    ASSERT_EQ(closings.plan().offers.size(), 1U);
    tick(closings.plan().offers[0].gap, true);
    EXPECT_EQ(closings.ticked().cost, Money{1200});
    EXPECT_FALSE(closings.outlook().animals[1].way.has_value());
    EXPECT_TRUE(closings.outlook().animals[0].way.has_value());
}

TEST_F(ClosingsOfAJob, JobsThatLackSomethingSaySo) {
    open_text(
        "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\n"
        "gaps: [{id: a, between: [yard, den], slot: {width: 4 mm, length: 1 m}, closing: {cost: $5.00}}]\n");
    ASSERT_TRUE(closings.has_plan()) << closings.fault().toStdString();
    EXPECT_EQ(lack_notes(closings.plan()).size(), 1U);
    ASSERT_EQ(closings.plan().offers.size(), 1U);
    EXPECT_FALSE(closings.plan().offers[0].planned);
    ASSERT_EQ(closings.plan().plan.ladder.size(), 1U);
    act([&] { closings.tick_rung(0); });
    EXPECT_EQ(closings.ticked().cost, Money{500});
    EXPECT_TRUE(document.ways().paths.empty());
    open_text(
        "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: attic, kind: cavity}]\n"
        "gaps: [{id: a, between: [yard, attic], slot: {width: 4 mm, length: 1 m}, closing: {cost: $5.00}}]\n"
        "pests: [house-mouse]\n");
    ASSERT_TRUE(closings.has_plan());
    ASSERT_EQ(lack_notes(closings.plan()).size(), 1U);
    EXPECT_TRUE(lack_notes(closings.plan())[0].text.contains("no living space"));
    EXPECT_EQ(closings.ticked().gaps, 0U);
}

}  // namespace
}  // namespace seamward::viewer::test
