// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <limits>
#include <thread>

#include "network/pinches.h"
#include "paths/path_order.h"
#include "paths/ranked_paths.h"
#include "paths/trace.h"
#include "tests/support/brute_force.h"
#include "tests/support/random_survey.h"
#include "tests/support/textbook_yen.h"

namespace seamward::test {
namespace {

constexpr std::uint64_t rounds = 300;

Survey random_house(std::uint64_t seed) {
    return random_survey({.spaces = static_cast<std::uint32_t>(6 + seed % 30),
                          .gaps = static_cast<std::uint32_t>(10 + seed % 90),
                          .distinct_widths = seed % 2 == 0 ? 12U : 1'000'000U,
                          .source_share = 0.05},
                         seed);
}

Trace traced(const Survey& survey, std::size_t top = 25) { return trace(survey, {.top = top}, RunContext()); }

std::vector<std::optional<double>> room_pinches(const Survey& survey) {
    std::vector<std::optional<double>> all;
    for (const RoomPinch& room : traced(survey, 1).rooms) all.push_back(room.pinch);
    return all;
}

TEST(PathProperties, ClosingAGapNeverEnlargesAPinch) {
    for (std::uint64_t seed = 0; seed < rounds; ++seed) {
        Survey survey = random_house(seed);
        std::vector<std::optional<double>> before = room_pinches(survey);
        for (std::size_t g = seed % 3; g < survey.gaps.size(); g += 3) {
            survey.gaps[g].shape = Slot{0, 1};
            const std::vector<std::optional<double>> after = room_pinches(survey);
            for (std::size_t i = 0; i < before.size(); ++i) ASSERT_LE(after[i], before[i]) << "seed " << seed << ", gap " << g;
            before = after;
        }
    }
}

TEST(PathProperties, ClosingThePinchRemovesTheBestPath) {
    for (std::uint64_t seed = 0; seed < rounds; ++seed) {
        Survey survey = random_house(seed);
        const Trace before = traced(survey, 1);
        if (before.paths.empty()) continue;
        survey.gaps[before.paths[0].pinch_gap.value].shape = Slot{0, 1};
        const Trace after = traced(survey, 1);
        ASSERT_TRUE(after.paths.empty() || after.paths[0].path != before.paths[0].path) << "seed " << seed;
        ASSERT_TRUE(after.paths.empty() || after.paths[0].pinch <= before.paths[0].pinch);
    }
}

TEST(PathProperties, ScalingAllWidthsScalesAllPinchesAndKeepsTheOrder) {
    for (std::uint64_t seed = 0; seed < rounds; ++seed) {
        const Survey survey = random_house(seed);
        Survey scaled = survey;
        constexpr double factor = 0.25;  // a power of two: exact
        for (Gap& gap : scaled.gaps) gap.shape = Slot{clear_width(gap.shape) * factor, 1};
        const Trace a = traced(survey);
        const Trace b = traced(scaled);
        ASSERT_EQ(a.paths.size(), b.paths.size());
        for (std::size_t i = 0; i < a.paths.size(); ++i) {
            ASSERT_EQ(a.paths[i].path, b.paths[i].path) << "seed " << seed << ", path " << i;
            ASSERT_EQ(a.paths[i].pinch * factor, b.paths[i].pinch);
        }
    }
}

/// Ids decide among equals by their order alone: names that sort the same way change nothing but names.
TEST(PathProperties, RenamingIdsChangesNothingButNames) {
    for (std::uint64_t seed = 0; seed < rounds; ++seed) {
        const Survey survey = random_house(seed);
        Survey renamed = survey;
        for (Gap& gap : renamed.gaps) gap.id = "renamed " + gap.id;
        for (Space& space : renamed.spaces) space.id = "renamed " + space.id;
        const Trace a = traced(survey);
        const Trace b = traced(renamed);
        ASSERT_EQ(a.paths.size(), b.paths.size());
        for (std::size_t i = 0; i < a.paths.size(); ++i) ASSERT_EQ(a.paths[i].path, b.paths[i].path) << "seed " << seed;
    }
}

TEST(PathProperties, TheOrderOfTheFileDoesNotMatter) {
    for (std::uint64_t seed = 0; seed < rounds; ++seed) {
        const Survey survey = random_house(seed);
        Survey turned = survey;
        std::reverse(turned.gaps.begin(), turned.gaps.end());
        for (Gap& gap : turned.gaps) std::swap(gap.between[0], gap.between[1]);
        const Trace a = traced(survey);
        const Trace b = traced(turned);
        ASSERT_EQ(a.paths.size(), b.paths.size());
        for (std::size_t i = 0; i < a.paths.size(); ++i)
            ASSERT_EQ(text(survey, a.paths[i].path), text(turned, b.paths[i].path)) << "seed " << seed;
    }
}

TEST(PathProperties, FewerPathsAskedForAreTheFirstOfMore) {
    for (std::uint64_t seed = 0; seed < rounds; ++seed) {
        const Survey survey = random_house(seed);
        const Trace few = traced(survey, 7);
        const Trace many = traced(survey, 60);
        ASSERT_EQ(few.paths.size(), std::min<std::size_t>(7, many.paths.size()));
        for (std::size_t i = 0; i < few.paths.size(); ++i) ASSERT_EQ(few.paths[i].path, many.paths[i].path) << "seed " << seed;
    }
}

TEST(PathProperties, PathsKeepTheRulesOfAnEntryPath) {
    for (std::uint64_t seed = 0; seed < rounds; ++seed) {
        const Survey survey = random_house(seed);
        const Trace result = traced(survey, 60);
        for (const RankedPath& ranked : result.paths) {
            const EntryPath& path = ranked.path;
            ASSERT_EQ(path.spaces.size(), path.gaps.size() + 1);
            ASSERT_TRUE(survey[path.from()].starts_paths());
            ASSERT_TRUE(survey[path.to()].is_living());
            std::vector<SpaceIndex> sorted = path.spaces;
            std::sort(sorted.begin(), sorted.end());
            ASSERT_EQ(std::adjacent_find(sorted.begin(), sorted.end()), sorted.end());
            for (std::size_t i = 0; i < path.gaps.size(); ++i) {
                ASSERT_EQ(survey[path.gaps[i]].across(path.spaces[i]), path.spaces[i + 1]);
                const bool barrier = survey[path.spaces[i]].starts_paths() || survey[path.spaces[i]].is_living();
                ASSERT_TRUE(i == 0 || !barrier);
            }
        }
        for (std::size_t i = 1; i < result.paths.size(); ++i) {
            ASSERT_TRUE(PathKey(survey, result.paths[i - 1].path).before(PathKey(survey, result.paths[i].path)))
                << "seed " << seed;
        }
    }
}

/// Each room's pinch is that of its best ranked path.
TEST(PathProperties, RoomPinchesAreThoseOfTheBestPaths) {
    for (std::uint64_t seed = 0; seed < rounds; ++seed) {
        const Survey survey = random_house(seed);
        for (const RoomPinch& room : traced(survey, 1).rooms) {
            const Trace to_it = trace(survey, {.to = {room.space}, .top = 1}, RunContext());
            ASSERT_EQ(room.pinch, to_it.paths.empty() ? std::nullopt : std::optional(to_it.paths[0].pinch)) << "seed " << seed;
        }
    }
}

/// Against Yen's algorithm as in the textbook, on networks too large to list all paths.
TEST(PathProperties, AgreeWithTextbookYenOnLargerNetworks) {
    for (std::uint64_t seed = 0; seed < 40; ++seed) {
        const Survey survey = random_survey(
            {.spaces = 120, .gaps = 700, .outdoors_share = 0.02, .living_share = 0.05, .source_share = 0, .located_share = 0},
            seed);
        const Network network = make_network(survey, [](const Gap&) { return true; });
        const Roles roles(survey, {});
        const RunContext context;
        RankedPaths ranked(survey, network, roles, false, context);
        std::vector<EntryPath> ours;
        for (int k = 0; k < 15; ++k) ours.push_back(ranked.next().value());
        ASSERT_EQ(ours, textbook_yen(survey, network, roles, 15)) << "seed " << seed;
    }
}

/// A grid of equal gaps has more paths than anyone can wait for.
TEST(PathProperties, CancellingStopsTheWorkInItsMiddle) {
    constexpr std::uint32_t side = 60;
    Survey survey;
    const auto add_gap = [&](std::uint32_t a, std::uint32_t b) {
        Gap gap;
        gap.id = "g" + std::to_string(survey.gaps.size());
        gap.between = {SpaceIndex{a}, SpaceIndex{b}};
        gap.shape = Slot{0.005, 1};
        gap.at = Point{1.0 * (a % side), 1.0 * (a / side), 0};
        survey.gaps.push_back(std::move(gap));
    };
    for (std::uint32_t i = 0; i < side * side; ++i) {
        survey.spaces.push_back({"s" + std::to_string(i), "",
                                 i == 0                 ? SpaceKind::outdoors
                                 : i + 1 == side * side ? SpaceKind::living
                                                        : SpaceKind::cavity});
        if (i % side > 0) add_gap(i - 1, i);
        if (i >= side) add_gap(i - side, i);
    }
    RunContext context;
    std::thread other([&] {
        std::this_thread::sleep_for(std::chrono::milliseconds(100));
        context.cancel();
    });
    EXPECT_THROW((void)trace(survey, {.top = std::numeric_limits<std::size_t>::max()}, context), Cancelled);
    other.join();
}

TEST(PathProperties, CancellingStopsTheWork) {
    RunContext context;
    context.cancel();
    EXPECT_THROW((void)trace(random_house(1), {}, context), Cancelled);
}

}  // namespace
}  // namespace seamward::test
