// SPDX-License-Identifier: GPL-3.0-or-later
// The pictures of docs/pictures, made by driving the window. SEAMWARD_WRITE_PICTURES=FOLDER writes them there; otherwise they are
// compared with those that are shown in the pages.
#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <cmath>

#include "panels/example_card.h"
#include "window/look.h"
#include "window/main_window.h"

namespace seamward::viewer::test {
namespace {

const QString source = QStringLiteral(SEAMWARD_SOURCE_FOLDER);

/// How much two pictures differ, 0 to 255: the mean over blocks of 16 by 16 pixels of how their means differ. Letters and edges
/// that other versions of libraries set a pixel aside do not count much.
double difference(const QImage& a, const QImage& b) {
    const QSize size = a.size() / 16;
    const QImage small_a = a.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation).convertToFormat(QImage::Format_RGB32);
    const QImage small_b = b.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation).convertToFormat(QImage::Format_RGB32);
    double sum = 0;
    for (int y = 0; y < size.height(); ++y) {
        for (int x = 0; x < size.width(); ++x) {
            const QRgb p = small_a.pixel(x, y);
            const QRgb q = small_b.pixel(x, y);
            sum += (std::abs(qRed(p) - qRed(q)) + std::abs(qGreen(p) - qGreen(q)) + std::abs(qBlue(p) - qBlue(q))) / 3.0;
        }
    }
    return sum / (size.width() * size.height());
}

class Pictures : public testing::Test {
protected:
    Pictures() : preferences(folder.filePath("preferences.ini")), recent(folder.filePath("recent.ini")) {
        preferences.set_language(Preferences::Language::english);
        preferences.set_hints_seen(true);
        wear(*static_cast<QApplication*>(QApplication::instance()), preferences);
        window = std::make_unique<MainWindow>(preferences, recent);
        window->picture().canvas().set_animated(false);
        window->resize(1280, 800);
        window->show();
    }
    ~Pictures() override { preferences.set_language(Preferences::Language::english); }

    void open() {
        QSignalSpy solids(&window->document(), &JobDocument::solids_ready);
        QSignalSpy planned(&window->closings(), &ClosingsDocument::planned);
        window->open(source + "/scenarios/demo.yaml");
        ASSERT_TRUE(solids.wait(30'000));
        ASSERT_TRUE(planned.count() > 0 || planned.wait(30'000));
        QTRY_VERIFY(!window->document().is_busy());
    }
    PictureCanvas& canvas() { return window->picture().canvas(); }

    bool all_examples_drawn() {
        const auto cards = window->findChildren<ExampleCard*>();
        return !cards.empty() && std::ranges::all_of(cards, [](const ExampleCard* card) { return card->has_picture(); });
    }

    DrillPage& open_drill(const QString& name) {
        DrillPage& page = window->drill();
        page.picture().canvas().set_animated(false);
        QSignalSpy opened(&page.document(), &DrillDocument::opened);
        window->open(source + "/scenarios/drills/" + name);
        EXPECT_TRUE(opened.wait(60'000));
        return page;
    }

    /// Saves or compares what the window shows.
    void check(const QString& name, PictureCanvas* drawn = nullptr) {
        QApplication::processEvents();
        (drawn == nullptr ? canvas() : *drawn).settle();
        const QImage shown = window->grab().toImage();
        const QByteArray write_to = qgetenv("SEAMWARD_WRITE_PICTURES");
        if (!write_to.isEmpty()) {
            ASSERT_TRUE(shown.save(QDir(QString::fromLocal8Bit(write_to)).filePath(name + ".png")));
            return;
        }
        const QImage kept(source + "/docs/pictures/" + name + ".png");
        ASSERT_FALSE(kept.isNull()) << name.toStdString();
        ASSERT_EQ(kept.size(), shown.size());
        EXPECT_LT(difference(kept, shown), 4) << name.toStdString();
    }

    QTemporaryDir folder;
    Preferences preferences;
    RecentJobs recent;
    std::unique_ptr<MainWindow> window;
};

TEST_F(Pictures, Start) {
    // Examples are drawn by a program of their own, one after the other.
    QTRY_VERIFY_WITH_TIMEOUT(all_examples_drawn(), 120'000);
    check("start");
}

TEST_F(Pictures, WaysIn) {
    open();
    check("ways-in");
}

TEST_F(Pictures, House) {
    open();
    window->document().choose_way(JobDocument::no_way);
    canvas().set_open(false);
    window->picture().tools().set_open(false);
    check("house");
}

TEST_F(Pictures, Closings) {
    open();
    window->show_page(MainWindow::Page::closings);
    ClosingsDocument& closings = window->closings();
    QSignalSpy outlook(&closings, &ClosingsDocument::outlook_found);
    const auto& ladder = closings.plan().plan.ladder;
    closings.tick_rung(static_cast<int>(ladder.size()) / 2);
    ASSERT_TRUE(outlook.count() > 0 || outlook.wait(20'000));
    QTRY_VERIFY(!window->document().is_busy());
    check("closings");
}

TEST_F(Pictures, Section) {
    open();
    const Cut cut{Side::south, 0.42};
    window->picture().tools().set_cut(cut);
    canvas().set_cut(cut);
    check("section");
}

TEST_F(Pictures, Ride) {
    open();
    const auto& ways = window->document().ways().paths;
    int longest = 0;
    for (int i = 1; i < static_cast<int>(ways.size()); ++i) {
        if (ways[static_cast<std::size_t>(i)].path.gaps.size() > ways[static_cast<std::size_t>(longest)].path.gaps.size())
            longest = i;
    }
    window->document().choose_way(longest);
    ASSERT_TRUE(canvas().can_ride());
    canvas().start_ride();
    const RankedPath& way = *window->document().chosen();
    const auto pinch = std::ranges::find(way.path.gaps, way.pinch_gap) - way.path.gaps.begin();
    const Ride ride(canvas().scene().chosen_line());
    canvas().ride_to(ride.time_of(static_cast<std::size_t>(pinch)) - 2.4);
    check("ride");
}

TEST_F(Pictures, Survey) {
    open();
    window->show_page(MainWindow::Page::survey);
    const auto& gaps = window->document().job().survey.gaps;
    std::uint32_t bibb = 0;
    while (bibb < gaps.size() && gaps[bibb].id.find("bibb") == std::string::npos) ++bibb;
    ASSERT_LT(bibb, gaps.size());
    window->picture().show_gap({bibb});
    emit window->picture().gap_chosen({bibb});
    check("survey");
}

/// The trainee looks closely at the south eave.
TEST_F(Pictures, Drill) {
    DrillPage& page = open_drill("2-eave.yaml");
    DrillDocument& drill = page.document();
    const Answers known = perfect_answers(drill.round(), "");
    for (std::size_t i = 1; i < 3; ++i) drill.set_answer(known.findings.at(i));
    page.show_part(DrillPage::Part::places);
    drill.choose(static_cast<int>(*known.findings.front().where.place));
    drill.look_closely(*known.findings.front().where.place);
    check("drill", &page.picture().canvas());
}

/// A joint that was missed, and the way in through it.
TEST_F(Pictures, DrillResult) {
    DrillPage& page = open_drill("4-garage.yaml");
    DrillDocument& drill = page.document();
    Answers said = perfect_answers(drill.round(), "");
    said.findings.resize(said.findings.size() - 3);
    for (const PlaceAnswer& one : said.findings) drill.set_answer(one);
    drill.hand_in();
    const auto& places = drill.feedback().places;
    const auto missed = std::ranges::find_if(places, [](const PlaceFeedback& one) { return one.way.has_value(); });
    ASSERT_NE(missed, places.end());
    drill.choose(static_cast<int>(missed->place));
    check("drill-result", &page.picture().canvas());
}

TEST_F(Pictures, Spanish) {
    preferences.set_language(Preferences::Language::spanish);
    open();
    check("spanish");
}

}  // namespace
}  // namespace seamward::viewer::test
