// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/compare.h"

#include <gtest/gtest.h>

#include "tests/report/made_page.h"

namespace seamward::test {
namespace {

const std::string& first_visit() {
    static const std::string text = R"(
seamward: 1
job: {name: "Larkspur Court 4", surveyed: "2026-03-12"}
spaces:
  - {id: yard, kind: outdoors}
  - {id: wall, kind: cavity}
  - {id: kitchen, kind: living}
  - {id: den, kind: living}
gaps:
  - {id: screed, between: [yard, wall], slot: {width: 6 mm, length: 9 m}}
  - {id: sink, between: [wall, kitchen], ring: {width: 4 mm, around: 22 mm}, evidence: {how: assumed}}
  - {id: door, between: [yard, den], slot: {width: 9 mm, length: 0.9 m}}
  - {id: old-pipe, between: [wall, den], hole: {diameter: 5 mm}}
pests: [bark-scorpion, house-mouse]
)";
    return text;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    return text.replace(at, from.size(), to);
}

/// The door was shut, the ring at the sink measured, one gap found, one taken out.
Job second_visit() {
    std::string text = replaced(first_visit(), "width: 4 mm, around: 22 mm}, evidence: {how: assumed}",
                                "width: 3 mm, around: 22 mm}, evidence: {how: measured, plus_minus: 0.2 mm}");
    text = replaced(text, "  - {id: old-pipe, between: [wall, den], hole: {diameter: 5 mm}}\n",
                    "  - {id: vent, between: [wall, den], hole: {diameter: 2 mm}}\n");
    return job_of_text(text + "closed: [{gap: door, with: sweep}]\n");
}

TEST(Compare, TellsWhatChanged) {
    const Job then = job_of_text(first_visit()), now = second_visit();
    const Comparison found = compare(then, now, now.pests);
    ASSERT_TRUE(found.same_house);
    ASSERT_EQ(found.rooms.size(), 2U);
    EXPECT_DOUBLE_EQ(found.rooms[0].then, 0.004);  // through screed and sink
    EXPECT_DOUBLE_EQ(found.rooms[0].now, 0.003);
    EXPECT_DOUBLE_EQ(found.rooms[1].then, 0.009);  // the door
    EXPECT_DOUBLE_EQ(found.rooms[1].now, 0.002);   // screed and vent
    ASSERT_EQ(found.closed.size(), 1U);
    EXPECT_EQ(now.survey[found.closed[0].gap].id, "door");
    EXPECT_DOUBLE_EQ(found.closed[0].then, 0.009);
    EXPECT_EQ(found.closed[0].now, 0);
    ASSERT_EQ(found.anew.size(), 1U);
    EXPECT_EQ(now.survey[found.anew[0].gap].id, "sink");
    EXPECT_DOUBLE_EQ(found.anew[0].then, 0.004);
    EXPECT_DOUBLE_EQ(found.anew[0].now, 0.003);
    ASSERT_EQ(found.added.size(), 1U);
    EXPECT_EQ(now.survey[found.added[0]].id, "vent");
    ASSERT_EQ(found.gone.size(), 1U);
    EXPECT_EQ(then.survey[found.gone[0]].id, "old-pipe");
    EXPECT_EQ(found.entries.then, 2U);  // screed and door
    EXPECT_EQ(found.entries.now, 1U);
    EXPECT_EQ(found.animals_then, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(found.animals_now, (std::vector<std::size_t>{0}));
}

TEST(Compare, TheSameVisitHasNoChange) {
    const Job job = second_visit();
    const Comparison found = compare(job, job, job.pests);
    EXPECT_TRUE(found.closed.empty() && found.anew.empty() && found.added.empty() && found.gone.empty());
    for (const Comparison::Room& room : found.rooms) EXPECT_EQ(room.then, room.now);
}

TEST(Compare, AClosingThatDidNotHoldIsOpenAgain) {
    const Job then = second_visit();
    const Job now = job_of_text(first_visit());
    const Comparison found = compare(then, now, now.pests);
    const auto door = std::find_if(found.anew.begin(), found.anew.end(),
                                   [&](const Comparison::Width& one) { return now.survey[one.gap].id == "door"; });
    ASSERT_NE(door, found.anew.end());
    EXPECT_EQ(door->then, 0);
    EXPECT_DOUBLE_EQ(door->now, 0.009);
}

TEST(Compare, AnotherHouseCannotBeCompared) {
    const Job then = scenario("brick-crawl"), now = second_visit();
    EXPECT_FALSE(compare(then, now, now.pests).same_house);
    MadePage made(second_visit(), settings_for(now, Audience::homeowner));
    made.facts.before = &then;
    const PageElement page = read_page(report_page(made.facts));
    const PageElement* since = page.with_id("since");
    ASSERT_NE(since, nullptr);
    EXPECT_NE(since->text().find("cannot be compared"), std::string::npos);
    EXPECT_TRUE(since->named("table").empty());
}

TEST(Compare, StandsOnPagesForOwnerCrewAndBuilder) {
    const Job then = job_of_text(first_visit());
    for (const Audience audience : {Audience::homeowner, Audience::crew, Audience::builder}) {
        const Job now = second_visit();
        MadePage made(now, settings_for(now, audience));
        EXPECT_EQ(made.page.with_id("since"), nullptr);
        made.facts.before = &then;
        const PageElement page = read_page(report_page(made.facts));
        const PageElement* since = page.with_id("since");
        ASSERT_NE(since, nullptr) << audience_id(audience);
        const std::string text = since->text();
        for (const char* wanted :
             {"Larkspur Court 4", "March 12, 2026", "door", "sink", "vent", "old-pipe", "(9 mm)", "(3 mm)", "House mouse"})
            EXPECT_NE(text.find(wanted), std::string::npos) << wanted << " in " << text;
    }
}

}  // namespace
}  // namespace seamward::test
