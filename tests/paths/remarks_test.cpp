// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/remarks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace seamward::test {
namespace {

std::vector<std::string> remarks(const std::string& yaml, const std::vector<std::string>& to = {}) {
    const Job job = parse_job("seamward: 1\n" + yaml, "job.yaml");
    TraceSettings settings;
    for (const std::string& id : to) {
        const auto found =
            std::find_if(job.survey.spaces.begin(), job.survey.spaces.end(), [&](const Space& space) { return space.id == id; });
        settings.to.push_back({static_cast<std::uint32_t>(found - job.survey.spaces.begin())});
    }
    std::vector<std::string> lines;
    for (const Message& remark : remarks_on(job, settings)) lines.push_back(remark.english());
    return lines;
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
        (Lines{
            "weep is written down as closed with sealant bead. It must stay open: what is behind it drains and dries through it. "
            "Open it again",
            "flue is written down as closed. It must stay open: it carries flue gas. Open it again"}));
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

/// Of the gaps on the ways told, each once.
TEST(Remarks, CountTheWidthsThatNobodyMeasured) {
    const auto remark = [](const std::string& evidence, std::size_t top) {
        const Job job = parse_job(
            "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: wall, kind: cavity}, {id: den, kind: living}]\n"
            "gaps:\n  - {id: a, between: [yard, wall], hole: {diameter: 9 mm}, evidence: {how: assumed}}\n"
            "  - {id: b, between: [wall, den], hole: {diameter: 5 mm}" +
                evidence +
                "}\n  - {id: c, between: [yard, wall], hole: {diameter: 6 mm}, evidence: {how: measured}}\n"
                "  - {id: d, between: [yard, wall], hole: {diameter: 0 mm}, evidence: {how: assumed}}\n",
            "job.yaml");
        TraceSettings settings;
        settings.top = top;
        const std::optional<Message> said = remark_on_widths(job.survey, trace(job.survey, settings, RunContext()));
        return said ? said->english() : "nothing";
    };
    const std::string many = " are not measured: their widths are starting values or guesses";
    EXPECT_EQ(remark(", evidence: {how: assumed}", 9), "2 of the 3 gaps on the ways listed" + many);
    EXPECT_EQ(remark(", evidence: {how: assumed}", 1), "2 of the 2 gaps on the ways listed" + many);
    EXPECT_EQ(remark("", 9), "1 of the 3 gaps on the ways listed is not measured: its width is a starting value or a guess");
    EXPECT_EQ(remark("", 0), "nothing");
}

const std::string rooms =
    "spaces: [{id: yard, kind: outdoors}, {id: a, kind: living}, {id: b, kind: living}, {id: c, kind: living}, "
    "{id: d, kind: living}]\n"
    "gaps:\n"
    "  - {id: door, between: [yard, a], slot: {width: 8 mm, length: 1 m}}\n"
    "  - {id: crack, between: [yard, b], slot: {width: 3 mm, length: 1 m}}\n"
    "  - {id: arch, between: [a, b], slot: {width: 900 mm, length: 2 m}}\n"
    "  - {id: sweep, between: [b, c], slot: {width: 5 mm, length: 1 m}}\n"
    "  - {id: shut, between: [c, d], slot: {width: 0 mm, length: 1 m}}\n";

/// "a 900" for each room: the room that it is open to, and the smallest opening on the way there in millimeters.
std::string shared(const std::string& yaml, const std::vector<std::string>& pests = {}) {
    const Job job = parse_job("seamward: 1\n" + yaml, "job.yaml");
    TraceSettings settings;
    for (const Pest& pest : job.pests) {
        if (std::find(pests.begin(), pests.end(), pest.id) != pests.end()) settings.pests.push_back(pest);
    }
    std::string text;
    for (const auto& air : shared_air(job.survey, settings, trace(job.survey, settings, RunContext()).rooms)) {
        text += text.empty() ? "" : ", ";
        text += air ? job.survey[air->with].id + " " + std::to_string(std::lround(air->width * 1000)) : "-";
    }
    return text;
}

/// Only where it makes a room more open than its own ways in do.
TEST(SharedAir, IsThatOfTheRoomWithTheWidestWayIn) {
    EXPECT_EQ(shared(rooms), "-, a 900, a 5, -");
    EXPECT_EQ(shared(rooms + "  - {id: hole, between: [yard, c], hole: {diameter: 30 mm}}\n"), "-, a 900, -, -");
    EXPECT_EQ(shared(rooms + "  - {id: hole, between: [yard, b], hole: {diameter: 30 mm}}\n"), "b 900, -, b 5, -");
}

TEST(SharedAir, CountsOnlyOpeningsForTheAnimalsAskedFor) {
    const std::string animals = "pests: [{id: fat, slit: 6 mm, hole: 7 mm}, {id: thin, slit: 1 mm, hole: 1 mm}]\n";
    EXPECT_EQ(shared(rooms + animals, {"fat"}), "-, a 900, -, -");
    EXPECT_EQ(shared(rooms + animals, {"thin"}), "-, a 900, a 5, -");
}

TEST(PestsKeptOut, HaveNoWayEvenIfWidthsAreLarger) {
    const std::string yaml =
        "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: attic, kind: cavity}, {id: den, kind: living}]\n"
        "gaps: [{id: v, between: [yard, attic], hole: {diameter: 50 mm}}, {id: h, between: [attic, den], hole: {diameter: 5 mm}, "
        "evidence: {how: assumed, plus_minus: 1 mm}}]\n"
        "pests: [{id: small, slit: 4 mm, hole: 5 mm}, {id: maybe, slit: 5 mm, hole: 6 mm}, {id: large, slit: 9 mm, hole: 9 "
        "mm}]\n";
    const Job job = parse_job(yaml, "job.yaml");
    EXPECT_EQ(pests_kept_out(job.survey, {}, job.pests), std::vector<std::size_t>{2});
    const std::vector<SpaceIndex> attic{{1}};
    EXPECT_TRUE(pests_kept_out(job.survey, attic, job.pests).empty());
    Survey without = job.survey;
    without.spaces[0].kind = SpaceKind::cavity;
    EXPECT_TRUE(pests_kept_out(without, {}, job.pests).empty()) << "no way in can begin: nothing is known";
}

}  // namespace
}  // namespace seamward::test
