// SPDX-License-Identifier: GPL-3.0-or-later
// Ways into described houses, against an enumeration of every path that shares no code with the engine's search.
#include <gtest/gtest.h>

#include <algorithm>

#include "catalog/shipped.h"
#include "job_file/job.h"
#include "paths/trace.h"
#include "tests/support/brute_force.h"

namespace seamward {
namespace {

Job shipped_job(const std::string& name) {
    const RunContext context;
    return read_job(SEAMWARD_SOURCE_FOLDER "/scenarios/" + name + ".yaml", context);
}

/// The best path of an animal by both ways of finding it; an empty text when there is none.
std::string best_path(const Job& job, const std::string& pest_id, std::span<const SpaceIndex> to = {}) {
    const Pest& pest = *shipped_pests().find(pest_id);
    const RunContext context;
    const Trace found = trace(job.survey, {.pests = {pest}, .to = {to.begin(), to.end()}, .top = 5}, context);
    const std::vector<EntryPath> every =
        test::all_paths(job.survey, to, [&](const Gap& gap) { return test::gets_through(gap, pest, true); });
    EXPECT_EQ(found.paths.size(), std::min<std::size_t>(5, every.size())) << pest_id;
    for (std::size_t i = 0; i < found.paths.size(); ++i)
        EXPECT_EQ(test::text(job.survey, found.paths[i].path), test::text(job.survey, every[i])) << pest_id << ", way " << i + 1;
    return every.empty() ? "" : test::text(job.survey, every.front());
}

class PestsOnHouses : public testing::TestWithParam<const char*> {};

TEST_P(PestsOnHouses, BestPathsAgreeWithEnumeration) {
    const Job job = shipped_job(GetParam());
    EXPECT_FALSE(best_path(job, "bark-scorpion-young").empty());
    best_path(job, "house-mouse");
}

INSTANTIATE_TEST_SUITE_P(Shipped, PestsOnHouses, testing::Values("demo", "two-story", "wall-corner"), [](const auto& shipped) {
    std::string name = shipped.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

// With the sizes of the catalog a mouse passes nothing that stops a young scorpion, so where the widest way is open to both, it
// is the best of both; elsewhere the mouse has none.
TEST(PestsOnHouses, MouseAndYoungScorpionDiffer) {
    const Job two_story = shipped_job("two-story");
    EXPECT_EQ(best_path(two_story, "house-mouse"), "");
    EXPECT_EQ(best_path(two_story, "bark-scorpion-young"), "yard>garage-corners>garage>garage-house-sweep>family-room");

    const Job demo = shipped_job("demo");
    std::size_t differ = 0, rooms = 0;
    for (std::uint32_t i = 0; i < demo.survey.spaces.size(); ++i) {
        if (!demo.survey.spaces[i].is_living()) continue;
        const std::vector<SpaceIndex> room{{i}};
        ++rooms;
        const std::string mouse = best_path(demo, "house-mouse", room), scorpion = best_path(demo, "bark-scorpion-young", room);
        EXPECT_FALSE(scorpion.empty()) << demo.survey.spaces[i].id;
        if (mouse != scorpion) ++differ;
    }
    EXPECT_EQ(rooms, 8U);
    EXPECT_EQ(differ, 4U);
}

}  // namespace
}  // namespace seamward
