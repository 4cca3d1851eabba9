// SPDX-License-Identifier: GPL-3.0-or-later
// Features whose line says something that cannot be: on the wrong kind of thing, past its end, larger than it, too short to be
// drawn. Each is told once, in words that say what would do.
#include <gtest/gtest.h>

#include "tests/house/plain_house.h"

namespace seamward::test {
namespace {

/// Two rooms, a door between them, a window, a block wall that meets the house.
PlainHouse house_with(const std::string& features) {
    PlainHouse plain;
    plain.foundation = "{kind: crawl-space, above_grade: 0.8 m, height: 0.7 m, space: crawl}";
    plain.rooms = "[{id: left, at: [2 m, 2 m]}, {id: right, at: [9 m, 2 m]}]";
    plain.more =
        "partitions: [{id: middle, from: [6 m, 0 m], to: [6 m, 8 m], assembly: wall}]\n"
        "openings:\n"
        "  - {id: inner-door, in: middle, along: 3 m, width: 0.8 m, height: 2 m}\n"
        "  - {id: front-door, in: wall-1, along: 3 m, width: 0.9 m, height: 2 m}\n"
        "  - {id: window, kind: window, in: wall-3, along: 3 m, width: 1.2 m, height: 1 m}\n"
        "block_walls: [{id: blocks, height: 1.6 m, points: [[12 m, 4 m], [15 m, 4 m]]}]\n"
        "features:\n" +
        features;
    return plain;
}

std::string faults(const std::string& feature) { return house_with("  - {id: f, " + feature + "}\n").faults(); }

std::size_t lines(const std::string& text) {
    return text.empty() ? 0 : 1 + static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

/// One fault, and it says so.
void expect_told(const std::string& feature, const std::string& words) {
    const std::string told = faults(feature);
    EXPECT_NE(told.find(words), std::string::npos) << feature << "\n" << told;
    EXPECT_EQ(lines(told), 1U) << told;
}

const Gap* gap_of(const House& house, const std::string& id) {
    for (const Gap& gap : house.survey.gaps) {
        if (gap.id == id) return &gap;
    }
    return nullptr;
}

TEST(FeatureHosts, MustBeOfTheTypesKind) {
    expect_told("type: dryer-outlet, on: middle, along: 1 m", "middle is a partition, and dryer-outlet does not go on that");
    expect_told("type: meter-can, on: middle, along: 1 m", "meter-can goes on an outside wall");
    expect_told("type: weep-screed, on: middle", "does not go on that");
    expect_told("type: hose-bibb, on: front-door", "front-door is a door or a window");
    expect_told("type: window-sash, on: wall-1", "wall-1 is an outside wall, and window-sash does not go on that");
    expect_told("type: partition-pipe, on: wall-1, along: 5 m", "partition-pipe goes on a partition");
    expect_told("type: outlet, on: blocks, along: 1 m", "blocks is a block wall");
    expect_told("type: recessed-light, on: wall-1, at: [2 m, 2 m]", "recessed-light goes on a ceiling");
    expect_told("type: recessed-light, on: floor, at: [2 m, 2 m]", "floor is the floor");
    expect_told("type: supply-register, on: wall-1, at: [2 m, 2 m]", "goes on a ceiling or a floor");
    expect_told("type: soffit-vent, on: front-door", "soffit-vent goes on an eave");
    expect_told("type: crawl-vent, on: middle", "crawl-vent goes on a foundation");
    expect_told("type: roof-vent, on: wall-1, at: [6 m, 2 m]", "roof-vent goes on a roof");
    expect_told("type: outlet, on: wal-1, along: 5 m", "there is no wall, partition or opening \"wal-1\"");
}

TEST(FeatureHosts, TakeOnlyTheirKeys) {
    const std::string fan = "type: bath-fan, at: [3 m, 3 m], space: duct}\n  - {id: cap, type: exhaust-cap, space: duct, ";
    expect_told(fan + "on: wall-4", "on says nothing of it: it ends the duct whose air it names");
    expect_told(fan + "at: [1 m, 1 m]", "at says nothing of it");
    expect_told("type: roof-vent, at: [6 m, 2 m], along: 3 m", "along says nothing of it: it goes on a roof");
    expect_told("type: attic-hatch, at: [2 m, 2 m], up: 3 m", "up says nothing of it");
    expect_told("type: outlet, on: wall-1, along: 5 m, at: [2 m, 2 m]", "at says nothing of it");
    expect_told("type: soffit-vent, at: [2 m, 2 m]", "at says nothing of it");
    expect_told("type: door-sweep, on: front-door, side: left", "side says nothing of it");
    expect_told("type: outlet, on: wall-1, along: 5 m, space: air", "it has no air inside");
    expect_told("type: outlet, on: wall-1, along: 5 m, source: true", "it has no air inside");
    expect_told("type: dryer-outlet, on: wall-1, along: 6 m, count: 2",
                "count says nothing of it: it is one thing with its own air");
    expect_told("type: bath-fan, at: [3 m, 3 m], count: 2", "count says nothing of it");
    expect_told("type: door-sweep, on: front-door, count: 2", "count says nothing of it: it is a joint");
}

TEST(FeaturePlaces, LieOnTheirWall) {
    expect_told("type: outlet, on: wall-2, along: 9 m", "along 9.00 m is past the end of wall 2, which is 8.00 m long");
    expect_told("type: meter-can, on: wall-3, along: 500 m", "along 500.00 m is past the end of wall 3, which is 12.00 m long");
    expect_told("type: meter-can, on: wall-2, along: 7.95 m", "is past the end of wall 2, which is 8.00 m long");
    expect_told("type: dryer-outlet, on: wall-3, along: 8 m, up: 50 m", "up 50.00 m is past the edge of wall 3");
    expect_told("type: siding-laps, on: wall-3, up: 25 m", "up 25.00 m is past the edge of wall 3");
    expect_told("type: tub-edge, on: wall-3, along: 6 m, up: 25 m, length: 1 m", "up 25.00 m is past the edge");
    expect_told("type: top-plate-hole, on: wall-3, along: 13 m", "along 13.00 m is past the end of wall 3");
    expect_told("type: combustion-air-opening, on: front-door, along: 50 m",
                "is past the end of front-door, which is 0.90 m long");
    expect_told("type: secondary-drain, on: wall-1, along: 50 m", "along 50.00 m is past the end of the eave of wall 1");
    expect_told("type: water-main, on: wall-1, along: 50 m", "along 50.00 m is past the end of the foundation");
    expect_told("type: outside-hole, on: blocks, up: 9 m", "is past the edge of");
}

TEST(FeatureSizes, FitTheirHost) {
    expect_told("type: slab-sill-joint, on: wall-3, gap: 5 m", "is past the edge of");
    expect_told("type: door-sweep, on: front-door, gap: 3 m", "up 0.00 m to 3.00 m is past the edge of front-door");
    expect_told("type: soffit-joint, on: wall-3, gap: 2 m", "it is 2.00 m across, and soffit along wall 3 is");
    expect_told("type: door-corner, on: front-door, length: 5 m",
                "length 5.00 m is longer than there is room for on front-door, 0.30 m");
    expect_told("type: soffit-joint, on: wall-1, length: 50 m", "length 50.00 m is longer than the eaves that it is on");
    expect_told("type: sill-plate-joint, on: wall-1, length: 50 m", "length 50.00 m is longer than what it is on, 12.00 m");
    expect_told("type: mantel-joint, on: wall-3, along: 6 m, length: 50 m", "length 50.00 m is longer than wall 3");
    expect_told("type: brick-weep, on: wall-2, count: 101, spacing: 3 m", "a row of 101, one every 3.00 m, is 300.01 m long");
    expect_told("type: wall-pipe, on: wall-2, along: 4 m, up: 1 m, count: 9, spacing: 2 m", "about its middle there 4 fit");
    expect_told(
        "type: recessed-light, at: [2 m, 2 m], count: 5, spacing: 1 m",
        "a row of 5, one every 1.00 m, is 4.16 m long and would reach from x -0.08 m to 4.08 m: ceiling of left leaves room "
        "from x 0.10 m to 5.93 m; about its middle there 4 fit");
}

TEST(FeatureSizes, EnteredAreThoseCut) {
    const House house = house_with(
                            "  - {id: corner, type: door-corner, on: front-door, length: 0.2 m}\n"
                            "  - {id: laps, type: siding-laps, on: wall-2}\n"
                            "  - {id: joint, type: soffit-joint, on: wall-1, length: 12 m}\n")
                            .build();
    EXPECT_NEAR(std::get<Slot>(gap_of(house, "corner")->shape).length, 0.2, 1e-9);
    EXPECT_GT(std::get<Slot>(gap_of(house, "joint")->shape).length, 11);
}

/// What was closed has no width and stays where it was, also along an edge that is no upright rectangle's.
TEST(FeatureSizes, MayBeNothing) {
    const PlainHouse plain =
        house_with("  - {id: joint, type: soffit-joint}\n  - {id: sweep, type: door-sweep, on: front-door}\n");
    const HouseDescription described = parse_house_yaml(plain.text(), "house.yaml");
    const House shut = build_house(described, {{"joint", 0}, {"sweep", 0}}, Make::solids, RunContext());
    for (const Gap& gap : shut.survey.gaps) EXPECT_EQ(clear_width(gap.shape), 0) << gap.id;
}

TEST(FeatureSizes, TooSmallToDrawAreTold) {
    expect_told("type: soffit-joint, length: 1/2 in", "length is too short; make it 20 mm or more");
    expect_told("type: rim-joist-crack, on: wall-1, length: 15 mm", "length is too short");
    expect_told("type: sill-plate-joint, on: wall-1, length: 15 mm", "length is too short");
    expect_told("type: mantel-joint, on: wall-3, along: 6 m, length: 15 mm", "there is no room for it");
}

TEST(FeatureSpacing, HasALeast) {
    expect_told("type: floor-boards, at: [2 m, 2 m], spacing: 0 m", "spacing is less than 5 mm");
    expect_told("type: siding-laps, on: wall-3, spacing: 0.001 mm", "spacing is less than 5 mm");
    expect_told("type: soffit-vent, spacing: 0.001 mm", "spacing is less than 5 mm");
    expect_told("type: joist-pocket, on: wall-1, spacing: 0.001 mm", "spacing is less than 5 mm");
    expect_told("type: weep-screed, on: wall-3, spacing: 0.001 mm", "spacing is less than 5 mm");
}

}  // namespace
}  // namespace seamward::test
