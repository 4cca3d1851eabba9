// SPDX-License-Identifier: GPL-3.0-or-later
// Described houses, built to solids, written to a 3D file and read from it alone: what they declare is found in them, and nothing
// else.
#include "tests/support/closed_loop.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <ostream>
#include <string>
#include <vector>

#include "house/build_house.h"
#include "tests/house/described_jobs.h"

namespace seamward::test {
namespace {

void expect_agreement(const LoopReport& report) {
    std::cout << report.declared << " gaps to be found, " << report.matched << " found as declared; " << report.joined
              << " more within air that is one\n";
    for (const LoopFault& fault : report.faults) ADD_FAILURE() << fault.words;
    EXPECT_EQ(report.matched, report.declared);
}

LoopReport loop_of(const Job& job, const AirMap& air) {
    const DeclaredHouse house(job, air, {});
    return house.compare(find_gaps(read_from_file(job), house.settings(), RunContext()));
}

/// The same with the house turned askew in its file, and what is found turned back.
LoopReport askew_loop_of(const Job& job, const AirMap& air, double angle) {
    const DeclaredHouse house(job, air, {});
    const auto turn = [](Point& p, double by) {
        p = {p.x * std::cos(by) - p.y * std::sin(by), p.x * std::sin(by) + p.y * std::cos(by), p.z};
    };
    Model model = read_from_file(job);
    for (ModelPart& part : model.parts) {
        for (Point& p : part.mesh.points) turn(p, angle);
    }
    FindSettings settings = house.settings();
    for (RoomSeed& room : settings.rooms) turn(room.at, angle);
    Found found = find_gaps(model, settings, RunContext());
    for (FoundSpace& space : found.spaces) turn(space.at, -angle);
    for (FoundGap& gap : found.gaps) {
        turn(gap.at, -angle);
        for (Point& p : gap.through) turn(p, -angle);
    }
    return house.compare(found);
}

class ClosedLoop : public testing::TestWithParam<std::string> {};

TEST_P(ClosedLoop, FindsWhatAShippedHouseDeclaresAndNothingElse) {
    const Job job = described_job(GetParam(), Make::solids);
    const HouseDescription described = description_of(GetParam());
    const House shut = shut_house(described);
    const LoopReport report = loop_of(job, AirMap(shut, {.pitch = pitch_for(described, shut)}));
    EXPECT_GT(report.declared, 20U);
    expect_agreement(report);
}

/// Axes of the house are none of the model's: its cells are others.
class ClosedLoopAskew : public testing::TestWithParam<std::string> {};

TEST_P(ClosedLoopAskew, FindsTheSameInAHouseTurnedAskew) {
    const Job job = described_job(GetParam(), Make::solids);
    const HouseDescription described = description_of(GetParam());
    const House shut = shut_house(described);
    expect_agreement(askew_loop_of(job, AirMap(shut, {.pitch = pitch_for(described, shut)}), 0.3));
}

/// Turned so, a cell along the vent pipe reaches from the yard through the ring around it into the attic.
TEST(ClosedLoopTurnedFar, FindsTheRingThatACellReachesThrough) {
    const Job job = described_job("two-story", Make::solids);
    const HouseDescription described = description_of("two-story");
    const House shut = shut_house(described);
    expect_agreement(askew_loop_of(job, AirMap(shut, {.pitch = pitch_for(described, shut)}), 2.2));
}

INSTANTIATE_TEST_SUITE_P(Shipped, ClosedLoopAskew, testing::ValuesIn(described_jobs()), name_of);

INSTANTIATE_TEST_SUITE_P(Shipped, ClosedLoop, testing::ValuesIn(described_jobs()), name_of);

/// A hut of one room with a flat roof.
struct Hut {
    std::string name, layers;
    std::string more;  ///< further keys
    std::string foundation = "{kind: slab, above_grade: 0.15 m}";
    std::string stories = "[{height: 2.5 m}]", rooms = "[{id: room, at: [2 m, 1.5 m]}]";

    friend std::ostream& operator<<(std::ostream& out, const Hut& hut) { return out << hut.name; }
    [[nodiscard]] std::string text() const {
        return "seamward-house: 1\nassemblies: [{id: wall, layers: [" + layers +
               ", {air: true, thick: 89 mm}, {of: drywall, thick: 13 mm}]}]\n"
               "outline: [[0 m, 0 m], [6 m, 0 m], [6 m, 3 m], [0 m, 3 m]]\nwalls: [south, east, north, west]\nfoundation: " +
               foundation + "\nstories: " + stories + "\nrooms: " + rooms +
               "\nroof: {shape: flat, parapet: 0.15 m, of: membrane, attic: {id: attic}}\nyard: {margin: 1 m}\n" + more;
    }
};

std::vector<Hut> huts() {
    const std::string stucco = "{of: stucco, thick: 22 mm}, {of: wood, thick: 11 mm}";
    const std::string brick = "{of: brick, thick: 90 mm}, {air: true, thick: 25 mm}, {of: wood, thick: 12 mm}";
    const std::string crawl = "{kind: crawl-space, above_grade: 0.8 m, height: 0.75 m, space: {id: crawl}}";
    return {
        {"conduit through stucco", stucco, "features: [{id: conduit, type: service-conduit, on: south, along: 2 m, up: 1.2 m}]"},
        {"conduit through brick", brick, "features: [{id: conduit, type: service-conduit, on: south, along: 2 m, up: 1.2 m}]"},
        {"bibb through brick", brick, "features: [{id: bibb, type: hose-bibb, on: south, along: 2 m, outside: 6.35 mm}]"},
        {"bibb through stucco", stucco,
         "features: [{id: bibb, type: hose-bibb, on: south, along: 2 m, outside: 3/16 in, inside: 2.2 mm}]"},
        {"dryer through stucco", stucco, "features: [{id: dryer, type: dryer-outlet, on: south, along: 2 m, space: {id: duct}}]"},
        {"dryer without a ring", stucco,
         "features: [{id: dryer, type: dryer-outlet, on: south, along: 2 m, outside: none, space: {id: duct}}]"},
        {"duct under a floor", brick,
         "features:\n"
         "  - {id: dryer, type: dryer-floor-duct, at: [2 m, 2.5 m], space: {id: duct}, through: {gap: 5.6 mm}}\n"
         "  - {id: outlet, type: dryer-outlet, on: north, up: -0.13 m, space: duct, outside: {gap: 4.8 mm}}\n"
         "  - {id: slipped, type: duct-joint, space: duct, gap: 9 mm}",
         crawl},
        {"line set beside a rim joist", stucco,
         "features:\n"
         "  - {id: line, type: line-set, on: south, along: 0.7 m, outside: {around: 35 mm}, top: {around: 35 mm}}\n"
         "  - {id: rim, type: rim-joist-joint, on: south, story: 2, gap: 1.7 mm}",
         "{kind: slab, above_grade: 0.15 m}", "[{height: 2.5 m}, {height: 2.5 m, floor: 287 mm, void: {id: joists}}]",
         "[{id: room, at: [2 m, 1.5 m]}, {id: upper-room, story: 2, at: [2 m, 1.5 m]}]"},
        {"garage door", stucco,
         "openings: [{id: door, kind: garage-door, in: south, along: 3 m, width: 4.8 m, height: 2.1 m}]\n"
         "features: [{id: bottom, type: garage-door-bottom, on: door, gap: 4.6 mm}, "
         "{id: corners, type: garage-door-corner, on: door, gap: 14 mm}]"},
        {"alarm and register", stucco,
         "features: [{id: register, type: supply-register, on: ceiling, at: [1.2 m, 1.2 m], gap: 2.2 mm}, "
         "{id: alarm, type: smoke-alarm, on: ceiling, at: [2.4 m, 1.2 m]}]"},
        {"louver", stucco, "features: [{id: louver, type: combustion-air-opening, on: south, along: 2 m, up: 1 m, gap: 1/4 in}]"},
    };
}

class ClosedLoopOfAHut : public testing::TestWithParam<Hut> {};

TEST_P(ClosedLoopOfAHut, FindsWhatItDeclaresAndNothingElse) {
    const HouseDescription described = parse_house_yaml(GetParam().text(), "hut.yaml");
    Job job;
    job.name = GetParam().name;
    job.house = build_house(described, {}, Make::solids, RunContext());
    job.survey = job.house.survey;
    const House shut = shut_house(described);
    expect_agreement(loop_of(job, AirMap(shut, {.pitch = 0.02})));
}

INSTANTIATE_TEST_SUITE_P(Huts, ClosedLoopOfAHut, testing::ValuesIn(huts()), [](const auto& hut) {
    std::string name = hut.param.name;
    std::ranges::replace(name, ' ', '_');
    return name;
});

}  // namespace
}  // namespace seamward::test
