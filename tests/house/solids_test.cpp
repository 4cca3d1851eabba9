// SPDX-License-Identifier: GPL-3.0-or-later
// Volumes of a house's parts against closed formulas; what two builds of a house have in common.
#include <gtest/gtest.h>

#include <cstring>
#include <set>
#include <sstream>

#include "house/framing.h"
#include "tests/house/described_jobs.h"
#include "tests/house/plain_house.h"
#include "tests/support/house_space.h"

namespace seamward::test {
namespace {

using P = PlainHouse;

/// Of the ring between two outlines of the plain house, each so far outside of its framing's outer face.
double ring(double inner, double outer) {
    return (P::length + 2 * outer) * (P::width + 2 * outer) - (P::length + 2 * inner) * (P::width + 2 * inner);
}

constexpr double inside = -(P::studs + P::drywall);

TEST(Solids, LayersOfWallsAreMiteredRings) {
    const House house = P().build();
    EXPECT_NEAR(volume_of(house, "/stucco"), ring(P::boards, P::cladding) * (P::plate_top + framing::overlap), 1e-9);
    EXPECT_NEAR(volume_of(house, "/wood"), ring(0, P::boards) * (P::plate_top + framing::overlap), 1e-9);
    EXPECT_NEAR(volume_of(house, "/drywall-1"), ring(inside, -P::studs) * P::plate_top, 1e-9);
    EXPECT_NEAR(volume_of(house, "/bottom-plate"), ring(-P::studs, 0) * framing::plate, 1e-9);
    EXPECT_NEAR(volume_of(house, "/top-plate"), ring(-P::studs, 0) * framing::double_top_plate, 1e-9);
    const double long_wall = facts_of(part_of(house, "wall-1/stucco")->mesh).volume;
    EXPECT_NEAR(long_wall,
                (P::length * P::stucco + P::cladding * P::cladding - P::boards * P::boards) * (P::plate_top + framing::overlap),
                1e-9);
}

TEST(Solids, OpeningsAreTakenOutOfAllLayers) {
    P plain;
    const double door = 0.9 * 2, window = 1.2 * 1.1;
    plain.more =
        "openings:\n  - {id: door, kind: door, in: wall-1, along: 3 m, width: 0.9 m, height: 2 m}\n"
        "  - {id: window, kind: window, in: wall-3, along: 5 m, width: 1.2 m, height: 1.1 m, sill: 0.9 m}\n";
    const House house = plain.build();
    EXPECT_NEAR(volume_of(house, "/stucco"),
                ring(P::boards, P::cladding) * (P::plate_top + framing::overlap) - (door + window) * P::stucco, 1e-9);
    EXPECT_NEAR(volume_of(house, "/drywall-1"), ring(inside, -P::studs) * P::plate_top - (door + window) * P::drywall, 1e-9);
    // The plate ends at the frame of the door.
    EXPECT_NEAR(volume_of(house, "/bottom-plate"), (ring(-P::studs, 0) - (0.9 + 2 * framing::stud) * P::studs) * framing::plate,
                1e-9);
    EXPECT_NEAR(volume_of(house, "door/leaf"), door * 0.045, 1e-9);
    // A window is a border 60 mm wide and thick round a pane of 6 mm.
    EXPECT_NEAR(volume_of(house, "window/leaf"), (window - (1.2 - 0.12) * (1.1 - 0.12)) * 0.06, 1e-9);
    EXPECT_NEAR(volume_of(house, "window/glass"), (1.2 - 0.12) * (1.1 - 0.12) * 0.006, 1e-9);
}

/// All layers together: what the wall's outside and inside faces enclose, less the air between the studs.
TEST(Solids, LayersOfAWallAddUp) {
    const House house = P().build();
    double sum = 0;
    for (const Part& part : house.parts) {
        if (part.id.starts_with("wall-") && part.id.find("/blocking") == std::string::npos && part.layer != Layer::eaves)
            sum += facts_of(part.mesh).volume;
    }
    double air = 0;  // the bodies between posts and plates
    for (std::size_t i = 0; i < house.survey.spaces.size(); ++i) {
        if (house.survey.spaces[i].id.starts_with("wall-")) air += doubled_area(house.middles[i].figure.outline) / 2 * P::studs;
    }
    EXPECT_NEAR(sum, ring(inside, P::cladding) * P::plate_top + ring(0, P::cladding) * framing::overlap - air, 1e-9);
}

TEST(Solids, FloorsAndCeilingsHaveTheirAreas) {
    P plain;
    const double floor = (P::length + 2 * inside) * (P::width + 2 * inside);
    House house = plain.build();
    EXPECT_NEAR(facts_of(part_of(house, "slab")->mesh).volume, P::length * P::width * (0.15 + framing::footing_depth), 1e-9);
    EXPECT_NEAR(volume_of(house, "room/ceiling"), floor * P::drywall, 1e-9);
    const auto room =
        std::find_if(house.survey.spaces.begin(), house.survey.spaces.end(), [](const Space& s) { return s.id == "room"; });
    const MiddleSurface& middle = house.middles[static_cast<std::size_t>(room - house.survey.spaces.begin())];
    EXPECT_NEAR(doubled_area(middle.figure.outline) / 2, floor, 1e-9);
    EXPECT_NEAR(volume_of(house, "yard/ground"),
                ((P::length + 4) * (P::width + 4) - P::length * P::width) * framing::footing_depth, 1e-9);

    plain.foundation = "{kind: slab, above_grade: 0.15 m, height: 80 mm, space: fill}";
    house = plain.build();
    EXPECT_NEAR(facts_of(part_of(house, "slab")->mesh).volume, P::length * P::width * framing::slab, 1e-9);

    plain.foundation = "{kind: crawl-space, above_grade: 0.5 m, height: 0.7 m}";
    house = plain.build();
    EXPECT_NEAR(facts_of(part_of(house, "floor-1")->mesh).volume, P::length * P::width * framing::subfloor, 1e-9);
    EXPECT_NEAR(volume_of(house, "/rim-joist"), ring(-framing::stud, 0) * framing::joist, 1e-9);
    EXPECT_NEAR(volume_of(house, "/sill-plate"), ring(-0.14, 0) * framing::plate, 1e-9);
}

TEST(Solids, PartitionsReachFromWallToWall) {
    P plain;
    plain.rooms = "[{id: left, at: [2 m, 2 m]}, {id: right, at: [9 m, 2 m]}]";
    plain.more =
        "partitions: [{id: middle, from: [6 m, 0 m], to: [6 m, 8 m], assembly: wall}]\n"
        "openings: [{id: door, in: middle, along: 4 m, width: 0.8 m, height: 2 m}]\n";
    const House house = plain.build();
    const double between = P::width + 2 * inside;
    EXPECT_NEAR(volume_of(house, "middle/drywall-1"), (between * P::plate_top - 1.6) * P::drywall, 1e-9);
    EXPECT_NEAR(volume_of(house, "middle/stucco-0"), (between * P::plate_top - 1.6) * P::stucco, 1e-9);
}

/// Everything that a survey says, in words.
std::string words(const Survey& survey) {
    std::ostringstream out;
    out << std::hexfloat;
    for (const Space& s : survey.spaces) out << s.id << '|' << s.name << '|' << int(s.kind) << s.source << '\n';
    for (const Gap& g : survey.gaps) {
        out << g.id << '|' << g.name << '|' << g.between[0].value << ' ' << g.between[1].value << ' ' << shape_word(g.shape)
            << ' ';
        std::visit(
            [&](const auto& shape) {
                using Shape = std::decay_t<decltype(shape)>;
                if constexpr (std::is_same_v<Shape, Slot>) out << shape.width << ' ' << shape.length;
                if constexpr (std::is_same_v<Shape, Hole>) out << shape.diameter;
                if constexpr (std::is_same_v<Shape, Ring>) out << shape.width << ' ' << shape.around;
                if constexpr (std::is_same_v<Shape, Mesh>) out << shape.opening << ' ' << shape.area.value_or(-1);
            },
            g.shape);
        out << ' ' << g.count << ' ' << int(g.duty) << ' ' << g.depth.value_or(-1) << '|' << g.closing.never << '|'
            << int(g.evidence.how) << ' ' << g.evidence.plus_minus;
        if (g.at) out << ' ' << g.at->x << ' ' << g.at->y << ' ' << g.at->z;
        for (const std::string& substrate : g.substrates) out << '|' << substrate;
        out << '\n';
    }
    return out.str();
}

bool same_points(const std::vector<Point>& a, const std::vector<Point>& b) {
    return a.size() == b.size() && (a.empty() || std::memcmp(a.data(), b.data(), a.size() * sizeof(Point)) == 0);
}

class SolidsOfShipped : public testing::TestWithParam<std::string> {
protected:
    static Job job(Make make) { return described_job(GetParam(), make); }
};

TEST_P(SolidsOfShipped, HasTheSameSurveyWithAndWithoutSolids) {
    EXPECT_EQ(words(job(Make::survey).survey), words(job(Make::solids).survey));
}

TEST_P(SolidsOfShipped, IsBuiltTheSameEveryTime) {
    const Job first = job(Make::solids), second = job(Make::solids);
    EXPECT_EQ(words(first.survey), words(second.survey));
    ASSERT_EQ(first.house.parts.size(), second.house.parts.size());
    for (std::size_t i = 0; i < first.house.parts.size(); ++i) {
        const Part &a = first.house.parts[i], &b = second.house.parts[i];
        EXPECT_EQ(a.id, b.id);
        EXPECT_TRUE(same_points(a.mesh.points, b.mesh.points)) << a.id;
        EXPECT_EQ(a.mesh.triangles, b.mesh.triangles) << a.id;
        EXPECT_EQ(a.bounds, b.bounds) << a.id;
    }
    ASSERT_EQ(first.house.places.size(), second.house.places.size());
    for (std::size_t i = 0; i < first.house.places.size(); ++i)
        EXPECT_TRUE(same_points(first.house.places[i].through, second.house.places[i].through)) << i;
}

TEST_P(SolidsOfShipped, HasSoundPartsWithIdsOfTheirOwn) {
    const Job built = job(Make::solids);
    std::set<std::string> ids;
    for (const Part& part : built.house.parts) {
        EXPECT_EQ(fault_of_solid(part.mesh), "") << part.id;
        EXPECT_TRUE(ids.insert(part.id).second) << part.id;
        EXPECT_FALSE(part.name.empty()) << part.id;
        EXPECT_FALSE(part.material.empty()) << part.id;
    }
}

/// From one side to the other through air: neither a point of the way nor a stretch of it meets a solid.
TEST_P(SolidsOfShipped, HasAFreeWayThroughEachGap) {
    const Job built = job(Make::solids);
    const HouseSpace space(built.house.parts);
    ASSERT_EQ(built.house.places.size(), built.survey.gaps.size());
    for (const GapPlace& place : built.house.places) {
        const Gap& gap = built.survey[place.gap];
        if (clear_width(gap.shape) <= 0) continue;
        for (const Point& point : place.through) {
            for (const std::size_t part : space.around(point))
                ADD_FAILURE() << gap.id << " lies in " << built.house.parts[part].id;
        }
        for (std::size_t i = 1; i < place.through.size(); ++i) {
            for (const HouseSpace::Hit& hit : space.met_by(place.through[i - 1], place.through[i]))
                ADD_FAILURE() << gap.id << " runs into " << built.house.parts[hit.part].id;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Shipped, SolidsOfShipped, testing::ValuesIn(described_jobs()), name_of);

}  // namespace
}  // namespace seamward::test
