// SPDX-License-Identifier: GPL-3.0-or-later
// Roofs against closed formulas.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "house/framing.h"
#include "tests/house/plain_house.h"

namespace seamward::test {
namespace {

/// A face of a part, all triangles that look the same way.
struct RoofTop {
    double area = 0;  ///< of triangles that look up, square meters
    double plan = 0;  ///< the same seen from above
    double low = 1e9, high = -1e9;
    std::vector<Vector> normals;  ///< unit vectors
};

RoofTop top_of(const Part& part) {
    RoofTop top;
    for (const auto& [a, b, c] : part.mesh.triangles) {
        const Point &p = part.mesh.points[a], &q = part.mesh.points[b], &r = part.mesh.points[c];
        const Vector normal = cross(q - p, r - p);
        const double doubled = length(normal);
        if (normal.z < 0.01 * doubled) continue;
        top.area += doubled / 2;
        top.plan += normal.z / 2;
        top.normals.push_back(normal * (1 / doubled));
        for (const Point& at : {p, q, r}) {
            top.low = std::min(top.low, at.z);
            top.high = std::max(top.high, at.z);
        }
    }
    return top;
}

std::vector<RoofTop> planes_of(const House& house) {
    std::vector<RoofTop> tops;
    for (const Part& part : house.parts) {
        if (part.id.starts_with("roof/plane-")) {
            EXPECT_EQ(part.layer, Layer::roof);
            EXPECT_EQ(fault_of_solid(part.mesh), "") << part.id;
            tops.push_back(top_of(part));
        }
    }
    return tops;
}

/// Area of a polygon with each edge moved out by as much: corners add more where they stand out, less where they go in.
double grown_area(const Loop& outline, double by) {
    double area = doubled_area(outline) / 2;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 a = outline[i] - outline[(i + outline.size() - 1) % outline.size()],
                     b = outline[(i + 1) % outline.size()] - outline[i];
        area += std::hypot(b.x, b.y) * by + by * by * std::tan(std::atan2(cross(a, b), dot(a, b)) / 2);
    }
    return area;
}

void expect_pitch(const std::vector<RoofTop>& tops, double pitch) {
    for (const RoofTop& top : tops) {
        ASSERT_FALSE(top.normals.empty());
        for (const Vector& n : top.normals) {
            EXPECT_NEAR(std::hypot(n.x, n.y) / n.z, pitch, 1e-9);
            EXPECT_LT(length(n - top.normals.front()), 1e-9);
        }
    }
}

class Pitch : public testing::TestWithParam<int> {};

TEST_P(Pitch, ShapesAHipRoof) {
    const double pitch = GetParam() / 12.0, rise = std::sqrt(1 + pitch * pitch), overhang = 0.6;
    PlainHouse plain;
    plain.roof = "{shape: hip, pitch: " + std::to_string(GetParam()) + "/12, overhang: 0.6 m}";
    const House house = plain.build();
    const std::vector<RoofTop> tops = planes_of(house);
    ASSERT_EQ(tops.size(), 4U);
    expect_pitch(tops, pitch);
    const double l = PlainHouse::length + 2 * overhang, w = PlainHouse::width + 2 * overhang;
    // Two triangles over the short walls, two trapezoids over the long ones.
    EXPECT_NEAR(tops[1].plan, w * w / 4, 1e-9);
    EXPECT_NEAR(tops[3].plan, w * w / 4, 1e-9);
    EXPECT_NEAR(tops[0].plan, (l * w - w * w / 2) / 2, 1e-9);
    double area = 0;
    for (const RoofTop& top : tops) area += top.area;
    EXPECT_NEAR(area, l * w * rise, 1e-9);
    EXPECT_NEAR(volume_of(house, "roof/plane-1") + volume_of(house, "roof/plane-2") + volume_of(house, "roof/plane-3") +
                    volume_of(house, "roof/plane-4"),
                l * w * rise * framing::deck, 1e-9);
    const double heel = std::max(framing::heel, pitch * PlainHouse::cladding + 0.06);
    for (const RoofTop& top : tops) {
        EXPECT_NEAR(top.high, PlainHouse::plate_top + heel + pitch * PlainHouse::width / 2 + framing::deck * rise, 1e-9);
        EXPECT_NEAR(top.low, PlainHouse::plate_top + heel - pitch * overhang + framing::deck * rise, 1e-9);
    }
    // Each falls over its own wall.
    const std::array<Vector, 4> out{Vector{0, -1, 0}, {1, 0, 0}, {0, 1, 0}, {-1, 0, 0}};
    for (std::size_t i = 0; i < 4; ++i) EXPECT_NEAR(dot(tops[i].normals[0], out.at(i)) / tops[i].normals[0].z, pitch, 1e-9);
}

INSTANTIATE_TEST_SUITE_P(Of12, Pitch, testing::Values(1, 4, 9, 12, 24, 36));

TEST(Roof, OverASquareIsAPyramid) {
    PlainHouse plain;
    plain.outline = "[[0 m, 0 m], [8 m, 0 m], [8 m, 8 m], [0 m, 8 m]]";
    const std::vector<RoofTop> tops = planes_of(plain.build());
    ASSERT_EQ(tops.size(), 4U);
    for (const RoofTop& top : tops) EXPECT_NEAR(top.plan, 9.2 * 9.2 / 4, 1e-9);
}

TEST(Roof, OverAnyOutlineHasOnePitch) {
    struct Case {
        const char* outline;
        Loop loop;
    };
    const std::vector<Case> cases{
        {"[[0 m, 0 m], [9 m, 0 m], [9 m, 4 m], [4 m, 4 m], [4 m, 9 m], [0 m, 9 m]]",
         {{0, 0}, {9, 0}, {9, 4}, {4, 4}, {4, 9}, {0, 9}}},
        {"[[0 m, 0 m], [9 m, 0 m], [11 m, 5 m], [4 m, 4 m], [1 m, 8 m]]", {{0, 0}, {9, 0}, {11, 5}, {4, 4}, {1, 8}}},
        {"[[0 m, 0 m], [7 m, -3 m], [7.5 m, 9 m]]", {{0, 0}, {7, -3}, {7.5, 9}}}};
    for (const auto& [outline, loop] : cases) {
        SCOPED_TRACE(outline);
        PlainHouse plain;
        plain.outline = outline;
        plain.roof = "{shape: hip, pitch: 5/12, overhang: 0.35 m}";
        plain.rooms = "[{id: room, at: [3 m, 1 m]}]";
        const std::vector<RoofTop> tops = planes_of(plain.build());
        ASSERT_EQ(tops.size(), loop.size());
        expect_pitch(tops, 5 / 12.0);
        double area = 0;
        for (const RoofTop& top : tops) area += top.area;
        EXPECT_NEAR(area, grown_area(loop, 0.35) * std::hypot(1, 5 / 12.0), 1e-9);
    }
}

TEST(Roof, WithGablesHasTwoPlanesAndWallsUpToTheRidge) {
    PlainHouse plain;
    plain.roof = "{shape: gable, pitch: 6/12, overhang: 0.5 m, rake: 0.3 m, gables: [wall-2, wall-4]}";
    const House house = plain.build();
    const std::vector<RoofTop> tops = planes_of(house);
    ASSERT_EQ(tops.size(), 2U);
    expect_pitch(tops, 0.5);
    for (const RoofTop& top : tops) EXPECT_NEAR(top.plan, (12 + 0.6) * (8 + 1.0) / 2, 1e-9);
    const double ridge = PlainHouse::plate_top + framing::heel + 0.5 * 4, eave = PlainHouse::plate_top + framing::heel;
    for (const char* wall : {"wall-2", "wall-4"}) {
        const Part* stucco = part_of(house, std::string(wall) + "/stucco");
        ASSERT_NE(stucco, nullptr);
        const SolidFacts facts = facts_of(stucco->mesh);
        EXPECT_NEAR(facts.bounds.highest.z, ridge, 1e-9);
        // Between the framing's face and the cladding's the wall grows wider and its lower corners sink with the slope.
        const auto area = [&](double n) { return (8 + 2 * n) / 2 * (eave - 0.5 * n + ridge + 2 * framing::overlap); };
        const double back = PlainHouse::boards, front = PlainHouse::cladding;
        EXPECT_NEAR(facts.volume, (front - back) / 6 * (area(back) + 4 * area((back + front) / 2) + area(front)), 1e-9);
    }
    EXPECT_NEAR(facts_of(part_of(house, "wall-1/stucco")->mesh).bounds.highest.z, PlainHouse::plate_top, 1e-9);
}

TEST(Roof, WithOneGableKeepsTheOtherHip) {
    PlainHouse plain;
    plain.roof = "{shape: gable, pitch: 6/12, overhang: 0.5 m, rake: 0.3 m, gables: [wall-2]}";
    const std::vector<RoofTop> tops = planes_of(plain.build());
    ASSERT_EQ(tops.size(), 3U);
    expect_pitch(tops, 0.5);
    double plan = 0;
    for (const RoofTop& top : tops) plan += top.plan;
    EXPECT_NEAR(plan, (12 + 0.3 + 0.5) * 9, 1e-9);
    EXPECT_NEAR(tops[2].plan, 9 * 9 / 4.0, 1e-9);
}

TEST(Roof, ShedRisesFromItsLowWall) {
    PlainHouse plain;
    plain.roof = "{shape: shed, pitch: 3/12, overhang: 0.4 m, rake: 0.2 m, low: wall-1}";
    const House house = plain.build();
    const std::vector<RoofTop> tops = planes_of(house);
    ASSERT_EQ(tops.size(), 1U);
    expect_pitch(tops, 0.25);
    EXPECT_NEAR(tops[0].plan, (12 + 2 * 0.2) * (8 + 0.4 + 0.2), 1e-9);
    EXPECT_NEAR(tops[0].normals[0].y / tops[0].normals[0].z, -0.25, 1e-9);
    const double rise = std::hypot(1, 0.25), low = PlainHouse::plate_top + framing::heel;
    EXPECT_NEAR(tops[0].low, low - 0.25 * 0.4 + framing::deck * rise, 1e-9);
    EXPECT_NEAR(tops[0].high, low + 0.25 * 8.2 + framing::deck * rise, 1e-9);
    const auto highest = [&](const char* id) { return facts_of(part_of(house, id)->mesh).bounds.highest.z; };
    EXPECT_NEAR(highest("wall-1/stucco"), PlainHouse::plate_top, 1e-9);
    EXPECT_NEAR(highest("wall-3/stucco"), low + 0.25 * (8 - framing::stud) - 0.002, 1e-9);
    EXPECT_NEAR(highest("wall-2/stucco"), low + 0.25 * (8 + PlainHouse::cladding), 1e-9);
}

TEST(Roof, FlatLiesBehindItsParapet) {
    PlainHouse plain;
    plain.roof = "{shape: flat, parapet: 0.5 m}";
    const House house = plain.build();
    const std::vector<RoofTop> tops = planes_of(house);
    ASSERT_EQ(tops.size(), 1U);
    expect_pitch(tops, 0);
    EXPECT_NEAR(tops[0].plan, (12 - 2 * 0.089) * (8 - 2 * 0.089), 1e-9);
    const double deck_top = PlainHouse::plate_top + 0.3 + framing::deck;
    EXPECT_NEAR(tops[0].high, deck_top, 1e-9);
    EXPECT_NEAR(facts_of(part_of(house, "wall-1/stucco")->mesh).bounds.highest.z, deck_top + 0.5, 1e-9);
    EXPECT_NEAR(facts_of(part_of(house, "wall-1/cap")->mesh).bounds.highest.z, deck_top + 0.5 + 0.02, 1e-9);
}

TEST(Roof, StandsOnTheTopStory) {
    PlainHouse plain;
    plain.stories = "[{height: 2.5 m}, {height: 2.4 m, floor: 0.3 m}]";
    plain.rooms = "[{id: room, at: [2 m, 2 m]}, {id: upper, at: [2 m, 2 m], story: 2}]";
    const std::vector<RoofTop> tops = planes_of(plain.build());
    ASSERT_EQ(tops.size(), 4U);
    const double plate = PlainHouse::plate_top + 0.3 + 2.4 + PlainHouse::drywall;
    EXPECT_NEAR(tops[0].low, plate + framing::heel - 0.6 / 3 + framing::deck * std::hypot(1, 1 / 3.0), 1e-9);
}

TEST(Roof, SaysWhatCannotBe) {
    PlainHouse plain;
    const auto faults_of = [&](const std::string& roof) {
        plain.roof = roof;
        return plain.faults();
    };
    EXPECT_NE(faults_of("{shape: gable, pitch: 4/12, gables: [wall-1]}").find("no gable can stand on wall-1"), std::string::npos);
    EXPECT_NE(faults_of("{shape: gable, pitch: 4/12, gables: [wall-2, wall-1]}").find("no gable can stand on"),
              std::string::npos);
    plain.outline = "[[0 m, 0 m], [12 m, 0 m], [13 m, 8 m], [0 m, 8 m]]";
    EXPECT_NE(faults_of("{shape: gable, pitch: 4/12, gables: [wall-2]}").find("between two square corners"), std::string::npos);
    EXPECT_NE(faults_of("{shape: shed, pitch: 4/12, low: wall-1}").find("wall-2 is not"), std::string::npos);
    EXPECT_EQ(faults_of("{shape: hip, pitch: 4/12}"), "");
    plain.outline = "[[0 m, 0 m], [12 m, 0 m], [12 m, 8 m], [7 m, 8 m], [7 m, 5 m], [6 m, 5 m], [6 m, 8 m], [0 m, 8 m]]";
    EXPECT_EQ(faults_of("{shape: hip, pitch: 4/12, overhang: 0.45 m}"), "");
    EXPECT_NE(faults_of("{shape: hip, pitch: 4/12, overhang: 0.55 m}").find("run into each other"), std::string::npos);
    EXPECT_EQ(faults_of("{shape: shed, pitch: 4/12, low: wall-1}"), "");
    EXPECT_NE(faults_of("{shape: shed, pitch: 4/12, low: wall-5}").find("lies farthest out"), std::string::npos);
}

}  // namespace
}  // namespace seamward::test
