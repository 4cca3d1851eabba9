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

TEST(Screenshot, OfARoomAndAnAnimalIsAnotherPicture) {
    const QTemporaryDir folder;
    std::vector<QImage> pictures;
    for (const QStringList& choice : {QStringList{}, QStringList{"--room", "hall"}, QStringList{"--room", "bath"},
                                      QStringList{"--room", "bath", "--pest", "bark-scorpion"}}) {
        const QString file = folder.filePath(QString("%1.png").arg(pictures.size()));
        const Ended ended = run(QStringList{"--screenshot", file} + choice + QStringList{demo});
        ASSERT_EQ(ended.code, 0) << ended.err.toStdString();
        for (const QImage& other : pictures) EXPECT_NE(other, QImage(file)) << choice.join(' ').toStdString();
        pictures.emplace_back(file);
    }
}

TEST(Screenshot, OfAnUnknownRoomOrAnimalSaysWhatThereIs) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("picture.png");
    const Ended room = run({"--screenshot", file, "--room", "bat", demo});
    EXPECT_EQ(room.code, 2);
    EXPECT_TRUE(room.err.contains("did you mean bath?")) << room.err.toStdString();
    const Ended animal = run({"--screenshot", file, "--pest", "zebra", demo});
    EXPECT_EQ(animal.code, 2);
    EXPECT_TRUE(animal.err.contains("bark-scorpion")) << animal.err.toStdString();
    EXPECT_FALSE(QFile::exists(file));
}

/// The cap on the list is not told as the number of ways that a job has.
TEST(Screenshot, OfAWayPastTheListSaysHowLongItIs) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("picture.png");
    EXPECT_TRUE(run({"--screenshot", file, "--way", "26", demo}).err.contains("--way 26: the 25 widest ways in"));
    const QString job = written(folder,
                                "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\n"
                                "gaps: [{id: a, between: [yard, den], hole: {diameter: 3 mm}, at: [0 m, 0 m, -1 m]}]\n");
    EXPECT_TRUE(run({"--screenshot", file, "--way", "2", job}).err.contains("--way 2: there is only one way in"));
}

/// Between two gaps with a position there is nothing solid when one without lies between them.
TEST(Screenshot, ShowsNoThickLinePastAMissingPosition) {
    const QTemporaryDir folder;
    const auto blue_pixels = [&](const char* middle) {
        const QString job = written(
            folder,
            (std::string("seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: wall, kind: cavity}, {id: attic, kind: cavity}, "
                         "{id: den, kind: living}]\ngaps:\n"
                         "  - {id: a, between: [yard, wall], hole: {diameter: 3 mm}, at: [0 m, 0 m, 0 m]}\n"
                         "  - {id: b, between: [wall, attic], hole: {diameter: 5 mm}") +
             middle + "}\n  - {id: c, between: [attic, den], hole: {diameter: 4 mm}, at: [9 m, 6 m, 0 m]}\n")
                .c_str());
        const QString file = folder.filePath("picture.png");
        EXPECT_EQ(run({"--screenshot", file, "--size", "1280x720", job}).code, 0);
        const QImage image = QImage(file).copy(410, 40, 860, 540);
        int blue = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) blue += qBlue(image.pixel(x, y)) > qRed(image.pixel(x, y)) + 25 ? 1 : 0;
        }
        return blue;
    };
    const int with = blue_pixels(", at: [4 m, 3 m, 0 m]");
    const int without = blue_pixels("");
    EXPECT_GT(with, 2500);
    EXPECT_GT(without, 300);  // two gaps, their numbers and dots between them
    EXPECT_LT(without, with / 2);
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
          QStringList{"--screenshot", file, "--way", "0", demo}, QStringList{"--screenshot", file, "--way", "1000", demo},
          QStringList{"--screenshot", folder.filePath("x.jpg"), demo}, QStringList{"--room", "hall", demo}}) {
        const Ended ended = run(arguments);
        EXPECT_EQ(ended.code, 2) << arguments.join(' ').toStdString();
        EXPECT_TRUE(ended.err.contains("seamward-viewer: ")) << ended.err.toStdString();
    }
    EXPECT_FALSE(QFile::exists(file));
}

/// Not even Qt's own remarks.
TEST(CommandLine, SaysNothingWhenAllIsWell) {
    const QTemporaryDir folder;
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.remove("XDG_RUNTIME_DIR");
    process.setProcessEnvironment(environment);
    process.start(QStringLiteral(SEAMWARD_VIEWER_PROGRAM), {"--screenshot", folder.filePath("x.PNG"), demo});
    ASSERT_TRUE(process.waitForFinished(60'000));
    EXPECT_EQ(process.exitCode(), 0);
    EXPECT_EQ(process.readAllStandardError(), "");
    EXPECT_EQ(process.readAllStandardOutput(), "");
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
