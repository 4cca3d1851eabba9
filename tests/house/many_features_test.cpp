// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of many, at short walls too, and houses with thousands of features: counts come out right, and building takes time in
// proportion.
#include <gtest/gtest.h>

#include <numeric>

#include "house/runs.h"
#include "tests/house/plain_house.h"

namespace seamward::test {
namespace {

const Gap* gap_of(const House& house, const std::string& id) {
    for (const Gap& gap : house.survey.gaps) {
        if (gap.id == id) return &gap;
    }
    return nullptr;
}

/// An inner corner with a jog too short for eaves, at each of several lengths, the outline begun at each of its corners.
TEST(Jogs, LeaveNoRunOfNegativeLength) {
    for (const double jog : {0.5, 0.6, 0.75, 0.9}) {
        for (std::size_t first = 0; first < 6; ++first) {
            char top[64];
            std::snprintf(top, sizeof top, "%.2f m", 6 + jog);
            std::vector<std::string> corners{"[0 m, 0 m]",
                                             "[8 m, 0 m]",
                                             "[8 m, 6 m]",
                                             "[4 m, 6 m]",
                                             "[4 m, " + std::string(top) + "]",
                                             "[0 m, " + std::string(top) + "]"};
            std::rotate(corners.begin(), corners.begin() + static_cast<std::ptrdiff_t>(first), corners.end());
            PlainHouse plain;
            plain.outline = "[";
            for (const std::string& corner : corners) plain.outline += (plain.outline.size() > 1 ? ", " : "") + corner;
            plain.outline += "]";
            plain.roof = "{shape: hip, pitch: 4/12, overhang: 0.9 m}";
            plain.foundation = "{kind: crawl-space, above_grade: 0.8 m, height: 0.7 m, space: crawl}";
            plain.more =
                "features:\n"
                "  - {id: vents, type: soffit-vent, count: 24}\n"
                "  - {id: joint, type: soffit-joint}\n"
                "  - {id: crawl-vents, type: crawl-vent, count: 20}\n"
                "  - {id: row, type: ";
            for (const char* type : {"eave-baffle", "rafter-blocking-hole"}) {
                PlainHouse one = plain;
                one.more += std::string(type) + "}\n";
                const House house = one.build(Make::survey);
                EXPECT_EQ(gap_of(house, "vents")->count, 24U);
                EXPECT_EQ(gap_of(house, "crawl-vents")->count, 20U);
                EXPECT_GT(gap_of(house, "row")->count, 20U) << type;
                EXPECT_LT(gap_of(house, "row")->count, 50U) << type;
            }
        }
    }
}

TEST(Jogs, HaveRoomForNothingOnTheirOwn) {
    PlainHouse plain;
    plain.outline = "[[0 m, 0 m], [8 m, 0 m], [8 m, 6 m], [4 m, 6 m], [4 m, 6.5 m], [0 m, 6.5 m]]";
    plain.roof = "{shape: hip, pitch: 4/12, overhang: 0.4 m}";
    plain.more = "features: [{id: f, type: rafter-blocking-hole, on: wall-4}]\n";
    EXPECT_NE(plain.faults().find("the eave is too short for it"), std::string::npos) << plain.faults();
}

struct Stretch {
    double size = 0;
    [[nodiscard]] double length() const { return size; }
};

TEST(Shares, AddUpAndAreNeverMoreThanThereAre) {
    for (const std::vector<double>& lengths :
         {std::vector<double>{3, 2, 1}, {-1, 4, 4}, {4, -0.6, 4, -0.6}, {-1, -1}, {0}, {5, 1e-9}}) {
        std::vector<Stretch> runs;
        for (const double length : lengths) runs.push_back({length});
        for (const std::uint32_t pieces : {0U, 1U, 7U, 10000U}) {
            const std::vector<std::uint32_t> shares = shares_of(pieces, runs);
            const std::uint64_t sum = std::accumulate(shares.begin(), shares.end(), std::uint64_t{0});
            const bool any = std::any_of(lengths.begin(), lengths.end(), [](double length) { return length > 0; });
            EXPECT_EQ(sum, any ? pieces : 0);
            for (std::size_t i = 0; i < runs.size(); ++i) EXPECT_TRUE(lengths[i] > 0 || shares[i] == 0);
        }
    }
}

PlainHouse long_house(const std::string& features) {
    PlainHouse plain;
    plain.outline = "[[0 m, 0 m], [400 m, 0 m], [400 m, 6 m], [0 m, 6 m]]";
    plain.foundation = "{kind: crawl-space, above_grade: 0.8 m, height: 0.7 m, space: crawl}";
    plain.more = "features:\n" + features;
    return plain;
}

/// Each of these takes minutes when every cut is held against every other.
TEST(ManyFeatures, RowsOfTenThousand) {
    const House house =
        long_house(
            "  - {id: pipes, type: wall-pipe, on: wall-3, along: 200 m, up: 1 m, count: 10000, around: 5 mm, gap: 1 mm, spacing: "
            "0.03 m}\n"
            "  - {id: holes, type: ceiling-hole, on: ceiling, at: [200 m, 3 m], count: 10000, gap: 5 mm, spacing: 0.03 m}\n"
            "  - {id: other, type: outside-hole, on: wall-3, along: 10 m, up: 2 m}\n")
            .build(Make::survey);
    EXPECT_EQ(gap_of(house, "pipes-outside")->count, 10000U);
    EXPECT_EQ(gap_of(house, "holes")->count, 10000U);
}

TEST(ManyFeatures, HundredsOfDucts) {
    std::string features;
    for (int i = 0; i < 300; ++i) {
        const std::string number = std::to_string(i), at = std::to_string(1 + i) + " m";
        features += "  - {id: duct-" + number + ", type: dryer-floor-duct, on: floor, at: [" + at + ", 3 m], space: air-" +
                    number + "}\n";
        features += "  - {id: joint-" + number + ", type: duct-joint, space: air-" + number + "}\n";
    }
    EXPECT_EQ(long_house(features).build(Make::survey).survey.gaps.size(), 900U);
}

TEST(ManyFeatures, AClashIsToldOnce) {
    const std::string faults =
        long_house(
            "  - {id: a, type: wall-pipe, on: wall-3, along: 200 m, up: 1 m, count: 100, spacing: 0.1 m}\n"
            "  - {id: b, type: wall-pipe, on: wall-3, along: 200 m, up: 1 m, count: 100, spacing: 0.1 m}\n")
            .faults();
    EXPECT_EQ(std::count(faults.begin(), faults.end(), '\n'), 0) << faults;
    EXPECT_NE(faults.find("feature b: it runs into another opening of"), std::string::npos) << faults;
}

TEST(ManyFeatures, ACancelStopsThem) {
    RunContext context;
    const HouseDescription described =
        parse_house_yaml(long_house("  - {id: a, type: ceiling-hole, on: ceiling, at: [200 m, 3 m]}\n").text(), "h.yaml");
    context.cancel();
    EXPECT_THROW((void)build_house(described, {}, Make::survey, context), Cancelled);
}

/// What the catalog gives a spacing and no count is there as often as there is room.
TEST(Rows, AreAsLongAsTheirHost) {
    PlainHouse plain;
    plain.more =
        "block_walls: [{id: blocks, height: 1.6 m, points: [[14 m, 1 m], [14 m, 6 m]]}]\n"
        "features:\n"
        "  - {id: weeps, type: brick-weep-hole, on: wall-1}\n"
        "  - {id: about, type: brick-weep-hole, on: wall-2, along: 2 m}\n"
        "  - {id: one, type: brick-weep-hole, on: wall-3, along: 2 m, count: 1}\n"
        "  - {id: cells, type: block-cell-top, on: blocks}\n";
    const House house = plain.build();
    EXPECT_EQ(gap_of(house, "weeps")->count, 14U);
    EXPECT_EQ(gap_of(house, "about")->count, 4U);
    EXPECT_EQ(gap_of(house, "one")->count, 1U);
    EXPECT_EQ(gap_of(house, "cells")->count, 22U);
}

}  // namespace
}  // namespace seamward::test
