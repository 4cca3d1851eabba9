// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/remarks.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace seamward::test {
namespace {

std::vector<std::string> remarks(const std::string& yaml, const std::vector<std::string>& to = {}) {
    const Job job = parse_job_yaml("seamward: 1\n" + yaml, "job.yaml");
    TraceSettings settings;
    for (const std::string& id : to) {
        const auto found =
            std::find_if(job.survey.spaces.begin(), job.survey.spaces.end(), [&](const Space& space) { return space.id == id; });
        settings.to.push_back({static_cast<std::uint32_t>(found - job.survey.spaces.begin())});
    }
    return remarks_on(job, settings);
}

using Lines = std::vector<std::string>;

const std::string house =
    "spaces: [{id: yard, kind: outdoors}, {id: wall, kind: cavity}, {id: den, kind: living}]\n"
    "gaps:\n"
    "  - {id: screed, between: [yard, wall], slot: {width: 1 mm, length: 9 m}}\n"
    "  - {id: sink, between: [wall, den], hole: {diameter: 5 mm}}\n";

TEST(Remarks, AreNoneOnAnOrderlySurvey) { EXPECT_EQ(remarks(house), Lines{}); }

TEST(Remarks, SayThatNoPathCanBeginOrEnd) {
    EXPECT_EQ(remarks("spaces: []"), (Lines{"this survey has no outdoors or source space: no way in can begin",
                                            "this survey has no living space: no way in can end"}));
    EXPECT_EQ(remarks(house, {"yard"}), Lines{"yard is where ways in start; only ways from elsewhere end there"});
}

TEST(Remarks, NameRoomsThatNobodyLookedAt) {
    EXPECT_EQ(remarks("spaces: [{id: yard, kind: outdoors}, {id: den, kind: living, name: Den}, {id: a, kind: living}]\n"
                      "gaps: [{id: g, between: [yard, a], hole: {diameter: 1 mm}}]"),
              Lines{"Den: no gap of this room is listed, so that nothing is known of it"});
}

TEST(Remarks, NameAnAtticThatOnlyShutGapsLeadInto) {
    EXPECT_EQ(remarks("spaces: [{id: yard, kind: outdoors}, {id: attic, kind: cavity}, {id: den, kind: living}]\n"
                      "gaps:\n"
                      "  - {id: hatch, between: [attic, den], hole: {diameter: 5 mm}}\n"
                      "  - {id: vent, between: [yard, attic], hole: {diameter: 0 mm}}\n"),
              Lines{"attic: no open gap leads into this space from outdoors"});
}

TEST(Remarks, NameGapsFromRoomToRoom) {
    EXPECT_EQ(remarks("spaces: [{id: yard, kind: outdoors}, {id: hall, kind: living}, {id: den, kind: living}]\n"
                      "gaps:\n"
                      "  - {id: door, between: [yard, hall], slot: {width: 3 mm, length: 1 m}}\n"
                      "  - {id: under, name: under the den's door, between: [hall, den], slot: {width: 9 mm, length: 1 m}}\n"),
              Lines{"under the den's door: leads from room to room; a way in is told as far as its first room"});
}

TEST(Remarks, ObjectToClosedOpeningsThatMustStayOpen) {
    const std::string gaps =
        "  - {id: weep, between: [yard, wall], hole: {diameter: 5 mm}, duty: weep}\n"
        "  - {id: vent, between: [yard, wall], hole: {diameter: 90 mm}, duty: vent}\n"
        "  - {id: flue, between: [yard, wall], hole: {diameter: 90 mm}, closing: {never: it carries flue gas}}\n"
        "  - {id: door, between: [yard, wall], slot: {width: 3 mm, length: 1 m}, duty: operable}\n";
    EXPECT_EQ(
        remarks(
            house + gaps +
            "closed: [{gap: weep, with: bead}, {gap: vent, with: mesh, opening: 6 mm}, {gap: flue}, {gap: door, with: sweep}]"),
        (Lines{"weep: listed as closed, but must stay open; its duty: weep",
               "flue: listed as closed, and must never be: it carries flue gas"}));
}

/// "Rodents can chew through caulk, expanding foam, plastic, wood" (University of California).
TEST(Remarks, ObjectToFoamAgainstAnimalsThatGnaw) {
    const std::string closed = "closed: [{gap: screed, with: foam}, {gap: sink, with: mortar}]\n";
    EXPECT_EQ(remarks(house + closed + "pests: [house-mouse, norway-rat, bark-scorpion]"),
              Lines{"screed (foam): closed with what is gnawed through by House mouse and Norway rat"});
    EXPECT_EQ(remarks(house + closed + "pests: [bark-scorpion]"), Lines{});
}

TEST(Remarks, AskAboutSlotsThatAreWiderThanLong) {
    EXPECT_EQ(remarks(house + "  - {id: sweep, between: [yard, den], slot: {width: 36 in, length: 3/8 in}}\n"),
              Lines{"sweep: wider than long; were width and length swapped?"});
}

TEST(Remarks, CutLongLists) {
    std::string spaces = "spaces: [{id: yard, kind: outdoors}";
    for (int i = 0; i < 9; ++i) spaces += ", {id: r" + std::to_string(i) + ", kind: living}";
    EXPECT_EQ(remarks(spaces + "]"),
              Lines{"r0, r1, r2 and 6 more: no gap of these rooms is listed, so that nothing is known of them"});
}

}  // namespace
}  // namespace seamward::test
