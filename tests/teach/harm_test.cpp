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
/// What the wire of 1/4 in hardware cloth leaves, meters.
constexpr double quarter_inch_cloth = 0.00546;

Job scenario(const char* name) { return read_job(source_folder / "scenarios" / (std::string(name) + ".yaml"), RunContext()); }

/// What defeats a duty, written down anew, not from the table of duties.
bool defeats(const Gap& gap, const Treatment& treatment, double opening) {
    const bool mesh = treatment.leaves == Treatment::Leaves::mesh;
    switch (gap.duty) {
        case Duty::drain: return !(treatment.id == "trap-seal" && gap.feature == "floor-drain-grate");
        case Duty::weep: return !(treatment.id == "mesh-insert" && gap.feature.starts_with("brick-weep"));
        case Duty::exhaust:
            // The caps of these houses are of bath fans: the codes ask for screens of 1/4 in to 1/2 in there.
            return !(gap.feature == "exhaust-cap" && mesh && opening > quarter_inch_cloth - 1e-9 &&
                     opening < 2 * quarter_inch + 1e-9);
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

/// Of two findings at one gap the one that does harm counts, whichever stands first and however the other one is put.
TEST(HarmToAnimals, IsHiddenByNoOtherFindingAtTheSameGap) {
    const DrillRound& round = shipped_drill("2-eave");
    Answers at_once = perfect_answers(round, "Ines Aguirre");
    std::vector<PlaceAnswer> later, coarse;
    for (PlaceAnswer& answer : at_once.findings) {
        if (!answer.wait) continue;
        PlaceAnswer again = answer;
        again.where = {std::nullopt, std::nullopt, round.places[*answer.where.place].at};
        later.push_back(again);
        again.wait = false;
        again.treatment = "mesh";
        again.opening = 0.1;  // lets the animal out
        coarse.push_back(again);
        answer.wait = false;
    }
    ASSERT_FALSE(later.empty());
    for (const std::vector<PlaceAnswer>& more : {later, coarse}) {
        Answers before = at_once, after = at_once;
        before.findings.insert(before.findings.begin(), more.begin(), more.end());
        after.findings.insert(after.findings.end(), more.begin(), more.end());
        for (const Answers& answers : {before, after}) {
            const DrillResult result = score(round, answers);
            EXPECT_FALSE(result.passed);
            EXPECT_TRUE(tells_of(result, "Bat"));
            for (const seamward::Harm& harm : result.harms) EXPECT_FALSE(answers.findings[harm.finding].wait);
        }
    }
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

/// A wall between dwellings holds back fire, whatever its sides are said to be; no metal goes near a box in it.
TEST(HarmToNeighbors, IsWhatBurnsInAPartyWall) {
    const DrillRound& round = shipped_drill("3-bathroom");
    for (const char* id : {"west-stack-opening", "west-tub-edge", "east-joist-pockets", "party-wall-top-west"}) {
        const GapIndex gap = gap_of(round, id);
        for (const char* treatment : {"foam", "bead", "metal-wool"})
            EXPECT_TRUE(tells_of(score(round, closing(round, gap, treatment)), "party wall")) << id << ' ' << treatment;
        for (const char* treatment : {"fire-sealant", "metal-wool-and-fire-sealant", "mortar"})
            EXPECT_TRUE(score(round, closing(round, gap, treatment)).harms.empty()) << id << ' ' << treatment;
    }
    const GapIndex outlet = gap_of(round, "west-outlet-bedroom");
    EXPECT_TRUE(score(round, closing(round, outlet, "fire-sealant")).harms.empty());
    for (const char* treatment : {"foam", "bead", "gasket", "metal-wool-and-fire-sealant"})
        EXPECT_TRUE(tells_of(score(round, closing(round, outlet, treatment)), "party wall")) << treatment;
}

/// So does what leads into an attic that neighbors share.
TEST(HarmToNeighbors, IsWhatBurnsUnderTheirAttic) {
    const DrillRound& round = shipped_drill("3-bathroom");
    const GapIndex stack = gap_of(round, "stack-at-attic");
    for (const char* treatment : {"foam", "backer-and-bead", "metal-wool"})
        EXPECT_TRUE(tells_of(score(round, closing(round, stack, treatment)), "dwellings share")) << treatment;
    for (const char* treatment : {"fire-sealant", "metal-wool-and-fire-sealant"})
        EXPECT_TRUE(score(round, closing(round, stack, treatment)).harms.empty()) << treatment;
}

/// Lint catches on what reaches into a dryer's duct.
TEST(HarmToDryers, IsMetalWoolAtTheirCollar) {
    const DrillRound round = round_on(scenario("demo"), {});
    const GapIndex collar = gap_of(round, "dryer-collar");
    for (const char* treatment : {"metal-wool", "metal-wool-and-bead", "foam"})
        EXPECT_TRUE(tells_of(score(round, closing(round, collar, treatment)), "lint")) << treatment;
    EXPECT_TRUE(score(round, closing(round, collar, "bead")).harms.empty());
}

/// Fans may be screened coarsely, dryers not at all; nobody knows what blows out of a cap whose duct does not say it.
TEST(HarmToFans, TellsFansFromDryers) {
    Job job = scenario("brick-crawl");
    const DrillRound named = round_on(job, {});
    const GapIndex cap = gap_of(named, "bath-exhaust-cap"), joint = gap_of(named, "dryer-duct-joint");
    const auto harms = [](const DrillRound& round, GapIndex gap, const char* treatment, double opening = 0) {
        return !score(round, closing(round, gap, treatment, opening)).harms.empty();
    };
    EXPECT_FALSE(harms(named, cap, "mesh-1-4"));
    EXPECT_FALSE(harms(named, cap, "mesh", 2 * quarter_inch));
    EXPECT_TRUE(harms(named, cap, "mesh", 0.013));
    EXPECT_TRUE(harms(named, cap, "mesh-1-8"));
    EXPECT_TRUE(harms(named, cap, "plate"));
    EXPECT_TRUE(harms(named, gap_of(named, "dryer-hood"), "mesh-1-4"));
    for (const Treatment& treatment : shipped_treatments().rows)
        EXPECT_TRUE(harms(named, joint, treatment.id.c_str(), treatment.opening > 0 ? 0 : fine)) << treatment.id;
    EXPECT_TRUE(tells_of(score(named, closing(named, joint, "metal-wool")), "lint catches"));
    for (const char* name : {"laundry bath duct", "dryer duct", "duct"}) {
        Job other = job;
        for (const SpaceIndex end : other.survey[cap].between) {
            Space& space = other.survey.spaces[end.value];
            if (space.kind == SpaceKind::outdoors) continue;
            space.id = "air";
            space.name = name;
        }
        EXPECT_TRUE(harms(round_on(other, {}), cap, "mesh-1-4")) << name;
    }
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
