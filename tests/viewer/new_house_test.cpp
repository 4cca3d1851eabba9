// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/new_house.h"

#include <gtest/gtest.h>

#include <QFileInfo>
#include <fstream>

#include "document/house_places.h"
#include "document/new_house_files.h"
#include "job_file/job.h"
#include "paths/trace.h"
#include "tests/support/scratch_folder.h"

namespace seamward::viewer::test {
namespace {

using Garage = NewHouse::Garage;
using Of = NewHouseFault::Of;
using Roof = NewHouse::Roof;
using Shape = NewHouse::Shape;

NewHouse sample(Shape shape) {
    NewHouse house;
    house.name = "Pebble Court 3";
    house.shape = shape;
    house.corners = {{0, 0}, {13, 0}, {13, 7}, {8, 7}, {8, 11}, {0, 11}};
    house.pests = {"house-mouse", "bark-scorpion"};
    return house;
}

bool has_fault(const NewHouse& house, Of of) {
    const auto faults = faults_of(house);
    return std::ranges::count(faults, of, &NewHouseFault::of) == 1;
}

/// Every roof, foundation, cladding and number of stories over one shape.
class EveryHouse : public testing::TestWithParam<Shape> {};

TEST_P(EveryHouse, ReadsWithSolidsAndHasAWayIn) {
    const seamward::test::ScratchFolder folder;
    int made = 0;
    for (int number = 0; number < 4 * 3 * 3 * 2 * 2; ++number) {
        NewHouse house = sample(GetParam());
        house.roof = static_cast<Roof>(number % 4);
        house.foundation = static_cast<NewHouse::Foundation>(number / 4 % 3);
        house.cladding = static_cast<NewHouse::Cladding>(number / 12 % 3);
        house.stories = 1 + number / 36 % 2;
        if (number >= 72) house.garage = Garage::two_cars;
        house.bedrooms = number % 4;
        house.baths = 1 + number % 2;
        if (number >= 72 && number % 5 > 0) continue;
        if (house.garage != Garage::none && house.shape == Shape::corners) continue;
        if (has_fault(house, Of::rooms)) house.baths = 1;  // a garage for two takes the room
        ASSERT_TRUE(faults_of(house).empty()) << number << ": " << faults_of(house).front().text.toStdString();
        house.name = "House " + std::to_string(number);
        const NewHouseFiles files =
            new_house_files(QString::fromStdString(folder.path().string()), QString::fromStdString(house.name));
        write_new_house(house, files, RunContext());
        const Job job = read_job(files.job.toStdString(), RunContext(), Make::solids);
        EXPECT_FALSE(trace(job.survey, {}, RunContext()).paths.empty()) << number;
        EXPECT_GE(job.survey.gaps.size(), 45U) << number;
        for (const Gap& gap : job.survey.gaps) {
            if (gap.id.ends_with("-archway")) continue;  // as wide as it is drawn; nothing to measure
            EXPECT_EQ(gap.evidence.how, Evidence::How::assumed) << number << ' ' << gap.id;
            EXPECT_NE(gap.note.find("check on site"), std::string::npos) << number << ' ' << gap.id;
        }
        ++made;
    }
    EXPECT_EQ(made, GetParam() == Shape::corners ? 72 : 72 + 14);
}

INSTANTIATE_TEST_SUITE_P(Shapes, EveryHouse, testing::Values(Shape::rectangle, Shape::l, Shape::t, Shape::u, Shape::corners));

TEST(NewHouse, OfOtherSizesReadsToo) {
    const seamward::test::ScratchFolder folder;
    struct Size {
        double length, depth, wing_length, wing_depth;
    };
    int number = 0;
    for (const Size& size : {Size{12, 12, 3, 2}, Size{30, 7, 9, 9}, Size{10.2, 5.8, 3.1, 1.5}, Size{9.07, 8.83, 3, 5}}) {
        for (const Shape shape : {Shape::rectangle, Shape::l, Shape::t, Shape::u}) {
            for (const Roof roof : {Roof::hip, Roof::gable, Roof::shed, Roof::flat}) {
                NewHouse house = sample(shape);
                house.name = "House " + std::to_string(++number);
                house.length = size.length;
                house.depth = size.depth;
                house.wing_length = size.wing_length;
                house.wing_depth = size.wing_depth;
                house.roof = roof;
                house.stories = 1 + number % 2;
                house.garage = Garage::one_car;
                if (has_fault(house, Of::garage)) house.garage = Garage::none;
                if (has_fault(house, Of::rooms)) house.bedrooms = 0;
                if (!faults_of(house).empty()) continue;
                const NewHouseFiles files =
                    new_house_files(QString::fromStdString(folder.path().string()), QString::fromStdString(house.name));
                EXPECT_NO_THROW(write_new_house(house, files, RunContext())) << number;
            }
        }
    }
    EXPECT_EQ(number, 64);
}

TEST(NewHouse, IsTheSameTextEachTime) {
    const NewHouse house = sample(Shape::u);
    EXPECT_EQ(new_house_text(house, "h.yaml").house, new_house_text(house, "h.yaml").house);
    EXPECT_EQ(new_house_text(house, "h.yaml").job, new_house_text(house, "h.yaml").job);
}

TEST(NewHouse, KeepsAnyNameAsItIs) {
    const seamward::test::ScratchFolder folder;
    NewHouse house = sample(Shape::rectangle);
    house.name = "O'Neil: \"Quail\" # 4 \\ ä";
    house.address = "4 Quail Run, Apt. {2}";
    house.surveyed = "2026-05-04";
    const NewHouseFiles files =
        new_house_files(QString::fromStdString(folder.path().string()), QString::fromStdString(house.name));
    write_new_house(house, files, RunContext());
    const Job job = read_job(files.job.toStdString(), RunContext());
    EXPECT_EQ(job.name, house.name);
    EXPECT_EQ(job.address, house.address);
    EXPECT_EQ(job.surveyed, house.surveyed);
    ASSERT_EQ(job.pests.size(), 2U);
    EXPECT_EQ(job.pests[0].id, "house-mouse");
    EXPECT_EQ(file_word("Núñez & Söhne, No. 4 "), "nunez-sohne-no-4");
    EXPECT_EQ(file_word("***"), "house");
}

TEST(NewHouse, TellsWhatDoesNotFit) {
    NewHouse house = sample(Shape::t);
    EXPECT_TRUE(faults_of(house).empty());
    house.name = "  ";
    house.length = 2;
    EXPECT_TRUE(has_fault(house, Of::name));
    EXPECT_TRUE(has_fault(house, Of::length));
    house = sample(Shape::u);
    house.wing_length = 6.5;
    EXPECT_TRUE(has_fault(house, Of::wing_length));
    house = sample(Shape::rectangle);
    house.depth = 5.5;
    house.garage = Garage::one_car;
    EXPECT_TRUE(has_fault(house, Of::garage));
    house = sample(Shape::corners);
    house.corners = {{0, 0}, {10, 10}, {10, 0}, {0, 10}};
    EXPECT_TRUE(has_fault(house, Of::corners));
    house.corners = {{0, 0}, {10, 0}};
    EXPECT_TRUE(has_fault(house, Of::corners));
    house.corners = {{0, 0}, {12, 0}, {14, 8}, {6, 11}, {-1, 7}};
    house.bedrooms = 0;
    EXPECT_TRUE(faults_of(house).empty());
    house.roof = Roof::gable;
    EXPECT_TRUE(has_fault(house, Of::roof));
    house.roof = Roof::shed;
    EXPECT_TRUE(has_fault(house, Of::roof));
}

TEST(NewHouse, TakesTypedCornersEitherWayRound) {
    NewHouse house = sample(Shape::corners);
    const Loop as_typed = outline_of(house);
    EXPECT_EQ(as_typed, house.corners);
    house.corners = {{0, 0}, {0, -11}, {8, -11}, {8, -7}, {13, -7}, {13, 0}};
    std::ranges::reverse(house.corners);
    house.corners = {{13, 0}, {0, 0}, {0, 11}, {8, 11}, {8, 7}, {13, 7}};  // clockwise
    const Loop turned = outline_of(house);
    EXPECT_GT(doubled_area(turned), 0);
    EXPECT_EQ(turned[0], (Point2{0, 0}));
    EXPECT_EQ(turned[1], (Point2{13, 0}));
}

TEST(NewHouse, LeavesFilesOfThatNameAlone) {
    const seamward::test::ScratchFolder folder;
    const QString at = QString::fromStdString(folder.path().string());
    EXPECT_TRUE(fault_of_folder(at, "Pebble Court 3").isEmpty());
    std::ofstream(folder.path() / "pebble-court-3-house.yaml") << "mine";
    EXPECT_TRUE(fault_of_folder(at, "Pebble Court 3").contains("pebble-court-3-house.yaml"));
    EXPECT_TRUE(fault_of_folder(at + "/new", "Pebble Court 3").isEmpty());  // it can be made
    EXPECT_FALSE(fault_of_folder(at + "/nowhere/new", "Pebble Court 3").isEmpty());
    EXPECT_FALSE(fault_of_folder(at + "/pebble-court-3-house.yaml", "Pebble Court 3").isEmpty());
    EXPECT_FALSE(fault_of_folder("", "Pebble Court 3").isEmpty());
}

TEST(NewHouse, MakesTheFolderThatIsToHoldIt) {
    const seamward::test::ScratchFolder folder;
    const QString at = QString::fromStdString((folder.path() / "Documents").string());
    const NewHouseFiles files = new_house_files(at, "Pebble Court 3");
    write_new_house(sample(Shape::rectangle), files, RunContext());
    EXPECT_EQ(read_job(files.job.toStdString(), RunContext()).name, "Pebble Court 3");
    EXPECT_TRUE(QFileInfo(usual_house_folder()).isDir());
}

}  // namespace
}  // namespace seamward::viewer::test
