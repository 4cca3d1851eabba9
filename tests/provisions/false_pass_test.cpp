// SPDX-License-Identifier: GPL-3.0-or-later
// Surveys that could pass a provision without having shown that it is kept. None may.
#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "provisions/gap_parts.h"
#include "tests/provisions/rule_job.h"

namespace seamward::test {
namespace {

std::string survey(const std::string& gaps, const std::string& more = "") {
    return "seamward: 1\nspaces:\n  - {id: yard, kind: outdoors}\n  - {id: attic, kind: cavity, floor: 15 m2}\n"
           "  - {id: wall, kind: cavity}\n  - {id: duct, kind: cavity}\n  - {id: garage, kind: attached}\n  - {id: kitchen, "
           "kind: living}\n"
           "gaps:\n" +
           gaps + more;
}

std::string held(const std::string& job, const std::string& rule) { return verdict_word(result_of(audited(job), rule).verdict); }

TEST(FalsePass, AWidthOfNothingThatNobodyMeasured) {
    const auto ring = [](const std::string& evidence) {
        return survey("  - {id: g, between: [yard, wall], ring: {width: 0 mm, around: 22 mm}, evidence: {" + evidence + "}}\n");
    };
    EXPECT_EQ(held(ring("how: assumed"), "annular-spaces"), "unknown");
    EXPECT_EQ(held(ring("how: modeled"), "annular-spaces"), "unknown") << "drawn tight";
    EXPECT_EQ(held(ring("how: measured, plus_minus: 6 mm"), "annular-spaces"), "unknown") << "may be off";
    EXPECT_EQ(held(ring("how: measured"), "annular-spaces"), "pass");
    const auto sill = [](const std::string& evidence) {
        return survey("  - {id: g, between: [yard, wall], slot: {width: 0 mm, length: 3 m}, type: slab-sill-joint, evidence: {" +
                      evidence + "}}\n");
    };
    EXPECT_EQ(held(sill("how: measured, plus_minus: 0.2 mm"), "sill-joint"), "unknown") << "may be off";
    EXPECT_EQ(held(sill("how: measured"), "sill-joint"), "pass");
}

/// A hole that no mouse gets through lets no rodent in, open or closed with whatever; a wider one is closed with what none gnaws.
TEST(FalsePass, AHoleThatAMouseGetsThrough) {
    const auto ring = [](const std::string& width, const std::string& more = "") {
        return survey("  - {id: g, between: [yard, wall], ring: {width: " + width +
                      ", around: 22 mm}, evidence: {how: measured}}\n" +
                      "  - {id: h, between: [yard, wall], hole: {diameter: " + width + "}, evidence: {how: measured}}\n" + more);
    };
    const auto both = [](const std::string& with) {
        return "closed: [{gap: g, with: " + with + "}, {gap: h, with: " + with + "}]\n";
    };
    for (const char* rule : {"annular-spaces", "outside-holes"}) {
        EXPECT_EQ(held(ring("5.9 mm"), rule), "pass");
        EXPECT_EQ(held(ring("6 mm"), rule), "fail");
        EXPECT_EQ(held(ring("5.9 mm", both("bead")), rule), "pass");
        EXPECT_EQ(held(ring("6 mm", both("bead")), rule), "unknown") << "mice gnaw it";
        EXPECT_EQ(held(ring("6 mm", both("mortar")), rule), "pass");
    }
    const auto guess = [](const std::string& how) {
        return survey("  - {id: g, between: [yard, wall], ring: {width: 4 mm, around: 22 mm}, evidence: {how: " + how + "}}\n",
                      "closed: [{gap: g, with: bead}]\n");
    };
    EXPECT_EQ(held(guess("assumed"), "annular-spaces"), "unknown") << "nobody knows that it was narrow";
    EXPECT_EQ(held(guess("measured"), "annular-spaces"), "pass");
    EXPECT_EQ(held(guess("measured, plus_minus: 3 mm"), "annular-spaces"), "unknown");
}

TEST(FalsePass, AClosingOfAGapThatWasAGuessIsKnown) {
    const std::string guess =
        "  - {id: g, between: [yard, wall], ring: {width: 4 mm, around: 22 mm}, evidence: {how: assumed}}\n";
    EXPECT_EQ(held(survey(guess), "annular-spaces"), "unknown");
    EXPECT_EQ(held(survey(guess, "closed: [{gap: g, with: mortar}]\n"), "annular-spaces"), "pass");
    EXPECT_EQ(held(survey(guess, "closed: [{gap: g, with: mesh, opening: 1 mm}]\n"), "annular-spaces"), "unknown");
    EXPECT_EQ(
        held(survey(guess, "closed: [{gap: g, with: mortar, date: 2026-01-02, callback: {date: 2026-02-03, cause: fell out}}]\n"),
             "annular-spaces"),
        "unknown")
        << "it did not hold";
}

TEST(FalsePass, AnOpeningThatMayBeShut) {
    const auto drain = [](const std::string& more) {
        return survey("  - {id: g, between: [yard, wall], hole: {diameter: 0.1 mm}, duty: drain, evidence: {how: measured" +
                      more + "}}\n");
    };
    EXPECT_EQ(held(drain(""), "drains-open"), "pass");
    EXPECT_EQ(held(drain(", plus_minus: 0.1 mm"), "drains-open"), "unknown");
    EXPECT_EQ(held(drain(", plus_minus: 0.05 mm"), "drains-open"), "pass");
}

/// A mesh no finer than the flap leaves the opening as it was, and is a screen at a dryer all the same.
TEST(FalsePass, ACoarseScreenAtADryer) {
    const std::string hood =
        "  - {id: g, between: [yard, duct], slot: {width: 4 mm, length: 0.1 m}, type: dryer-outlet, duty: exhaust, evidence: "
        "{how: measured}}\n";
    EXPECT_EQ(held(survey(hood), "dryer-screen"), "pass");
    EXPECT_EQ(held(survey(hood, "closed: [{gap: g, with: mesh, opening: 12 mm}]\n"), "dryer-screen"), "fail");
    EXPECT_EQ(held(survey(hood, "closed: [{gap: g, with: mesh, opening: 2 mm}]\n"), "dryer-screen"), "fail");
}

/// A screen that was put over combustion air later is looked at too.
TEST(FalsePass, AScreenThatWasPutOverCombustionAir) {
    const std::string louver =
        "  - {id: g, between: [yard, kitchen], slot: {width: 20 mm, length: 0.3 m}, duty: combustion-air, evidence: {how: "
        "measured}}\n";
    EXPECT_EQ(held(survey(louver, "closed: [{gap: g, with: mesh, opening: 1.5 mm}]\n"), "combustion-mesh"), "fail");
    EXPECT_EQ(held(survey(louver, "closed: [{gap: g, with: mesh, opening: 7 mm}]\n"), "combustion-mesh"), "pass");
}

/// The ring round a dryer's duct leads from outdoors into the wall. That makes no duct of the wall.
TEST(FalsePass, AWallIsNoDuct) {
    const std::string ring =
        "  - {id: g, between: [yard, wall], ring: {width: 4 mm, around: 105 mm}, type: dryer-outlet, evidence: {how: "
        "measured}}\n";
    EXPECT_EQ(held(survey(ring), "dryer-outdoors"), "unknown");
    const std::string fan =
        "  - {id: fan, between: [kitchen, attic], slot: {width: 1 mm, length: 0.4 m}, type: bath-fan, duty: exhaust}\n"
        "  - {id: cap, between: [attic, yard], slot: {width: 3 mm, length: 0.3 m}, type: exhaust-cap, duty: exhaust}\n";
    EXPECT_EQ(held(survey(fan), "fan-outdoors"), "unknown") << "the fan blows into the attic";
}

TEST(FalsePass, VentsWhoseWidthMayBeOff) {
    const auto attic = [](const std::string& off) {  // 0.1 m2 is due, 0.102 m2 is there
        return survey(
            "  - {id: g, between: [yard, attic], slot: {width: 102 mm, length: 1 m}, duty: vent, type: gable-vent, evidence: "
            "{how: "
            "measured" +
            off + "}}\n");
    };
    EXPECT_EQ(held(attic(""), "attic-vent-area"), "pass");
    EXPECT_EQ(held(attic(", plus_minus: 1 mm"), "attic-vent-area"), "pass");
    EXPECT_EQ(held(attic(", plus_minus: 3 mm"), "attic-vent-area"), "unknown");
}

TEST(FalsePass, CombustionAirWhoseWidthMayBeOff) {
    const auto closet = [](const std::string& off) {  // 10 in2 of each
        return survey(
            "  - {id: g, between: [yard, kitchen], slot: {width: 1 in, length: 10.2 in}, count: 2, duty: combustion-air, "
            "evidence: "
            "{how: measured" +
                off + "}}\n",
            "appliances: [{in: kitchen, burns: 40000 Btu/h}]\n");
    };
    EXPECT_EQ(held(closet(""), "combustion-two"), "pass");
    EXPECT_EQ(held(closet(", plus_minus: 0.01 in"), "combustion-two"), "pass");
    EXPECT_EQ(held(closet(", plus_minus: 0.03 in"), "combustion-two"), "unknown");
}

/// A second attic of which nobody says how large it is does not go unmentioned.
TEST(FalsePass, AnAtticBesideTheOneThatIsKnown) {
    const std::string one =
        "  - {id: g, between: [yard, attic], slot: {width: 102 mm, length: 1 m}, duty: vent, type: gable-vent, evidence: {how: "
        "measured}}\n";
    const std::string other =
        "  - {id: h, between: [yard, wall], slot: {width: 5 mm, length: 1 m}, duty: vent, type: gable-vent}\n";
    const std::string eave =
        "  - {id: e, between: [wall, attic], slot: {width: 25 mm, length: 1 m}, duty: vent, type: eave-baffle}\n";
    EXPECT_EQ(held(survey(one), "attic-vent-area"), "pass");
    EXPECT_EQ(held(survey(one + other), "attic-vent-area"), "unknown");
    EXPECT_EQ(held(survey(one + other + eave), "attic-vent-area"), "pass") << "it is the attic's own eave";
}

TEST(FalsePass, FloodOpeningsThatWereClosed) {
    const std::string gaps =
        "  - {id: g, between: [yard, garage], slot: {width: 5 mm, length: 0.4 m}, duty: flood, count: 1, through: [[0 m, -1 m, 0 "
        "m], [0 m, 1 m, 0 m]]}\n"
        "  - {id: h, between: [yard, garage], slot: {width: 5 mm, length: 0.4 m}, duty: flood, count: 1, through: [[-1 m, 0 m, 0 "
        "m], [1 m, 0 m, 0 m]]}\n";
    const std::string closed = "closed: [{gap: h, with: plate}]\n";
    EXPECT_EQ(held(survey(gaps), "flood-count"), "pass");
    EXPECT_EQ(held(survey(gaps, closed), "flood-count"), "fail");
    EXPECT_EQ(held(survey(gaps), "flood-walls"), "pass");
    EXPECT_EQ(held(survey(gaps, closed), "flood-walls"), "fail");
}

/// One wall that was looked at says nothing of the other three.
TEST(FalsePass, OnePlaceDoesNotSpeakForTheHouse) {
    const auto stated = [](const std::string& details) {
        return survey("", "construction: {cladding: [stucco]}\ndetails:\n" + details);
    };
    const std::string north = "  - {what: screed-flange, is: 2 in, at: \"north wall\"}\n";
    const std::string south = "  - {what: screed-flange, is: 4 in, at: \"south wall\"}\n";
    EXPECT_EQ(held(stated(north + south), "screed-flange"), "fail");
    EXPECT_EQ(held(stated(south), "screed-flange"), "unknown");
    EXPECT_EQ(held(stated("  - {what: screed-flange, is: 4 in}\n"), "screed-flange"), "pass");
}

/// Of a flood opening the highest counts, of a weep screed the lowest; and one that may be off counts for what it may be.
TEST(FalsePass, OneLineOfAHouseCountsByItsWorstGap) {
    const std::string gaps =
        "  - {id: g, between: [yard, garage], slot: {width: 5 mm, length: 0.4 m}, duty: flood}\n"
        "  - {id: h, between: [yard, garage], slot: {width: 5 mm, length: 0.4 m}, duty: flood}\n"
        "  - {id: s, between: [yard, wall], slot: {width: 1 mm, length: 5 m}, type: weep-screed}\n"
        "  - {id: t, between: [yard, wall], hole: {diameter: 4 mm}, type: weep-screed, duty: drain}\n";
    const auto job_with = [&](const std::string& details) {
        Job job = parse_job(survey(gaps, "construction: {cladding: [stucco]}\ndetails:\n" + details), "job.yaml");
        for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i)
            job.house.places.push_back({{i}, {}, job.survey.gaps[i].feature.empty() ? "flood" : "screed"});
        return audit(job, parts_of_house(job), AuditSettings(), RunContext());
    };
    const auto verdict = [&](const std::string& rule, const std::string& g, const std::string& h) {
        const bool flood = rule == "flood-height";
        const std::string first = flood ? "g" : "s", second = flood ? "h" : "t";
        return verdict_word(result_of(job_with("  - {what: height-over-earth, gap: " + first + ", is: " + g +
                                               "}\n  - {what: height-over-earth, gap: " + second + ", is: " + h + "}\n"),
                                      rule)
                                .verdict);
    };
    EXPECT_STREQ(verdict("flood-height", "4 in", "30 in"), "fail");
    EXPECT_STREQ(verdict("flood-height", "30 in", "4 in"), "fail");
    EXPECT_STREQ(verdict("flood-height", "4 in", "12 in"), "pass");
    EXPECT_STREQ(verdict("screed-over-earth", "5 in", "3 in"), "fail");
    EXPECT_STREQ(verdict("screed-over-earth", "4 in", "4.1 in, plus_minus: 0.2 in"), "unknown");
    EXPECT_STREQ(verdict("screed-over-earth", "3 in", "4.1 in, plus_minus: 0.2 in"), "fail");
}

/// Tables of one's own may ask what the shipped one does not.
TEST(FalsePass, ATableOfOnesOwnCountsWhatIsThere) {
    const std::string text =
        "catalog: provisions\nedition: 2026-01-01\nsources: [{id: own, title: own, publisher: own, year: 0, seen: "
        "memory}]\nprovisions:\n"
        "  - {id: few, name: few, text: few, group: own, gaps: {duties: [vent]}, measure: gaps-there, limit: {at_most: 2}, "
        "document: own, "
        "edition: \"not known\", section: own, confidence: low, mend: none, source: own}\n";
    const Table<Provision> own = read_provisions(text, "own.yaml", shipped_measures(), shipped_features(), shipped_free_areas());
    const auto verdict = [&](int count) {
        const Job job = parse_job(
            survey("  - {id: g, between: [yard, attic], hole: {diameter: 50 mm}, duty: vent, count: " + std::to_string(count) +
                   "}\n  - {id: h, between: [yard, attic], hole: {diameter: 50 mm}, duty: vent}\n"),
            "job.yaml");
        AuditSettings settings;
        settings.rules = &own;
        return verdict_word(audit(job, GapParts(), settings, RunContext()).results.at(0).verdict);
    };
    EXPECT_STREQ(verdict(1), "pass");
    EXPECT_STREQ(verdict(2), "fail");
}

/// A state asks less of a crawl space than the model code.
TEST(FalsePass, ATableOfOnesOwnAsksAnotherShareOfTheFloor) {
    const auto verdict = [](const std::string& rule) {
        const std::string text =
            "catalog: provisions\nedition: 2026-01-01\nsources: [{id: own, title: own, publisher: own, year: 0, seen: "
            "memory}]\nprovisions:\n"
            "  - {id: air, name: air, text: air, group: own, gaps: {duties: [vent]}, measure: vent-area, limit: {at_least: 100 "
            "%}, area_rule: " +
            rule + ", document: own, edition: \"not known\", section: own, confidence: low, mend: none, source: own}\n";
        const Table<Provision> own =
            read_provisions(text, "own.yaml", shipped_measures(), shipped_features(), shipped_free_areas());
        const Job job = parse_job(
            "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: crawl-space, kind: cavity, floor: 30 m2}]\ngaps:\n"
            "  - {id: v, between: [yard, crawl-space], slot: {width: 0.15 m, length: 1 m}, duty: vent}\n",
            "job.yaml");
        AuditSettings settings;
        settings.rules = &own;
        return std::string(verdict_word(audit(job, GapParts(), settings, RunContext()).results.at(0).verdict));
    };
    EXPECT_EQ(verdict("under-floor"), "fail") << "0.2 m2";
    EXPECT_EQ(verdict("under-floor-washington"), "pass") << "0.1 m2";
    EXPECT_EQ(verdict("attic"), "unknown") << "no attic is there";
}

/// What a house does not show is not known to be missing.
TEST(FalsePass, NoRegisterInTheGarageHasToBeLookedFor) {
    EXPECT_EQ(held(survey("", "construction: {has: [garage]}\n"), "garage-ducts-open"), "unknown");
}

}  // namespace
}  // namespace seamward::test
