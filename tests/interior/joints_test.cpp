// SPDX-License-Identifier: GPL-3.0-or-later
// Where parts touch without a gap, between two spaces: drawn so that every length is known.
#include "interior/joints.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <string>
#include <tuple>

#include "interior/find.h"
#include "tests/support/find_check.h"
#include "tests/support/scene_changes.h"
#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

constexpr RoomSize small{0.6, 0.5, 0.4, 0.1};
constexpr double exact = 0.3 * mm;  // two ends of a run

/// "floor|west outdoors|room" and its lengths.
using Lengths = std::multimap<std::string, double>;

std::string sorted_pair(std::string one, std::string other) {
    if (other < one) std::swap(one, other);
    return one + "|" + other;
}

Lengths lengths_of(const Found& found) {
    Lengths lengths;
    for (const FoundJoint& joint : found.joints) {
        lengths.emplace(sorted_pair(found.parts[joint.parts[0]].id, found.parts[joint.parts[1]].id) + " " +
                            sorted_pair(found.spaces[joint.between[0]].id, found.spaces[joint.between[1]].id),
                        joint.length);
    }
    return lengths;
}

void expect_same(const Lengths& expected, const Lengths& found, double off = exact) {
    ASSERT_EQ(expected.size(), found.size()) << testing::PrintToString(found);
    for (auto a = expected.begin(), b = found.begin(); a != expected.end(); ++a, ++b) {
        EXPECT_EQ(a->first, b->first);
        EXPECT_NEAR(a->second, b->second, off) << a->first;
    }
}

/// Those of some parts.
Lengths with_part(const Lengths& lengths, const std::string& part) {
    Lengths some;
    for (const auto& [what, length] : lengths) {
        if (what.starts_with(part + "|") || what.find("|" + part + " ") != std::string::npos) some.emplace(what, length);
    }
    return some;
}

Scene closed_room() {
    Scene scene = room_without_south("closed", small);
    add_south(scene, small, {});
    return scene;
}

Lengths joints_of_closed_room() {
    Lengths lengths;
    for (const char* level : {"ceiling", "floor"}) {
        for (const char* side : {"north", "south"}) lengths.emplace(sorted_pair(level, side) + " outdoors|room", small.x);
        for (const char* side : {"east", "west"}) lengths.emplace(sorted_pair(level, side) + " outdoors|room", small.y);
    }
    for (const char* one : {"east", "west"}) {
        for (const char* other : {"north", "south"}) lengths.emplace(sorted_pair(one, other) + " outdoors|room", small.z);
    }
    return lengths;
}

TEST(Joints, PanelsOfARoom) {
    const Found found = found_in(closed_room());
    expect_same(joints_of_closed_room(), lengths_of(found));
    EXPECT_TRUE(found.gaps.empty());
    EXPECT_TRUE(std::ranges::is_sorted(found.joints, [](const auto& a, const auto& b) { return a.length > b.length + 1e-6; }));
    for (const FoundJoint& joint : found.joints) EXPECT_NEAR(joint.depth, small.wall, 5 * mm) << joint.name;
    EXPECT_EQ(found.joints[0].id, "joint-1");
    EXPECT_TRUE(found.joints[0].name.starts_with("joint between ")) << found.joints[0].name;
}

/// Names as building models have them, with a number at the end and a type said twice.
TEST(Joints, HaveNamesForPeople) {
    Scene scene = closed_room();
    for (ModelPart& part : scene.parts) part.name = "Basic:" + part.id + ":" + part.id + ":146596";
    scene.parts[0].name = ":17";
    const Found found = found_in(scene);
    EXPECT_FALSE(found.joints.empty());
    for (const FoundJoint& joint : found.joints) {
        EXPECT_EQ(joint.name.find("146596"), std::string::npos) << joint.name;
        for (const std::size_t part : joint.parts) {
            const std::string name = part == 0 ? scene.parts[0].id : "Basic:" + found.parts[part].id;
            EXPECT_NE((joint.name + " ").find(" " + name + " "), std::string::npos) << joint.name;
        }
    }
}

/// The line of a joint lies on its mouth outdoors, and its place in the middle of that.
TEST(Joints, LieWhereTheyAre) {
    const Found found = found_in(closed_room());
    const auto joint = std::ranges::find_if(found.joints, [&](const FoundJoint& j) {
        return sorted_pair(found.parts[j.parts[0]].id, found.parts[j.parts[1]].id) == "floor|north";
    });
    ASSERT_NE(joint, found.joints.end());
    ASSERT_EQ(joint->along.size(), 2U);
    EXPECT_NEAR(std::abs(joint->along[0].x - joint->along[1].x), small.x, exact);
    EXPECT_NEAR(distance(joint->at, {small.x / 2, small.y + small.wall, 0}), 0, exact);
    ASSERT_EQ(joint->through.size(), 4U);  // straight through under the wall, and a little on
    EXPECT_GT(joint->through[0].y, small.y + small.wall + 1 * mm);
    EXPECT_EQ(distance(joint->through[1], joint->at), 0);
    EXPECT_NEAR(distance(joint->through[2], {small.x / 2, small.y, 0}), 0, exact);
    EXPECT_LT(joint->through[3].y, small.y - 1 * mm);
}

TEST(Joints, TurnedAndNoisyRoomsHaveTheSame) {
    const Lengths plain = lengths_of(found_in(closed_room()));
    const Scene turned = transformed(closed_room(), turned_frame({0.3, -0.8, 0.5}, 1.1, {3, -2, 7}));
    expect_same(plain, lengths_of(found_in(turned)));
    expect_same(plain, lengths_of(found_in(with_noise(closed_room(), 1e-6, 5))));
    expect_same(plain, lengths_of(found_in(with_noise(turned, 1e-6, 6))));
    expect_same(plain, lengths_of(found_in(retessellated(closed_room(), 2, 7))));
}

TEST(Joints, EveryRunIsTheSame) {
    const Scene scene = transformed(closed_room(), turned_frame({0.3, -0.8, 0.5}, 1.1, {3, -2, 7}));
    const Found one = found_in(scene), other = found_in(scene);
    ASSERT_EQ(one.joints.size(), other.joints.size());
    for (std::size_t i = 0; i < one.joints.size(); ++i) {
        EXPECT_EQ(one.joints[i].length, other.joints[i].length);
        EXPECT_EQ(one.joints[i].at.x, other.joints[i].at.x);
        EXPECT_EQ(one.joints[i].along.size(), other.joints[i].along.size());
    }
}

/// The thin air under a wall reaches from outdoors into the room and along all floors: joints there still know where they are.
TEST(Joints, BesideAGapAlongTheFloor) {
    Scene scene = room_without_south("lifted", small);
    add_part(scene, "south", block({0, -small.wall, 4 * mm}, {small.x, 0, small.z}));
    const Found found = found_in(scene);
    ASSERT_EQ(found.gaps.size(), 1U);
    Lengths expected = joints_of_closed_room();
    expected.erase("floor|south outdoors|room");
    Lengths lengths = lengths_of(found);
    // They come out in the gap, whose air belongs to either space: of its depth the shorter of two mouths has half at most.
    const double in_wall = small.z - 4 * mm;
    for (const auto& [side, at_least, more] : {std::tuple("east|floor outdoors|room", small.y, small.wall),
                                               std::tuple("floor|west outdoors|room", small.y, small.wall),
                                               std::tuple("south|west outdoors|room", in_wall, small.wall / 2),
                                               std::tuple("east|south outdoors|room", in_wall, small.wall / 2)}) {
        const auto at = lengths.find(side);
        ASSERT_NE(at, lengths.end()) << side;
        EXPECT_GE(at->second, at_least - exact) << side;
        EXPECT_LE(at->second, at_least + more + exact) << side;
        expected.find(side)->second = at->second;
    }
    // The room is the same on both sides.
    EXPECT_NEAR(lengths.find("south|west outdoors|room")->second, lengths.find("east|south outdoors|room")->second, exact);
    expect_same(expected, lengths);
}

Scene room_with_pipe(const Loops& holes) {
    Scene scene = room_without_south("pipe", small);
    add_south(scene, small, holes);
    add_part(scene, "pipe", bar({0.3, -0.3, 0.2}, {0.3, 0.2, 0.2}, 20 * mm));
    return scene;
}

constexpr double pipe_around = 24 * 2 * 0.020 * 0.13165249758739585;  // 24 sides that touch the circle: tan(pi / 24)

TEST(Joints, PipeDrawnThroughAWall) {
    const Lengths lengths = with_part(lengths_of(found_in(room_with_pipe({}))), "pipe");
    expect_same({{"pipe|south outdoors|room", pipe_around}}, lengths);
}

/// The surface of the hole and that of the pipe lie on each other, side by side.
TEST(Joints, PipeThatFillsItsHole) {
    Scene scene = room_without_south("pipe", small);
    const Loop round = round_loop({0.3, 0.2}, 20 * mm);
    add_south(scene, small, {round});
    add_parts(scene, "pipe", extruded(south_frame, round, {}, -0.2, 0.3));
    expect_same({{"pipe|south outdoors|room", pipe_around}}, with_part(lengths_of(found_in(scene)), "pipe"));
    const Scene turned = transformed(scene, turned_frame({0.2, 0.5, -0.4}, 0.7, {1, 2, 3}));
    expect_same({{"pipe|south outdoors|room", pipe_around}}, with_part(lengths_of(found_in(turned)), "pipe"));
}

Scene room_of_two_south_boxes(double overlap) {
    Scene scene = room_without_south("two boxes", small);
    add_part(scene, "left", block({0, -small.wall, 0}, {0.3 + overlap, 0, small.z}));
    add_part(scene, "right", block({0.3, -small.wall, 0}, {small.x, 0, small.z}));
    return scene;
}

TEST(Joints, TwoBoxesSideBySide) {
    const Lengths lengths = lengths_of(found_in(room_of_two_south_boxes(0)));
    expect_same({{"left|right outdoors|room", small.z}}, [&] {
        Lengths both;
        for (const auto& [what, length] : with_part(lengths, "left")) {
            if (what.starts_with("left|right")) both.emplace(what, length);
        }
        return both;
    }());
    EXPECT_EQ(with_part(lengths, "left").size(), 4U);  // floor, ceiling, west, and the other box
}

TEST(Joints, TwoBoxesThatRunIntoEachOther) {
    for (const double overlap : {5 * mm, 80 * mm}) {
        const Scene scene = room_of_two_south_boxes(overlap);
        for (const Scene& some :
             {scene, with_noise(scene, 1e-6, 3), transformed(scene, turned_frame({0.3, -0.8, 0.5}, 1.1, {3, -2, 7}))}) {
            const Lengths lengths = lengths_of(found_in(some));
            ASSERT_EQ(lengths.count("left|right outdoors|room"), 1U) << overlap << testing::PrintToString(lengths);
            EXPECT_NEAR(lengths.find("left|right outdoors|room")->second, small.z, exact);
        }
    }
}

/// Pushed in from outside, without faces in one plane.
TEST(Joints, BoxPushedIntoAHole) {
    Scene scene = room_without_south("plug", small);
    add_south(scene, small, {rectangle(0.2, 0.1, 0.4, 0.3)});
    add_part(scene, "plug", block({0.195, -0.15, 0.095}, {0.405, 0.05, 0.305}));
    expect_same({{"plug|south outdoors|room", 4 * 0.21}}, with_part(lengths_of(found_in(scene)), "plug"));
}

TEST(Joints, ContactsWithinOneSpaceAreNone) {
    Scene scene = closed_room();
    add_part(scene, "chest", block({0.2, 0.2, 0}, {0.4, 0.3, 0.1}));
    add_part(scene, "post", block({-0.2, 0.1, 0}, {-0.1, 0.2, 0.3}));
    add_part(scene, "peg", bar({0.2, 0.48, 0.2}, {0.2, 0.55, 0.2}, 5 * mm));
    expect_same(joints_of_closed_room(), lengths_of(found_in(scene)));
}

TEST(Joints, BetweenTwoRooms) {
    Scene scene = closed_room();
    add_part(scene, "partition", block({0.25, 0, 0}, {0.31, small.y, small.z}));
    scene.spaces = {{"outdoors", {0.3, -2, 0.2}}, {"a", {0.1, 0.25, 0.2}}, {"b", {0.5, 0.25, 0.2}}};
    const Lengths lengths = lengths_of(found_in(scene));
    expect_same({{"ceiling|partition a|b", small.y},
                 {"floor|partition a|b", small.y},
                 {"north|partition a|b", small.z},
                 {"partition|south a|b", small.z}},
                with_part(lengths, "partition"));
    // Along the floor, either room faces outdoors.
    EXPECT_NEAR(lengths.find("floor|north a|outdoors")->second, 0.25, exact);
    EXPECT_NEAR(lengths.find("floor|north b|outdoors")->second, small.x - 0.31, exact);
}

/// Opened by a millimeter, the joints of a part are a gap, as long as they were together.
TEST(Joints, OpenedTheyAreGaps) {
    Scene scene = closed_room();
    double joints = 0;
    for (const auto& [what, length] : with_part(lengths_of(found_in(scene)), "north")) joints += length;
    std::erase_if(scene.parts, [](const ModelPart& part) { return part.id == "north"; });
    add_part(scene, "north", block({1 * mm, small.y, 1 * mm}, {small.x - 1 * mm, small.y + small.wall, small.z - 1 * mm}));
    const Found opened = found_in(scene);
    ASSERT_EQ(opened.gaps.size(), 1U);
    const double in_a_corner = 2 * std::numbers::sqrt2 / (1 + std::numbers::sqrt2);  // of two slots, a ball has more room
    EXPECT_NEAR(opened.gaps[0].width, in_a_corner * mm, 0.05 * mm);
    EXPECT_NEAR(opened.gaps[0].length, joints, 0.02 * joints);
    EXPECT_TRUE(with_part(lengths_of(opened), "north").empty());
    EXPECT_EQ(opened.joints.size(), joints_of_closed_room().size() - 4);
}

TEST(Joints, OpenedAroundAPipeTheyAreARing) {
    Scene scene = room_without_south("pipe", small);
    add_south(scene, small, {round_loop({0.3, 0.2}, 20 * mm)});
    add_parts(scene, "pipe", extruded(south_frame, round_loop({0.3, 0.2}, 19 * mm), {}, -0.2, 0.3));
    const Found opened = found_in(scene);
    ASSERT_EQ(opened.gaps.size(), 1U);
    EXPECT_NEAR(opened.gaps[0].length, pipe_around, 0.05 * pipe_around);
    EXPECT_TRUE(with_part(lengths_of(opened), "pipe").empty());
}

/// One contact that is parted by a hole through it is two joints.
TEST(Joints, EveryContactOfItsOwn) {
    Scene scene = room_without_south("two feet", small);
    add_parts(scene, "south",
              extruded(south_frame, Loop{{0, 0}, {0.2, 0}, {0.2, 0.01}, {0.4, 0.01}, {0.4, 0}, {0.6, 0}, {0.6, 0.4}, {0, 0.4}},
                       {}, 0, small.wall));
    Lengths lengths = lengths_of(found_in(scene));
    EXPECT_EQ(lengths.count("floor|south outdoors|room"), 2U) << testing::PrintToString(lengths);
    for (auto [at, end] = lengths.equal_range("floor|south outdoors|room"); at != end; ++at) {
        EXPECT_GE(at->second, 0.2 - exact);
        EXPECT_LE(at->second, 0.3 + exact);  // and what of the foot's side lies in the gap
    }
}

}  // namespace
}  // namespace seamward::test
