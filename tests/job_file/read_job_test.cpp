// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <sstream>

#include "job_file/job.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

/// Every key of gaps that docs/job-file.md has, but for names and notes.
constexpr std::string_view example_yaml = R"(seamward: 1                       # format version, required
job: {name: "Larkspur Court, unit 4"}
spaces:
  - {id: yard, kind: outdoors}
  - {id: north-wall, kind: cavity}
  - {id: kitchen, kind: living}
gaps:
  - id: screed-north
    between: [yard, north-wall]
    slot: {width: 1.2 mm, length: 9 m}
    at: [4.5 m, 9 m, 0.05 m]      # optional, as are the next four
    depth: 22 mm
    substrates: [stucco, concrete]
    evidence: {how: measured, plus_minus: 0.2 mm}   # measured | modeled | assumed
  - {id: screed-holes, between: [yard, north-wall], hole: {diameter: 5 mm}, count: 30, duty: drain}
  - {id: sink-pipe, between: [north-wall, kitchen], ring: {width: 2.5 mm, around: 22 mm}, closing: {cost: $8.00}}
  - {id: bib, between: [yard, kitchen], hole: {diameter: 5 mm}, closing: {never: "says why"}}
  - {id: louver, between: [yard, north-wall], mesh: {opening: 5.7 mm, area: 100 cm2}, duty: vent}   # area optional
pests: [bark-scorpion, house-mouse, {id: x, slit: 1.5 mm, hole: 4 mm}]
closed: [{gap: bib, with: bead}]      # done already
)";

constexpr std::string_view example_json = R"({"seamward": 1, "job": {"name": "Larkspur Court, unit 4"},
  "spaces": [{"id": "yard", "kind": "outdoors"}, {"id": "north-wall", "kind": "cavity"}, {"id": "kitchen", "kind": "living"}],
  "gaps": [
    {"id": "screed-north", "between": ["yard", "north-wall"], "slot": {"width": "1.2 mm", "length": "9 m"},
     "at": ["4.5 m", "9 m", "0.05 m"],
     "depth": "22 mm", "substrates": ["stucco", "concrete"], "evidence": {"how": "measured", "plus_minus": "0.2 mm"}},
    {"id": "screed-holes", "between": ["yard", "north-wall"], "hole": {"diameter": "5 mm"}, "count": 30, "duty": "drain"},
    {"id": "sink-pipe", "between": ["north-wall", "kitchen"], "ring": {"width": "2.5 mm", "around": "22 mm"},
     "closing": {"cost": "$8.00"}},
    {"id": "bib", "between": ["yard", "kitchen"], "hole": {"diameter": "5 mm"}, "closing": {"never": "says why"}},
    {"id": "louver", "between": ["yard", "north-wall"], "mesh": {"opening": "5.7 mm", "area": "100 cm2"}, "duty": "vent"}],
  "pests": ["bark-scorpion", "house-mouse", {"id": "x", "slit": "1.5 mm", "hole": "4 mm"}],
  "closed": [{"gap": "bib", "with": "bead"}]})";

Job parse(std::string_view text) { return parse_job(text, "job.yaml"); }

/// Everything that was read, for comparing two jobs.
std::string all_of(const Job& job) {
    std::ostringstream out;
    out.precision(17);
    out << job.name << '|' << job.address << '|' << job.surveyed << '|' << job.surveyor << '|' << job.notes << '\n';
    for (const Space& space : job.survey.spaces)
        out << space.id << '|' << space.name << '|' << static_cast<int>(space.kind) << '|' << space.source << '\n';
    for (const Gap& gap : job.survey.gaps) {
        out << gap.id << '|' << gap.name << '|' << gap.between[0].value << '|' << gap.between[1].value << '|'
            << shape_word(gap.shape) << '|' << clear_width(gap.shape) << '|' << gap.count << '|' << static_cast<int>(gap.duty)
            << '|' << gap.depth.value_or(-1) << '|' << static_cast<int>(gap.evidence.how) << '|' << gap.evidence.plus_minus << '|'
            << gap.closing.cost.value_or(Money{-1}).cents << '|' << gap.closing.never;
        if (gap.at) out << '|' << gap.at->x << ' ' << gap.at->y << ' ' << gap.at->z;
        for (const std::string& substrate : gap.substrates) out << '|' << substrate;
        out << '\n';
    }
    for (const Pest& pest : job.pests)
        out << pest.id << '|' << pest.name << '|' << pest.size.slit << '|' << pest.size.hole << '|' << pest.margin << '\n';
    for (const ClosedGap& closed : job.closed)
        out << closed.gap.value << '|' << closed.with << '|' << clear_width(closed.before) << '\n';
    return out.str();
}

TEST(ReadJob, ReadsTheKeysOfThePage) {
    const Job job = parse(example_yaml);
    EXPECT_EQ(job.name, "Larkspur Court, unit 4");
    ASSERT_EQ(job.survey.spaces.size(), 3U);
    EXPECT_EQ(job.survey.spaces[0].kind, SpaceKind::outdoors);
    EXPECT_EQ(job.survey.spaces[1].kind, SpaceKind::cavity);
    EXPECT_EQ(job.survey.spaces[2].kind, SpaceKind::living);
    ASSERT_EQ(job.survey.gaps.size(), 5U);
    EXPECT_EQ(clear_width(job.survey.gaps[0].shape), 0.0012);
    EXPECT_EQ(job.survey.gaps[1].count, 30U);
    EXPECT_EQ(job.survey.gaps[2].closing.cost, Money{800});
    EXPECT_EQ(clear_width(job.survey.gaps[3].shape), 0);  // closed already
    EXPECT_EQ(job.survey.gaps[4].duty, Duty::vent);
    ASSERT_EQ(job.pests.size(), 3U);
    EXPECT_EQ(job.pests[0].id, "bark-scorpion");
    EXPECT_EQ(job.pests[0].size.slit, 0.0015875);
    EXPECT_EQ(job.pests[2].id, "x");
    EXPECT_EQ(job.pests[2].size.slit, 0.0015);
    EXPECT_EQ(job.pests[2].size.hole, 0.004);
    EXPECT_EQ(job.closed.size(), 1U);
}

TEST(ReadJob, IsTheSameFromJson) {
    const ScratchFolder folder;
    const Job json = read_job(folder.write("job.json", example_json), RunContext());
    const Job yaml = read_job(folder.write("job.yaml", example_yaml), RunContext());
    EXPECT_EQ(all_of(json), all_of(yaml));
    EXPECT_EQ(all_of(yaml), all_of(parse(example_yaml)));
    EXPECT_EQ(json.survey.gaps.size(), 5U);
}

TEST(ReadJob, JsonFaultsHaveTheirPlaces) {
    const ScratchFolder folder;
    const auto path = folder.write(
        "job.json", "{\"seamward\": 1,\n \"gaps\": [{\"id\": \"g\", \"between\": [\"a\", \"b\"], \"hole\": {\"diameter\": 5}}]}");
    const auto faults = faults_of([&] { (void)read_job(path, RunContext()); });
    EXPECT_EQ(faults.size(), 3U);
    EXPECT_TRUE(has_fault(faults, {2, 35}, "unknown space \"a\"", ""));
    EXPECT_TRUE(has_fault(faults, {2, 40}, "unknown space \"b\"", ""));
    EXPECT_TRUE(has_fault(faults, {2, 67}, "bare number", "5 mm"));
}

TEST(ReadJob, NeedsOnlyItsVersion) {
    const Job job = parse("seamward: 1\n");
    EXPECT_TRUE(job.survey.spaces.empty());
    EXPECT_TRUE(job.survey.gaps.empty());
    EXPECT_TRUE(job.pests.empty());
    EXPECT_TRUE(job.closed.empty());
    EXPECT_EQ(job.name, "");
}

TEST(ReadJob, TakesEmptyLists) {
    EXPECT_TRUE(parse("seamward: 1\nspaces: []\ngaps:\npests: ~\nclosed: []\n").survey.gaps.empty());
}

TEST(ReadJob, TakesKeysInAnyOrder) {
    const Job job = parse(R"(closed: [{gap: g}]
gaps: [{hole: {diameter: 5 mm}, between: [a, b], id: g}]
spaces: [{kind: outdoors, id: a}, {kind: living, id: b}]
seamward: 1
)");
    EXPECT_EQ(job.survey.gaps.size(), 1U);
    EXPECT_EQ(job.closed.size(), 1U);
}

TEST(ReadJob, ReadsTheHead) {
    const Job job = parse(R"(seamward: 1
job: {name: n, address: "12 Way", surveyed: 2026-03-12, surveyor: s, notes: "two\nlines"}
)");
    EXPECT_EQ(job.name, "n");
    EXPECT_EQ(job.address, "12 Way");
    EXPECT_EQ(job.surveyed, "2026-03-12");
    EXPECT_EQ(job.surveyor, "s");
    EXPECT_EQ(job.notes, "two\nlines");
}

TEST(ReadJob, ReadsEveryKindOfSpace) {
    const Job job = parse(R"(seamward: 1
spaces:
  - {id: a, kind: outdoors, name: "the yard", note: "windy"}
  - {id: b, kind: cavity, source: true}
  - {id: c, kind: attached}
  - {id: d, kind: living, source: false}
  - {id: e, kind: harborage}
)");
    const std::vector<Space>& spaces = job.survey.spaces;
    ASSERT_EQ(spaces.size(), 5U);
    EXPECT_EQ(spaces[0].kind, SpaceKind::outdoors);
    EXPECT_EQ(spaces[0].label(), "the yard");
    EXPECT_EQ(spaces[1].kind, SpaceKind::cavity);
    EXPECT_TRUE(spaces[1].source);
    EXPECT_EQ(spaces[1].label(), "b");
    EXPECT_EQ(spaces[2].kind, SpaceKind::attached);
    EXPECT_EQ(spaces[3].kind, SpaceKind::living);
    EXPECT_FALSE(spaces[3].source);
    EXPECT_EQ(spaces[4].kind, SpaceKind::harborage);
    EXPECT_TRUE(spaces[0].starts_paths());
    EXPECT_TRUE(spaces[1].starts_paths());
    EXPECT_FALSE(spaces[4].starts_paths());
}

/// Words that YAML readers are known to turn into something else.
TEST(ReadJob, KeepsIdsAsTheyAreWritten) {
    const Job job = parse(R"(seamward: 1
spaces: [{id: no, kind: outdoors}, {id: 12, kind: cavity}, {id: 012, kind: cavity}, {id: '~', kind: cavity},
         {id: true, kind: cavity},
         {id: 1e3, kind: cavity}, {id: 1000, kind: cavity}, {id: 2026-03-12, kind: living}, {id: "étage 漢", kind: living}]
gaps: [{id: off, between: [no, 12], hole: {diameter: 5 mm}}, {id: 12, between: ['~', 012], hole: {diameter: 5 mm}},
       {id: .inf, between: [1e3, 1000], hole: {diameter: 5 mm}}, {id: "a b", between: [true, étage 漢], hole: {diameter: 5 mm}}]
closed: [{gap: 12}]
)");
    std::string ids;
    for (const Space& space : job.survey.spaces) ids += space.id + ' ';
    EXPECT_EQ(ids, "no 12 012 ~ true 1e3 1000 2026-03-12 étage 漢 ");
    EXPECT_EQ(job.survey.gaps[1].between[0].value, 3U);
    EXPECT_EQ(job.survey.gaps[1].between[1].value, 2U);
    EXPECT_EQ(job.survey.gaps[2].id, ".inf");
    EXPECT_EQ(job.closed[0].gap.value, 1U);
}

/// A bare ~ is YAML's word for nothing; in quotes it is a letter.
TEST(ReadJob, TakesABareTildeForNoId) {
    const auto faults =
        faults_of([] { (void)parse("seamward: 1\nspaces: [{id: ~, kind: living}, {id: null, kind: living}]\n"); });
    EXPECT_EQ(faults.size(), 2U);
    EXPECT_TRUE(has_fault(faults, {2, 15}, "id holds nothing", ""));
    EXPECT_TRUE(has_fault(faults, {2, 38}, "id holds nothing", ""));
}

TEST(ReadJob, ReadsNamesAndMarginsOfItsOwnPests) {
    const Job job = parse(
        "seamward: 1\npests: [{id: x, name: \"my mouse\", slit: 1/4 in, hole: 1/4 in, margin: 20 %}, {id: bat, slit: 5 mm, hole: "
        "5 mm}]\n");
    EXPECT_EQ(job.pests[0].name, "my mouse");
    EXPECT_EQ(job.pests[0].margin, 0.2);
    EXPECT_EQ(job.pests[1].size.slit, 0.005);  // a profile of the job's own goes before the catalog's
    EXPECT_EQ(job.pests[1].name, "bat");
}

TEST(ReadJob, FollowsAliases) {
    const Job job = parse(R"(seamward: 1
spaces: [{id: a, kind: outdoors}, {id: b, kind: living}]
gaps:
  - {id: g, between: &ends [a, b], hole: &five {diameter: 5 mm}}
  - {id: h, between: *ends, hole: *five}
)");
    EXPECT_EQ(clear_width(job.survey.gaps[1].shape), 0.005);
}

TEST(ReadJob, StopsWhenCalledOff) {
    const ScratchFolder folder;
    RunContext context;
    context.cancel();
    const auto path = folder.write("job.yaml", example_yaml);
    EXPECT_THROW((void)read_job(path, context), Cancelled);
}

TEST(Heading, IsTheNameOrElseTheFile) {
    EXPECT_EQ(heading(parse("seamward: 1\njob: {name: n}\n"), "a/b.yaml"), "n");
    EXPECT_EQ(heading(parse("seamward: 1\n"), "a/b.yaml"), "b.yaml");
}

TEST(ReadJob, KnowsWhatAirIsReckonedBy) {
    const Job job = parse_job(
        "seamward: 1\n"
        "spaces:\n"
        "  - {id: attic, kind: cavity, floor: 140 m2}\n"
        "  - {id: crawl-space, kind: cavity, floor: 100 ft2}\n"
        "  - {id: closet, kind: attached, burns: \"40,000 Btu/h\"}\n"
        "  - {id: furnace-room, kind: attached, burns: 10 kW}\n",
        "job.yaml");
    ASSERT_EQ(job.vented.size(), 2U);
    EXPECT_EQ(job.vented[0].space, SpaceIndex{0});
    EXPECT_DOUBLE_EQ(job.vented[0].floor, 140);
    EXPECT_EQ(job.vented[0].rule, "attic");
    EXPECT_NEAR(job.vented[1].floor, 9.290304, 1e-9);
    EXPECT_EQ(job.vented[1].rule, "under-floor");
    ASSERT_EQ(job.inputs.size(), 2U);
    EXPECT_EQ(job.inputs[0].space, SpaceIndex{2});
    EXPECT_DOUBLE_EQ(job.inputs[0].btu_per_hour, 40000);
    EXPECT_NEAR(job.inputs[1].btu_per_hour, 34121.42, 1e-6);
}

TEST(ReadJob, InputWithoutAUnitIsAFault) {
    for (const char* text : {"40000", "hot", "-3 kW", "0 Btu/h", "12kW"}) {
        const auto faults = faults_of([&] {
            (void)parse_job("seamward: 1\nspaces: [{id: closet, kind: attached, burns: " + std::string(text) + "}]\n",
                            "job.yaml");
        });
        ASSERT_EQ(faults.size(), 1U) << text;
        EXPECT_EQ(faults[0].mend, "write for example 40000 Btu/h or 12 kW");
    }
}

}  // namespace
}  // namespace seamward::test
