// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/ride.h"

#include <QImage>
#include <QSignalSpy>
#include <algorithm>
#include <limits>

#include "ray_peer.h"
#include "whole_window_fixture.h"
#include "window/film.h"

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
    void choose_shortest() {
        int best = -1;
        double least = 1e9;
        for (int i = 0; i < static_cast<int>(window->document().ways().paths.size()); ++i) {
            window->document().choose_way(i);
            if (!canvas().can_ride()) continue;
            const double now = canvas().ride().duration();
            if (now < least) best = i;
            least = std::min(least, now);
        }
        ASSERT_GE(best, 0);
        window->document().choose_way(best);
    }
    QStringList made() { return QDir(folder.filePath("films")).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot); }
    QString film_file(const QString& name) {
        QDir(folder.path()).mkpath("films");
        return folder.filePath("films/" + name);
    }
};

class RidesOf : public Rides, public testing::WithParamInterface<const char*> {};

TEST_P(RidesOf, StayOnTheWayAndInTheAir) {
    open_shipped(GetParam());
    JobDocument& document = window->document();
    const RayPeer solids(document.solids()->parts, canvas().scene().frame().origin - Point{});
    const int ways = static_cast<int>(document.ways().paths.size());
    ASSERT_GT(ways, 3);
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
        if (const auto crossed = solids.crossed(line))
            ADD_FAILURE() << "the line of way " << i + 1 << " goes through " << document.solids()->parts[crossed->second].id << " at stretch "
                          << crossed->first << " of " << line.size() << ": " << written(line[crossed->first]) << " to " << written(line[crossed->first + 1]);
        if (const auto crossed = solids.crossed(seen))
            ADD_FAILURE() << "way " << i + 1 << " rides through " << document.solids()->parts[crossed->second].id << " at "
                          << static_cast<double>(crossed->first) * frame << " s of " << ride.duration();
    }
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
        EXPECT_TRUE(bar.words().startsWith(QString("Gap %1 of %2").arg(i + 1).arg(way.path.gaps.size()))) << bar.words().toStdString();
        EXPECT_TRUE(bar.words().contains(label)) << bar.words().toStdString();
        EXPECT_EQ(bar.words().contains("the smallest"), way.path.gaps[i] == way.pinch_gap);
    }
    canvas().ride_to(1e9);
    EXPECT_TRUE(bar.words().contains(QString::fromStdString(survey[way.path.to()].label()))) << bar.words().toStdString();
    canvas().ride_to(-5);
    EXPECT_TRUE(bar.words().contains(QString::fromStdString(survey[way.path.from()].label()))) << bar.words().toStdString();
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

TEST_F(Rides, GoOnByThemselvesAndStopAtTheEnd) {
    open_shipped("wall-corner.yaml");
    choose_shortest();
    canvas().set_animated(true);
    QSignalSpy moved(&canvas(), &PictureCanvas::ride_moved);
    canvas().start_ride();
    ASSERT_TRUE(QTest::qWaitFor([&] { return moved.count() > 5; }, soon));
    QTest::keyClick(&canvas(), Qt::Key_Space);
    EXPECT_FALSE(moved.last().at(1).toBool());
    canvas().ride_to(canvas().ride_duration() - 0.2);
    QTest::keyClick(&canvas(), Qt::Key_Space);
    ASSERT_TRUE(QTest::qWaitFor([&] { return moved.last().at(0).toDouble() >= canvas().ride_duration(); }, soon));
    EXPECT_FALSE(moved.last().at(1).toBool());
    EXPECT_TRUE(canvas().is_riding());
    double last = 0;
    for (int i = 0; i < 5; ++i) {
        EXPECT_GE(moved.at(i).at(0).toDouble(), last);
        last = moved.at(i).at(0).toDouble();
    }
}

TEST_F(Rides, BecomeAFilm) {
    open_shipped("wall-corner.yaml");
    window->resize(800, 500);
    choose_shortest();
    canvas().start_ride();
    const int frames = static_cast<int>(canvas().ride_duration() * 20);
    const QSize size = canvas().image().size();
    const QString path = film_file("a ride.ogv");
    double done = 0;
    EXPECT_EQ(write_film(path, canvas(), [&](double share) {
        EXPECT_GT(share, done);
        done = share;
        return true;
    }), QString());
    EXPECT_EQ(done, 1);
    EXPECT_EQ(made(), QStringList{"a ride.ogv"});
    const QByteArray film = content(path);
    ASSERT_TRUE(film.startsWith("OggS"));
    const int head = film.indexOf("\x80theora");
    ASSERT_GT(head, 0);
    const auto number = [&](int at, int bytes) {
        int sum = 0;
        for (int i = 0; i < bytes; ++i) sum = sum * 256 + static_cast<unsigned char>(film.at(head + at + i));
        return sum;
    };
    EXPECT_EQ(number(14, 3), size.width() / 16 * 16);
    EXPECT_EQ(number(17, 3), size.height() / 16 * 16);
    EXPECT_EQ(number(22, 4), 20 * number(26, 4));  // frames in a second
    // The last page tells how many frames there are.
    const int last = film.lastIndexOf("OggS");
    std::uint64_t place = 0;
    for (int i = 7; i >= 0; --i) place = place * 256 + static_cast<unsigned char>(film.at(last + 6 + i));
    const int shift = (number(40, 2) >> 5) & 31;
    const auto counted = static_cast<int>((place >> shift) + (place & ((1ULL << shift) - 1)));
    EXPECT_NEAR(counted, frames, 1);
    EXPECT_TRUE(canvas().is_riding());
}

TEST_F(Rides, LeaveNothingOfAFilmCalledOff) {
    open_shipped("wall-corner.yaml");
    canvas().start_ride();
    for (const char* name : {"ride.ogv", "ride.png"}) {
        int frames = 0;
        EXPECT_EQ(write_film(film_file(name), canvas(), [&](double) { return ++frames < 4; }), QString());
        EXPECT_EQ(frames, 4);
        EXPECT_EQ(made(), QStringList());
    }
    write("films/ride.ogv", "an older one");
    (void)write_film(film_file("ride.ogv"), canvas(), [](double) { return false; });
    EXPECT_EQ(content(film_file("ride.ogv")), "an older one");
    // A ride that ends under way is no film.
    int frames = 0;
    EXPECT_NE(write_film(film_file("other.ogv"), canvas(), [&](double) {
        if (++frames == 3) canvas().end_ride();
        return true;
    }), QString());
    EXPECT_EQ(frames, 3);
    EXPECT_EQ(made(), QStringList{"ride.ogv"});
}

TEST_F(Rides, BecomeNumberedPictures) {
    open_shipped("wall-corner.yaml");
    window->resize(800, 500);
    choose_shortest();
    canvas().start_ride();
    const int frames = static_cast<int>(canvas().ride_duration() * 20);
    EXPECT_EQ(write_film(film_file("ride.png"), canvas(), [](double) { return true; }), QString());
    const QStringList names = made();
    ASSERT_EQ(names.size(), frames);
    for (int i = 0; i < frames; i += 37) {
        EXPECT_EQ(names.at(i), QString("ride-%1.png").arg(i, 5, 10, QLatin1Char('0')));
        EXPECT_FALSE(QImage(film_file(names.at(i))).isNull());
    }
}

TEST_F(Rides, SayThatAFilmCannotBeWritten) {
    open_shipped("wall-corner.yaml");
    canvas().start_ride();
    write("films-are-no-folder", "");
    const QString fault = write_film(folder.filePath("films-are-no-folder/ride.ogv"), canvas(), [](double) { return true; });
    EXPECT_TRUE(fault.contains("cannot be written")) << fault.toStdString();
}

}  // namespace
}  // namespace seamward::viewer::test
