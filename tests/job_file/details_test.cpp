// SPDX-License-Identifier: GPL-3.0-or-later
// What codes ask of a house and its gaps do not tell: construction, appliances, details. Every fault with its place and mending,
// all at once; and that editing a job's text, writing it as JSON and reading it again keeps them.
#include <gtest/gtest.h>

#include "job_file/job.h"
#include "job_file/job_edits.h"
#include "job_file/job_json.h"
#include "job_file/read_details.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

const std::string head = R"(seamward: 1
spaces:
  - {id: yard, kind: outdoors}
  - {id: closet, kind: living}
gaps:
  - {id: hood, between: [yard, closet], slot: {width: 8 mm, length: 0.1 m}, duty: exhaust}
  - {id: vent, between: [yard, closet], mesh: {opening: 6 mm}, duty: vent}
)";  // what is added begins on line 8

Job job_with(const std::string& more) { return parse_job(head + more + "\n", "job.yaml"); }

std::vector<Diagnostic> faults(const std::string& more) {
    return faults_of([&] { (void)job_with(more); });
}

TEST(Details, AreReadInTheUnitsOfTheirMeasures) {
    const Job job = job_with(
        R"(construction: {cladding: [stucco, brick], foundation: crawl-space, has: [garage, hot-zone], without: [chimney]}
appliances:
  - {in: closet, burns: "40,000 Btu/h", note: "water heater"}
  - {in: closet, burns: 10 kW}
details:
  - {what: smallest-side, gap: hood, is: 3 in, plus_minus: 1/8 in}
  - {what: backdraft-damper, gap: hood, is: false, note: "torn off"}
  - {what: open-area, gap: vent, is: 20 in2}
  - {what: screed-flange, is: 2 in, at: "north wall"}
  - {what: screed-flange, is: 4 in, at: "south wall"}
  - {what: chimney-cap-area, is: 350 %}
  - {what: airtightness, is: 4.2 per hour, plus_minus: 0.4 per hour}
  - {what: rated-opening-area, is: 1 ft2})");
    EXPECT_EQ(job.built_of.cladding, (std::vector<std::string>{"stucco", "brick"}));
    EXPECT_EQ(job.built_of.foundation, "crawl-space");
    EXPECT_EQ(job.built_of.has, (std::vector<std::string>{"garage", "hot-zone"}));
    EXPECT_EQ(job.built_of.without, std::vector<std::string>{"chimney"});
    ASSERT_EQ(job.inputs.size(), 1U) << "all in one space count together";
    EXPECT_NEAR(job.inputs[0].btu_per_hour, 40000 + 10 * 3412.142, 1e-6);
    ASSERT_EQ(job.details.size(), 8U);
    EXPECT_DOUBLE_EQ(job.details[0].value, 3 * 0.0254);
    EXPECT_DOUBLE_EQ(job.details[0].plus_minus, 0.0254 / 8);
    EXPECT_EQ(job.details[0].gap, GapIndex{0});
    EXPECT_EQ(job.details[1].value, 0);
    EXPECT_DOUBLE_EQ(job.details[2].value, 20 * 0.0254 * 0.0254);
    EXPECT_EQ(job.details[3].at, "north wall");
    EXPECT_FALSE(job.details[3].gap);
    EXPECT_DOUBLE_EQ(job.details[5].value, 3.5);
    EXPECT_DOUBLE_EQ(job.details[6].value, 4.2);
    EXPECT_DOUBLE_EQ(job.details[7].value, 0.3048 * 0.3048);
}

TEST(Details, InputsOfAppliances) {
    EXPECT_EQ(parse_input("40000 Btu/h"), 40000);
    EXPECT_EQ(parse_input("40,000 Btu/h"), 40000);
    EXPECT_NEAR(*parse_input("12 kW"), 40945.704, 1e-3);
    for (const char* none :
         {"", "40000", "40000 BTU", "0 Btu/h", "-1 kW", "nan kW", "inf kW", "1e999 kW", "kW", "12 kW/h", "x kW"})
        EXPECT_FALSE(parse_input(none)) << none;
}

struct Fault {
    const char* more;
    std::uint32_t line, column;
    const char *what, *mend;
};

class DetailFaults : public testing::TestWithParam<Fault> {};

TEST_P(DetailFaults, AreToldWithPlaceAndMending) {
    const Fault& fault = GetParam();
    EXPECT_TRUE(only_fault(faults(fault.more), {fault.line, fault.column}, fault.what, fault.mend)) << fault.more;
}

constexpr std::array<Fault, 26> all_faults{{
    {"construction: {colour: red}", 8, 16, "colour", ""},
    {"construction: {foundation: slabb}", 8, 28, "slabb", "slab"},
    {"construction: {has: [gargae]}", 8, 22, "unknown word \"gargae\"", "garage"},
    {"construction: {without: [floodzone]}", 8, 26, "unknown word \"floodzone\"", "flood-zone"},
    {"construction: {has: [garage], without: [garage]}", 8, 41, "has garage and has it not", "keep one"},
    {"construction: {without: [fuel-appliances]}\nappliances: [{in: closet, burns: 12 kW}]", 8, 15, "no fuel-appliances",
     "without"},
    {"appliances: [{burns: 12 kW}]", 8, 14, "in", ""},
    {"appliances: [{in: closet}]", 8, 14, "burns", ""},
    {"appliances: [{in: closte, burns: 12 kW}]", 8, 19, "closte", "closet"},
    {"appliances: [{in: closet, burns: 40000}]", 8, 34, "burns is the input", "40000 Btu/h"},
    {"appliances: [{in: closet, burns: 12 kW, gas: true}]", 8, 41, "gas", ""},
    {"details: [{is: 1 in}]", 8, 11, "what", ""},
    {"details: [{what: screed-flange}]", 8, 11, "is", ""},
    {"details: [{what: screed-flnage, is: 1 in}]", 8, 18, "unknown measure \"screed-flnage\"", "screed-flange"},
    {"details: [{what: clear-width, is: 1 in}]", 8, 18, "reckoned from gaps", "of the gaps themselves"},
    {"details: [{what: screed-flange, is: 1}]", 8, 37, "is", "in"},
    {"details: [{what: screed-flange, is: 1 in2}]", 8, 37, "is", ""},
    {"details: [{what: screed-flange, is: -1 in}]", 8, 37, "is", ""},
    {"details: [{what: airtightness, is: 5}]", 8, 36, "air changes", "4.2 per hour"},
    {"details: [{what: draft-tested, is: perhaps}]", 8, 36, "is", "true"},
    {"details: [{what: draft-tested, is: true, plus_minus: 1 in}]", 8, 54, "an answer is sure", "remove"},
    {"details: [{what: screed-flange, is: 1 in, gap: hood}]", 8, 48, "of the house, not of a gap", "at"},
    {"details: [{what: smallest-side, is: 1 in}]", 8, 11, "gap", ""},
    {"details: [{what: smallest-side, is: 1 in, gap: hodo}]", 8, 48, "hodo", "hood"},
    {"details: [{what: screed-flange, is: 1 in}, {what: screed-flange, is: 2 in}]", 8, 44, "stated twice", "keep one"},
    {"details: [{what: screed-flange, is: 1 in}, {what: screed-flange, is: 2 in, at: north}]", 8, 44,
     "whole house and of a place", "worst"},
}};

INSTANTIATE_TEST_SUITE_P(Each, DetailFaults, testing::ValuesIn(all_faults));

TEST(Details, AllFaultsAreToldAtOnce) {
    const std::vector<Diagnostic> found = faults(R"(construction: {has: [gargae], foundation: slabb}
appliances: [{in: closte, burns: 12}]
details:
  - {what: screed-flnage, is: 1 in}
  - {what: smallest-side, gap: hodo, is: 1 in}
  - {what: airtightness, is: 5})");
    const std::string text = listing(found);
    EXPECT_EQ(found.size(), 7U) << text;
    for (const char* part : {"gargae", "slabb", "closte", "burns is the input", "screed-flnage", "hodo", "air changes"})
        EXPECT_NE(text.find(part), std::string::npos) << part << text;
}

/// A described house says for itself how it is built.
TEST(Details, DoNotContradictADescribedHouse) {
    const ScratchFolder folder;
    folder.write("house.yaml",
                 "seamward-house: 1\nassemblies:\n  - id: wall\n    layers: [{of: stucco, thick: 22 mm}, {air: true, thick: 89 "
                 "mm}, {of: drywall, "
                 "thick: 13 mm}]\noutline: [[0 m, 0 m], [12 m, 0 m], [12 m, 8 m], [0 m, 8 m]]\nstories: [{height: 2.5 m}]\n"
                 "rooms: [{id: room, at: [2 m, 2 m]}]\nroof: {shape: hip, pitch: 4/12, overhang: 0.6 m}\n");
    const auto found = [&](const std::string& more) {
        return faults_of([&] { (void)parse_job("seamward: 1\nhouse: house.yaml\n" + more + "\n", folder.path() / "job.yaml"); });
    };
    EXPECT_TRUE(only_fault(found("construction: {cladding: [brick]}"), {3, 26}, "the file of the house says", "remove"))
        << "line 3";
    EXPECT_TRUE(only_fault(found("construction: {foundation: basement}"), {3, 28}, "the file of the house says", "remove"));
    EXPECT_TRUE(only_fault(found("construction: {without: [attic]}"), {3, 26}, "has attic and has it not", "remove it here"));
    EXPECT_TRUE(found("construction: {has: [garage, flood-zone], without: [chimney]}").empty()) << "its file need not show all";
}

const std::string stated = R"(# how it is built
construction: {cladding: [stucco], has: [garage]}  # from the drawings
appliances:
  - {in: closet, burns: 40000 Btu/h}
details:
  - {what: screed-flange, is: 3 1/2 in, at: "north wall"}  # measured
)";

void expect_stated(const Job& job) {
    EXPECT_EQ(job.built_of.cladding, std::vector<std::string>{"stucco"});
    EXPECT_EQ(job.built_of.has, std::vector<std::string>{"garage"});
    ASSERT_EQ(job.inputs.size(), 1U);
    EXPECT_EQ(job.inputs[0].btu_per_hour, 40000);
    ASSERT_EQ(job.details.size(), 1U);
    EXPECT_EQ(job.details[0].at, "north wall");
    EXPECT_DOUBLE_EQ(job.details[0].value, 3.5 * 0.0254);
}

TEST(Details, AreKeptWhenTheTextIsChanged) {
    ChangeGap wider;
    wider.id = "hood";
    wider.shape = ShapeText{"slot", "9 mm", std::nullopt};
    const std::string text = head + stated;
    const std::string after = apply(text, "job.yaml", wider).text;
    EXPECT_NE(after.find("width: 9 mm"), std::string::npos);
    EXPECT_NE(after.find(stated), std::string::npos) << after;
    expect_stated(parse_job(after, "job.yaml"));
}

/// What was said of a gap goes with it; what was said of others stays.
TEST(Details, OfAGapGoWithIt) {
    const std::string text =
        head +
        "details:\n  - {what: smallest-side, gap: hood, is: 3 in}\n  - {what: backdraft-damper, gap: hood, is: true}\n"
        "  - {what: open-area, gap: vent, is: 20 in2}\n";
    const std::string after = apply(text, "job.yaml", RemoveGap{"hood"}).text;
    const Job job = parse_job(after, "job.yaml");
    ASSERT_EQ(job.details.size(), 1U) << after;
    EXPECT_EQ(job.details[0].measure, "open-area");
}

TEST(Details, AreKeptInJson) {
    const std::string json = job_as_json(head + stated, "job.yaml");
    expect_stated(parse_job(json, "job.json"));
}

}  // namespace
}  // namespace seamward::test
