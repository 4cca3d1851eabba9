// SPDX-License-Identifier: GPL-3.0-or-later
// Where a gap and the job's animals are drawn: one scale for all.
#include "panels/fit_layout.h"

#include "document/way_text.h"
#include "tests/viewer/fit_fixture.h"

namespace seamward::viewer::test {
namespace {

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

TEST_F(Sketch, AMeshOverASlotIsDrawnAndBothCount) {
    Job job = job_with("slot: {width: 5 mm, length: 5 mm}", "[bark-scorpion, american-cockroach]");
    job.survey.gaps[0].shape = Slot{0.005, 0.006};
    close_gap(job.survey.gaps[0], 0.0049);
    const FitSubject subject = fit_subject(job, GapIndex{0}, {});
    EXPECT_TRUE(std::holds_alternative<Mesh>(subject.shape));
    // The scorpion would pass that mesh, but not the length of the slot.
    EXPECT_TRUE(passes(job.pests[0].size, subject.shape));
    ASSERT_EQ(subject.animals.size(), 2U);
    EXPECT_EQ(subject.animals[0].pest.id, "american-cockroach");
    EXPECT_EQ(subject.animals[0].fit, Fit::through);
    EXPECT_EQ(subject.animals[1].fit, Fit::kept_out);
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

}  // namespace
}  // namespace seamward::viewer::test
