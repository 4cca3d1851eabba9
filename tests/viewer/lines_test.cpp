// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "adapt/polydata.h"
#include "adapt/room_middle.h"
#include "adapt/way_line.h"

namespace seamward::viewer::test {
namespace {

double length_of(const std::vector<Point>& line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i) sum += distance(line[i - 1], line[i]);
    return sum;
}

TEST(SmoothLegs, GoThroughEveryStop) {
    const std::vector<Point> stops{{0, 0, 0}, {4, 0, 1}, {4, 3, 2.5}, {1, 3, 0}};
    const auto legs = smooth_legs(stops);
    ASSERT_EQ(legs.size(), 3U);
    for (std::size_t i = 0; i < legs.size(); ++i) {
        EXPECT_LT(distance(legs[i].front(), stops[i]), 1e-9);
        EXPECT_LT(distance(legs[i].back(), stops[i + 1]), 1e-9);
    }
}

TEST(SmoothLegs, AreStraightBetweenTwoStops) {
    const auto legs = smooth_legs(std::vector<Point>{{0, 0, 0}, {3, 4, 0}});
    ASSERT_EQ(legs.size(), 1U);
    EXPECT_NEAR(length_of(legs[0]), 5, 1e-9);
}

TEST(SmoothLegs, AreEmptyBetweenStopsInOnePlace) {
    const auto legs = smooth_legs(std::vector<Point>{{0, 0, 0}, {1, 0, 0}, {1, 0, 0}, {2, 5, 0}});
    ASSERT_EQ(legs.size(), 3U);
    EXPECT_TRUE(legs[1].empty());
    EXPECT_LT(distance(legs[2].back(), {2, 5, 0}), 1e-9);
    EXPECT_TRUE(smooth_legs({}).empty());
}

/// Half of a line is drawn, in dashes of the length asked for, wherever its points lie.
TEST(Dashes, AreEvenlyLong) {
    std::vector<Point> line;
    for (int i = 0; i <= 1000; ++i) line.push_back({i * 0.03, 0, 0});
    for (const std::vector<Point>& given : {line, std::vector<Point>{line.front(), line.back()}}) {
        const auto all = dashes(given, 0.3);
        EXPECT_EQ(all.size(), 50U);
        for (const std::vector<Point>& dash : all) EXPECT_NEAR(length_of(dash), 0.3, 1e-6);
    }
}

Survey two_way_survey() {
    Survey survey;
    survey.spaces.resize(4);
    const auto gap = [&](std::uint32_t from, std::uint32_t to, std::optional<Point> at) {
        Gap made{.between = {SpaceIndex{from}, SpaceIndex{to}}, .shape = Slot{0.002, 1}};
        made.at = at;
        survey.gaps.push_back(made);
    };
    gap(0, 1, Point{1000, 2000, 0});
    gap(1, 2, std::nullopt);
    gap(2, 3, Point{1008, 2000, 3});
    return survey;
}

TEST(WayLine, SaysWhereAPositionIsMissing) {
    const Survey survey = two_way_survey();
    const EntryPath path{{{0}, {1}, {2}, {3}}, {{0}, {1}, {2}}};
    const auto frame = picture_frame(survey);
    ASSERT_TRUE(frame);
    const WayLine way = way_line(survey, path, *frame);
    ASSERT_EQ(way.stops.size(), 2U);
    EXPECT_EQ(way.stops[1].step, 2U);
    ASSERT_EQ(way.legs.size(), 1U);
    EXPECT_FALSE(way.legs[0].sure);
    EXPECT_NEAR(way.stops[0].at.x, -4, 1e-9);  // the scene's middle is at 0
    EXPECT_NEAR(way.stops[1].at.z - way.stops[0].at.z, 3, 1e-9);
    EXPECT_NEAR(length_of(way.legs[0].line), distance(way.stops[0].at, way.stops[1].at), 1e-9);
    EXPECT_EQ(arrow_points(way, 0.1, 0.01)->GetNumberOfPoints(), 0);
    // Neither is it told as one of the other ways.
    const std::vector<RankedPath> all{{path, 0.002, {0}}};
    EXPECT_TRUE(joint_lines(survey, all, nullptr, *frame).empty());
}

/// What is known on both sides of the missing position is drawn as ever, and does not bend because of it.
TEST(WayLine, GoesOnAfterAMissingPosition) {
    Survey survey;
    survey.spaces.resize(7);
    EntryPath path{{{0}}, {}};
    const std::vector<std::optional<Point>> at{Point{0, 0, 0}, Point{3, 0, 0}, std::nullopt, Point{9, 9, 2}, Point{9, 12, 2}};
    for (std::uint32_t i = 0; i < at.size(); ++i) {
        Gap gap{.between = {SpaceIndex{i}, SpaceIndex{i + 1}}, .shape = Slot{0.002, 1}};
        gap.at = at[i];
        survey.gaps.push_back(gap);
        path.gaps.push_back({i});
        path.spaces.push_back({i + 1});
    }
    const WayLine way = way_line(survey, path, *picture_frame(survey));
    ASSERT_EQ(way.stops.size(), 4U);
    ASSERT_EQ(way.legs.size(), 3U);
    EXPECT_TRUE(way.legs[0].sure && !way.legs[1].sure && way.legs[2].sure);
    EXPECT_NEAR(length_of(way.legs[0].line), 3, 1e-9);
    EXPECT_NEAR(length_of(way.legs[2].line), 3, 1e-9);
}

TEST(PictureFrame, IsAroundEveryGapAndItsGroundUnderThem) {
    Survey survey = two_way_survey();
    survey.spaces[0].kind = SpaceKind::outdoors;
    survey.spaces[1].kind = SpaceKind::harborage;  // a gap in a yard wall
    survey.gaps[0].at = Point{950, 2000, -0.7};
    const auto frame = picture_frame(survey);
    ASSERT_TRUE(frame);
    for (const Gap& gap : survey.gaps) {
        if (!gap.at) continue;
        const Point at = frame->to_scene(*gap.at);
        EXPECT_GT(at.z, 0);
        EXPECT_LE(frame->gaps.low.x, at.x);
        EXPECT_GE(frame->gaps.high.x, at.x);
        EXPECT_LE(at.z, frame->gaps.high.z);
    }
    EXPECT_NEAR(frame->gaps.low.z, 0, 1e-9);
}

TEST(RoomMiddles, AreAmidTheGapsThatHaveAPosition) {
    Survey survey = two_way_survey();
    survey.spaces[1].kind = SpaceKind::living;
    survey.spaces[3].kind = SpaceKind::living;
    Gap more = survey.gaps[0];
    more.at = Point{1000, 2004, 2};
    survey.gaps.push_back(more);
    const auto rooms = room_middles(survey);
    ASSERT_EQ(rooms.size(), 2U);
    EXPECT_EQ(rooms[0].room, SpaceIndex{1});
    EXPECT_NEAR(distance(rooms[0].at, {1000, 2002, 1}), 0, 1e-9);
    EXPECT_NEAR(distance(rooms[1].at, {1008, 2000, 3}), 0, 1e-9);
}

TEST(PictureFrame, IsNothingWithoutPositions) {
    Survey survey = two_way_survey();
    for (Gap& gap : survey.gaps) gap.at.reset();
    EXPECT_FALSE(picture_frame(survey));
}

TEST(SymbolOf, TellsShapesAndClosedGaps) {
    EXPECT_EQ(symbol_of({.shape = Slot{0.001, 1}}), Symbol::slot);
    EXPECT_EQ(symbol_of({.shape = Hole{0.001}}), Symbol::hole);
    EXPECT_EQ(symbol_of({.shape = Ring{0.001, 0.02}}), Symbol::ring);
    EXPECT_EQ(symbol_of({.shape = Mesh{0.001, std::nullopt}}), Symbol::mesh);
    EXPECT_EQ(symbol_of({.shape = Hole{0}}), Symbol::shut);
}

}  // namespace
}  // namespace seamward::viewer::test
