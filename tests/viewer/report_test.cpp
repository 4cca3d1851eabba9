// SPDX-License-Identifier: GPL-3.0-or-later
// Reports from the window against those of the command line.
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalSpy>
#include <algorithm>

#include "panels/report_dialog.h"
#include "tests/support/run_program.h"
#include "tests/viewer/whole_window_fixture.h"

namespace seamward::viewer {
namespace {

using test::small_job;

class WindowReport : public test::WholeWindowFixture {
protected:
    /// Writes it and waits; what was left out, or nothing when it failed.
    std::optional<QStringList> written(const QString& name, const ReportSettings& settings = {}) {
        QSignalSpy done(&window->report(), &ReportDocument::written);
        QSignalSpy failed(&window->report(), &ReportDocument::failed);
        const QString asked = answering([](QWidget& box) { dynamic_cast<QDialog&>(box).reject(); },
                                        [&] {
                                            window->report().write(folder.filePath(name), settings);
                                            EXPECT_TRUE(QTest::qWaitFor([&] { return done.count() + failed.count() > 0; }, soon));
                                            QApplication::processEvents();
                                        });
        fault = failed.isEmpty() ? QString() : failed[0][0].value<OpenFault>().text;
        EXPECT_EQ(asked, failed.isEmpty() ? "report_written" : "fault");
        if (done.isEmpty()) return std::nullopt;
        return done[0][1].toStringList();
    }
    QString fault;
};

TEST_F(WindowReport, IsWhatTheCommandWrites) {
    open(own_demo());
    for (const auto& [audience, language] :
         {std::pair(Audience::homeowner, Language::spanish), {Audience::crew, Language::english}}) {
        const ReportSettings settings{.audience = audience, .language = language, .lengths = seamward::Lengths::millimeters};
        EXPECT_EQ(written("window.html", settings), QStringList());
        const std::string command = std::string(SEAMWARD_PROGRAM) + " report " +
                                    folder.filePath("scenarios/demo.yaml").toStdString() + " --for " + audience_id(audience) +
                                    " --lang " + (language == Language::spanish ? "es" : "en") + " --lengths mm -o " +
                                    folder.filePath("command.html").toStdString();
        ASSERT_EQ(seamward::test::run_shell(command).exit_code, 0) << command;
        EXPECT_GT(content(folder.filePath("window.html")).size(), 100'000);
        EXPECT_TRUE(content(folder.filePath("window.html")) == content(folder.filePath("command.html"))) << command;
    }
}

TEST_F(WindowReport, HasWhatIsNotSavedYet) {
    open(write("job.yaml", small_job));
    ASSERT_TRUE(window->survey().change(ChangeGap{.id = "a", .shape = ShapeText{"slot", "12.3 mm", std::nullopt}}));
    ASSERT_TRUE(wait_idle());
    ASSERT_TRUE(window->survey().is_modified());
    ASSERT_EQ(written("unsaved.html", {.lengths = seamward::Lengths::millimeters}), QStringList());
    EXPECT_TRUE(content(folder.filePath("unsaved.html")).contains("12.3 mm"));
    EXPECT_EQ(content(window->document().path()), small_job);
}

TEST_F(WindowReport, TellsWhatIsNotInItAndWhyThereIsNone) {
    open(write("job.yaml", QByteArray(small_job).replace("at: [0 m", "photo: none.jpg, at: [0 m")));
    EXPECT_EQ(written("photo.html"), QStringList("none.jpg cannot be shown as a photo."));
    EXPECT_FALSE(written("report.txt"));
    EXPECT_TRUE(fault.contains("report.txt")) << fault.toStdString();
    EXPECT_FALSE(written("no such folder/report.html"));
    EXPECT_TRUE(fault.contains("no such folder/report.html")) << fault.toStdString();
    EXPECT_FALSE(window->report().is_busy());
}

TEST_F(WindowReport, OfASheetHasTheJob) {
    open(write("job.yaml", small_job));
    ASSERT_EQ(written("sheet.html", {.audience = Audience::survey}), QStringList());
    EXPECT_TRUE(content(folder.filePath("sheet.html")).contains("bark-scorpion"));
    ASSERT_EQ(written("tables.xlsx"), QStringList());
    EXPECT_TRUE(content(folder.filePath("tables.xlsx")).startsWith("PK"));
}

TEST_F(WindowReport, IsAskedForFromTheMenu) {
    open(write("job.yaml", small_job));
    const QList<QAction*> actions = window->findChildren<QAction*>();
    const auto write_a_report = std::find_if(actions.begin(), actions.end(),
                                             [](const QAction* action) { return action->text() == "&Write a report..."; });
    ASSERT_NE(write_a_report, actions.end());
    ASSERT_TRUE((*write_a_report)->isEnabled());
    QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    QSignalSpy done(&window->report(), &ReportDocument::written);
    int asked = 0;
    QTimer look;
    QObject::connect(&look, &QTimer::timeout, [&] {
        QWidget* box = QApplication::activeModalWidget();
        if (auto* dialog = qobject_cast<ReportDialog*>(box); dialog != nullptr && asked == 0) {
            EXPECT_EQ(dialog->settings().language, Language::english);  // as the window
            dialog->choose({.audience = Audience::builder, .language = Language::spanish}, "html");
            asked = 1;
            dialog->accept();
        } else if (auto* file = qobject_cast<QFileDialog*>(box); file != nullptr && asked == 1) {
            asked = 2;
            file->selectFile(folder.filePath("asked.html"));
            QMetaObject::invokeMethod(file, "accept", Qt::QueuedConnection);
        }
    });
    look.start(5);
    (*write_a_report)->trigger();
    look.stop();
    EXPECT_EQ(asked, 2);
    ASSERT_TRUE(QTest::qWaitFor([&] { return done.count() == 1; }, soon));
    EXPECT_TRUE(content(folder.filePath("asked.html")).contains("<html lang=\"es\""));
    auto& box = part<QMessageBox>("report_written");
    EXPECT_TRUE(box.text().contains("asked.html"));
    box.reject();
}

TEST_F(WindowReport, AsksOnlyWhatMatters) {
    ReportDialog dialog;
    auto& audience = *dialog.findChild<QComboBox*>("report_audience");
    auto& paper = *dialog.findChild<QComboBox*>("report_paper");
    EXPECT_EQ(audience.count(), 5);
    const ReportSettings chosen{
        .audience = Audience::diy, .language = Language::spanish, .lengths = seamward::Lengths::millimeters, .paper = Paper::a4};
    dialog.choose(chosen, "pdf");
    EXPECT_EQ(dialog.settings().audience, Audience::diy);
    EXPECT_EQ(dialog.settings().language, Language::spanish);
    EXPECT_EQ(dialog.settings().lengths, seamward::Lengths::millimeters);
    EXPECT_EQ(dialog.settings().paper, Paper::a4);
    EXPECT_EQ(dialog.ending(), "pdf");
    EXPECT_TRUE(audience.isEnabled());
    EXPECT_TRUE(paper.isEnabled());
    dialog.choose(chosen, "xlsx");  // tables are the same for all
    EXPECT_FALSE(audience.isEnabled());
    EXPECT_FALSE(paper.isEnabled());
}

}  // namespace
}  // namespace seamward::viewer
