// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/way_through.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/brute_force.h"
#include "tests/support/random_survey.h"

namespace seamward::test {
namespace {

double pinch(const Survey& survey, const EntryPath& path) { return clear_width(survey[pinch_gap(survey, path)].shape); }

/// All paths listed one by one, and the best of those through each gap.
TEST(WayThrough, HasTheLargestPinchOfAllPathsThroughAGap) {
    std::size_t found = 0, none = 0;
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        RandomSurveySettings settings;
        settings.spaces = 5 + static_cast<std::uint32_t>(seed % 4);
        settings.gaps = 9 + static_cast<std::uint32_t>(seed % 5);
        settings.distinct_widths = seed % 3 == 0 ? 5 : 1'000'000;
        const Survey survey = random_survey(settings, seed);
        const std::vector<EntryPath> all = all_paths(survey, {}, [](const Gap& gap) { return !is_shut(gap.shape); });
        for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) {
            double best = -1;
            for (const EntryPath& path : all) {
                const bool through = std::find(path.gaps.begin(), path.gaps.end(), GapIndex{i}) != path.gaps.end();
                if (through) best = std::max(best, pinch(survey, path));
            }
            const std::optional<EntryPath> way = way_through(survey, {i}, {}, RunContext());
            ASSERT_EQ(way.has_value(), best >= 0) << seed << ' ' << survey.gaps[i].id;
            if (!way) {
                ++none;
                continue;
            }
            ++found;
            EXPECT_EQ(pinch(survey, *way), best) << seed << ' ' << text(survey, *way);
            EXPECT_TRUE(std::find(all.begin(), all.end(), *way) != all.end()) << text(survey, *way);
            EXPECT_TRUE(std::find(way->gaps.begin(), way->gaps.end(), GapIndex{i}) != way->gaps.end());
        }
    }
    EXPECT_GT(found, 1000U);
    EXPECT_GT(none, 100U);
}

}  // namespace
}  // namespace seamward::test
