// SPDX-License-Identifier: GPL-3.0-or-later
// A drill from the first page to the progress file, by mouse and by keyboard.
#include <cmath>

#include "document/drill_files.h"
#include "teach/progress.h"
#include "tests/viewer/drill_fixture.h"

namespace seamward::viewer::test {
namespace {

class Drills : public DrillFixture {};

TEST_F(Drills, AreKnownByTheirFirstKey) {
    for (const std::string& name : drill_names()) EXPECT_TRUE(is_drill_file(file_of(name))) << name;
    EXPECT_FALSE(is_drill_file(source_folder + "/scenarios/demo.yaml"));
    EXPECT_FALSE(is_drill_file(folder.filePath("none.yaml")));
    EXPECT_TRUE(is_drill_file(write("a.json", "{\n  \"seamward-drill\": 1}")));
    EXPECT_TRUE(is_drill_file(write("b.yaml", "# of a class\n\n---\nseamward-drill: 1\n")));
    EXPECT_FALSE(is_drill_file(write("c.yaml", "seamward: 1\nname: \"seamward-drill: 1\"\n")));
    EXPECT_FALSE(is_drill_file(write("d.yaml", "# seamward-drill: 1\nseamward: 1\n")));
}

TEST_F(Drills, StandBesideTheExamples) {
    const auto cards = window->findChildren<DrillCard*>();
    ASSERT_EQ(cards.size(), static_cast<int>(drill_names().size()));
    house().set_animated(false);
    QSignalSpy opened(&drill(), &DrillDocument::opened);
    QTest::mouseClick(&part<DrillCard>("drill_1-corner"), Qt::LeftButton);
    ASSERT_TRUE(opened.wait(soon));
    EXPECT_EQ(drill().round().drill.id, "corner");
    EXPECT_TRUE(page().isVisible());
    push("drill_leave");
    EXPECT_FALSE(drill().has_drill());
    EXPECT_FALSE(page().isVisible());
}

TEST_F(Drills, FaultyOnesAreToldAndNothingOpens) {
    (void)page();
    QSignalSpy failed(&drill(), &DrillDocument::open_failed);
    window->open(write("bad.yaml", "seamward-drill: 1\nid: x\njob: none.yaml\n"));
    ASSERT_TRUE(failed.wait(soon));
    auto* box = window->findChild<QDialog*>("fault");
    ASSERT_NE(box, nullptr);
    EXPECT_TRUE(box->findChild<QPlainTextEdit*>("fault_text")->toPlainText().contains("no such file"));
    box->close();
    EXPECT_FALSE(drill().has_drill());
}

/// A click on the house chooses the place there, and the form is filled with the mouse.
TEST_F(Drills, TakeAnswersByMouse) {
    open_drill(file_of("1-corner"));
    const DrillRound& truth = shipped_drill("1-corner");
    std::size_t place = truth.places.size();
    QPoint at;
    for (std::size_t i = 0; i < truth.places.size() && place == truth.places.size(); ++i) {
        if (!truth.places[i].at) continue;
        house().show_around({*truth.places[i].at});
        const auto shown =
            house().camera().shown_at(house().scene().frame().to_scene(*truth.places[i].at), house().width(), house().height());
        if (!shown) continue;
        const auto hit = house().scene().solid_at(*shown, house().camera(), house().width(), house().height());
        if (!hit) continue;
        const auto near = drill().place_near(hit->at + (house().scene().frame().origin - Point{}));
        if (near != i) continue;
        place = i;
        at = QPoint(static_cast<int>(std::lround(shown->x)), static_cast<int>(std::lround(shown->y)));
    }
    ASSERT_LT(place, truth.places.size());
    QTest::mouseClick(&house(), Qt::LeftButton, Qt::NoModifier, at);
    QApplication::processEvents();
    EXPECT_EQ(drill().chosen(), static_cast<int>(place));
    EXPECT_EQ(page().part(), DrillPage::Part::places);
    push("drill_look");
    EXPECT_EQ(part<QLabel>("drill_look_words").text(), drill().close_look(place).join('\n'));
    EXPECT_FALSE(drill().close_look(place).isEmpty());
    part<QRadioButton>("drill_open").click();
    ASSERT_NE(drill().answer(place), nullptr);
    EXPECT_TRUE(drill().answer(place)->open);
    part<QRadioButton>("drill_tight").click();
    EXPECT_FALSE(drill().answer(place)->open);
    EXPECT_FALSE(part<QComboBox>("drill_treatment").isVisible());
    push("drill_remove");
    EXPECT_EQ(drill().answer(place), nullptr);
    EXPECT_FALSE(part<QRadioButton>("drill_open").isChecked());
    EXPECT_FALSE(part<QRadioButton>("drill_tight").isChecked());
}

/// Without a mouse: down the list, into the form, and along it.
TEST_F(Drills, TakeAnswersByKeyboard) {
    open_drill(file_of("2-eave"));
    page().show_part(DrillPage::Part::places);
    auto& list = part<QListWidget>("drill_list");
    list.setFocus();
    QTest::keyClick(&list, Qt::Key_Home);
    QTest::keyClick(&list, Qt::Key_Down);
    EXPECT_EQ(drill().chosen(), 1);
    QTest::keyClick(&list, Qt::Key_Up);
    EXPECT_EQ(drill().chosen(), 0);
    QTest::keyClick(&list, Qt::Key_Return);
    auto* look = QApplication::focusWidget();
    ASSERT_EQ(look, &part<QPushButton>("drill_look"));
    QTest::keyClick(look, Qt::Key_Space);
    EXPECT_TRUE(drill().has_looked(0));
    part<QRadioButton>("drill_open").setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    QLineEdit& width = part<SizeField>("drill_width").line();
    width.setFocus();
    QTest::keyClicks(&width, "9/16 in");
    QTest::keyClick(&width, Qt::Key_Return);
    for (const auto& [box, id] : {std::pair("drill_from", "yard"), std::pair("drill_to", "soffit-void"),
                                  std::pair("drill_treatment", "backer-and-bead")}) {
        auto& choice = part<QComboBox>(box);
        choice.setFocus();
        const int to = choice.findData(id);
        ASSERT_GE(to, 1) << id;
        while (choice.currentIndex() < to) QTest::keyClick(&choice, Qt::Key_Down);
    }
    auto& wait = part<QCheckBox>("drill_wait");
    ASSERT_TRUE(wait.isVisible());
    wait.setFocus();
    QTest::keyClick(&wait, Qt::Key_Space);
    const PlaceAnswer* said = drill().answer(0);
    ASSERT_NE(said, nullptr);
    EXPECT_TRUE(said->open && said->wait);
    EXPECT_NEAR(*said->width, 9.0 / 16 * 0.0254, 1e-9);
    EXPECT_EQ(said->treatment, "backer-and-bead");
    ASSERT_TRUE(said->between);
    EXPECT_EQ(drill().round().job.survey[(*said->between)[1]].id, "soffit-void");
    push("drill_next");
    EXPECT_EQ(drill().chosen(), 1);
    EXPECT_FALSE(part<QRadioButton>("drill_open").isChecked());
    drill().choose(0);
    EXPECT_TRUE(part<QRadioButton>("drill_open").isChecked());
    EXPECT_NEAR(*part<SizeField>("drill_width").size(), 9.0 / 16 * 0.0254, 1e-9);
}

/// The first place of the eave is where the bats leave: closed before they are gone, it fails the round.
TEST_F(Drills, HarmFails) {
    open_drill(file_of("2-eave"));
    const DrillRound& truth = shipped_drill("2-eave");
    Answers answers = perfect_answers(truth, "Owen Castellan");
    for (PlaceAnswer& one : answers.findings) one.wait = false;
    say(answers);
    hand_in();
    EXPECT_FALSE(drill().result().passed);
    ASSERT_FALSE(drill().result().harms.empty());
    auto& list = part<QListWidget>("drill_results");
    // First of all, with reason and source.
    EXPECT_TRUE(list.item(0)->data(DrillRow::heading).toBool());
    EXPECT_EQ(list.item(1)->data(DrillRow::sign).toInt(), static_cast<int>(PlaceSign::harm));
    EXPECT_TRUE(list.item(1)->data(DrillRow::notes).toString().contains("Why: "));
    EXPECT_TRUE(list.item(1)->data(DrillRow::notes).toString().contains("Source: "));
    EXPECT_TRUE(part<QLabel>("drill_headline").text().startsWith("Not passed"));
    list.setCurrentRow(1);
    EXPECT_NE(drill().chosen(), DrillDocument::no_place);
}

TEST_F(Drills, ProgressIsKeptOnceForWhoGaveAName) {
    open_drill(file_of("1-corner"));
    const QString file = folder.filePath("class.jsonl");
    drill().set_trainee("  Ana   Ruiz ", file);
    EXPECT_TRUE(part<QLabel>("drill_trainee").text().contains("Ana Ruiz"));
    say(perfect_answers(shipped_drill("1-corner"), ""));
    hand_in();
    std::vector<Attempt> kept = read_progress(file.toStdString(), "class.jsonl");
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept[0].trainee, "Ana Ruiz");
    EXPECT_TRUE(kept[0].passed);
    EXPECT_EQ(drill().keep_progress(), "");
    EXPECT_EQ(read_progress(file.toStdString(), "class.jsonl").size(), 1U);
    EXPECT_TRUE(part<QLabel>("drill_kept").isVisible());
    EXPECT_FALSE(part<QPushButton>("drill_keep").isVisible());
    push("drill_again");
    EXPECT_FALSE(drill().is_handed_in());
    EXPECT_EQ(drill().answered(), 0U);
    EXPECT_TRUE(drill().shown().job().survey.gaps.empty());
    EXPECT_TRUE(drill().shown().ways().paths.empty());
    EXPECT_TRUE(house().scene().chosen_line().stops.empty());
    hand_in();
    kept = read_progress(file.toStdString(), "class.jsonl");
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_FALSE(kept[1].passed);
}

/// A progress file that is none stays as it is, and that is told.
TEST_F(Drills, FaultyProgressStaysAsItIs) {
    open_drill(file_of("1-corner"));
    const QString file = write("letters.txt", "Dear class,\n");
    drill().set_trainee("Ana Ruiz", file);
    drill().hand_in();
    EXPECT_FALSE(drill().keep_progress().isEmpty());
    EXPECT_FALSE(drill().kept());
    EXPECT_EQ(content(file), "Dear class,\n");
}

TEST_F(Drills, WhatWasNotHandedInIsAskedAbout) {
    open_drill(file_of("1-corner"));
    PlaceAnswer tight;
    tight.where.place = 0;
    drill().set_answer(tight);
    const auto stay = [](QWidget& box) { box.close(); };
    EXPECT_EQ(answering(stay, [this] { window->open(file_of("2-eave")); }), "drill_unfinished");
    EXPECT_EQ(drill().round().drill.id, "corner");
    EXPECT_EQ(answering(stay, [this] { window->open(source_folder + "/scenarios/demo.yaml"); }), "drill_unfinished");
    EXPECT_FALSE(window->document().has_job());
    EXPECT_EQ(drill().answered(), 1U);
    const auto go = [](QWidget& box) { box.findChild<QPushButton*>("leave_now")->click(); };
    EXPECT_EQ(answering(go, [this] { push("drill_leave"); }), "drill_unfinished");
    EXPECT_FALSE(drill().has_drill());
}

/// A mesh whose kind does not say how fine it is cannot be handed in without that; a width in no unit neither.
TEST_F(Drills, WhatCannotBeUnderstoodIsNotHandedIn) {
    open_drill(file_of("2-eave"));
    page().show_part(DrillPage::Part::places);
    drill().choose(0);
    part<QRadioButton>("drill_open").click();
    QLineEdit& width = part<SizeField>("drill_width").line();
    width.setFocus();
    QTest::keyClicks(&width, "14");
    push("drill_hand_in");
    EXPECT_FALSE(drill().is_handed_in());
    EXPECT_TRUE(part<SizeField>("drill_width").is_wrong());
    width.selectAll();
    QTest::keyClicks(&width, "14 mm");
    hand_in();
    EXPECT_NEAR(*drill().answers().findings.at(0).width, 0.014, 1e-9);
}

}  // namespace
}  // namespace seamward::viewer::test
