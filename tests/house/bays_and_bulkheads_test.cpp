// SPDX-License-Identifier: GPL-3.0-or-later
// Features where air changes along their host: from stud bay to stud bay, from a room into a bulkhead, from the attic into an
// eave, from one side of a partition to the other.
#include <gtest/gtest.h>

#include "tests/house/plain_house.h"
#include "tests/support/gap_ruler.h"
#include "tests/support/leak_finder.h"

namespace seamward::test {
namespace {

PlainHouse house_with(const std::string& features, const std::string& more = "") {
    PlainHouse plain;
    plain.rooms = "[{id: left, at: [2 m, 2 m]}, {id: right, at: [9 m, 2 m]}]";
    plain.more =
        "partitions: [{id: middle, from: [6 m, 0 m], to: [6 m, 8 m], assembly: wall}]\n" + more + "features:\n" + features;
    return plain;
}

const std::string bays = "stud_bays: [{on: wall-3, spacing: 0.6 m}]\n";
const std::string box = "bulkheads: [{id: box, from: [0.5 m, 7 m], to: [3 m, 7.898 m], drop: 0.4 m}]\n";

std::string between(const House& house, const std::string& id) {
    for (const Gap& gap : house.survey.gaps) {
        if (gap.id == id) return house.survey[gap.between[0]].id + " " + house.survey[gap.between[1]].id;
    }
    return "no such gap";
}

bool told(const PlainHouse& house, const std::string& words) {
    const std::string faults = house.faults();
    EXPECT_NE(faults.find(words), std::string::npos) << faults;
    return faults.find(words) != std::string::npos;
}

void expect_measured(const House& house) {
    const GapRuler ruler(house.parts);
    for (const GapPlace& place : house.places) {
        const Gap& gap = house.survey[place.gap];
        EXPECT_NEAR(ruler.width_of(place.gap).smallest, clear_width(gap.shape), 1e-6) << gap.id;
        EXPECT_TRUE(is_clear(house, place.through)) << gap.id;
    }
}

/// The bay of wall 3 at a place along it: studs stand every 0.6 m from the first one.
TEST(StudBays, DuctsCansAndOutletsLeadIntoTheBayWhereTheyAre) {
    const House house = house_with(
                            "  - {id: dryer, type: dryer-outlet, on: wall-3, along: 9 m}\n"
                            "  - {id: can, type: meter-can, on: wall-3, along: 4.2 m}\n"
                            "  - {id: plug, type: outlet, on: wall-3, along: 9 m}\n",
                            bays)
                            .build();
    const std::string bay = between(house, "plug").substr(0, between(house, "plug").find(' '));
    EXPECT_NE(bay, "wall-3-bay-1");
    EXPECT_EQ(between(house, "dryer-outside"), "yard " + bay);
    EXPECT_EQ(between(house, "dryer-inside"), bay + " left");
    EXPECT_NE(between(house, "can-back"), "can-air wall-3-bay-1");
    EXPECT_NE(between(house, "can-back"), "can-air " + bay);
    expect_measured(house);
}

TEST(StudBays, JointsAreOneGapForEachBay) {
    const House house = house_with("  - {id: sill, type: slab-sill-joint, on: wall-3}\n", bays).build();
    std::size_t bay_count = 0;
    for (const Space& space : house.survey.spaces) bay_count += space.id.starts_with("wall-3-bay-") ? 1 : 0;
    EXPECT_EQ(house.survey.gaps.size(), bay_count);
    double length = 0;
    for (const Gap& gap : house.survey.gaps) {
        const std::string number = gap.id.substr(gap.id.rfind('-'));
        EXPECT_EQ(between(house, gap.id), "yard wall-3-bay" + number);
        length += std::get<Slot>(gap.shape).length;
    }
    EXPECT_GT(length, 10);
    expect_measured(house);
}

TEST(StudBays, GapsOfBaysAreMeasuredOneByOne) {
    const PlainHouse plain = house_with("  - {id: sill, type: slab-sill-joint, on: wall-3}\n", bays);
    const HouseDescription described = parse_house_yaml(plain.text(), "house.yaml");
    const House house = build_house(described, {{"sill-bay-3", 0.004}}, Make::survey, RunContext());
    for (const Gap& gap : house.survey.gaps) EXPECT_EQ(clear_width(gap.shape), gap.id == "sill-bay-3" ? 0.004 : 0.0015) << gap.id;
}

TEST(StudBays, ABlockWallMeetsOneOfThem) {
    const House house =
        house_with("  - {id: meets, type: block-meets-house, on: blocks}\n  - {id: plug, type: outlet, on: wall-3, along: 9 m}\n",
                   bays + "block_walls: [{id: blocks, height: 1.6 m, points: [[3 m, 8 m], [3 m, 12 m]]}]\n")
            .build();
    const std::string bay = between(house, "plug").substr(0, between(house, "plug").find(' '));
    EXPECT_EQ(between(house, "meets"), "blocks " + bay);
    expect_measured(house);
}

TEST(StudBays, AJointWithinOneBayKeepsItsId) {
    const House house = house_with("  - {id: seam, type: drywall-seam, on: wall-3, along: 9.3 m, up: 1 m}\n", bays).build();
    ASSERT_EQ(house.survey.gaps.size(), 1U);
    EXPECT_EQ(house.survey.gaps.front().id, "seam");
}

TEST(StudBays, TopsOfPlatesAndFramesOfWindowsPartToo) {
    const House house = house_with(
                            "  - {id: top, type: chase-top, on: wall-3, along: 9 m, length: 1.2 m}\n"
                            "  - {id: frame, type: window-perimeter, on: window}\n",
                            bays + "openings: [{id: window, kind: window, in: wall-3, along: 3 m, width: 1.2 m, height: 1 m}]\n")
                            .build();
    std::size_t tops = 0, frames = 0;
    for (const Gap& gap : house.survey.gaps) {
        tops += gap.id.starts_with("top-bay-") ? 1 : 0;
        frames += gap.id.starts_with("frame-bay-") ? 1 : 0;
    }
    EXPECT_GE(tops, 2U);
    EXPECT_EQ(frames, 2U);
    expect_measured(house);
}

TEST(StudBays, ARowLiesInOneBay) {
    EXPECT_TRUE(
        told(house_with("  - {id: f, type: inside-hole, on: wall-3, along: 9 m, up: 1 m, count: 9, spacing: 0.3 m}\n", bays),
             "its pieces do not all lie between the same two spaces"));
}

TEST(Partitions, HaveARoomOnEachSide) {
    const House house = house_with("  - {id: frame, type: window-perimeter, on: door}\n",
                                   "openings: [{id: door, in: middle, along: 3 m, width: 0.8 m, height: 2 m}]\n")
                            .build();
    EXPECT_EQ(between(house, "frame"), "right middle");
    expect_measured(house);
}

TEST(Bulkheads, AreBesideTheWallsThatTheyStandAt) {
    const House house =
        house_with(
            "  - {id: hood, type: range-hood-duct, on: wall-3, along: 10 m, up: 2.3 m}\n"
            "  - {id: low, type: inside-hole, on: wall-3, along: 10 m, up: 1 m}\n"
            "  - {id: past, type: inside-hole, on: wall-3, along: 7 m, up: 2.3 m}\n"
            "  - {id: dryer, type: dryer-outlet, on: wall-3, along: 10.6 m, up: 2.2 m, around: 90 mm, hood: none, collar: none}\n"
            "  - {id: light, type: ceiling-light, at: [2 m, 7.4 m]}\n",
            box)
            .build();
    EXPECT_EQ(between(house, "hood"), "wall-3 box");
    EXPECT_EQ(between(house, "low"), "wall-3 left");
    EXPECT_EQ(between(house, "past"), "wall-3 left");
    EXPECT_EQ(between(house, "dryer-inside"), "wall-3 box");
    EXPECT_EQ(between(house, "light"), "attic box");
    expect_measured(house);
    EXPECT_EQ(between(house_with("  - {id: off, type: inside-hole, on: wall-3, along: 10 m, up: 2.3 m}\n",
                                 "bulkheads: [{id: box, from: [0.5 m, 7 m], to: [3 m, 7.8 m], drop: 0.4 m}]\n")
                          .build(),
                      "off"),
              "wall-3 left");
}

TEST(Bulkheads, AreTightWhenTheirGapsAreShut) {
    const PlainHouse plain = house_with("  - {id: hood, type: range-hood-duct, on: wall-3, along: 10 m, up: 2.3 m}\n", box);
    const House closed = build_house(parse_house_yaml(plain.text(), "house.yaml"), {{"hood", 0}}, Make::solids, RunContext());
    EXPECT_TRUE(AirMap(closed, {.pitch = 0.0237}).leaks().empty());
}

TEST(Bulkheads, TakeNothingAcrossTheirEdge) {
    EXPECT_TRUE(told(house_with("  - {id: f, type: attic-hatch, at: [2 m, 7 m]}\n", box), "part of it lies over left, not box"));
    EXPECT_TRUE(told(house_with("  - {id: f, type: range-hood-duct, on: wall-3, along: 10 m, up: 2.1 m}\n", box),
                     "something meets the wall: a bulkhead"));
    EXPECT_TRUE(told(house_with("  - {id: f, type: ceiling-hole, on: box, at: [4 m, 7.4 m]}\n", box),
                     "it does not fit on bottom of box"));
}

TEST(Roofs, OverEavesLeadIntoTheirBoxes) {
    const House house = house_with(
                            "  - {id: vent, type: roof-vent, at: [6 m, -0.3 m], size: [100 mm, 100 mm]}\n"
                            "  - {id: inner, type: roof-vent, at: [6 m, 2 m], size: [100 mm, 100 mm]}\n")
                            .build();
    EXPECT_EQ(between(house, "vent"), "yard eave");
    EXPECT_EQ(between(house, "inner"), "yard attic");
    expect_measured(house);
}

TEST(Roofs, TakeNothingOverWallsAndRakes) {
    EXPECT_TRUE(told(house_with("  - {id: f, type: roof-vent, at: [6 m, 0 m]}\n"), "under the roof is no air at its place"));
    EXPECT_TRUE(told(house_with("  - {id: f, type: roof-vent, at: [6 m, 0.1 m]}\n"), "part of it lies over"));
    PlainHouse gable = house_with("  - {id: f, type: vent-pipe-boot, at: [12.13 m, 2 m], around: 30 mm, mouth: 10 mm}\n");
    gable.roof = "{shape: gable, gables: [wall-2, wall-4], pitch: 4/12, overhang: 0.6 m, rake: 0.3 m}";
    EXPECT_TRUE(told(gable, "under the roof is no air at its place"));
}

TEST(SharedAir, IsASourceWhenOneOfItsFeaturesSaysSo) {
    const House house = house_with(
                            "  - {id: boot, type: vent-pipe-boot, at: [3 m, 2 m], space: drains}\n"
                            "  - {id: grate, type: floor-drain-grate, at: [3 m, 3 m], space: drains}\n"
                            "  - {id: fan, type: bath-fan, at: [9 m, 3 m], space: fan-duct}\n"
                            "  - {id: cap, type: exhaust-cap, space: fan-duct, source: true}\n")
                            .build();
    const auto is_source = [](const House& of, const std::string& id) {
        const auto& spaces = of.survey.spaces;
        return std::find_if(spaces.begin(), spaces.end(), [&](const Space& s) { return s.id == id; })->source;
    };
    EXPECT_FALSE(is_source(house, "drains"));
    EXPECT_TRUE(is_source(house, "fan-duct"));
    const House second = house_with(
                             "  - {id: grate, type: floor-drain-grate, at: [3 m, 3 m], space: drains}\n"
                             "  - {id: boot, type: vent-pipe-boot, at: [3 m, 2 m], space: drains, source: true}\n")
                             .build();
    EXPECT_TRUE(is_source(second, "drains"));
}

TEST(SharedAir, IsNoRoomAtticOrWall) {
    for (const char* space : {"left", "attic", "wall-3", "yard"})
        EXPECT_TRUE(told(house_with("  - {id: f, type: vent-pipe-boot, at: [3 m, 2 m], space: " + std::string(space) + "}\n"),
                         "not the air in another feature"));
}

}  // namespace
}  // namespace seamward::test
