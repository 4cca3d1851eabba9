// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "offscreen/drawn_way.h"
#include "offscreen/house_groups.h"
#include "offscreen/legend.h"
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

TEST(PartNear, StaysWithinItsReach) {
    const std::vector<Point> line{{-5, 0, 0}, {0, 0, 0}, {0, 5, 0}};
    const std::vector<Point> part = part_near(line, {0, 0.1, 0}, 1);
    ASSERT_GT(part.size(), 2U);
    for (const Point& at : part) EXPECT_LE(distance(at, {0, 0.1, 0}), 1);
    EXPECT_GT(length_of(part), 1.8);
    EXPECT_TRUE(part_near(line, {0, 0, 9}, 1).empty());
    EXPECT_TRUE(part_near({}, {0, 0, 0}, 1).empty());
}

/// The first gap's outer side faces the eye, and all of the house is in the part of the picture that is left for it.
TEST(ViewOfWay, FacesWhereTheWayComesFrom) {
    const House house = box_house();
    const HouseFrame frame = house_frame(house);
    const DrawnPath path = way_through(house, {0, 1, 2});
    const std::vector<Point> line = line_of_way(house, frame, path);
    const OrbitCamera camera = view_of_way(house, frame, &path.way.path, line);
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
