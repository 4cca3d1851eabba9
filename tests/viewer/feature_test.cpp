// SPDX-License-Identifier: GPL-3.0-or-later
#include "feature_fixture.h"
#include "panels/facts_card.h"

namespace seamward::viewer::test {
namespace {

TEST_F(Features, AddAHoseBibbAtAPointOfTheWall) {
    const std::size_t gaps = window->document().job().survey.gaps.size();
    part<QPushButton>("new_feature").click();
    EXPECT_EQ(canvas().tool(), PictureCanvas::Tool::place);
    EXPECT_FALSE(part<QPushButton>("feature_add").isVisible());
    panel().take_point({14.8, 12.022, 0.4}, "stucco of north wall");
    EXPECT_EQ(canvas().tool(), PictureCanvas::Tool::look);
    EXPECT_TRUE(part<QLabel>("feature_place").text().startsWith("North wall, 3.2 m"));
    EXPECT_FALSE(offers("outlet"));
    EXPECT_FALSE(offers("recessed-light"));
    choose("hose-bibb");
    EXPECT_EQ(part<QLineEdit>("feature_name").text(), "hose bibb by the primary bath");
    EXPECT_EQ(form().findChildren<SizeField*>("feature_width").size(), 2);
    type("feature_along", "10 ft 6 in");
    add();
    EXPECT_TRUE(form().isHidden());
    const std::string entry = inserted();
    EXPECT_NE(entry.find("{id: hose-bibb-by-the-primary-bath, type: hose-bibb, name: \"hose bibb by the primary bath\", "
                         "on: north-wall, along: 10 ft 6 in, up: 0.4 m}"),
              std::string::npos)
        << entry;
    EXPECT_EQ(window->document().job().survey.gaps.size(), gaps + 2);
    EXPECT_DOUBLE_EQ(clear_width(gap_of("hose-bibb-by-the-primary-bath-outside").shape), 0.003);
    EXPECT_DOUBLE_EQ(clear_width(gap_of("hose-bibb-by-the-primary-bath-inside").shape), 0.002);
    EXPECT_EQ(gap_of("hose-bibb-by-the-primary-bath-inside").evidence.how, Evidence::How::assumed);
    EXPECT_EQ(panel().list().chosen(), "hose-bibb-by-the-primary-bath-outside");
    EXPECT_EQ(content(house_path()), house_before);  // until it is saved
    window->survey().undo();
    ASSERT_TRUE(wait_idle());
    EXPECT_EQ(house_now(), house_before.toStdString());
    EXPECT_FALSE(window->survey().is_modified());
    EXPECT_FALSE(window->survey().can_undo());
    window->survey().redo();
    ASSERT_TRUE(wait_idle());
    ASSERT_EQ(window->survey().save(), SurveyDocument::Saved::done);
    EXPECT_EQ(content(house_path()).toStdString(), house_now());
    EXPECT_NE(content(house_path()), house_before);
}

TEST_F(Features, ClickTheHouseAndTheChangedWidthsCountAsMeasured) {
    const QByteArray job_before = content(folder.filePath("scenarios/demo.yaml"));
    canvas().show_side(Side::north);
    part<QPushButton>("new_feature").click();
    const QPoint middle(canvas().width() / 2, canvas().height() / 2);
    for (int i = 0; i < 400 && part<QPushButton>("feature_show").isChecked(); ++i)
        QTest::mouseClick(&canvas(), Qt::LeftButton, Qt::NoModifier, middle + QPoint((i % 20 - 10) * 9, (i / 20 - 4) * 5));
    ASSERT_TRUE(part<QLabel>("feature_place").text().contains("up")) << part<QLabel>("feature_place").text().toStdString();
    panel().take_point({14.8, 12.022, 0.4}, "");
    choose("hose-bibb");
    form().findChildren<SizeField*>("feature_width").at(0)->type("1/4 in");
    panel().take_point({14.6, 12.022, 0.5}, "");  // moved; what was typed stays
    add();
    EXPECT_EQ(canvas().marked(), gap("hose-bibb-by-the-primary-bath-outside"));
    const Gap& outside = gap_of("hose-bibb-by-the-primary-bath-outside");
    EXPECT_NEAR(clear_width(outside.shape), 0.00635, 1e-9);
    EXPECT_EQ(outside.evidence.how, Evidence::How::measured);
    EXPECT_EQ(gap_of("hose-bibb-by-the-primary-bath-inside").evidence.how, Evidence::How::assumed);
    EXPECT_NE(inserted().find("outside: {gap: 1/4 in, evidence: {how: measured}}}"), std::string::npos) << inserted();
    window->survey().undo();  // the feature and its widths
    ASSERT_TRUE(wait_idle());
    EXPECT_FALSE(window->survey().can_undo());
    EXPECT_EQ(window->survey().text(), job_before.toStdString());
    EXPECT_EQ(house_now(), house_before.toStdString());
}

TEST_F(Features, AddARegisterAndALightInARoom) {
    panel().begin_feature_at({4.3, 9.3, 2.74}, "kitchen/ceiling");
    choose("supply-register");
    EXPECT_TRUE(part<QLabel>("feature_place").text().startsWith("Ceiling, kitchen, "));
    add();
    EXPECT_NE(
        inserted().find("type: supply-register, name: \"supply register boot, kitchen\", on: ceiling, at: [4.2975 m, 9.2975 m]"),
        std::string::npos)
        << inserted();
    panel().begin_feature_at({5.3, 11.2, 2.74}, "kitchen/ceiling");
    type("feature_along", "8 ft");
    choose("recessed-light");
    add();
    const Gap& light = gap_of("recessed-light-kitchen");
    EXPECT_EQ(light.feature, "recessed-light");
    EXPECT_NEAR(light.at->y, 11.2, 0.2);
    EXPECT_NEAR(light.at->x, 2.6635 + 8 * 0.3048, 0.2);
}

TEST_F(Features, SayWhyThatCannotBe) {
    panel().begin_feature_at({6, 12.022, 0.4}, "north-wall/stucco");
    choose("hose-bibb");
    type("feature_along", "12 m");  // under the kitchen window is room for it, but not beside its frame
    type("feature_up", "1.7 m");
    QSignalSpy failed(&window->survey(), &SurveyDocument::edit_failed);
    part<QPushButton>("feature_add").click();
    ASSERT_TRUE(!failed.isEmpty() || failed.wait(soon));
    EXPECT_TRUE(form().isVisible());
    auto* fault = form().findChild<FaultLabel*>();
    EXPECT_TRUE(fault->isVisible());
    EXPECT_TRUE(fault->text().contains("move it")) << fault->text().toStdString();
    EXPECT_FALSE(fault->text().contains("yaml")) << fault->text().toStdString();
    EXPECT_EQ(house_now(), house_before.toStdString());
    type("feature_along", "40 m");
    part<QPushButton>("feature_add").click();
    QTRY_VERIFY_WITH_TIMEOUT(fault->text().contains("past the end"), soon);
    panel().take_point({3, -3, -0.15}, "driveway");
    EXPECT_TRUE(fault->text().contains("Nothing can be added there"));
    type("feature_along", "3.2 m");
    type("feature_up", "0.4 m");
    add();
    EXPECT_TRUE(window->survey().can_undo());
    EXPECT_TRUE(form().isHidden());
}

TEST_F(Features, BeginAtTheCardOfAPartAndNotInATypedSurvey) {
    FactsCard& card = window->picture().facts();
    const auto& parts = window->document().solids()->parts;
    const auto stucco = std::ranges::find(parts, "north-wall/stucco", &Part::id);
    card.show_part(static_cast<std::uint32_t>(stucco - parts.begin()), {14.8, 12.022, 0.4});
    window->show_page(MainWindow::Page::ways);
    part<QPushButton>("facts_feature").click();
    EXPECT_TRUE(form().isVisible());
    EXPECT_TRUE(part<QLabel>("feature_place").text().startsWith("North wall"));
    part<QPushButton>("feature_cancel").click();
    EXPECT_TRUE(form().isHidden());
    EXPECT_FALSE(window->survey().can_undo());
    EXPECT_TRUE(part<QPushButton>("new_feature").isEnabled());
    open(write("typed.yaml",
               "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\n"
               "gaps: [{id: vent, between: [yard, den], hole: {diameter: 9 mm}, at: [1 m, 2 m, 0 m]}]\npests: [house-mouse]\n"));
    EXPECT_FALSE(part<QPushButton>("new_feature").isEnabled());
    EXPECT_TRUE(part<QPushButton>("new_feature").toolTip().contains("no described house"));
}

TEST_F(Features, StayReadableWhereThereIsLittleRoom) {
    for (const int percent : {100, 150}) {
        preferences.set_text_size(percent);
        wear(*static_cast<QApplication*>(QApplication::instance()), preferences);
        SurveyPanel alone(window->document(), window->survey());
        alone.resize(400, 650);
        alone.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&alone));
        alone.begin_feature_at({14.8, 12.022, 0.4}, "");
        alone.findChild<QListWidget*>("feature_types")->setCurrentRow(0);
        const auto fields = alone.feature_form().findChildren<SizeField*>();
        ASSERT_EQ(fields.size(), 4);
        for (const SizeField* field : fields)
            QTRY_VERIFY_WITH_TIMEOUT(field->line().height() >= field->line().minimumSizeHint().height(), soon);
        EXPECT_LE(alone.minimumSizeHint().width(), 400);
        QTest::keyClick(&alone.feature_form(), Qt::Key_Escape);
        EXPECT_TRUE(alone.feature_form().isHidden());
    }
}

}  // namespace
}  // namespace seamward::viewer::test
