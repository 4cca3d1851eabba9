// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "job_file/job.h"

namespace seamward::test {
namespace {

Job scenario(const std::string& name) {
    return read_job(std::string(SEAMWARD_SOURCE_FOLDER) + "/scenarios/" + name + ".yaml", RunContext());
}

struct Expected {
    const char* name;
    std::size_t spaces, gaps, pests, closed;
};

class Scenario : public testing::TestWithParam<Expected> {};

TEST_P(Scenario, HasWhatItsFileLists) {
    const Job job = scenario(GetParam().name);
    EXPECT_EQ(job.survey.spaces.size(), GetParam().spaces);
    EXPECT_EQ(job.survey.gaps.size(), GetParam().gaps);
    EXPECT_EQ(job.pests.size(), GetParam().pests);
    EXPECT_EQ(job.closed.size(), GetParam().closed);
    EXPECT_FALSE(job.name.empty());
}

/// What makes a survey of use: a start, rooms, a place and a source for every width, and no space that no gap leads to.
TEST_P(Scenario, IsAWholeSurvey) {
    const Job job = scenario(GetParam().name);
    const auto& spaces = job.survey.spaces;
    EXPECT_TRUE(std::any_of(spaces.begin(), spaces.end(), [](const Space& space) { return space.starts_paths(); }));
    EXPECT_GE(std::count_if(spaces.begin(), spaces.end(), [](const Space& space) { return space.is_living(); }), 5);
    std::vector<bool> reached(spaces.size(), false);
    for (const Gap& gap : job.survey.gaps) {
        for (const SpaceIndex end : gap.between) reached.at(end.value) = true;
        EXPECT_TRUE(gap.at) << gap.id;
        EXPECT_TRUE(gap.depth) << gap.id;
        EXPECT_FALSE(gap.substrates.empty()) << gap.id;
        EXPECT_FALSE(gap.name.empty()) << gap.id;
    }
    for (std::size_t i = 0; i < spaces.size(); ++i) EXPECT_TRUE(reached[i]) << spaces[i].id;
}

INSTANTIATE_TEST_SUITE_P(Shipped, Scenario,
                         testing::Values(Expected{"demo", 27, 123, 4, 2}, Expected{"townhouse", 24, 70, 5, 1},
                                         Expected{"brick-crawl", 24, 74, 4, 1}),
                         [](const auto& param) {
                             std::string name = param.param.name;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

TEST(DemoScenario, HasEnoughGapsToBeWorthATrace) { EXPECT_GE(scenario("demo").survey.gaps.size(), 60U); }

}  // namespace
}  // namespace seamward::test
