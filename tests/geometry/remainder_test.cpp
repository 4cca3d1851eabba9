// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/remainder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <random>

#include "tests/support/polygon_peer.h"
#include "tests/support/random_loops.h"

namespace seamward::test {
namespace {

Loop box(double left, double bottom, double right, double top) {
    return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

Loop circle(Point2 middle, double radius, int sides) {
    Loop loop;
    for (int i = 0; i < sides; ++i) {
        const double angle = 2 * std::numbers::pi * i / sides;
        loop.push_back(middle + Point2{std::cos(angle), std::sin(angle)} * radius);
    }
    return loop;
}

double area_of(const Figure& figure) {
    double doubled = doubled_area(figure.outline);
    for (const Loop& hole : figure.holes) doubled += doubled_area(hole);
    return doubled / 2;
}

std::vector<Figure> figures_of(const std::vector<CutFigure>& pieces) {
    std::vector<Figure> figures;
    for (const CutFigure& piece : pieces) figures.push_back(piece.figure);
    return figures;
}

double distance_to(const Loop& loop, Point2 p) {
    double nearest = 1e9;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 a = loop[i], along = loop[(i + 1) % loop.size()] - a;
        const double at = std::clamp(dot(p - a, along) / dot(along, along), 0.0, 1.0);
        const Point2 off = a + along * at - p;
        nearest = std::min(nearest, std::hypot(off.x, off.y));
    }
    return nearest;
}

/// Each edge lies on what it is said to come from: the cut, or that edge of the outline.
void expect_true_tags(const std::vector<CutFigure>& pieces, const Loop& outline, const std::vector<Loop>& cuts) {
    for (const CutFigure& piece : pieces) {
        std::vector<Loop> loops{piece.figure.outline};
        loops.insert(loops.end(), piece.figure.holes.begin(), piece.figure.holes.end());
        std::size_t edge = 0;
        for (const Loop& loop : loops) {
            for (std::size_t i = 0; i < loop.size(); ++i, ++edge) {
                ASSERT_LT(edge, piece.cut_of_edge.size());
                const std::int32_t tag = piece.cut_of_edge[edge];
                for (const double share : {0.1, 0.5, 0.9}) {
                    const Point2 p = loop[i] + (loop[(i + 1) % loop.size()] - loop[i]) * share;
                    if (tag >= 0) {
                        EXPECT_LT(distance_to(cuts.at(static_cast<std::size_t>(tag)), p), 1e-8);
                    } else {
                        const auto k = static_cast<std::size_t>(-1 - tag);
                        ASSERT_LT(k, outline.size());
                        EXPECT_LT(distance_to({outline[k], outline[(k + 1) % outline.size()]}, p), 1e-8);
                        for (const Loop& cut : cuts) EXPECT_TRUE(distance_to(cut, p) > 0 || !is_inside(cut, p));
                    }
                }
            }
        }
        EXPECT_EQ(edge, piece.cut_of_edge.size());
    }
}

/// Area for area what exact numbers give, piece by piece, and triangles that fill each piece.
void expect_as_exact(const Loop& outline, const std::vector<Loop>& cuts) {
    const std::vector<CutFigure> pieces = remainder(outline, cuts);
    std::vector<ExactPiece> found;
    for (const CutFigure& piece : pieces) found.push_back({area_of(piece.figure), piece.figure.holes.size()});
    std::sort(found.begin(), found.end(), [](const ExactPiece& a, const ExactPiece& b) { return a.area < b.area; });
    std::vector<ExactPiece> exact = exact_remainder(outline, cuts);
    ASSERT_EQ(found.size(), exact.size());
    for (std::size_t i = 0; i < exact.size(); ++i) {
        EXPECT_NEAR(found[i].area, exact[i].area, 1e-11) << i;
        EXPECT_EQ(found[i].holes, exact[i].holes) << i;
    }
    EXPECT_LT(area_of_difference(figures_of(pieces), outline, cuts), 1e-11);
    expect_true_tags(pieces, outline, cuts);
    for (const CutFigure& piece : pieces) EXPECT_EQ(fault_of_tiling(piece.figure, triangulate(piece.figure)), "");
}

TEST(Remainder, IsThePolygonWhereNothingIsCut) {
    const Loop outline{{0, 0}, {4, 0}, {4, 1}, {1, 1}, {1, 3}, {0, 3}};
    const auto pieces = remainder(outline, {});
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_EQ(pieces[0].figure.outline, outline);
    EXPECT_TRUE(pieces[0].figure.holes.empty());
    EXPECT_EQ(pieces[0].cut_of_edge, (std::vector<std::int32_t>{-1, -2, -3, -4, -5, -6}));
    const std::vector<Loop> beside{box(5, 0, 6, 1), box(2, 2, 3, 3), box(4, 0, 5, 1)};
    EXPECT_EQ(remainder(outline, beside).at(0).figure.outline, outline);
}

TEST(Remainder, KeepsWhereEachEdgeComesFrom) {
    const Loop outline = box(0, 0, 10, 3);
    const std::vector<Loop> cuts{box(2, 1, 3, 2), box(5, -1, 6, 2)};
    const auto pieces = remainder(outline, cuts);
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_EQ(pieces[0].figure.outline, (Loop{{0, 0}, {5, 0}, {5, 2}, {6, 2}, {6, 0}, {10, 0}, {10, 3}, {0, 3}}));
    ASSERT_EQ(pieces[0].figure.holes.size(), 1U);
    EXPECT_LT(doubled_area(pieces[0].figure.holes[0]), 0);
    EXPECT_EQ(pieces[0].cut_of_edge, (std::vector<std::int32_t>{-1, 1, 1, 1, -1, -2, -3, -4, 0, 0, 0, 0}));
}

TEST(Remainder, CountsEdgesOfClockwiseLoopsFromTheirOwnCorners) {
    const Loop outline{{0, 0}, {0, 3}, {10, 3}, {10, 0}};
    const auto pieces = remainder(outline, std::vector<Loop>{{{2, 1}, {2, 2}, {3, 2}, {3, 1}}});
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_EQ(pieces[0].figure.outline, (Loop{{0, 0}, {10, 0}, {10, 3}, {0, 3}}));
    EXPECT_EQ(pieces[0].cut_of_edge, (std::vector<std::int32_t>{-4, -3, -2, -1, 0, 0, 0, 0}));
    expect_true_tags(pieces, outline, {box(2, 1, 3, 2)});
}

TEST(Remainder, IsNothingWhereCutsCoverAll) {
    const Loop outline = box(0, 0, 10, 3);
    EXPECT_TRUE(remainder(outline, std::vector<Loop>{outline}).empty());
    EXPECT_TRUE(remainder(outline, std::vector<Loop>{box(-1, -1, 11, 4)}).empty());
    EXPECT_TRUE(remainder(outline, std::vector<Loop>{box(-1, -1, 5, 4), box(5, -1, 11, 4)}).empty());
    EXPECT_TRUE(remainder(outline, std::vector<Loop>{box(0, 0, 5, 3), box(4, 0, 10, 3)}).empty());
}

TEST(Remainder, FallsIntoPiecesInTheOrderOfTheirCorners) {
    const Loop outline = box(0, 0, 10, 3);
    const auto pieces = remainder(outline, std::vector<Loop>{box(6, -1, 7, 4), box(2, 0, 3, 3)});
    ASSERT_EQ(pieces.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i) EXPECT_EQ(pieces[i].figure.outline.front(), (Point2{std::array{0., 3., 7.}.at(i), 0}));
    const auto turned = remainder(outline, std::vector<Loop>{box(2, 0, 3, 3), box(6, -1, 7, 4)});
    for (std::size_t i = 0; i < 3; ++i) EXPECT_EQ(turned[i].figure.outline, pieces[i].figure.outline);
}

/// What walls and their openings do: at edges, over corners, side by side, over each other, one in another, in rings.
TEST(Remainder, AgreesWithExactNumbersWhereEdgesMeet) {
    const Loop outline = box(0, 0, 10, 3);
    const std::vector<std::vector<Loop>> cases{
        {box(2, 0, 3, 2)},                                                             // a door
        {box(2, 0, 3, 2), box(3, 0, 4, 2)},                                            // two side by side
        {box(2, 0, 3, 2), box(3, 1, 4, 2.5)},                                          // sharing a part of an edge
        {box(-1, -1, 1, 1), box(9, 2, 11, 4)},                                         // at corners
        {box(0, 0, 1, 1), box(9, 2, 10, 3)},                                           // in corners
        {box(1, 1, 5, 2), box(2, 0.5, 3, 2.5), box(4, 1.5, 6, 1.8)},                   // over each other
        {box(1, 1, 5, 2), box(2, 1.2, 3, 1.8)},                                        // in another
        {box(1, 1, 5, 2), box(1, 1, 5, 2)},                                            // the same twice
        {box(1, 0.5, 4, 1), box(1, 2, 4, 2.5), box(1, 1, 1.5, 2), box(3.5, 1, 4, 2)},  // a ring
        {box(0, 1, 10, 2)},                                                            // from side to side
        {box(-1, 2.5, 11, 4)},                                                         // all along the top
        {circle({5, 1.5}, 1, 24), circle({5, 1.5}, 0.5, 24), circle({9.9, 2.9}, 0.5, 24)},
        {box(2, 1, 3, 1), box(4, 1, 4, 2)},             // without area
        {box(2, 1, 3, 2), {{3, 1.5}, {4, 1}, {4, 2}}},  // a corner on an edge
    };
    for (std::size_t i = 0; i < cases.size(); ++i) {
        SCOPED_TRACE(i);
        expect_as_exact(outline, cases[i]);
    }
}

Loop random_cut(std::mt19937& random, int kind) {
    const Point2 low{uniform(random, -1, 12), uniform(random, -1, 10)}, size{uniform(random, 0.1, 5), uniform(random, 0.1, 5)};
    if (kind == 0) return box(low.x, low.y, low.x + size.x, low.y + size.y);
    if (kind == 1) return circle(low, size.x / 2, 3 + static_cast<int>(pick(random, 22)));
    Loop star = random_star(random, 3 + pick(random, 6), 0.3);
    for (Point2& p : star) p = low + p * 0.4;
    return star;
}

class RandomRemainder : public testing::TestWithParam<unsigned> {};

TEST_P(RandomRemainder, AgreesWithExactNumbers) {
    std::mt19937 random(GetParam());
    for (int round = 0; round < 50; ++round) {
        SCOPED_TRACE(round);
        Loop outline;
        switch (round % 3) {
            case 0: outline = random_rectilinear(random, 4 + pick(random, 14), 0.8); break;
            case 1: outline = random_star(random, 5 + pick(random, 12), 0.8); break;
            default: outline = random_convex(random, 4 + pick(random, 8), 0.8); break;
        }
        std::vector<Loop> cuts;
        for (std::size_t i = pick(random, 8); i > 0; --i) cuts.push_back(random_cut(random, static_cast<int>(pick(random, 3))));
        if (pick(random, 2) == 0) outline = turned_by(outline, uniform(random, 0, 6));
        if (pick(random, 3) == 0) std::reverse(outline.begin(), outline.end());
        if (!cuts.empty() && pick(random, 3) == 0) std::reverse(cuts[0].begin(), cuts[0].end());
        expect_as_exact(outline, cuts);
        if (HasFailure()) return;
    }
}

/// On a grid corners lie on edges and edges on edges all the time.
TEST_P(RandomRemainder, AgreesWithExactNumbersOnAGrid) {
    std::mt19937 random(1000 + GetParam());
    for (int round = 0; round < 50; ++round) {
        SCOPED_TRACE(round);
        const Loop outline = box(0, 0, 3 + static_cast<double>(pick(random, 6)), 3 + static_cast<double>(pick(random, 4)));
        std::vector<Loop> cuts;
        for (std::size_t i = 1 + pick(random, 6); i > 0; --i) {
            const Point2 low{static_cast<double>(pick(random, 8)), static_cast<double>(pick(random, 6))};
            cuts.push_back(box(low.x, low.y, low.x + 1 + static_cast<double>(pick(random, 3)),
                               low.y + 1 + static_cast<double>(pick(random, 3))));
        }
        expect_as_exact(outline, cuts);
        if (HasFailure()) return;
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomRemainder, testing::Range(1U, 9U));

TEST(Triangulate, FillsFiguresWithHoles) {
    const Figure figure{box(0, 0, 10, 3), {{{1, 1}, {1, 2}, {2, 2}, {2, 1}}, {{3, 1}, {3, 2}, {4, 1.5}}}};
    const auto triangles = triangulate(figure);
    EXPECT_EQ(triangles.size(), 11U + 2U);
    EXPECT_EQ(fault_of_tiling(figure, triangles), "");
}

TEST(Triangulate, RefusesEdgesThatCross) {
    EXPECT_THROW((void)triangulate({{{0, 0}, {1, 1}, {1, 0}, {0, 1}}, {}}), std::logic_error);
    EXPECT_THROW((void)triangulate({box(0, 0, 3, 3), {{{2, 1}, {2, 2}, {4, 2}, {4, 1}}}}), std::logic_error);
}

TEST(IsInside, ToldByAngles) {
    std::mt19937 random(5);
    for (int round = 0; round < 200; ++round) {
        const Loop loop = random_star(random, 5 + pick(random, 10), 0.5);
        const Point2 p{uniform(random, -8, 8), uniform(random, -8, 8)};
        double sum = 0;
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Point2 a = loop[i] - p, b = loop[(i + 1) % loop.size()] - p;
            sum += std::atan2(cross(a, b), dot(a, b));
        }
        EXPECT_EQ(is_inside(loop, p), sum > 3) << round;
    }
}

TEST(IsSimple, SeesCrossingAndTouchingEdges) {
    EXPECT_TRUE(is_simple(box(0, 0, 1, 1)));
    EXPECT_FALSE(is_simple({{0, 0}, {1, 1}, {1, 0}, {0, 1}}));
    EXPECT_FALSE(is_simple({{0, 0}, {2, 0}, {2, 2}, {1, 0}, {0, 2}}));
    EXPECT_FALSE(is_simple({{0, 0}, {1, 1}}));
    std::mt19937 random(6);
    for (int round = 0; round < 100; ++round) EXPECT_TRUE(is_simple(random_rectilinear(random, 4 + pick(random, 16), 0.8)));
}

}  // namespace
}  // namespace seamward::test
