// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of the survey list that the demo house must have, each with solids that a picture can show.
#include <gtest/gtest.h>

#include <algorithm>

#include "job_file/job.h"

namespace seamward {
namespace {

const Job& demo() {
    static const RunContext context;
    static const Job job = read_job(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml", context, Make::solids);
    return job;
}

struct SurveyRow {
    const char* name;
    std::vector<const char*> gaps;
};

const std::vector<SurveyRow> rows{
    {"S1 block-wall joints", {"block-joints-house-face", "block-joints-alley-face", "block-cells-top", "block-meets-house-west"}},
    {"S2 joint at the foot of the stucco", {"screed-joint-north", "screed-holes-north", "stucco-line-north"}},
    {"S3 eaves", {"soffit-to-wall-north", "soffit-to-fascia", "fascia-corners", "soffit-vents", "rafter-blocking"}},
    {"S4 wall penetrations", {"hose-bibb-north", "line-set-north", "cable-tv-north", "service-conduit-west", "dryer-wall-west"}},
    {"S5 doors", {"front-door-sweep", "front-door-weatherstrip", "garage-door-bottom", "garage-door-corner", "slider-corner"}},
    {"S6 registers", {"supply-boot-kitchen", "supply-boot-bedroom-2", "return-boot-hall"}},
    {"S7 recessed lights", {"recessed-lights-kitchen", "recessed-lights-great-room"}},
    {"S8 shower arm", {"bath-shower-arm", "primary-shower-arm"}},
    {"S9 plumbing at toilets and sinks",
     {"bath-toilet-stub", "primary-toilet-stub", "bath-sink-drain", "bath-sink-stubs", "kitchen-sink-drain"}},
};

TEST(DemoHouse, HasEveryRowOfTheSurveyListWithSolids) {
    const Job& job = demo();
    for (const SurveyRow& row : rows) {
        for (const char* id : row.gaps) {
            const auto gap =
                std::find_if(job.survey.gaps.begin(), job.survey.gaps.end(), [&](const Gap& g) { return g.id == id; });
            ASSERT_NE(gap, job.survey.gaps.end()) << row.name << ": " << id;
            const GapIndex index{static_cast<std::uint32_t>(gap - job.survey.gaps.begin())};
            EXPECT_GE(job.house.places[index.value].through.size(), 2U) << id;
            std::size_t faces = 0;
            for (const Part& part : job.house.parts)
                faces += static_cast<std::size_t>(std::count(part.bounds.begin(), part.bounds.end(), index));
            EXPECT_GT(faces, 0U) << id << " bounds no face";
        }
    }
}

TEST(DemoHouse, JoinsTheSpacesThatItsFeaturesLieBetween) {
    const Job& job = demo();
    const auto between = [&](const std::string& id) {
        for (const Gap& gap : job.survey.gaps) {
            if (gap.id == id) return job.survey[gap.between[0]].id + " " + job.survey[gap.between[1]].id;
        }
        return std::string("no such gap");
    };
    EXPECT_EQ(between("hose-bibb-north"), "yard north-wall");
    EXPECT_EQ(between("hose-bibb-kitchen"), "north-wall kitchen");
    EXPECT_EQ(between("line-set-top-plate"), "attic north-wall");
    EXPECT_EQ(between("block-meets-house-west"), "block-wall west-wall");
    EXPECT_EQ(between("meter-knockout-west"), "meter-can west-wall");
    EXPECT_EQ(between("dryer-collar"), "dryer-duct laundry");
    EXPECT_EQ(between("soffit-to-wall-north"), "yard soffit-void");
    EXPECT_EQ(between("stucco-top-north"), "soffit-void north-wall");
    EXPECT_EQ(between("rafter-blocking"), "soffit-void attic");
    EXPECT_EQ(between("slider-weeps"), "yard slider-frame");
    EXPECT_EQ(between("slider-track"), "slider-frame great-room");
    EXPECT_EQ(between("tub-trap"), "wet-wall under-slab");
    EXPECT_EQ(between("bath-shower-arm"), "wet-wall bath");
    EXPECT_EQ(between("return-boot-hall"), "chase hall");
    EXPECT_EQ(between("chase-top"), "attic chase");
    EXPECT_EQ(between("combustion-air-low"), "yard heater-closet");
    EXPECT_EQ(between("gas-pipe-closet"), "garage heater-closet");
    EXPECT_EQ(between("floor-drain-grate"), "floor-drain laundry");
    EXPECT_EQ(between("bath-fan-damper"), "bath-duct bath");
    EXPECT_EQ(between("bath-exhaust-cap"), "yard bath-duct");
}

TEST(DemoHouse, KeepsDrainsVentsAndCombustionAirOpen) {
    for (const Gap& gap : demo().survey.gaps) {
        if (gap.duty == Duty::drain || gap.duty == Duty::weep || gap.duty == Duty::combustion_air) {
            EXPECT_TRUE(gap.must_stay_open()) << gap.id;
            EXPECT_FALSE(gap.closing.never.empty()) << gap.id;
            EXPECT_FALSE(gap.closing.cost.has_value()) << gap.id;
        }
    }
}

}  // namespace
}  // namespace seamward
