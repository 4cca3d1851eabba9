// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/score.h"

#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "tests/support/survey_builder.h"
#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

class ShippedDrills : public testing::TestWithParam<std::string> {
protected:
    const DrillRound& round = shipped_drill(GetParam());
    const Answers perfect = perfect_answers(round, "Ines Aguirre");
};

TEST_P(ShippedDrills, GiveAllPointsForPerfectAnswers) {
    const DrillResult result = score(round, perfect);
    EXPECT_TRUE(result.harms.empty());
    EXPECT_TRUE(result.false_alarms.empty());
    EXPECT_EQ(result.points, result.most);
    EXPECT_GT(result.most, 0);
    EXPECT_TRUE(result.passed);
    for (const PlaceResult& place : result.places) EXPECT_FALSE(place.missed());
}

TEST_P(ShippedDrills, LoseExactlyWhatIsLeftOut) {
    const DrillResult whole = score(round, perfect);
    for (std::size_t i = 0; i < perfect.findings.size(); ++i) {
        Answers less = perfect;
        less.findings.erase(less.findings.begin() + static_cast<std::ptrdiff_t>(i));
        const DrillResult result = score(round, less);
        const std::size_t place = *perfect.findings[i].where.place;
        EXPECT_EQ(result.points, whole.points - whole.places[place].most);
        EXPECT_TRUE(result.places[place].missed());
        for (std::size_t other = 0; other < result.places.size(); ++other) {
            if (other != place) {
                EXPECT_EQ(result.places[other].points, whole.places[other].points) << other;
            }
        }
        EXPECT_TRUE(result.harms.empty());
    }
}

/// To know nothing is worth nothing, and so is to say that all is tight.
TEST_P(ShippedDrills, GiveNothingForNothing) {
    Answers nothing = perfect;
    nothing.findings.clear();
    nothing.entry.reset();
    EXPECT_EQ(score(round, nothing).points, 0);
    EXPECT_FALSE(score(round, nothing).passed);
    for (std::size_t i = 0; i < round.places.size(); ++i) {
        nothing.findings.emplace_back();
        nothing.findings.back().where.place = i;
    }
    EXPECT_EQ(score(round, nothing).points, 0);
    EXPECT_TRUE(score(round, nothing).harms.empty());
}

/// Whoever calls all places open and closes each with a bead does harm, wherever something must stay open.
TEST_P(ShippedDrills, FailWhoeverSealsAll) {
    Answers all = perfect;
    for (PlaceAnswer& answer : all.findings) answer.treatment = "bead";
    const DrillResult result = score(round, all);
    bool stays_open = false;
    for (const PlaceKey& key : drill_key(round)) stays_open = stays_open || key.state == PlaceState::stays_open;
    EXPECT_TRUE(stays_open);
    EXPECT_FALSE(result.harms.empty());
    EXPECT_FALSE(result.passed);
}

TEST_P(ShippedDrills, CountEachTightPlaceThatIsCalledOpen) {
    const std::vector<PlaceKey> key = drill_key(round);
    std::size_t tight = 0;
    for (std::size_t i = 0; i < key.size(); ++i) {
        if (key[i].state != PlaceState::tight) continue;
        ++tight;
        Answers more = perfect;
        more.findings.emplace_back();
        more.findings.back().where.place = i;
        more.findings.back().open = true;
        const DrillResult result = score(round, more);
        EXPECT_EQ(result.points, result.most - 3) << i;
        EXPECT_TRUE(result.places[i].false_alarm);
    }
    EXPECT_GE(tight, 2U) << "a drill without decoys";
}

TEST_P(ShippedDrills, TakeTheConnectionEitherWayRound) {
    Answers turned = perfect;
    for (PlaceAnswer& answer : turned.findings) std::swap((*answer.between)[0], (*answer.between)[1]);
    EXPECT_EQ(score(round, turned).points, score(round, turned).most);
    for (PlaceAnswer& answer : turned.findings) (*answer.between)[0] = (*answer.between)[1];
    const DrillResult wrong = score(round, turned);
    EXPECT_EQ(wrong.points, wrong.most - 2 * static_cast<int>(turned.findings.size()));
}

TEST_P(ShippedDrills, TakeWidthsWithinWhatTheBriefingSays) {
    const std::vector<PlaceKey> key = drill_key(round);
    for (const auto& [off, right] : {std::pair(0.99, true), std::pair(1.01, false)}) {
        Answers other = perfect;
        for (PlaceAnswer& answer : other.findings)
            *answer.width += off * std::max({0.25 * *answer.width, 0.0005, key[*answer.where.place].plus_minus});
        const DrillResult result = score(round, other);
        for (const PlaceAnswer& answer : other.findings)
            EXPECT_EQ(result.places[*answer.where.place].width, right ? Mark::right : Mark::wrong);
    }
}

INSTANTIATE_TEST_SUITE_P(All, ShippedDrills, testing::ValuesIn(drill_names()), [](const auto& given) {
    std::string name = given.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return "drill_" + name;
});

/// A wall that a scorpion and a mouse get through: what stops only one of them is not right, what stops both is.
TEST(DrillScore, AsksForATreatmentThatStopsEveryAnimal) {
    SurveyBuilder built;
    built.outdoors("yard").cavity("wall").living("den").slot("joint", "yard", "den", 8).slot("narrow", "yard", "den", 0.5);
    built.last().substrates = {"wood"};
    Job job;
    job.survey = built.survey();
    job.survey.gaps[0].substrates = {"wood"};
    job.survey.gaps[0].depth = 0.05;
    job.pests = {*shipped_pests().find("bark-scorpion"), *shipped_pests().find("house-mouse")};
    const DrillRound round = round_on(std::move(job), {{0}, {1}});
    const std::vector<PlaceKey> key = drill_key(round);
    EXPECT_EQ(key[0].passes, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(key[1].state, PlaceState::narrow);
    ASSERT_FALSE(key[0].right.empty());
    for (const RightTreatment& right : key[0].right) {
        EXPECT_FALSE(shipped_treatments().find(right.id)->gnawed) << right.id;
    }
    EXPECT_FALSE(is_right(key[0], "foam", 0));
    EXPECT_FALSE(is_right(key[0], leave_open, 0));
}

/// What is too narrow for the animals is neither due nor false, unless it is told to be far wider.
TEST(DrillScore, LeavesNarrowPlacesAlone) {
    SurveyBuilder built;
    built.outdoors("yard").living("den").slot("narrow", "yard", "den", 0.8).slot("wide", "yard", "den", 6);
    Job job;
    job.survey = built.survey();
    job.pests = {*shipped_pests().find("bark-scorpion")};
    const DrillRound round = round_on(std::move(job), {{0}, {1}});
    Answers answers = closing(round, {0}, "bead");
    answers.findings[0].width = 0.0009;
    EXPECT_TRUE(score(round, answers).false_alarms.empty());
    answers.findings[0].width = 0.000001;
    EXPECT_TRUE(score(round, answers).false_alarms.empty()) << "told too narrow";
    answers.findings[0].width = 0.004;
    EXPECT_EQ(score(round, answers).false_alarms, (std::vector<std::size_t>{0}));
}

}  // namespace
}  // namespace seamward::test
