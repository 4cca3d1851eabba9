// SPDX-License-Identifier: GPL-3.0-or-later
// `seamward picture` on the demo house, as a user calls it: without a display.
#include <gtest/gtest.h>

#include <QColor>
#include <QImage>
#include <fstream>

#include "tests/support/run_program.h"

namespace seamward::viewer {
namespace {

using test::run_shell;
using test::ScratchFolder;
using test::shell_word;

const std::string folder = SEAMWARD_SOURCE_FOLDER;

QImage picture(const std::string& job, const std::string& options) {
    const ScratchFolder scratch;
    const std::string file = (scratch.path() / "picture.png").string();
    const test::Ran ran = run_shell("env -u DISPLAY " SEAMWARD_PROGRAM " picture " + shell_word(job) + " --size 800x600 -o " +
                                    shell_word(file) + " " + options);
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_EQ(ran.out, file + "\n");
    return QImage(QString::fromStdString(file));
}

/// The share of pixels that differ clearly.
double difference(const QImage& a, const QImage& b) {
    if (a.size() != b.size() || a.isNull()) return 1;
    int differ = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            const QColor p = a.pixelColor(x, y), q = b.pixelColor(x, y);
            if (std::abs(p.red() - q.red()) + std::abs(p.green() - q.green()) + std::abs(p.blue() - q.blue()) > 40) ++differ;
        }
    }
    return static_cast<double>(differ) / (a.width() * a.height());
}

TEST(PictureCommand, DrawsTheDemoAndIsTheSameTwice) {
    const QImage first = picture(folder + "/scenarios/demo.yaml", "");
    ASSERT_EQ(first.size(), QSize(800, 600));
    EXPECT_LT(difference(first, picture(folder + "/scenarios/demo.yaml", "")), 0.002);
}

TEST(PictureCommand, ClosingTheSmallestGapChangesThePicture) {
    const ScratchFolder scratch;
    std::ifstream in(folder + "/scenarios/demo.yaml");
    std::string text{std::istreambuf_iterator<char>(in), {}};
    const auto put = [&](const std::string& what, const std::string& with) {
        const std::size_t at = text.find(what);
        ASSERT_NE(at, std::string::npos) << what;
        text.replace(at, what.size(), with);
    };
    put("../models/", folder + "/models/");
    put("closed:\n", "closed:\n  - {gap: garage-house-sweep, with: sweep}\n");
    const std::string job = (scratch.path() / "closed.yaml").string();
    std::ofstream(job) << text;
    const QImage before = picture(folder + "/scenarios/demo.yaml", ""), after = picture(job, "");
    EXPECT_GT(difference(before, after), 0.02);
}

TEST(PictureCommand, MouseAndScorpionHaveTheirOwnPictures) {
    const QImage mouse = picture(folder + "/scenarios/two-story.yaml", "--pest house-mouse");
    const QImage scorpion = picture(folder + "/scenarios/two-story.yaml", "--pest bark-scorpion-young");
    EXPECT_GT(difference(mouse, scorpion), 0.02);
}

/// One gap for each row of the survey list.
class CloseUp : public testing::TestWithParam<const char*> {};

TEST_P(CloseUp, ShowsTheGap) {
    const QImage shown = picture(folder + "/scenarios/demo.yaml", std::string("--gap ") + GetParam());
    ASSERT_EQ(shown.size(), QSize(800, 600));
    // The faces that bound the gap, or the ring round it, are orange.
    int orange = 0;
    for (int y = 0; y < shown.height(); ++y) {
        for (int x = 0; x < shown.width(); ++x) {
            const QColor c = shown.pixelColor(x, y);
            if (c.red() > 190 && c.green() > 80 && c.green() < 160 && c.blue() < 90) ++orange;
        }
    }
    EXPECT_GT(orange, 60);
}

INSTANTIATE_TEST_SUITE_P(SurveyRows, CloseUp,
                         testing::Values("block-joints-house-face", "screed-joint-south", "soffit-to-wall-north",
                                         "hose-bibb-north", "front-door-sweep", "supply-boot-bedroom-2",
                                         "recessed-lights-kitchen", "bath-shower-arm", "bath-toilet-stub", "kitchen-sink-drain"),
                         [](const auto& shipped) {
                             std::string name = shipped.param;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

TEST(PictureCommand, SaysWhatIsWrong) {
    const ScratchFolder scratch;
    const std::string file = (scratch.path() / "p.png").string();
    const auto run = [&](const std::string& rest) { return run_shell(SEAMWARD_PROGRAM " picture " + rest); };
    test::Ran ran = run(shell_word(folder + "/scenarios/demo.yaml") + " -o " + shell_word(file) + " --gap no-such-gap");
    EXPECT_EQ(ran.exit_code, 2);
    EXPECT_NE(ran.err.find("unknown id"), std::string::npos) << ran.err;
    ran = run(shell_word(folder + "/scenarios/demo.yaml") + " -o " + shell_word(file) + " --way 5000");
    EXPECT_EQ(ran.exit_code, 2);
    ran = run(shell_word(folder + "/scenarios/demo.yaml") + " -o " + shell_word(file) + " --size 10x10");
    EXPECT_EQ(ran.exit_code, 2);
    ran = run(shell_word(folder + "/scenarios/demo.yaml") + " -o " + shell_word((scratch.path() / "p.jpg").string()));
    EXPECT_EQ(ran.exit_code, 2);
    ran = run(shell_word(folder + "/tests/tool/jobs/one.yaml") + " -o " + shell_word(file));
    EXPECT_EQ(ran.exit_code, 1);
    EXPECT_NE(ran.err.find("no described house"), std::string::npos) << ran.err;
    EXPECT_FALSE(std::filesystem::exists(file));
    ran = run_shell("env -u DISPLAY PATH=/nonexistent " SEAMWARD_PROGRAM " picture " +
                    shell_word(folder + "/scenarios/demo.yaml") + " -o " + shell_word(file));
    EXPECT_EQ(ran.exit_code, 1);
    EXPECT_NE(ran.err.find("Xvfb"), std::string::npos) << ran.err;
    EXPECT_FALSE(std::filesystem::exists(file));
}

}  // namespace
}  // namespace seamward::viewer
