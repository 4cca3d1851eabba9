// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "layers/house_groups.h"
#include "layers/section.h"
#include "offscreen/drawn_way.h"
#include "offscreen/legend.h"
#include "offscreen/picture_story.h"
#include "offscreen/picture_view.h"
#include "offscreen/sight.h"
#include "tests/viewer/box_house.h"

namespace seamward::viewer::test {
namespace {

double length_of(const std::vector<Point>& line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i) sum += distance(line[i - 1], line[i]);
    return sum;
}

/// A point goes to the pixel where the camera shows it, and comes back from there.
TEST(Sight, GoesToThePictureAndBack) {
    OrbitCamera camera;
    camera.distance = 20;
    const Box box{{-5, -4, 0}, {5, 4, 3}};
    const Sight sight(camera, 800, 600, box);
    for (const Point& at : {Point{0, 0, 0}, Point{5, -4, 3}, Point{-4.2, 1.5, 0.7}}) {
        const auto shown = camera.shown_at(at, 800, 600);
        ASSERT_TRUE(shown);
        const double depth = sight.depth(at);
        EXPECT_GT(depth, 0);
        EXPECT_LT(depth, 1);
        EXPECT_LT(distance(sight.at(shown->x, shown->y, depth), at), 1e-9);
        EXPECT_NEAR(sight.away(depth), sight.away(at), 1e-9);
        EXPECT_NEAR(1 / sight.pixel(sight.away(at)), camera.shown_length(at, 1, 600), 1e-9);
    }
}

/// Triangles of a group.
vtkIdType faces(const HouseGroups& groups, Group group) { return groups.at(static_cast<std::size_t>(group))->GetNumberOfCells(); }

/// Walls toward the eye, the ceiling and the roof are what one looks through; the rest stays.
TEST(HouseGroups, TellNearWallsFromFarOnes) {
    const House house = box_house();
    const HouseFrame frame = house_frame(house);
    const HouseGroups from_south = house_groups(house, frame, {0, -1, 0});
    EXPECT_EQ(faces(from_south, Group::cladding), 12);       // the south wall
    EXPECT_EQ(faces(from_south, Group::interior), 12 + 12);  // and its drywall, and the ceiling
    EXPECT_EQ(faces(from_south, Group::solid), 12 + 6 * 12);
    EXPECT_EQ(faces(from_south, Group::roof), 12);
    EXPECT_EQ(faces(from_south, Group::ground), 12);
    const HouseGroups from_corner = house_groups(house, frame, {std::sqrt(0.5), -std::sqrt(0.5), 0});
    EXPECT_EQ(faces(from_corner, Group::cladding), 24);
    EXPECT_EQ(from_south.at(static_cast<std::size_t>(Group::cladding))->GetBounds()[3] < 0, true);
}

/// A wall in the notch of an L lies on the inner side of the middle of the house; the room beside it tells where out is.
TEST(HouseGroups, AskTheRoomsWhereOutIs) {
    House house = box_house();
    house.middles[3].figure.outline = {{-4, -3}, {4, -3}, {4, 3}, {2, 3}, {2, -1}, {-4, -1}};
    Part part{"notch", "notch", "stucco", Layer::cladding, box({1.9, -1, 0}, {2, 3, 2.5}), {}};
    house.parts.push_back(part);  // its outer side looks west, and its middle lies east of the house's
    const HouseFrame frame = house_frame(house);
    const HouseGroups from_west = house_groups(house, frame, {-1, 0, 0});
    EXPECT_EQ(faces(from_west, Group::cladding), 24);
    EXPECT_EQ(faces(house_groups(house, frame, {1, 0, 0}), Group::cladding), 12);
}

TEST(HouseFrame, IsAroundTheHouseWithoutItsGround) {
    const HouseFrame frame = house_frame(box_house());
    EXPECT_NEAR(frame.house.high.x, 4.6, 1e-9);
    EXPECT_NEAR(frame.house.low.y, -3.6, 1e-9);
    EXPECT_NEAR(frame.all.high.x, 9, 1e-9);
    EXPECT_NEAR(frame.ground, -0.2, 1e-9);
}

/// From the yard through all gaps in their order, and into the room.
TEST(LineOfWay, JoinsTheGapsWhenThereIsNoRoute) {
    const House house = box_house();
    const HouseFrame frame = house_frame(house);
    const std::vector<Point> line = line_of_way(house, frame, way_through(house, {0, 1, 2}));
    ASSERT_GE(line.size(), 5U);
    EXPECT_LT(line.front().y, -3.7);  // some way outdoors
    EXPECT_LT(line.back().z, 2.2);    // some way into the room
    std::size_t at = 0;
    for (const std::uint32_t gap : {0U, 1U, 2U}) {
        const Point middle = frame.to_scene(*house.survey.gaps[gap].at);
        while (at < line.size() && distance(line[at], middle) > 1e-9) ++at;
        EXPECT_LT(at, line.size()) << gap;
    }
}

/// The gaps of a path may be stored with their sides the other way round.
TEST(LineOfWay, GoesThroughAGapInTheDirectionOfThePath) {
    House house = box_house();
    const HouseFrame frame = house_frame(house);
    const std::vector<Point> line = line_of_way(house, frame, way_through(house, {0, 1, 2}));
    std::swap(house.survey.gaps[1].between[0], house.survey.gaps[1].between[1]);
    std::reverse(house.places[1].through.begin(), house.places[1].through.end());
    const std::vector<Point> turned = line_of_way(house, frame, way_through(house, {0, 1, 2}));
    ASSERT_EQ(turned.size(), line.size());
    for (std::size_t i = 0; i < line.size(); ++i) EXPECT_LT(distance(line[i], turned[i]), 1e-12);
}

TEST(Rounded, CutsCornersByNoMoreThanTheRadius) {
    const std::vector<Point> line{{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {1, 1, 0.01}};
    const std::vector<Point> smooth = rounded(line, 0.1);
    EXPECT_EQ(distance(smooth.front(), line.front()) + distance(smooth.back(), line.back()), 0);
    EXPECT_LT(length_of(smooth), length_of(line));
    EXPECT_GT(length_of(smooth), length_of(line) - 0.15);
    for (const Point& at : smooth) {
        double nearest = 1e9;
        for (std::size_t i = 1; i < line.size(); ++i) {
            for (int k = 0; k <= 1000; ++k)
                nearest = std::min(nearest, distance(at, line[i - 1] + (line[i] - line[i - 1]) * (k / 1000.0)));
        }
        EXPECT_LT(nearest, 0.1);
    }
}

double area_of(const TriangleMesh& mesh) {
    double sum = 0;
    for (const auto& [a, b, c] : mesh.triangles)
        sum += length(cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a])) / 2;
    return sum;
}

/// Volume inside of a closed mesh.
double volume_of(const TriangleMesh& mesh) {
    double sum = 0;
    for (const auto& [a, b, c] : mesh.triangles)
        sum += dot(mesh.points[a] - Point{}, cross(mesh.points[b] - Point{}, mesh.points[c] - Point{})) / 6;
    return sum;
}

Part box_part(const Point& low, const Point& high) { return {"box", "box", "wood", Layer::framing, box(low, high), {}}; }

/// A box cut square has its own cross section for a face, which looks where the rest was and closes what is left.
TEST(Section, ClosesABoxWithItsCrossSection) {
    const std::vector<Part> parts{box_part({0, 0, 0}, {2, 3, 0.5})};
    const Section left = section(parts, {{0.7, 0, 0}, {1, 0, 0}});
    ASSERT_EQ(left.parts.size(), 1U);
    ASSERT_EQ(left.faces.size(), 1U);
    const CutFace& face = left.faces[0];
    EXPECT_EQ(face.material, "wood");
    EXPECT_NEAR(area_of(face.mesh), 1.5, 1e-9);
    for (const auto& [a, b, c] : face.mesh.triangles) {
        const std::vector<Point>& p = face.mesh.points;
        EXPECT_GT(cross(p[b] - p[a], p[c] - p[a]).x, 0);
        for (const std::uint32_t corner : {a, b, c}) EXPECT_NEAR(p[corner].x, 0.7, 1e-9);
    }
    double border = 0;
    for (const auto& [from, to] : face.outline) border += distance(from, to);
    EXPECT_NEAR(border, 7, 1e-9);
    EXPECT_NEAR(volume_of(left.parts[0].mesh), 0.7 * 3 * 0.5, 1e-9);
}

TEST(Section, CutsAskewAndThroughSeveralShells) {
    Part part = box_part({0, 0, 0}, {1, 1, 2});
    const TriangleMesh more = box({3, 3, 0}, {4, 4, 2});
    const auto first = static_cast<std::uint32_t>(part.mesh.points.size());
    part.mesh.points.insert(part.mesh.points.end(), more.points.begin(), more.points.end());
    for (const auto& [a, b, c] : more.triangles) part.mesh.triangles.push_back({first + a, first + b, first + c});
    const double half = std::sqrt(0.5);
    const Section left = section(std::vector<Part>{part}, {{0.5, 0.5, 0}, {half, -half, 0}});
    ASSERT_EQ(left.faces.size(), 1U);
    EXPECT_NEAR(area_of(left.faces[0].mesh), 2 * 2 * std::sqrt(2.0), 1e-9);
    EXPECT_NEAR(volume_of(left.parts[0].mesh), 2, 1e-9);
}

TEST(Section, TakesAwayWhatLiesBeforeThePlaneAndLeavesWhatLiesBehind) {
    const std::vector<Part> parts{box_part({1, 0, 0}, {2, 1, 1}), box_part({-2, 0, 0}, {-1, 1, 1})};
    const Section left = section(parts, {{0, 0, 0}, {1, 0, 0}});
    EXPECT_TRUE(left.faces.empty());
    ASSERT_EQ(left.parts.size(), 1U);
    EXPECT_EQ(left.parts[0].mesh.points.size(), 8U);
    EXPECT_EQ(left.parts[0].mesh.points[0].x, -2);
    EXPECT_EQ(section(parts, {{9, 0, 0}, {1, 0, 0}}).parts.size(), 2U);
    EXPECT_TRUE(section(parts, {{-9, 0, 0}, {1, 0, 0}}).parts.empty());
}

/// What bounds a gap still does, the new faces bound none, and the gap's edge in the cut is known.
TEST(Section, KeepsWhatBoundsAGap) {
    Part part = box_part({0, 0, 0}, {2, 3, 0.5});
    part.bounds.assign(part.mesh.triangles.size(), GapIndex{});
    for (std::size_t i = 0; i < 2; ++i) part.bounds[i] = GapIndex{7};  // its lower side
    const Section left = section(std::vector<Part>{part}, {{0.7, 0, 0}, {1, 0, 0}});
    ASSERT_EQ(left.parts.size(), 1U);
    const Part& kept = left.parts[0];
    ASSERT_EQ(kept.bounds.size(), kept.mesh.triangles.size());
    double bounding = 0;
    for (std::size_t i = 0; i < kept.bounds.size(); ++i) {
        if (!kept.bounds[i].valid()) continue;
        EXPECT_EQ(kept.bounds[i], GapIndex{7});
        const auto& [a, b, c] = kept.mesh.triangles[i];
        for (const std::uint32_t corner : {a, b, c}) EXPECT_EQ(kept.mesh.points[corner].z, 0);
        bounding += length(cross(kept.mesh.points[b] - kept.mesh.points[a], kept.mesh.points[c] - kept.mesh.points[a])) / 2;
    }
    EXPECT_NEAR(bounding, 0.7 * 3, 1e-9);
    double edge = 0;
    for (const CutFace::GapEdge& one : left.faces[0].gap_edges) {
        EXPECT_EQ(one.gap, GapIndex{7});
        edge += distance(one.from, one.to);
    }
    EXPECT_NEAR(edge, 3, 1e-9);
}

/// The plane holds the way, and the eye stands on the side that is taken away, with the yard at the left.
TEST(PlaneOfGap, HoldsTheWayThroughIt) {
    const House house = box_house();
    const HouseFrame frame = house_frame(house);
    for (std::uint32_t i = 0; i < house.survey.gaps.size(); ++i) {
        const CutPlane plane = plane_of_gap(house, frame, {i});
        EXPECT_NEAR(length(plane.normal), 1, 1e-9);
        EXPECT_EQ(plane.normal.z, 0);
        const std::vector<Point> way = way_through_gap(house, frame, {i});
        ASSERT_FALSE(way.empty());
        for (const Point& at : way) EXPECT_LT(std::abs(plane.over(at)), 1e-4) << i;
        const OrbitCamera camera = view_of_gap(house, frame, {i}, plane);
        EXPECT_GT(plane.over(camera.eye()), 0.8 * camera.distance) << i;
        for (const Point& at : way) {
            const auto shown = camera.shown_at(at, 800, 600);
            ASSERT_TRUE(shown) << i;
            EXPECT_TRUE(QRectF(0, 0, 800, 600).contains(shown->x, shown->y)) << i;
        }
    }
    const CutPlane screed = plane_of_gap(house, frame, {0});
    EXPECT_NEAR(std::abs(screed.normal.x), 1, 1e-9);
    const OrbitCamera camera = view_of_gap(house, frame, {0}, screed);
    const std::vector<Point> way = way_through_gap(house, frame, {0});
    EXPECT_LT(camera.shown_at(way.front(), 800, 600)->x, camera.shown_at(way.back(), 800, 600)->x);
}

/// From outdoors in, however the gap's sides are stored.
TEST(WayThroughGap, LeadsInward) {
    House house = box_house();
    const HouseFrame frame = house_frame(house);
    const std::vector<Point> way = way_through_gap(house, frame, {3});
    std::swap(house.survey.gaps[3].between[0], house.survey.gaps[3].between[1]);
    std::reverse(house.places[3].through.begin(), house.places[3].through.end());
    const std::vector<Point> turned = way_through_gap(house, frame, {3});
    ASSERT_EQ(way.size(), turned.size());
    EXPECT_LT(way.front().y, way.back().y);
    for (std::size_t i = 0; i < way.size(); ++i) EXPECT_EQ(distance(way[i], turned[i]), 0);
    EXPECT_TRUE(way_through_gap(house, frame, {99}).empty());
}

/// Of a few rooms all are named, of many only those that a way leads to or through.
TEST(Story, NamesTheRoomsOfTheWaysWhereThereAreMany) {
    House house = box_house();
    const HouseFrame frame = house_frame(house);
    const std::vector<std::size_t> both{0, 1};
    const auto rooms = [&](std::span<const DrawnPath> paths) {
        return story_of_way(house, frame, paths, std::span(both).first(paths.size()), {}, {}).rooms.size();
    };
    const auto add_rooms = [&](std::size_t count) {
        for (std::size_t i = 0; i < count; ++i) {
            house.survey.spaces.push_back({"room", "room", SpaceKind::living});
            house.middles.push_back(house.middles[3]);
        }
    };
    add_rooms(13);
    EXPECT_EQ(rooms({}), 14U);
    EXPECT_EQ(rooms(both_ways(house)), 13U);  // the end of the way has a label of its own
    add_rooms(1);
    EXPECT_EQ(rooms({}), 0U);
    EXPECT_EQ(rooms(both_ways(house)), 0U);
    std::vector<DrawnPath> paths = both_ways(house);
    paths[1].way.path.spaces.back() = SpaceIndex{9};
    EXPECT_EQ(rooms(paths), 1U);
}

/// The first gap's outer side faces the eye, and all of the house is in the part of the picture that is left for it.
TEST(ViewOfWay, FacesWhereTheWayComesFrom) {
    const House house = box_house();
    const HouseFrame frame = house_frame(house);
    const DrawnPath path = way_through(house, {0, 1, 2});
    const std::vector<Point> line = line_of_way(house, frame, path);
    const auto fit = [&](const OrbitCamera& eye) { return fitted(eye, frame.house, 1.4, 0.8); };
    const OrbitCamera camera = view_of_way(house, frame, &path.way, line, fit);
    EXPECT_LT(std::sin(camera.azimuth), -0.6);  // from the south, a bit aside
    EXPECT_GT(std::abs(std::cos(camera.azimuth)), 0.3);
    std::vector<Point> corners;
    for (const double x : {frame.house.low.x, frame.house.high.x}) {
        for (const double y : {frame.house.low.y, frame.house.high.y}) {
            for (const double z : {frame.house.low.z, frame.house.high.z}) corners.push_back({x, y, z});
        }
    }
    const QRectF part(50, 120, 700, 300);
    const OrbitCamera fitting = fitted_to(camera, corners, part, 800, 600);
    QRectF shown;
    for (const Point& corner : corners) {
        const auto at = fitting.shown_at(corner, 800, 600);
        ASSERT_TRUE(at);
        EXPECT_TRUE(part.adjusted(-2, -2, 2, 2).contains(at->x, at->y)) << at->x << ' ' << at->y;
        shown |= QRectF(at->x, at->y, 1e-3, 1e-3);
    }
    EXPECT_TRUE(shown.width() > part.width() - 6 || shown.height() > part.height() - 6);
}

TEST(ScaleBar, IsRoundInInchesOrFeet) {
    EXPECT_EQ(scale_bar(100, 138).text, "4 ft (1.22 m)");
    EXPECT_NEAR(scale_bar(100, 138).shown, 121.92, 1e-9);
    EXPECT_EQ(scale_bar(2000, 138).text, "2 in (51 mm)");
    EXPECT_EQ(scale_bar(12000, 138).text, "1/4 in (6.35 mm)");
    for (double per_meter = 3; per_meter < 20000; per_meter *= 1.1) {
        const ScaleBar bar = scale_bar(per_meter, 138);
        EXPECT_LE(bar.shown, 138.0);
        EXPECT_GT(bar.shown, 40) << per_meter;
    }
}

}  // namespace
}  // namespace seamward::viewer::test
