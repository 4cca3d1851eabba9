// SPDX-License-Identifier: GPL-3.0-or-later
// The window as a whole: opening, editing, taking back, saving, leaving, and what is left behind.
#include <unistd.h>

#include <QFileInfo>
#include <QMessageBox>
#include <QProcess>
#include <QPushButton>
#include <iostream>

#include "panels/closings_list.h"
#include "whole_window_fixture.h"

namespace seamward::viewer::test {
namespace {

/// Root may do everything; while this lives, the process is somebody else.
class AsNobody {
public:
    AsNobody() : root_(geteuid() == 0) {
        if (root_ && seteuid(65534) != 0) throw std::runtime_error("root cannot be anybody else");
    }
    ~AsNobody() {
        if (root_) (void)!seteuid(0);
    }
    AsNobody(const AsNobody&) = delete;
    AsNobody& operator=(const AsNobody&) = delete;

private:
    bool root_;
};

class WholeWindow : public WholeWindowFixture {
protected:
    QAction& action(const QKeySequence& keys) {
        for (QAction* one : window->findChildren<QAction*>()) {
            if (one->shortcut() == keys) return *one;
        }
        throw std::runtime_error("no action");
    }
    void undo() { take(QKeySequence::Undo); }
    void redo() { take(QKeySequence::Redo); }
    void take(QKeySequence::StandardKey keys) {
        ASSERT_TRUE(action(keys).isEnabled());
        action(keys).trigger();
        ASSERT_TRUE(wait_idle());
    }
    GapFields& fields() { return window->findChild<SurveyPanel*>()->form().fields(); }
    void edit_width(const std::string& id, const QString& width) {
        window->show_page(MainWindow::Page::survey);
        window->findChild<SurveyPanel*>()->choose_gap(gap(id));
        QLineEdit& line = fields().width->line();
        line.setFocus();
        line.selectAll();
        QTest::keyClicks(&line, width);
        QTest::keyClick(&line, Qt::Key_Return);
        ASSERT_TRUE(wait_idle());
        EXPECT_FALSE(fields().width->is_wrong()) << fields().width->findChild<QLabel*>("size_words")->text().toStdString();
        EXPECT_EQ(line.text(), width) << id;
    }
    /// By the space bar in the list of closings, and until the history has it.
    void tick(const std::string& id) {
        window->show_page(MainWindow::Page::closings);
        auto* list = window->findChild<ClosingsList*>();
        QListWidgetItem* row = list->row_of(gap(id));
        ASSERT_NE(row, nullptr) << id;
        list->setCurrentItem(row);
        const QString before = window->survey().undo_text();
        bool told = false;
        QObject context;
        QObject::connect(&window->survey(), &SurveyDocument::history_changed, &context, [&] { told = true; });
        QTest::keyClick(list, Qt::Key_Space);
        ASSERT_TRUE(QTest::qWaitFor([&] { return told; }, soon));
        ASSERT_TRUE(wait_idle());
    }
    std::vector<std::string> ticked() {
        std::vector<std::string> ids;
        for (const ClosingState& one : window->closings().state()) {
            if (one.ticked) ids.push_back(one.gap);
        }
        return ids;
    }
    double width_of(const std::string& id) { return clear_width(window->document().filed()->survey[gap(id)].shape); }
    /// `taken` is set once another job was opened.
    void connect_opened(bool& taken) {
        QObject::connect(&window->document(), &JobDocument::opened, window.get(), [&taken] { taken = true; });
    }
    QString answering_with(QMessageBox::StandardButton button, const std::function<void()>& act) {
        return answering([button](QWidget& box) { qobject_cast<QMessageBox*>(&box)->button(button)->click(); }, act);
    }
};

TEST_F(WholeWindow, KeepsOneHistoryOfTicksAndEdits) {
    const QString path = own_demo();
    open(path);
    const QByteArray original = content(path);
    EXPECT_EQ(window->survey().text(), original.toStdString());
    // A gap picked in the picture is the one that the survey changes.
    window->show_page(MainWindow::Page::survey);
    canvas().show_side(Side::north);
    const GapIndex bibb = gap("hose-bibb-north");
    const double before = width_of("hose-bibb-north");
    window->picture().show_gap(bibb);
    part<QPushButton>("facts_act").click();
    EXPECT_EQ(fields().name->text(), QString::fromStdString(window->document().job().survey[bibb].label()));

    tick("hose-bibb-north");
    edit_width("cable-tv-north", "7.7 mm");
    tick("line-set-north");
    const std::vector<std::string> ticks = ticked();
    EXPECT_EQ(ticks.size(), 2U);
    EXPECT_NEAR(width_of("cable-tv-north"), 0.0077, 1e-9);
    EXPECT_TRUE(window->isWindowModified());
    const std::string edited = window->survey().text();
    expect_marks();
    EXPECT_TRUE(action(QKeySequence::Undo).text().contains("ticks of closings"));

    undo();
    EXPECT_EQ(ticked(), std::vector<std::string>{"hose-bibb-north"});
    EXPECT_TRUE(action(QKeySequence::Undo).text().contains("cable", Qt::CaseInsensitive))
        << action(QKeySequence::Undo).text().toStdString();
    undo();
    EXPECT_EQ(window->survey().text(), original.toStdString());
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_EQ(ticked().size(), 1U);
    undo();
    EXPECT_TRUE(ticked().empty());
    EXPECT_FALSE(action(QKeySequence::Undo).isEnabled());
    expect_marks();
    EXPECT_NEAR(width_of("hose-bibb-north"), before, 1e-12);
    for (int i = 0; i < 3; ++i) redo();
    EXPECT_FALSE(action(QKeySequence::Redo).isEnabled());
    EXPECT_EQ(ticked(), ticks);
    EXPECT_EQ(window->survey().text(), edited);

    action(QKeySequence::Save).trigger();
    EXPECT_EQ(content(path).toStdString(), edited);
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_FALSE(action(QKeySequence::Save).isEnabled());
    open(path);
    EXPECT_EQ(window->survey().text(), edited);
    EXPECT_NEAR(width_of("cable-tv-north"), 0.0077, 1e-9);
    EXPECT_FALSE(action(QKeySequence::Undo).isEnabled());
}

TEST_F(WholeWindow, AsksBeforeUnsavedWorkGoes) {
    const QString path = write("job.yaml", small_job);
    open(path);
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_TRUE(window->windowTitle().contains("[*]"));
    edit_width("b", "6 mm");
    EXPECT_TRUE(window->isWindowModified());
    EXPECT_EQ(answering_with(QMessageBox::Cancel, [&] { EXPECT_FALSE(window->close()); }), "unsaved");
    EXPECT_TRUE(window->isVisible());
    EXPECT_EQ(answering_with(QMessageBox::Cancel, [&] { window->open(source_folder + "/scenarios/demo.yaml"); }), "unsaved");
    EXPECT_FALSE(window->document().is_busy());
    EXPECT_EQ(content(path), small_job);
    EXPECT_EQ(answering_with(QMessageBox::Save, [&] { EXPECT_TRUE(window->close()); }), "unsaved");
    EXPECT_TRUE(content(path).contains("6 mm"));
    EXPECT_FALSE(window->isVisible());

    make_window();
    open(path);
    edit_width("b", "7 mm");
    EXPECT_EQ(answering_with(QMessageBox::Discard, [&] { EXPECT_TRUE(window->close()); }), "unsaved");
    EXPECT_FALSE(content(path).contains("7 mm"));
    // Width half typed is unsaved work as well.
    make_window();
    open(path);
    window->show_page(MainWindow::Page::survey);
    window->findChild<SurveyPanel*>()->choose_gap(gap("b"));
    fields().width->line().setFocus();
    fields().width->line().selectAll();
    QTest::keyClicks(&fields().width->line(), "8 mm");
    EXPECT_EQ(answering_with(QMessageBox::Save, [&] { EXPECT_TRUE(window->close()); }), "unsaved");
    EXPECT_TRUE(content(path).contains("8 mm"));
}

/// This test runs once more as a program of its own, which is killed with work that it has not saved.
TEST_F(WholeWindow, FindsWorkAgainAfterAKill) {
    const QByteArray job_of_child = qgetenv("SEAMWARD_TEST_KILLED");
    if (!job_of_child.isEmpty()) {
        window.reset();
        qputenv("XDG_DATA_HOME", qgetenv("SEAMWARD_TEST_DATA"));
        make_window();
        open(QString::fromLocal8Bit(job_of_child));
        edit_width("hose-bibb-north", "9.9 mm");
        const auto kept = [] { return !QDir(DraftStore::usual_folder()).entryList({"*.draft"}, QDir::Files).isEmpty(); };
        ASSERT_TRUE(QTest::qWaitFor(kept, soon));
        std::cout << "kept" << std::endl;
        (void)QTest::qWaitFor([] { return false; }, soon);
        FAIL() << "nobody killed this";
    }
    const QString path = own_demo();
    const QByteArray original = content(path);
    const QByteArray data = qgetenv("XDG_DATA_HOME");
    const QString own_data = folder.filePath("data");
    QProcess child;
    QProcessEnvironment with = QProcessEnvironment::systemEnvironment();
    with.insert("SEAMWARD_TEST_KILLED", path);
    with.insert("SEAMWARD_TEST_DATA", own_data);
    child.setProcessEnvironment(with);
    child.setProcessChannelMode(QProcess::MergedChannels);
    child.start(QCoreApplication::applicationFilePath(), {"--gtest_filter=WholeWindow.FindsWorkAgainAfterAKill"});
    QByteArray said;
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return (said += child.readAll()).contains("kept") || child.state() == QProcess::NotRunning; }, soon));
    ASSERT_TRUE(said.contains("kept")) << said.toStdString();
    child.kill();
    ASSERT_TRUE(child.waitForFinished(soon));

    window.reset();
    qputenv("XDG_DATA_HOME", own_data.toLocal8Bit());
    make_window();
    EXPECT_TRUE(part<QWidget>("left_behind").isVisible());
    open(source_folder + "/scenarios/wall-corner.yaml");
    const ClosingsPlan& plan = window->closings().plan();
    edit_width(plan.survey()[plan.offers.front().gap].id, "4.321 mm");
    ASSERT_TRUE(window->isWindowModified()) << window->survey().text();
    action(QKeySequence(static_cast<int>(Qt::CTRL) | static_cast<int>(Qt::Key_B))).trigger();
    bool taken = false;
    connect_opened(taken);
    // Other work that is not saved does not go unasked.
    EXPECT_EQ(answering_with(QMessageBox::Cancel, [&] { part<QPushButton>("recover").click(); }), "unsaved");
    EXPECT_FALSE(window->document().is_busy());
    EXPECT_EQ(answering_with(QMessageBox::Discard, [&] { part<QPushButton>("recover").click(); }), "unsaved");
    ASSERT_TRUE(QTest::qWaitFor([&] { return taken && idle(); }, soon));
    EXPECT_EQ(window->document().path(), path);
    EXPECT_NEAR(width_of("hose-bibb-north"), 0.0099, 1e-9);
    EXPECT_TRUE(window->isWindowModified());
    EXPECT_TRUE(canvas().isVisible());
    EXPECT_TRUE(canvas().scene().has_house());
    EXPECT_EQ(content(path), original);
    const std::string text = window->survey().text();
    action(QKeySequence::Save).trigger();
    EXPECT_EQ(content(path).toStdString(), text);
    action(QKeySequence(static_cast<int>(Qt::CTRL) | static_cast<int>(Qt::Key_B))).trigger();
    EXPECT_FALSE(part<QWidget>("left_behind").isVisible());
    window.reset();
    EXPECT_TRUE(DraftStore::left_behind().empty());
    qputenv("XDG_DATA_HOME", data);
}

TEST_F(WholeWindow, SavesPictureAndSolidsOrSaysWhyNot) {
    open_shipped("wall-corner.yaml");
    const QString picture = folder.filePath("p.png");
    EXPECT_TRUE(window->save_picture(picture));
    EXPECT_EQ(QImage(picture).size(), canvas().image().size());
    const QString solids = folder.filePath("s.glb");
    EXPECT_TRUE(window->save_solids(solids));
    EXPECT_TRUE(content(solids).startsWith("glTF"));
    EXPECT_GT(QFileInfo(solids).size(), 10'000);

    QDir(folder.path()).mkpath("closed");
    const QString closed = folder.filePath("closed");
    QFile::setPermissions(folder.path(),
                          QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner | QFile::ReadOther | QFile::ExeOther);
    QFile::setPermissions(closed, QFile::ReadOwner | QFile::ExeOwner | QFile::ReadOther | QFile::ExeOther);
    for (const auto& [name, how] : {std::pair{"p.png", &MainWindow::save_picture},
                                    {"s.glb", &MainWindow::save_solids},
                                    {"f.ogv", &MainWindow::save_film}}) {
        const AsNobody nobody;
        bool done = true;
        EXPECT_EQ(answering_with(QMessageBox::Ok, [&] { done = ((*window).*how)(closed + '/' + name); }), "fault") << name;
        EXPECT_FALSE(done) << name;
    }
    EXPECT_TRUE(QDir(closed).isEmpty(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot));
    EXPECT_FALSE(canvas().is_riding());
}

TEST_F(WholeWindow, SaysThatASurveyCannotBeSaved) {
    const QString path = write("job.yaml", small_job);
    open(path);
    edit_width("b", "6 mm");
    QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::ExeOwner | QFile::ReadOther | QFile::ExeOther);
    {
        const AsNobody nobody;
        EXPECT_EQ(answering_with(QMessageBox::Ok, [&] { action(QKeySequence::Save).trigger(); }), "fault");
    }
    EXPECT_TRUE(window->isWindowModified());
    EXPECT_EQ(content(path), small_job);
    QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    action(QKeySequence::Save).trigger();
    EXPECT_FALSE(window->isWindowModified());
}

TEST_F(WholeWindow, KeepsTheOpenJobWhenAnotherIsBroken) {
    open_shipped("wall-corner.yaml");
    const QString title = window->windowTitle();
    const std::size_t ways = window->document().ways().paths.size();
    write("bad.yaml", "seamward: 1\nspaces: [\n");
    window->open(folder.filePath("bad.yaml"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->findChild<QDialog*>("fault") != nullptr; }, soon));
    window->findChild<QDialog*>("fault")->reject();
    EXPECT_EQ(window->windowTitle(), title);
    EXPECT_EQ(window->document().ways().paths.size(), ways);
    EXPECT_TRUE(canvas().scene().has_house());
    EXPECT_TRUE(canvas().isVisible());
    const ClosingsPlan& plan = window->closings().plan();
    tick(plan.survey()[plan.offers.front().gap].id);
    EXPECT_EQ(ticked().size(), 1U);
    undo();
    EXPECT_TRUE(ticked().empty());
}

}  // namespace
}  // namespace seamward::viewer::test
