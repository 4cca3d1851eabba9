// SPDX-License-Identifier: GPL-3.0-or-later
// Partitions that run through floors, rooms open over two stories, and the air between joists that they part.
#include <gtest/gtest.h>

#include "tests/house/plain_house.h"
#include "tests/support/gap_ruler.h"
#include "tests/support/leak_finder.h"

namespace seamward::test {
namespace {

/// Two stories of the plain house, parted in the middle by a wall that runs through both.
PlainHouse two_halves() {
    PlainHouse plain;
    plain.stories = "[{height: 2.5 m}, {height: 2.5 m, floor: 0.29 m, void: void, voids: [{id: left-void, at: [2 m, 2 m]}]}]";
    plain.rooms =
        "[{id: left, at: [2 m, 2 m]}, {id: right, at: [9 m, 2 m]}, {id: left-up, at: [2 m, 2 m], story: 2}, "
        "{id: right-up, at: [9 m, 2 m], story: 2}]";
    plain.more = "partitions:\n  - {id: middle, from: [6 m, 0 m], to: [6 m, 8 m], to_story: 2, assembly: wall}\n";
    return plain;
}

/// The same with the left half one room from floor to roof.
PlainHouse hall_and_rooms() {
    PlainHouse plain = two_halves();
    plain.stories = "[{height: 2.5 m}, {height: 2.5 m, floor: 0.29 m, void: void}]";
    plain.rooms =
        "[{id: left, at: [2 m, 2 m], to_story: 2}, {id: right, at: [9 m, 2 m]}, {id: right-up, at: [9 m, 2 m], story: 2}]";
    return plain;
}

std::string between(const House& house, const std::string& gap) {
    for (const Gap& g : house.survey.gaps) {
        if (g.id == gap) return house.survey[g.between[0]].id + " " + house.survey[g.between[1]].id;
    }
    return "no such gap";
}

bool has_space(const House& house, const std::string& id) {
    return std::any_of(house.survey.spaces.begin(), house.survey.spaces.end(),
                       [&](const Space& space) { return space.id == id; });
}

void expect_tight(const PlainHouse& plain) {
    const House house = plain.build();
    const AirMap air(house, {.pitch = 0.04});
    EXPECT_TRUE(air.unseen().empty());
    for (const Leak& leak : air.leaks())
        ADD_FAILURE() << house.survey[leak.from].id << " leaks into " << house.survey[leak.to].id;
}

TEST(ThroughFloors, APartitionHasOneBodyOfAir) {
    PlainHouse plain = two_halves();
    plain.more +=
        "features:\n"
        "  - {id: low, type: outlet, on: middle, side: left, along: 3 m}\n"
        "  - {id: high, type: outlet, on: middle, story: 2, side: right-up, along: 3 m}\n"
        "  - {id: by-number, type: outlet, on: middle-2, side: right-up, along: 5 m}\n"
        "  - {id: seam, type: drywall-seam, on: middle, story: 2, side: left-void, along: 2 m, up: -0.14 m}\n"
        "  - {id: top, type: top-plate-hole, on: middle, story: 2, along: 4 m}\n";
    const House house = plain.build();
    EXPECT_EQ(between(house, "low"), "middle left");
    EXPECT_EQ(between(house, "high"), "middle right-up");
    EXPECT_EQ(between(house, "by-number"), "middle right-up");
    EXPECT_EQ(between(house, "seam"), "middle left-void");
    EXPECT_EQ(between(house, "top"), "attic middle");
    EXPECT_EQ(part_of(house, "middle/top-plate"), nullptr);
    EXPECT_NE(part_of(house, "middle-2/top-plate"), nullptr);
    EXPECT_EQ(part_of(house, "middle-2/bottom-plate"), nullptr);
    const GapRuler ruler(house.parts);
    for (const GapPlace& place : house.places)
        EXPECT_NEAR(ruler.width_of(place.gap).smallest, clear_width(house.survey[place.gap].shape), 1e-6)
            << house.survey[place.gap].id;
    plain.more = plain.more.substr(0, plain.more.find("features"));
    expect_tight(plain);
}

TEST(ThroughFloors, TheAirBetweenJoistsIsParted) {
    PlainHouse plain = two_halves();
    plain.more +=
        "features:\n"
        "  - {id: light-left, type: ceiling-light, on: ceiling, at: [2 m, 3 m]}\n"
        "  - {id: light-right, type: ceiling-light, on: ceiling, at: [9 m, 3 m]}\n"
        "  - {id: register-left, type: supply-register, at: [2 m, 5 m], story: 2}\n"
        "  - {id: register-right, type: supply-register, at: [9 m, 5 m], story: 2}\n"
        "  - {id: pipe, type: rim-joist-opening, on: middle, story: 2, along: 3 m}\n"
        "  - {id: pockets, type: joist-pocket, on: middle, story: 2, side: void, along: 5 m, size: [45 mm, 200 mm], count: 2}\n"
        "  - {id: wire, type: top-plate-hole, on: wall-3, along: 9 m}\n";
    const House house = plain.build();
    EXPECT_EQ(between(house, "light-left"), "left-void left");
    EXPECT_EQ(between(house, "light-right"), "void right");
    EXPECT_EQ(between(house, "register-left"), "left-up left-void");
    EXPECT_EQ(between(house, "register-right"), "right-up void");
    EXPECT_EQ(between(house, "pipe"), "void left-void");
    EXPECT_EQ(between(house, "pockets"), "void middle");
    EXPECT_EQ(between(house, "wire"), "left-void wall-3");  // counted from the east end
}

TEST(ThroughFloors, ARoomMayBeOpenOverTwoStories) {
    PlainHouse plain = hall_and_rooms();
    expect_tight(plain);
    plain.more +=
        "features:\n"
        "  - {id: low, type: outlet, on: wall-1, along: 2 m}\n"
        "  - {id: high, type: outlet, on: wall-1, story: 2, along: 2 m}\n"
        "  - {id: hatch, type: attic-hatch, at: [2 m, 3 m], story: 2}\n"
        "  - {id: pipe, type: rim-joist-opening, on: middle, story: 2, along: 3 m}\n"
        "  - {id: band, type: rim-joist-joint, on: wall-2, story: 2}\n"
        "  - {id: band-west, type: rim-joist-joint, on: wall-4, story: 2}\n";
    const House house = plain.build();
    EXPECT_EQ(between(house, "low"), "wall-1 left");
    EXPECT_EQ(between(house, "high"), "wall-1-2 left");
    EXPECT_EQ(between(house, "hatch"), "attic left");
    EXPECT_EQ(between(house, "pipe"), "void left");
    EXPECT_EQ(between(house, "band"), "yard void");
    EXPECT_EQ(between(house, "band-west"), "yard left");
    EXPECT_EQ(
        std::count_if(house.survey.spaces.begin(), house.survey.spaces.end(), [](const Space& s) { return s.id == "left"; }), 1);
}

TEST(ThroughFloors, AShaftBeginsOverTheCeilingBelow) {
    PlainHouse plain = hall_and_rooms();
    plain.more +=
        "  - {id: shaft, from: [12 m, 4 m], to: [10.5 m, 4 m], story: 2, from_below: true, assembly: wall}\n"
        "features:\n"
        "  - {id: flue, type: ceiling-hole, on: ceiling, at: [11 m, 4 m], gap: 30 mm}\n"
        "  - {id: beside, type: ceiling-hole, on: ceiling, at: [11 m, 3 m]}\n";
    const House house = plain.build();
    EXPECT_EQ(between(house, "flue"), "shaft right");
    EXPECT_EQ(between(house, "beside"), "void right");
    plain.more = plain.more.substr(0, plain.more.find("features"));
    expect_tight(plain);
}

TEST(ThroughFloors, AHoleMayLeadIntoAPartitionThatEndsThere) {
    PlainHouse plain = two_halves();
    plain.rooms =
        "[{id: left, at: [2 m, 2 m]}, {id: left-north, at: [2 m, 6 m]}, {id: right, at: [9 m, 2 m]}, "
        "{id: left-up, at: [2 m, 2 m], story: 2}, {id: right-up, at: [9 m, 2 m], story: 2}]";
    plain.more +=
        "  - {id: cross, from: [0 m, 4 m], to: [6 m, 4 m], assembly: wall}\n"
        "features:\n"
        "  - {id: hole, type: inside-hole, on: middle, side: cross, along: 3.898 m, up: 1 m, gap: 20 mm}\n";
    const House house = plain.build();
    EXPECT_EQ(between(house, "hole"), "middle cross");
    const std::vector<Point>& way = house.places.front().through;
    EXPECT_TRUE(is_clear(house, way));
    EXPECT_NEAR(clear_width_between(house.parts, {0}).smallest, 0.02, 1e-6);
}

TEST(ThroughFloors, FaultsSayWhatToDo) {
    const auto faults = [](PlainHouse plain, const std::string& more = "") {
        plain.more += more;
        return plain.faults();
    };
    const auto has = [](const std::string& text, const char* words) { return text.find(words) != std::string::npos; };
    EXPECT_EQ(faults(two_halves()), "");

    PlainHouse unnamed = two_halves();
    unnamed.stories = "[{height: 2.5 m}, {height: 2.5 m, floor: 0.29 m}]";
    EXPECT_TRUE(has(unnamed.faults(), "partitions part the air between the joists under story 2")) << unnamed.faults();

    PlainHouse outside = two_halves();
    outside.stories =
        "[{height: 2.5 m}, {height: 2.5 m, floor: 0.29 m, voids: [{id: a, at: [2 m, 2 m]}, {id: b, at: [6 m, 2 m]}]}]";
    EXPECT_TRUE(has(outside.faults(), "the point of b lies in a wall or outside of the house")) << outside.faults();

    PlainHouse closed = hall_and_rooms();
    closed.more =
        "partitions:\n  - {id: a, from: [6 m, 0 m], to: [6 m, 8 m]}\n  - {id: b, from: [6 m, 0 m], to: [6 m, 8 m], story: 2}\n";
    EXPECT_TRUE(has(closed.faults(), "room left is open to the joists under or over right")) << closed.faults();

    PlainHouse crooked = hall_and_rooms();
    crooked.rooms = crooked.rooms.substr(0, crooked.rooms.size() - 1) + ", {id: corner, at: [1 m, 1 m], story: 2}]";
    EXPECT_TRUE(has(faults(crooked, "  - {id: more, from: [0 m, 1.5 m], to: [6 m, 1.5 m], story: 2}\n"),
                    "room left has not the same outline in stories 1 and 2"));

    EXPECT_TRUE(has(faults(two_halves(), "features: [{id: f, type: top-plate-hole, on: middle, along: 2 m}]\n"),
                    "the air in middle goes on through the ceiling, without a plate; name the highest story"));
    EXPECT_TRUE(has(faults(two_halves(), "features: [{id: f, type: bottom-plate-hole, on: middle, story: 2, along: 2 m}]\n"),
                    "goes on through the floor, without a plate; name its lowest story"));
    EXPECT_TRUE(has(faults(hall_and_rooms(), "features: [{id: f, type: attic-hatch, at: [2 m, 3 m]}]\n"),
                    "the room is open to the story above; write the story of its ceiling"));
    EXPECT_TRUE(has(faults(two_halves(), "stud_bays: [{on: middle, spacing: 16 in}]\n"), "goes on from story to story"));
    EXPECT_TRUE(has(faults(two_halves(), "  - {id: shaft, from: [12 m, 4 m], to: [10 m, 4 m], from_below: true}\n"),
                    "under partition shaft there is no ceiling to begin at"));
    EXPECT_TRUE(has(faults(two_halves(), "  - {id: tall, from: [12 m, 4 m], to: [10 m, 4 m], to_story: 3}\n"),
                    "to_story is a story from 1 to 2"));
    EXPECT_FALSE(has_space(hall_and_rooms().build(), "left-void"));
}

}  // namespace
}  // namespace seamward::test
