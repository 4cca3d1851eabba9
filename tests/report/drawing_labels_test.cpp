// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawing_labels.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <random>

namespace seamward {
namespace {

std::vector<Balloon> balloons_at(const std::vector<Point2>& sites) {
    std::vector<Balloon> balloons;
    for (const Point2 site : sites) balloons.push_back({std::to_string(balloons.size() + 1), false, balloons.size(), site, {}});
    return balloons;
}

TEST(DrawingLabels, LeastAssignmentAgreesWithTryingAll) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> cost(0, 10);
    for (int round = 0; round < 60; ++round) {
        const std::size_t things = 1 + random() % 5, places = things + random() % 3;
        std::vector<std::vector<double>> costs(things, std::vector<double>(places));
        for (auto& row : costs) {
            for (double& value : row) value = cost(random);
        }
        std::vector<std::size_t> order(places);
        std::iota(order.begin(), order.end(), 0U);
        double best = 1e9;
        do {
            double sum = 0;
            for (std::size_t i = 0; i < things; ++i) sum += costs[i][order[i]];
            best = std::min(best, sum);
        } while (std::next_permutation(order.begin(), order.end()));
        const std::vector<std::size_t> found = least_assignment(costs);
        double sum = 0;
        for (std::size_t i = 0; i < things; ++i) sum += costs[i][found[i]];
        EXPECT_NEAR(sum, best, 1e-9);
        std::vector<std::size_t> sorted = found;
        std::sort(sorted.begin(), sorted.end());
        EXPECT_EQ(std::adjacent_find(sorted.begin(), sorted.end()), sorted.end()) << "a place taken twice";
    }
}

TEST(DrawingLabels, SegmentsMeet) {
    EXPECT_TRUE(segments_meet({0, 0}, {2, 2}, {0, 2}, {2, 0}));
    EXPECT_FALSE(segments_meet({0, 0}, {1, 1}, {2, 2}, {3, 3}));
    EXPECT_TRUE(segments_meet({0, 0}, {2, 2}, {1, 1}, {3, 3}));
    EXPECT_FALSE(segments_meet({0, 0}, {1, 0}, {0, 0.1}, {1, 0.1}));
    EXPECT_TRUE(segments_meet({0, 0}, {1, 0}, {0.5, 0}, {0.5, 1}));
}

/// Balloons off each other, off the drawing, and no leader across another or through a balloon: by points along the leaders.
void expect_clear(const std::vector<Balloon>& balloons, const PaperBox& drawing) {
    const auto distance = [](Point2 a, Point2 b) { return std::hypot(a.x - b.x, a.y - b.y); };
    for (const Balloon& one : balloons) {
        const double radius = one.size / 2;
        EXPECT_TRUE(one.at.x + radius < drawing.low.x || one.at.x - radius > drawing.high.x ||
                    one.at.y + radius < drawing.low.y || one.at.y - radius > drawing.high.y)
            << one.text << " over the drawing";
        for (const Balloon& other : balloons) {
            if (&one == &other) continue;
            EXPECT_GT(distance(one.at, other.at), one.size) << one.text << " over " << other.text;
            for (int i = 0; i <= 200; ++i) {
                const Point2 p = one.site + (one.leader_end() - one.site) * (i / 200.0);
                ASSERT_GT(distance(p, other.at), other.size / 2) << one.text << " through " << other.text;
            }
            EXPECT_FALSE(segments_meet(one.site, one.leader_end(), other.site, other.leader_end()))
                << one.text << ' ' << other.text;
        }
    }
}

TEST(DrawingLabels, RandomGapsGetClearLeaders) {
    std::mt19937 random(20261127);
    for (int round = 0; round < 60; ++round) {
        std::uniform_real_distribution<double> side(0, 90);
        const double across = 60 + side(random), up = 30 + side(random);
        const PaperBox drawing{{0, 0}, {across, up}};
        std::uniform_real_distribution<double> x(0, drawing.width()), y(0, drawing.height());
        std::vector<Point2> sites(1 + random() % 40);
        for (Point2& site : sites) site = {x(random), y(random)};
        std::vector<Balloon> balloons = balloons_at(sites);
        static_cast<void>(place_balloons(balloons, drawing, {round % 2 == 0, 12}));
        ASSERT_EQ(balloons.size(), sites.size());
        ASSERT_EQ(label_conflicts(balloons), 0U) << "round " << round << ", " << sites.size() << " gaps";
        expect_clear(balloons, drawing);
        // Marks stay where the gaps are, but for what parts them.
        for (std::size_t i = 0; i < sites.size(); ++i)
            EXPECT_LT(std::hypot(balloons[i].site.x - sites[i].x, balloons[i].site.y - sites[i].y), 4) << i;
    }
}

TEST(DrawingLabels, GapsInOnePlaceArePartedAndToldApart) {
    std::vector<Balloon> balloons = balloons_at(std::vector<Point2>(6, Point2{30, 0}));
    const PaperBox drawing{{0, 0}, {60, 40}};
    static_cast<void>(place_balloons(balloons, drawing, {true, 12}));
    expect_clear(balloons, drawing);
    for (const Balloon& balloon : balloons) EXPECT_LT(std::hypot(balloon.site.x - 30, balloon.site.y), 8);
}

TEST(DrawingLabels, RowsGoOutWhereThereAreMoreBalloonsThanPlaces) {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> x(0, 50), y(0, 20);
    std::vector<Point2> sites(70);
    for (Point2& site : sites) site = {x(random), y(random)};
    std::vector<Balloon> balloons = balloons_at(sites);
    const PaperBox row = place_balloons(balloons, {{0, 0}, {50, 20}}, {true, 12});
    EXPECT_GT(row.height(), 150);
    EXPECT_LE(row.width(), 74.001);  // beside the drawing it keeps to the margin
    for (const Balloon& one : balloons) {
        for (const Balloon& other : balloons) {
            EXPECT_TRUE(&one == &other || std::hypot(one.at.x - other.at.x, one.at.y - other.at.y) > one.size);
        }
    }
}

TEST(DrawingLabels, NoBalloonsNoRow) {
    std::vector<Balloon> none;
    const PaperBox row = place_balloons(none, {{0, 0}, {50, 20}}, {true, 12});
    EXPECT_EQ(row.width(), 50);
    EXPECT_EQ(row.height(), 20);
}

}  // namespace
}  // namespace seamward
