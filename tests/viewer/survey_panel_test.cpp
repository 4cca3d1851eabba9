// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/survey_panel.h"

#include <QApplication>
#include <QImage>

#include "panels/space_dialog.h"
#include "survey_fixture.h"

namespace seamward::viewer::test {
namespace {

class SurveyPanels : public SurveyFixture {
protected:
    void SetUp() override {
        panel.resize(400, 800);
        panel.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&panel));
        QApplication::setActiveWindow(&panel);
    }
    template <class Made>
    Made& find(const char* name) {
        auto* made = panel.findChild<Made*>(name);
        if (made == nullptr) throw std::runtime_error(std::string("no ") + name);
        return *made;
    }
    [[nodiscard]] GapFields& fields() const { return panel.form().fields(); }
    static void type(SizeField& field, const QString& text) {
        field.line().setFocus();
        field.line().selectAll();
        QTest::keyClicks(&field.line(), text);
        QTest::keyClick(&field.line(), Qt::Key_Return);
    }
    [[nodiscard]] static QString words_under(const SizeField& field) { return field.findChild<QLabel*>("size_words")->text(); }

    SurveyPanel panel{document, survey};
};

TEST_F(SurveyPanels, ListGapsByWidthAndFindThem) {
    open_small();
    auto& rows = find<QListWidget>("gaps");
    ASSERT_EQ(rows.count(), 3);
    EXPECT_EQ(rows.item(0)->text(), "vent: 7/32 in (5.7 mm), measured, give or take 0.2 mm");
    EXPECT_EQ(rows.item(2)->text(), "joint under the screed: 1/16 in (1.59 mm), assumed");
    EXPECT_TRUE(find<QLabel>("gap_count").text().startsWith("3 gap"));
    EXPECT_TRUE(find<QLabel>("gap_count").text().endsWith("2 not measured"));
    QTest::keyClicks(&find<QLineEdit>("search_gaps"), "north bibb");
    ASSERT_EQ(rows.count(), 1);
    int chosen = 0;
    QObject::connect(&panel, &SurveyPanel::gap_chosen, [&](GapIndex) { ++chosen; });
    rows.setCurrentRow(0);
    ASSERT_EQ(chosen, 1);
    EXPECT_EQ(fields().name->text(), "hose bibb, north wall");
    EXPECT_EQ(fields().width->text(), "2.5 mm");
    panel.choose_gap(index("screed"));
    EXPECT_EQ(rows.count(), 3);
    EXPECT_EQ(chosen, 1);
    EXPECT_EQ(fields().width->text(), "1/16 in");
    find<QCheckBox>("unmeasured").setChecked(true);
    EXPECT_EQ(rows.count(), 2);
}

TEST_F(SurveyPanels, TakeAWidthInAnyUnit) {
    open_small();
    panel.choose_gap(index("bib"));
    act([&] { type(*fields().width, "3/8\""); });
    EXPECT_NEAR(clear_width(gap("bib").shape), 0.009525, 1e-12);
    EXPECT_NE(survey.text().find("ring: {width: 3/8\", around: 22 mm}, evidence: {how: measured}}  # by the tap"),
              std::string::npos);
    EXPECT_EQ(fields().width->text(), "3/8\"");
    EXPECT_TRUE(words_under(*fields().width).startsWith("3/8 in (9.53 mm), "));
    EXPECT_EQ(find<QListWidget>("gaps").item(0)->text().section(':', 0, 0), "hose bibb, north wall");
    act([&] { survey.undo(); });
    EXPECT_EQ(fields().width->text(), "2.5 mm");
}

TEST_F(SurveyPanels, CountATypedWidthAsMeasured) {
    open_small();
    panel.choose_gap(index("screed"));
    EXPECT_EQ(fields().how(), Evidence::How::assumed);
    act([&] { type(*fields().plus_minus, "1/32 in"); });
    EXPECT_EQ(gap("screed").evidence.how, Evidence::How::assumed);
    act([&] { type(*fields().width, "2 mm"); });
    EXPECT_EQ(gap("screed").evidence.how, Evidence::How::measured);
    EXPECT_NEAR(gap("screed").evidence.plus_minus, 0.0254 / 32, 1e-9);
    EXPECT_EQ(fields().how(), Evidence::How::measured);
    EXPECT_EQ(survey.undo_text(), "Undo: width of “joint under the screed”");
    // A length of it says nothing of its width.
    act([&] { survey.undo(); });
    EXPECT_EQ(fields().how(), Evidence::How::assumed);
    act([&] { type(*fields().second, "8 m"); });
    EXPECT_EQ(gap("screed").evidence.how, Evidence::How::assumed);
    // It can be said otherwise.
    act([&] { type(*fields().width, "3 mm"); });
    act([&] {
        fields().how_known->setCurrentIndex(2);
        emit fields().how_known->activated(2);
    });
    EXPECT_EQ(gap("screed").evidence.how, Evidence::How::assumed);
    EXPECT_NEAR(clear_width(gap("screed").shape), 0.003, 1e-12);
}

TEST_F(SurveyPanels, CountATypedWidthOfTheHouseAsMeasured) {
    open(scenarios + "demo.yaml");
    panel.choose_gap(index("top-plate-north"));
    EXPECT_EQ(fields().how(), Evidence::How::assumed);
    act([&] { type(*fields().width, "3/16 in"); });
    EXPECT_EQ(gap("top-plate-north").evidence.how, Evidence::How::measured);
    EXPECT_NEAR(gap("top-plate-north").evidence.plus_minus, 0.0254 / 8, 1e-9);
    EXPECT_NE(survey.text().find("{id: top-plate-north, evidence: {how: measured, plus_minus: 1/8 in}, "), std::string::npos);
}

TEST_F(SurveyPanels, KeepWhatWasTypedAndSayWhatIsWrong) {
    open_small();
    panel.choose_gap(index("bib"));
    type(*fields().width, "3");
    EXPECT_TRUE(fields().width->is_wrong());
    EXPECT_TRUE(words_under(*fields().width).contains("unit"));
    EXPECT_EQ(fields().width->text(), "3");
    EXPECT_FALSE(survey.can_undo());
    act([&] { survey.change(width("vent", "mesh", "5 mm")); });
    EXPECT_EQ(fields().width->text(), "3");
    act([&] { type(*fields().width, "3 mm"); });
    EXPECT_FALSE(fields().width->is_wrong());
    EXPECT_NEAR(clear_width(gap("bib").shape), 0.003, 1e-12);
}

TEST_F(SurveyPanels, ChangeEverythingOfAGap) {
    open_small();
    panel.choose_gap(index("screed"));
    const auto choose = [&](QComboBox* box, int row) {
        act([&] {
            box->setCurrentIndex(row);
            emit box->activated(row);
        });
    };
    choose(fields().how_known, 0);
    EXPECT_EQ(gap("screed").evidence.how, Evidence::How::measured);
    act([&] { type(*fields().plus_minus, "0.2 mm"); });
    EXPECT_NEAR(gap("screed").evidence.plus_minus, 0.0002, 1e-12);
    act([&] {
        fields().name->selectAll();
        QTest::keyClicks(fields().name, "weep joint");
        QTest::keyClick(fields().name, Qt::Key_Return);
    });
    EXPECT_EQ(gap("screed").name, "weep joint");
    act([&] {
        fields().note->setFocus();
        QTest::keyClicks(fields().note, "a dime goes in");
        panel.commit();
    });
    EXPECT_EQ(gap("screed").note, "a dime goes in");
    choose(fields().to, 2);
    EXPECT_EQ(gap("screed").between[1].value, 2U);
    choose(fields().shape_choice, GapFields::hole);
    EXPECT_TRUE(std::holds_alternative<Hole>(gap("screed").shape));
    fields().shape_choice->setCurrentIndex(GapFields::ring);
    emit fields().shape_choice->activated(GapFields::ring);
    EXPECT_TRUE(fields().second->is_wrong());  // a pipe is due
    act([&] { type(*fields().second, "3/4 in"); });
    EXPECT_TRUE(std::holds_alternative<Ring>(gap("screed").shape));
    EXPECT_NE(survey.text().find("# a card slips in"), std::string::npos);
    act([&] { fields().close->click(); });
    EXPECT_EQ(document.filed()->closed.size(), 1U);
    EXPECT_EQ(fields().width->text(), "1/16 in");
    act([&] { fields().close->click(); });
    EXPECT_TRUE(document.filed()->closed.empty());
}

TEST_F(SurveyPanels, AddMoveAndRemoveGaps) {
    open_small();
    QSignalSpy wants(&panel, &SurveyPanel::wants_point);
    panel.begin_gap_at({4.4, 8.9, 0.1}, "stucco");
    EXPECT_EQ(fields().name->text(), "gap in stucco");
    EXPECT_EQ(fields().side(0), "yard");  // as the nearest gap has it
    fields().add->click();
    EXPECT_TRUE(fields().width->is_wrong());
    EXPECT_FALSE(survey.can_undo());
    type(*fields().width, "1.5 mm");
    type(*fields().second, "2 m");
    act([&] { fields().add->click(); });
    EXPECT_EQ(gap("gap-in-stucco").evidence.how, Evidence::How::measured);
    EXPECT_NEAR(gap("gap-in-stucco").at->y, 8.9, 1e-12);
    EXPECT_EQ(find<QListWidget>("gaps").currentItem()->text().section(':', 0, 0), "gap in stucco");
    fields().move->click();
    EXPECT_EQ(wants.back()[0].toBool(), true);
    act([&] { panel.take_point({1, 2, 3}); });
    EXPECT_EQ(wants.back()[0].toBool(), false);
    EXPECT_NEAR(gap("gap-in-stucco").at->z, 3, 1e-12);
    act([&] { fields().remove->click(); });
    EXPECT_EQ(document.filed()->survey.gaps.size(), 3U);
    act([&] {
        while (survey.can_undo()) survey.undo();
    });
    EXPECT_EQ(survey.text(), small_job);
}

TEST_F(SurveyPanels, GoFromTheRowToTheWidthAndBackToNothing) {
    open_small();
    auto& rows = find<QListWidget>("gaps");
    rows.setFocus();
    rows.setCurrentRow(1);
    QTest::keyClick(&rows, Qt::Key_Return);
    EXPECT_TRUE(fields().width->line().hasFocus());
    QTest::keyClicks(&fields().width->line(), "7");
    fields().name->setText("typed and not entered");
    fields().name->setModified(true);
    // What is typed for one job is nothing for the next.
    const std::string other = std::string(small_job).replace(small_job.find("Larkspur 4"), 10, "Larkspur 5");
    open(write("other.yaml", other));
    EXPECT_FALSE(fields().isVisible());
    EXPECT_EQ(survey.text(), other);
    EXPECT_FALSE(survey.can_undo());
}

TEST_F(SurveyPanels, EnterWhatIsTypedWhenAnotherGapIsChosen) {
    open_small();
    panel.choose_gap(index("bib"));
    fields().note->setFocus();
    QTest::keyClicks(fields().note, "behind the tap");
    act([&] { panel.choose_gap(index("vent")); });
    EXPECT_EQ(gap("bib").note, "behind the tap");
    EXPECT_EQ(fields().note->toPlainText(), "");
}

TEST_F(SurveyPanels, LetGoOfAGapThatIsGoneAndShowItWhenItIsBack) {
    open_small();
    panel.choose_gap(index("bib"));
    act([&] { panel.remove_chosen(); });
    EXPECT_FALSE(fields().isVisible());
    act([&] { survey.undo(); });
    EXPECT_TRUE(fields().isVisible());
    EXPECT_EQ(fields().width->text(), "2.5 mm");
}

TEST_F(SurveyPanels, KeepPhotosByTheirWayFromTheJob) {
    open_small();
    QDir().mkpath(folder.filePath("photos"));
    QImage picture(64, 48, QImage::Format_RGB32);
    picture.fill(Qt::darkYellow);
    ASSERT_TRUE(picture.save(folder.filePath("photos/bib.png")));
    panel.choose_gap(index("bib"));
    QSignalSpy ready(fields().photo, &PhotoField::picture_ready);
    act([&] { fields().photo->take_file(folder.filePath("photos/bib.png")); });
    EXPECT_EQ(gap("bib").photo, "photos/bib.png");
    QTRY_VERIFY_WITH_TIMEOUT(fields().photo->has_picture(), 5000);
}

TEST_F(SurveyPanels, SayWhatBelongsToTheHouse) {
    open(scenarios + "demo.yaml");
    panel.choose_gap(index("hose-bibb-north"));
    EXPECT_FALSE(fields().name->isVisible());
    EXPECT_FALSE(fields().remove->isVisible());
    EXPECT_TRUE(find<QLabel>("gap_origin").text().contains("part of the described house"));
    act([&] { type(*fields().width, "1/10 in"); });
    EXPECT_NEAR(clear_width(gap("hose-bibb-north").shape), 0.00254, 1e-9);
    EXPECT_NE(survey.text().find("{id: hose-bibb-north, evidence: {how: measured, plus_minus: 0.2 mm}, ring: {width: 1/10 in}}"),
              std::string::npos);
    // The house tells later that this cannot be.
    QSignalSpy failed(&survey, &SurveyDocument::edit_failed);
    type(*fields().width, "9 m");
    ASSERT_TRUE(!failed.isEmpty() || failed.wait(20'000));
    EXPECT_TRUE(fields().width->is_wrong());
    EXPECT_EQ(fields().width->text(), "9 m");
}

TEST_F(SurveyPanels, AskForASpaceThatIsNotThereYet) {
    SpaceDialog dialog;
    dialog.findChild<QLineEdit*>("space_name")->setText("Chase");
    dialog.findChild<QComboBox*>("space_kind")->setCurrentIndex(1);
    EXPECT_EQ(dialog.space().name, "Chase");
    EXPECT_EQ(dialog.space().kind, SpaceKind::cavity);
}

}  // namespace
}  // namespace seamward::viewer::test
