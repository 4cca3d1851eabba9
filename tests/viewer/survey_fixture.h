// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <memory>

#include "document/survey_document.h"

namespace seamward::viewer::test {

inline const QString scenarios = QStringLiteral(SEAMWARD_SOURCE_FOLDER "/scenarios/");

/// A yard, a wall and a room.
inline const std::string small_job =
    "# what was seen in the yard\n"
    "seamward: 1\n"
    "job: {name: \"Larkspur 4\"}\n"
    "spaces: [{id: yard, kind: outdoors}, {id: wall, kind: cavity, name: \"north wall\"}, {id: den, kind: living}]\n"
    "gaps:\n"
    "  - id: screed          # a card slips in\n"
    "    name: joint under the screed\n"
    "    between: [yard, wall]\n"
    "    slot: {width: 1/16 in, length: 9 m}\n"
    "    at: [4.5 m, 9 m, 0.05 m]\n"
    "    evidence: {how: assumed}\n"
    "  - {id: bib, name: \"hose bibb, north wall\", between: [wall, den], ring: {width: 2.5 mm, around: 22 mm}}  # by the tap\n"
    "  - {id: vent, between: [yard, den], mesh: {opening: 5.7 mm}, evidence: {how: measured, plus_minus: 0.2 mm}}\n"
    "pests: [bark-scorpion]\n";

/// An open job in a folder of the test's own, with its survey.
class SurveyFixture : public testing::Test {
protected:
    QString write(const QString& name, const std::string& text) {
        const QString path = folder.filePath(name);
        QDir().mkpath(QFileInfo(path).absolutePath());
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text.data(), static_cast<qint64>(text.size()));
        return path;
    }
    static std::string on_disk(const QString& path) {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
        return file.readAll().toStdString();
    }
    void open(const QString& path) {
        QSignalSpy found(&document, &JobDocument::ways_found);
        document.open(path);
        ASSERT_TRUE(found.wait(20'000));
    }
    void open_small() { open(write("job.yaml", small_job)); }
    /// Does something and waits until the job was read again and its ways are known.
    template <class Act>
    void act(Act act) {
        QSignalSpy found(&document, &JobDocument::ways_found);
        act();
        if (found.isEmpty()) {
            ASSERT_TRUE(found.wait(20'000));
        }
    }
    [[nodiscard]] const Gap& gap(const std::string& id) const {
        for (const Gap& one : document.filed()->survey.gaps) {
            if (one.id == id) return one;
        }
        throw std::runtime_error("no gap " + id);
    }
    [[nodiscard]] GapIndex index(const std::string& id) const {
        return {static_cast<std::uint32_t>(&gap(id) - document.filed()->survey.gaps.data())};
    }
    static ChangeGap width(const std::string& id, const std::string& shape, const std::string& text) {
        ChangeGap edit{.id = id};
        edit.shape = ShapeText{shape, text, std::nullopt};
        return edit;
    }

    /// Drafts go into the test's own folder too.
    struct OwnFolder : QTemporaryDir {
        OwnFolder() { qputenv("XDG_DATA_HOME", filePath("data").toUtf8()); }
    };

    OwnFolder folder;
    JobDocument document;
    SurveyDocument survey{document};
};

}  // namespace seamward::viewer::test
