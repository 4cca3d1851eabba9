// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cheapest_closing.h"

#include <gtest/gtest.h>

#include <optional>

#include "plan/closing_program.h"
#include "tests/plan/random_problem.h"
#include "tests/support/brute_force.h"

namespace seamward {
namespace {

using test::RandomJob;

/// A choice of one option for each gap, or none: position in its options, -1 for none.
using Assignment = std::vector<int>;

Survey treated(const RandomJob& job, const Assignment& chosen) {
    Survey survey = job.survey;
    for (std::size_t i = 0; i < chosen.size(); ++i) {
        if (chosen[i] >= 0) close_gap(survey.gaps[i], job.options[i].options[static_cast<std::size_t>(chosen[i])].opening);
    }
    return survey;
}

/// The widest way in that is open to one of the animals, by walking along every path; nothing: there is none.
std::optional<double> widest_open(const RandomJob& job, const Assignment& chosen) {
    std::optional<double> widest;
    const Survey after = treated(job, chosen);
    for (const Pest& pest : job.pests) {
        const auto passes = [&](const Gap& gap) {
            // Who gnaws gets through as if nothing had been done.
            const auto position = static_cast<std::size_t>(&gap - after.gaps.data());
            const bool gnawed = pest.gnaws && chosen[position] >= 0 &&
                                job.options[position].options[static_cast<std::size_t>(chosen[position])].gnawed;
            return test::gets_through(gnawed ? job.survey.gaps[position] : gap, pest, true);
        };
        for (const EntryPath& path : test::all_paths(after, {}, passes)) {
            double pinch = 1;
            for (const GapIndex gap : path.gaps) {
                const bool gnawed = pest.gnaws && chosen[gap.value] >= 0 &&
                                    job.options[gap.value].options[static_cast<std::size_t>(chosen[gap.value])].gnawed;
                pinch = std::min(pinch, counted_width(gnawed ? job.survey[gap] : after[gap], Sizing::with_plus_minus));
            }
            widest = std::max(widest.value_or(0), pinch);
        }
    }
    return widest;
}

Money price_of(const RandomJob& job, const Assignment& chosen) {
    Money sum;
    for (std::size_t i = 0; i < chosen.size(); ++i) {
        if (chosen[i] >= 0) sum = sum + job.options[i].options[static_cast<std::size_t>(chosen[i])].cost;
    }
    return sum;
}

template <class Visit>
void for_each_assignment(const RandomJob& job, Visit&& visit) {
    Assignment chosen(job.survey.gaps.size(), -1);
    while (true) {
        visit(chosen);
        std::size_t i = 0;
        while (i < chosen.size() && chosen[i] + 1 == static_cast<int>(job.options[i].options.size())) chosen[i++] = -1;
        if (i == chosen.size()) return;
        ++chosen[i];
    }
}

Assignment assignment_of(const RandomJob& job, const ClosingProblem& problem, const std::vector<Pick>& picks) {
    Assignment chosen(job.survey.gaps.size(), -1);
    for (const Pick& pick : picks) chosen[problem.doorways[pick.doorway].gap.value] = static_cast<int>(problem[pick].option);
    return chosen;
}

void expect_sound_proof(const ClosingProblem& problem, const Closings& closings) {
    Money sum;
    for (const ProofRoute& route : closings.proof.routes) sum = sum + route.amount;
    EXPECT_EQ(sum, closings.proof.lower_bound);
    EXPECT_LE(closings.proof.lower_bound, closings.cost);
    if (closings.proof.kind == Proof::Kind::flow) {
        EXPECT_EQ(closings.proof.lower_bound, closings.cost);
    }
    // What is paid for a choice is at least what flows through its gap for all whom it stops: weak duality.
    for (const Doorway& doorway : problem.doorways) {
        for (const Choice& choice : doorway.choices) {
            std::int64_t load = 0;
            for (const ProofRoute& route : closings.proof.routes) {
                const bool through = std::find(route.gaps.begin(), route.gaps.end(), doorway.gap) != route.gaps.end();
                if (through && ((choice.stops >> route.pest) & 1) != 0) load += route.amount.cents;
            }
            EXPECT_LE(load, choice.cost.cents);
        }
    }
}

// Brute force over all treatments of all gaps.
TEST(CheapestClosing, NothingIsCheaperByBruteForce) {
    int flows = 0, bounds = 0, impossible = 0;
    for (std::uint64_t seed = 1; seed <= 900; ++seed) {
        const RandomJob job = test::random_job({}, seed);
        const ClosingProblem problem = make_closing_problem(job.survey, job.pests, job.options, Sizing::with_plus_minus);
        const Closings closings = cheapest_closing(problem);
        std::optional<Money> least;
        for_each_assignment(job, [&](const Assignment& chosen) {
            const Money price = price_of(job, chosen);
            if ((!least || price < *least) && !widest_open(job, chosen)) least = price;
        });
        ASSERT_EQ(closings.possible, least.has_value()) << seed;
        if (!least) {
            ++impossible;
            EXPECT_FALSE(closings.open_path.empty());
            continue;
        }
        ASSERT_EQ(closings.cost, *least) << seed;
        EXPECT_EQ(problem.cost_of(closings.picks), closings.cost);
        EXPECT_FALSE(widest_open(job, assignment_of(job, problem, closings.picks))) << seed;
        EXPECT_EQ(closings.proof.solver_gap, 0);
        expect_sound_proof(problem, closings);
        if (!problem.pests.empty()) ++(closings.proof.kind == Proof::Kind::flow ? flows : bounds);
    }
    EXPECT_GT(flows, 100);
    EXPECT_GT(bounds, 20);
    EXPECT_GT(impossible, 20);
}

// Where there is one full closing for each gap, every set of animals that nest is a plain cut, and the program agrees with it.
TEST(CheapestClosing, ProgramEqualsTheCut) {
    int compared = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        const RandomJob job =
            test::random_job({.spaces = 12, .gaps = 40, .pests = 1, .never_share = 0.05, .full_only = true}, 5000 + seed);
        const ClosingProblem problem = make_closing_problem(job.survey, job.pests, job.options, Sizing::with_plus_minus);
        const Closings closings = cheapest_closing(problem);
        if (problem.roles.size() == 1) {
            EXPECT_EQ(closings.proof.kind, Proof::Kind::flow);
        }
        const ProgramAnswer answer = cheapest_by_program(problem);
        ASSERT_EQ(answer.found, closings.possible ? ProgramAnswer::Found::plan : ProgramAnswer::Found::none_exists) << seed;
        if (!closings.possible) continue;
        ++compared;
        EXPECT_EQ(problem.cost_of(answer.picks), closings.cost) << seed;
    }
    EXPECT_GT(compared, 100);
}

// Too many doorways for the program: the answer is still a plan, and says how far off it may be.
TEST(CheapestClosing, WithoutTheProgramItIsStillAPlan) {
    int inexact = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const RandomJob job = test::random_job({.spaces = 10, .gaps = 30, .never_share = 0}, 9000 + seed);
        const ClosingProblem problem = make_closing_problem(job.survey, job.pests, job.options, Sizing::with_plus_minus);
        const Closings exact = cheapest_closing(problem);
        const Closings quick = cheapest_closing(problem, 0);
        if (!quick.possible) continue;  // it looks at treatments that stop all who get through a gap, or one animal after another
        ASSERT_TRUE(exact.possible);
        EXPECT_EQ(still_open_to(problem, quick.picks), 0U);
        EXPECT_GE(quick.cost, exact.cost);
        EXPECT_LE(static_cast<double>(quick.cost.cents) * (1 - quick.proof.solver_gap),
                  static_cast<double>(exact.cost.cents) + 1e-6);
        inexact += quick.cost > exact.cost ? 1 : 0;
        expect_sound_proof(problem, quick);
    }
    EXPECT_GT(inexact, 2);
}

// A smaller animal never costs less to keep out when every closing stops all.
TEST(CheapestClosing, SmallerAnimalsNeverCostLess) {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        const RandomJob job =
            test::random_job({.spaces = 10, .gaps = 30, .pests = 1, .never_share = 0, .full_only = true}, 700 + seed);
        Money last;
        for (int size = 14; size >= 1; --size) {
            Pest pest = job.pests[0];
            pest.size = {1e-3 * size, 1.5e-3 * size};
            const std::vector<Pest> one{pest};
            const ClosingProblem problem = make_closing_problem(job.survey, one, job.options, Sizing::with_plus_minus);
            const Money cost = cheapest_closing(problem).cost;
            EXPECT_GE(cost, last) << seed << ' ' << size;
            last = cost;
        }
    }
}

// Brute force over all pairs of what is bought now; the rest is the cheapest completion.
TEST(BestWithinBudget, LeavesTheSmallestPinchThenTheLeastToPay) {
    int partial = 0;
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        const RandomJob job =
            test::random_job({.spaces = 5, .gaps = 7, .pests = 2, .never_share = 0, .full_only = true}, 31 + seed);
        const ClosingProblem problem = make_closing_problem(job.survey, job.pests, job.options, Sizing::with_plus_minus);
        const Closings all = cheapest_closing(problem);
        ASSERT_TRUE(all.possible);
        const Money budget{all.cost.cents * static_cast<std::int64_t>(seed % 5) / 4};
        double least_width = 1;
        Money least_later, least_now;
        for_each_assignment(job, [&](const Assignment& now) {
            if (price_of(job, now) > budget) return;
            const double width = widest_open(job, now).value_or(0);
            if (width > least_width) return;
            Money later{1'000'000};
            for_each_assignment(job, [&](const Assignment& then) {
                Assignment both = now;
                for (std::size_t i = 0; i < both.size(); ++i) {
                    if (then[i] >= 0 && now[i] >= 0) return;
                    both[i] = std::max(now[i], then[i]);
                }
                if (price_of(job, then) < later && !widest_open(job, both)) later = price_of(job, then);
            });
            const Money cost = price_of(job, now);
            if (width < least_width || later < least_later || (later == least_later && cost < least_now)) {
                least_width = width;
                least_later = later;
                least_now = cost;
            }
        });
        const std::optional<BudgetAnswer> answer = best_within_budget(problem, least_width, budget);
        ASSERT_TRUE(answer.has_value()) << seed;
        EXPECT_EQ(problem.cost_of(answer->later), least_later) << seed;
        EXPECT_EQ(problem.cost_of(answer->now), least_now) << seed;
        EXPECT_EQ(widest_open(job, assignment_of(job, problem, answer->now)).value_or(0), least_width) << seed;
        partial += least_width > 0 ? 1 : 0;
    }
    EXPECT_GT(partial, 30);
}

}  // namespace
}  // namespace seamward
