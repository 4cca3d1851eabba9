// SPDX-License-Identifier: GPL-3.0-or-later
// Every provision of the shipped table, from a job file to its verdict, at its limit and a hair to either side; and the numbers
// that the published texts give, worked out by hand.
#include <gtest/gtest.h>

#include <cmath>

#include "catalog/shipped.h"
#include "materials/ventilation.h"
#include "provisions/judge.h"
#include "tests/provisions/rule_job.h"

namespace seamward::test {
namespace {

constexpr double square_inch = 0.0254 * 0.0254, square_foot = 0.3048 * 0.3048;

/// A micrometer, a square millimeter, a millionth, one piece, or the other answer.
double hair(Unit unit) { return unit == Unit::count || unit == Unit::answer ? 1 : 1e-6; }

class Limits : public testing::TestWithParam<std::string> {};

void expect_verdict(const RuleJob& job, double value, Verdict verdict, const std::string& where) {
    const ProvisionResult result = job.held(value);
    EXPECT_STREQ(verdict_word(result.verdict), verdict_word(verdict)) << where << '\n' << job.text(value) << result.why.english();
    ASSERT_EQ(result.checked.size(), 1U) << where << '\n' << job.text(value);
    if (verdict == Verdict::unknown) return;
    ASSERT_TRUE(result.measured) << where;
    EXPECT_NEAR(*result.measured, value, 1e-9) << where;
    EXPECT_FALSE(result.source.empty());
}

TEST_P(Limits, PassesAtItsLimitAndInsideAndFailsJustOutside) {
    const Provision& provision = *shipped_provisions().find(GetParam());
    for (std::size_t which = 0; which < std::max<std::size_t>(1, provision.gaps.size()); ++which) {
        const RuleJob job{provision, which};
        if (!job.can_be_told()) {
            EXPECT_TRUE(provision.measure == "vent-to-corner" || provision.measure.starts_with("combustion-"))
                << "only solids tell; geometry_test.cpp has these";
            continue;
        }
        const std::string where = provision.id + ", case " + std::to_string(which + 1);
        // A survey does not say that a duct ends nowhere else; a described house does.
        const Verdict outside = provision.measure == "exhaust-outdoors" ? Verdict::unknown : Verdict::fail;
        if (provision.at_least) {
            expect_verdict(job, *provision.at_least, Verdict::pass, where + ", at the least");
            expect_verdict(job, *provision.at_least - hair(provision.unit), outside, where + ", below the least");
            if (provision.unit != Unit::answer && !provision.at_most && provision.measure != "flood-walls")
                expect_verdict(job, *provision.at_least + hair(provision.unit), Verdict::pass, where + ", above the least");
        }
        if (provision.at_most) {
            expect_verdict(job, *provision.at_most, Verdict::pass, where + ", at the most");
            expect_verdict(job, *provision.at_most + hair(provision.unit), outside, where + ", above the most");
            if (*provision.at_most > 0 && !provision.at_least)
                expect_verdict(job, *provision.at_most - hair(provision.unit), Verdict::pass, where + ", below the most");
        }
    }
}

/// ISO 14253-1, rules for proving conformity and nonconformity: what may be off passes only when all that it may be keeps to the
/// limit, and fails only when none of it does.
TEST_P(Limits, IsUnknownWhereWhatItMayBeOffReachesOverTheLimit) {
    const Provision& provision = *shipped_provisions().find(GetParam());
    const Measure& measure = *shipped_measures().find(provision.measure);
    const bool may_be_off = provision.unit != Unit::answer && provision.unit != Unit::count &&
                            (provision.measure == "clear-width" || measure.stated != Measure::Stated::no);
    if (!may_be_off) {
        EXPECT_TRUE(measure.stated == Measure::Stated::no || provision.unit == Unit::answer) << "nothing to be off";
        return;
    }
    const double limit = provision.at_least.value_or(provision.at_most.value_or(0)), off = 1e-4;
    const double inward = provision.at_least ? 1 : -1;
    const RuleJob job{provision, 0, Dropped::nothing, off};
    expect_verdict(job, limit + inward * 1.01 * off * (limit > 0 ? 1 : 0), limit > 0 ? Verdict::pass : Verdict::unknown,
                   provision.id);
    if (limit > 0) expect_verdict(job, limit + inward * 0.99 * off, Verdict::unknown, provision.id);
    expect_verdict(job, limit - inward * 0.99 * off, Verdict::unknown, provision.id);
    expect_verdict(job, limit - inward * 1.01 * off, Verdict::fail, provision.id);
}

std::vector<std::string> all_ids() {
    std::vector<std::string> ids;
    for (const Provision& row : shipped_provisions().rows) ids.push_back(row.id);
    return ids;
}

std::string name_of(const testing::TestParamInfo<std::string>& info) {
    std::string name = info.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
}

INSTANTIATE_TEST_SUITE_P(Shipped, Limits, testing::ValuesIn(all_ids()), name_of);

Provision between(double least, double most) {
    Provision provision;
    provision.at_least = least;
    provision.at_most = most;
    return provision;
}

TEST(Judge, HasLimitsOnBothSides) {
    const Provision range = between(0.002, 0.006);
    EXPECT_EQ(judge(range, 0.002, 0), Verdict::pass);
    EXPECT_EQ(judge(range, 0.006, 0), Verdict::pass);
    EXPECT_EQ(judge(range, 0.002 - 1e-6, 0), Verdict::fail);
    EXPECT_EQ(judge(range, 0.006 + 1e-6, 0), Verdict::fail);
    EXPECT_EQ(judge(range, 0.004, 0.002), Verdict::pass) << "it may be either limit, and keeps to both";
    EXPECT_EQ(judge(range, 0.004, 0.0021), Verdict::unknown) << "it may be off to either side";
    EXPECT_EQ(judge(range, 0.0019, 0.0002), Verdict::unknown);
    EXPECT_EQ(judge(range, 0.0017, 0.0002), Verdict::fail);
    EXPECT_EQ(judge(range, std::nullopt, 0), Verdict::unknown);
    EXPECT_DOUBLE_EQ(past_limit(range, 0.007), 0.001);
    EXPECT_DOUBLE_EQ(past_limit(range, 0.001), 0.001);
    EXPECT_LT(past_limit(range, 0.004), 0);
}

/// The limits against rodents are a hair under what the smallest of them needs, by the table of animals.
TEST(Rodents, AreKeptOutByTheirLimits) {
    double least = 1;
    for (const char* id : {"house-mouse", "roof-rat", "norway-rat", "tree-squirrel"}) {
        const Pest* rodent = shipped_pests().find(id);
        ASSERT_NE(rodent, nullptr) << id;
        EXPECT_TRUE(rodent->gnaws) << id;
        least = std::min({least, rodent->size.slit, rodent->size.hole});
    }
    for (const char* id : {"annular-spaces", "outside-holes"}) {
        const double limit = *shipped_provisions().find(id)->at_most;
        EXPECT_LT(limit, least) << id << ": at its limit none gets through";
        EXPECT_GT(limit, least - 0.2e-3) << id << ": and nothing is asked of holes that none gets through";
    }
}

/// A chimney shows by what stands at it; where nobody says how the framing round it is closed, nothing has passed.
TEST(Chimneys, AreFireBlockedWhereTheyGoThroughFloorsAndCeilings) {
    const auto held = [](const std::string& gap, const std::string& more = "") {
        return result_of(
            audited("seamward: 1\nspaces: [{id: chase, kind: cavity}, {id: attic, kind: cavity}, {id: den, kind: living}, "
                    "{id: yard, kind: outdoors}]\ngaps:\n  - {id: g, " +
                    gap + "}\n" + more),
            "chimney-framing-closed");
    };
    const auto framing = [](const std::string& width, const std::string& how) {
        return "between: [chase, attic], type: chimney-framing, slot: {width: " + width +
               ", length: 1.4 m}, evidence: {how: " + how + "}";
    };
    EXPECT_EQ(held(framing("0 mm", "measured")).verdict, Verdict::pass);
    EXPECT_EQ(held(framing("1 mm", "measured")).verdict, Verdict::fail);
    EXPECT_EQ(held(framing("45 mm", "assumed")).verdict, Verdict::unknown);
    const auto closed = [](const char* with) { return "closed: [{gap: g, with: " + std::string(with) + "}]\n"; };
    EXPECT_EQ(held(framing("45 mm", "measured"), closed("high-temperature-sealant")).verdict, Verdict::pass);
    EXPECT_EQ(held(framing("45 mm", "measured"), closed("foam")).verdict, Verdict::unknown);
    const std::string typed = "substrates: [wood, chimney], slot: {width: 20 mm, length: 1 m}, evidence: {how: measured}";
    EXPECT_EQ(held("between: [den, attic], " + typed, "construction: {has: [chimney]}\n").verdict, Verdict::fail);
    EXPECT_EQ(held("between: [yard, attic], " + typed, "construction: {has: [chimney]}\n").verdict, Verdict::unknown)
        << "a flashing is no ceiling";
    EXPECT_EQ(held("between: [den, attic], " + typed).verdict, Verdict::unknown) << "nobody says that there is a chimney";
    EXPECT_EQ(held(framing("45 mm", "measured"), "construction: {without: [chimney]}\n").verdict, Verdict::not_applicable);
}

// What the published texts work out to.

TEST(WorkedNumbers, AWaterHeaterOf40000BtuTakesTenSquareInchesFromEachOfTwoOpenings) {
    EXPECT_NEAR(combustion_air_due(40000, "combustion-two") / square_inch, 10, 1e-9);
    EXPECT_NEAR(louver_face(10 * square_inch, "metal-louver") / square_inch, 13.333333, 1e-5);
    EXPECT_NEAR(louver_face(10 * square_inch, "wood-louver") / square_inch, 40, 1e-9);
    EXPECT_NEAR(combustion_air_due(40000, "combustion-one") / square_inch, 13.333333, 1e-5) << "1 in2 for 3,000 Btu/h";
    EXPECT_NEAR(combustion_air_due(40000, "combustion-ducts") / square_inch, 20, 1e-9) << "level ducts, 1 in2 for 2,000 Btu/h";
    EXPECT_NEAR(combustion_air_due(3412.142, "combustion-two") * 1e6, 550, 1) << "550 mm2 for a kilowatt, as the text gives it";
}

TEST(WorkedNumbers, AnAtticOf1500SquareFeetTakesTenSquareFeetOrFive) {
    EXPECT_NEAR(vent_area_due(1500 * square_foot, "attic") / square_foot, 10, 1e-9);
    EXPECT_NEAR(vent_area_due(1500 * square_foot, "attic-balanced") / square_foot, 5, 1e-9);
    EXPECT_NEAR(vent_area_due(1500 * square_foot, "under-floor") / square_foot, 10, 1e-9);
}

TEST(WorkedNumbers, AFloodEnclosureTakesASquareInchForEachSquareFoot) {
    EXPECT_NEAR(flood_area_due(120 * square_foot) / square_inch, 120, 1e-9);
    EXPECT_NEAR(flood_area_due(1) * 1e6, 6944, 1) << "6,944 mm2 for a square meter";
}

std::string closet(const std::string& gaps, const std::string& more = "") {
    return "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: closet, kind: living}]\ngaps:\n" + gaps +
           "appliances: [{in: closet, burns: \"40,000 Btu/h\"}]\n" + more;
}

std::string openings(const std::string& square_inches, int count) {
    return "  - {id: air, between: [yard, closet], slot: {width: 1 in, length: " + square_inches +
           " in}, duty: combustion-air, count: " + std::to_string(count) + "}\n";
}

TEST(WorkedNumbers, AreHeldAgainstOpenings) {
    const auto held = [](const std::string& job, const std::string& id) { return result_of(audited(job), id).verdict; };
    EXPECT_EQ(held(closet(openings("10", 2)), "combustion-two"), Verdict::pass);
    EXPECT_EQ(held(closet(openings("9.99", 2)), "combustion-two"), Verdict::fail);
    EXPECT_EQ(held(closet(openings("13.34", 1)), "combustion-one"), Verdict::pass);
    EXPECT_EQ(held(closet(openings("13.33", 1)), "combustion-one"), Verdict::fail);
    EXPECT_EQ(held(closet(openings("13.34", 1)), "combustion-two"), Verdict::unknown) << "there may be another";
    const std::string level = "construction: {has: [level-combustion-ducts]}\n";
    EXPECT_EQ(held(closet(openings("20", 2), level), "combustion-ducts"), Verdict::pass);
    EXPECT_EQ(held(closet(openings("19.99", 2), level), "combustion-ducts"), Verdict::fail);
    EXPECT_EQ(held(closet(openings("20", 2)), "combustion-ducts"), Verdict::unknown) << "nobody says how the ducts run";
}

/// An attic of 1,500 ft2 has 7 ft2 of vents: too few, but for one whose vents lie both high and low.
TEST(WorkedNumbers, AHalfIsEnoughWhereVentsLieHighAndLow) {
    const std::string attic =
        "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: attic, kind: cavity, floor: 1500 ft2}]\ngaps:\n"
        "  - {id: vent, between: [yard, attic], slot: {width: 1 ft, length: 7 ft}, duty: vent, type: gable-vent}\n";
    const auto held = [&](const std::string& more) { return result_of(audited(attic + more), "attic-vent-area"); };
    EXPECT_EQ(held("").verdict, Verdict::unknown);
    EXPECT_EQ(held("details: [{what: vents-balanced, is: true}]\n").verdict, Verdict::pass);
    const ProvisionResult failed = held("details: [{what: vents-balanced, is: false}]\n");
    EXPECT_EQ(failed.verdict, Verdict::fail);
    EXPECT_NEAR(*failed.measured, 0.7, 1e-9);
    EXPECT_EQ(held("details: [{what: vents-balanced, is: true, at: \"over the hall\"}, {what: vents-balanced, is: false, at: "
                   "\"over the garage\"}]\n")
                  .verdict,
              Verdict::fail)
        << "one that is not spoils it";
}

/// A hole in a top plate under another story breaks no ceiling's air barrier, and still has to hold back fire.
TEST(Ceilings, AreAnAtticsOnlyWhereTheyLeadIntoOne) {
    const auto job = [](const std::string& over_the_upper_story) {
        return "seamward: 1\n"
               "spaces: [{id: yard, kind: outdoors}, {id: lower-wall, kind: cavity}, {id: upper-wall, kind: cavity}, {id: "
               "joists, kind: "
               "cavity},\n  {id: " +
               over_the_upper_story +
               ", kind: cavity}, {id: den, kind: living}]\n"
               "gaps:\n"
               "  - {id: low, between: [lower-wall, joists], hole: {diameter: 13 mm}, evidence: {how: measured}, type: "
               "top-plate-hole}\n"
               "  - {id: high, between: [upper-wall, " +
               over_the_upper_story +
               "], hole: {diameter: 12 mm}, evidence: {how: measured}, type: top-plate-hole}\n"
               "  - {id: light, between: [den, joists], slot: {width: 2 mm, length: 0.5 m}, evidence: {how: measured}, type: "
               "recessed-light}\n";
    };
    const Audit known = audited(job("attic"));
    const ProvisionResult& sealed = result_of(known, "top-plate-joint");
    ASSERT_EQ(sealed.checked.size(), 1U);
    EXPECT_NEAR(*sealed.measured, 0.012, 1e-12);
    EXPECT_TRUE(result_of(known, "recessed-lights").checked.empty());
    EXPECT_EQ(result_of(known, "plate-holes").checked.size(), 2U);
    // Where nobody says which space is an attic, none is left out.
    const Audit unsaid = audited(job("void"));
    EXPECT_EQ(result_of(unsaid, "top-plate-joint").checked.size(), 2U);
    EXPECT_EQ(result_of(unsaid, "recessed-lights").verdict, Verdict::fail);
}

}  // namespace
}  // namespace seamward::test
