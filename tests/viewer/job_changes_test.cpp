// SPDX-License-Identifier: GPL-3.0-or-later
// What the window shows when another job, or the same with other gaps, takes the place of the one before.
#include <QProcess>
#include <QPushButton>

#include "panels/closings_list.h"
#include "whole_window_fixture.h"

namespace seamward::viewer::test {
namespace {

const QByteArray no_places =
    "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\n"
    "gaps: [{id: a, between: [yard, den], hole: {diameter: 3 mm}}]\npests: [bark-scorpion]\n";

class JobChanges : public WholeWindowFixture {
protected:
    SurveyPanel& panel() { return *window->findChild<SurveyPanel*>(); }
    /// The model of a shipped job and the job that `seamward find` makes of it.
    QString job_on_model() {
        open_shipped("wall-corner.yaml");
        EXPECT_TRUE(window->save_solids(folder.filePath("corner.glb")));
        return found("corner.glb", {"--room", "kitchen=1,1.5,1"});
    }
    QString found(const QString& model, QStringList more) {
        const QString job = folder.filePath("found.yaml");
        const int code = QProcess::execute(
            SEAMWARD_PROGRAM, QStringList{"find", model.startsWith('/') ? model : folder.filePath(model), "-o", job} + more);
        EXPECT_EQ(code, 0) << model.toStdString();
        return job;
    }
    AddGap new_gap(const std::string& name, const std::array<std::string, 2>& between, const Point& at) {
        AddGap add;
        add.name = name;
        add.between = between;
        add.shape = {"hole", "6 mm", std::nullopt};
        add.at = at;
        return add;
    }
};

TEST_F(JobChanges, ShowNoHouseOfTheJobBefore) {
    open_shipped("demo.yaml");
    window->show_page(MainWindow::Page::closings);
    window->closings().tick_plan();
    ASSERT_TRUE(wait_idle());
    EXPECT_TRUE(canvas().scene().has_house());
    expect_marks();
    EXPECT_GT(canvas().scene().closings().size(), 10U);

    open(write("small.yaml", small_job));
    EXPECT_FALSE(canvas().scene().has_house());
    EXPECT_TRUE(canvas().isVisible());
    EXPECT_FALSE(window->picture().tools().isVisible());
    expect_marks();
    canvas().setFocus();
    QTest::keyClick(&canvas(), Qt::Key_M);
    EXPECT_EQ(canvas().tool(), PictureCanvas::Tool::look);  // nothing to measure on

    open_shipped("wall-corner.yaml");
    EXPECT_TRUE(canvas().scene().has_house());
    EXPECT_TRUE(window->picture().tools().isVisible());
    canvas().set_cut(Cut{Side::south, 0.5});
    canvas().start_ride();
    EXPECT_TRUE(canvas().is_riding());

    open(write("nowhere.yaml", no_places));
    EXPECT_FALSE(canvas().is_riding());
    EXPECT_FALSE(canvas().isVisible());
    EXPECT_TRUE(part<QLabel>("no_places").isVisible());
    EXPECT_FALSE(window->picture().tools().isVisible());
    EXPECT_FALSE(part<QWidget>("ride_bar").isVisible());
    EXPECT_FALSE(window->picture().facts().isVisible());
    window->document().choose_way(0);
    window->show_page(MainWindow::Page::closings);

    open_shipped("wall-corner.yaml");
    EXPECT_EQ(canvas().cut(), std::nullopt);
    EXPECT_EQ(window->picture().tools().cut(), std::nullopt);
    EXPECT_TRUE(canvas().isVisible());
    expect_marks();
}

TEST_F(JobChanges, KeepTheMarkOnItsGap) {
    open(write("small.yaml", small_job));
    window->show_page(MainWindow::Page::survey);
    window->picture().show_gap(gap("c"));
    ASSERT_EQ(canvas().marked(), gap("c"));
    ASSERT_TRUE(window->survey().change(RemoveGap{"a"}));
    ASSERT_TRUE(wait_idle());
    EXPECT_EQ(gap("c").value, 1U);
    EXPECT_EQ(canvas().marked(), gap("c"));
    expect_marks();
    ASSERT_TRUE(window->survey().change(RemoveGap{"c"}));
    ASSERT_TRUE(wait_idle());
    EXPECT_EQ(canvas().marked(), std::nullopt);
    expect_marks();
}

TEST_F(JobChanges, KeepThePageWhereOneIs) {
    open(write("small.yaml", small_job));
    window->show_page(MainWindow::Page::closings);
    window->closings().tick_plan();
    window->show_page(MainWindow::Page::survey);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->survey().can_undo(); }, soon));
    EXPECT_TRUE(part<QToolButton>("page_survey").isChecked());
    EXPECT_TRUE(panel().isVisible());
    // What is taken back is shown.
    window->survey().undo();
    EXPECT_TRUE(part<QToolButton>("page_closings").isChecked());
    EXPECT_TRUE(window->closings().state().empty());
}

TEST_F(JobChanges, GiveATickBackWithItsGap) {
    open(write("small.yaml", small_job));
    const std::vector<ClosingState> nothing = window->closings().state();
    window->closings().tick(gap("a"), true);
    window->closings().tick(gap("c"), true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->survey().can_undo(); }, soon));
    ASSERT_TRUE(wait_idle());
    const std::vector<ClosingState> ticked = window->closings().state();
    ASSERT_EQ(ticked.size(), 2U);
    ASSERT_TRUE(window->survey().change(RemoveGap{"a"}));
    ASSERT_TRUE(wait_idle());
    ASSERT_EQ(window->closings().state().size(), 1U);
    window->survey().undo();
    ASSERT_TRUE(wait_idle());
    EXPECT_EQ(window->closings().state(), ticked);
    EXPECT_EQ(window->document().on_trial().size(), 2U);
    // Closed for good and open again, too.
    ASSERT_TRUE(window->survey().change(CloseGap{"a", "", "", ""}));
    ASSERT_TRUE(wait_idle());
    window->survey().undo();
    ASSERT_TRUE(wait_idle());
    EXPECT_EQ(window->closings().state(), ticked);
    // Another gap under that id was never ticked.
    ASSERT_TRUE(window->survey().change(RemoveGap{"a"}));
    ASSERT_TRUE(wait_idle());
    ASSERT_TRUE(window->survey().change(new_gap("a", {"yard", "den"}, {0, 0, 0})));
    ASSERT_TRUE(wait_idle());
    EXPECT_EQ(window->closings().state().size(), 1U);
    window->survey().undo();
    window->survey().undo();
    window->survey().undo();
    ASSERT_TRUE(wait_idle());
    EXPECT_EQ(window->closings().state(), nothing);
    EXPECT_FALSE(window->survey().is_modified());
}

TEST_F(JobChanges, TakeAPlaceFromThePicture) {
    open_shipped("wall-corner.yaml");
    window->show_page(MainWindow::Page::survey);
    const Point at{1, 0.2, 1};
    panel().begin_gap_at(at, "stucco");
    QPushButton& move = *panel().form().fields().move;
    const auto waits = [&] { return canvas().tool() == PictureCanvas::Tool::place; };
    move.setChecked(true);
    EXPECT_TRUE(waits());
    window->show_page(MainWindow::Page::ways);
    EXPECT_FALSE(waits());
    EXPECT_FALSE(move.isChecked());
    window->show_page(MainWindow::Page::survey);
    move.setChecked(true);
    canvas().setFocus();
    QTest::keyClick(&canvas(), Qt::Key_M);
    EXPECT_EQ(canvas().tool(), PictureCanvas::Tool::measure);
    EXPECT_FALSE(move.isChecked());
    move.setChecked(true);
    EXPECT_TRUE(waits());
    QTest::keyClick(&canvas(), Qt::Key_Escape);
    EXPECT_FALSE(move.isChecked());
    move.setChecked(true);
    Point placed{};
    QObject context;
    QObject::connect(&canvas(), &PictureCanvas::placed, &context, [&](const Point& to) { placed = to; });
    canvas().set_open(false);
    canvas().show_side(Side::south);
    click(canvas().camera().focus);
    EXPECT_GT(distance(placed, {}), 0.01);
    EXPECT_FALSE(waits());
    EXPECT_FALSE(move.isChecked());
}

TEST_F(JobChanges, ShowAJobOnAModel) {
    const QString path = job_on_model();
    ASSERT_FALSE(HasFailure());
    open(path);
    ASSERT_FALSE(HasFatalFailure());
    EXPECT_TRUE(canvas().scene().has_house());
    EXPECT_FALSE(canvas().can_ride());
    EXPECT_GT(window->document().job().survey.gaps.size(), 5U);
    canvas().set_open(false);
    canvas().show_side(Side::south);
    click(canvas().camera().focus);
    EXPECT_TRUE(window->picture().facts().isVisible());
    // A gap more: the solids are read again, and the picture stays where it was.
    QTest::keyClick(&canvas(), Qt::Key_Plus);
    const Cut cut{Side::east, 0.25};
    canvas().set_cut(cut);
    const Point eye = canvas().camera().eye();
    const auto& spaces = window->document().job().survey.spaces;
    ASSERT_GE(spaces.size(), 2U);
    ASSERT_TRUE(window->survey().change(new_gap("by hand", {spaces[0].id, spaces[1].id}, {1, -0.5, 1})));
    // A click that comes while they are read hits the house as it was.
    window->show_page(MainWindow::Page::survey);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window->document().is_busy(); }, soon));
    canvas().set_tool(PictureCanvas::Tool::place);
    click(canvas().camera().focus);
    canvas().set_tool(PictureCanvas::Tool::look);
    click(canvas().camera().focus);
    ASSERT_TRUE(wait_idle());
    EXPECT_LT(distance(canvas().camera().eye(), eye), 1e-9);
    EXPECT_EQ(canvas().cut(), cut);
    EXPECT_EQ(canvas().scene().callouts().empty(), false);
    window->survey().undo();
    ASSERT_TRUE(wait_idle());
    EXPECT_LT(distance(canvas().camera().eye(), eye), 1e-9);
}

TEST_F(JobChanges, ShowAModelOfOthers) {
    const QString path = found(source_folder + "/tests/models/building-small-a.glb", {});
    ASSERT_FALSE(HasFailure());
    open(path);
    ASSERT_FALSE(HasFatalFailure());
    EXPECT_TRUE(canvas().scene().has_house());
    canvas().show_side(Side::west);
    click(canvas().camera().focus);
    canvas().setFocus();
    QTest::keyClick(&canvas(), Qt::Key_R);
    EXPECT_FALSE(canvas().is_riding());
    EXPECT_TRUE(window->save_picture(folder.filePath("p.png")));
    EXPECT_TRUE(window->save_solids(folder.filePath("s.glb")));
}

}  // namespace
}  // namespace seamward::viewer::test
