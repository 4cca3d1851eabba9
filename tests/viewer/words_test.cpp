// SPDX-License-Identifier: GPL-3.0-or-later
// Language, lengths, size of the letters and contrast, changed while windows show.
#include <gtest/gtest.h>

#include <QSettings>
#include <QTemporaryDir>
#include <QVBoxLayout>
#include <QtTest>
#include <algorithm>

#include "document/job_document.h"
#include "document/translations.h"
#include "document/units_text.h"
#include "document/way_text.h"
#include "layers/palette.h"
#include "panels/help_pages.h"
#include "panels/key_panel.h"
#include "panels/preferences_dialog.h"
#include "panels/ways_panel.h"
#include "tests/viewer/cut_off.h"
#include "window/look.h"

namespace seamward::viewer::test {
namespace {

using Language = Preferences::Language;

class Words : public testing::Test {
protected:
    void SetUp() override {
        wear(*qApp, preferences);
        preferences.set_language(Language::english);
        settle();
    }
    void TearDown() override {
        preferences.set_language(Language::english);
        preferences.set_lengths(Lengths::inches_first);
        preferences.set_text_size(100);
        preferences.set_high_contrast(false);
        settle();
    }
    /// Everything that was posted is done, and laid out.
    static void settle() {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }
    [[nodiscard]] QString file() const { return folder.filePath("seamward.ini"); }

    QTemporaryDir folder;
    Preferences preferences{file()};
};

/// The panels on the demo, as large as in the window.
class OpenJob : public Words {
protected:
    void SetUp() override {
        Words::SetUp();
        QSignalSpy found(&document, &JobDocument::ways_found);
        document.open(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml");
        ASSERT_TRUE(found.wait(30000));
        document.choose_way(0);
        auto* column = new QVBoxLayout(&page);
        column->addWidget(new WaysPanel(document));
        page.resize(420, 720);
        show(page);
        ways = page.findChild<WaysPanel*>();
        // The panel came after the job.
        emit document.opened();
        emit document.ways_found();
        emit document.way_chosen(0);
        settle();
    }
    static void show(QWidget& widget) {
        widget.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&widget));
        settle();
    }
    template <class Widget>
    [[nodiscard]] Widget& part(const char* name) {
        return *page.findChild<Widget*>(name);
    }
    void expect_all_fits(const QWidget& widget, const char* when) {
        EXPECT_EQ(cut_off_texts(widget).join("\n").toStdString(), "") << when;
        EXPECT_EQ(mnemonics_alike(widget).join("\n").toStdString(), "") << when;
    }
    static void keep_picture(QWidget& widget, const char* name) {
        const QString kept_in = qEnvironmentVariable("SEAMWARD_KEEP_PICTURES");
        if (kept_in.isEmpty()) return;
        EXPECT_TRUE(widget.grab().save(kept_in + '/' + name + ".png"));
    }

    JobDocument document;
    QWidget page;
    WaysPanel* ways = nullptr;
};

TEST_F(Words, PreferencesAreKept) {
    QSignalSpy changed(&preferences, &Preferences::changed);
    preferences.set_language(Language::spanish);
    preferences.set_lengths(Lengths::millimeters);
    preferences.set_text_size(150);
    preferences.set_high_contrast(true);
    EXPECT_EQ(changed.count(), 4);
    preferences.set_high_contrast(true);
    EXPECT_EQ(changed.count(), 4);
    const Preferences again(file());
    EXPECT_EQ(again.language(), Language::spanish);
    EXPECT_EQ(again.lengths(), Lengths::millimeters);
    EXPECT_EQ(again.text_size(), 150);
    EXPECT_TRUE(again.high_contrast());
    EXPECT_FALSE(again.hints_seen());
}

TEST_F(Words, NonsenseInTheSettingsIsNoMatter) {
    const QString other = folder.filePath("other.ini");
    {
        QSettings settings(other, QSettings::IniFormat);
        settings.setValue("language", "xx");
        settings.setValue("text_size", "9000");
        settings.setValue("lengths", 7);
    }
    const Preferences read(other);
    EXPECT_EQ(read.language(), Language::system);
    EXPECT_EQ(read.text_size(), 175);
    EXPECT_EQ(read.lengths(), Lengths::inches_first);
}

TEST_F(Words, WidthsAreWrittenAsWanted) {
    EXPECT_EQ(width_words(0.0012), "3/64 in (1.2 mm)");
    EXPECT_EQ(width_words(0.00001), "under 1/64 in (0.01 mm)");
    EXPECT_EQ(width_words(0.0002), "under 1/64 in (0.2 mm)");
    EXPECT_EQ(distance_words(0.08), "3 5/32 in (80 mm)");
    EXPECT_EQ(distance_words(2), "2 m (6.6 ft)");
    preferences.set_lengths(Lengths::millimeters);
    EXPECT_EQ(width_words(0.0012), "1.2 mm");
    EXPECT_EQ(distance_words(0.08), "80 mm");
    EXPECT_EQ(distance_words(2), "2 m");
    preferences.set_language(Language::spanish);
    preferences.set_lengths(Lengths::inches_first);
    EXPECT_EQ(width_words(0.0012), "3/64 pulg (1.2 mm)");
    EXPECT_EQ(width_words(0.00001), "menos de 1/64 pulg (0.01 mm)");
}

TEST_F(Words, TablesSpeakSpanish) {
    EXPECT_EQ(catalog_text("House mouse"), "House mouse");
    EXPECT_EQ(hand_text(0.00128), "between a card and a dime");
    preferences.set_language(Language::spanish);
    EXPECT_EQ(catalog_text("House mouse").toStdString(), "Ratón casero");
    EXPECT_EQ(catalog_text("flood opening").toStdString(), "abertura para inundación");
    EXPECT_EQ(catalog_text("Uncle Bob's raccoon"), "Uncle Bob's raccoon");
    EXPECT_TRUE(hand_text(0.00128).startsWith("entre una tarjeta y")) << hand_text(0.00128).toStdString();
}

TEST_F(OpenJob, SpeaksSpanishAndBack) {
    const auto texts = [&] {
        QStringList all;
        for (const QLabel* label : page.findChildren<QLabel*>()) {
            if (label->isVisible() && label->objectName() != "title") all << label->text();
        }
        all << part<QComboBox>("animals").itemText(0) << part<QComboBox>("animals").itemText(1);
        all << part<QComboBox>("rooms").itemText(0) << part<QListWidget>("ways").accessibleName();
        all << part<QListWidget>("ways").item(0)->text() << part<QTextBrowser>("steps").toPlainText();
        return all;
    };
    const QStringList english = texts();
    ASSERT_GE(english.size(), 8);
    preferences.set_language(Language::spanish);
    settle();
    const QStringList spanish = texts();
    ASSERT_EQ(spanish.size(), english.size());
    for (int i = 0; i < english.size(); ++i) EXPECT_NE(spanish[i], english[i]) << english[i].toStdString();
    EXPECT_EQ(part<QListWidget>("ways").currentRow(), 0);
    preferences.set_language(Language::english);
    settle();
    EXPECT_EQ(texts(), english);
}

TEST_F(OpenJob, NothingIsCutOff) {
    PreferencesDialog dialog(preferences);
    HelpPages help;
    help.resize(1000, 620);
    KeyPanel key;
    key.resize(820, key.heightForWidth(820));
    show(key);
    show(dialog);
    show(help);
    for (const Language language : {Language::english, Language::spanish}) {
        preferences.set_language(language);
        for (const int size : Preferences::text_sizes) {
            preferences.set_text_size(size);
            for (const QSize& window : {QSize(400, 640), QSize(540, 1000)}) {
                page.resize(window);
                settle();
                const std::string when = std::to_string(size) + " percent, " + spoken().toStdString();
                expect_all_fits(page, when.c_str());
                expect_all_fits(dialog, when.c_str());
                expect_all_fits(help, when.c_str());
            }
            const std::string name = spoken().toStdString() + std::to_string(size);
            page.resize(400, 700);
            settle();
            keep_picture(page, ("ways_" + name).c_str());
            key.resize(820, key.heightForWidth(820));
            keep_picture(key, ("key_" + name).c_str());
            keep_picture(dialog, ("preferences_" + name).c_str());
            keep_picture(help, ("help_" + name).c_str());
        }
    }
}

TEST_F(OpenJob, WidthsAreRewritten) {
    EXPECT_TRUE(part<QListWidget>("ways").item(0)->text().contains(" in ("));
    preferences.set_lengths(Lengths::millimeters);
    settle();
    EXPECT_FALSE(part<QListWidget>("ways").item(0)->text().contains(" in ("));
    EXPECT_TRUE(part<QListWidget>("ways").item(0)->text().contains(" mm"));
    EXPECT_FALSE(part<QTextBrowser>("steps").toPlainText().contains(" in ("));
}

TEST_F(OpenJob, LettersGrowEverywhere) {
    const double plain = part<QLabel>("count").font().pointSizeF();
    const double title = part<QLabel>("title").font().pointSizeF();
    const int row = part<QListWidget>("ways").visualItemRect(part<QListWidget>("ways").item(0)).height();
    preferences.set_text_size(175);
    settle();
    EXPECT_NEAR(part<QLabel>("count").font().pointSizeF(), plain * 1.75, 0.1);
    EXPECT_NEAR(part<QLabel>("title").font().pointSizeF(), title * 1.75, 0.1);
    EXPECT_GT(part<QListWidget>("ways").visualItemRect(part<QListWidget>("ways").item(0)).height(), row);
    preferences.set_text_size(100);
    settle();
    EXPECT_NEAR(part<QLabel>("title").font().pointSizeF(), title, 0.1);
    EXPECT_EQ(part<QListWidget>("ways").visualItemRect(part<QListWidget>("ways").item(0)).height(), row);
}

TEST_F(OpenJob, ContrastIsStrongAtOnce) {
    preferences.set_high_contrast(true);
    settle();
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), QColor(Qt::white));
    EXPECT_EQ(QApplication::palette().color(QPalette::WindowText), QColor(Qt::black));
    const QImage picture = page.grab().toImage();
    EXPECT_EQ(picture.pixelColor(2, 2), QColor(Qt::white));
    keep_picture(page, "ways_contrast");
    preferences.set_high_contrast(false);
    settle();
    EXPECT_EQ(page.grab().toImage().pixelColor(2, 2), palette::panel);
}

TEST_F(OpenJob, TheDialogAppliesAtOnce) {
    PreferencesDialog dialog(preferences);
    show(dialog);
    const auto choose = [&](const char* name, int row) {
        auto* box = dialog.findChild<QComboBox*>(name);
        box->setFocus();
        while (box->currentIndex() < row) QTest::keyClick(box, Qt::Key_Down);
        while (box->currentIndex() > row) QTest::keyClick(box, Qt::Key_Up);
        settle();
    };
    choose("language", 2);
    EXPECT_EQ(preferences.language(), Language::spanish);
    EXPECT_EQ(dialog.windowTitle(), "Preferencias");
    choose("lengths", 1);
    EXPECT_EQ(preferences.lengths(), Lengths::millimeters);
    choose("text_size", 2);
    EXPECT_EQ(preferences.text_size(), 150);
    QTest::mouseClick(dialog.findChild<QCheckBox*>("contrast"), Qt::LeftButton, {}, QPoint(8, 12));
    EXPECT_TRUE(preferences.high_contrast());
    EXPECT_FALSE(dialog.findChild<QPushButton*>("hints_again")->isEnabled());
    QTest::mouseClick(dialog.findChild<QPushButton*>("close"), Qt::LeftButton);
    EXPECT_FALSE(dialog.isVisible());
}

}  // namespace
}  // namespace seamward::viewer::test
