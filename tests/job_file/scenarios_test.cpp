// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "job_file/job.h"

namespace seamward::test {
namespace {

Job scenario(const std::string& name) {
    return read_job(std::string(SEAMWARD_SOURCE_FOLDER) + "/scenarios/" + name + ".yaml", RunContext(), Make::solids);
}

/// Spaces and gaps are those of the described house, where there is one, and the job's own.
struct Expected {
    const char* name;
    std::size_t spaces, gaps, pests, closed;
    int least_rooms = 5;
};

/// A gap of a job on a described house that the house does not have.
bool added_by_hand(const Job& job, const Gap& gap) {
    return job.house.places.at(static_cast<std::size_t>(&gap - job.survey.gaps.data())).through.empty();
}

/// A room left without gaps, to show what the answer says of it.
bool nothing_known(const Space& space) { return space.id == "bedroom-east"; }

class Scenario : public testing::TestWithParam<Expected> {};

TEST_P(Scenario, HasWhatItsFileLists) {
    const Job job = scenario(GetParam().name);
    EXPECT_EQ(job.survey.spaces.size(), GetParam().spaces);
    EXPECT_EQ(job.survey.gaps.size(), GetParam().gaps);
    EXPECT_EQ(job.pests.size(), GetParam().pests);
    EXPECT_EQ(job.closed.size(), GetParam().closed);
    EXPECT_FALSE(job.name.empty());
}

/// What makes a survey of use: a start, rooms, and for every gap a place, a depth and what its sides are made of. Surveys that
/// were typed in have no space that no gap leads to; a described house has air in walls that nothing opens into.
TEST_P(Scenario, IsAWholeSurvey) {
    const Job job = scenario(GetParam().name);
    const auto& spaces = job.survey.spaces;
    EXPECT_TRUE(std::any_of(spaces.begin(), spaces.end(), [](const Space& space) { return space.starts_paths(); }));
    EXPECT_GE(std::count_if(spaces.begin(), spaces.end(), [](const Space& space) { return space.is_living(); }),
              GetParam().least_rooms);
    const bool described = !job.house.parts.empty();
    std::vector<bool> reached(spaces.size(), false);
    for (const Gap& gap : job.survey.gaps) {
        for (const SpaceIndex end : gap.between) reached.at(end.value) = true;
        EXPECT_FALSE(gap.name.empty()) << gap.id;
        if (described && added_by_hand(job, gap)) continue;
        EXPECT_TRUE(gap.at) << gap.id;
        EXPECT_TRUE(gap.depth) << gap.id;
        EXPECT_FALSE(gap.substrates.empty()) << gap.id;
    }
    for (std::size_t i = 0; i < spaces.size(); ++i)
        EXPECT_TRUE(reached[i] || (described && spaces[i].kind == SpaceKind::cavity) || nothing_known(spaces[i])) << spaces[i].id;
}

INSTANTIATE_TEST_SUITE_P(Shipped, Scenario,
                         testing::Values(Expected{"demo", 37, 123, 4, 2}, Expected{"townhouse", 50, 72, 5, 1},
                                         Expected{"brick-crawl", 34, 79, 4, 1}, Expected{"two-story", 38, 64, 4, 0},
                                         Expected{"apartments", 164, 526, 3, 0}, Expected{"wall-corner", 18, 32, 4, 0, 2}),
                         [](const auto& param) {
                             std::string name = param.param.name;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

TEST(DemoScenario, HasEnoughGapsToBeWorthATrace) { EXPECT_GE(scenario("demo").survey.gaps.size(), 60U); }

}  // namespace
}  // namespace seamward::test
