// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/cut.h"

#include <gtest/gtest.h>

#include <map>
#include <numeric>
#include <random>
#include <stdexcept>

#include "network/pinches.h"
#include "tests/support/random_survey.h"
#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

using test::SurveyBuilder;

/// Every gap of a survey as a link; `price` says what each costs.
template <class Price>
std::vector<PricedLink> links_of(const Survey& survey, Price&& price) {
    std::vector<PricedLink> links;
    for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) {
        const Gap& gap = survey.gaps[i];
        links.push_back({gap.between[0], gap.between[1], {i}, clear_width(gap.shape), price(i)});
    }
    return links;
}

/// The widest way in past the links that are shut; no_way when there is none.
double widest_left(const Survey& survey, std::span<const PricedLink> links, const std::vector<bool>& shut) {
    std::vector<Link> open;
    for (std::size_t i = 0; i < links.size(); ++i) {
        if (!shut[i]) open.push_back({links[i].a, links[i].b, links[i].gap, links[i].width});
    }
    const Roles roles(survey, {});
    const std::vector<double> all = pinches(Network(survey.spaces.size(), std::move(open)), roles);
    double widest = no_way;
    for (const SpaceIndex end : roles.end_spaces()) {
        if (!roles.starts(end)) widest = std::max(widest, all[end.value]);
    }
    return widest;
}

std::vector<bool> marks(const std::vector<std::uint32_t>& links, std::size_t count) {
    std::vector<bool> all(count, false);
    for (const std::uint32_t link : links) all[link] = true;
    return all;
}

Money price_of(std::span<const PricedLink> links, const std::vector<std::uint32_t>& which) {
    Money sum;
    for (const std::uint32_t link : which) sum = sum + links[link].price.value();
    return sum;
}

void expect_proof(const Survey& survey, std::span<const PricedLink> links, const Cut& cut) {
    const Roles roles(survey, {});
    std::vector<std::int64_t> load(links.size(), 0);
    Money sum;
    for (const CutRoute& route : cut.routes) {
        sum = sum + route.amount;
        EXPECT_GT(route.amount.cents, 0);
        ASSERT_FALSE(route.links.empty());
        const PricedLink& first = links[route.links.front()];
        SpaceIndex here = roles.starts(first.a) ? first.a : first.b;
        EXPECT_TRUE(roles.starts(here));
        for (std::size_t i = 0; i < route.links.size(); ++i) {
            const PricedLink& link = links[route.links[i]];
            ASSERT_TRUE(link.a == here || link.b == here) << "the links of a route follow each other";
            here = link.a == here ? link.b : link.a;
            EXPECT_EQ(i + 1 < route.links.size(), roles.passable(here));
            load[route.links[i]] += route.amount.cents;
        }
        EXPECT_TRUE(roles.ends(here) && !roles.starts(here));
    }
    EXPECT_EQ(sum, cut.price);
    for (std::size_t i = 0; i < links.size(); ++i) {
        if (links[i].price) {
            EXPECT_LE(load[i], links[i].price->cents);
        }
    }
}

TEST(Cut, ShutsTheCheapPlaceOnEachWay) {
    SurveyBuilder build;
    build.outdoors("yard").cavity("wall").cavity("attic").living("kitchen");
    build.slot("screed", "yard", "wall", 1).slot("sink", "wall", "kitchen", 2);
    build.slot("eave", "yard", "attic", 5).slot("light", "attic", "kitchen", 3);
    const std::vector<std::int64_t> prices{9000, 800, 4000, 4500};
    const auto links = links_of(build.survey(), [&](std::uint32_t i) { return Money{prices[i]}; });
    const Cut cut = cheapest_cut(Roles(build.survey(), {}), build.survey().spaces.size(), links);
    EXPECT_EQ(cut.price, Money{4800});
    EXPECT_EQ(cut.links, (std::vector<std::uint32_t>{1, 2}));
    expect_proof(build.survey(), links, cut);
}

// An infinite answer is told as such (networkx, test_digraph_infcap_path): the way is named.
TEST(Cut, WayThatCannotBeShutIsNamed) {
    SurveyBuilder build;
    build.outdoors("yard").cavity("wall").living("kitchen");
    build.slot("weeps", "yard", "wall", 4).slot("sink", "wall", "kitchen", 2).slot("louver", "wall", "kitchen", 6);
    const auto links =
        links_of(build.survey(), [](std::uint32_t i) { return i == 1 ? std::optional(Money{800}) : std::nullopt; });
    const Cut cut = cheapest_cut(Roles(build.survey(), {}), build.survey().spaces.size(), links);
    EXPECT_FALSE(cut.possible);
    EXPECT_EQ(cut.open_path, (LinkPath{0, 2}));
}

TEST(Cut, FreeClosingIsDoneOnlyWhereItIsNeeded) {
    SurveyBuilder build;
    build.outdoors("yard").cavity("wall").cavity("dead-end").living("kitchen");
    build.slot("screed", "yard", "wall", 1).slot("crack", "yard", "dead-end", 2).slot("sink", "wall", "kitchen", 2);
    const std::vector<std::int64_t> prices{0, 0, 800};
    const auto links = links_of(build.survey(), [&](std::uint32_t i) { return Money{prices[i]}; });
    const Cut cut = cheapest_cut(Roles(build.survey(), {}), build.survey().spaces.size(), links);
    EXPECT_EQ(cut.price, Money{0});
    EXPECT_EQ(cut.links, std::vector<std::uint32_t>{0});
}

TEST(Cut, PricesThatCannotBeCountedAreRefused) {
    SurveyBuilder build;
    build.outdoors("yard").living("kitchen");
    build.slot("a", "yard", "kitchen", 1).slot("b", "yard", "kitchen", 1);
    const auto links = links_of(build.survey(), [](std::uint32_t) { return Money{std::int64_t{1} << 60}; });
    EXPECT_THROW((void)cheapest_cut(Roles(build.survey(), {}), 2, links), std::overflow_error);
}

// Every subset tried: on 1,500 small random surveys nothing is cheaper. A quarter of the gaps cannot be shut in each third one.
TEST(Cut, NothingIsCheaperByBruteForce) {
    std::mt19937_64 random(42);
    int impossible = 0;
    for (int round = 0; round < 1500; ++round) {
        const Survey survey = test::random_survey({.spaces = 6, .gaps = 10, .distinct_widths = 5, .source_share = 0}, random());
        const auto links = links_of(survey, [&](std::uint32_t) -> std::optional<Money> {
            if (round % 3 == 0 && random() % 4 == 0) return std::nullopt;
            return Money{static_cast<std::int64_t>(random() % 8)};
        });
        const Cut cut = cheapest_cut(Roles(survey, {}), survey.spaces.size(), links);
        std::optional<Money> least;
        for (unsigned subset = 0; subset < (1U << links.size()); ++subset) {
            std::vector<std::uint32_t> which;
            bool allowed = true;
            for (std::uint32_t i = 0; i < links.size(); ++i) {
                if (((subset >> i) & 1) == 0) continue;
                which.push_back(i);
                allowed = allowed && links[i].price.has_value();
            }
            if (!allowed) continue;
            const Money price = price_of(links, which);
            if ((least && price >= *least) || widest_left(survey, links, marks(which, links.size())) != no_way) continue;
            least = price;
        }
        ASSERT_EQ(cut.possible, least.has_value()) << round;
        if (!least) {
            ++impossible;
            for (const std::uint32_t link : cut.open_path) EXPECT_FALSE(links[link].price.has_value());
            continue;
        }
        ASSERT_EQ(cut.price, *least) << round;
        EXPECT_EQ(price_of(links, cut.links), cut.price);
        EXPECT_EQ(widest_left(survey, links, marks(cut.links, links.size())), no_way);
        expect_proof(survey, links, cut);
    }
    EXPECT_GT(impossible, 20);
}

// Each rung is a cut for its width, as cheap as a cut made anew, and the next narrower width costs more.
TEST(CutLadder, RungsAreCheapestCuts) {
    std::mt19937_64 random(43);
    int stopped = 0;
    for (int round = 0; round < 600; ++round) {
        const Survey survey = test::random_survey(
            {.spaces = 14, .gaps = 40, .distinct_widths = round % 2 == 0 ? 8U : 1'000'000U, .source_share = 0}, random());
        const auto links = links_of(survey, [&](std::uint32_t) -> std::optional<Money> {
            if (round % 3 == 0 && random() % 3 == 0) return std::nullopt;
            return Money{static_cast<std::int64_t>(random() % 500)};
        });
        const Roles roles(survey, {});
        const CutLadder ladder = cut_ladder(roles, survey.spaces.size(), links);
        std::map<double, Cut, std::greater<>> anew;
        for (const PricedLink& link : links) {
            const bool joins = (roles.starts(link.a) && roles.starts(link.b)) || (roles.ends(link.a) && roles.ends(link.b));
            if (joins) continue;  // it is part of no path
            std::vector<PricedLink> wide;
            for (const PricedLink& other : links) {
                if (other.width >= link.width) wide.push_back(other);
            }
            anew.emplace(link.width, cheapest_cut(roles, survey.spaces.size(), wide));
        }
        std::size_t rung = 0;
        for (auto cut = anew.begin(); cut != anew.end(); ++cut) {
            if (!cut->second.possible) {
                ++stopped;
                EXPECT_FALSE(ladder.stopped_by.empty());
                break;
            }
            const auto next = std::next(cut);
            const bool same = next != anew.end() && next->second.possible && next->second.price == cut->second.price;
            if (cut->second.price.cents == 0 || same) continue;
            ASSERT_LT(rung, ladder.rungs.size());
            EXPECT_EQ(ladder.rungs[rung].width, cut->first);
            EXPECT_EQ(ladder.rungs[rung].price, cut->second.price);
            EXPECT_EQ(price_of(links, ladder.rungs[rung].links), ladder.rungs[rung].price);
            EXPECT_LT(widest_left(survey, links, marks(ladder.rungs[rung].links, links.size())), cut->first);
            ++rung;
        }
        EXPECT_EQ(rung, ladder.rungs.size());
        for (const std::uint32_t link : ladder.stopped_by) EXPECT_FALSE(links[link].price.has_value());
    }
    EXPECT_GT(stopped, 50);
}

// Of many rungs some are listed: the first, the last, and those between as they stand in the whole ladder.
TEST(CutLadder, AVeryLongOneIsThinned) {
    std::mt19937_64 random(44);
    for (int round = 0; round < 50; ++round) {
        const Survey survey = test::random_survey({.spaces = 14, .gaps = 80, .source_share = 0}, random());
        const auto links = links_of(
            survey, [&](std::uint32_t) { return std::optional<Money>(Money{static_cast<std::int64_t>(1 + random() % 500)}); });
        const Roles roles(survey, {});
        const CutLadder all = cut_ladder(roles, survey.spaces.size(), links);
        if (all.rungs.size() < 5) continue;
        const CutLadder some = cut_ladder(roles, survey.spaces.size(), links, 4);
        ASSERT_EQ(some.rungs.size(), 4U);
        EXPECT_EQ(some.left_out, all.rungs.size() - 4);
        EXPECT_EQ(some.rungs.front().width, all.rungs.front().width);
        EXPECT_EQ(some.rungs.back().width, all.rungs.back().width);
        for (const Rung& rung : some.rungs) {
            const auto same =
                std::find_if(all.rungs.begin(), all.rungs.end(), [&](const Rung& one) { return one.width == rung.width; });
            ASSERT_NE(same, all.rungs.end());
            EXPECT_EQ(rung.price, same->price);
            EXPECT_EQ(rung.links, same->links);
        }
    }
}

}  // namespace
}  // namespace seamward
