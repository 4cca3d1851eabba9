// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/ride.h"

#include <QImage>
#include <algorithm>
#include <array>
#include <limits>

#include "panels/ride_bar.h"
#include "ray_peer.h"
#include "whole_window_fixture.h"

namespace seamward::viewer::test {
namespace {

constexpr double frame = 1.0 / 30;  ///< seconds

double off(const Point& at, const Point& from, const Point& to) {
    const Vector way = to - from;
    const double size = dot(way, way);
    const double share = size > 0 ? std::clamp(dot(at - from, way) / size, 0.0, 1.0) : 0;
    return distance(at, from + way * share);
}

std::string written(const Point& at) { return std::to_string(at.x) + ' ' + std::to_string(at.y) + ' ' + std::to_string(at.z); }

std::vector<Point> whole_line(const WayLine& way) {
    std::vector<Point> line = way.before;
    for (std::size_t i = 0; i < way.stops.size(); ++i) {
        line.push_back(way.stops[i].at);
        if (i < way.legs.size()) line.insert(line.end(), way.legs[i].line.begin(), way.legs[i].line.end());
    }
    line.insert(line.end(), way.after.begin(), way.after.end());
    return line;
}

double off_line(const Point& at, const std::vector<Point>& line) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i < line.size(); ++i) least = std::min(least, off(at, line[i - 1], line[i]));
    return least;
}

class Rides : public WholeWindowFixture {
protected:
    std::vector<Point> eyes(const Ride& ride) {
        std::vector<Point> all;
        for (double at = 0; at < ride.duration() + frame; at += frame) all.push_back(ride.eye(at).eye());
        return all;
    }
    /// What lies between a frame and the next: straight from one to the other would cut a corner that the way takes.
    std::vector<Point> between_frames(const Ride& ride, std::size_t first) {
        constexpr int pieces = 100;
        std::vector<Point> all;
        for (int i = 0; i <= pieces; ++i)
            all.push_back(ride.eye((static_cast<double>(first) + static_cast<double>(i) / pieces) * frame).eye());
        return all;
    }
    /// The first frame after which the ride goes through a solid, with its part.
    std::optional<std::pair<std::size_t, std::uint32_t>> ridden_through(const RayPeer& solids, const Ride& ride,
                                                                        const std::vector<Point>& seen) {
        for (std::size_t from = 0;;) {
            const auto crossed = solids.crossed(seen, from);
            if (!crossed || solids.crossed(between_frames(ride, crossed->first))) return crossed;
            from = crossed->first + 1;
        }
    }
};

class RidesOf : public Rides, public testing::WithParamInterface<const char*> {};

TEST_P(RidesOf, StayOnTheWayAndInTheAir) {
    open_shipped(GetParam());
    JobDocument& document = window->document();
    const RayPeer solids(document.solids()->parts, canvas().scene().frame().origin - Point{});
    const int ways = static_cast<int>(document.ways().paths.size());
    ASSERT_GT(ways, 3);
    int free = 0;
    for (int i = 0; i < ways; ++i) {
        document.choose_way(i);
        ASSERT_TRUE(canvas().can_ride()) << i;
        const WayLine& way = canvas().scene().chosen_line();
        const std::vector<Point> line = whole_line(way);
        const Ride ride = canvas().ride();
        EXPECT_LE(ride.duration(), Ride::longest + 1e-9);
        const std::vector<Point> seen = eyes(ride);
        for (const Point& eye : seen) ASSERT_LT(off_line(eye, line), 0.06) << "way " << i + 1;
        EXPECT_FALSE(solids.inside(seen.front())) << "way " << i + 1;
        // The way itself is the engine's; what the window makes of it may not be worse.
        std::vector<Point> route;
        for (const Point& at : document.routes()[static_cast<std::size_t>(i)])
            route.push_back(canvas().scene().frame().to_scene(at));
        if (solids.crossed(route)) continue;
        ++free;
        if (const auto crossed = solids.crossed(line))
            ADD_FAILURE() << "the line of way " << i + 1 << " goes through " << document.solids()->parts[crossed->second].id
                          << " from " << written(line[crossed->first]) << " to " << written(line[crossed->first + 1]);
        if (const auto crossed = ridden_through(solids, ride, seen))
            ADD_FAILURE() << "way " << i + 1 << " rides through " << document.solids()->parts[crossed->second].id << " at "
                          << static_cast<double>(crossed->first) * frame << " s of " << ride.duration();
    }
    EXPECT_GE(free, ways - 3);
}

TEST_P(RidesOf, PassAndNameEveryGapInOrder) {
    open_shipped(GetParam());
    JobDocument& document = window->document();
    for (int i = 0; i < static_cast<int>(document.ways().paths.size()); ++i) {
        document.choose_way(i);
        const WayLine& way = canvas().scene().chosen_line();
        const Ride ride = canvas().ride();
        std::vector<std::size_t> named;
        std::size_t passed = 0;
        for (double at = 0; at <= ride.duration(); at += frame) {
            ASSERT_GE(ride.passed(at), passed);
            passed = ride.passed(at);
            const auto near = ride.near(at);
            if (near && (named.empty() || named.back() != *near)) named.push_back(*near);
        }
        EXPECT_EQ(passed, way.stops.size()) << "way " << i + 1;
        EXPECT_EQ(named.size(), way.stops.size()) << "way " << i + 1;
        for (std::size_t k = 0; k < named.size(); ++k) ASSERT_EQ(named[k], k) << "way " << i + 1;
        double last = -1;
        for (std::size_t stop = 0; stop < way.stops.size(); ++stop) {
            EXPECT_GE(ride.time_of(stop), last);
            last = ride.time_of(stop);
            EXPECT_LT(distance(ride.eye(last).eye(), way.stops[stop].at), 0.011);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Jobs, RidesOf, testing::Values("demo.yaml", "townhouse.yaml", "two-story.yaml", "brick-crawl.yaml"),
                         [](const auto& job) { return QString(job.param).section('.', 0, 0).remove('-').toStdString(); });

TEST_F(Rides, TellInWordsWhereTheyAre) {
    open_shipped("demo.yaml");
    canvas().start_ride();
    ASSERT_TRUE(canvas().is_riding());
    auto& bar = part<RideBar>("ride_bar");
    EXPECT_TRUE(bar.isVisible());
    EXPECT_FALSE(window->picture().tools().isVisible());
    const Ride ride = canvas().ride();
    const RankedPath way = *window->document().chosen();
    const Survey& survey = window->document().job().survey;
    for (std::size_t i = 0; i < way.path.gaps.size(); ++i) {
        canvas().ride_to(ride.time_of(i));
        const QString label = QString::fromStdString(survey[way.path.gaps[i]].label());
        EXPECT_TRUE(bar.words().startsWith(QString("Gap %1 of %2").arg(i + 1).arg(way.path.gaps.size())))
            << bar.words().toStdString();
        EXPECT_TRUE(bar.words().contains(label)) << bar.words().toStdString();
        EXPECT_EQ(bar.words().contains("the smallest"), way.path.gaps[i] == way.pinch_gap);
    }
    canvas().ride_to(1e9);
    EXPECT_TRUE(bar.words().startsWith("Arrived in:")) << bar.words().toStdString();
    EXPECT_TRUE(bar.words().contains(QString::fromStdString(survey[way.path.to()].label()))) << bar.words().toStdString();
    canvas().ride_to(-5);
    EXPECT_TRUE(bar.words().contains(QString::fromStdString(survey[way.path.from()].label()))) << bar.words().toStdString();
}

/// Meters that one sees from a point, by all triangles.
double seen_from(const RayPeer& solids, const Point& from, const Vector& way) {
    double free = 0.25;
    while (free < 8 && !solids.crossed(std::array{from, from + way * free})) free += 0.25;
    return free;
}

TEST_P(RidesOf, EndLookingIntoTheRoom) {
    open_shipped(GetParam());
    JobDocument& document = window->document();
    const RayPeer solids(document.solids()->parts, canvas().scene().frame().origin - Point{});
    for (int i = 0; i < static_cast<int>(document.ways().paths.size()); i += 3) {
        document.choose_way(i);
        const Ride ride = canvas().ride();
        const OrbitCamera last = ride.eye(ride.duration());
        const Point eye = last.eye();
        const Vector sight = (last.focus - eye) * (1 / distance(last.focus, eye));
        if (solids.inside(eye)) continue;  // as the engine's way
        double most = 0;
        for (int k = 0; k < 24; ++k) {
            const double turn = k * 3.14159265358979 / 12;
            const double level = std::hypot(sight.x, sight.y);
            most = std::max(most, seen_from(solids, eye, {level * std::cos(turn), level * std::sin(turn), sight.z}));
        }
        if (most < 0.6) continue;  // in a place so tight that there is nothing to turn to
        EXPECT_GT(seen_from(solids, eye, sight), std::min(1.5, 0.5 * most)) << "way " << i + 1 << " of " << most << " m";
        canvas().start_ride();
        canvas().ride_to(ride.duration());
        see(std::string(GetParam()) + " end of way " + std::to_string(i + 1));
        canvas().end_ride();
        // It stands still there while it turns.
        EXPECT_LT(distance(ride.eye(ride.duration() - 1.5).eye(), eye), 1e-9);
        EXPECT_TRUE(ride.arrived(ride.duration()));
        EXPECT_FALSE(ride.arrived(ride.time_of(canvas().scene().chosen_line().stops.size() - 1)));
    }
}

TEST_F(Rides, GoFasterAndSlowerAndKeepThat) {
    open_shipped("demo.yaml");
    canvas().start_ride();
    auto& speed = part<QLabel>("ride_speed");
    EXPECT_EQ(speed.text(), "1 x");
    QTest::mouseClick(&part<QToolButton>("ride_faster"), Qt::LeftButton);
    EXPECT_EQ(canvas().ride_speed(), 2);
    EXPECT_EQ(speed.text(), "2 x");
    QTest::keyClick(&canvas(), Qt::Key_Plus);
    EXPECT_EQ(canvas().ride_speed(), 4);
    EXPECT_FALSE(part<QToolButton>("ride_faster").isEnabled());
    canvas().ride_to(3);
    canvas().set_ride_going(true);
    canvas().set_ride_going(false);
    EXPECT_EQ(canvas().ride_speed(), 4);
    for (int i = 0; i < 9; ++i) QTest::keyClick(&canvas(), Qt::Key_Minus);
    EXPECT_EQ(speed.text(), "0.25 x");
    EXPECT_FALSE(part<QToolButton>("ride_slower").isEnabled());
    canvas().end_ride();
    canvas().start_ride();
    EXPECT_EQ(speed.text(), "0.25 x");
}

TEST_F(Rides, PutEverythingBack) {
    open_shipped("demo.yaml");
    canvas().set_shown(Coat::roof, Shown::faint);
    canvas().set_cut(Cut{Side::east, 0.3});
    for (const bool open : {true, false}) {
        canvas().set_open(open);
        const OrbitCamera before = canvas().camera();
        canvas().settle();
        const QImage shown = canvas().image();
        canvas().start_ride();
        canvas().ride_to(canvas().ride_duration() / 2);
        EXPECT_GT(distance(canvas().camera().eye(), before.eye()), 1);
        canvas().end_ride();
        EXPECT_FALSE(canvas().is_riding());
        EXPECT_LT(distance(canvas().camera().eye(), before.eye()), 1e-12);
        EXPECT_EQ(canvas().camera().view_angle, before.view_angle);
        EXPECT_EQ(canvas().scene().house().is_open(), open);
        EXPECT_EQ(canvas().scene().house().shown(Coat::roof), Shown::faint);
        EXPECT_FALSE(part<RideBar>("ride_bar").isVisible());
        EXPECT_TRUE(window->picture().tools().isVisible());
        canvas().settle();
        EXPECT_EQ(canvas().image(), shown);
    }
}

}  // namespace
}  // namespace seamward::viewer::test
