// SPDX-License-Identifier: GPL-3.0-or-later
// What is no room is in command_cases.cmake.
#include "tool/room_option.h"

#include <gtest/gtest.h>

#include "tool/wrong_usage.h"

namespace seamward::test {
namespace {

RoomSeed room(const std::string& text) { return parse_rooms({text}).at(0); }

TEST(RoomOption, NameKindAndPoint) {
    const RoomSeed den = room("den=1.5,-2,3e-1");
    EXPECT_EQ(den.id, "den");
    EXPECT_EQ(den.kind, SpaceKind::living);
    EXPECT_EQ(den.at.x, 1.5);
    EXPECT_EQ(den.at.y, -2);
    EXPECT_EQ(den.at.z, 0.3);
    EXPECT_EQ(room("attic:cavity=+1, 2 ,3").kind, SpaceKind::cavity);
    EXPECT_EQ(room("garage:attached=1,2,3").kind, SpaceKind::attached);
    EXPECT_EQ(room("cells:harborage=1,2,3").kind, SpaceKind::harborage);
    EXPECT_EQ(room("outdoors:outdoors=1,2,3").kind, SpaceKind::outdoors);
    EXPECT_EQ(room("a=b:c:living=1,2,3").id, "a=b:c");
    EXPECT_EQ(room(" bath 2 =1,2,3").id, "bath 2");
}

TEST(RoomOption, SeveralInTheirOrder) {
    const auto rooms = parse_rooms({"b=1,2,3", "a=3,2,1"});
    ASSERT_EQ(rooms.size(), 2U);
    EXPECT_EQ(rooms[0].id, "b");
    EXPECT_TRUE(parse_rooms({}).empty());
}

TEST(RoomOption, TextThatIsNone) {
    for (const char* text : {"",
                             "=",
                             "a",
                             "a=",
                             "a=1",
                             "a=1,2,",
                             "a=,1,2",
                             "a=1,2,3,",
                             "a=1,2,inf",
                             "a=1,2,1e400",
                             "a=1,2,1e10",
                             "a=0x1,2,3",
                             "a=1;2;3",
                             "a=--1,2,3",
                             "a=+-1,2,3",
                             ":living=1,2,3",
                             "a:=1,2,3",
                             "a:Living=1,2,3",
                             "a\nb=1,2,3",
                             "a\tb=1,2,3",
                             "a\x01=1,2,3",
                             "\xFF=1,2,3"})
        EXPECT_THROW((void)parse_rooms({text}), WrongUsage) << text;
    EXPECT_THROW((void)parse_rooms({std::string(401, 'a') + "=1,2,3"}), WrongUsage);
    EXPECT_THROW((void)parse_rooms({"a=1,2,3", "a=1,2,3"}), WrongUsage);
}

}  // namespace
}  // namespace seamward::test
