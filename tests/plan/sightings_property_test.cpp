// SPDX-License-Identifier: GPL-3.0-or-later
// Random houses: the shares of entries against walks that were walked, and against a dense solver of this file's own.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <random>

#include "plan/chances.h"
#include "plan/sightings.h"
#include "tests/support/brute_force.h"
#include "tests/support/random_survey.h"

namespace seamward {
namespace {

bool starts(const Space& space) { return space.kind == SpaceKind::outdoors || space.source; }
bool lived_in(const Space& space) { return space.kind == SpaceKind::living; }
bool inner(const Space& space) { return !starts(space) && !lived_in(space); }

double length_of_mouth(const Gap& gap) {
    constexpr double pi = 3.14159265358979323846;
    if (const auto* slot = std::get_if<Slot>(&gap.shape)) return slot->length;
    if (const auto* hole = std::get_if<Hole>(&gap.shape)) return pi * hole->diameter;
    if (const auto* ring = std::get_if<Ring>(&gap.shape)) return pi * (ring->around + ring->width);
    return 4 * std::sqrt(*std::get<Mesh>(gap.shape).area);
}

/// A step through a gap in one direction.
struct Step {
    std::uint32_t gap, from, to;
    double rate;
};

/// The ways into the house for what ends at `room`.
std::vector<Step> entries_of(const Survey& survey, const std::vector<double>& rates, std::uint32_t room) {
    std::vector<Step> entries;
    for (std::uint32_t g = 0; g < survey.gaps.size(); ++g) {
        for (std::size_t side = 0; side < 2; ++side) {
            const std::uint32_t from = survey.gaps[g].between[side].value, to = survey.gaps[g].between[1 - side].value;
            if (rates[g] > 0 && from != room && starts(survey.spaces[from]) &&
                (inner(survey.spaces[to]) || lived_in(survey.spaces[to])))
                entries.push_back({g, from, to, rates[g]});
        }
    }
    return entries;
}

/// Gaussian elimination with the largest pivot; `m` has the right side as its last column.
std::vector<double> solved(std::vector<std::vector<double>> m) {
    const std::size_t n = m.size();
    for (std::size_t i = 0; i < n; ++i) {
        std::size_t pivot = i;
        for (std::size_t r = i + 1; r < n; ++r) pivot = std::abs(m[r][i]) > std::abs(m[pivot][i]) ? r : pivot;
        std::swap(m[i], m[pivot]);
        for (std::size_t r = 0; r < n; ++r) {
            if (r == i || m[r][i] == 0) continue;
            const double times = m[r][i] / m[i][i];
            for (std::size_t c = i; c <= n; ++c) m[r][c] -= times * m[i][c];
        }
    }
    std::vector<double> x;
    for (std::size_t i = 0; i < n; ++i) x.push_back(m[i][n] / m[i][i]);
    return x;
}

/// The chance to end at `room`, the walk written down as it is told: h(v) = sum of p(v, w) h(w), 1 at the room, 0 at other ends.
/// Only spaces that something from outside gets to.
std::map<std::uint32_t, double> by_elimination(const Survey& survey, const std::vector<double>& rates, std::uint32_t room) {
    std::vector<std::uint32_t> reached;
    const auto reach = [&](std::uint32_t space) {
        if (space != room && inner(survey.spaces[space]) && std::find(reached.begin(), reached.end(), space) == reached.end())
            reached.push_back(space);
    };
    for (const Step& entry : entries_of(survey, rates, room)) reach(entry.to);
    const auto across = [&](std::uint32_t gap, std::uint32_t space) { return survey.gaps[gap].across({space}).value; };
    const auto touches = [&](std::uint32_t g, std::uint32_t space) {
        return rates[g] > 0 && (survey.gaps[g].between[0].value == space || survey.gaps[g].between[1].value == space);
    };
    for (std::size_t i = 0; i < reached.size(); ++i) {
        for (std::uint32_t g = 0; g < rates.size(); ++g) {
            if (touches(g, reached[i])) reach(across(g, reached[i]));
        }
    }
    std::vector<std::vector<double>> m(reached.size(), std::vector<double>(reached.size() + 1, 0));
    for (std::size_t i = 0; i < reached.size(); ++i) {
        double sum = 0;
        for (std::uint32_t g = 0; g < rates.size(); ++g) sum += touches(g, reached[i]) ? rates[g] : 0;
        m[i][i] = 1;
        for (std::uint32_t g = 0; g < rates.size(); ++g) {
            if (!touches(g, reached[i])) continue;
            const std::uint32_t to = across(g, reached[i]);
            const auto at = std::find(reached.begin(), reached.end(), to);
            if (to == room) m[i][reached.size()] += rates[g] / sum;
            if (at != reached.end()) m[i][static_cast<std::size_t>(at - reached.begin())] -= rates[g] / sum;
        }
    }
    const std::vector<double> x = solved(std::move(m));
    std::map<std::uint32_t, double> chances{{room, 1.0}};
    for (std::size_t i = 0; i < x.size(); ++i) chances[reached[i]] = x[i];
    return chances;
}

Job seen_in(const Survey& survey, const Pest& pest, std::uint32_t room) {
    Job job;
    job.survey = survey;
    job.sightings = {{{room}, pest, std::nullopt, 2}};
    return job;
}

Pest mouse() {
    Pest pest;
    pest.id = "mouse";
    pest.size = {6e-3, 9e-3};
    return pest;
}

std::vector<double> shares_of(const SightingsOfPest& of, std::size_t gaps) {
    std::vector<double> shares(gaps, 0);
    for (const EntryShare& entry : of.entries) shares[entry.gap.value] = entry.share;
    return shares;
}

TEST(SightingsOnRandomHouses, AgreeWithElimination) {
    std::mt19937_64 random(20261127);
    int explained = 0, unexplained = 0;
    for (int round = 0; round < 300; ++round) {
        const Survey survey = test::random_survey(
            {.spaces = 5 + std::uint32_t(random() % 9), .gaps = 8 + std::uint32_t(random() % 20), .shapes = true}, random());
        std::vector<double> rates;
        for (const Gap& gap : survey.gaps) rates.push_back(chance_to_pass(gap, mouse().size) * length_of_mouth(gap));
        for (std::uint32_t room = 0; room < survey.spaces.size(); ++room) {
            if (starts(survey.spaces[room]) && !lived_in(survey.spaces[room])) continue;
            const SightingsOfPest of = explain_sightings(seen_in(survey, mouse(), room), {}, Sizing::with_plus_minus).at(0);
            const std::map<std::uint32_t, double> chances = by_elimination(survey, rates, room);
            std::vector<double> expected(rates.size(), 0);
            double sum = 0;
            for (const Step& entry : entries_of(survey, rates, room)) {
                const auto at = chances.find(entry.to);
                const double weight = at == chances.end() ? 0 : entry.rate * at->second;
                expected[entry.gap] += weight;
                sum += weight;
            }
            (sum > 0 ? explained : unexplained) += 1;
            ASSERT_EQ(of.explained, sum > 0 ? 2U : 0U) << round << ' ' << room;
            if (sum == 0) continue;
            const std::vector<double> shares = shares_of(of, rates.size());
            double all = 0;
            for (std::size_t g = 0; g < rates.size(); ++g) {
                EXPECT_NEAR(shares[g], expected[g] / sum, 1e-9) << round << ' ' << room << ' ' << g;
                all += shares[g];
            }
            EXPECT_NEAR(all, 1, 1e-12);
        }
    }
    EXPECT_GT(explained, 500);
    EXPECT_GT(unexplained, 100);
}

// Walks that are walked. Of n that came to the room, the share of an entry lies within 4.5 standard deviations of a binomial draw
// of n: past that once in 150,000.
TEST(SightingsOnRandomHouses, AgreeWithWalksThatAreWalked) {
    std::mt19937_64 random(20261128);
    int compared = 0;
    for (int round = 0; round < 25; ++round) {
        Survey survey = test::random_survey({.spaces = 7, .gaps = 14, .shapes = true}, random());
        std::vector<double> rates;
        for (Gap& gap : survey.gaps) {
            gap.evidence.plus_minus = 0;
            rates.push_back(test::gets_through(gap, mouse(), false) ? length_of_mouth(gap) : 0);
        }
        std::vector<std::vector<std::uint32_t>> gaps_of(survey.spaces.size());
        for (std::uint32_t g = 0; g < rates.size(); ++g) {
            for (const SpaceIndex end : survey.gaps[g].between) gaps_of[end.value].push_back(g);
        }
        for (std::uint32_t room = 0; room < survey.spaces.size(); ++room) {
            const std::vector<Step> entries = entries_of(survey, rates, room);
            if (entries.empty() || (starts(survey.spaces[room]) && !lived_in(survey.spaces[room]))) continue;
            std::vector<double> entry_rates;
            for (const Step& entry : entries) entry_rates.push_back(entry.rate);
            std::discrete_distribution<std::size_t> in(entry_rates.begin(), entry_rates.end());
            std::vector<std::discrete_distribution<std::size_t>> on;
            for (const std::vector<std::uint32_t>& gaps : gaps_of) {
                std::vector<double> weights;
                for (const std::uint32_t gap : gaps) weights.push_back(rates[gap]);
                on.emplace_back(weights.begin(), weights.end());
            }
            std::vector<int> came(rates.size(), 0);
            int n = 0;
            for (int walk = 0; walk < 20'000; ++walk) {
                const Step& entry = entries[in(random)];
                std::uint32_t here = entry.to;
                while (here != room && inner(survey.spaces[here]))
                    here = survey.gaps[gaps_of[here][on[here](random)]].across({here}).value;
                if (here != room) continue;
                ++n;
                ++came[entry.gap];
            }
            if (n < 400) continue;
            ++compared;
            const std::vector<double> shares =
                shares_of(explain_sightings(seen_in(survey, mouse(), room), {}, Sizing::stated).at(0), rates.size());
            for (std::size_t g = 0; g < rates.size(); ++g) {
                const double deviation = std::sqrt(shares[g] * (1 - shares[g]) / n);
                EXPECT_NEAR(double(came[g]) / n, shares[g], 4.5 * deviation + 1e-9) << round << ' ' << room << ' ' << g;
            }
        }
    }
    EXPECT_GT(compared, 30);
}

TEST(SightingsOnRandomHouses, AShutEntryHasNoShareAndCutOnesBeginNoWay) {
    std::mt19937_64 random(20261129);
    int cut = 0, open = 0;
    for (int round = 0; round < 300; ++round) {
        const Survey survey = test::random_survey({.spaces = 7, .gaps = 14, .shapes = true}, random());
        const auto room = static_cast<std::uint32_t>(survey.spaces.size() - 1);
        std::vector<PlanStep> steps;
        Survey treated = survey;
        for (std::uint32_t g = 0; g < survey.gaps.size(); ++g) {
            if (random() % 4 != 0) continue;
            steps.emplace_back();
            steps.back().gap = {g};
            treated.gaps[g].shape = Slot{0, 0};
            treated.gaps[g].evidence.plus_minus = 0;
        }
        const SightingsOfPest of = explain_sightings(seen_in(survey, mouse(), room), steps, Sizing::with_plus_minus).at(0);
        const std::vector<EntryPath> ways =
            test::all_paths(treated, {}, [](const Gap& gap) { return test::gets_through(gap, mouse(), true); });
        double sum = 0;
        for (const EntryShare& entry : of.entries) {
            const auto [a, b] = survey[entry.gap].between;
            if (entry.cut) sum += entry.share;
            if (starts(survey[a]) && starts(survey[b])) continue;  // an entry both ways
            const bool leads_in =
                std::any_of(ways.begin(), ways.end(), [&](const EntryPath& way) { return way.gaps.front() == entry.gap; });
            EXPECT_EQ(entry.cut, !leads_in) << round << ' ' << survey[entry.gap].id;
            (entry.cut ? cut : open) += 1;
        }
        EXPECT_NEAR(of.cut_share, sum, 1e-12);
        const std::vector<double> after =
            shares_of(explain_sightings(seen_in(treated, mouse(), room), {}, Sizing::with_plus_minus).at(0), survey.gaps.size());
        for (const PlanStep& step : steps) EXPECT_EQ(after[step.gap.value], 0);
    }
    EXPECT_GT(cut, 100);
    EXPECT_GT(open, 100);
}

}  // namespace
}  // namespace seamward
