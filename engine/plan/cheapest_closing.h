// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "plan/closing_problem.h"

namespace seamward {

/// A way in for one animal; closing it takes at least `amount`, whatever is paid for the others.
struct ProofRoute {
    std::vector<GapIndex> gaps;
    Money amount;
    std::size_t pest = 0;  ///< position in ClosingProblem::pests
};

/// Why nothing cheaper will do.
struct Proof {
    /// `flow`: the routes add up to the cost. `bound`: they add up to `lower_bound`, and the solver vouches for the rest.
    enum class Kind : std::uint8_t { flow, bound };

    Kind kind = Kind::flow;
    Money lower_bound;  ///< what the routes add up to
    std::vector<ProofRoute> routes;
    double solver_gap = 0;  ///< share of the cost by which something cheaper may exist as far as the solver knows
};

/// The cheapest set of treatments that leaves nobody a way in.
struct Closings {
    bool possible = true;
    std::vector<Pick> picks;  ///< rising; each is needed
    Money cost;
    Proof proof;
    /// Where there is no such set: a way in of one animal along gaps none of which can be closed against it (or against all that
    /// get through it).
    std::vector<GapIndex> open_path;
    std::size_t open_pest = 0;
};

/// A minimum cut for each animal alone; where the cheapest closing against one of them stops all, its cut is the answer, proven
/// by its flow. Else an integer program with one potential for each space and animal, solved with CBC; its answer is checked
/// again here. Beyond `most_doorways` of all animals together the program is not tried: the cuts of one animal after another are
/// then the answer, and the proof says how far it may be off.
[[nodiscard]] Closings cheapest_closing(const ClosingProblem& problem, std::size_t most_doorways = 20'000);

}  // namespace seamward
