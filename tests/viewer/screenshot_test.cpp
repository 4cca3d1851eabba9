// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QProcess>
#include <QSet>
#include <QTemporaryDir>

namespace seamward::viewer::test {
namespace {

const QString demo = QStringLiteral(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml");

struct Ended {
    int code = -1;
    QString out, err;
};

Ended run(const QStringList& arguments, bool with_screen = true) {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    if (!with_screen) {
        for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) environment.remove(name);
    }
    process.setProcessEnvironment(environment);
    process.start(QStringLiteral(SEAMWARD_VIEWER_PROGRAM), arguments);
    EXPECT_TRUE(process.waitForFinished(60'000));
    EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

QString written(const QTemporaryDir& folder, const char* text) {
    const QString name = folder.filePath("job.yaml");
    QFile file(name);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
    return name;
}

/// Colors of a part of a picture.
qsizetype colors(const QImage& image) {
    QSet<QRgb> seen;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) seen.insert(image.pixel(x, y));
    }
    return seen.size();
}

TEST(Screenshot, HasTheSizeAskedForAndShowsTheHouse) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("picture.png");
    for (const QSize size : {QSize(1280, 720), QSize(1920, 1080)}) {
        const Ended ended = run({"--screenshot", file, "--size", QString("%1x%2").arg(size.width()).arg(size.height()), demo});
        ASSERT_EQ(ended.code, 0) << ended.err.toStdString();
        const QImage image(file, "PNG");
        ASSERT_EQ(image.size(), size);
        // The 3D side right of the list: tube, halo and ground shade into many colors; none of it is black.
        const QImage house = image.copy(size.width() / 2, size.height() / 5, size.width() / 2, size.height() / 2);
        EXPECT_GT(colors(house), 200);
        EXPECT_GT(qGray(house.pixel(house.width() - 3, 3)), 200);
    }
}

TEST(Screenshot, OfAnotherWayIsAnotherPicture) {
    const QTemporaryDir folder;
    ASSERT_EQ(run({"--screenshot", folder.filePath("1.png"), demo}).code, 0);
    ASSERT_EQ(run({"--screenshot", folder.filePath("2.png"), "--way", "2", demo}).code, 0);
    EXPECT_NE(QImage(folder.filePath("1.png")), QImage(folder.filePath("2.png")));
}

TEST(Screenshot, OfABadJobSaysFileAndLine) {
    const QTemporaryDir folder;
    const QString job = written(
        folder,
        "seamward: 1\nspaces:\n  - {id: yard, kind: outdors}\ngaps:\n  - {id: a, between: [yard, den], hole: {diameter: 3}}\n");
    const Ended ended = run({"--screenshot", folder.filePath("picture.png"), job});
    EXPECT_EQ(ended.code, 1);
    EXPECT_TRUE(ended.err.contains(job + ":3:")) << ended.err.toStdString();
    EXPECT_TRUE(ended.err.contains(job + ":5:")) << ended.err.toStdString();
    EXPECT_FALSE(QFile::exists(folder.filePath("picture.png")));
}

TEST(Screenshot, OfAMissingJobOrIntoAMissingFolderIsBadInput) {
    const QTemporaryDir folder;
    EXPECT_EQ(run({"--screenshot", folder.filePath("picture.png"), folder.filePath("none.yaml")}).code, 1);
    EXPECT_EQ(run({"--screenshot", folder.filePath("none/picture.png"), demo}).code, 1);
}

TEST(Screenshot, WorksForAJobWithoutPositions) {
    const QTemporaryDir folder;
    const QString job = written(folder,
                                "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\n"
                                "gaps: [{id: a, between: [yard, den], hole: {diameter: 3 mm}}]\n");
    const Ended ended = run({"--screenshot", folder.filePath("picture.png"), job});
    EXPECT_EQ(ended.code, 0) << ended.err.toStdString();
    EXPECT_FALSE(QImage(folder.filePath("picture.png")).isNull());
}

TEST(CommandLine, WrongUsageIsTold) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("picture.png");
    for (const QStringList& arguments :
         {QStringList{"--screenshot", file}, QStringList{"--screenshot", file, "--size", "12x9", demo},
          QStringList{"--size", "1280x720", demo}, QStringList{"--sise"}, QStringList{demo, demo},
          QStringList{"--screenshot", file, "--way", "0", demo}, QStringList{"--screenshot", file, "--way", "1000", demo}}) {
        const Ended ended = run(arguments);
        EXPECT_EQ(ended.code, 2) << arguments.join(' ').toStdString();
        EXPECT_TRUE(ended.err.contains("seamward-viewer: ")) << ended.err.toStdString();
    }
    EXPECT_FALSE(QFile::exists(file));
}

TEST(CommandLine, HelpAndVersionNeedNoScreen) {
    EXPECT_TRUE(run({"--help"}, false).out.contains("--screenshot"));
    EXPECT_EQ(run({"--version"}, false).code, 0);
    const Ended ended = run({demo}, false);
    EXPECT_EQ(ended.code, 4);
    EXPECT_TRUE(ended.err.contains("xvfb-run")) << ended.err.toStdString();
}

}  // namespace
}  // namespace seamward::viewer::test
