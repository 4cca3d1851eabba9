// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

#include "document/closings_document.h"

namespace seamward::viewer::test {

inline const QString demo = QStringLiteral(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml");

/// The scorpion comes in by a weep that must stay open, the rat only by a gap that can be closed.
inline constexpr const char* no_plan_job =
    "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\n"
    "gaps: [{id: weep, name: weeping brick, between: [yard, den], hole: {diameter: 6.4 mm}, closing: {never: water has to "
    "leave}},\n"
    "       {id: door, between: [yard, den], slot: {width: 13 mm, length: 1 m}, closing: {cost: $12.00}}]\n"
    "pests: [bark-scorpion, norway-rat]\n";

/// Bats live in the attic and leave it by the eave.
inline constexpr const char* bats_job =
    "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: attic, kind: cavity}, {id: den, kind: living}]\n"
    "gaps:\n"
    "  - {id: eave, between: [yard, attic], slot: {width: 20 mm, length: 1 m}, at: [0 m, 0 m, 3 m], closing: {cost: $40.00}}\n"
    "  - {id: hatch, between: [attic, den], slot: {width: 22 mm, length: 1 m}, closing: {cost: $90.00}}\n"
    "  - {id: door, between: [yard, den], slot: {width: 9 mm, length: 1 m}, at: [2 m, 0 m, 0 m], closing: {cost: $12.00}}\n"
    "pests: [bat, house-mouse]\noccupied: [{space: attic, animal: bat, seen: droppings, way: eave}]\n";

/// The attic has enough air with a finer mesh over one of its vents, and too little with one over both.
inline constexpr const char* vents_job =
    "seamward: 1\n"
    "spaces: [{id: yard, kind: outdoors}, {id: attic, kind: cavity, floor: 100 m2}, {id: den, kind: living}]\n"
    "gaps:\n"
    "  - {id: east, between: [yard, attic], mesh: {opening: 12 mm, area: 5000 cm2}, duty: vent}\n"
    "  - {id: west, between: [yard, attic], mesh: {opening: 12 mm, area: 5000 cm2}, duty: vent}\n"
    "  - {id: hatch, between: [attic, den], slot: {width: 7 mm, length: 1 m}, closing: {cost: $9.00}}\n"
    "pests: [house-mouse]\n";

/// A job with its closings.
class Closings : public testing::Test {
protected:
    /// Until the plan is made and the outlook known.
    void open(const QString& path) {
        QSignalSpy planned(&closings, &ClosingsDocument::planned);
        QSignalSpy found(&closings, &ClosingsDocument::outlook_found);
        document.open(path);
        ASSERT_TRUE(planned.wait(20'000));
        if (closings.has_plan() && found.isEmpty()) {
            ASSERT_TRUE(found.wait(20'000));
        }
    }
    void open_text(const char* text) {
        QFile file(folder.filePath("job.yaml"));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        file.close();
        open(file.fileName());
    }
    /// Until the ways and the outlook of what was done are known.
    template <class Act>
    void act(Act act) {
        QSignalSpy ways(&document, &JobDocument::ways_found);
        QSignalSpy outlook(&closings, &ClosingsDocument::outlook_found);
        act();
        if (ways.isEmpty()) {
            ASSERT_TRUE(ways.wait(20'000));
        }
        if (outlook.isEmpty()) {
            ASSERT_TRUE(outlook.wait(20'000));
        }
    }
    void tick(GapIndex gap, bool on) {
        act([&] { closings.tick(gap, on); });
    }
    static Plan plan_of(const Job& job) {
        PlanSettings settings;
        settings.against = job.pests;
        return make_plan(job, settings, RunContext());
    }
    void expect_ways_of(const Survey& survey) {
        const Trace expected = trace(survey, {.pests = {}, .to = {}, .top = JobDocument::ways_wanted}, RunContext());
        ASSERT_EQ(document.ways().paths.size(), expected.paths.size());
        for (std::size_t i = 0; i < expected.paths.size(); ++i) EXPECT_EQ(document.ways().paths[i].path, expected.paths[i].path);
    }
    void expect_animals_of(const Survey& survey) {
        for (const AnimalOutlook& animal : closings.outlook().animals) {
            const Trace expected = trace(survey, {.pests = {animal.pest}, .to = {}, .top = 1}, RunContext());
            ASSERT_EQ(animal.way.has_value(), !expected.paths.empty()) << animal.pest.id;
            if (!animal.way) continue;
            EXPECT_EQ(animal.way->path, expected.paths.front().path) << animal.pest.id;
            EXPECT_DOUBLE_EQ(animal.way->pinch, expected.paths.front().pinch);
        }
    }

    QTemporaryDir folder;
    JobDocument document;
    ClosingsDocument closings{document};
};

}  // namespace seamward::viewer::test
