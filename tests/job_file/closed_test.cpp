// SPDX-License-Identifier: GPL-3.0-or-later
// `closed`: a gap listed there has the clear width that its treatment left.
#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "job_file/job.h"

namespace seamward::test {
namespace {

Job job_with(const std::string& closed) {
    return parse_job(R"(seamward: 1
spaces:
  - {id: yard, kind: outdoors}
  - {id: kitchen, kind: living}
gaps:
  - {id: bib, between: [yard, kitchen], hole: {diameter: 5 mm}, count: 3, evidence: {how: measured, plus_minus: 0.5 mm}}
  - {id: louver, between: [yard, kitchen], mesh: {opening: 6 mm, area: 100 cm2}, duty: vent}
  - {id: never, between: [yard, kitchen], slot: {width: 2 mm, length: 1 m}, closing: {never: "it drains"}}
closed: )" + closed + "\n",
                     "job.yaml");
}

const Gap& bib(const Job& job) { return job.survey.gaps[0]; }

TEST(Closed, WithoutATreatmentTheGapIsShut) {
    const Job job = job_with("[{gap: bib}]");
    EXPECT_EQ(clear_width(bib(job).shape), 0);
    EXPECT_TRUE(is_shut(bib(job).shape));
    ASSERT_EQ(job.closed.size(), 1U);
    EXPECT_EQ(job.closed[0].gap.value, 0U);
    EXPECT_EQ(job.closed[0].with, "");
    EXPECT_EQ(std::get<Hole>(job.closed[0].before).diameter, 0.005);
}

TEST(Closed, WithEveryFullClosingTheGapIsShut) {
    for (const Treatment& treatment : shipped_treatments().rows) {
        if (treatment.leaves != Treatment::Leaves::nothing) continue;
        const Job job = job_with("[{gap: bib, with: " + treatment.id + "}]");
        EXPECT_EQ(clear_width(bib(job).shape), 0) << treatment.id;
        EXPECT_EQ(job.closed[0].with, treatment.id);
    }
}

/// No plus_minus of the old opening is left that would let an animal through a full closing.
TEST(Closed, LeavesNothingOfTheUncertaintyOfWhatWasThere) {
    EXPECT_EQ(bib(job_with("[{gap: bib, with: bead}]")).evidence.plus_minus, 0);
    EXPECT_TRUE(is_shut(
        widened(bib(job_with("[{gap: bib, with: bead}]")).shape, bib(job_with("[{gap: bib, with: bead}]")).evidence.plus_minus)));
}

TEST(Closed, WithMeshTheGapHasItsOpening) {
    const Job job = job_with("[{gap: bib, with: mesh, opening: 1.3 mm}]");
    ASSERT_TRUE(std::holds_alternative<Mesh>(bib(job).shape));
    EXPECT_EQ(clear_width(bib(job).shape), 0.0013);
    EXPECT_EQ(bib(job).count, 3U);
}

TEST(Closed, WithMeshOfNoOpeningTheGapIsShut) {
    EXPECT_TRUE(is_shut(bib(job_with("[{gap: bib, with: mesh, opening: 0 mm}]")).shape));
}

TEST(Closed, WithMeshAsCoarseAsTheGapNothingChanges) {
    for (const char* opening : {"5 mm", "5.001 mm", "1/2 in"}) {
        const Job job = job_with("[{gap: bib, with: mesh, opening: " + std::string(opening) + "}]");
        ASSERT_TRUE(std::holds_alternative<Hole>(bib(job).shape)) << opening;
        EXPECT_EQ(clear_width(bib(job).shape), 0.005) << opening;
        EXPECT_EQ(bib(job).evidence.plus_minus, 0.0005) << opening;
        EXPECT_EQ(job.closed.size(), 1U) << opening;
    }
}

TEST(Closed, FinerMeshOverMeshKeepsTheScreenedArea) {
    const Job job = job_with("[{gap: louver, with: mesh, opening: 1.3 mm}]");
    const auto mesh = std::get<Mesh>(job.survey.gaps[1].shape);
    EXPECT_EQ(mesh.opening, 0.0013);
    EXPECT_EQ(mesh.area.value_or(0), 0.01);
}

TEST(Closed, MayNameAGapThatIsNeverToBeClosed) {
    EXPECT_TRUE(is_shut(job_with("[{gap: never, with: foam}]").survey.gaps[2].shape));
}

TEST(Closed, KeepsWhatWasFound) {
    const Job job = job_with("[{gap: bib, with: bead}]");
    EXPECT_EQ(clear_width(job.closed.at(0).before), 0.005);
    EXPECT_EQ(job.closed[0].plus_minus, 0.0005);
}

TEST(Closed, LeavesTheOtherGapsAlone) {
    const Job job = job_with("[{gap: bib}]");
    EXPECT_EQ(clear_width(job.survey.gaps[1].shape), 0.006);
    EXPECT_EQ(clear_width(job.survey.gaps[2].shape), 0.002);
}

TEST(Closed, ListMayBeEmptyOrLeftOut) {
    EXPECT_TRUE(job_with("[]").closed.empty());
    EXPECT_TRUE(job_with("").closed.empty());
    EXPECT_EQ(clear_width(bib(job_with("[]")).shape), 0.005);
}

TEST(Closed, EntriesMayHaveNotes) { EXPECT_EQ(job_with("[{gap: bib, note: \"by the owner\"}]").closed.size(), 1U); }

}  // namespace
}  // namespace seamward::test
