// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "report/drawing_legend.h"
#include "report/drawing_openings.h"
#include "report/drawing_rooms.h"

namespace seamward {
namespace {

PaperRoom room(const std::string& name, Point2 low, Point2 high) {
    return {name, "a", {{low, {high.x, low.y}, high, {low.x, high.y}}, {}}};
}

TEST(DrawingWords, NamesStandWithinTheirRooms) {
    const std::vector<Balloon> none;
    const std::vector<PaperRoom> rooms{room("primary bedroom", {0, 0}, {50, 30}), room("primary bedroom", {60, 0}, {86, 30}),
                                       room("primary bedroom", {90, 0}, {97, 7})};
    const auto names = place_room_names(rooms, {&none, {}});
    ASSERT_EQ(names.size(), 3U);
    EXPECT_EQ(names[0].lines, (std::vector<std::string>{"primary bedroom"}));
    EXPECT_EQ(names[1].lines, (std::vector<std::string>{"primary", "bedroom"}));
    EXPECT_TRUE(names[2].keyed);
    for (std::size_t i = 0; i < names.size(); ++i) {
        for (const Point2 corner : {names[i].box.low, names[i].box.high}) EXPECT_TRUE(is_within(rooms[i].figure, corner)) << i;
    }
    EXPECT_NEAR(names[0].at.x, 25, 1.5);
    EXPECT_NEAR(names[0].at.y, 15, 1.5);
}

TEST(DrawingWords, NamesKeepOffMarksLeadersAndSigns) {
    Balloon balloon{"1", false, 0, {25, 15}, {25, -10}};
    const std::vector<Balloon> balloons{balloon};
    const std::vector<PaperRoom> rooms{room("kitchen", {0, 0}, {50, 30})};
    const auto names = place_room_names(rooms, {&balloons, {{{0, 16}, {50, 30}}}});
    const PaperBox& box = names.front().box;
    EXPECT_TRUE(box.high.x < 25 || box.low.x > 25);
    EXPECT_LE(box.high.y, 16);
}

TEST(DrawingWords, ARoomFullOfSignsGetsALetter) {
    std::vector<Balloon> balloons;
    for (int i = 0; i < 5; ++i) balloons.push_back({"1", false, 0, {5.0 + 10 * i, 5}, {5.0 + 10 * i, -10}});
    const auto names = place_room_names({room("corridor", {0, 0}, {50, 10})}, {&balloons, {}});
    EXPECT_TRUE(names.front().keyed);
}

TEST(DrawingWords, Heights) {
    EXPECT_EQ(height_text(3, Lengths::inches), "+9'-10\"");
    EXPECT_EQ(height_text(-0.15, Lengths::inches), "−0'-6\"");
    EXPECT_EQ(height_text(0, Lengths::inches), "±0'-0\"");
    EXPECT_EQ(height_text(2.7449, Lengths::millimeters), "+2.74 m");
    EXPECT_EQ(height_text(-0.05, Lengths::millimeters), "−0.05 m");
    EXPECT_EQ(dimension_text(18.0666, Lengths::inches), "59'-3\"");
    EXPECT_EQ(dimension_text(0.3047, Lengths::inches), "1'-0\"");  // never 12 inches
}

TEST(DrawingWords, Letters) {
    EXPECT_EQ(open_letter(0), "A");
    EXPECT_EQ(open_letter(8), "J");
    EXPECT_EQ(open_letter(13), "P");
    EXPECT_EQ(open_letter(23), "Z");
    EXPECT_EQ(open_letter(24), "AA");
    EXPECT_EQ(open_letter(24 + 24 * 24), "AAA");
    EXPECT_EQ(room_key(1), "b");
}

TEST(DrawingWords, PaperNumbers) {
    EXPECT_EQ(paper_number(1.5), "1.5");
    EXPECT_EQ(paper_number(-0.001), "0");
    EXPECT_EQ(paper_number(12), "12");
    EXPECT_EQ(paper_number(0.126), "0.13");
}

TEST(DrawingWords, BrokenText) {
    EXPECT_EQ(broken_text("a longer text of words", 20).size(), 3U);
    EXPECT_EQ(broken_text("unbreakableandlong", 5).size(), 1U);
    for (const std::string& line : broken_text("weep screed's drain holes, north wall: stays open (drain)", 40))
        EXPECT_LE(text_width(line), 40);
    EXPECT_EQ(text_width("é"), text_width("e"));
}

TEST(ChoosePaper, TakesTheLargestUsualScaleThatFits) {
    const auto scale = [](double width, double height, Lengths lengths) {
        const SheetPaper paper = choose_paper({{DrawnView::Kind::plan, width, height}}, lengths);
        return paper.scale.text + (paper.landscape ? " turned" : "");
    };
    EXPECT_EQ(scale(5, 5, Lengths::inches), "1/4\" = 1'-0\"");
    EXPECT_EQ(scale(12, 8, Lengths::inches), "1/8\" = 1'-0\"");
    EXPECT_EQ(scale(12, 8, Lengths::millimeters), "1:100");
    EXPECT_EQ(scale(12, 17, Lengths::millimeters), "1:125");
    EXPECT_EQ(scale(33, 19, Lengths::millimeters), "1:200 turned");
    EXPECT_EQ(scale(9, 27, Lengths::millimeters), "1:200");
    EXPECT_EQ(scale(500, 19, Lengths::millimeters), "1:500 turned");
}

}  // namespace
}  // namespace seamward
