// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/usual_rooms.h"

#include <gtest/gtest.h>

#include <map>
#include <random>

#include "document/new_house_files.h"
#include "document/square_cuts.h"
#include "job_file/job.h"
#include "paths/trace.h"
#include "plan/plan.h"
#include "tests/support/scratch_folder.h"

namespace seamward::viewer::test {
namespace {

using Garage = NewHouse::Garage;
using Shape = NewHouse::Shape;

double area(const Loop& loop) { return doubled_area(loop) / 2; }

NewHouse sample(int bedrooms, int baths, int stories = 1) {
    NewHouse house;
    house.name = "Pebble Court 3";
    house.bedrooms = bedrooms;
    house.baths = baths;
    house.stories = stories;
    house.pests = {"house-mouse", "american-cockroach"};
    return house;
}

int count(const RoomPlan& plan, RoomUse use, int story = 0) {
    return static_cast<int>(std::ranges::count_if(
        plan.rooms, [&](const UsualRoom& room) { return room.use == use && (story == 0 || room.story == story); }));
}

/// A house of random sizes, rooms and make; not always one that can be made.
NewHouse random_house(std::mt19937& random) {
    const auto from = [&](double least, double most) {
        return std::round(std::uniform_real_distribution(least, most)(random) * 100) / 100;
    };
    const auto one_of = [&](int most) { return std::uniform_int_distribution(0, most)(random); };
    NewHouse house = sample(1 + one_of(4), 1 + one_of(2), 1 + one_of(1));
    house.shape = static_cast<Shape>(one_of(4));
    house.length = from(6, 26);
    house.depth = from(5.5, 16);
    house.wing_length = from(3, 9);
    house.wing_depth = from(1.5, 9);
    const double x = from(9, 16);
    const double y = from(8, 14);
    house.corners = {{0, 0}, {x, 0}, {x, y}, {x - 3.2, y}, {x - 3.2, y + 2.5}, {0, y + 2.5}};
    house.roof = static_cast<NewHouse::Roof>(one_of(3));
    house.cladding = static_cast<NewHouse::Cladding>(one_of(2));
    house.foundation = static_cast<NewHouse::Foundation>(one_of(2));
    house.garage = static_cast<Garage>(one_of(2));
    return house;
}

Job made(const NewHouse& house, const seamward::test::ScratchFolder& folder) {
    const NewHouseFiles files =
        new_house_files(QString::fromStdString(folder.path().string()), QString::fromStdString(house.name));
    write_new_house(house, files, RunContext());
    return read_job(files.job.toStdString(), RunContext(), Make::solids);
}

TEST(UsualRooms, OfTheFirstHouse) {
    const auto plan = usual_rooms(sample(3, 2));
    ASSERT_TRUE(plan);
    EXPECT_EQ(count(*plan, RoomUse::bedroom), 3);
    EXPECT_EQ(count(*plan, RoomUse::bath), 2);
    EXPECT_EQ(count(*plan, RoomUse::kitchen), 1);
    EXPECT_EQ(count(*plan, RoomUse::living), 1);
    EXPECT_EQ(count(*plan, RoomUse::hall), 1);
}

TEST(UsualRooms, OfTwoStoriesSleepsUpstairs) {
    const auto plan = usual_rooms(sample(4, 3, 2));
    ASSERT_TRUE(plan);
    EXPECT_EQ(count(*plan, RoomUse::bedroom, 2), 4);
    EXPECT_EQ(count(*plan, RoomUse::bath, 1), 1);
    EXPECT_EQ(count(*plan, RoomUse::bath, 2), 2);
    EXPECT_EQ(count(*plan, RoomUse::kitchen, 1), 1);
}

/// The rooms cover each story, and none lies in another; each has a door, and those of a story hang together.
TEST(UsualRooms, FillTheHouseAndHangTogether) {
    std::mt19937 random(7);
    int divided = 0;
    for (int number = 0; number < 600; ++number) {
        const NewHouse house = random_house(random);
        if (!faults_of(house).empty()) continue;
        const auto plan = usual_rooms(house);
        ASSERT_TRUE(plan) << number;
        ++divided;
        EXPECT_EQ(count(*plan, RoomUse::bedroom), house.bedrooms) << number;
        EXPECT_EQ(count(*plan, RoomUse::bath), house.baths) << number;
        for (int story = 1; story <= house.stories; ++story) {
            double sum = 0;
            int rooms = 0;
            int doors = 0;
            for (const UsualRoom& room : plan->rooms) {
                if (room.story != story) continue;
                ++rooms;
                sum += area(room.loop);
                EXPECT_GT(area(room.loop), 1.2) << number << room.id;
            }
            for (const UsualDoor& door : plan->doors) doors += plan->partitions[door.partition].story == story ? 1 : 0;
            EXPECT_NEAR(sum, area(outline_of(house)), 1e-6) << number;
            EXPECT_EQ(doors, rooms - 1) << number;  // a tree: as many as it takes
        }
    }
    EXPECT_GT(divided, 120);
}

/// Every made house reads with its solids, has ways in and a plan; and what is called after a room is in that room.
TEST(UsualRooms, EveryMadeHouseBuildsTracesAndPlans) {
    std::mt19937 random(11);
    const seamward::test::ScratchFolder folder;
    int houses = 0;
    std::map<std::string, int> ends;
    for (int number = 0; houses < 60 && number < 2000; ++number) {
        NewHouse house = random_house(random);
        if (!faults_of(house).empty()) continue;
        house.name = "House " + std::to_string(number);
        SCOPED_TRACE(house.name);
        Job job;
        ASSERT_NO_THROW(job = made(house, folder)) << new_house_text(house, "h.yaml").house;
        ++houses;
        const Trace ways = trace(job.survey, {}, RunContext());
        EXPECT_FALSE(ways.paths.empty());
        for (const RankedPath& way : ways.paths) ++ends[job.survey[way.path.to()].id];
        EXPECT_NO_THROW((void)make_plan(job, {.against = job.pests, .date = *parse_date("2026-05-04")}, RunContext()));
        for (const Gap& gap : job.survey.gaps) {
            const auto comma = gap.name.rfind(", ");
            if (comma == std::string::npos) continue;
            const std::string of = gap.name.substr(comma + 2);
            for (const Space& space : job.survey.spaces) {
                if (space.name != of || space.kind != SpaceKind::living) continue;
                const std::string& a = job.survey[gap.between[0]].id;
                const std::string& b = job.survey[gap.between[1]].id;
                EXPECT_TRUE(a == space.id || b == space.id) << gap.name << ": " << a << ", " << b;
            }
        }
    }
    EXPECT_EQ(houses, 60);
    EXPECT_GT(ends["kitchen"], 0);
    EXPECT_GT(ends["main-bedroom"], 0);
    EXPECT_GT(ends["hall"] + ends["upper-hall"], 0);
}

TEST(UsualRooms, ThatDoNotFitAreTold) {
    NewHouse house = sample(5, 3);
    house.length = 7;
    house.depth = 6;
    EXPECT_FALSE(usual_rooms(house));
    auto faults = faults_of(house);
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].of, NewHouseFault::Of::rooms);
    const RoomCount most = most_rooms(house);
    ASSERT_GT(most.bedrooms, 0);
    EXPECT_TRUE(faults[0].text.contains(QString::number(most.bedrooms))) << faults[0].text.toStdString();
    house.bedrooms = most.bedrooms;
    house.baths = most.baths;
    EXPECT_TRUE(faults_of(house).empty());
    house = sample(3, 2);
    house.shape = Shape::corners;
    house.corners = {{0, 0}, {12, 0}, {14, 8}, {6, 11}, {-1, 7}};
    ASSERT_EQ(faults_of(house).size(), 1U);
    house.bedrooms = 0;
    EXPECT_TRUE(faults_of(house).empty());
}

TEST(SquareCuts, CutAlongOneLineOrNot) {
    const Loop u{{0, 0}, {10, 0}, {10, 8}, {7, 8}, {7, 5}, {3, 5}, {3, 8}, {0, 8}};
    const auto across = cut_at(u, Axis::x, 5);
    ASSERT_TRUE(across);
    EXPECT_EQ(across->from, (Point2{5, 0}));
    EXPECT_EQ(across->to, (Point2{5, 5}));
    EXPECT_DOUBLE_EQ(area(across->low) + area(across->high), area(u));
    EXPECT_FALSE(cut_at(u, Axis::y, 7));    // through both wings
    EXPECT_FALSE(cut_at(u, Axis::y, 5.3));  // a strip of 0.3 m
    EXPECT_FALSE(cut_at(u, Axis::x, -1));
    const auto half = cut_share(u, Axis::y, 0.5);
    ASSERT_TRUE(half);
    EXPECT_NEAR(area(half->low), area(u) / 2, 0.1);
    EXPECT_TRUE(holds_square(u, 5));
    EXPECT_FALSE(holds_square(u, 5.1));
    EXPECT_TRUE(holds_square({{7, 5}, {10, 5}, {10, 8}, {7, 8}}, 3));
    const Border border = border_of(across->low, across->high);
    EXPECT_DOUBLE_EQ(border.to - border.from, 5);
    EXPECT_FALSE(is_square({{0, 0}, {4, 1}, {4, 4}, {0, 4}}));
}

}  // namespace
}  // namespace seamward::viewer::test
