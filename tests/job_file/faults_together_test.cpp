// SPDX-License-Identifier: GPL-3.0-or-later
// All faults of a file are found at once, in the order of the file.
#include <gtest/gtest.h>

#include <chrono>

#include "job_file/job.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/marked_text.h"

namespace seamward::test {
namespace {

TEST(FaultsTogether, EachIsReportedOnceAtItsPlace) {
    const MarkedText marked(R"(seamward: ^3
job: {^titel: "x"}
spaces:
  - {id: yard, kind: ^outside}
  - {id: "véranda", kind: attached, source: ^1}
  - {id: wall, kind: cavity}
  - ^{id: wall, kind: living}
gaps:
  - {id: a, between: [yard, ^kitchen], slot: {width: ^1.2, length: ^9 yards}}
  - {id: b, between: [véranda, ^walll], hole: {diameter: ^-5 mm}, count: ^0}
  - ^{id: c, between: ^[yard], duty: ^sewer}
  - ^{id: a, between: ^[wall, wall], ring: {width: ^nan mm, around: 22 mm}}
  - {id: d, between: [yard, wall], mesh: ^{area: ^100}, at: ^[1 m], closing: {cost: ^8}}
pests: [house-mouse, ^hous-mouse, {id: x, slit: ^1.5, hole: 4 mm}]
closed: [{gap: ^zzz}, {gap: b, with: ^glue}]
^extra: 1
)");
    const auto faults = faults_of([&] { (void)parse_job(marked.text, "job.yaml"); });
    EXPECT_EQ(faults.size(), marked.places.size()) << listing(faults);
    for (const Place place : marked.places) EXPECT_TRUE(has_fault(faults, place, "", ""));
    for (std::size_t i = 1; i < faults.size(); ++i) {
        EXPECT_LE(std::pair(faults[i - 1].place.line, faults[i - 1].place.column),
                  std::pair(faults[i].place.line, faults[i].place.column));
    }
}

TEST(FaultsTogether, MisspelledRequiredKeyIsNamedWithTheNearest) {
    const MarkedText marked(R"(seamward: 1
spaces: [{id: yard, kind: outdoors}, {id: kitchen, kind: living}]
gaps: [{id: g, between: [yard, kitchen], slot: {^widht: 1 mm, length: 9 m}}]
)");
    const auto faults = faults_of([&] { (void)parse_job(marked.text, "job.yaml"); });
    EXPECT_TRUE(has_fault(faults, marked.places.at(0), "unknown key \"widht\" in slot", "did you mean width?"));
}

TEST(FaultsTogether, ManyAreReportedInTimeAndMemoryThatOneCanAfford) {
    const auto begun = std::chrono::steady_clock::now();
    std::string text = "seamward: 1\nspaces:\n";
    for (int i = 0; i < 5000; ++i) text += "  - {id: space-number-" + std::to_string(i) + ", kind: cavity}\n";
    text += "gaps:\n";
    for (int i = 0; i < 30'000; ++i) {
        const std::string n = std::to_string(i);
        text += "  - {id: g" + n + ", between: [space-numbr-" + n + ", spacenumber-" + n + "], slot: {width: 1, length: 1 m}}\n";
    }
    const auto faults = faults_of([&] { (void)parse_job(text, "job.yaml"); });
    EXPECT_EQ(faults.size(), Diagnostics::most_listed + 1);
    EXPECT_NE(faults.back().what.find("80000 more faults"), std::string::npos) << faults.back().what;
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - begun;
    EXPECT_LT(spent.count(), 20) << "seconds";
}

}  // namespace
}  // namespace seamward::test
