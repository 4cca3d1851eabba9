// SPDX-License-Identifier: GPL-3.0-or-later
// The whole window in both languages: nothing that it says is cut off, and no two keys are alike.
#include <gtest/gtest.h>

#include <QAction>
#include <QComboBox>
#include <QKeySequence>
#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "tests/viewer/cut_off.h"
#include "tests/viewer/whole_window_fixture.h"

namespace seamward::viewer::test {
namespace {

using Language = Preferences::Language;
using Page = MainWindow::Page;

/// How the window stands.
struct Stand {
    Language language;
    QSize size;
    int letters;  ///< percent
};

std::string words(const Stand& stand) {
    return QString("%1 %2x%3 %4%")
        .arg(stand.language == Language::spanish ? "es" : "en")
        .arg(stand.size.width())
        .arg(stand.size.height())
        .arg(stand.letters)
        .toStdString();
}

class WholeWindowWords : public WholeWindowFixture, public testing::WithParamInterface<Stand> {
protected:
    void SetUp() override {
        preferences.set_language(GetParam().language);
        preferences.set_text_size(GetParam().letters);
        window->resize(GetParam().size);
        QApplication::processEvents();
    }

    void expect_whole(const std::string& where) {
        QApplication::processEvents();
        QApplication::processEvents();  // what wraps asks for its height once it is wide enough
        ASSERT_EQ(window->size(), GetParam().size) << where;
        see(words(GetParam()) + ' ' + where);
        EXPECT_EQ(cut_off_texts(*window).join("\n").toStdString(), "") << words(GetParam()) << ", " << where;
        EXPECT_EQ(mnemonics_alike(*window).join("\n").toStdString(), "") << words(GetParam()) << ", " << where;
    }
    void show(Page page) {
        window->show_page(page);
        ASSERT_TRUE(wait_idle());
    }
    FactsCard& facts() { return window->picture().facts(); }
    void push(const char* name) { QTest::mouseClick(&part<QPushButton>(name), Qt::LeftButton); }
    [[nodiscard]] std::uint32_t part_of(Layer layer) {
        const auto solids = window->document().solids();
        for (std::uint32_t i = 0; i < solids->parts.size(); ++i) {
            if (solids->parts[i].layer == layer) return i;
        }
        throw std::runtime_error("no such part");
    }
};

TEST_P(WholeWindowWords, FirstPage) { expect_whole("first page"); }

TEST_P(WholeWindowWords, Pages) {
    open_shipped("demo.yaml");
    for (const Page page : {Page::ways, Page::closings, Page::survey}) {
        const std::string name = std::array{"ways", "closings", "survey"}.at(static_cast<std::size_t>(page));
        show(page);
        expect_whole(name);
        const GapIndex some = window->document().chosen()->pinch_gap;
        window->picture().show_gap(some);
        emit window->picture().gap_chosen(some);
        expect_whole(name + ", a gap");
        facts().show_part(part_of(Layer::cladding), {});
        expect_whole(name + ", a part");
        facts().hide();
    }
}

TEST_P(WholeWindowWords, Ticked) {
    open_shipped("demo.yaml");
    show(Page::closings);
    auto& list = part<QListWidget>("closings");
    for (int row = 6; row < 20; row += 6) {
        list.scrollToItem(list.item(row), QAbstractItemView::PositionAtTop);
        expect_whole("row " + std::to_string(row));
    }
    window->closings().tick_within(Money{15'000});
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->closings().ticked().gaps > 0 && idle(); }, soon));
    expect_whole("a budget");
    window->closings().tick_all();
    ASSERT_TRUE(wait_idle());
    expect_whole("all ticked");
}

TEST_P(WholeWindowWords, Forms) {
    open_shipped("demo.yaml");
    show(Page::survey);
    push("new_gap");
    expect_whole("new gap");
    push("gap_cancel");
    push("new_feature");
    expect_whole("new feature");
    push("feature_cancel");
    const auto& survey = window->document().filed()->survey;
    for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) {
        if (!survey.gaps[i].at || survey.gaps[i].id.find("door") == std::string::npos) continue;
        window->picture().show_gap({i});
        emit window->picture().gap_chosen({i});
        break;
    }
    expect_whole("a door");
}

TEST_P(WholeWindowWords, RideAndSigns) {
    open_shipped("demo.yaml");
    auto& signs = part<QToolButton>("show_key");
    signs.click();
    expect_whole("signs");
    signs.click();
    canvas().start_ride();
    canvas().set_ride_going(false);
    expect_whole("ride");
    canvas().ride_to(canvas().ride_duration());
    expect_whole("end of the ride");
    canvas().end_ride();
}

TEST_P(WholeWindowWords, Drill) {
    for (const char* name : {"2-eave", "6-sighting"}) {
        QSignalSpy opened(&window->drill().document(), &DrillDocument::opened);
        window->drill().picture().canvas().set_animated(false);
        window->open(source_folder + "/scenarios/drills/" + name + ".yaml");
        ASSERT_TRUE(opened.wait(soon));
        DrillDocument& drill = window->drill().document();
        const std::string of = std::string("drill ") + name + ", ";
        drill.set_trainee("Ines Aguirre", folder.filePath("class.jsonl"));
        expect_whole(of + "task");
        window->drill().show_part(DrillPage::Part::places);
        expect_whole(of + "places");
        Answers said = perfect_answers(drill.round(), "");
        said.findings.pop_back();
        for (PlaceAnswer& one : said.findings) one.wait = false;  // which harms at the eave
        for (const PlaceAnswer& one : said.findings) drill.set_answer(one);
        for (const int place : {0, 1, static_cast<int>(drill.place_count()) - 1}) {
            drill.choose(place);
            drill.look_closely(static_cast<std::size_t>(place));
            expect_whole(of + "place " + std::to_string(place));
            part<QRadioButton>("drill_open").click();
            part<QComboBox>("drill_treatment").setCurrentIndex(part<QComboBox>("drill_treatment").count() - 2);
            expect_whole(of + "open place " + std::to_string(place));
        }
        for (const PlaceAnswer& one : said.findings) drill.set_answer(one);
        drill.hand_in();
        expect_whole(of + "result");
        EXPECT_EQ(drill.keep_progress(), "");
        part<QListWidget>("drill_results").setCurrentRow(1);
        expect_whole(of + "result, a row");
    }
}

/// The letters of actions, those of a menu in a menu too.
QStringList alike_in(const QList<QAction*>& actions) {
    QMap<QString, QStringList> by_key;
    QStringList alike;
    for (const QAction* action : actions) {
        if (action->menu() != nullptr) alike += alike_in(action->menu()->actions());
        const QKeySequence key = QKeySequence::mnemonic(action->text());
        if (!key.isEmpty()) by_key[key.toString()] << action->text();
    }
    for (auto at = by_key.begin(); at != by_key.end(); ++at) {
        if (at->size() > 1) alike << at.key() + ": " + at->join(" / ");
    }
    return alike;
}

TEST_P(WholeWindowWords, MenusHaveOneKeyEach) {
    EXPECT_EQ(alike_in(window->menuBar()->actions()).join("\n").toStdString(), "");
    // What has no letter cannot be reached by one.
    for (const QAction* title : window->menuBar()->actions()) {
        EXPECT_FALSE(QKeySequence::mnemonic(title->text()).isEmpty()) << title->text().toStdString();
        for (const QAction* action : title->menu()->actions())
            EXPECT_TRUE(action->isSeparator() || !action->text().isEmpty()) << title->text().toStdString();
    }
    // Alt and a letter opens a menu, so that no button beside the picture wants the same.
    open_shipped("demo.yaml");
    for (const Page page : {Page::ways, Page::closings, Page::survey}) {
        show(page);
        for (const QAction* title : window->menuBar()->actions()) {
            const QKeySequence key = QKeySequence::mnemonic(title->text());
            for (const QWidget* widget : window->findChildren<QWidget*>()) {
                if (!widget->isVisible()) continue;
                const auto* label = qobject_cast<const QLabel*>(widget);
                const auto* button = qobject_cast<const QAbstractButton*>(widget);
                const QString text = label != nullptr && label->buddy() != nullptr ? label->text()
                                     : button != nullptr                           ? button->text()
                                                                                   : QString();
                EXPECT_TRUE(QKeySequence::mnemonic(text) != key || key.isEmpty())
                    << title->text().toStdString() << " / " << text.toStdString();
            }
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Both, WholeWindowWords,
                         testing::Values(Stand{Language::english, {1280, 720}, 100}, Stand{Language::spanish, {1280, 720}, 100},
                                         Stand{Language::english, {1920, 1080}, 100}, Stand{Language::spanish, {1920, 1080}, 100},
                                         Stand{Language::english, {1280, 800}, 150}, Stand{Language::spanish, {1280, 800}, 150},
                                         Stand{Language::english, {1280, 800}, 175}, Stand{Language::spanish, {1280, 800}, 175},
                                         Stand{Language::english, {1280, 720}, 175}, Stand{Language::spanish, {1280, 720}, 175}),
                         [](const testing::TestParamInfo<Stand>& one) {
                             return QString::fromStdString(words(one.param)).remove('%').replace(' ', '_').toStdString();
                         });

}  // namespace
}  // namespace seamward::viewer::test
