// SPDX-License-Identifier: GPL-3.0-or-later
// A gap and the job's animals at one scale.
#include "panels/fit_sketch.h"

#include <QTextBrowser>
#include <QtTest>

#include "panels/facts_card.h"
#include "panels/ways_panel.h"
#include "tests/viewer/cut_off.h"
#include "tests/viewer/fit_fixture.h"

namespace seamward::viewer::test {
namespace {

TEST_F(Sketch, NoAnimals) {
    for (const Shown& one : shown) {
        FitSketch sketch;
        sketch.resize(300, 120);
        sketch.show_gap(job_with(one.gap, "[]"), GapIndex{0}, {});
        EXPECT_TRUE(sketch.accessibleDescription().contains("This job names no animals.")) << one.name;
        EXPECT_FALSE(sketch.grab().isNull());
        expect_apart(fit_layout(sketch.subject(), sketch.size(), sketch.font()), sketch.size(), one.name);
        keep_picture(sketch, QString("fit_none_") + one.name);
    }
}

TEST_F(Sketch, TellsAllInWords) {
    FitSketch sketch;
    sketch.resize(400, 120);
    sketch.show_gap(job_with("slot: {width: 1.7 mm, length: 9 m}", "[bark-scorpion, house-mouse]"), GapIndex{0}, {});
    const QString words = sketch.accessibleDescription();
    EXPECT_TRUE(words.contains("Bark scorpion, cross-section 1/16 in (1.59 mm) by 1/4 in (6.35 mm): fits."))
        << words.toStdString();
    EXPECT_TRUE(words.contains("House mouse, cross-section 15/64 in (6 mm) by 15/64 in (6 mm): kept out."))
        << words.toStdString();
    EXPECT_TRUE(words.contains("dashed outline in the gap is that of: Bark scorpion.")) << words.toStdString();
    preferences.set_lengths(Lengths::millimeters);
    QCoreApplication::sendPostedEvents();
    QCoreApplication::processEvents();
    sketch.show_gap(job_with("slot: {width: 0 mm, length: 9 m}"), GapIndex{0}, {});
    EXPECT_TRUE(sketch.accessibleDescription().startsWith("The gap is closed.")) << sketch.accessibleDescription().toStdString();
    EXPECT_FALSE(sketch.accessibleDescription().contains(" in ("));
}

TEST_F(Sketch, FitsAtAllSizesOfLetters) {
    for (const int percent : Preferences::text_sizes) {
        preferences.set_text_size(percent);
        for (const int width : {320, 400, 540}) {
            for (const Shown& one : shown) {
                FitSketch sketch;
                sketch.resize(width - 16, 120);
                sketch.show_gap(job_with(one.gap), GapIndex{0}, 1);
                QFont small = sketch.font();
                small.setPointSizeF(small.pointSizeF() * 0.92);
                const FitLayout layout = fit_layout(sketch.subject(), sketch.size(), small);
                const std::string when = std::to_string(percent) + " percent " + one.name + std::to_string(width);
                expect_apart(layout, sketch.size(), when);
                EXPECT_GE(layout.opening.window.height(), 24) << when;
                keep_picture(sketch, QString("fit_%1_%2_%3").arg(one.name).arg(percent).arg(width));
            }
        }
    }
}

TEST_F(Sketch, TakesTheColorsOfTheMoment) {
    for (const Shown& one : shown) {
        for (const int percent : {100, 150}) {
            preferences.set_text_size(percent);
            FitSketch sketch;
            sketch.resize(percent == 100 ? QSize(300, 120) : QSize(480, 150));
            sketch.show_gap(job_with(one.gap, "[bark-scorpion, house-mouse]"), GapIndex{0}, {});
            const QImage usual = sketch.grab().toImage();
            keep_picture(sketch, QString("fit_two_%1_%2").arg(one.name).arg(percent));
            preferences.set_high_contrast(true);
            const QImage strong = sketch.grab().toImage();
            keep_picture(sketch, QString("fit_strong_%1_%2").arg(one.name).arg(percent));
            preferences.set_high_contrast(false);
            EXPECT_NE(usual, strong) << one.name;
            EXPECT_EQ(strong.pixelColor(1, 1), QColor(Qt::white)) << one.name;
            EXPECT_EQ(sketch.grab().toImage(), usual) << one.name;
        }
    }
}

/// The demo with its ways.
class SketchInPlace : public Sketch {
protected:
    void SetUp() override {
        Sketch::SetUp();
        QSignalSpy found(&document, &JobDocument::ways_found);
        document.open(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml");
        ASSERT_TRUE(found.wait(30000));
    }
    void choose_animal(int animal) {
        QSignalSpy found(&document, &JobDocument::ways_found);
        document.choose_animal(animal);
        ASSERT_TRUE(found.wait(30000));
    }
    static void show(QWidget& widget) {
        widget.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&widget));
        QCoreApplication::processEvents();
    }

    JobDocument document;
};

TEST_F(SketchInPlace, ShowsTheSmallestGapOfTheWayChosen) {
    WaysPanel panel(document);
    panel.resize(400, 620);
    auto& sketch = *panel.findChild<FitSketch*>();
    emit document.opened();
    emit document.ways_found();
    document.choose_way(JobDocument::no_way);
    show(panel);
    EXPECT_FALSE(sketch.isVisible());
    document.choose_way(1);
    QCoreApplication::processEvents();
    EXPECT_TRUE(sketch.isVisible());
    EXPECT_LE(sketch.height(), 120);
    EXPECT_LT(sketch.mapTo(&panel, QPoint(0, sketch.height())).y(),
              panel.findChild<QTextBrowser*>("steps")->mapTo(&panel, QPoint()).y() + 1);
    const Survey& survey = document.job().survey;
    EXPECT_EQ(clear_width(sketch.subject().shape), clear_width(survey[document.chosen()->pinch_gap].shape));
    EXPECT_FALSE(sketch.subject().chosen);
    choose_animal(2);
    EXPECT_TRUE(sketch.subject().chosen);
    EXPECT_EQ(sketch.subject().animals[0].pest.id, document.job().pests[2].id);
    EXPECT_EQ(sketch.subject().animals[0].fit, Fit::through);
    for (const int percent : Preferences::text_sizes) {
        preferences.set_text_size(percent);
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
        EXPECT_LE(sketch.height(), 120) << percent;
        EXPECT_EQ(cut_off_texts(panel).join("\n").toStdString(), "") << percent;
        EXPECT_EQ(sketch.isVisible(), percent < 150) << percent;  // list and steps first
        keep_picture(panel, QString("fit_ways_%1").arg(percent));
        panel.resize(400, 940);
        QCoreApplication::processEvents();
        EXPECT_TRUE(sketch.isVisible()) << percent;
        keep_picture(panel, QString("fit_ways_high_%1").arg(percent));
        panel.resize(400, 620);
    }
}

TEST_F(SketchInPlace, ShowsTheGapOfTheCard) {
    QWidget picture;
    picture.resize(800, 640);
    FactsCard card(document, &picture);
    show(picture);
    auto& sketch = *card.findChild<FitSketch*>();
    const GapIndex gap = document.ways().paths[0].pinch_gap;
    card.show_gap(gap);
    QCoreApplication::processEvents();
    EXPECT_TRUE(sketch.isVisible());
    EXPECT_EQ(clear_width(sketch.subject().shape), clear_width(document.job().survey[gap].shape));
    choose_animal(0);
    EXPECT_TRUE(sketch.subject().chosen);
    EXPECT_EQ(sketch.subject().animals[0].pest.id, document.job().pests[0].id);
    for (const bool high : {false, true}) {
        preferences.set_high_contrast(high);
        for (const int percent : Preferences::text_sizes) {
            preferences.set_text_size(percent);
            QCoreApplication::sendPostedEvents();
            QCoreApplication::processEvents();
            EXPECT_EQ(cut_off_texts(card).join("\n").toStdString(), "") << percent;
            EXPECT_LE(card.height(), picture.height() / 2) << percent;  // the house stays in view
            keep_picture(card, QString("fit_card_%1%2").arg(percent).arg(high ? "_high" : ""));
        }
    }
    picture.resize(800, 200);  // words first
    QCoreApplication::processEvents();
    EXPECT_FALSE(sketch.isVisible());
    picture.resize(800, 640);
    preferences.set_text_size(100);
    QCoreApplication::processEvents();
    EXPECT_TRUE(sketch.isVisible());
}

}  // namespace
}  // namespace seamward::viewer::test
