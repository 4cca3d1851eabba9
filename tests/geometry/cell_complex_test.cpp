// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/cell_complex.h"

#include <gtest/gtest.h>
#include <oneapi/tbb/global_control.h>

#include <numeric>
#include <random>

#include "tests/support/plain_solids.h"

namespace seamward::test {
namespace {

constexpr double tolerance = 1e-5;
constexpr double half = 3;  // meters; of the box that is cut

/// So many small boxes, some running into each other: enough that what is ahead of a plane and behind it is cut at the same time.
FlatFacets random_boxes(std::size_t count, unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> place(-2, 1.5), side(0.02, 0.4);
    std::vector<TriangleMesh> boxes;
    for (std::size_t i = 0; i < count; ++i) {
        const Point low{place(random), place(random), place(random)};
        boxes.push_back(box_mesh(low, low + Vector{side(random), side(random), side(random)}));
    }
    return flat_facets(boxes, tolerance);
}

CellComplex cut(const FlatFacets& facets) {
    return cell_complex(facets, {-half, -half, -half}, {half, half, half}, tolerance, RunContext());
}

TEST(CellComplex, CellsFillTheBox) {
    const CellComplex complex = cut(random_boxes(150, 1));
    const double volume = std::accumulate(complex.cells.begin(), complex.cells.end(), 0.0,
                                          [](double sum, const Cell& cell) { return sum + cell.volume; });
    EXPECT_NEAR(volume, 8 * half * half * half, 1e-6);
    for (std::uint32_t i = 0; i < complex.cells.size(); ++i) {
        if (complex.cells[i].volume > 1e-9) {
            EXPECT_EQ(complex.cell_at(complex.cells[i].middle), i);
        }
    }
}

TEST(CellComplex, IsTheSameOnOneCoreAndOnMany) {
    const FlatFacets facets = random_boxes(600, 2);
    const CellComplex many = cut(facets);
    const oneapi::tbb::global_control one_only(oneapi::tbb::global_control::max_allowed_parallelism, 1);
    const CellComplex one = cut(facets);
    ASSERT_GT(facets.facets.size(), 3000U);
    ASSERT_EQ(one.cells.size(), many.cells.size());
    ASSERT_EQ(one.portals.size(), many.portals.size());
    ASSERT_EQ(one.cuts.size(), many.cuts.size());
    for (std::size_t i = 0; i < one.cells.size(); ++i) {
        EXPECT_EQ(distance(one.cells[i].middle, many.cells[i].middle), 0);
        EXPECT_EQ(one.cells[i].volume, many.cells[i].volume);
    }
    for (std::size_t i = 0; i < one.cuts.size(); ++i) EXPECT_EQ(one.cuts[i].side, many.cuts[i].side);
    EXPECT_EQ(one.cut_above, many.cut_above);
    EXPECT_EQ(one.cut_of_cell, many.cut_of_cell);
    for (std::size_t i = 0; i < one.portals.size(); ++i) {
        const Portal &a = one.portals[i], &b = many.portals[i];
        EXPECT_EQ(std::tie(a.front, a.back, a.first, a.count), std::tie(b.front, b.back, b.first, b.count));
    }
    for (std::size_t i = 0; i < one.corners.size(); ++i) EXPECT_EQ(distance(one.corners[i], many.corners[i]), 0);
}

TEST(CellComplex, ASideAroundASegmentHoldsAllThatIsNear) {
    const CellComplex complex = cut(random_boxes(200, 3));
    std::mt19937 random(4);
    std::uniform_real_distribution<double> place(-2, 2), step(-0.05, 0.05), part(0, 1), off(-1, 1);
    constexpr double reach = 1e-3;
    std::size_t smaller = 0;
    for (int i = 0; i < 2000; ++i) {
        const Point from{place(random), place(random), place(random)};
        const Point to = from + Vector{step(random), step(random), step(random)};
        const std::uint32_t side = complex.side_around(from, to, reach);
        smaller += side != complex.whole() ? 1 : 0;
        for (int k = 0; k < 10; ++k) {
            const Vector aside = Vector{off(random), off(random), off(random)} * (0.57 * reach);
            const Point near = from + (to - from) * part(random) + aside;
            EXPECT_EQ(complex.cell_at(near, side), complex.cell_at(near));
        }
    }
    EXPECT_GT(smaller, 1000U);
}

TEST(CellComplex, WithoutFacetsTheBoxIsOneCell) {
    const CellComplex complex = cut({});
    ASSERT_EQ(complex.cells.size(), 1U);
    EXPECT_EQ(complex.cell_at({0, 0, 0}), 0U);
    EXPECT_EQ(complex.side_around({0, 0, 0}, {1, 0, 0}, 0.1), complex.whole());
}

}  // namespace
}  // namespace seamward::test
