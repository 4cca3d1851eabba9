// SPDX-License-Identifier: GPL-3.0-or-later
// What stands where nothing can stand: openings, partitions, eaves and block walls, and keys that say nothing of the house.
#include <gtest/gtest.h>

#include <algorithm>

#include "house/build_house.h"
#include "tests/support/cottage.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/gap_ruler.h"
#include "tests/support/leak_finder.h"
#include "tests/support/marked_text.h"
#include "tests/support/solid_check.h"

namespace seamward::test {
namespace {

House built(const std::string& text, Make make = Make::survey) {
    return build_house(parse_house_yaml(text, "house.yaml"), {}, make, RunContext());
}

std::vector<Diagnostic> faults(const std::string& text) {
    return faults_of([&] { (void)built(text); });
}

/// The cottage with `marked` in place of `part` is a file without faults and a house with one, at the caret.
void expect_fault(const std::string& part, const std::string& marked, std::string_view what, std::string_view mend) {
    const MarkedText text(cottage_with(part, marked));
    EXPECT_NO_THROW((void)parse_house_yaml(text.text, "house.yaml")) << marked;
    EXPECT_TRUE(only_fault(faults(text.text), text.places.at(0), what, mend)) << marked;
}

void expect_fault_after(const std::string& marked, std::string_view what, std::string_view mend) {
    const MarkedText text(cottage + marked);
    EXPECT_TRUE(only_fault(faults(text.text), text.places.at(0), what, mend)) << marked;
}

const std::string middle = "{id: middle-wall, from: [5 m, 0 m], to: [5 m, 6 m]}";
const std::string bedroom_door = "{id: bedroom-door, in: middle-wall, along: 3 m, width: 0.81 m, height: 2.03 m}";

TEST(Places, AnOpeningInAStoryWhereItsPartitionIsNot) {
    std::string text = cottage_with("[{height: 2.5 m}]", "[{height: 2.5 m}, {height: 2.5 m}]");
    text.replace(text.find("at: [7 m, 3 m]}"), 15, "at: [7 m, 3 m]}, {id: up, at: [2 m, 3 m], story: 2}");
    text.replace(text.find("in: middle-wall,"), 16, "in: middle-wall, story: 2,");
    const auto found = faults(text);
    ASSERT_EQ(found.size(), 1U) << listing(found);
    EXPECT_EQ(found[0].what, "bedroom-door: middle-wall does not stand in story 2");
    EXPECT_EQ(found[0].mend, "it stands in story 1: write that, or name another wall");
}

TEST(Places, OpeningsSayHowFarTheyReachAndHowFarTheyMay) {
    expect_fault(bedroom_door, "^{id: bedroom-door, in: middle-wall, along: 5.6 m, width: 0.81 m, height: 2.03 m}",
                 "which is 5.80 m long: it reaches from 5.19 m to 6.00 m along, and has room from 0.08 m to 5.72 m", "move it");
    expect_fault(bedroom_door, "^{id: bedroom-door, in: middle-wall, along: 3 m, width: 0.81 m, height: 2.397 m}",
                 "its upper edge is at 2.40 m, and may be at 2.39 m", "make it lower");
    const std::string beside = "^{id: second, in: south-wall, along: 2.8 m, width: 0.9 m, height: 2 m}";
    expect_fault(bedroom_door, bedroom_door + "\n  - " + beside,
                 "second runs into another opening of south wall: it overlaps front-door by 0.11 m", "0.15 m or more");
    const std::string near = "^{id: second, in: south-wall, along: 3 m, width: 0.9 m, height: 2 m}";
    expect_fault(bedroom_door, bedroom_door + "\n  - " + near, "0.09 m are between it and front-door", "move one of them");
}

TEST(Places, AWindowAcrossAPartition) {
    const auto window = [](const std::string& in, double along) {
        return bedroom_door + "\n  - ^{id: pane, kind: window, in: " + in + ", along: " + std::to_string(along) +
               " m, width: 1 m, height: 1 m}";
    };
    expect_fault(bedroom_door, window("north-wall", 3.2), "pane stands across the end of partition middle-wall",
                 "keep it clear of 2.94 m to 3.06 m along north wall");
    expect_fault(bedroom_door, window("south-wall", 5.4), "pane stands across the end of partition middle-wall", "4.94 m");
    EXPECT_TRUE(faults(cottage_with(bedroom_door, MarkedText(window("north-wall", 3.6)).text)).empty());
    const std::string branch = ", {id: branch, from: [5 m, 2 m], to: [8 m, 2 m]}]";
    std::string text = cottage_with(middle + "]", middle + branch);
    text.replace(text.find("at: [7 m, 3 m]}"), 15, "at: [7 m, 3 m]}, {id: bath, at: [7 m, 1 m]}");
    text.replace(text.find("in: middle-wall, along: 3 m"), 27, "in: middle-wall, along: 2.2 m");
    const auto found = faults(text);
    ASSERT_EQ(found.size(), 1U) << listing(found);
    EXPECT_EQ(found[0].what, "bedroom-door stands across the end of partition branch");
}

TEST(Places, PartitionsOutOfTheHouse) {
    for (const char* place : {"from: [12 m, 1 m], to: [12 m, 5 m]", "from: [5 m, -2 m], to: [5 m, 6 m]",
                              "from: [5 m, 0 m], to: [5 m, 9 m]", "from: [4 m, 3 m], to: [11 m, 3 m]"})
        expect_fault(middle + "]", middle + ", ^{id: stray, " + place + "}]", "partition stray reaches out of the house",
                     "end it");
    expect_fault(middle + "]", middle + ", ^{id: stray, from: [1 m, 0.06 m], to: [4 m, 0.06 m]}]",
                 "partition stray stands in an outside wall", "move it");
}

TEST(Places, PartitionsInEachOther) {
    const std::string what = " stand in each other";
    expect_fault(middle + "]", middle + ", ^{id: cross, from: [0 m, 3 m], to: [8 m, 3 m]}]",
                 "partitions middle-wall and cross" + what, "further down in the list");
    expect_fault(middle + "]", middle + ", ^{id: same, from: [5.05 m, 1 m], to: [5.05 m, 4 m]}]",
                 "partitions middle-wall and same" + what, "");
    // Where they meet they share nothing, whichever stands first.
    for (const char* both :
         {"{id: branch, from: [5 m, 2 m], to: [8 m, 2 m]}, ^", "^, {id: branch, from: [5 m, 2 m], to: [8 m, 2 m]}"}) {
        std::string list = both;
        list.replace(list.find('^'), 1, middle);
        std::string text = cottage_with(middle, list);
        text.replace(text.find("at: [7 m, 3 m]}"), 15, "at: [7 m, 3 m]}, {id: bath, at: [7 m, 1 m]}");
        const auto found = faults(text);
        EXPECT_TRUE(found.empty()) << both << listing(found);
    }
}

TEST(Places, EavesThatHangBeforeOpenings) {
    const std::string roof = "roof: {shape: hip, pitch: 4/12}";
    const std::string door = "  - {id: front-door,", steep = "roof: {shape: hip, pitch: 3/1, overhang: 0.4 m}";
    std::string text = cottage_with(roof, steep);
    auto found = faults(text);
    ASSERT_EQ(found.size(), 1U) << listing(found);
    EXPECT_EQ(found[0].what,
              "the eave along south wall hangs down to 1.31 m over the floor, before front-door, which reaches up to 2.03 m");
    EXPECT_EQ(found[0].mend, "make overhang smaller or pitch flatter, or the opening lower");
    expect_fault(roof, "roof: ^{shape: hip, pitch: 3/1, overhang: 1 m}",
                 "the eave along south wall hangs 0.49 m below the floor of the story under the roof", "make overhang smaller");
    // Below the roof's story, nothing is in the way.
    text.replace(text.find("[{height: 2.5 m}]"), 17, "[{height: 2.5 m}, {height: 2.5 m}]");
    text.replace(text.find("at: [7 m, 3 m]}"), 15, "at: [7 m, 3 m]}, {id: up, at: [2 m, 3 m], story: 2}");
    text.replace(text.find("type: attic-hatch"), 17, "type: attic-hatch, story: 2");
    found = faults(text);
    EXPECT_TRUE(found.empty()) << listing(found);
}

TEST(Places, BlockWallsThatCannotBeBuilt) {
    const auto wall = [](const std::string& points) {
        return "block_walls: [^{id: b, points: [" + points + "], height: 1.5 m}]\n";
    };
    expect_fault_after(wall("[20 m, 0 m], [25 m, 0 m], [20 m, 0 m]"), "it doubles back at its point 2", "make two block walls");
    expect_fault_after(wall("[20 m, 0 m], [25 m, 0 m], [20 m, 1 m]"), "it doubles back at its point 2", "make two block walls");
    expect_fault_after(wall("[20 m, 0 m], [22 m, 0 m], [21.54 m, 0.386 m], [23 m, 0.386 m]"), "run 2 is 0.60 m long, too short",
                       "longer");
    expect_fault_after(wall("[-3 m, 3 m], [12 m, 3 m]"), "run 1 of block wall b runs into the house",
                       "end it at an outside wall");
    EXPECT_TRUE(faults(cottage + MarkedText(wall("[8 m, 3 m], [12 m, 3 m], [12 m, 8 m]")).text).empty());
}

TEST(Places, KeysThatSayNothingOfTheHouse) {
    const std::string roof = "roof: {shape: hip, pitch: 4/12}", story = "[{height: 2.5 m}]";
    expect_fault(roof, "roof: {pitch: 4/12, gables: ^[east-wall]}", "gables says nothing of a hip roof", "write shape: gable");
    expect_fault(roof, "roof: {pitch: 4/12, low: ^east-wall}", "low says nothing of a hip roof", "write shape: shed");
    expect_fault(roof, "roof: {pitch: 4/12, parapet: ^1 m}", "parapet says nothing of a hip roof", "write shape: flat");
    expect_fault(roof, "roof: {shape: shed, low: south-wall, pitch: 1/12, gables: ^[east-wall]}",
                 "gables says nothing of a shed roof", "leave it out");
    expect_fault(roof, "roof: {shape: gable, gables: ^[east-wall, east-wall], pitch: 4/12}", "gables names a wall twice", "once");
    expect_fault(story, "[{height: 2.5 m, void: ^air}]", "void is no key of the first story", "foundation");
    expect_fault(story, "[{height: 2.5 m, voids: ^[{id: v, at: [1 m, 1 m]}]}]", "voids is no key of the first story",
                 "foundation");
    expect_fault(story, "[{height: 2.5 m, cavities: ^[[], [], [], [], [x]]}]", "cavities has 5 entries for 4 walls", "in order");
    expect_fault(story, "[{height: 2.5 m, cavities: [^[a, b]]}]", "names 2 bodies of air in a wall that has 1", "");
    std::string flat = cottage_with(roof, "roof: {shape: flat, parapet: ^3.1 m}");
    flat.erase(flat.find("  - {id: vents"));
    const MarkedText text(flat);
    EXPECT_TRUE(only_fault(faults(text.text), text.places[0], "a parapet is at most 3 m high", "make it lower"));
}

TEST(Places, OneFaultForAWallFeatureWithoutAPlace) {
    expect_fault_after("  - ^{id: ac, type: line-set, on: north-wall}\n", "feature ac: along is missing", "write along: 3.2 m");
}

/// An opening without a leaf: the rooms at both sides are joined by a gap as wide as it is.
TEST(Places, AnArchwayJoinsItsRooms) {
    const std::string arch =
        "{id: bedroom-door, name: arch, kind: archway, in: middle-wall, along: 3 m, width: 0.5 m, height: 2 m}";
    const House house = built(cottage_with(bedroom_door, arch), Make::solids);
    const Survey& survey = house.survey;
    const auto found = std::find_if(survey.gaps.begin(), survey.gaps.end(), [](const Gap& g) { return g.id == "bedroom-door"; });
    ASSERT_NE(found, survey.gaps.end());
    EXPECT_EQ(found->name, "arch");
    EXPECT_EQ(survey[found->between[0]].id, "bedroom");
    EXPECT_EQ(survey[found->between[1]].id, "kitchen");
    EXPECT_DOUBLE_EQ(clear_width(found->shape), 0.5);
    EXPECT_EQ(found->evidence.how, Evidence::How::modeled);
    EXPECT_TRUE(found->must_stay_open());
    const GapIndex gap{static_cast<std::uint32_t>(found - survey.gaps.begin())};
    EXPECT_NEAR(clear_width_between(house.parts, gap).smallest, 0.5, 1e-9);
    EXPECT_TRUE(is_clear(house, house.places[gap.value].through));
    for (const Part& part : house.parts) {
        EXPECT_EQ(fault_of_solid(part.mesh, true), "") << part.id;
        EXPECT_FALSE(part.id.starts_with("bedroom-door/")) << part.id;
    }
}

TEST(Places, NothingIsPutOnAnArchway) {
    const MarkedText text(cottage_with("{id: bedroom-door, in", "{id: bedroom-door, kind: archway, in") +
                          "  - ^{id: s, type: door-sweep, on: bedroom-door}\n");
    EXPECT_TRUE(
        only_fault(faults(text.text), text.places[0], "archway bedroom-door has no leaf", "give the opening another kind"));
    const MarkedText frame(cottage_with("{id: bedroom-door, in", "{id: bedroom-door, kind: archway, frame: ^air, in"));
    EXPECT_TRUE(only_fault(faults(frame.text), frame.places[0], "an archway has no hollow sill", "leave frame out"));
}

}  // namespace
}  // namespace seamward::test
