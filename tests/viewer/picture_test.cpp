// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <sys/types.h>
#include <unistd.h>

#include <QImage>
#include <QProcess>
#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <numbers>

#include "base/file_io.h"
#include "layers/palette.h"
#include "offscreen/own_screen.h"
#include "offscreen/painted_picture.h"
#include "tests/support/scratch_folder.h"
#include "tests/viewer/box_house.h"

namespace seamward::viewer::test {
namespace {

namespace fs = std::filesystem;
using seamward::test::ScratchFolder;
using Kind = PlacedLabel::Kind;

/// An environment variable as long as the object lives; without a value it is not set.
class Variable {
public:
    Variable(const char* name, const char* value) : name_(name) {
        if (const char* before = std::getenv(name)) before_ = before;
        set(value);
    }
    ~Variable() { set(before_ ? before_->c_str() : nullptr); }
    Variable(const Variable&) = delete;
    Variable& operator=(const Variable&) = delete;

private:
    void set(const char* value) { value != nullptr ? setenv(name_, value, 1) : unsetenv(name_); }

    const char* name_;
    std::optional<std::string> before_;
};

/// Processes that this one has started and not yet waited for, zombies too.
std::size_t children() {
    std::size_t count = 0;
    for (const fs::directory_entry& entry : fs::directory_iterator("/proc")) {
        std::ifstream status(entry.path() / "stat");
        std::string text;
        if (!std::getline(status, text)) continue;
        std::istringstream rest(text.substr(text.rfind(')') + 1));
        char state = 0;
        pid_t parent = 0;
        if (rest >> state >> parent && parent == getpid()) ++count;
    }
    return count;
}

std::size_t files_in(const fs::path& folder) {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

PictureRequest small(const fs::path& file = {}) { return {.file = file, .width = 800, .height = 600}; }

QImage picture(const House& house, std::span<const DrawnPath> paths, const PictureRequest& request = small()) {
    return painted_picture(house, "Box house", paths, request).image;
}

std::string complaint(const House& house, std::span<const DrawnPath> paths, const PictureRequest& request) {
    try {
        draw_picture(house, "Box house", paths, request);
    } catch (const BadPicture& bad) {
        return bad.what();
    }
    return "";
}

std::size_t count_of(const PaintedPicture& picture, Kind kind) {
    return static_cast<std::size_t>(std::count_if(picture.labels.begin(), picture.labels.end(),
                                                  [&](const PlacedLabel& label) { return label.kind == kind; }));
}

TEST(Picture, HasTheSizeAskedForAndIsTheSameEveryTime) {
    const ScratchFolder folder;
    const House house = box_house();
    for (const auto& [width, height] : {std::pair(1000, 700), std::pair(640, 960)}) {
        PictureRequest request{.file = folder.path() / "1.png", .width = width, .height = height};
        draw_picture(house, "Box house", both_ways(house), request);
        const QImage image(QString::fromStdString(request.file.string()), "PNG");
        EXPECT_EQ(image.size(), QSize(width, height));
        request.file = folder.path() / "2.PNG";
        draw_picture(house, "Box house", both_ways(house), request);
        EXPECT_EQ(read_file(folder.path() / "1.png", "1", 1U << 30), read_file(folder.path() / "2.PNG", "2", 1U << 30));
    }
    EXPECT_EQ(files_in(folder.path()), 2U);
}

TEST(Picture, DiffersWithTheWayAndWithWhatIsClosed) {
    House house = box_house();
    std::vector<QImage> pictures;
    const auto take = [&](std::span<const DrawnPath> paths, const PictureRequest& request) {
        pictures.push_back(picture(house, paths, request));
        for (std::size_t i = 0; i + 1 < pictures.size(); ++i) EXPECT_NE(pictures[i], pictures.back()) << i;
    };
    std::vector<DrawnPath> paths = both_ways(house);
    take(paths, small());
    PictureRequest second = small();
    second.rank = 2;
    take(paths, second);
    paths[0].route = {{1, -4, 0}, {1, -3.04, 0.1}, {1, -3.04, 2.7}, {2, 0, 2.7}, {2, 0, 1}};
    take(paths, small());
    house.survey.gaps[2].shape = Ring{0, 0.15};
    take(std::span(paths).last(1), small());
    take({}, small());
}

/// From every side and in every shape of picture: no label covers another, the heading or a card, and none leaves the picture.
TEST(Picture, LabelsKeepApartAndInside) {
    House house = box_house();
    house.survey.gaps[2].name = "a can light with quite a long name over the counter of the kitchen, near the east wall";
    const std::vector<DrawnPath> paths = both_ways(house);
    for (const auto& [width, height] : {std::pair(640, 480), std::pair(1000, 700), std::pair(640, 1100), std::pair(1500, 500)}) {
        for (int side = 0; side < 4; ++side) {
            PictureRequest request{.width = width, .height = height};
            request.view = {side * std::numbers::pi / 2 + 0.3, 0.3 + side * 0.3};
            const PaintedPicture painted = painted_picture(house, "Box house", paths, request);
            const QRectF sheet(0, 0, width / painted.unit, height / painted.unit);
            EXPECT_EQ(count_of(painted, Kind::smallest), 1U);
            for (std::size_t i = 0; i < painted.labels.size(); ++i) {
                const QRectF& place = painted.labels[i].place;
                EXPECT_TRUE(sheet.contains(place)) << width << ' ' << side << ' ' << i;
                for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(place.intersects(painted.labels[j].place)) << i << ' ' << j;
                for (const QRectF& taken : painted.taken) EXPECT_FALSE(place.intersects(taken)) << i;
            }
            for (const QRectF& taken : painted.taken) EXPECT_TRUE(sheet.contains(taken));
        }
    }
}

TEST(Picture, NamesTheSmallestGapAndNumbersTheOthers) {
    const House house = box_house();
    const PaintedPicture painted = painted_picture(house, "Box house", both_ways(house), {.width = 1000, .height = 700});
    const auto smallest = std::find_if(painted.labels.begin(), painted.labels.end(),
                                       [](const PlacedLabel& label) { return label.kind == Kind::smallest; });
    ASSERT_NE(smallest, painted.labels.end());
    EXPECT_EQ(smallest->number, "3");
    EXPECT_EQ(smallest->text, "can");
    EXPECT_TRUE(smallest->more.startsWith("smallest gap: 3/64 in (1.2 mm)\n")) << smallest->more.toStdString();
    EXPECT_EQ(count_of(painted, Kind::step), 2U);
    EXPECT_EQ(count_of(painted, Kind::end), 2U);
    EXPECT_EQ(count_of(painted, Kind::tick), 1U);
}

TEST(Picture, WithoutAWayShowsWhatIsClosed) {
    const House house = box_house();
    const PaintedPicture painted = painted_picture(house, "Box house", {}, {.width = 1000, .height = 700});
    EXPECT_EQ(count_of(painted, Kind::tick), 1U);
    EXPECT_EQ(count_of(painted, Kind::smallest) + count_of(painted, Kind::step) + count_of(painted, Kind::end), 0U);
}

TEST(Picture, OfOneGapColorsItsSides) {
    House house = box_house();
    PictureRequest request = small();
    request.closeup = GapIndex{0};
    const auto orange = [](const QImage& image) {
        int count = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                const QColor color = image.pixelColor(x, y);
                count += color.red() - color.blue() > 120 ? 1 : 0;
            }
        }
        return count;
    };
    const int with = orange(picture(house, both_ways(house), request));
    house.parts[2].bounds.assign(house.parts[2].bounds.size(), GapIndex{});
    const int without = orange(picture(house, both_ways(house), request));
    EXPECT_GT(with, without + 60);
    for (std::uint32_t gap = 1; gap < 5; ++gap) {
        request.closeup = GapIndex{gap};
        EXPECT_FALSE(picture(house, {}, request).isNull());
    }
}

/// The section names what it cuts and what lies at both ends of the way, and a gap of a few millimeters is shown larger.
TEST(Picture, OfOneGapNamesWhatItIsBetween) {
    const House house = box_house();
    for (const auto& [width, height] : {std::pair(640, 480), std::pair(1000, 700)}) {
        PictureRequest request{.width = width, .height = height};
        for (std::uint32_t gap = 0; gap < 4; ++gap) {
            request.closeup = GapIndex{gap};
            const PaintedPicture painted = painted_picture(house, "Box house", {}, request);
            EXPECT_EQ(count_of(painted, Kind::smallest), 1U) << gap;
            EXPECT_GE(count_of(painted, Kind::end), 1U) << gap;
            EXPECT_GE(count_of(painted, Kind::layer), gap == 0 ? 2U : 1U) << gap;
            EXPECT_LE(count_of(painted, Kind::layer), 8U) << gap;
            if (gap != 1) {  // a hole of 8 mm is seen as it is in a large picture
                EXPECT_EQ(painted.taken.size(), 5U) << gap;
            }
            const QRectF sheet(0, 0, width / painted.unit, height / painted.unit);
            for (std::size_t i = 0; i < painted.labels.size(); ++i) {
                for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(painted.labels[i].place.intersects(painted.labels[j].place));
            }
            for (const PlacedLabel& label : painted.labels) {
                if (label.kind != Kind::layer) continue;
                EXPECT_TRUE(sheet.contains(label.anchor));
                for (const QRectF& taken : painted.taken) EXPECT_FALSE(taken.contains(label.anchor)) << gap;
            }
            for (std::size_t i = 0; i < painted.taken.size(); ++i) {
                EXPECT_TRUE(sheet.contains(painted.taken[i])) << i;
                for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(painted.taken[i].intersects(painted.taken[j])) << i << j;
            }
        }
    }
}

/// Gaps that were added by hand, a house without solids or rooms: there is a picture all the same.
TEST(Picture, CopesWithWhatIsMissing) {
    House house = box_house();
    for (GapPlace& place : house.places) place.through.clear();
    EXPECT_NE(picture(house, both_ways(house)), picture(house, {}));
    for (Gap& gap : house.survey.gaps) gap.at.reset();
    house.middles.clear();
    house.places.clear();
    EXPECT_FALSE(picture(house, both_ways(house)).isNull());
    PictureRequest request = small();
    request.closeup = GapIndex{2};
    EXPECT_FALSE(picture(house, both_ways(house), request).isNull());
    house.parts.clear();
    EXPECT_FALSE(picture(house, both_ways(house)).isNull());
    EXPECT_FALSE(picture({}, {}).isNull());
}

TEST(Picture, ThatCannotBeSaysWhyAndLeavesNothing) {
    const ScratchFolder folder;
    const House house = box_house();
    const std::vector<DrawnPath> paths = both_ways(house);
    const auto with = [&](const auto& change) {
        PictureRequest request = small(folder.path() / "p.png");
        change(request);
        return complaint(house, paths, request);
    };
    EXPECT_NE(with([](auto& r) { r.file.replace_extension("jpg"); }).find("ends in .png"), std::string::npos);
    EXPECT_NE(with([](auto& r) { r.file = ""; }).find("ends in .png"), std::string::npos);
    EXPECT_NE(with([](auto& r) { r.width = 100; }).find("640x480 to 4096x4096"), std::string::npos);
    EXPECT_NE(with([](auto& r) { r.rank = 3; }).find("there are 2 ways in"), std::string::npos);
    EXPECT_NE(with([](auto& r) { r.rank = 0; }).find("no way 0"), std::string::npos);
    EXPECT_NE(with([](auto& r) { r.closeup = GapIndex{5}; }).find("no such gap"), std::string::npos);
    EXPECT_NE(with([](auto& r) { r.file = r.file.parent_path() / "none" / "p.png"; }).find("none/p.png"), std::string::npos);
    EXPECT_EQ(files_in(folder.path()), 0U);
}

TEST(Picture, WithoutADisplayOrXvfbSaysWhatToInstall) {
    const ScratchFolder folder;
    const House house = box_house();
    const std::size_t before = children();
    const Variable path("PATH", folder.path().c_str());
    for (const char* display : {static_cast<const char*>(nullptr), "", ":6543"}) {
        const Variable shown("DISPLAY", display);
        EXPECT_EQ(complaint(house, {}, small(folder.path() / "p.png")),
                  "no display, and Xvfb is not installed: apt-get install xvfb");
    }
    folder.write("Xvfb", "#!/bin/sh\nexit 1\n");
    fs::permissions(folder.path() / "Xvfb", fs::perms::owner_all);
    const Variable shown("DISPLAY", nullptr);
    EXPECT_NE(complaint(house, {}, small(folder.path() / "p.png")).find("Xvfb does not start"), std::string::npos);
    EXPECT_EQ(children(), before);
    EXPECT_EQ(files_in(folder.path()), 1U);
}

TEST(Picture, WithoutADisplayStartsXvfbAndEndsIt) {
    const ScratchFolder folder;
    const House house = box_house();
    const std::size_t before = children();
    const Variable display("DISPLAY", nullptr);
    draw_picture(house, "Box house", both_ways(house), small(folder.path() / "p.png"));
    EXPECT_FALSE(QImage(QString::fromStdString((folder.path() / "p.png").string())).isNull());
    EXPECT_EQ(std::getenv("DISPLAY"), nullptr);
    EXPECT_EQ(complaint(house, {}, small(folder.path() / "none" / "p.png")).empty(), false);  // fails once all is drawn
    EXPECT_EQ(std::getenv("DISPLAY"), nullptr);
    EXPECT_EQ(children(), before);
}

/// The command line alone: no screen, no folder for the window system, an empty standard error.
TEST(Picture, OfTheCommandLineNeedsNoScreen) {
    const ScratchFolder folder;
    const QString file = QString::fromStdString((folder.path() / "p.png").string());
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR"}) environment.remove(name);
    process.setProcessEnvironment(environment);
    process.start(SEAMWARD_PROGRAM,
                  {"picture", SEAMWARD_SOURCE_FOLDER "/scenarios/two-story.yaml", "--size", "640x480", "-o", file});
    ASSERT_TRUE(process.waitForFinished(60'000));
    EXPECT_EQ(process.exitCode(), 0);
    EXPECT_EQ(process.readAllStandardError(), "");
    EXPECT_EQ(QImage(file).size(), QSize(640, 480));
    EXPECT_EQ(files_in(folder.path()), 1U);
}

}  // namespace
}  // namespace seamward::viewer::test
