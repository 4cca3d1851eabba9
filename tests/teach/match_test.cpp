// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/match.h"

#include <gtest/gtest.h>

#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

/// A place named by its number, by the id of its gap and by its point is one place.
TEST(Match, AgreesByNumberByIdAndByPoint) {
    for (const std::string& name : drill_names()) {
        const DrillRound& round = shipped_drill(name);
        const Answers by_number = perfect_answers(round, "Ines Aguirre");
        Answers by_id = by_number, by_point = by_number;
        for (PlaceAnswer& answer : by_id.findings)
            answer.where = {std::nullopt, round.places[*answer.where.place].gap, std::nullopt};
        std::size_t points = 0;
        for (PlaceAnswer& answer : by_point.findings) {
            const DrillPlace& place = round.places[*answer.where.place];
            // Two gaps may lie at one point, such as a shower arm and the spout below it: that one has to be named.
            const Matched there = match(round, {std::nullopt, std::nullopt, place.at});
            if (!place.at || there.place != answer.where.place) continue;
            answer.where = {std::nullopt, std::nullopt, place.at};
            ++points;
        }
        EXPECT_GE(points * 10, by_point.findings.size() * 7) << name;
        EXPECT_EQ(score(round, by_id).points, score(round, by_number).points) << name;
        EXPECT_EQ(score(round, by_point).points, score(round, by_number).points) << name;
    }
}

TEST(Match, TakesAnyPointAlongALongJoint) {
    const DrillRound& round = shipped_drill("6-sighting");
    const GapIndex joint = gap_of(round, "screed-joint-east");
    const Point at = *round.job.survey[joint].at;
    for (const double y : {0.5, 3.0, 9.0, 11.5}) {
        EXPECT_NEAR(distance_to(round.job, joint, {at.x, y, at.z}), 0, 1e-9) << y;
        EXPECT_NEAR(distance_to(round.job, joint, {at.x + 0.1, y, at.z}), 0.1, 1e-9) << y;
    }
    EXPECT_GT(distance_to(round.job, joint, {at.x, 14, at.z}), 2.0);
}

TEST(Match, TakesNothingBeyondReach) {
    const DrillRound& round = shipped_drill("1-corner");
    const Point at = *round.places[place_of(round, "bibb-outside")].at;
    EXPECT_EQ(match(round, {std::nullopt, std::nullopt, Point{at.x, at.y, at.z}}).place, place_of(round, "bibb-outside"));
    EXPECT_FALSE(match(round, {std::nullopt, std::nullopt, Point{at.x, at.y - 5, at.z}}).place);
    EXPECT_FALSE(match(round, {std::nullopt, std::nullopt, Point{at.x, at.y - 5, at.z}}).gap);
}

/// Of a point that is none of the drill's places, the gap of the job that is there.
TEST(Match, KnowsGapsOutsideOfTheDrill) {
    const DrillRound& round = shipped_drill("1-corner");
    const GapIndex shower = gap_of(round, "shower-arm");
    const Matched matched = match(round, {std::nullopt, std::nullopt, round.job.survey[shower].at});
    EXPECT_FALSE(matched.place);
    EXPECT_EQ(matched.gap, shower);
}

/// Each place goes to one answer: a number before a point, the nearer point before the farther one.
TEST(Match, IsOneToOne) {
    const DrillRound& round = shipped_drill("1-corner");
    const std::size_t bibb = place_of(round, "bibb-outside");
    const Point at = *round.places[bibb].at;
    PlaceAnswer near, far, number;
    near.where.at = Point{at.x + 0.01, at.y, at.z};
    far.where.at = Point{at.x + 0.05, at.y, at.z};
    number.where.place = bibb;
    const std::vector<PlaceAnswer> points{far, near};
    std::vector<Matched> matched = match_findings(round, points);
    EXPECT_TRUE(matched[0].again);
    EXPECT_FALSE(matched[1].again);
    const std::vector<PlaceAnswer> all{near, far, number};
    matched = match_findings(round, all);
    EXPECT_TRUE(matched[0].again && matched[1].again && !matched[2].again);
    const std::vector<PlaceAnswer> alike{near, near};
    matched = match_findings(round, alike);
    EXPECT_TRUE(!matched[0].again && matched[1].again);
}

}  // namespace
}  // namespace seamward::test
