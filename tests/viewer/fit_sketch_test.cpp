// SPDX-License-Identifier: GPL-3.0-or-later
// A gap and the job's animals at one scale.
#include "panels/fit_sketch.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QTemporaryDir>
#include <QTextBrowser>
#include <QtTest>
#include <array>
#include <cmath>

#include "layers/palette.h"
#include "panels/facts_card.h"
#include "panels/ways_panel.h"
#include "tests/viewer/cut_off.h"
#include "window/look.h"

namespace seamward::viewer::test {
namespace {

constexpr const char* usual_pests = "[bark-scorpion, house-mouse, american-cockroach, norway-rat, house-sparrow]";

Job job_with(const std::string& gap, const std::string& pests = usual_pests) {
    return parse_job(
        "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\ngaps:\n  - {id: g, between: [yard, den], " +
            gap + "}\npests: " + pests + "\n",
        "job.yaml");
}

struct Shown {
    const char* name;
    const char* gap;
};

constexpr std::array shown{Shown{"slot", "slot: {width: 1.2 mm, length: 9 m}"},
                           Shown{"short_slot", "slot: {width: 8 mm, length: 20 mm}"},
                           Shown{"hole", "hole: {diameter: 19 mm}"},
                           Shown{"ring", "ring: {width: 2.5 mm, around: 22 mm}"},
                           Shown{"thick_pipe", "ring: {width: 4 mm, around: 110 mm}"},
                           Shown{"mesh", "mesh: {opening: 5.7 mm, area: 100 cm2}"},
                           Shown{"shut", "slot: {width: 0 mm, length: 2 m}"},
                           Shown{"perhaps", "slot: {width: 1.2 mm, length: 9 m}, evidence: {how: measured, plus_minus: 0.5 mm}"},
                           Shown{"tiny", "slot: {width: 0.02 mm, length: 9 m}"},
                           Shown{"tiny_hole", "hole: {diameter: 0.3 mm}"},
                           Shown{"huge", "hole: {diameter: 1.5 m}"},
                           Shown{"huge_slot", "slot: {width: 300 mm, length: 2 m}"},
                           Shown{"huge_mesh", "mesh: {opening: 200 mm}"}};

class Sketch : public testing::Test {
protected:
    void SetUp() override { wear(*qApp, preferences); }
    void TearDown() override {
        preferences.set_lengths(Lengths::inches_first);
        preferences.set_text_size(100);
        preferences.set_high_contrast(false);
        QCoreApplication::processEvents();
    }
    static QSizeF needs(const FitAnimal& animal) { return QSizeF(animal.pest.size.hole, animal.pest.size.slit) * 1e3; }
    static void keep_picture(QWidget& widget, const QString& name) {
        const QString kept_in = qEnvironmentVariable("SEAMWARD_KEEP_PICTURES");
        if (!kept_in.isEmpty()) {
            EXPECT_TRUE(widget.grab().save(kept_in + '/' + name + ".png"));
        }
    }

    QTemporaryDir folder;
    Preferences preferences{folder.filePath("seamward.ini")};
};

void expect_apart(const FitLayout& layout, const QSizeF& size, const std::string& when) {
    const QRectF all = QRectF(QPointF(), size).adjusted(-0.01, -0.01, 0.01, 0.01);
    std::vector<QRectF> boxes{layout.opening.window, layout.opening.words};
    for (const FitLayout::Column& column : layout.animals) boxes.insert(boxes.end(), {column.window, column.words});
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        EXPECT_TRUE(all.contains(boxes[i])) << when << ", box " << i;
        for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(boxes[i].intersects(boxes[j])) << when << ", boxes " << i << " and " << j;
    }
    EXPECT_TRUE(layout.bar_box.isNull() || layout.opening.words.adjusted(-0.01, -0.01, 0.01, 0.01).contains(layout.bar_box))
        << when;
    if (!layout.bar.isNull()) {
        EXPECT_LT(layout.bar.x2(), layout.bar_box.left()) << when;
    }
}

TEST_F(Sketch, OneScaleForAll) {
    for (const Shown& one : shown) {
        const Job job = job_with(one.gap);
        for (const QSizeF size : {QSizeF(300, 120), QSizeF(400, 120), QSizeF(520, 170)}) {
            const FitSubject subject = fit_subject(job, GapIndex{0}, 1);
            const FitLayout layout = fit_layout(subject, size, QApplication::font());
            const std::string when = std::string(one.name) + " in " + std::to_string(size.width());
            expect_apart(layout, size, when);
            ASSERT_GE(layout.animals.size(), 1U) << when;
            ASSERT_GT(layout.scale, 0) << when;
            for (std::size_t i = 0; i < layout.animals.size(); ++i) {
                const FitLayout::Column& column = layout.animals[i];
                EXPECT_NEAR(column.shape.width(), needs(subject.animals[i]).width() * layout.scale, 1) << when;
                EXPECT_NEAR(column.shape.height(), needs(subject.animals[i]).height() * layout.scale, 1) << when;
                // All of it is there, or it is torn where it goes on.
                EXPECT_TRUE(column.torn() != 0 || column.window.adjusted(-1, -1, 1, 1).contains(column.shape)) << when;
            }
            const Shape& shape = job.survey.gaps[0].shape;
            const QRectF& clear = layout.opening.shape;
            const double width = clear_width(shape) * 1e3 * layout.scale;
            if (std::holds_alternative<Ring>(shape)) {
                EXPECT_NEAR(layout.pipe.width(), std::get<Ring>(shape).around * 1e3 * layout.scale, 1) << when;
                EXPECT_NEAR(clear.bottom() - layout.pipe.bottom(), width, 1) << when;
                EXPECT_NEAR(layout.pipe.left() - clear.left(), width, 1) << when;
            } else if (!is_shut(shape)) {
                EXPECT_NEAR(clear.height(), width, 1) << when;
                EXPECT_NEAR(clear.width(),
                            std::holds_alternative<Slot>(shape) ? std::get<Slot>(shape).length * 1e3 * layout.scale : width, 1)
                    << when;
            }
            EXPECT_LT(clear.bottom(), layout.opening.window.bottom() - 5) << when;
        }
    }
}

TEST_F(Sketch, NothingIsTornThatNeedNotBe) {
    // Up to ten times larger: all in full, but for the length of a slot.
    for (const char* gap : {"slot: {width: 1.2 mm, length: 9 m}", "hole: {diameter: 19 mm}", "mesh: {opening: 5.7 mm}"}) {
        const Job job = job_with(gap, "[bark-scorpion, house-mouse]");
        const FitLayout layout = fit_layout(fit_subject(job, GapIndex{0}, {}), {300, 120}, QApplication::font());
        EXPECT_EQ(layout.opening.torn() & Qt::TopEdge, 0) << gap;
        ASSERT_EQ(layout.animals.size(), 2U) << gap;
        for (const FitLayout::Column& column : layout.animals) EXPECT_EQ(column.torn(), 0) << gap;
    }
}

TEST_F(Sketch, TheBarIsAsLongAsItSays) {
    for (const Lengths lengths : {Lengths::millimeters, Lengths::inches_first}) {
        preferences.set_lengths(lengths);
        for (const Shown& one : shown) {
            const FitLayout layout =
                fit_layout(fit_subject(job_with(one.gap), GapIndex{0}, {}), {300, 120}, QApplication::font());
            ASSERT_FALSE(layout.bar.isNull()) << one.name;
            const QStringList parts = layout.bar_words.split(' ');
            ASSERT_EQ(parts.size(), 2) << one.name;
            const QStringList number = parts[0].split('/');
            const double told =
                number[0].toDouble() / (number.size() == 2 ? number[1].toDouble() : 1) * (parts[1] == "in" ? 25.4 : 1);
            EXPECT_NEAR(layout.bar.length(), told * layout.scale, 1e-6) << one.name;
            EXPECT_GT(layout.bar.length(), 5) << one.name;
            EXPECT_TRUE(lengths == Lengths::inches_first || parts[1] == "mm") << one.name;
        }
    }
}

TEST_F(Sketch, SaysWhoGetsThroughAsThePathsDo) {
    for (const Shown& one : shown) {
        const Job job = job_with(one.gap);
        for (std::size_t chosen = 0; chosen < job.pests.size(); ++chosen) {
            const FitSubject subject = fit_subject(job, GapIndex{0}, chosen);
            ASSERT_EQ(subject.animals.size(), FitSubject::most_animals);
            EXPECT_EQ(subject.animals[0].pest.id, job.pests[chosen].id);
            for (const FitAnimal& animal : subject.animals) {
                const bool sure = lets_through(job.survey.gaps[0], animal.pest.size, Sizing::stated);
                const bool maybe = lets_through(job.survey.gaps[0], animal.pest.size, Sizing::with_plus_minus);
                const QString expected = sure ? "fits" : maybe ? "perhaps" : "kept out";
                EXPECT_EQ(fit_words(animal.fit), expected) << one.name << ' ' << animal.pest.id;
            }
        }
    }
}

TEST_F(Sketch, WhoFitsLiesInTheOpening) {
    for (const Shown& one : shown) {
        const Job job = job_with(one.gap);
        const FitSubject subject = fit_subject(job, GapIndex{0}, {});
        const FitLayout layout = fit_layout(subject, {400, 120}, QApplication::font());
        const bool any =
            std::ranges::any_of(job.pests, [&](const Pest& pest) { return passes(pest.size, job.survey.gaps[0].shape); });
        ASSERT_EQ(!layout.lying.isEmpty(), any) << one.name;
        if (!any) continue;
        QPainterPath clear;
        if (layout.pipe.isEmpty() && !std::holds_alternative<Hole>(subject.shape)) {
            clear.addRect(layout.opening.shape.adjusted(-0.5, -0.5, 0.5, 0.5));
        } else {
            clear.addEllipse(layout.opening.shape.adjusted(-0.5, -0.5, 0.5, 0.5));
            if (!layout.pipe.isEmpty()) clear.addEllipse(layout.pipe.adjusted(0.5, 0.5, -0.5, -0.5));
        }
        EXPECT_TRUE(clear.contains(layout.lying.translated(0, 0))) << one.name;
    }
}

TEST_F(Sketch, TheMostTellingAnimalsComeFirst) {
    const Job job = job_with("slot: {width: 8 mm, length: 2 m}",
                             "[bark-scorpion, norway-rat, house-mouse, house-sparrow, american-cockroach]");
    std::vector<std::string> ids;
    for (const FitAnimal& animal : fit_subject(job, GapIndex{0}, {}).animals) ids.push_back(animal.pest.id);
    EXPECT_EQ(ids, (std::vector<std::string>{"house-mouse", "norway-rat", "american-cockroach", "house-sparrow"}));
    EXPECT_EQ(fit_subject(job, GapIndex{0}, 3).animals[0].pest.id, "house-sparrow");
    EXPECT_FALSE(fit_subject(job, GapIndex{0}, 99).chosen);
}

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
