// SPDX-License-Identifier: GPL-3.0-or-later
// What does harm fails the round, whatever else is right.
#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "materials/duty_rules.h"
#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

/// Openings of meshes that are tried where a treatment does not say its own, meters.
constexpr double fine = 0.001, quarter_inch = 0.00635;

Job scenario(const char* name) { return read_job(source_folder / "scenarios" / (std::string(name) + ".yaml"), RunContext()); }

/// What defeats a duty, written down anew, not from the table of duties.
bool defeats(const Gap& gap, const Treatment& treatment, double opening) {
    const bool mesh = treatment.leaves == Treatment::Leaves::mesh;
    switch (gap.duty) {
        case Duty::drain: return !(treatment.id == "trap-seal" && gap.feature == "floor-drain-grate");
        case Duty::weep: return !(treatment.id == "mesh-insert" && gap.feature.starts_with("brick-weep"));
        case Duty::exhaust:
        case Duty::flood:
        case Duty::relief: return true;
        case Duty::combustion_air: return !mesh || opening < quarter_inch - 1e-9;
        case Duty::vent: return !mesh || gap.feature == "vent-pipe-boot";
        default: return false;
    }
}

class Harm : public testing::TestWithParam<const char*> {};

TEST_P(Harm, FailsForEveryDutyOfEveryGap) {
    const Job job = scenario(GetParam());
    std::size_t tried = 0, duties = 0;
    for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) {
        const Gap& gap = job.survey.gaps[i];
        if (!serves_as_opening(gap.duty)) continue;
        ++duties;
        if (duties > 40) continue;  // of a building of many alike, the first ones
        const DrillRound round = round_on(job, {{i}});
        for (const Treatment& treatment : shipped_treatments().rows) {
            const bool mesh = treatment.leaves == Treatment::Leaves::mesh;
            const double opening = mesh ? (treatment.opening > 0 ? treatment.opening : fine) : 0;
            if (!defeats(gap, treatment, opening)) continue;
            const DrillResult result = score(round, closing(round, {i}, treatment.id, treatment.opening > 0 ? 0 : opening));
            ASSERT_FALSE(result.harms.empty()) << gap.id << ' ' << treatment.id;
            EXPECT_FALSE(result.passed);
            EXPECT_FALSE(result.harms.front().why.empty()) << gap.id;
            EXPECT_FALSE(result.harms.front().source.empty()) << gap.id;
            ++tried;
        }
        EXPECT_TRUE(score(round, closing(round, {i}, std::string(leave_open))).harms.empty()) << gap.id;
    }
    EXPECT_GT(tried, duties > 0 ? 10U : 0U);
}

/// The same for whatever the rulings restrict: fire, electricity, what moves.
TEST_P(Harm, FailsWhateverARulingRefuses) {
    const Job job = scenario(GetParam());
    std::size_t restricted = 0;
    for (std::uint32_t i = 0; i < job.survey.gaps.size() && restricted < 60; ++i) {
        const DutyRuling ruling = ruling_on(job.survey.gaps[i], job.survey);
        if (!ruling.restricted()) continue;
        ++restricted;
        const DrillRound round = round_on(job, {{i}});
        for (const char* treatment : {"foam", "bead", "mortar", "mesh-20", "sweep"}) {
            const DrillResult result = score(round, closing(round, {i}, treatment));
            const bool allowed = ruling.allows(treatment, shipped_treatments().find(treatment)->opening);
            if (!allowed) {
                EXPECT_FALSE(result.passed) << job.survey.gaps[i].id << ' ' << treatment;
            }
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Houses, Harm,
                         testing::Values("demo", "two-story", "brick-crawl", "apartments", "townhouse", "wall-corner"),
                         [](const auto& given) {
                             std::string name = given.param;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

bool tells_of(const DrillResult& result, const std::string& word) {
    for (const seamward::Harm& harm : result.harms) {
        if (harm.why.english().find(word) != std::string::npos) return true;
    }
    return false;
}

/// Bats rest in the soffit: their way is shut only once they are gone.
TEST(HarmToAnimals, FailsWhoeverShutsOneIn) {
    const DrillRound& round = shipped_drill("2-eave");
    Answers answers = perfect_answers(round, "Ines Aguirre");
    std::size_t waits = 0;
    for (PlaceAnswer& answer : answers.findings) waits += answer.wait ? 1 : 0;
    EXPECT_GT(waits, 0U);
    EXPECT_TRUE(score(round, answers).passed);
    for (PlaceAnswer& answer : answers.findings) answer.wait = false;
    const DrillResult result = score(round, answers);
    EXPECT_EQ(result.points, result.most);
    EXPECT_FALSE(result.passed);
    EXPECT_TRUE(tells_of(result, "Bat")) << result.harms.size();
}

/// An attic whose vents are all screened finely gets too little air, though each mesh alone is allowed.
TEST(HarmToAir, FailsWhoeverStarvesAnAttic) {
    const Job job = scenario("two-story");
    std::vector<GapIndex> vents;
    for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) {
        if (job.survey.gaps[i].duty == Duty::vent && job.survey.gaps[i].feature != "vent-pipe-boot") vents.push_back({i});
    }
    const DrillRound round = round_on(job, vents);
    Answers answers = closing(round, vents.front(), "mesh-20");
    for (std::size_t i = 1; i < vents.size(); ++i)
        answers.findings.push_back(closing(round, vents[i], "mesh-20").findings.front());
    const DrillResult result = score(round, answers);
    EXPECT_FALSE(result.harms.empty());
    EXPECT_FALSE(result.passed);
}

/// A harm counts outside of the drill's places too.
TEST(HarmOutside, FailsTheRound) {
    const DrillRound& round = shipped_drill("6-sighting");
    Answers answers = perfect_answers(round, "Ines Aguirre");
    answers.findings.push_back(closing(round, gap_of(round, "dryer-hood"), "mesh-1-8").findings.front());
    const DrillResult result = score(round, answers);
    EXPECT_EQ(result.points, result.most);
    EXPECT_FALSE(result.passed);
    ASSERT_EQ(result.harms.size(), 1U);
    EXPECT_NE(result.harms[0].why.english().find("fire hazard"), std::string::npos);
}

}  // namespace
}  // namespace seamward::test
