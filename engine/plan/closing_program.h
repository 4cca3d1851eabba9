// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "plan/closing_problem.h"

namespace seamward {

/// What the integer program found.
struct ProgramAnswer {
    /// `none_found`: not within the solver's limits.
    enum class Found : std::uint8_t { plan, none_exists, none_found };

    Found found = Found::plan;
    std::vector<Pick> picks;  ///< rising
    bool proven = false;      ///< that nothing costs less
    double bound = 0;         ///< cents; nothing costs less
};

/// The cheapest picks, at most one a doorway, that stop everybody. For each animal a potential on the spaces, 0 where paths start
/// and 1 where they end, that may rise along a doorway only as far as what was picked there stops that animal: a cut for each.
[[nodiscard]] ProgramAnswer cheapest_by_program(const ClosingProblem& problem);

/// What to buy within a budget.
struct BudgetAnswer {
    std::vector<Pick> now;    ///< rising; these are bought
    std::vector<Pick> later;  ///< the cheapest rest that stops everybody
    bool proven = false;      ///< that no other set within the budget leaves less to pay, or spends less for the same
};

/// Of all sets that cost no more than `budget` and leave nobody a way in wider than `width` (meters): the one after which the
/// least is left to pay for `problem`, then the one that costs least. Nothing: there is none.
[[nodiscard]] std::optional<BudgetAnswer> best_within_budget(const ClosingProblem& problem, double width, Money budget);

}  // namespace seamward
