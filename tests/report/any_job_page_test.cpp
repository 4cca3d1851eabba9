// SPDX-License-Identifier: GPL-3.0-or-later
// Pages of jobs that have no plan, no animals, no rooms, no house: each tells the truth.
#include <gtest/gtest.h>

#include <set>

#include "tests/report/made_page.h"

namespace seamward::test {
namespace {

const std::string spaces = R"(seamward: 1
spaces:
  - {id: yard, kind: outdoors}
  - {id: wall, kind: cavity, name: "north wall cavity"}
  - {id: kitchen, kind: living}
)";
const std::string gaps = R"(gaps:
  - {id: screed, name: "weep holes", between: [yard, wall], duty: weep, slot: {width: 3 mm, length: 9 m}}
  - {id: pipe, between: [wall, kitchen], ring: {width: 2.5 mm, around: 22 mm}, evidence: {how: assumed, plus_minus: 1 mm}}
  - {id: sweep, name: "gap under the door", between: [yard, kitchen], slot: {width: 3/16 in, length: 36 in}}
)";

std::string text_of(const std::string& yaml, Audience audience = Audience::homeowner) {
    const Job job = job_of_text(yaml);
    return MadePage(job, settings_for(job, audience)).page.text();
}

bool has(const std::string& text, const std::string& what) { return text.find(what) != std::string::npos; }

TEST(AnyJobPage, WithoutAnimalsTellsWaysAndNoPrice) {
    const std::string text = text_of(spaces + gaps);
    EXPECT_TRUE(has(text, "no animal was named that is to be kept out")) << text;
    EXPECT_TRUE(has(text, "3/16 in")) << text;
    const std::size_t priced = text.find('$');
    EXPECT_EQ(priced, std::string::npos) << text.substr(priced < 80 ? 0 : priced - 80, 160);
    EXPECT_TRUE(has(text_of(spaces + gaps, Audience::diy), "nothing to do for you"));
}

TEST(AnyJobPage, WithoutRoomsSaysSo) {
    const std::string text = text_of(
        "seamward: 1\nspaces:\n  - {id: yard, kind: outdoors}\n  - {id: attic, kind: cavity}\ngaps:\n"
        "  - {id: vent, between: [yard, attic], slot: {width: 5 mm, length: 1 m}}\npests: [house-mouse]\n");
    EXPECT_TRUE(has(text, "names no room where people live")) << text;
    EXPECT_FALSE(has(text, "can get into")) << text;
}

TEST(AnyJobPage, WithoutGapsHasNoWayIn) {
    const std::string text = text_of(spaces + "gaps: []\npests: [house-mouse]\n");
    EXPECT_TRUE(has(text, "none of these animals gets into a room: House mouse")) << text;
    EXPECT_TRUE(has(text, "No way in was found")) << text;
    EXPECT_TRUE(has(text, "Nothing has to be closed")) << text;
}

TEST(AnyJobPage, WithoutAPlanSaysWhyAndOffersNoSuchOption) {
    const std::string yaml = spaces + gaps +
                             "  - {id: louver, name: \"louver of the stove\", between: [yard, kitchen], closing: {never: \"the "
                             "stove breathes here\"}, "
                             "slot: {width: 20 mm, length: 30 cm}}\npests: [house-mouse]\n";
    const Job job = job_of_text(yaml);
    const MadePage made(job, settings_for(job, Audience::homeowner));
    ASSERT_FALSE(made.facts.plan.feasible);
    const std::string text = made.page.text();
    EXPECT_TRUE(has(text, "Not all of them can be kept out: House mouse")) << text;
    EXPECT_TRUE(has(text, "Not offered: to keep out House mouse")) << text;
    EXPECT_TRUE(has(text, "louver of the stove")) << text;
    EXPECT_TRUE(has(text, "the stove breathes here")) << text;
    EXPECT_EQ(made.page.with_id("closings"), nullptr);
    EXPECT_EQ(made.page.with_id("approval"), nullptr);
    EXPECT_TRUE(has(text_of(yaml, Audience::diy), "There is no plan against all of these animals"));
}

TEST(AnyJobPage, SaysWhatWasNotMeasured) {
    const std::string text = text_of(spaces + gaps + "pests: [bark-scorpion-young]\n");
    EXPECT_TRUE(has(text, "The width of 1 gap was assumed, not measured")) << text;
    EXPECT_TRUE(has(text, "not measured")) << text;
}

TEST(AnyJobPage, NeverShutsAnAnimalIn) {
    const std::string text = text_of(
        "seamward: 1\nspaces:\n  - {id: yard, kind: outdoors}\n  - {id: attic, kind: cavity}\n  - {id: hall, kind: "
        "living}\ngaps:\n"
        "  - {id: eaves, name: \"hole in the soffit\", between: [yard, attic], hole: {diameter: 60 mm}}\n"
        "  - {id: hatch, name: \"attic hatch\", between: [attic, hall], slot: {width: 20 mm, length: 1 m}}\n"
        "pests: [bat]\noccupied:\n  - {space: attic, animal: bat, seen: \"droppings below the ridge\"}\n");
    EXPECT_TRUE(has(text, "Animals that live in the house")) << text;
    EXPECT_TRUE(has(text, "Bat in attic")) << text;
    EXPECT_TRUE(has(text, "droppings below the ridge")) << text;
    EXPECT_TRUE(has(text, "No animal is ever shut in")) << text;
}

TEST(AnyJobPage, WritesDaysAndLengthsAsAskedFor) {
    const Job job = job_of_text("seamward: 1\njob: {surveyed: \"2026-03-12\"}\n" + spaces.substr(spaces.find("spaces")) + gaps +
                                "pests: [house-mouse]\n");
    ReportSettings settings = settings_for(job, Audience::homeowner);
    EXPECT_TRUE(has(MadePage(job, settings).page.text(), "March 12, 2026"));
    settings.lengths = Lengths::millimeters;
    const MadePage metric(job, settings);
    EXPECT_TRUE(has(metric.page.with_id("ways-in")->text(), "4.76 mm"));
    EXPECT_FALSE(has(metric.page.with_id("ways-in")->text(), "3/16 in"));
    EXPECT_NE(metric.html.find("letter"), std::string::npos);
    settings.paper = Paper::a4;
    EXPECT_NE(MadePage(job, settings).html.find("size:A4"), std::string::npos);
}

/// Openings and rooms of the summary, told again by walking all ways one by one.
TEST(Entries, AreTheFirstGapsOfAllWays) {
    const Job job = scenario("wall-corner");
    const MadePage made(job, settings_for(job, Audience::homeowner));
    std::set<GapIndex> gaps_in;
    std::set<SpaceIndex> rooms;
    for (const Pest& pest : job.pests) {
        TraceSettings settings;
        settings.pests = {pest};
        settings.top = 200000;
        const Trace all = trace(job.survey, settings, RunContext());
        ASSERT_LT(all.paths.size(), settings.top);
        for (const RankedPath& ranked : all.paths) {
            if (ranked.maybe) continue;
            gaps_in.insert(ranked.path.gaps.front());
            rooms.insert(ranked.path.to());
        }
    }
    EXPECT_EQ(std::set<GapIndex>(made.facts.entries.gaps.begin(), made.facts.entries.gaps.end()), gaps_in);
    EXPECT_EQ(made.facts.entries.rooms, rooms.size());
    EXPECT_TRUE(has(made.page.with_id("summary")->text(), std::to_string(gaps_in.size()) + " openings"))
        << made.page.with_id("summary")->text();
}

}  // namespace
}  // namespace seamward::test
