// SPDX-License-Identifier: GPL-3.0-or-later
// No two fields, buttons or menus that can be seen at the same time want the same letter.
#include "panels/model_form.h"
#include "panels/new_house_form.h"
#include "panels/preferences_dialog.h"
#include "panels/shape_button.h"
#include "panels/space_dialog.h"
#include "panels/survey_panel.h"
#include "tests/viewer/cut_off.h"
#include "tests/viewer/whole_window_fixture.h"

namespace seamward::viewer::test {
namespace {

class Mnemonics : public WholeWindowFixture {
protected:
    void expect_apart(const std::string& where) {
        QApplication::processEvents();
        EXPECT_EQ(mnemonics_alike(*window, Menus::counted).join("\n").toStdString(), "") << where;
    }
    static void expect_apart_in(QWidget& dialog, const std::string& where) {
        dialog.show();
        QApplication::processEvents();
        ASSERT_TRUE(dialog.isVisible());
        EXPECT_EQ(mnemonics_alike(dialog).join("\n").toStdString(), "") << where;
    }
    SurveyPanel& panel() { return part<SurveyPanel>("survey_panel"); }
};

TEST_F(Mnemonics, AreApartInEveryStateOfTheGapForm) {
    open(write("small.yaml", small_job));
    window->show_page(MainWindow::Page::survey);
    expect_apart("no gap");
    GapFields& fields = panel().form().fields();
    const auto each_shape = [&](const std::string& where) {
        for (const int shape : {GapFields::slot, GapFields::hole, GapFields::ring, GapFields::mesh}) {
            fields.shape_choice->setCurrentIndex(shape);
            fields.follow_shape();
            expect_apart(where + std::to_string(shape));
        }
    };
    panel().choose_gap(gap("a"));
    EXPECT_TRUE(fields.shape_choice->isVisible());
    each_shape("a gap of the job, shape ");
    panel().begin_gap_at({1, 0, 0}, "stucco");
    EXPECT_TRUE(fields.add->isVisible());
    each_shape("a new gap, shape ");
    part<QPushButton>("new_gap").click();
    each_shape("a new gap without a place, shape ");
}

TEST_F(Mnemonics, AreApartForADescribedHouse) {
    open_shipped("demo.yaml");
    for (const auto page : {MainWindow::Page::ways, MainWindow::Page::closings, MainWindow::Page::survey}) {
        window->show_page(page);
        ASSERT_TRUE(wait_idle());
        expect_apart("page " + std::to_string(static_cast<int>(page)));
    }
    panel().choose_gap(gap("hose-bibb-north"));
    expect_apart("a gap of the house");
    part<QPushButton>("gap_feature").click();
    EXPECT_TRUE(panel().feature_form().isVisible());
    expect_apart("a feature that is there");
    panel().begin_feature_at({14.8, 12.022, 0.4}, "");
    part<QListWidget>("feature_types").setCurrentRow(0);
    expect_apart("a new feature");
}

TEST_F(Mnemonics, AreApartInDialogs) {
    SpaceDialog space;
    expect_apart_in(space, "a space");
    PreferencesDialog settings(preferences);
    expect_apart_in(settings, "settings");
    ModelForm model;
    expect_apart_in(model, "a builder's model");
    NewHouseForm house;
    expect_apart_in(house, "a new house");
    const QList<ShapeButton*> shapes = house.findChildren<ShapeButton*>();
    EXPECT_GE(shapes.size(), 3);
    for (ShapeButton* shape : shapes) {
        shape->click();
        expect_apart_in(house, "a new house, " + shape->text().toStdString());
    }
}

}  // namespace
}  // namespace seamward::viewer::test
