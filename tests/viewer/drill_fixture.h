// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QHelpEvent>
#include <QListWidget>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTextBrowser>
#include <QToolButton>
#include <QToolTip>

#include "panels/drill_row.h"
#include "tests/teach/shipped_drills.h"
#include "tests/viewer/whole_window_fixture.h"

namespace seamward::viewer::test {

using seamward::test::drill_names;
using seamward::test::shipped_drill;

/// The window with a shipped drill in it.
class DrillFixture : public WholeWindowFixture {
protected:
    DrillPage& page() { return window->drill(); }
    DrillDocument& drill() { return page().document(); }
    PictureCanvas& house() { return page().picture().canvas(); }

    [[nodiscard]] static QString file_of(const std::string& name) {
        return source_folder + "/scenarios/drills/" + QString::fromStdString(name) + ".yaml";
    }
    void open_drill(const QString& path) {
        house().set_animated(false);
        QSignalSpy opened(&drill(), &DrillDocument::opened);
        window->open(path);
        ASSERT_TRUE(opened.wait(soon)) << path.toStdString();
        QApplication::processEvents();
    }
    void push(const char* name) {
        auto& button = part<QPushButton>(name);
        ASSERT_TRUE(button.isVisible()) << name;
        QTest::mouseClick(&button, Qt::LeftButton);
        QApplication::processEvents();
    }
    /// Says all of it by the document, as the forms do.
    void say(const Answers& answers) {
        for (const PlaceAnswer& one : answers.findings) drill().set_answer(one);
        if (answers.entry) drill().set_entry(answers.entry->place ? answers.entry->place : place_of(*answers.entry->gap));
    }
    [[nodiscard]] std::optional<std::size_t> place_of(GapIndex gap) {
        for (std::size_t i = 0; i < drill().place_count(); ++i) {
            if (drill().round().places[i].gap == gap) return i;
        }
        return std::nullopt;
    }
    /// Hands in by the button and says yes.
    void hand_in() {
        page().show_part(DrillPage::Part::places);
        const QString asked = answering([](QWidget& box) { box.findChild<QPushButton*>("hand_in_now")->click(); },
                                        [this] { push("drill_hand_in"); });
        EXPECT_EQ(asked, "hand_in_question");
        ASSERT_TRUE(drill().is_handed_in());
        QApplication::processEvents();
    }
    /// All that the drill's page says, shows on a tip or tells a screen reader, whether or not it is in sight just now.
    [[nodiscard]] QString all_words() {
        QStringList all{window->windowTitle()};
        for (const QWidget* widget : page().findChildren<QWidget*>()) {
            all << widget->toolTip() << widget->accessibleName() << widget->accessibleDescription();
            if (const auto* label = qobject_cast<const QLabel*>(widget)) all << label->text();
            if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) all << button->text();
            if (const auto* line = qobject_cast<const QLineEdit*>(widget)) all << line->text();
            if (const auto* text = qobject_cast<const QTextEdit*>(widget)) all << text->toPlainText();
            if (const auto* box = qobject_cast<const QComboBox*>(widget)) {
                for (int i = 0; i < box->count(); ++i) all << box->itemText(i);
            }
            if (const auto* list = qobject_cast<const QListWidget*>(widget)) {
                for (int i = 0; i < list->count(); ++i) all << list->item(i)->text() << list->item(i)->toolTip();
            }
        }
        for (const PlaceMark& mark : house().places()) all << mark.name;
        for (const Callout& callout : house().scene().callouts()) all << callout.heading << callout.text;
        return all.join('\n');
    }
    /// The row of a list that tells of a place; the last, as harms come first.
    static QListWidgetItem* row_of(QListWidget& list, std::size_t place) {
        for (int row = list.count() - 1; row >= 0; --row) {
            if (list.item(row)->data(DrillRow::place).toInt() == static_cast<int>(place)) return list.item(row);
        }
        return nullptr;
    }
};

}  // namespace seamward::viewer::test
