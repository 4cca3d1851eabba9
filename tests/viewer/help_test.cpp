// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <QTextBlock>
#include <QtTest>

#include "panels/first_hints.h"
#include "panels/help_pages.h"

namespace seamward::viewer::test {
namespace {

class Help : public testing::Test {
protected:
    void SetUp() override {
        help.resize(900, 640);
        help.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&help));
    }
    template <class Widget>
    [[nodiscard]] Widget& part(const char* name) {
        return *help.findChild<Widget*>(name);
    }
    [[nodiscard]] QString text() { return part<QTextBrowser>("help_text").toPlainText(); }
    [[nodiscard]] int listed() {
        int count = 0;
        auto& contents = part<QListWidget>("help_contents");
        for (int row = 0; row < contents.count(); ++row) count += contents.item(row)->isHidden() ? 0 : 1;
        return count;
    }

    HelpPages help;
};

TEST_F(Help, EveryPageIsThere) {
    auto& contents = part<QListWidget>("help_contents");
    ASSERT_GE(contents.count(), 10);
    for (int row = 0; row < contents.count(); ++row) {
        contents.setCurrentRow(row);
        EXPECT_EQ(help.page(), contents.item(row)->data(Qt::UserRole).toString());
        EXPECT_GT(text().size(), 500) << help.page().toStdString();
        EXPECT_FALSE(text().contains("](")) << help.page().toStdString();
    }
}

/// Whoever asks for help sees the window explained, not how the program is called.
TEST_F(Help, BeginsWithThePageOnTheWindow) {
    EXPECT_EQ(help.page(), "window");
    EXPECT_EQ(part<QListWidget>("help_contents").currentRow(), 0);
    EXPECT_FALSE(text().left(1500).contains("seamward-viewer"));
    EXPECT_TRUE(text().left(400).contains("house"));
}

/// Each link that is left leads to a page that is there and to a heading of it.
TEST_F(Help, LinksLeadSomewhere) {
    int followed = 0;
    auto& contents = part<QListWidget>("help_contents");
    for (int row = 0; row < contents.count(); ++row) {
        contents.setCurrentRow(row);
        const QString page = help.page();
        QStringList links;
        const QTextDocument& document = *part<QTextBrowser>("help_text").document();
        for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
            for (auto at = block.begin(); !at.atEnd(); ++at) {
                if (at.fragment().charFormat().isAnchor()) links << at.fragment().charFormat().anchorHref();
            }
        }
        for (const QString& link : links) {
            EXPECT_FALSE(link.contains(':')) << link.toStdString();
            help.show_page(page);
            ASSERT_TRUE(help.show_page(link)) << link.toStdString();
            if (link.contains('#')) {
                const auto& browser = part<QTextBrowser>("help_text");
                EXPECT_GT(browser.textCursor().blockFormat().headingLevel(), 0)
                    << page.toStdString() << ": " << link.toStdString();
            }
            ++followed;
        }
    }
    EXPECT_GT(followed, 20);
}

TEST_F(Help, GoesWhereALinkIsClickedAndBack) {
    help.show_page("plans");
    emit part<QTextBrowser>("help_text").anchorClicked(QUrl("catalog.md#places-of-work"));
    EXPECT_EQ(help.page(), "catalog");
    QTest::mouseClick(&part<QToolButton>("help_back"), Qt::LeftButton);
    EXPECT_EQ(help.page(), "plans");
    EXPECT_FALSE(help.show_page("https://example.org/plans.md"));
    EXPECT_EQ(help.page(), "plans");
}

TEST_F(Help, Searches) {
    const int all = listed();
    QTest::keyClicks(&part<QLineEdit>("help_search"), "call-out");
    EXPECT_GT(listed(), 0);
    EXPECT_LT(listed(), all);
    EXPECT_TRUE(text().contains("call-out", Qt::CaseInsensitive));
    auto& browser = part<QTextBrowser>("help_text");
    EXPECT_EQ(browser.textCursor().selectedText().toLower(), "call-out");
    EXPECT_FALSE(browser.extraSelections().isEmpty());
    const int first = browser.textCursor().position();
    const QString page = help.page();
    QTest::keyClick(&part<QLineEdit>("help_search"), Qt::Key_Return);
    EXPECT_TRUE(browser.textCursor().position() != first || help.page() != page);
    part<QLineEdit>("help_search").setText("nothing has these words");
    EXPECT_EQ(listed(), 0);
    EXPECT_TRUE(part<QLabel>("help_found").text().contains("No page"));
    part<QLineEdit>("help_search").clear();
    EXPECT_EQ(listed(), all);
}

class Hints : public testing::Test {
protected:
    void SetUp() override {
        over.resize(700, 500);
        over.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&over));
    }

    QTemporaryDir folder;
    Preferences preferences{folder.filePath("seamward.ini")};
    QWidget over;
    FirstHints hints{preferences, &over};
};

TEST_F(Hints, ShowOnce) {
    EXPECT_FALSE(hints.isVisible());
    hints.start();
    EXPECT_TRUE(hints.isVisible());
    auto* got_it = hints.findChild<QPushButton*>("got_it");
    QStringList texts;
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(hints.hint(), i);
        texts << hints.findChild<QLabel*>("hint_words")->text();
        EXPECT_TRUE(over.rect().contains(hints.geometry()));
        EXPECT_FALSE(preferences.hints_seen());
        QTest::mouseClick(got_it, Qt::LeftButton);
    }
    EXPECT_EQ(texts.removeDuplicates(), 0);
    EXPECT_FALSE(hints.isVisible());
    EXPECT_TRUE(preferences.hints_seen());
    hints.start();
    EXPECT_FALSE(hints.isVisible());
    preferences.set_hints_seen(false);  // "Show the hints again"
    EXPECT_TRUE(hints.isVisible());
}

TEST_F(Hints, FollowTheKeys) {
    hints.start();
    auto* got_it = hints.findChild<QPushButton*>("got_it");
    QTest::keyClick(got_it, Qt::Key_Right);
    EXPECT_EQ(hints.hint(), 1);
    QTest::keyClick(got_it, Qt::Key_Left);
    EXPECT_EQ(hints.hint(), 0);
    for (int i = 0; i < 3; ++i) QTest::keyClick(got_it, Qt::Key_Escape);
    EXPECT_FALSE(hints.isVisible());
    EXPECT_TRUE(preferences.hints_seen());
}

TEST_F(Hints, MayAllBeSkipped) {
    hints.start();
    QTest::mouseClick(hints.findChild<QPushButton*>("no_hints"), Qt::LeftButton);
    EXPECT_FALSE(hints.isVisible());
    EXPECT_TRUE(Preferences(folder.filePath("seamward.ini")).hints_seen());
}

}  // namespace
}  // namespace seamward::viewer::test
