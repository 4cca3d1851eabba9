// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/chances.h"

#include <gtest/gtest.h>

#include <random>

#include "catalog/passage.h"
#include "tests/support/brute_force.h"
#include "tests/support/random_survey.h"
#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

using test::SurveyBuilder;

constexpr PassageSize beetle{1e-3, 2e-3};

Gap slot(double width_mm, double plus_minus_mm) {
    Gap gap;
    gap.shape = Slot{width_mm * 1e-3, 1};
    gap.evidence.plus_minus = plus_minus_mm * 1e-3;
    return gap;
}

TEST(ChanceToPass, IsTheShareOfWidthsThatAreWideEnough) {
    EXPECT_NEAR(chance_to_pass(slot(1.0, 0.2), beetle), 0.5, 1e-8);
    EXPECT_NEAR(chance_to_pass(slot(1.1, 0.2), beetle), 0.75, 1e-8);
    EXPECT_NEAR(chance_to_pass(slot(0.9, 0.2), beetle), 0.25, 1e-8);
    EXPECT_EQ(chance_to_pass(slot(0.7, 0.2), beetle), 0);
    EXPECT_EQ(chance_to_pass(slot(1.3, 0.2), beetle), 1);
    EXPECT_EQ(chance_to_pass(slot(1.3, 0), beetle), 1);
    EXPECT_EQ(chance_to_pass(slot(0.9, 0), beetle), 0);
    EXPECT_NEAR(chance_to_pass(slot(0, 2), beetle), 0.5, 1e-8) << "no width is less than 0";
}

TEST(ChanceToPass, AMeshOverAGapAsksForBoth) {
    Gap gap = slot(1.0, 0.2);
    close_gap(gap, 0.9e-3);
    EXPECT_EQ(chance_to_pass(gap, beetle), 0);
    Gap wide;
    wide.shape = Hole{3e-3};
    wide.evidence.plus_minus = 2e-3;
    close_gap(wide, 2.5e-3);
    EXPECT_NEAR(chance_to_pass(wide, beetle), 0.75, 1e-8);
}

// Two doubtful gaps in a row, beside one: 1 - (1 - 0.5 * 0.75) (1 - 0.25).
TEST(OpenChances, OfTwoWays) {
    SurveyBuilder build;
    build.outdoors("yard").cavity("wall").living("kitchen");
    build.slot("screed", "yard", "wall", 1.0).last().evidence.plus_minus = 0.2e-3;
    build.slot("sink", "wall", "kitchen", 1.1).last().evidence.plus_minus = 0.2e-3;
    build.slot("door", "yard", "kitchen", 0.9).last().evidence.plus_minus = 0.2e-3;
    Pest pest;
    pest.size = beetle;
    const auto chances = open_chances(build.survey(), std::span(&pest, 1));
    ASSERT_TRUE(chances.has_value());
    const PestChance& chance = chances->at(0);
    EXPECT_TRUE(chance.open.exact);
    EXPECT_NEAR(chance.open.chance, 1 - (1 - 0.375) * 0.75, 1e-8);
    // door: 2 * 0.25 * 0.75 * (1 - 0.375); screed: 2 * 0.25 * 0.75 * 0.75; sink: 2 * 0.1875 * 0.5 * 0.75.
    ASSERT_EQ(chance.measure.size(), 3U);
    EXPECT_EQ(chance.measure[0].gap, GapIndex{0});
    EXPECT_NEAR(chance.measure[0].change, 2 * 0.5 * 0.5 * 0.75 * 0.75, 1e-8);
    EXPECT_EQ(chance.measure[1].gap, GapIndex{2});
    EXPECT_NEAR(chance.measure[1].change, 2 * 0.25 * 0.75 * 0.625, 1e-8);
    EXPECT_NEAR(chance.measure[2].change, 2 * 0.75 * 0.25 * 0.5 * 0.75, 1e-8);
}

// Widths drawn by chance, and every path walked: the share of draws with a way in.
TEST(OpenChances, AgreeWithDrawnWidths) {
    std::mt19937_64 random(20261126);
    for (int round = 0; round < 12; ++round) {
        Survey survey = test::random_survey({.spaces = 6, .gaps = 9, .source_share = 0}, random());
        for (Gap& gap : survey.gaps) gap.evidence.plus_minus = 8e-3;
        Pest pest;
        pest.size = {9e-3, 12e-3};
        const auto chances = open_chances(survey, std::span(&pest, 1));
        ASSERT_TRUE(chances.has_value());
        constexpr int draws = 4000;
        int open = 0;
        for (int draw = 0; draw < draws; ++draw) {
            Survey drawn = survey;
            for (Gap& gap : drawn.gaps) {
                const double least = std::max(0.0, clear_width(gap.shape) - gap.evidence.plus_minus);
                const double most = clear_width(gap.shape) + gap.evidence.plus_minus;
                gap.shape = widened(gap.shape, std::uniform_real_distribution(least, most)(random) - clear_width(gap.shape));
                gap.evidence.plus_minus = 0;
            }
            open +=
                test::all_paths(drawn, {}, [&](const Gap& gap) { return test::gets_through(gap, pest, false); }).empty() ? 0 : 1;
        }
        EXPECT_NEAR(static_cast<double>(open) / draws, chances->at(0).open.chance, 0.04) << round;
    }
}

TEST(OpenChances, AreNotToldWhereALivingSpaceIsASource) {
    SurveyBuilder build;
    build.outdoors("yard").space("neighbor", SpaceKind::living, true).living("kitchen").slot("wall", "neighbor", "kitchen", 2);
    Pest pest;
    pest.size = beetle;
    EXPECT_FALSE(open_chances(build.survey(), std::span(&pest, 1)).has_value());
}

}  // namespace
}  // namespace seamward
