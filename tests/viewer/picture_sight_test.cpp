// SPDX-License-Identifier: GPL-3.0-or-later
// What a picture must show: the way's first gap, rooms where they are, the roof, the cut through a ring, every word.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "house/route.h"
#include "job_file/job.h"
#include "layers/house_groups.h"
#include "layers/room_places.h"
#include "layers/section.h"
#include "offscreen/drawn_way.h"
#include "offscreen/legend.h"
#include "offscreen/lettering.h"
#include "offscreen/painted_picture.h"
#include "offscreen/picture_story.h"
#include "offscreen/picture_view.h"
#include "tests/support/scratch_folder.h"
#include "tests/viewer/box_house.h"

namespace seamward::viewer::test {
namespace {

using seamward::test::ScratchFolder;

/// An L: the front door stands in the notch, beside the garage.
constexpr const char* l_house = R"(seamward-house: 1
name: "L"
assemblies:
  - {id: w, layers: [{of: stucco, thick: 22 mm}, {of: wood, thick: 11 mm}, {air: true, thick: 89 mm}, {of: drywall, thick: 13 mm}]}
  - {id: p, layers: [{of: drywall, thick: 13 mm}, {air: true, thick: 89 mm}, {of: drywall, thick: 13 mm}]}
outline: [[0 m, 0 m], [5 m, 0 m], [5 m, 3 m], [11 m, 3 m], [11 m, 8 m], [0 m, 8 m]]
walls: [garage-front, entry, south, east, north, west]
wall_assembly: w
foundation: {kind: slab, above_grade: 6 in}
stories: [{height: 8 ft}]
roof: {shape: hip, pitch: 4/12, overhang: 0.45 m, of: tile}
partitions:
  - {id: between, from: [5 m, 3 m], to: [5 m, 8 m], assembly: p}
rooms:
  - {id: garage, kind: attached, at: [2 m, 2 m]}
  - {id: living, name: "living room", at: [8 m, 5 m]}
openings:
  - {id: front-door, name: "front door", in: south, along: 1.5 m, width: 36 in, height: 80 in}
  - {id: inner-door, name: "door from the garage", in: between, along: 1 m, width: 32 in, height: 80 in}
features:
  - {id: front-sweep, type: door-sweep, on: front-door, gap: 1/4 in}
  - {id: inner-sweep, type: door-sweep, on: inner-door, gap: 3/16 in}
  - {id: cans, type: recessed-light, at: [9 m, 5 m], count: 3, spacing: 30 in}
)";

/// A job of that house; `drain` is more of the gap from a floor drain into the garage.
Job l_job(const std::string& drain) {
    const ScratchFolder folder;
    folder.write("l.yaml", l_house);
    folder.write("job.yaml",
                 "seamward: 1\nhouse: l.yaml\nspaces: [{id: drain, name: floor drain, kind: cavity, source: true}]\n"
                 "gaps: [{id: floor-drain, between: [drain, garage], hole: {diameter: 12 mm}" +
                     drain + "}]\n");
    return read_job(folder.path() / "job.yaml", RunContext(), Make::solids);
}

Job demo_job() { return read_job(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml", RunContext(), Make::solids); }

/// The best ways into a job's house, with the lines of those that are drawn.
std::vector<DrawnPath> paths_of(const Job& job) {
    std::vector<DrawnPath> paths;
    for (const RankedPath& way : trace(job.survey, {.top = 20}, RunContext()).paths) {
        paths.push_back({way, {}});
        if (paths.size() <= 6) paths.back().route = route(job.house, way.path.gaps, way.path.spaces);
    }
    return paths;
}

GapIndex gap_of(const House& house, const std::string& id) {
    for (std::uint32_t i = 0; i < house.survey.gaps.size(); ++i) {
        if (house.survey.gaps[i].id == id) return {i};
    }
    ADD_FAILURE() << id;
    return {};
}

DrawnPath way_of(const House& house, const std::vector<std::string>& ids) {
    std::vector<std::uint32_t> gaps;
    for (const std::string& id : ids) gaps.push_back(gap_of(house, id).value);
    return way_through(house, gaps);
}

PictureStory story_of(const House& house, const std::vector<DrawnPath>& paths, const PictureRequest& request = {}) {
    std::vector<std::size_t> drawn(std::min<std::size_t>(paths.size(), 6));
    std::iota(drawn.begin(), drawn.end(), 0U);
    const HouseFrame frame = house_frame(house);
    const std::vector<Point> line = line_of_way(house, frame, paths[request.rank - 1]);
    return story_of_way(house, frame, paths, drawn, request, line);
}

/// From the chosen side nothing stands before the gap by which the way comes in.
void expect_first_gap_in_sight(const House& house, const std::vector<DrawnPath>& paths) {
    const PaintedPicture painted = painted_picture(house, "House", paths, {.width = 1000, .height = 700});
    const HouseFrame frame = house_frame(house);
    const EntryPath& way = paths.front().way.path;
    const std::vector<Point> outer = outer_places(house, frame, way, line_of_way(house, frame, paths.front()));
    ASSERT_EQ(outer.size(), 2U);
    const SightBlocks blocks(house, frame);
    for (const Point& at : outer) EXPECT_EQ(blocks.seen(at, painted.camera.eye()), 1.0);
}

TEST(ViewOfWay, ShowsTheFirstGapOfTheDemo) {
    const Job job = demo_job();
    expect_first_gap_in_sight(job.house, paths_of(job));
}

TEST(ViewOfWay, ShowsADoorBesideAGarageThatStandsOut) {
    const Job job = l_job("");
    expect_first_gap_in_sight(job.house, {way_of(job.house, {"front-sweep"})});
}

TEST(SightBlocks, TellWhatStandsBetween) {
    const House house = box_house();
    const HouseFrame frame = house_frame(house);
    const SightBlocks blocks(house, frame);
    const auto seen = [&](const Point& at, const Point& eye) { return blocks.seen(frame.to_scene(at), frame.to_scene(eye)); };
    EXPECT_EQ(seen({0, -4, 1}, {0, -20, 8}), 1.0);
    EXPECT_GT(seen({0, 0, 1}, {0, -20, 5}), 0.0);  // past the south wall, which fades
    EXPECT_LT(seen({0, 0, 1}, {0, -20, 5}), 0.5);
    EXPECT_EQ(seen({0, 0, -2}, {0, -20, 8}), 0.0);     // under the slab
    EXPECT_EQ(seen({0, -3.16, 1}, {0, -20, 1}), 1.0);  // on the wall's face
}

bool is_inside(const Loop& loop, Point2 at) {
    bool inside = false;
    for (std::size_t i = 0, j = loop.size() - 1; i < loop.size(); j = i++) {
        if ((loop[i].y > at.y) == (loop[j].y > at.y)) continue;
        if (at.x < loop[i].x + (at.y - loop[i].y) / (loop[j].y - loop[i].y) * (loop[j].x - loop[i].x)) inside = !inside;
    }
    return inside;
}

/// Every name of a room has a foot, and that stands on the room's floor.
TEST(RoomLabels, StandOnTheFloorOfTheirRoom) {
    const Job job = demo_job();
    const House& house = job.house;
    const HouseFrame frame = house_frame(house);
    const PaintedPicture painted = painted_picture(house, "Demo", paths_of(job), {});
    const QSizeF sheet(1600 / painted.unit, 1100 / painted.unit);
    std::size_t rooms = 0;
    for (std::uint32_t i = 0; i < house.survey.spaces.size(); ++i) {
        const Space& space = house.survey.spaces[i];
        if (!space.is_living() && space.kind != SpaceKind::attached) continue;
        const std::vector<Point> places = room_places(house.middles[i], frame);
        const QString name = QString::fromStdString(space.label());
        for (const PlacedLabel& label : painted.labels) {
            if (label.kind != PlacedLabel::Kind::room || label.text != name) continue;
            ++rooms;
            const bool stands = std::ranges::any_of(places, [&](const Point& at) {
                const auto shown = painted.camera.shown_at(at, sheet.width(), sheet.height());
                return shown && std::hypot(shown->x - label.anchor.x(), shown->y - label.anchor.y()) < 0.01;
            });
            EXPECT_TRUE(stands) << name.toStdString();
        }
        for (const Point& at : places) {
            const Frame& plan = house.middles[i].frame;
            const Vector off = at - frame.to_scene(plan.origin);
            EXPECT_TRUE(is_inside(house.middles[i].figure.outline, {dot(off, plan.u), dot(off, plan.v)})) << name.toStdString();
        }
    }
    EXPECT_GE(rooms, 8U);
}

TEST(RoomLabels, NameTheStoryWhereThereAreSeveral) {
    House house = box_house();
    const auto names = [&] {
        QStringList all;
        for (const PictureStory::Room& room : story_of_way(house, house_frame(house), {}, {}, {}, {}).rooms) all << room.text;
        return all;
    };
    EXPECT_EQ(names(), QStringList{"kitchen"});
    house.survey.spaces.push_back({"loft", "loft", SpaceKind::living});
    house.middles.push_back(house.middles[3]);
    house.middles[4].frame.origin.z = 2.9;
    EXPECT_EQ(names(), (QStringList{"kitchen, story 1", "loft, story 2"}));
    house.middles[4].frame.origin.z = -0.3;  // a step down
    EXPECT_EQ(names(), (QStringList{"kitchen", "loft"}));
    house.middles[4].frame.origin.z = -2.3;
    EXPECT_EQ(names(), (QStringList{"kitchen, story 1", "loft, basement"}));
}

/// The eaves are as long as the outline pushed out by the overhang; ridges lie level over them, hips and valleys slope.
TEST(RoofLines, AreEavesRidgesHipsAndValleys) {
    const Job job = l_job("");
    double lowest = 1e9;
    double eaves = 0;
    int ridges = 0, sloping = 0;
    const auto lines = roof_lines(job.house, house_frame(job.house));
    for (const auto& line : lines) lowest = std::min({lowest, line.front().z, line.back().z});
    for (const auto& line : lines) {
        const bool level = std::abs(line.front().z - line.back().z) < 0.01;
        if (level && line.front().z < lowest + 0.01) {
            eaves += distance(line.front(), line.back());
        } else {
            ++(level ? ridges : sloping);
        }
    }
    EXPECT_NEAR(eaves, 38 + 8 * 0.45, 0.02);
    EXPECT_GE(ridges, 2);
    EXPECT_GE(sloping, 6);
    EXPECT_TRUE(roof_lines(box_house(), house_frame(box_house())).empty());  // its roof is flat
}

/// The cut goes through the axis of one can: it meets the ring's sides, to the right and to the left.
TEST(PlaneOfGap, CutsARingThroughItsAxis) {
    const Job job = l_job("");
    const HouseFrame frame = house_frame(job.house);
    const GapIndex cans = gap_of(job.house, "cans");
    const CutPlane plane = plane_of_gap(job.house, frame, cans);
    const Section left = section(job.house.parts, {plane.at + (Point{} - frame.to_scene({})), plane.normal});
    double across = 0;
    std::vector<Point> sides;
    for (const CutFace& face : left.faces) {
        for (const CutFace::GapEdge& edge : face.gap_edges) {
            if (edge.gap == cans) sides.push_back(edge.from);
        }
    }
    for (const Point& a : sides) {
        for (const Point& b : sides) across = std::max(across, std::hypot(a.x - b.x, a.y - b.y));
    }
    const Ring& ring = std::get<Ring>(job.house.survey[cans].shape);
    EXPECT_GE(across, ring.around + 1.9 * ring.width);  // a ring of another can may be cut too
}

TEST(Story, SaysThatAGapWithoutAPlaceIsNotDrawn) {
    const Job without = l_job("");
    PictureStory story = story_of(without.house, {way_of(without.house, {"floor-drain", "inner-sweep"})});
    EXPECT_FALSE(story.steps[0].at);
    ASSERT_EQ(story.ends.size(), 2U);
    EXPECT_EQ(story.ends[0].text, "from garage");
    EXPECT_EQ(story.ends[1].text, "into living room");
    const Job with = l_job(", at: [2 m, 2 m, 0 m]");
    story = story_of(with.house, {way_of(with.house, {"floor-drain", "inner-sweep"})});
    ASSERT_TRUE(story.steps[0].at);
    EXPECT_LT(distance(*story.steps[0].at, house_frame(with.house).to_scene({2, 2, 0})), 1e-9);
    EXPECT_EQ(story.ends[0].text, "from floor drain");
}

TEST(Story, CountsTheWaysThatThereAre) {
    const House house = box_house();
    PictureRequest request;
    EXPECT_TRUE(story_of(house, both_ways(house), request).way.startsWith("Way 1 of 2: "));
    request.rank = 2;
    request.more_ways = true;
    EXPECT_TRUE(story_of(house, both_ways(house), request).way.startsWith("Way 2 of more than 2: "));
}

TEST(Legend, CutsNoWordOff) {
    const Job job = demo_job();
    const PictureStory story = story_of(job.house, paths_of(job));
    for (const QSizeF& sheet : {QSizeF(1600, 1100), QSizeF(889, 667)})
        EXPECT_TRUE(Legend(story, sheet, false).is_whole()) << sheet.width();
}

TEST(InLines, BreaksAtSpacesAndLeavesRoomAfter) {
    const QFont font = lettering::words(16);
    const QString text = "gap under the door from the garage to the hall";
    const QStringList rows = in_lines(font, text, 180, 4);
    EXPECT_GT(rows.size(), 1);
    EXPECT_EQ(rows.join(' '), text);
    for (const QString& row : rows) EXPECT_LE(lettering::width_of(font, row), 180);
    EXPECT_EQ(in_lines(font, text, 2000, 2), QStringList{text});
    EXPECT_EQ(in_lines(font, text, lettering::width_of(font, text) + 10, 2, 60), (QStringList{text, QString()}));
    EXPECT_TRUE(in_lines(font, text, 180, 2).back().endsWith(QChar(0x2026)));
}

}  // namespace
}  // namespace seamward::viewer::test
