// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <limits>

#include "paths/trace.h"
#include "tests/support/brute_force.h"
#include "tests/support/random_survey.h"
#include "tests/support/survey_builder.h"

namespace seamward::test {
namespace {

std::vector<std::string> told(const Survey& survey, const TraceSettings& settings) {
    std::vector<std::string> texts;
    for (const RankedPath& ranked : trace(survey, settings, RunContext()).paths) texts.push_back(text(survey, ranked.path));
    return texts;
}

std::vector<std::string> expected(const Survey& survey, std::span<const SpaceIndex> to, std::size_t top) {
    std::vector<std::string> texts;
    for (const EntryPath& path : all_paths(survey, to, [](const Gap& gap) { return !is_shut(gap.shape); })) {
        if (texts.size() < top) texts.push_back(text(survey, path));
    }
    return texts;
}

struct Family {
    const char* name;
    RandomSurveySettings settings;
};

class AgainstBruteForce : public testing::TestWithParam<Family> {};

/// Every path in the right order, down to the last one, on 1,000 random surveys of each family.
TEST_P(AgainstBruteForce, AllPathsInOrder) {
    for (std::uint64_t seed = 0; seed < 1000; ++seed) {
        const Survey survey = random_survey(GetParam().settings, seed);
        const TraceSettings all{.top = std::numeric_limits<std::size_t>::max()};
        ASSERT_EQ(told(survey, all), expected(survey, {}, all.top)) << "seed " << seed;
    }
}

/// The same with paths that end at any space, passable ones and starts too.
TEST_P(AgainstBruteForce, AllPathsToChosenSpaces) {
    for (std::uint64_t seed = 0; seed < 1000; ++seed) {
        const Survey survey = random_survey(GetParam().settings, seed);
        const auto count = static_cast<std::uint32_t>(survey.spaces.size());
        TraceSettings settings{.to = {SpaceIndex{static_cast<std::uint32_t>(seed) % count}}, .top = 5000};
        if (seed % 3 == 0) settings.to.push_back({static_cast<std::uint32_t>(seed / 7) % count});
        ASSERT_EQ(told(survey, settings), expected(survey, settings.to, settings.top)) << "seed " << seed;
    }
}

INSTANTIATE_TEST_SUITE_P(
    Families, AgainstBruteForce,
    testing::Values(
        Family{"Distinct", {}}, Family{"Ties", {.spaces = 7, .gaps = 12, .distinct_widths = 2}},
        Family{"AllAlike", {.spaces = 6, .gaps = 11, .distinct_widths = 1}},
        Family{"PartlyLocated", {.spaces = 7, .gaps = 12, .distinct_widths = 2, .located_share = 0.7}},
        Family{"Unlocated", {.spaces = 7, .gaps = 12, .distinct_widths = 2, .located_share = 0}},
        Family{"Dense", {.spaces = 5, .gaps = 14, .distinct_widths = 4, .source_share = 0.3}},
        Family{"Sparse", {.spaces = 12, .gaps = 14, .distinct_widths = 3, .living_share = 0.1, .source_share = 0}},
        Family{"Deep", {.spaces = 8, .gaps = 16, .outdoors_share = 0, .living_share = 0, .source_share = 0}},
        Family{"DeepTies",
               {.spaces = 8, .gaps = 16, .distinct_widths = 3, .outdoors_share = 0, .living_share = 0, .source_share = 0}},
        Family{"DeepAlike",
               {.spaces = 7, .gaps = 15, .distinct_widths = 1, .outdoors_share = 0, .living_share = 0.1, .source_share = 0.05}},
        Family{"DeepPartlyLocated",
               {.spaces = 7,
                .gaps = 15,
                .distinct_widths = 2,
                .outdoors_share = 0,
                .living_share = 0,
                .source_share = 0,
                .located_share = 0.8}}),
    [](const auto& family) { return std::string(family.param.name); });

}  // namespace
}  // namespace seamward::test
