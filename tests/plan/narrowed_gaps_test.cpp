// SPDX-License-Identifier: GPL-3.0-or-later
// A mesh that stops one animal of two leaves the other a narrower way than a seal that this other one gnaws through.
#include <gtest/gtest.h>

#include "plan/cheapest_closing.h"
#include "plan/closing_program.h"
#include "plan/open_ways.h"
#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

using test::SurveyBuilder;

Option option_of(double dollars, double opening, bool gnawed) {
    Option option;
    option.cost = Money{static_cast<std::int64_t>(100 * dollars)};
    option.opening = opening;
    option.gnawed = gnawed;
    return option;
}

/// A hole of 10 mm that the mouse and the roach get through, and a crack of 3.5 mm that the roach gets through. Over the hole fit
/// a seal for $5 that the mouse gnaws through, a mesh of 7 mm for $8 that only the roach is too large for, and a plate for $100.
ClosingProblem problem_of_two() {
    SurveyBuilder build;
    build.outdoors("yard").living("kitchen").slot("hole", "yard", "kitchen", 10).slot("crack", "yard", "kitchen", 3.5);
    Survey survey = build.survey();
    survey.gaps[0].shape = Hole{10e-3};
    std::vector<Pest> pests(2);
    pests[0].size = {4e-3, 6e-3};  // mouse: a mesh of 5.1 mm
    pests[0].gnaws = true;
    pests[1].size = {3e-3, 9.9e-3};  // roach: a mesh of 7.3 mm
    std::vector<GapOptions> options(2);
    options[0].options = {option_of(5, 0, true), option_of(8, 7e-3, false), option_of(100, 0, false)};
    options[1].options = {option_of(2, 0, true)};
    return make_closing_problem(survey, pests, options, Sizing::with_plus_minus);
}

TEST(NarrowedGaps, AMeshIsKeptBesideACheaperSealThatIsGnawed) {
    const ClosingProblem problem = problem_of_two();
    ASSERT_EQ(problem.pests.size(), 2U);
    ASSERT_EQ(problem.doorways.size(), 2U);
    ASSERT_EQ(problem.doorways[0].choices.size(), 3U);
    EXPECT_EQ(problem.doorways[0].choices[1].option, 1U);
}

/// $8 buy the mesh: no way wider than 7 mm is left. The seal would leave the mouse all of the hole.
TEST(NarrowedGaps, ABudgetBuysTheMesh) {
    const ClosingProblem problem = problem_of_two();
    const std::optional<BudgetAnswer> answer = best_within_budget(problem, 7e-3, Money{800});
    ASSERT_TRUE(answer.has_value());
    EXPECT_EQ(answer->now, (std::vector<Pick>{{0, 1}}));
}

TEST(NarrowedGaps, WhatIsLeftIsToldForEachAnimal) {
    const ClosingProblem problem = problem_of_two();
    const auto left = [&](std::uint32_t choice) { return widest_way(problem, std::vector<Pick>{{0, choice}, {1, 0}}); };
    EXPECT_DOUBLE_EQ(left(0).value().pinch, 10e-3);
    EXPECT_EQ(problem.pests[left(0)->pest], 0U);
    EXPECT_DOUBLE_EQ(left(1).value().pinch, 7e-3);
    EXPECT_FALSE(left(2).has_value());
    EXPECT_EQ(pinches_after_each(problem, std::vector<Pick>{{0, 1}, {1, 0}}), (std::vector<double>{7e-3, 7e-3}));
}

/// A mesh of 8 mm over a gap of 20 stops no mouse and leaves it a narrower way: with nothing better to be had, a budget buys it.
/// The whole plan has no use for it.
TEST(NarrowedGaps, AMeshThatStopsNobodyIsBoughtForANarrowerWay) {
    SurveyBuilder build;
    build.outdoors("yard").living("kitchen").slot("vent", "yard", "kitchen", 20);
    std::vector<Pest> pests(1);
    pests[0].size = {6e-3, 6e-3};
    std::vector<GapOptions> options(1);
    options[0].options = {option_of(10, 8e-3, false), option_of(50, 0, false)};
    const ClosingProblem problem =
        make_closing_problem(build.survey(), pests, options, Sizing::with_plus_minus, Choices::narrowing_too);
    EXPECT_EQ(cheapest_closing(problem).cost, Money{5000});
    const std::optional<BudgetAnswer> answer = best_within_budget(problem, 8e-3, Money{2000});
    ASSERT_TRUE(answer.has_value());
    EXPECT_EQ(problem.cost_of(answer->now), Money{1000});
    EXPECT_EQ(problem.cost_of(answer->later), Money{5000});
    EXPECT_DOUBLE_EQ(widest_way(problem, answer->now)->pinch, 8e-3);
    EXPECT_EQ(make_closing_problem(build.survey(), pests, options, Sizing::with_plus_minus).doorways[0].choices.size(), 1U);
}

}  // namespace
}  // namespace seamward
