// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QListWidget>
#include <QMouseEvent>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>
#include <algorithm>
#include <cmath>

#include "panels/way_row.h"
#include "window/main_window.h"

namespace seamward::viewer::test {
namespace {

const QString demo = QStringLiteral(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml");

class Window : public testing::Test {
protected:
    Window() {
        window.resize(1280, 720);
        window.show();
    }

    void open(const QString& path) {
        QSignalSpy found(&document, &JobDocument::ways_found);
        document.open(path);
        ASSERT_TRUE(found.wait(20'000));
    }
    void open_text(const QTemporaryDir& folder, const char* text) {
        QFile file(folder.filePath("job.yaml"));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        file.close();
        open(file.fileName());
    }
    template <class Widget>
    Widget& part(const char* name) {
        auto* found = window.findChild<Widget*>(name);
        if (found == nullptr) throw std::runtime_error(name);
        return *found;
    }
    void drag(Qt::MouseButton button, QPoint by) {
        const QPoint from(200, 200);
        QTest::mousePress(&canvas(), button, Qt::NoModifier, from);
        QMouseEvent move(QEvent::MouseMove, from + by, button, button, Qt::NoModifier);  // QTest moves without a button
        QApplication::sendEvent(&canvas(), &move);
        QTest::mouseRelease(&canvas(), button, Qt::NoModifier, from + by);
    }
    PictureCanvas& canvas() { return *window.findChild<PictureCanvas*>(); }
    /// The ways that the engine gives for one animal of the job, or all, and into one room, or all.
    std::vector<EntryPath> expected(int animal, int room = JobDocument::all_rooms) {
        TraceSettings settings{.top = JobDocument::ways_wanted};
        if (room >= 0) settings.to = {document.rooms()[static_cast<std::size_t>(room)]};
        if (animal >= 0) settings.pests = {document.job().pests[static_cast<std::size_t>(animal)]};
        return paths(trace(document.job().survey, settings, RunContext()));
    }
    static std::vector<EntryPath> paths(const Trace& trace) {
        std::vector<EntryPath> all;
        for (const RankedPath& ranked : trace.paths) all.push_back(ranked.path);
        return all;
    }

    QTemporaryDir own;
    Preferences preferences{own.filePath("preferences.ini")};
    RecentJobs recent{own.filePath("recent.ini")};
    MainWindow window{preferences, recent};
    JobDocument& document = window.document();
};

TEST_F(Window, BeginsWithoutAJob) {
    EXPECT_TRUE(part<QWidget>("start_page").isVisible());
    EXPECT_FALSE(part<QListWidget>("ways").isVisible());
    EXPECT_FALSE(document.has_job());
}

TEST_F(Window, ListsTheWaysOfTheJob) {
    open(demo);
    EXPECT_TRUE(window.windowTitle().startsWith(document.title()));
    EXPECT_EQ(paths(document.ways()), expected(JobDocument::all_animals));
    auto& ways = part<QListWidget>("ways");
    EXPECT_EQ(static_cast<std::size_t>(ways.count()), document.ways().paths.size());
    EXPECT_EQ(ways.currentRow(), 0);
    EXPECT_EQ(part<QComboBox>("animals").count(), static_cast<int>(document.job().pests.size()) + 1);
    EXPECT_TRUE(canvas().isVisible());
}

TEST_F(Window, ChoosesAWayByKeyboardAndMouse) {
    open(demo);
    auto& ways = part<QListWidget>("ways");
    QTest::keyClick(&ways, Qt::Key_Down);
    EXPECT_EQ(document.way(), 1);
    EXPECT_TRUE(part<QTextBrowser>("steps").toPlainText().startsWith("Way in 2,"));
    QTest::mouseClick(ways.viewport(), Qt::LeftButton, Qt::NoModifier, ways.visualItemRect(ways.item(3)).center());
    EXPECT_EQ(document.way(), 3);
    ASSERT_NE(document.chosen(), nullptr);
    // The picture numbers each gap of that way, and names the smallest.
    const std::vector<Callout>& words = canvas().scene().callouts();
    const auto count = [&](Callout::Kind kind) {
        return std::count_if(words.begin(), words.end(), [&](const Callout& c) { return c.kind == kind; });
    };
    EXPECT_EQ(static_cast<std::size_t>(count(Callout::Kind::step)), document.chosen()->path.gaps.size());
    EXPECT_EQ(count(Callout::Kind::smallest), 1);
    document.choose_way(0);
    EXPECT_EQ(ways.currentRow(), 0);
}

TEST_F(Window, TracesForTheAnimalChosen) {
    open(demo);
    auto& animals = part<QComboBox>("animals");
    QSignalSpy found(&document, &JobDocument::ways_found);
    QTest::keyClick(&animals, Qt::Key_End);
    EXPECT_TRUE(document.is_busy());  // elsewhere: the window goes on at once
    ASSERT_TRUE(found.wait(20'000));
    const int last = static_cast<int>(document.job().pests.size()) - 1;
    EXPECT_EQ(document.animal(), last);
    EXPECT_EQ(paths(document.ways()), expected(last));
    EXPECT_TRUE(part<QLabel>("count").text().contains(animals.currentText()));
    QTest::keyClick(&animals, Qt::Key_Home);
    ASSERT_TRUE(found.wait(20'000));
    EXPECT_EQ(paths(document.ways()), expected(JobDocument::all_animals));
}

TEST_F(Window, TracesIntoTheRoomChosen) {
    open(demo);
    auto& rooms = part<QComboBox>("rooms");
    EXPECT_EQ(rooms.count(), static_cast<int>(document.rooms().size()) + 1);
    EXPECT_EQ(rooms.itemText(0), "All rooms");
    QSignalSpy found(&document, &JobDocument::ways_found);
    QTest::keyClick(&rooms, Qt::Key_End);
    ASSERT_TRUE(found.wait(20'000));
    const int last = static_cast<int>(document.rooms().size()) - 1;
    EXPECT_EQ(document.room(), last);
    EXPECT_EQ(paths(document.ways()), expected(JobDocument::all_animals, last));
    for (const RankedPath& way : document.ways().paths) EXPECT_EQ(way.path.to(), document.rooms().back());
    EXPECT_TRUE(part<QLabel>("count").text().contains("into " + rooms.currentText()));
    // Animal and room together; the lists follow the document.
    document.choose_animal(0);
    ASSERT_TRUE(found.wait(20'000));
    EXPECT_EQ(part<QComboBox>("animals").currentIndex(), 1);
    EXPECT_EQ(rooms.currentIndex(), last + 1);
    EXPECT_EQ(paths(document.ways()), expected(0, last));
    open(demo);
    EXPECT_EQ(document.room(), JobDocument::all_rooms);
    EXPECT_EQ(rooms.currentIndex(), 0);
}

TEST_F(Window, SaysWhatMustStayOpen) {
    const QTemporaryDir folder;
    open_text(folder,
              "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\n"
              "gaps: [{id: weep, between: [yard, den], hole: {diameter: 5 mm}, duty: weep, at: [0 m, 0 m, 0 m]},\n"
              "       {id: flood, between: [yard, den], slot: {width: 4 mm, length: 1 m}, at: [3 m, 0 m, 0 m],\n"
              "        closing: {never: \"water passes\"}, evidence: {how: assumed}}]\n");
    const auto in_picture = [&] {
        const auto& words = canvas().scene().callouts();
        const auto box =
            std::find_if(words.begin(), words.end(), [](const Callout& c) { return c.kind == Callout::Kind::smallest; });
        return box == words.end() ? QString() : box->heading + '\n' + box->text;
    };
    auto& ways = part<QListWidget>("ways");
    EXPECT_TRUE(in_picture().endsWith("weep\nstays open: weep"));
    EXPECT_TRUE(part<QTextBrowser>("steps").toPlainText().contains("stays open: weep"));
    EXPECT_EQ(ways.item(0)->data(WayRow::stays).toString(), "stays open: weep");
    QTest::keyClick(&ways, Qt::Key_Down);
    EXPECT_TRUE(in_picture().endsWith("never close: water passes"));
    EXPECT_TRUE(in_picture().contains("assumed"));
    EXPECT_TRUE(part<QTextBrowser>("steps").toPlainText().contains("never close: water passes"));
    EXPECT_EQ(ways.item(1)->data(WayRow::stays).toString(), "never close: water passes");
    EXPECT_TRUE(ways.item(1)->data(WayRow::width).toString().endsWith(", assumed"));
}

TEST_F(Window, SaysThatThePositionOfTheSmallestGapIsMissing) {
    const QTemporaryDir folder;
    open_text(folder,
              "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: wall, kind: cavity}, {id: den, kind: living}]\n"
              "gaps: [{id: a, between: [yard, wall], hole: {diameter: 5 mm}},\n"
              "       {id: b, between: [wall, den], hole: {diameter: 9 mm}, at: [3 m, 0 m, 0 m]}]\n");
    const auto& words = canvas().scene().callouts();
    const auto of = [&](Callout::Kind kind) {
        std::vector<Callout> all;
        std::copy_if(words.begin(), words.end(), std::back_inserter(all), [&](const Callout& c) { return c.kind == kind; });
        return all;
    };
    ASSERT_EQ(of(Callout::Kind::smallest).size(), 1U);
    EXPECT_FALSE(of(Callout::Kind::smallest)[0].at);
    EXPECT_TRUE(of(Callout::Kind::smallest)[0].text.contains("position not given"));
    // The first gap that is shown is not where the way begins.
    ASSERT_EQ(of(Callout::Kind::end).size(), 2U);
    EXPECT_EQ(of(Callout::Kind::end)[0].heading, "from yard\ngap 1: position not given");
    EXPECT_EQ(of(Callout::Kind::end)[1].heading, "into den");
    EXPECT_EQ(of(Callout::Kind::axis).size(), 2U);
}

TEST_F(Window, SaysWhyNoWayCanBe) {
    const QTemporaryDir folder;
    open_text(folder,
              "seamward: 1\nspaces: [{id: wall, kind: cavity}, {id: den, kind: living}]\n"
              "gaps: [{id: a, between: [wall, den], hole: {diameter: 3 mm}, at: [0 m, 0 m, 0 m]}]\n");
    EXPECT_TRUE(part<QLabel>("none").isVisible());
    EXPECT_TRUE(part<QLabel>("remarks").isVisible());
    EXPECT_TRUE(part<QLabel>("remarks").text().contains("no outdoors or source space"));
    open_text(folder,
              "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: wall, kind: cavity}]\n"
              "gaps: [{id: a, between: [wall, yard], hole: {diameter: 3 mm}, at: [0 m, 0 m, 0 m]}]\n");
    EXPECT_TRUE(part<QLabel>("remarks").text().contains("no living space"));
    EXPECT_EQ(part<QComboBox>("rooms").count(), 1);
}

TEST_F(Window, ShowsOtherWaysForASmallerAnimal) {
    const QTemporaryDir folder;
    open_text(folder,
              "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\n"
              "pests: [{id: big, slit: 4 mm, hole: 9 mm}, {id: tiny, slit: 1 mm, hole: 2 mm}]\n"
              "gaps: [{id: round, between: [yard, den], hole: {diameter: 5 mm}, at: [0 m, 0 m, 0 m]},\n"
              "       {id: long, between: [yard, den], slot: {width: 4 mm, length: 1 m}, at: [3 m, 0 m, 0 m]}]\n");
    EXPECT_EQ(document.chosen()->pinch_gap, GapIndex{0});
    QSignalSpy found(&document, &JobDocument::ways_found);
    QTest::keyClick(&part<QComboBox>("animals"), Qt::Key_Down);
    ASSERT_TRUE(found.wait(20'000));
    EXPECT_EQ(part<QListWidget>("ways").count(), 1);
    EXPECT_EQ(document.chosen()->pinch_gap, GapIndex{1});  // the hole is too small for it
    EXPECT_EQ(part<QLabel>("count").text(), "One way in for big");
    QTest::keyClick(&part<QComboBox>("animals"), Qt::Key_Down);
    ASSERT_TRUE(found.wait(20'000));
    EXPECT_EQ(part<QListWidget>("ways").count(), 2);
}

TEST_F(Window, AnswersTheNewestQuestionOnly) {
    open(demo);
    QSignalSpy found(&document, &JobDocument::ways_found);
    const int animals = static_cast<int>(document.job().pests.size());
    for (int round = 0; round < 50; ++round) {
        for (int animal = animals - 1; animal >= 0; --animal) document.choose_animal(animal);
        document.choose_room(round % 3);
    }
    QTRY_VERIFY_WITH_TIMEOUT(!document.is_busy(), 20'000);
    EXPECT_EQ(document.animal(), 0);
    EXPECT_EQ(document.room(), 1);
    EXPECT_EQ(paths(document.ways()), expected(0, 1));
    EXPECT_EQ(found.count(), 1);
}

TEST_F(Window, TellsABadJobAndKeepsTheOneBefore) {
    open(demo);
    const QTemporaryDir folder;
    QFile file(folder.filePath("bad.yaml"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("seamward: 1\nspaces: []\ngaps:\n  - {id: a, between: [x, y], hole: {diameter: 3}}\n");
    file.close();
    QSignalSpy failed(&document, &JobDocument::open_failed);
    document.open(file.fileName());
    ASSERT_TRUE(failed.wait(20'000));
    const QString text = part<QPlainTextEdit>("fault_text").toPlainText();
    EXPECT_TRUE(text.contains(file.fileName() + ":4:")) << text.toStdString();
    EXPECT_GT(text.count('\n'), 0);
    part<QDialog>("fault").reject();
    EXPECT_TRUE(document.has_job());
    auto& ways = part<QListWidget>("ways");
    QTest::keyClick(&ways, Qt::Key_Down);
    EXPECT_EQ(document.way(), 1);
}

TEST_F(Window, SaysInWordsThatThereAreNoPositions) {
    const QTemporaryDir folder;
    open_text(
        folder,
        "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\n"
        "gaps: [{id: a, between: [yard, den], hole: {diameter: 3 mm}}, {id: b, between: [yard, den], hole: {diameter: 2 mm}}]\n");
    EXPECT_TRUE(part<QLabel>("no_places").isVisible());
    EXPECT_FALSE(canvas().isVisible());
    QTest::keyClick(&part<QListWidget>("ways"), Qt::Key_Down);
    EXPECT_EQ(document.way(), 1);
    open(demo);
    EXPECT_TRUE(canvas().isVisible());
}

TEST_F(Window, SaysThatThereIsNoWayIn) {
    const QTemporaryDir folder;
    open_text(folder,
              "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\npests: [house-mouse]\n"
              "gaps: [{id: a, between: [yard, den], hole: {diameter: 3 mm}, at: [0 m, 0 m, 0 m]}]\n");
    EXPECT_EQ(document.way(), 0);
    QSignalSpy found(&document, &JobDocument::ways_found);
    QTest::keyClick(&part<QComboBox>("animals"), Qt::Key_End);
    ASSERT_TRUE(found.wait(20'000));
    EXPECT_EQ(document.way(), JobDocument::no_way);
    EXPECT_TRUE(part<QLabel>("none").isVisible());
    EXPECT_TRUE(part<QLabel>("none").text().contains("House mouse"));
    for (const Callout& callout : canvas().scene().callouts())
        EXPECT_TRUE(callout.kind == Callout::Kind::room || callout.kind == Callout::Kind::axis);
}

TEST_F(Window, TurnsThePictureAndFindsTheWholeHouseAgain) {
    open(demo);
    const OrbitCamera before = canvas().camera();
    QTest::keyClick(&canvas(), Qt::Key_Left);
    QTest::keyClick(&canvas(), Qt::Key_Plus);
    EXPECT_LT(canvas().camera().azimuth, before.azimuth);
    EXPECT_LT(canvas().camera().distance, before.distance);
    drag(Qt::LeftButton, {60, 20});
    EXPECT_GT(canvas().camera().elevation, before.elevation);
    const double before_shift = canvas().camera().focus.z;
    drag(Qt::RightButton, {0, 50});
    EXPECT_GT(canvas().camera().focus.z, before_shift);
    QTest::keyClick(&canvas(), Qt::Key_Home);
    EXPECT_LT(std::abs(canvas().camera().focus.z), 5);
    EXPECT_GT(canvas().camera().distance, before.distance * 0.7);
}

}  // namespace
}  // namespace seamward::viewer::test
