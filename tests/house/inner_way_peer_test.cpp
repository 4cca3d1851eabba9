// SPDX-License-Identifier: GPL-3.0-or-later
// Ways inside of random and of large figures, against a fine grid.
#include <gtest/gtest.h>

#include <functional>
#include <queue>
#include <random>

#include "house/inner_way.h"
#include "tests/house/ways.h"

namespace seamward::test {
namespace {

/// Length of a shortest way over the points of a grid, each joined to those within three columns and rows: at most 1.3 % longer
/// than the true one, and more by a few cells where it bends.
class Grid {
public:
    Grid(const Figure& figure, Point2 low, double cell, std::size_t columns, std::size_t rows)
        : figure_(figure), low_(low), cell_(cell), columns_(columns), rows_(rows) {
        for (std::size_t i = 0; i < columns * rows; ++i) free_.push_back(inside(figure, point(i)));
    }

    /// Infinite where there is none.
    [[nodiscard]] double length(Point2 from, Point2 to) const {
        using Waiting = std::pair<double, std::size_t>;
        const std::size_t start = nearest(from), goal = nearest(to);
        std::vector<double> walked(free_.size(), std::numeric_limits<double>::infinity());
        std::priority_queue<Waiting, std::vector<Waiting>, std::greater<>> waiting;
        waiting.emplace(walked[start] = 0, start);
        while (!waiting.empty()) {
            const auto [length, at] = waiting.top();
            waiting.pop();
            if (at == goal) return length + between(from, point(start)) + between(point(goal), to);
            if (length > walked[at]) continue;
            const std::size_t column = at % columns_, row = at / columns_;
            for (std::size_t x = column < 3 ? 0 : column - 3; x <= std::min(column + 3, columns_ - 1); ++x) {
                for (std::size_t y = row < 3 ? 0 : row - 3; y <= std::min(row + 3, rows_ - 1); ++y) {
                    const std::size_t next = y * columns_ + x;
                    if (!free_[next] || !clear(point(at), point(next))) continue;
                    const double reached = length + between(point(at), point(next));
                    if (reached < walked[next]) waiting.emplace(walked[next] = reached, next);
                }
            }
        }
        return std::numeric_limits<double>::infinity();
    }

private:
    [[nodiscard]] Point2 point(std::size_t i) const {
        return low_ + Point2{static_cast<double>(i % columns_), static_cast<double>(i / columns_)} * cell_;
    }
    [[nodiscard]] std::size_t nearest(Point2 p) const {
        std::size_t best = 0;
        double distance = std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < free_.size(); ++i) {
            if (!free_[i] || between(p, point(i)) >= distance || !clear(p, point(i))) continue;
            best = i;
            distance = between(p, point(i));
        }
        return best;
    }
    [[nodiscard]] bool clear(Point2 p, Point2 q) const {
        bool clear = true;
        for_each_edge(figure_, [&](Point2 a, Point2 b) { clear = clear && !crosses(a, b, p, q); });
        return clear;
    }

    const Figure& figure_;
    Point2 low_;
    double cell_;
    std::size_t columns_, rows_;
    std::vector<bool> free_;
};

/// A star with rays of random length, 4 m across at most, and square holes that lie apart.
Figure random_figure(std::mt19937& random) {
    std::uniform_real_distribution<double> unit(0, 1);
    Figure figure;
    const int corners = 8 + static_cast<int>(unit(random) * 12);
    for (int i = 0; i < corners; ++i) {
        const double turn = 2 * std::numbers::pi * (i + 0.6 * unit(random)) / corners, ray = 0.7 + 1.3 * unit(random);
        figure.outline.push_back({ray * std::cos(turn), ray * std::sin(turn)});
    }
    for (int x = -3; x <= 3; ++x) {
        for (int y = -3; y <= 3; ++y) {
            if (unit(random) < 0.5) continue;
            const Point2 low{0.4 * x + 0.08 * unit(random), 0.4 * y + 0.08 * unit(random)};
            Loop hole = box(low.x, low.y, low.x + 0.1 + 0.15 * unit(random), low.y + 0.1 + 0.15 * unit(random));
            if (std::any_of(hole.begin(), hole.end(), [&](Point2 p) { return !winds_round(figure.outline, p); })) continue;
            std::reverse(hole.begin(), hole.end());
            figure.holes.push_back(hole);
        }
    }
    return figure;
}

Point2 random_inside(const Figure& figure, std::mt19937& random) {
    std::uniform_real_distribution<double> across(-2, 2);
    while (true) {
        const Point2 p{across(random), across(random)};
        if (inside(figure, p) && distance_to_edges(figure, p) > 0.03) return p;
    }
}

/// Against a fine grid: never longer but for the clearance at corners, and no shorter than a grid's rounding allows.
TEST(InnerWayOfRandomFigures, IsAsShortAsOnAFineGrid) {
    std::mt19937 random(7);
    const double cell = 0.05, clearance = 0.005;
    int bent = 0;
    for (int round = 0; round < 30; ++round) {
        const Figure figure = random_figure(random);
        const Grid grid(figure, {-2, -2}, cell, 81, 81);
        const Point2 from = random_inside(figure, random), to = random_inside(figure, random);
        const Way way = shortest_inside(figure, from, to, clearance);
        const double over_grid = grid.length(from, to);
        if (over_grid > 1e9) continue;  // a passage narrower than a cell
        expect_inside(figure, way);
        bent += way.size() > 2 ? 1 : 0;
        const double off_corners = 4 * clearance * static_cast<double>(way.size() - 2);
        EXPECT_LE(length_of(way), over_grid + off_corners + 1e-9) << round;
        EXPECT_GE(length_of(way), between(from, to) - 1e-9) << round;
        EXPECT_GE(length_of(way) * 1.03 + 2 * cell * static_cast<double>(way.size()), over_grid) << round;
    }
    EXPECT_GE(bent, 12);
}

TEST(InnerWayOfRandomFigures, IsAsLongTheOtherWay) {
    std::mt19937 random(11);
    for (int round = 0; round < 200; ++round) {
        const Figure figure = random_figure(random);
        const Point2 from = random_inside(figure, random), to = random_inside(figure, random);
        const Way there = shortest_inside(figure, from, to, 0.01), back = shortest_inside(figure, to, from, 0.01);
        expect_inside(figure, there);
        EXPECT_NEAR(length_of(there), length_of(back), 1e-9) << round;
        EXPECT_EQ(there, shortest_inside(figure, from, to, 0.01));
    }
}

/// Seven hundred corners that all stand in the way.
TEST(InnerWayOfLargeFigures, WindsThroughACombAndASlalom) {
    Figure comb;
    const int teeth = 170;
    for (int i = 0; i < teeth; ++i) {
        const double x = 0.1 * i;
        comb.outline.insert(comb.outline.end(), {{x, 0}, {x + 0.05, 0}, {x + 0.05, 1}, {x + 0.1, 1}});
    }
    comb.outline.insert(comb.outline.end(), {{0.1 * teeth, 2}, {0, 2}});
    const Way way = shortest_inside(comb, {0.025, 0.1}, {0.1 * teeth - 0.075, 0.1}, 0.01);
    expect_inside(comb, way);
    EXPECT_NEAR(length_of(way), 0.1 * (teeth - 1) + 1.8, 0.1);
    Figure slalom{box(0, 0, 20, 2), {}};
    for (int i = 0; i < 90; ++i)
        slalom.holes.push_back(box(0.2 * i + 0.5, i % 2 == 0 ? -1 : 0.2, 0.2 * i + 0.55, i % 2 == 0 ? 1.8 : 3));
    const Way winding = shortest_inside(slalom, {0.2, 1}, {19.5, 1}, 0.01);
    EXPECT_GT(winding.size(), 150U);
    EXPECT_GT(length_of(winding), 89 * 1.6);
}

}  // namespace
}  // namespace seamward::test
