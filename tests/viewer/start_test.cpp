// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTest>
#include <algorithm>
#include <filesystem>
#include <fstream>

#include "document/draft_store.h"
#include "job_file/job.h"
#include "panels/new_house_form.h"
#include "panels/recent_row.h"
#include "panels/start_page.h"
#include "paths/trace.h"
#include "tests/support/scratch_folder.h"

namespace seamward::viewer::test {
namespace {

const QString scenarios = QStringLiteral(SEAMWARD_SOURCE_FOLDER "/scenarios");
constexpr int patience = 60'000;

class Start : public testing::Test {
protected:
    [[nodiscard]] QString file(const char* name) const { return QString::fromStdString((folder.path() / name).string()); }
    /// A job file of two spaces.
    [[nodiscard]] QString job_file(const std::string& name) const {
        const auto path =
            folder.write(name + ".yaml", "seamward: 1\njob: {name: \"" + name + "\"}\nspaces: [{id: y, kind: outdoors}]\n");
        return QString::fromStdString(path.string());
    }
    static Job named(const std::string& name) {
        Job job;
        job.name = name;
        job.address = "1 Elm Street";
        job.surveyed = "2026-03-12";
        return job;
    }
    template <class Widget>
    static Widget& part(QWidget& of, const char* name) {
        auto* found = of.findChild<Widget*>(name);
        if (found == nullptr) throw std::runtime_error(name);
        return *found;
    }
    static QString fault_of(QWidget& form, const char* field) {
        auto* label = part<QWidget>(form, field).parentWidget()->findChild<FaultLabel*>();
        return label->isHidden() ? QString() : label->text();
    }
    [[nodiscard]] int files() const {
        return static_cast<int>(std::distance(std::filesystem::directory_iterator(folder.path()), {}));
    }

    seamward::test::ScratchFolder folder;
    RecentJobs recent{file("settings/recent.ini")};
};

class ShownStart : public Start {
protected:
    ShownStart() {
        page.resize(1280, 720);
        page.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&page));
    }
    std::vector<RecentRow*> rows() {
        std::vector<RecentRow*> all;
        for (RecentRow* row : page.findChildren<RecentRow*>("recent_row")) {
            if (row->parentWidget() != nullptr && row->isVisible()) all.push_back(row);
        }
        return all;
    }

    StartPage page{recent, scenarios, nullptr, file("pictures")};
};

TEST_F(Start, RecentJobsAreKeptNewestFirstAndOnce) {
    const QString a = job_file("a");
    const QString b = job_file("b");
    recent.add(a, named("A"));
    recent.add(b, named("B"));
    recent.add(file("./a.yaml"), named("A again"));
    std::filesystem::create_symlink("b.yaml", folder.path() / "link.yaml");
    recent.add(file("link.yaml"), named("B"));
    ASSERT_EQ(recent.jobs().size(), 2U);
    EXPECT_EQ(recent.jobs()[0].path, QFileInfo(b).canonicalFilePath());
    EXPECT_EQ(recent.jobs()[1].name, "A again");
    EXPECT_EQ(recent.jobs()[1].place, "1 Elm Street");
    EXPECT_EQ(recent.jobs()[1].surveyed, "2026-03-12");
    for (int i = 0; i < 20; ++i) recent.add(job_file("job" + std::to_string(i)), named(std::to_string(i)));
    EXPECT_EQ(recent.jobs().size(), RecentJobs::most);
    EXPECT_EQ(recent.jobs().front().name, "19");
    const RecentJobs later(file("settings/recent.ini"));
    ASSERT_EQ(later.jobs().size(), RecentJobs::most);
    EXPECT_EQ(later.jobs().front().name, "19");
    EXPECT_EQ(later.jobs().front().opened, QDate::currentDate());
}

/// Names that were one file all along, or became one, are found out by looking at the disk.
TEST_F(Start, RecentJobsThatAreOneFileBecomeOneRow) {
    const QString a = job_file("a");
    {
        QSettings kept(file("settings/other.ini"), QSettings::IniFormat);
        kept.beginWriteArray("recent_jobs", 3);
        int row = 0;
        for (const QString& path : {file("x/../a.yaml"), a, file("./a.yaml")}) {
            kept.setArrayIndex(row++);
            kept.setValue("path", path);
            kept.setValue("name", QString::number(row));
        }
        kept.endArray();
    }
    std::filesystem::create_directory(folder.path() / "x");
    RecentJobs other(file("settings/other.ini"));
    other.look();
    ASSERT_TRUE(QTest::qWaitFor([&] { return other.jobs().size() == 1; }));
    EXPECT_EQ(other.jobs()[0].path, QFileInfo(a).canonicalFilePath());
    EXPECT_EQ(other.jobs()[0].name, "1");
    EXPECT_EQ(RecentJobs(file("settings/other.ini")).jobs().size(), 1U);
}

TEST(LeftBehind, IsCalledAfterItsJob) {
    Draft draft;
    draft.job = {"/tmp/visit.yaml", "seamward: 1\njob: {name: \"Elm Street 4\"}\n", {}};
    EXPECT_EQ(draft.job_name(), "Elm Street 4");
    draft.job.text = "seamward: 1\nhouse: h.yaml\n";
    EXPECT_EQ(draft.job_name(), "visit.yaml");
    draft.house = EditedFile{"/tmp/h.yaml", "seamward-house: 1\nname: The old mill\n", {}};
    EXPECT_EQ(draft.job_name(), "The old mill");
    draft.job.text = "job: [no, name";
    draft.house.reset();
    EXPECT_EQ(draft.job_name(), "visit.yaml");
}

TEST_F(ShownStart, ListsRecentJobsAndOpensThem) {
    EXPECT_TRUE(part<QLabel>(page, "no_recent").isVisible());
    const QString path = job_file("a");
    recent.add(path, named("A"));
    EXPECT_FALSE(part<QLabel>(page, "no_recent").isVisible());
    QSignalSpy wanted(&page, &StartPage::job_wanted);
    ASSERT_EQ(rows().size(), 1U);
    QTest::mouseClick(rows()[0], Qt::LeftButton);
    QTest::keyClick(rows()[0], Qt::Key_Return);
    ASSERT_EQ(wanted.count(), 2);
    EXPECT_EQ(wanted[0][0].toString(), recent.jobs()[0].path);
}

TEST_F(ShownStart, MarksJobsWhoseFilesAreGoneAndForgetsThem) {
    const QString path = job_file("a");
    recent.add(path, named("A"));
    recent.add(job_file("b"), named("B"));
    std::filesystem::remove(path.toStdString());
    recent.look();
    ASSERT_TRUE(QTest::qWaitFor([&] { return recent.jobs()[1].missing; }));
    ASSERT_TRUE(QTest::qWaitFor([&] { return rows().size() == 2; }));
    EXPECT_TRUE(rows()[1]->accessibleName().contains("no such file"));
    QSignalSpy wanted(&page, &StartPage::job_wanted);
    QTest::mouseClick(rows()[1], Qt::LeftButton);
    EXPECT_EQ(wanted.count(), 0);
    QTest::mouseClick(&part<QToolButton>(*rows()[1], "remove_recent"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return recent.jobs().size() == 1; }));
    ASSERT_TRUE(QTest::qWaitFor([&] { return rows().size() == 1; }));
    QTest::keyClick(rows()[0], Qt::Key_Delete);
    ASSERT_TRUE(QTest::qWaitFor([&] { return recent.jobs().empty(); }));
}

TEST_F(ShownStart, OpensAnExample) {
    QSignalSpy wanted(&page, &StartPage::job_wanted);
    auto& card = part<ExampleCard>(page, "example_demo");
    EXPECT_EQ(card.accessibleName(), ExampleCard::words("demo.yaml").title);
    QTest::mouseClick(&card, Qt::LeftButton);
    QTest::keyClick(&part<ExampleCard>(page, "example_townhouse"), Qt::Key_Return);
    ASSERT_EQ(wanted.count(), 2);
    EXPECT_EQ(wanted[0][0].toString(), scenarios + "/demo.yaml");
    EXPECT_EQ(wanted[1][0].toString(), scenarios + "/townhouse.yaml");
    // Six of the shipped ones: with more, the drills below would be out of sight.
    ASSERT_GT(QDir(scenarios).entryList({"*.yaml"}).size(), 6);
    EXPECT_EQ(page.findChildren<ExampleCard*>().size(), 6);
}

TEST_F(ShownStart, LeadsToTheOtherBeginnings) {
    QSignalSpy house(&page, &StartPage::new_house_wanted);
    QSignalSpy job(&page, &StartPage::open_wanted);
    QSignalSpy model(&page, &StartPage::model_wanted);
    for (const char* name : {"new_house", "open_job", "open_model"})
        QTest::mouseClick(&part<QPushButton>(page, name), Qt::LeftButton);
    EXPECT_EQ(house.count() + job.count() + model.count(), 3);
    EXPECT_EQ(house.count(), 1);
    EXPECT_EQ(model.count(), 1);
}

TEST_F(ShownStart, OffersWorkThatWasLeftBehind) {
    EXPECT_FALSE(part<QWidget>(page, "left_behind").isVisible());
    page.set_left_behind({"Elm Street 1", "Elm Street 2"});
    EXPECT_TRUE(part<QWidget>(page, "left_behind").isVisible());
    QSignalSpy back(&page, &StartPage::recover_wanted);
    QSignalSpy away(&page, &StartPage::discard_wanted);
    const auto recover = page.findChildren<QPushButton*>("recover");
    ASSERT_EQ(recover.size(), 2);
    QTest::mouseClick(recover[1], Qt::LeftButton);
    QTest::mouseClick(page.findChildren<QPushButton*>("discard")[0], Qt::LeftButton);
    ASSERT_EQ(back.count() + away.count(), 2);
    EXPECT_EQ(back[0][0].toInt(), 1);
    EXPECT_EQ(away[0][0].toInt(), 0);
    page.set_left_behind({});
    EXPECT_FALSE(part<QWidget>(page, "left_behind").isVisible());
}

TEST_F(Start, DrawsAPictureOnceAndFindsItAgain) {
    const QString job = scenarios + "/wall-corner.yaml";
    ExamplePictures pictures(file("pictures"));
    QSignalSpy ready(&pictures, &ExamplePictures::ready);
    pictures.want({job, file("no such job.yaml")});
    QSignalSpy finished(&pictures, &ExamplePictures::finished);
    ASSERT_TRUE(finished.wait(patience));
    ASSERT_EQ(ready.count(), 1);
    EXPECT_EQ(ready[0][0].toString(), job);
    EXPECT_GT(ready[0][1].value<QImage>().width(), 400);
    const QDir kept(file("pictures"));
    ASSERT_EQ(kept.entryList({"*.png"}).size(), 1);
    const QString name = kept.filePath(kept.entryList({"*.png"})[0]);
    const QDateTime drawn = QFileInfo(name).lastModified();
    ExamplePictures later(file("pictures"));
    QSignalSpy ready_again(&later, &ExamplePictures::ready);
    later.want({job});
    ASSERT_TRUE(ready_again.wait(patience));
    EXPECT_EQ(QFileInfo(name).lastModified(), drawn);
}

TEST_F(Start, DrawsNoMoreExamplesUntilTheyAreWantedAgain) {
    const QStringList jobs{scenarios + "/wall-corner.yaml", scenarios + "/demo.yaml"};
    const auto drawn = [&] { return QDir(file("pictures")).entryList({"*.png"}).size(); };
    ExamplePictures pictures(file("pictures"));
    QSignalSpy finished(&pictures, &ExamplePictures::finished), ready(&pictures, &ExamplePictures::ready);
    for (const int wait : {0, 60}) {  // while it looks what there is, and while it draws
        finished.clear();
        pictures.want(jobs);
        QTest::qWait(wait);
        pictures.rest();
        ASSERT_TRUE(!finished.isEmpty() || finished.wait(patience));
        QTest::qWait(50);
        EXPECT_EQ(drawn(), 0) << wait;
    }
    EXPECT_TRUE(ready.isEmpty());
    finished.clear();
    pictures.want(jobs);
    ASSERT_TRUE(finished.wait(patience));
    EXPECT_EQ(drawn(), 2);
    EXPECT_EQ(ready.count(), 2);
}

TEST_F(Start, MakesANewHouse) {
    NewHouseForm form;
    form.show();
    form.set_folder(file("."));
    QTest::keyClicks(&part<QLineEdit>(form, "name"), "Pebble Court 3");
    QTest::mouseClick(&part<QAbstractButton>(form, "shape_1"), Qt::LeftButton);
    auto& length = part<QLineEdit>(form, "length");
    length.selectAll();
    QTest::keyClicks(&length, "52 ft 6 in");
    part<QComboBox>(form, "garage").setCurrentIndex(2);
    part<QComboBox>(form, "foundation").setCurrentIndex(1);
    part<QCheckBox>(form, "animal_bat").setChecked(true);
    EXPECT_DOUBLE_EQ(form.house().length, 630 * 0.0254);
    EXPECT_EQ(form.house().shape, NewHouse::Shape::l);
    QSignalSpy wanted(&form, &NewHouseForm::job_wanted);
    QTest::mouseClick(&part<QPushButton>(form, "make"), Qt::LeftButton);
    ASSERT_TRUE(wanted.wait(patience));
    EXPECT_EQ(files(), 2);
    const Job job = read_job(wanted[0][0].toString().toStdString(), RunContext(), Make::solids);
    EXPECT_EQ(job.name, "Pebble Court 3");
    EXPECT_FALSE(job.surveyed.empty());
    EXPECT_FALSE(trace(job.survey, {}, RunContext()).paths.empty());
    EXPECT_EQ(std::ranges::count(job.pests, "bat", &Pest::id), 1);
    for (const char* room :
         {"garage", "kitchen", "living-room", "hall", "main-bedroom", "bedroom-2", "bedroom-3", "bath", "main-bath"})
        EXPECT_EQ(std::ranges::count(job.survey.spaces, room, &Space::id), 1) << room;
    // The next house begins with no answers; of the same name it finds the files.
    EXPECT_TRUE(part<QLineEdit>(form, "name").text().isEmpty());
    QTest::keyClicks(&part<QLineEdit>(form, "name"), "Pebble Court 3");
    form.make();
    ASSERT_TRUE(QTest::qWaitFor([&] { return fault_of(form, "folder").contains("pebble-court-3.yaml"); }));
    EXPECT_EQ(wanted.count(), 1);
}

TEST_F(Start, AnswersStayWhenTheFormIsClosed) {
    NewHouseForm form;
    form.open();
    QTest::keyClicks(&part<QLineEdit>(form, "name"), "Pebble Court 3");
    part<QComboBox>(form, "stories").setCurrentIndex(1);
    part<QComboBox>(form, "bedrooms").setCurrentIndex(4);
    QTest::keyClick(&form, Qt::Key_Escape);
    EXPECT_FALSE(form.isVisible());
    form.open();
    EXPECT_EQ(part<QLineEdit>(form, "name").text(), "Pebble Court 3");
    EXPECT_EQ(form.house().bedrooms, 4);
    EXPECT_TRUE(part<QComboBox>(form, "floor").isVisible());
    QTest::mouseClick(&part<QPushButton>(form, "afresh"), Qt::LeftButton);
    EXPECT_TRUE(part<QLineEdit>(form, "name").text().isEmpty());
    EXPECT_EQ(form.house().stories, 1);
    EXPECT_EQ(form.house().bedrooms, NewHouse().bedrooms);
}

TEST_F(Start, TellsWhatCannotBeReadBesideTheField) {
    NewHouseForm form;
    form.show();
    form.set_folder(file("."));
    EXPECT_EQ(fault_of(form, "name"), "");  // not before there was a chance to answer
    auto& length = part<QLineEdit>(form, "length");
    length.selectAll();
    QTest::keyClicks(&length, "forty");
    EXPECT_TRUE(fault_of(form, "length").contains("46 ft"));
    QTest::mouseClick(&part<QPushButton>(form, "make"), Qt::LeftButton);
    EXPECT_NE(fault_of(form, "name"), "");
    length.selectAll();
    QTest::keyClicks(&length, "2 ft");
    EXPECT_TRUE(fault_of(form, "length").contains("5 m"));
    length.selectAll();
    QTest::keyClicks(&length, "40 ft");
    EXPECT_EQ(fault_of(form, "length"), "");
    QTest::mouseClick(&part<QAbstractButton>(form, "shape_4"), Qt::LeftButton);
    auto& corners = part<QPlainTextEdit>(form, "corners");
    corners.setPlainText("0 ft, 0 ft\n40 ft, 0 ft\n40, 28 ft");
    EXPECT_TRUE(fault_of(form, "corners").contains("Line 3"));
    corners.setPlainText("0 ft, 0 ft\n40 ft, 0 ft\n40 ft, 28 ft\n0 ft, 28 ft");
    EXPECT_EQ(fault_of(form, "corners"), "");
    part<QComboBox>(form, "garage").setCurrentIndex(1);
    EXPECT_NE(fault_of(form, "garage"), "");
    EXPECT_EQ(files(), 0);
}

}  // namespace
}  // namespace seamward::viewer::test
