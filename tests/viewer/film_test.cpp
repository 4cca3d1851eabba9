// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/film.h"

#include <QImage>
#include <QSignalSpy>

#include "whole_window_fixture.h"

namespace seamward::viewer::test {
namespace {

class Films : public WholeWindowFixture {
protected:
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
    QStringList made() {
        return QDir(folder.filePath("films")).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
    }
    QString film_file(const QString& name) {
        QDir(folder.path()).mkpath("films");
        return folder.filePath("films/" + name);
    }
};

TEST_F(Films, ShowARideThatGoesOnByItself) {
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

TEST_F(Films, AreOggTheora) {
    open_shipped("wall-corner.yaml");
    window->resize(800, 500);
    choose_shortest();
    canvas().start_ride();
    const int frames = static_cast<int>(canvas().ride_duration() * 20);
    const QSize size = canvas().image().size();
    const QString path = film_file("a ride.ogv");
    double done = 0;
    int drawn = 0;
    EXPECT_EQ(write_film(path, canvas(),
                         [&](double share) {
                             EXPECT_GT(share, done);
                             done = share;
                             if (drawn++ == 5) window->resize(900, 600);  // the film keeps its size
                             return true;
                         }),
              QString());
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

TEST_F(Films, LeaveNothingWhenCalledOff) {
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
    EXPECT_NE(write_film(film_file("other.ogv"), canvas(),
                         [&](double) {
                             if (++frames == 3) canvas().end_ride();
                             return true;
                         }),
              QString());
    EXPECT_EQ(frames, 3);
    EXPECT_EQ(made(), QStringList{"ride.ogv"});
}

TEST_F(Films, AreNumberedPictures) {
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

TEST_F(Films, AreAsFastAsTheRide) {
    open_shipped("wall-corner.yaml");
    window->resize(800, 500);
    choose_shortest();
    canvas().start_ride();
    canvas().change_ride_speed(true);
    canvas().change_ride_speed(true);
    const int frames = static_cast<int>(canvas().ride_duration() * 20 / 4);
    EXPECT_EQ(write_film(film_file("ride.png"), canvas(), [](double) { return true; }), QString());
    EXPECT_EQ(made().size(), frames);
}

TEST_F(Films, SayThatTheyCannotBeWritten) {
    open_shipped("wall-corner.yaml");
    canvas().start_ride();
    write("films-are-no-folder", "");
    const QString fault = write_film(folder.filePath("films-are-no-folder/ride.ogv"), canvas(), [](double) { return true; });
    EXPECT_TRUE(fault.contains("cannot be written")) << fault.toStdString();
}

}  // namespace
}  // namespace seamward::viewer::test
