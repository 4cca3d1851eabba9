// SPDX-License-Identifier: GPL-3.0-or-later
// What a first-time user stumbles over: rows that move, a scale that hides the plan, words that nobody reads.
#include <gtest/gtest.h>

#include <QLineEdit>

#include "closings_panel_fixture.h"
#include "document/closings_text.h"
#include "document/way_text.h"

namespace seamward::viewer::test {
namespace {

/// Where a row is on the screen must not change while one works at it, whatever the head and the curve have to say.
TEST_F(PanelOfClosings, RowsStayWhereTheyAreWhateverIsSaid) {
    for (const int width : {330, 400, 520}) {
        panel.resize(width, 800);
        open(demo);
        list().scrollToItem(&row(6));
        const auto place = [&] {
            QApplication::processEvents();
            return list().viewport()->mapToGlobal(list().visualItemRect(&row(6)).topLeft()).y();
        };
        const int before = place();
        const int rungs = static_cast<int>(closings.plan().plan.ladder.size());
        for (int rung = 0; rung < rungs; rung += 5) {
            act([&] { closings.tick_rung(rung); });
            ASSERT_EQ(place(), before) << width << ", rung " << rung;
        }
        act([&] { closings.untick_all(); });
        ASSERT_EQ(place(), before) << width << ", none";
        act([&] { closings.tick_all(); });
        ASSERT_EQ(place(), before) << width << ", all";
        act([&] { closings.untick_all(); });
        tick(closings.plan().offers[2].gap, true);
        ASSERT_EQ(place(), before) << width << ", one";
        auto& budget = part<QLineEdit>("budget");
        for (const char* typed : {"a lot, and more than anybody has to spend on gaps in this house or in any other", "$310"}) {
            budget.setText(typed);
            QTest::keyClick(&budget, Qt::Key_Return);
            QApplication::processEvents();
            ASSERT_EQ(place(), before) << width << ' ' << typed;
        }
        QTRY_VERIFY(text("closings_message").startsWith("Within $310.00"));
        ASSERT_EQ(place(), before) << width << ", a budget";
        EXPECT_TRUE(part<QLabel>("closings_message").accessibleName().contains("from yard")) << "all of it can be read somewhere";
    }
}

TEST_F(PanelOfClosings, ARowThatIsTickedStaysUnderTheMouseWhenOthersChange) {
    open_text(bats_job);
    panel.resize(330, 330);
    list().setCurrentItem(&row(1));
    list().scrollToItem(&row(1));
    const auto place = [&] {
        QApplication::processEvents();
        return list().visualItemRect(&row(1)).top();
    };
    const int before = place();
    for (int i = 0; i < 4; ++i) {
        act([&] { QTest::keyClick(&list(), Qt::Key_Space); });
        EXPECT_EQ(place(), before) << i;
    }
}

/// A row of a folded part that one just unticked does not vanish from under the mouse.
TEST_F(PanelOfClosings, ARowUntickedByHandStaysInSight) {
    open(demo);
    QListWidgetItem& other = row(closings.plan().plan.steps.size());
    closings.tick(closings.plan().offers[closings.plan().plan.steps.size()].gap, true);
    ASSERT_FALSE(other.isHidden());
    list().setCurrentItem(&other);
    act([&] { QTest::keyClick(&list(), Qt::Key_Space); });
    EXPECT_EQ(other.checkState(), Qt::Unchecked);
    EXPECT_FALSE(other.isHidden());
}

TEST_F(PanelOfClosings, TheCurveIsAsWideAsThePlanAndSaysWhereItGoesOn) {
    open(QStringLiteral(SEAMWARD_SOURCE_FOLDER "/scenarios/apartments.yaml"));
    const Money plan = closings.plan().plan.cost;
    const Money last = curve().shown().stairs.back().price;
    ASSERT_GT(last.cents, 3 * plan.cents / 2);  // or this job tests nothing
    EXPECT_GE(curve().shown_up_to(), plan);
    EXPECT_LT(curve().shown_up_to().cents, 3 * plan.cents / 2);
    EXPECT_TRUE(curve().accessibleDescription().contains(money_words(last)));
    act([&] { closings.tick_all(); });
    EXPECT_GT(curve().knob_place().x(), 0.6 * curve().width());
    // What lies beyond is reached by the keys, and the scale with it.
    act([&] { QTest::keyClick(&curve(), Qt::Key_End); });
    EXPECT_EQ(curve().shown_up_to(), last);
    EXPECT_LT(curve().knob_place().x(), curve().width());
    act([&] { QTest::keyClick(&curve(), Qt::Key_Home); });
    EXPECT_LT(curve().shown_up_to().cents, 3 * plan.cents / 2);
    // Nobody drags beyond the edge.
    act([&] { QTest::mouseClick(&curve(), Qt::LeftButton, Qt::NoModifier, QPoint(curve().width() - 2, 30)); });
    EXPECT_LE(closings.ticked().cost, curve().shown_up_to());
}

/// How wide a gap may be is said in one way, and the window's words have no "plus-minus".
TEST_F(PanelOfClosings, SaysHowWideAGapMayBeInOneWay) {
    open(demo);
    EXPECT_EQ(counted_words(closings.plan(), closings.plan().offers[0].gap), "3/16 in (4.76 mm), up to 13/64 in (5.06 mm)");
    for (int rung = 0; rung < static_cast<int>(closings.plan().plan.ladder.size()); rung += 7) {
        act([&] { closings.tick_rung(rung); });
        const double left = closings.plan().widest_after_rung[static_cast<std::size_t>(rung)];
        EXPECT_TRUE(text("price_words").contains(left > 0 ? "up to " + width_words(left) : "no way in at all"));
        EXPECT_FALSE(text("price_words").contains("plus-minus"));
    }
}

TEST_F(PanelOfClosings, SourcesThatWereNotReadHaveAStarThatIsExplainedOnce) {
    open(demo);
    int stars = 0, explained = 0;
    for (int i = 0; i < list().count(); ++i) {
        const QString said = list().item(i)->data(ClosingRow::below).toString();
        EXPECT_FALSE(said.contains("(from memory)")) << said.toStdString();
        if (said == star_words())
            ++explained;
        else
            stars += static_cast<int>(said.count('*'));
    }
    EXPECT_GT(stars, 2);
    EXPECT_EQ(explained, 1);
}

}  // namespace
}  // namespace seamward::viewer::test
