// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/trace.h"

#include <gtest/gtest.h>

#include <limits>
#include <set>

#include "catalog/shipped.h"
#include "tests/support/brute_force.h"
#include "tests/support/random_survey.h"
#include "tests/support/survey_builder.h"

namespace seamward::test {
namespace {

Pest pest(const std::string& id, double slit_mm, double hole_mm) {
    Pest p;
    p.id = id;
    p.size = {slit_mm / 1000, hole_mm / 1000};
    return p;
}

/// A path counts when some pest gets through each of its gaps with plus_minus added; `maybe` when none does without.
TEST(TracePests, AgreesWithBruteForceOnRandomSurveysOfAllShapes) {
    std::set<bool> seen;
    std::size_t compared = 0;
    for (std::uint64_t seed = 0; seed < 1500; ++seed) {
        const Survey survey = random_survey({.spaces = 6,
                                             .gaps = 13,
                                             .distinct_widths = 12,
                                             .outdoors_share = 0.1,
                                             .living_share = 0.15,
                                             .source_share = 0.05,
                                             .located_share = seed % 2 == 0 ? 1.0 : 0.7,
                                             .shapes = true},
                                            seed);
        const std::vector<Pest> pests =
            seed % 3 == 0 ? std::vector{pest("flat", 2, 12)} : std::vector{pest("flat", 2, 15), pest("round", 6, 6)};
        std::vector<std::string> expected;
        for (const EntryPath& path : all_paths(survey, {}, [](const Gap&) { return true; })) {
            const auto passes_all = [&](const Pest& p, bool with_plus_minus) {
                return std::all_of(path.gaps.begin(), path.gaps.end(),
                                   [&](GapIndex gap) { return gets_through(survey[gap], p, with_plus_minus); });
            };
            const bool counts = std::any_of(pests.begin(), pests.end(), [&](const Pest& p) { return passes_all(p, true); });
            const bool sure = std::any_of(pests.begin(), pests.end(), [&](const Pest& p) { return passes_all(p, false); });
            if (counts) expected.push_back(text(survey, path) + (sure ? "" : " maybe"));
            if (counts) seen.insert(sure);
        }
        std::vector<std::string> told;
        for (const RankedPath& ranked : trace(survey, {pests, {}, std::numeric_limits<std::size_t>::max()}, RunContext()).paths) {
            told.push_back(text(survey, ranked.path) + (ranked.maybe ? " maybe" : ""));
        }
        ASSERT_EQ(told, expected) << "seed " << seed;
        compared += told.size();
    }
    EXPECT_EQ(seen.size(), 2U) << "both sure and doubtful paths must occur";
    EXPECT_GT(compared, 2000U);
}

TEST(TracePests, SizesArePinchedAtTheStatedWidthEvenWhereOnlyDoubtLetsThePestIn) {
    SurveyBuilder house;
    house.outdoors("yard").living("den").slot("joint", "yard", "den", 1.4);
    house.last().evidence.plus_minus = 0.0002;
    const Trace result = trace(house.survey(), {.pests = {pest("p", 1.5, 4)}}, RunContext());
    ASSERT_EQ(result.paths.size(), 1U);
    EXPECT_TRUE(result.paths[0].maybe);
    EXPECT_EQ(result.paths[0].pinch, 0.0014);
    EXPECT_TRUE(open_to(house.survey(), result.paths[0].path, std::vector{pest("p", 1.5, 4)}).empty());
    EXPECT_TRUE(trace(house.survey(), {.pests = {pest("p", 1.7, 4)}}, RunContext()).paths.empty());
}

TEST(TracePests, AJointDrawnShutThatMayBeOpenIsADoubtfulWay) {
    SurveyBuilder house;
    house.outdoors("yard").living("den").slot("joint", "yard", "den", 0);
    house.last().evidence.plus_minus = 0.002;
    const Trace result = trace(house.survey(), {.pests = {pest("p", 1.5, 4)}}, RunContext());
    ASSERT_EQ(result.paths.size(), 1U);
    EXPECT_EQ(result.paths[0].pinch, 0);
    EXPECT_EQ(result.rooms.at(0).pinch, 0);
    EXPECT_TRUE(result.rooms.at(0).maybe);
    EXPECT_TRUE(trace(house.survey(), {}, RunContext()).paths.empty());
}

TEST(TracePests, ARoomIsDoubtfulOnlyWhenItsWidestWayIs) {
    SurveyBuilder house;
    house.outdoors("yard").living("den").slot("narrow", "yard", "den", 1.4).slot("sure", "yard", "den", 1.6);
    house.last().evidence.plus_minus = 0.0005;
    EXPECT_FALSE(trace(house.survey(), {.pests = {pest("p", 1.5, 4)}}, RunContext()).rooms.at(0).maybe);
    EXPECT_TRUE(trace(house.survey(), {.pests = {pest("p", 2, 4)}}, RunContext()).rooms.at(0).maybe);
}

TEST(TracePests, TheSameDoubtfulWidthInSumsIsNotLostToRounding) {
    SurveyBuilder house;
    house.outdoors("yard").living("den").slot("joint", "yard", "den", 1.2);
    house.last().evidence.plus_minus = 0.0003;  // 0.0012 + 0.0003 is less than 0.0015 in doubles
    EXPECT_EQ(trace(house.survey(), {.pests = {pest("p", 1.5, 4)}}, RunContext()).paths.size(), 1U);
}

TEST(Trace, AShutGapIsNoWay) {
    SurveyBuilder house;
    house.outdoors("yard").living("den").slot("shut", "yard", "den", 0).slot("pointless", "yard", "den", 3);
    house.last().shape = Slot{0.003, 0};
    EXPECT_TRUE(trace(house.survey(), {}, RunContext()).paths.empty());
}

TEST(Trace, ANeighborsUnitStartsPathsAndEndsThem) {
    SurveyBuilder house;
    house.outdoors("yard").space("unit-2", SpaceKind::living, true).cavity("party-wall").living("den");
    house.slot("a", "unit-2", "party-wall", 4).slot("b", "party-wall", "den", 3).slot("c", "yard", "party-wall", 2);
    std::vector<std::string> told;
    for (const RankedPath& ranked : trace(house.survey(), {}, RunContext()).paths)
        told.push_back(text(house.survey(), ranked.path));
    EXPECT_EQ(told,
              (std::vector<std::string>{"unit-2>a>party-wall>b>den", "yard>c>party-wall>a>unit-2", "yard>c>party-wall>b>den"}));
}

TEST(Trace, RoomsAreTheEndsThatAreNoStarts) {
    SurveyBuilder house;
    house.outdoors("yard").space("unit-2", SpaceKind::living, true).living("den").living("closet").slot("a", "yard", "den", 4);
    const Trace result = trace(house.survey(), {}, RunContext());
    ASSERT_EQ(result.rooms.size(), 2U);
    EXPECT_EQ(result.rooms[0].space, house["den"]);
    EXPECT_EQ(result.rooms[0].pinch, 0.004);
    EXPECT_EQ(result.rooms[1].pinch, std::nullopt);
}

TEST(Trace, RoomsAreOpenToThosePestsThatHaveSomeWayIntoThem) {
    SurveyBuilder house;
    house.outdoors("yard").cavity("wall").living("den").living("bath").living("vault");
    house.slot("screed", "yard", "wall", 2)
        .slot("sink", "wall", "den", 5)
        .slot("tub", "wall", "bath", 1)
        .slot("door", "yard", "bath", 7);
    const std::vector<Pest> pests{pest("thin", 0.8, 2), pest("thick", 6, 6)};
    const Trace result = trace(house.survey(), {}, RunContext());
    const auto open = rooms_open_to(house.survey(), {}, result.rooms, pests);
    EXPECT_EQ(open, (std::vector<std::vector<std::size_t>>{{0}, {0, 1}, {}}));
}

TEST(Trace, OfNothingIsNothing) {
    const Trace result = trace(Survey(), {}, RunContext());
    EXPECT_TRUE(result.paths.empty());
    EXPECT_TRUE(result.rooms.empty());
}

/// A chain as long as a tower has spaces: no recursion may run out of stack, and the one path is found whole.
TEST(Trace, AWayOfAHundredThousandSpacesIsFound) {
    constexpr std::uint32_t length = 100'000;
    Survey survey;
    for (std::uint32_t i = 0; i <= length; ++i) {
        survey.spaces.push_back({"s" + std::to_string(i), "",
                                 i == 0        ? SpaceKind::outdoors
                                 : i == length ? SpaceKind::living
                                               : SpaceKind::cavity});
        if (i == 0) continue;
        Gap gap;
        gap.id = "g" + std::to_string(i);
        gap.between = {SpaceIndex{i - 1}, SpaceIndex{i}};
        gap.shape = Slot{0.002, 1};
        gap.at = Point{0.1 * i, 0, 0};
        survey.gaps.push_back(gap);
    }
    const Trace result = trace(survey, {}, RunContext());
    ASSERT_EQ(result.paths.size(), 1U);
    EXPECT_EQ(result.paths[0].path.gaps.size(), length);
}

}  // namespace
}  // namespace seamward::test
