// SPDX-License-Identifier: GPL-3.0-or-later
// Where walls meet: outlines moved in and out, walls too thick for their corners, features that come near to one.
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "house/layout.h"
#include "tests/house/plain_house.h"
#include "tests/support/random_loops.h"

namespace seamward::test {
namespace {

std::vector<double> all_by(const Loop& outline, double by) { return std::vector<double>(outline.size(), by); }

/// Each edge lies parallel to where it was, as far out as asked for.
TEST(OffsetOutline, MovesEachEdgeByItsOwnDistance) {
    std::mt19937 random(9);
    for (int round = 0; round < 100; ++round) {
        const Loop outline = round % 2 == 0 ? random_star(random, 5 + pick(random, 10), 0.8)
                                            : random_rectilinear(random, 4 + pick(random, 12), 0.8);
        std::vector<double> by;
        for (std::size_t i = 0; i < outline.size(); ++i) by.push_back(uniform(random, -0.1, 0.1));
        const Loop moved = offset_outline(outline, by);
        ASSERT_EQ(moved.size(), outline.size());
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const std::size_t next = (i + 1) % outline.size();
            const Point2 along = outline[next] - outline[i];
            const Point2 right{along.y / std::hypot(along.x, along.y), -along.x / std::hypot(along.x, along.y)};
            EXPECT_NEAR(dot(moved[i] - outline[i], right), by[i], 1e-9);
            EXPECT_NEAR(dot(moved[next] - outline[i], right), by[i], 1e-9);
        }
    }
}

TEST(OffsetOutline, PassesACornerThatIsNone) {
    const Loop outline{{0, 0}, {2, 0}, {5, 0}, {5, 4}, {0, 4}};
    const Loop moved = offset_outline(outline, all_by(outline, 0.5));
    EXPECT_NEAR(moved[1].x, 2, 1e-12);
    EXPECT_NEAR(moved[1].y, -0.5, 1e-12);
}

TEST(KeepsShape, SeesEdgesThatTurnedAround) {
    const Loop strip = rectangle({0, 0}, {5, 1});
    EXPECT_TRUE(keeps_shape(strip, offset_outline(strip, all_by(strip, -0.45))));
    EXPECT_FALSE(keeps_shape(strip, offset_outline(strip, all_by(strip, -0.55))));  // simple again, but inside out
    EXPECT_FALSE(keeps_shape(strip, offset_outline(strip, all_by(strip, -3))));
    const Loop nook{{0, 0}, {6, 0}, {6, 4}, {3.5, 4}, {3.5, 1}, {2.5, 1}, {2.5, 4}, {0, 4}};
    EXPECT_TRUE(keeps_shape(nook, offset_outline(nook, all_by(nook, 0.45))));
    EXPECT_FALSE(keeps_shape(nook, offset_outline(nook, all_by(nook, 0.55))));
}

TEST(KeepsShape, SeesWhatCrosses) {
    // Two corners that pass each other slantwise: no edge turns.
    const Loop neck{{0, 0}, {3, 0}, {3, 3}, {6, 3}, {6, 6}, {2.8, 6}, {2.8, 3.2}, {0, 3.2}};
    EXPECT_TRUE(keeps_shape(neck, offset_outline(neck, all_by(neck, -0.08))));
    EXPECT_FALSE(keeps_shape(neck, offset_outline(neck, all_by(neck, -0.2))));
}

TEST(Corners, WallsTooThickForTheOutlineAreRefused) {
    PlainHouse plain;
    plain.roof = "{shape: hip, pitch: 4/12, overhang: 0.1 m}";
    plain.outline =
        "[[0 m, 0 m], [6 m, 0 m], [6 m, 4 m], [3.1 m, 4 m], [3.1 m, 0.18 m], [2.5 m, 0.18 m], [2.5 m, 4 m], [0 m, 4 m]]";
    plain.rooms = "[{id: left, at: [1 m, 2 m]}, {id: right, at: [5 m, 2 m]}]";
    EXPECT_NE(plain.faults().find("narrower than they are thick"), std::string::npos) << plain.faults();
    plain.outline =
        "[[0 m, 0 m], [6 m, 0 m], [6 m, 4 m], [3.1 m, 4 m], [3.1 m, 0.36 m], [2.5 m, 0.36 m], [2.5 m, 4 m], [0 m, 4 m]]";
    plain.rooms = "[{id: all, at: [1 m, 2 m]}]";
    EXPECT_EQ(plain.faults(), "");
    plain.foundation = "{kind: crawl-space}";
    EXPECT_NE(plain.faults().find("two foundation walls run into each other"), std::string::npos) << plain.faults();
}

TEST(Corners, ShortWallsBetweenThickOnesAreRefused) {
    PlainHouse plain;
    plain.outline = "[[0 m, 0 m], [8 m, 0 m], [8 m, 0.7 m], [0 m, 0.7 m]]";
    plain.roof = "{shape: hip, pitch: 4/12, overhang: 0.1 m}";
    plain.rooms = "[{id: room, at: [4 m, 0.35 m]}]";
    std::string text = plain.text();
    text.replace(text.find("89 mm"), 5, "300 mm");
    try {
        (void)build_house(parse_house_yaml(text, "house.yaml"), {}, Make::survey, RunContext());
        ADD_FAILURE() << "it was built";
    } catch (const BadInput& bad) {
        EXPECT_NE(std::string(bad.what()).find("leave no room for the air in it"), std::string::npos) << bad.what();
    }
}

/// Behind a sharp corner the inner layers of a wall begin far from it.
TEST(Corners, OpeningsKeepClearOfSharpCorners) {
    PlainHouse plain;
    plain.outline = "[[0 m, 0 m], [10 m, 0 m], [10 m, 4 m]]";
    plain.rooms = "[{id: room, at: [8 m, 1 m]}]";
    const auto with_window = [&](const std::string& along) {
        plain.more = "openings: [{id: window, kind: window, in: wall-1, along: " + along + ", width: 0.6 m, height: 1 m}]\n";
        return plain.faults();
    };
    EXPECT_NE(with_window("0.6 m").find("window does not fit into"), std::string::npos);
    EXPECT_EQ(with_window("1.2 m"), "");
}

/// At an inner corner the end of a thick cladding slants inward.
TEST(Corners, FeaturesKeepClearOfInnerCornersOfThickCladding) {
    PlainHouse plain;
    plain.outline = "[[0 m, 0 m], [12 m, 0 m], [12 m, 4 m], [5 m, 4 m], [5 m, 9 m], [0 m, 9 m]]";
    const auto with_feature = [&](const std::string& line) {
        plain.more = "features: [" + line + "]\n";
        std::string text = plain.text();
        text.replace(text.find("of: stucco, thick: 22 mm"), 24, "of: stucco, thick: 0.15 m");
        try {
            const House house = build_house(parse_house_yaml(text, "house.yaml"), {}, Make::solids, RunContext());
            for (const Part& part : house.parts) EXPECT_EQ(fault_of_solid(part.mesh), "") << part.id;
            return std::string();
        } catch (const BadInput& bad) {
            return std::string(bad.what());
        }
    };
    const std::string bibb = "{id: bibb, type: hose-bibb, on: wall-4, inside: none, along: ";
    EXPECT_NE(with_feature(bibb + "0.1 m}").find("reaches past the end of"), std::string::npos);
    EXPECT_EQ(with_feature(bibb + "0.3 m}"), "");
    EXPECT_EQ(with_feature("{id: joint, type: stucco-top, on: wall-4}"), "");
    EXPECT_EQ(with_feature("{id: joint, type: fascia-joint, on: [wall-3, wall-4]}"), "");
}

}  // namespace
}  // namespace seamward::test
