// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/closing_program.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "plan/integer_program.h"

namespace seamward {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// Columns that say which choices are made: one for each choice of each doorway.
using PickColumns = std::vector<std::vector<std::size_t>>;

/// Builds programs over choices: which are made, and that they cut off animals.
class ProgramMaker {
public:
    explicit ProgramMaker(const ClosingProblem& problem) : problem_(problem) {}

    /// Columns for choices to be made, at most one a doorway.
    PickColumns add_picks(double price_of_a_cent) {
        PickColumns columns;
        for (const Doorway& doorway : problem_.doorways) {
            columns.emplace_back();
            IntegerProgram::Row one{{}, -infinite, 1};
            for (const Choice& choice : doorway.choices) {
                columns.back().push_back(program.add({static_cast<double>(choice.cost.cents) * price_of_a_cent, 0, 1, true}));
                one.terms.emplace_back(columns.back().back(), 1.0);
            }
            if (one.terms.size() > 1) program.rows.push_back(std::move(one));
        }
        return columns;
    }

    /// Makes the choices of all of `picks` together cut off everybody who gets through doorways wider than `width`.
    void cut_off(const std::vector<const PickColumns*>& picks, double width) {
        for (std::size_t pest = 0; pest < problem_.pests.size(); ++pest) {
            for (const Roles& roles : problem_.roles) cut_off(picks, width, PestSet{1} << pest, roles);
        }
    }

    /// The price of all of `picks` as a row that is still without limits.
    [[nodiscard]] IntegerProgram::Row price_row(const PickColumns& picks, double most) const {
        IntegerProgram::Row row{{}, -infinite, most};
        for (std::size_t i = 0; i < picks.size(); ++i) {
            for (std::size_t c = 0; c < picks[i].size(); ++c) {
                const std::int64_t cents = problem_.doorways[i].choices[c].cost.cents;
                if (cents > 0) row.terms.emplace_back(picks[i][c], static_cast<double>(cents));
            }
        }
        return row;
    }

    [[nodiscard]] std::vector<Pick> chosen(const PickColumns& picks, const IntegerAnswer& answer) const {
        std::vector<Pick> result;
        for (std::uint32_t i = 0; i < picks.size(); ++i) {
            for (std::uint32_t c = 0; c < picks[i].size(); ++c) {
                if (answer.values[picks[i][c]] > 0.5) result.push_back({i, c});
            }
        }
        return result;
    }

    IntegerProgram program;

private:
    void cut_off(const std::vector<const PickColumns*>& picks, double width, PestSet pest, const Roles& roles) {
        std::vector<std::size_t> potential(problem_.space_count, none);
        for (std::uint32_t i = 0; i < problem_.doorways.size(); ++i) {
            const Doorway& doorway = problem_.doorways[i];
            if (doorway.width <= width || (doorway.open_to & pest) == 0) continue;
            const std::size_t a = potential_of(doorway.a, roles, potential);
            const std::size_t b = potential_of(doorway.b, roles, potential);
            if (a == b || a == none || b == none) continue;
            for (const auto& [low, high] : {std::pair(a, b), std::pair(b, a)}) {
                // potential[high] - potential[low] - picks <= 0
                IntegerProgram::Row row{{}, -infinite, 0};
                row.terms.emplace_back(high, 1.0);
                row.terms.emplace_back(low, -1.0);
                for (const PickColumns* columns : picks) {
                    for (std::size_t c = 0; c < doorway.choices.size(); ++c) {
                        if ((doorway.choices[c].stops_above(width, doorway.open_to) & pest) != 0)
                            row.terms.emplace_back((*columns)[i][c], -1.0);
                    }
                }
                program.rows.push_back(std::move(row));
            }
        }
    }

    std::size_t potential_of(SpaceIndex space, const Roles& roles, std::vector<std::size_t>& potential) {
        if (roles.starts(space)) return fixed(outside_, 0);
        if (roles.ends(space)) return fixed(inside_, 1);
        if (!roles.passable(space)) return none;
        std::size_t& column = potential[space.value];
        if (column == none) column = program.add({0, 0, 1, false});
        return column;
    }

    std::size_t fixed(std::size_t& column, double value) {
        if (column == none) column = program.add({0, value, value, false});
        return column;
    }

    static constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
    const ClosingProblem& problem_;
    std::size_t outside_ = none, inside_ = none;
};

/// Whether picks that were rounded from a solver's numbers really stop everybody.
bool stops_all(const ClosingProblem& problem, std::vector<Pick> picks, const std::vector<Pick>& more) {
    picks.insert(picks.end(), more.begin(), more.end());
    return still_open_to(problem, picks) == 0;
}

}  // namespace

ProgramAnswer cheapest_by_program(const ClosingProblem& problem) {
    ProgramMaker maker(problem);
    const PickColumns picks = maker.add_picks(1);
    maker.cut_off({&picks}, 0);
    const IntegerAnswer answer = solve(maker.program);
    ProgramAnswer result;
    result.found =
        answer.found == IntegerAnswer::Found::none_exists ? ProgramAnswer::Found::none_exists : ProgramAnswer::Found::none_found;
    if (answer.found != IntegerAnswer::Found::solution) return result;
    result.picks = maker.chosen(picks, answer);
    result.proven = answer.proven;
    result.bound = answer.bound;
    if (stops_all(problem, result.picks, {})) result.found = ProgramAnswer::Found::plan;
    return result;
}

namespace {

/// Solves anew, without sets that cost more than the budget, until what it finds is affordable: the solver takes a sum for kept
/// that is over by a hair, cents do not. Whoever holds a set that is too dear holds one more than all but one of it.
IntegerAnswer solve_affordably(ProgramMaker& maker, const ClosingProblem& problem, const PickColumns& bought, Money most) {
    constexpr int most_rounds = 2000;
    IntegerAnswer answer;
    for (int round = 0; round < most_rounds; ++round) {
        answer = solve(maker.program);
        if (answer.found != IntegerAnswer::Found::solution) return answer;
        const std::vector<Pick> picks = maker.chosen(bought, answer);
        if (problem.cost_of(picks) <= most) return answer;
        IntegerProgram::Row too_dear{{}, -infinite, -1};
        for (const Pick& pick : picks) {
            if (problem[pick].cost.cents == 0) continue;
            too_dear.terms.emplace_back(bought[pick.doorway][pick.choice], 1.0);
            too_dear.most += 1;
        }
        maker.program.rows.push_back(std::move(too_dear));
    }
    answer.found = IntegerAnswer::Found::none_within_limits;
    return answer;
}

}  // namespace

std::optional<BudgetAnswer> best_within_budget(const ClosingProblem& problem, double width, Money budget) {
    ProgramMaker maker(problem);
    const PickColumns now = maker.add_picks(0);
    const PickColumns later = maker.add_picks(1);
    maker.program.rows.push_back(maker.price_row(now, static_cast<double>(budget.cents)));
    maker.cut_off({&now}, width);
    maker.cut_off({&now, &later}, 0);
    const IntegerAnswer least_later = solve_affordably(maker, problem, now, budget);
    if (least_later.found != IntegerAnswer::Found::solution) return std::nullopt;
    const Money rest = problem.cost_of(maker.chosen(later, least_later));
    // Of all that leave as little to pay, the cheapest.
    maker.program.rows.push_back(maker.price_row(later, static_cast<double>(rest.cents)));
    for (IntegerProgram::Column& column : maker.program.columns) column.cost = 0;
    for (std::size_t i = 0; i < now.size(); ++i) {
        for (std::size_t c = 0; c < now[i].size(); ++c)
            maker.program.columns[now[i][c]].cost = static_cast<double>(problem.doorways[i].choices[c].cost.cents);
    }
    const IntegerAnswer least_now = solve_affordably(maker, problem, later, rest);
    const bool both =
        least_now.found == IntegerAnswer::Found::solution && problem.cost_of(maker.chosen(now, least_now)) <= budget;
    const IntegerAnswer& best = both ? least_now : least_later;
    BudgetAnswer answer{maker.chosen(now, best), maker.chosen(later, best), both && least_later.proven && least_now.proven};
    if (!stops_all(only_wider_than(problem, width), answer.now, {}) || !stops_all(problem, answer.now, answer.later))
        return std::nullopt;
    return answer;
}

}  // namespace seamward
