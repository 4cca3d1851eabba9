// SPDX-License-Identifier: GPL-3.0-or-later
// Lines along ways keep to the air: no stretch of one meets a solid. Left out are ways past a gap that a job adds by hand: where
// it lies in the solids nobody knows, so lines to it are straight.
#include <gtest/gtest.h>

#include <iostream>

#include "house/route.h"
#include "paths/trace.h"
#include "tests/house/described_jobs.h"
#include "tests/support/house_space.h"

namespace seamward::test {
namespace {

/// Job and solids of one scenario.
class RouteInSolids : public testing::TestWithParam<std::string> {
protected:
    RouteInSolids() : job(described_job(GetParam(), Make::solids)), solids(job.house.parts) {}

    [[nodiscard]] bool has_place(GapIndex gap) const { return !job.house.places[gap.value].through.empty(); }

    /// How many times a line meets a solid; says where, up to a few.
    std::size_t count_hits(const std::vector<GapIndex>& gaps, const std::vector<SpaceIndex>& spaces) {
        const std::vector<Point> line = route(job.house, gaps, spaces);
        EXPECT_GE(line.size(), 2U);
        std::size_t hits = 0;
        for (std::size_t i = 1; i < line.size(); ++i) {
            for (const HouseSpace::Hit& hit : solids.met_by(line[i - 1], line[i])) {
                ++hits;
                if (++told_ > most_told) continue;
                std::string way;
                for (const GapIndex gap : gaps) way += job.survey[gap].id + ' ';
                ADD_FAILURE() << way << "runs into " << job.house.parts[hit.part].id << " at " << hit.at.x << ", " << hit.at.y
                              << ", " << hit.at.z << " (stretch " << i << ')';
            }
        }
        return hits;
    }

    Job job;
    HouseSpace solids;

private:
    static constexpr std::size_t most_told = 20;
    std::size_t told_ = 0;
};

TEST_P(RouteInSolids, BestWaysKeepToTheAir) {
    std::size_t ways = 0, by_hand = 0, hits = 0;
    const auto follow = [&](const TraceSettings& settings) {
        for (const RankedPath& ranked : trace(job.survey, settings, RunContext()).paths) {
            const EntryPath& path = ranked.path;
            if (!std::all_of(path.gaps.begin(), path.gaps.end(), [&](GapIndex gap) { return has_place(gap); })) {
                ++by_hand;
                continue;
            }
            ++ways;
            hits += count_hits(path.gaps, path.spaces);
        }
    };
    follow({.top = 20});
    EXPECT_GE(ways, 15U);
    follow({.pests = job.pests, .top = 20});
    for (std::uint32_t i = 0; i < job.survey.spaces.size(); ++i) {
        if (job.survey.spaces[i].kind != SpaceKind::outdoors) follow({.to = {SpaceIndex{i}}, .top = 5});
    }
    std::cout << ways << " ways, " << hits << " hits; " << by_hand << " more pass a gap added by hand\n";
    EXPECT_EQ(hits, 0U);
}

/// Through a gap into a space and out through another, whatever the two: so a way through a gap ends in the air of the space that
/// the gap is said to lead to.
TEST_P(RouteInSolids, AnyTwoGapsOfASpaceAreJoinedThroughAir) {
    std::size_t pairs = 0, hits = 0;
    for (std::uint32_t s = 0; s < job.survey.spaces.size(); ++s) {
        const SpaceIndex space{s};
        if (job.survey[space].kind == SpaceKind::outdoors) continue;
        std::vector<GapIndex> gaps;
        for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) {
            const Gap& gap = job.survey.gaps[i];
            const bool open = clear_width(gap.shape) > 0 && has_place({i});
            if (open && (gap.between[0] == space || gap.between[1] == space)) gaps.push_back({i});
        }
        for (std::size_t a = 0; a < gaps.size(); ++a) {
            for (std::size_t b = a + 1; b < gaps.size(); ++b, ++pairs)
                hits +=
                    count_hits({gaps[a], gaps[b]}, {job.survey[gaps[a]].across(space), space, job.survey[gaps[b]].across(space)});
        }
    }
    std::cout << pairs << " pairs of gaps, " << hits << " hits\n";
    EXPECT_GT(pairs, 10U);
    EXPECT_EQ(hits, 0U);
}

INSTANTIATE_TEST_SUITE_P(Shipped, RouteInSolids, testing::ValuesIn(described_jobs()), name_of);

}  // namespace
}  // namespace seamward::test
