// SPDX-License-Identifier: GPL-3.0-or-later
// What is measured on the solids of described houses, against what their sizes come to by hand.
#include <gtest/gtest.h>

#include <cmath>

#include "provisions/gap_parts.h"
#include "tests/provisions/house_job.h"
#include "tests/provisions/rule_job.h"

namespace seamward::test {
namespace {

constexpr double nose = 0.022;   ///< a screed's lower edge below the floor, meters
constexpr double paving = 0.05;  ///< thickness
constexpr double micrometer = 1e-6;

ProvisionResult held(const HouseJob& house, const std::string& rule) {
    const Job job = house.read();
    return result_of(audit(job, parts_of_house(job), AuditSettings(), RunContext()), rule);
}

void expect_measured(const HouseJob& house, const std::string& rule, double value, Verdict verdict) {
    const ProvisionResult result = held(house, rule);
    EXPECT_STREQ(verdict_word(result.verdict), verdict_word(verdict)) << rule << ' ' << result.why.english();
    ASSERT_TRUE(result.measured) << rule << ' ' << result.why.english();
    EXPECT_NEAR(*result.measured, value, micrometer) << rule;
}

HouseJob stucco(const std::string& above_grade, const std::string& on = "south") {
    HouseJob house;
    house.foundation = "{kind: slab, above_grade: " + above_grade + "}";
    house.features = "  - {id: screed, type: weep-screed, on: " + on + "}\n";
    return house;
}

std::string slab_before_south(const std::string& from, const std::string& to) {
    return "paving:\n  - {id: walk, corners: [[" + from + ", -3 m], [" + to + ", -3 m], [" + to + ", 0 m], [" + from +
           ", 0 m]]}\n";
}

TEST(ScreedHeight, IsThatOfTheNoseOverTheEarth) {
    expect_measured(stucco("0.2 m"), "screed-over-earth", 0.2 - nose, Verdict::pass);
    expect_measured(stucco("0.12361 m"), "screed-over-earth", 0.12361 - nose, Verdict::pass);
    expect_measured(stucco("0.1235 m"), "screed-over-earth", 0.1235 - nose, Verdict::fail);
    EXPECT_EQ(held(stucco("0.2 m"), "screed-over-paving").verdict, Verdict::not_applicable) << "nothing is paved";
}

TEST(ScreedHeight, IsTheSameOnEveryWallAndHoweverTheHouseStands) {
    for (const char* wall : {"south", "east", "north", "west"})
        expect_measured(stucco("0.15 m", wall), "screed-over-earth", 0.15 - nose, Verdict::pass);
    HouseJob turned = stucco("0.15 m");
    turned.outline = "[[100 m, 50 m], [109.6 m, 57.2 m], [104.8 m, 63.6 m], [95.2 m, 56.4 m]]";  // 3 : 4 : 5
    turned.rooms = "[{id: room, at: [101 m, 54 m]}]";
    expect_measured(turned, "screed-over-earth", 0.15 - nose, Verdict::pass);
}

TEST(ScreedHeight, OverPavingIsMeasuredApart) {
    HouseJob house = stucco("0.15 m");
    house.more = slab_before_south("-1 m", "13 m");
    expect_measured(house, "screed-over-paving", 0.15 - paving - nose, Verdict::pass);
    EXPECT_EQ(held(house, "screed-over-earth").verdict, Verdict::not_applicable) << "all of it is paved";
    house.foundation = "{kind: slab, above_grade: 0.12 m}";
    expect_measured(house, "screed-over-paving", 0.12 - paving - nose, Verdict::fail);
}

TEST(ScreedHeight, OfAWallThatIsPavedInPartIsBoth) {
    HouseJob house = stucco("0.13 m");
    house.more = slab_before_south("5 m", "6 m");
    expect_measured(house, "screed-over-paving", 0.13 - paving - nose, Verdict::pass);
    expect_measured(house, "screed-over-earth", 0.13 - nose, Verdict::pass);
    house.more = slab_before_south("3 m", "3.2 m");
    expect_measured(house, "screed-over-paving", 0.13 - paving - nose, Verdict::pass);
    house.foundation = "{kind: slab, above_grade: 0.1 m}";
    EXPECT_EQ(held(house, "screed-over-paving").verdict, Verdict::fail);
    EXPECT_EQ(held(house, "screed-over-earth").verdict, Verdict::fail);
}

/// Paving that reaches over the screed is no earth that lies deep under it.
TEST(ScreedHeight, OfAScreedThatIsBuriedIsNone) {
    HouseJob house = stucco("0.04 m");
    house.more = slab_before_south("-1 m", "13 m");
    expect_measured(house, "screed-over-paving", 0, Verdict::fail);
}

/// What the house's file leaves out is a starting value, and no measurement.
TEST(ScreedHeight, IsNotKnownWhereTheFileDoesNotSayHowHighTheFloorIs) {
    HouseJob house = stucco("0.2 m");
    house.foundation = "{kind: slab}";
    EXPECT_EQ(held(house, "screed-over-earth").verdict, Verdict::unknown);
    house.job =
        "details:\n  - {what: height-over-earth, gap: screed-joint, is: 5 in}\n  - {what: height-over-earth, gap: "
        "screed-drain-holes, is: 5 in}\n  - {what: height-over-earth, gap: screed-stucco-line, is: 5 in}\n";
    expect_measured(house, "screed-over-earth", 5 * 0.0254, Verdict::pass);
}

TEST(ScreedHeight, ThatTheSurveyStatesTakesThePlaceOfTheSolids) {
    HouseJob house = stucco("0.2 m");
    house.job = "details: [{what: height-over-earth, gap: screed-joint, is: 3 in}]\n";
    expect_measured(house, "screed-over-earth", 3 * 0.0254, Verdict::fail);
}

HouseJob brick(const std::string& feature) {
    HouseJob house;
    house.wall =
        "[{of: brick, thick: 90 mm}, {air: true, thick: 25 mm}, {of: wood, thick: 12 mm}, {air: true, thick: 89 mm}, {of: "
        "drywall, "
        "thick: 13 mm}]";
    house.features = "  - {id: weeps, type: brick-weep, on: south, gap: 10 mm, " + feature + "}\n";
    return house;
}

TEST(WeepSpacing, IsThatOfTheFile) {
    expect_measured(brick("spacing: 0.6 m"), "brick-weep-spacing", 0.6, Verdict::pass);
    expect_measured(brick("spacing: 0.82 m"), "brick-weep-spacing-ontario", 0.82, Verdict::fail);
    expect_measured(brick("spacing: 0.82 m"), "brick-weep-spacing", 0.82, Verdict::pass);
    expect_measured(brick("spacing: 0.85 m"), "brick-weep-spacing", 0.85, Verdict::fail);
}

TEST(WeepSpacing, OfTheTablesIsAGuess) {
    const ProvisionResult result = held(brick("count: 14"), "brick-weep-spacing");
    EXPECT_EQ(result.verdict, Verdict::unknown) << result.measured.value_or(0);
    EXPECT_NE(result.why.english().find("guess"), std::string::npos);
    HouseJob guessed = brick("spacing: 0.6 m, evidence: {how: assumed}");
    EXPECT_EQ(held(guessed, "brick-weep-spacing").verdict, Verdict::unknown) << "nobody looked";
}

/// Two weeps in the middle of a wall of 12 m leave it without any for meters.
TEST(WeepSpacing, CountsTheWallBesideTheLastOne) {
    const ProvisionResult result = held(brick("count: 2, spacing: 0.6 m, along: 6 m"), "brick-weep-spacing");
    EXPECT_EQ(result.verdict, Verdict::fail);
    EXPECT_NEAR(result.measured.value_or(0), 6 - 0.3, 0.2) << "to the corner of the framing, or of the brick";
}

TEST(WeepSpacing, TakesTheDoorOutAndNotTheWallBesideIt) {
    HouseJob house = brick("spacing: 0.6 m");
    house.more = "openings:\n  - {id: door, kind: door, in: south, along: 6 m, width: 1.6 m, height: 2.03 m}\n";
    const ProvisionResult result = held(house, "brick-weep-spacing");
    EXPECT_EQ(result.verdict, Verdict::pass) << result.measured.value_or(0);
    EXPECT_LT(result.measured.value_or(9), 0.8382) << "the door itself counts for nothing";
    EXPECT_GE(result.measured.value_or(0), 0.6 - micrometer);
}

/// The hood's flap is 100 mm wide with its middle at `along`; a window's edge lies at its middle less half its width.
TEST(DryerDistance, RunsFromTheFlapToTheWindow) {
    HouseJob house;
    house.more = "openings:\n  - {id: window, kind: window, in: south, along: 4 m, width: 1 m, height: 1 m, sill: 0 m}\n";
    const auto measured = [&](const std::string& along) {
        house.features = "  - {id: dryer, type: dryer-outlet, on: south, along: " + along +
                         ", up: 0.5 m, hood: 8 mm, space: {id: dryer-duct}}\n";
        const ProvisionResult result = held(house, "dryer-distance");
        EXPECT_TRUE(result.measured) << result.why.english();
        return result.measured.value_or(0);
    };
    // From the window's edge at 4.5 m to the flap's at `along` less 50 mm; the flap stands out from the wall by its reach.
    const double near = measured("5.2 m"), far = measured("6.2 m");
    EXPECT_GT(near, 0.6);
    EXPECT_LT(near, 0.72);
    EXPECT_NEAR(std::sqrt(far * far), far, micrometer);
    EXPECT_GT(far, 1.6);
    EXPECT_LT(far, 1.72);
}

/// However high it is, it is no nearer than in the plan.
TEST(DryerDistance, OfAnOutletWhoseHeightIsNotSaidIsKnownWhereItIsFar) {
    HouseJob house;
    house.more = "openings:\n  - {id: window, kind: window, in: south, along: 4 m, width: 1 m, height: 1 m, sill: 1.2 m}\n";
    const auto verdict = [&](const std::string& along, const std::string& up) {
        house.features =
            "  - {id: dryer, type: dryer-outlet, on: south, along: " + along + up + ", hood: 8 mm, space: {id: dryer-duct}}\n";
        return held(house, "dryer-distance").verdict;
    };
    EXPECT_EQ(verdict("6 m", ""), Verdict::pass);
    EXPECT_EQ(verdict("4 m", ""), Verdict::unknown);
    EXPECT_EQ(verdict("4 m", ", up: 0.5 m"), Verdict::fail) << "0.65 m under the sill";
}

TEST(DryerDistance, CountsWhatLetsAirInAsWell) {
    HouseJob house;
    house.features =
        "  - {id: dryer, type: dryer-outlet, on: south, along: 5 m, up: 0.5 m, hood: 8 mm, space: {id: dryer-duct}}\n"
        "  - {id: air, type: combustion-air-opening, on: south, along: 5.6 m, up: 0.5 m}\n";
    const ProvisionResult result = held(house, "dryer-distance");
    EXPECT_EQ(result.verdict, Verdict::fail) << result.why.english();
    EXPECT_NEAR(result.measured.value_or(0), 0.6 - 0.1 - 0.05, 0.03) << "half of the louver, half of the flap";
}

TEST(DryerDistance, DoesNotCountDoorsInside) {
    HouseJob house;
    house.rooms = "[{id: room, at: [2 m, 2 m]}, {id: laundry, at: [10 m, 2 m]}]";
    house.more =
        "partitions:\n  - {id: middle, from: [6 m, 0 m], to: [6 m, 8 m]}\nopenings:\n"
        "  - {id: inner, kind: door, in: middle, along: 0.8 m, width: 0.8 m, height: 2 m}\n"
        "  - {id: window, kind: window, in: north, along: 2 m, width: 1 m, height: 1 m, sill: 1 m}\n";
    house.features =
        "  - {id: dryer, type: dryer-outlet, on: south, along: 6.4 m, up: 0.5 m, hood: 8 mm, space: {id: dryer-duct}}\n";
    const ProvisionResult result = held(house, "dryer-distance");
    EXPECT_EQ(result.verdict, Verdict::pass) << result.measured.value_or(0);
    EXPECT_GT(result.measured.value_or(0), 5);
}

HouseJob crawl(const std::string& vents) {
    HouseJob house;
    house.outline = "[[0 m, 0 m], [12 m, 0 m], [12 m, 8 m], [6 m, 8 m], [6 m, 5 m], [0 m, 5 m]]";
    house.walls = "[south, east, north, inner-west, inner-north, west]";
    house.foundation = "{kind: crawl-space, above_grade: 0.6 m, space: {id: crawl-space}}";
    house.features = vents;
    return house;
}

std::string vent(const std::string& id, const std::string& wall, const std::string& along) {
    return "  - {id: " + id + ", type: crawl-vent, on: " + wall + ", along: " + along + ", gap: 6 mm}\n";
}

/// An L has six corners, of which five stand out.
TEST(CrawlVents, AreNearEveryCornerThatStandsOut) {
    const std::string all = vent("a", "south", "0.6 m") + vent("b", "south", "11.4 m") + vent("c", "north", "0.6 m") +
                            vent("d", "north", "5.4 m") + vent("e", "west", "0.6 m");
    const ProvisionResult result = held(crawl(all), "crawl-vent-corners");
    EXPECT_EQ(result.verdict, Verdict::pass) << result.why.english();
    ASSERT_EQ(result.checked.size(), 5U) << "where the walls turn inward, none is asked for";
    for (const Checked& corner : result.checked)
        EXPECT_NEAR(corner.measured.value_or(9), 0.6 - 0.086, 0.04) << corner.subject.english();
    const std::string one_less =
        vent("a", "south", "0.6 m") + vent("b", "south", "11.4 m") + vent("c", "north", "0.6 m") + vent("d", "north", "5.4 m");
    EXPECT_EQ(held(crawl(one_less), "crawl-vent-corners").verdict, Verdict::fail);
    HouseJob closed = crawl(all);
    closed.job = "closed: [{gap: e, with: plate}]\n";
    EXPECT_EQ(held(closed, "crawl-vent-corners").verdict, Verdict::fail) << "a closed one does not count";
}

TEST(CrawlVents, WhosePlaceIsNotSaidAreNearNoCorner) {
    EXPECT_EQ(held(crawl("  - {id: v, type: crawl-vent, gap: 6 mm}\n"), "crawl-vent-corners").verdict, Verdict::unknown);
}

/// A louver 140 mm high with its middle so far over the floor of a room of 2.5 m.
HouseJob closet(const std::string& low, const std::string& high) {
    HouseJob house;
    house.features = "  - {id: low, type: combustion-air-opening, on: west, along: 4 m" + low + ", gap: 7 mm}\n" +
                     "  - {id: high, type: combustion-air-opening, on: west, along: 4.6 m" + high + ", gap: 7 mm}\n";
    house.job = "appliances: [{in: room, burns: 40000 Btu/h}]\n";
    return house;
}

TEST(CombustionAir, BeginsSoFarFromCeilingAndFloor) {
    const HouseJob good = closet(", up: 0.3 m", ", up: 2.2 m");
    expect_measured(good, "combustion-top", 2.5 - (2.2 + 0.07), Verdict::pass);
    expect_measured(good, "combustion-bottom", 0.3 - 0.07, Verdict::pass);
    // 12 in are 304.8 mm.
    expect_measured(closet(", up: 0.3748 m", ", up: 2.1252 m"), "combustion-top", 0.3048, Verdict::pass);
    expect_measured(closet(", up: 0.3748 m", ", up: 2.1252 m"), "combustion-bottom", 0.3048, Verdict::pass);
    expect_measured(closet(", up: 0.37481 m", ", up: 2.12519 m"), "combustion-top", 0.30481, Verdict::fail);
    expect_measured(closet(", up: 0.37481 m", ", up: 2.12519 m"), "combustion-bottom", 0.30481, Verdict::fail);
}

TEST(CombustionAir, IsNotCountedWhereItIsShut) {
    HouseJob shut = closet(", up: 0.3 m", ", up: 2.2 m");
    shut.job += "closed: [{gap: high, with: plate}]\n";
    EXPECT_EQ(held(shut, "combustion-top").verdict, Verdict::fail) << "the open one is the low one";
    EXPECT_EQ(held(shut, "combustion-open").verdict, Verdict::fail);
}

/// The wall is so thick that what stands 0.2 m inside of its middle is still wall.
TEST(CombustionAir, IsMeasuredInTheRoomHoweverThickTheWallIs) {
    HouseJob thick = closet(", up: 0.3 m", ", up: 1.5 m");
    thick.wall =
        "[{of: stucco, thick: 22 mm}, {of: wood, thick: 11 mm}, {air: true, thick: 489 mm}, {of: drywall, thick: 13 mm}]";
    expect_measured(thick, "combustion-top", 2.5 - 1.57, Verdict::fail);
}

TEST(Exhaust, ThatEndsInTheAtticDoesNotEndOutdoors) {
    HouseJob house;
    house.features = "  - {id: fan, type: bath-fan, at: [6 m, 4 m], housing: 4 mm, damper: 1 mm, space: {id: fan-duct}}\n";
    EXPECT_EQ(held(house, "fan-outdoors").verdict, Verdict::fail);
    house.features = "  - {id: dryer, type: dryer-outlet, on: south, along: 6 m, hood: 8 mm, space: {id: dryer-duct}}\n";
    EXPECT_EQ(held(house, "dryer-outdoors").verdict, Verdict::pass);
}

TEST(Garage, HasADuctOpenIntoIt) {
    HouseJob house;
    house.rooms = "[{id: room, at: [2 m, 2 m]}, {id: garage, kind: attached, at: [10 m, 2 m]}]";
    house.more = "partitions:\n  - {id: middle, from: [6 m, 0 m], to: [6 m, 8 m]}\n";
    const auto verdict = [&](const std::string& features, const std::string& job = "") {
        house.features = features;
        house.job = job;
        return held(house, "garage-ducts-open").verdict;
    };
    EXPECT_EQ(verdict("  - {id: register, type: supply-register, on: ceiling, at: [9 m, 4 m], gap: 6 mm}\n"), Verdict::fail);
    EXPECT_EQ(verdict("  - {id: register, type: supply-register, on: ceiling, at: [9 m, 4 m], gap: 6 mm}\n",
                      "closed: [{gap: register, with: plate}]\n"),
              Verdict::pass);
    EXPECT_EQ(verdict("  - {id: register, type: supply-register, on: ceiling, at: [9 m, 4 m], gap: 6 mm}\n",
                      "closed: [{gap: register, with: bead}]\n"),
              Verdict::unknown)
        << "round it is not over it";
    EXPECT_EQ(verdict("  - {id: register, type: supply-register, on: ceiling, at: [3 m, 4 m], gap: 6 mm}\n"), Verdict::unknown)
        << "that none is drawn says nothing";
}

/// One fault, one mend: a register that must not be there at all is not asked to be sealed as well.
TEST(Garage, HasNoRegisterThatIsToBeSealed) {
    HouseJob house;
    house.rooms = "[{id: room, at: [2 m, 2 m]}, {id: garage, kind: attached, at: [10 m, 2 m]}]";
    house.more = "partitions:\n  - {id: middle, from: [6 m, 0 m], to: [6 m, 8 m]}\n";
    const std::string there = "  - {id: register, type: supply-register, on: ceiling, at: [9 m, 4 m], gap: 6 mm}\n";
    house.features = there;
    EXPECT_EQ(held(house, "garage-ducts-open").verdict, Verdict::fail);
    EXPECT_EQ(held(house, "register-boots").verdict, Verdict::not_applicable);
    house.features = there + "  - {id: other, type: supply-register, on: ceiling, at: [3 m, 4 m], gap: 6 mm}\n";
    EXPECT_EQ(held(house, "garage-ducts-open").checked.size(), 1U);
    EXPECT_EQ(held(house, "register-boots").verdict, Verdict::fail);
    EXPECT_EQ(held(house, "register-boots").checked.size(), 1U);
    // What the audit asks for is what its own rule on closings takes.
    house.features = there;
    house.job = "closed: [{gap: register, with: plate}]\n";
    EXPECT_EQ(held(house, "closed-rightly").verdict, Verdict::pass);
    house.job = "closed: [{gap: register, with: bead}]\n";
    EXPECT_EQ(held(house, "closed-rightly").verdict, Verdict::fail);
}

}  // namespace
}  // namespace seamward::test
