// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <QWidget>
#include <array>

#include "panels/fit_layout.h"
#include "window/look.h"

namespace seamward::viewer::test {

inline constexpr const char* usual_pests = "[bark-scorpion, house-mouse, american-cockroach, norway-rat, house-sparrow]";

inline Job job_with(const std::string& gap, const std::string& pests = usual_pests) {
    return parse_job(
        "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\ngaps:\n  - {id: g, between: [yard, den], " +
            gap + "}\npests: " + pests + "\n",
        "job.yaml");
}

/// A gap of each shape, and of sizes that are hard to draw.
struct Shown {
    const char* name;
    const char* gap;
};

inline constexpr std::array shown{
    Shown{"slot", "slot: {width: 1.2 mm, length: 9 m}"},
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

/// Everything within the sketch, and no drawing or words over others.
inline void expect_apart(const FitLayout& layout, const QSizeF& size, const std::string& when) {
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

}  // namespace seamward::viewer::test
