// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/closings_panel.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMouseEvent>
#include <QPushButton>
#include <QTest>
#include <algorithm>

#include "catalog/duties.h"
#include "closings_panel_fixture.h"
#include "document/closings_notes.h"
#include "document/closings_text.h"
#include "panels/closing_row.h"
#include "panels/closings_head.h"
#include "panels/closings_list.h"
#include "panels/price_curve.h"

namespace seamward::viewer::test {
namespace {

TEST_F(PanelOfClosings, ListsThePlanInWalkingOrder) {
    open(demo);
    const std::vector<PlanStep>& steps = closings.plan().plan.steps;
    int last = 0;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        QListWidgetItem& at = row(i);
        EXPECT_GT(list().row(&at), last);
        last = list().row(&at);
        EXPECT_EQ(at.data(ClosingRow::number).toString(), QString::number(i + 1));
        EXPECT_EQ(at.data(ClosingRow::price).toString(), money_words(steps[i].option.cost));
        EXPECT_EQ(at.checkState(), Qt::Unchecked);
        EXPECT_EQ(at.data(ClosingRow::cautions).toString().isEmpty(), steps[i].cautions().empty());
        EXPECT_TRUE(at.text().contains(money_words(steps[i].option.cost)));  // for a screen reader
    }
    EXPECT_TRUE(says("Outside, from the ground"));
    EXPECT_EQ(text("ticked_price"), "$0.00");
    EXPECT_TRUE(text("whole_plan").contains(money_words(closings.plan().plan.cost)));
    EXPECT_TRUE(animal(3).startsWith("in by "));
}

TEST_F(PanelOfClosings, ABoxTicksByMouseAndKeyboard) {
    open(demo);
    act([&] { click_box(row(4)); });
    EXPECT_EQ(row(4).checkState(), Qt::Checked);
    EXPECT_EQ(text("ticked_price"), money_words(closings.plan().plan.steps[4].option.cost));
    list().setCurrentItem(&row(5));
    act([&] { QTest::keyClick(&list(), Qt::Key_Space); });
    EXPECT_EQ(row(5).checkState(), Qt::Checked);
    EXPECT_EQ(text("ticked_price"),
              money_words(closings.plan().plan.steps[4].option.cost + closings.plan().plan.steps[5].option.cost));
    act([&] { click_box(row(4)); });
    EXPECT_EQ(row(4).checkState(), Qt::Unchecked);
    // All and none.
    act([&] { QTest::mouseClick(&part<QPushButton>("tick_all"), Qt::LeftButton); });
    EXPECT_EQ(text("ticked_price"), money_words(closings.plan().plan.cost));
    for (std::size_t i = 0; i < document.filed()->pests.size(); ++i) EXPECT_EQ(animal(i), "shut out");
    for (const StandSign* sign : panel.findChildren<StandSign*>()) EXPECT_EQ(sign->shown(), StandSign::shut_out);
    act([&] { QTest::mouseClick(&part<QPushButton>("untick_all"), Qt::LeftButton); });
    EXPECT_EQ(text("ticked_price"), "$0.00");
}

TEST_F(PanelOfClosings, DragsAlongThePrice) {
    open(demo);
    const std::vector<LadderRung>& ladder = closings.plan().plan.ladder;
    list().scrollToTop();
    ASSERT_EQ(curve().shown().stairs.size(), ladder.size());
    act([&] { QTest::mousePress(&curve(), Qt::LeftButton, Qt::NoModifier, curve().stair_place(7).toPoint() + QPoint(1, 20)); });
    EXPECT_EQ(closings.rung(), 7);
    EXPECT_EQ(text("ticked_price"), money_words(ladder[7].cost));
    EXPECT_NEAR(curve().knob_place().x(), curve().stair_place(7).x(), 0.5);
    EXPECT_TRUE(text("price_words").contains(money_words(ladder[7].cost)));
    const QPointF to = curve().stair_place(20);
    QMouseEvent move(QEvent::MouseMove, to, Qt::LeftButton, Qt::LeftButton, Qt::NoModifier);
    act([&] { QApplication::sendEvent(&curve(), &move); });
    EXPECT_EQ(closings.rung(), 20);
    // What could still get in there, animal by animal.
    Survey after = document.filed()->survey;
    for (const GapIndex gap : ladder[20].gaps) close_gap(after.gaps[gap.value], 0);
    expect_animals_of(after);
    for (std::size_t i = 0; i < closings.outlook().animals.size(); ++i)
        EXPECT_TRUE(outlook_words(closings.outlook().animals[i]).startsWith(animal(i)));  // millimeters where there is room
}

TEST_F(PanelOfClosings, ArrowKeysGoAlongThePrice) {
    open(demo);
    const auto last = static_cast<int>(closings.plan().plan.ladder.size()) - 1;
    const auto press = [&](Qt::Key key) { act([&] { QTest::keyClick(&curve(), key); }); };
    press(Qt::Key_Right);
    EXPECT_EQ(closings.rung(), 0);
    press(Qt::Key_Right);
    EXPECT_EQ(closings.rung(), 1);
    press(Qt::Key_Left);
    EXPECT_EQ(closings.rung(), 0);
    press(Qt::Key_End);
    EXPECT_EQ(closings.rung(), last);
    press(Qt::Key_Home);
    EXPECT_EQ(closings.rung(), ClosingsDocument::none_done);
    const int height = curve().height();
    // From between two rungs it goes to the next one.
    tick(closings.plan().offers[1].gap, true);
    EXPECT_EQ(closings.rung(), ClosingsDocument::no_rung);
    EXPECT_EQ(curve().height(), height) << "however many lines its words take";
    const Money from = closings.ticked().cost;
    press(Qt::Key_Left);
    EXPECT_LT(closings.ticked().cost, from);
}

TEST_F(PanelOfClosings, ARowShowsWhatItTakesAndChangesTheTreatment) {
    open(demo);
    QSignalSpy chosen(&panel, &ClosingsPanel::gap_chosen);
    click_words(row(6));
    ASSERT_FALSE(chosen.isEmpty());
    const OfferedClosing& offer = closings.plan().offers[6];
    EXPECT_EQ(chosen.back()[0].value<GapIndex>(), offer.gap);
    for (const Message& caution : offer.cautions(offer.usual))
        EXPECT_TRUE(text("closing_words").contains(QString::fromStdString(caution.english()).toHtmlEscaped()));
    auto& treatments = part<QComboBox>("treatments");
    ASSERT_EQ(treatments.count(), static_cast<int>(offer.options.size()));
    const Money before = closings.whole_plan().cost;
    QTest::keyClick(&treatments, treatments.currentIndex() == 0 ? Qt::Key_End : Qt::Key_Home);
    const Option& now = closings.chosen(offer);
    EXPECT_NE(now.treatment, offer.options[offer.usual].treatment);
    EXPECT_EQ(closings.whole_plan().cost.cents, before.cents - offer.options[offer.usual].cost.cents + now.cost.cents);
    EXPECT_EQ(row(6).data(ClosingRow::price).toString(), money_words(now.cost));
    EXPECT_TRUE(row(6).data(ClosingRow::below).toString().endsWith("chosen by hand"));
    for (const Message& caution : offer.cautions(closings.choice(offer)))
        EXPECT_TRUE(text("closing_words").contains(QString::fromStdString(caution.english()).toHtmlEscaped()));
    // Enter folds it away and opens it again.
    list().setCurrentItem(&row(6));
    QTest::keyClick(&list(), Qt::Key_Return);
    QTRY_VERIFY(panel.findChild<QComboBox*>("treatments") == nullptr);
    QTest::keyClick(&list(), Qt::Key_Return);
    EXPECT_NE(panel.findChild<QComboBox*>("treatments"), nullptr);
}

TEST_F(PanelOfClosings, OtherGapsUnfoldAndCanBeAdded) {
    open(demo);
    const std::size_t first_other = closings.plan().plan.steps.size();
    EXPECT_TRUE(row(first_other).isHidden());
    panel.show_gap(closings.plan().offers[first_other].gap);
    EXPECT_FALSE(row(first_other).isHidden());
    EXPECT_EQ(list().currentItem(), &row(first_other));
    act([&] { QTest::keyClick(&list(), Qt::Key_Space); });
    EXPECT_EQ(closings.ticked().gaps, 1U);
    EXPECT_EQ(closings.numbered().size(), first_other + 1);
}

TEST_F(PanelOfClosings, SaysWhatStaysOpenWithReasonAndSource) {
    open(demo);
    for (const RefusedGap& refused : closings.plan().plan.refused) {
        if (!refused.refusal.treatment.empty()) continue;
        bool found = false;
        for (int i = 0; i < list().count() && !found; ++i) {
            const QListWidgetItem& at = *list().item(i);
            const QString below = at.data(ClosingRow::below).toString();
            found = at.data(ClosingRow::title)
                        .toString()
                        .contains(QString::fromStdString(closings.plan().survey()[refused.gap].label())) &&
                    below.contains(QString::fromStdString(refused.refusal.why.english())) &&
                    below.contains(QString::fromStdString(starred(refused.refusal.source).english()));
        }
        EXPECT_TRUE(found) << closings.plan().survey()[refused.gap].id;
    }
}

TEST_F(PanelOfClosings, ABudgetIsTypedAndSpent) {
    open(demo);
    auto& budget = part<QLineEdit>("budget");
    budget.setText("a lot");
    QTest::keyClick(&budget, Qt::Key_Return);
    EXPECT_TRUE(text("closings_message").contains("a lot"));
    budget.setText("$300");
    act([&] { QTest::keyClick(&budget, Qt::Key_Return); });
    EXPECT_LE(closings.ticked().cost, Money{30'000});
    EXPECT_TRUE(text("closings_message").startsWith("Within $300.00"));
    act([&] { closings.untick_all(); });
    EXPECT_FALSE(part<QLabel>("closings_message").isVisible());
}

TEST_F(PanelOfClosings, WithoutAPlanItSaysWhyAndPlansAgainstTheOthers) {
    open_text(no_plan_job);
    EXPECT_TRUE(says("No plan: there is a way in that must not or cannot be closed"));
    EXPECT_FALSE(part<QPushButton>("tick_all").isEnabled());
    QSignalSpy planned(&closings, &ClosingsDocument::planned);
    QTest::mouseClick(&part<QPushButton>("plan_against_others"), Qt::LeftButton);
    ASSERT_TRUE(planned.wait(20'000));
    EXPECT_TRUE(closings.plan().plan.feasible);
    EXPECT_TRUE(part<QPushButton>("tick_all").isEnabled());
    act([&] { QTest::mouseClick(&part<QPushButton>("tick_all"), Qt::LeftButton); });
    EXPECT_EQ(animal(1), "shut out");
    EXPECT_TRUE(animal(0).endsWith("not planned against"));
}

TEST_F(PanelOfClosings, RowsSayWhatWaits) {
    open_text(bats_job);
    EXPECT_TRUE(row(0).data(ClosingRow::waits).toString().isEmpty());
    EXPECT_FALSE(row(1).data(ClosingRow::waits).toString().isEmpty());
    EXPECT_TRUE(row(1).text().contains("waits"));
    EXPECT_TRUE(says("Animals that live in the house"));
}

TEST_F(PanelOfClosings, SaysWhyAMeshIsRefused) {
    open_text(vents_job);
    act([&] { closings.tick(GapIndex{0}, true); });
    panel.show_gap(GapIndex{1});
    QTest::keyClick(&list(), Qt::Key_Space);
    EXPECT_EQ(list().currentItem()->checkState(), Qt::Unchecked);
    EXPECT_TRUE(text("closings_message").startsWith("Not closed with"));
    EXPECT_TRUE(part<QLabel>("treatment_refused").isVisible());
}

TEST_F(PanelOfClosings, AnimalsAreChosenFromAMenu) {
    open(demo);
    QMenu& menu = *part<QPushButton>("against").menu();
    emit menu.aboutToShow();
    ASSERT_TRUE(menu.actions().front()->isChecked());
    QSignalSpy planned(&closings, &ClosingsDocument::planned);
    menu.actions().front()->trigger();
    ASSERT_TRUE(planned.wait(20'000));
    EXPECT_EQ(closings.against().size(), document.filed()->pests.size() - 1);
    EXPECT_TRUE(part<QPushButton>("against").text().contains('3'));
}

}  // namespace
}  // namespace seamward::viewer::test
