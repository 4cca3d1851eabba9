// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cheapest_closing.h"

#include <algorithm>
#include <bit>
#include <numeric>
#include <stdexcept>

#include "network/cut.h"
#include "plan/closing_program.h"

namespace seamward {

namespace {

/// Prices that a flow of one animal may still use up, for each choice of each doorway.
using LeftOver = std::vector<std::vector<std::int64_t>>;

LeftOver full_prices(const ClosingProblem& problem) {
    LeftOver left;
    for (const Doorway& doorway : problem.doorways) {
        left.emplace_back();
        for (const Choice& choice : doorway.choices) left.back().push_back(choice.cost.cents);
    }
    return left;
}

/// Paths of one kind that one animal must not have.
struct Demand {
    std::size_t pest = 0;   ///< position in ClosingProblem::pests
    std::size_t roles = 0;  ///< position in ClosingProblem::roles
};

std::vector<Demand> demands_of(const ClosingProblem& problem) {
    std::vector<Demand> demands;
    for (std::size_t pest = 0; pest < problem.pests.size(); ++pest) {
        for (std::size_t roles = 0; roles < problem.roles.size(); ++roles) demands.push_back({pest, roles});
    }
    return demands;
}

/// The cut for one demand, where what is left of each price counts.
class SingleCut {
public:
    SingleCut(const ClosingProblem& problem, Demand demand, const LeftOver& left) : problem_(problem), pest_(demand.pest) {
        const std::size_t pest = demand.pest;
        const PestSet bit = PestSet{1} << pest;
        for (std::uint32_t i = 0; i < problem.doorways.size(); ++i) {
            const Doorway& doorway = problem.doorways[i];
            if ((doorway.open_to & bit) == 0) continue;
            PricedLink link{doorway.a, doorway.b, doorway.gap, doorway.width, std::nullopt};
            for (std::size_t c = 0; c < doorway.choices.size(); ++c) {
                if ((doorway.choices[c].stops & bit) == 0) continue;
                const Money price{left[i][c]};
                if (!link.price || price < *link.price) link.price = price;
            }
            links_.push_back(link);
            doorways_.push_back(i);
        }
        cut_ = cheapest_cut(problem.roles[demand.roles], problem.space_count, links_);
    }

    [[nodiscard]] const Cut& cut() const { return cut_; }
    /// At full prices: the choices that the cut stands for.
    [[nodiscard]] std::vector<Pick> picks() const {
        std::vector<Pick> picks;
        for (const std::uint32_t link : cut_.links) {
            const Doorway& doorway = problem_.doorways[doorways_[link]];
            const Choice* choice = doorway.cheapest_against(PestSet{1} << pest_);
            picks.push_back({doorways_[link], static_cast<std::uint32_t>(choice - doorway.choices.data())});
        }
        return picks;
    }
    [[nodiscard]] std::vector<ProofRoute> routes() const {
        std::vector<ProofRoute> routes;
        for (const CutRoute& route : cut_.routes) routes.push_back({gaps(route.links), route.amount, pest_});
        return routes;
    }
    [[nodiscard]] std::vector<GapIndex> gaps(const LinkPath& path) const {
        std::vector<GapIndex> gaps;
        for (const std::uint32_t link : path) gaps.push_back(links_[link].gap);
        return gaps;
    }
    /// Takes what flows off the prices of all choices that stop this animal.
    void use_up(LeftOver& left) const {
        for (const CutRoute& route : cut_.routes) {
            for (const std::uint32_t link : route.links) {
                const std::uint32_t i = doorways_[link];
                const Doorway& doorway = problem_.doorways[i];
                for (std::size_t c = 0; c < doorway.choices.size(); ++c) {
                    if (((doorway.choices[c].stops >> pest_) & 1) != 0) left[i][c] -= route.amount.cents;
                }
            }
        }
    }

private:
    const ClosingProblem& problem_;
    std::size_t pest_;
    std::vector<PricedLink> links_;
    std::vector<std::uint32_t> doorways_;
    Cut cut_;
};

/// Flows for all demands, one after another, each along prices that the ones before have left: by weak duality of the integer
/// program's relaxation their sum is a lower bound of any plan's cost. The best of a few orders.
Proof lower_bound(const ClosingProblem& problem, std::span<const Demand> demands, int orders) {
    std::vector<std::size_t> order(demands.size());
    std::iota(order.begin(), order.end(), 0U);
    Proof best{Proof::Kind::bound, {-1}, {}, 0};
    for (int tried = 0; tried < orders; ++tried) {
        LeftOver left = full_prices(problem);
        Proof proof{Proof::Kind::bound, {}, {}, 0};
        for (const std::size_t demand : order) {
            const SingleCut single(problem, demands[demand], left);
            single.use_up(left);
            proof.lower_bound = proof.lower_bound + single.cut().price;
            for (ProofRoute& route : single.routes()) proof.routes.push_back(std::move(route));
        }
        if (proof.lower_bound > best.lower_bound) best = std::move(proof);
        if (!std::next_permutation(order.begin(), order.end())) break;
    }
    return best;
}

/// Leaves out picks without which everybody is stopped as well, dearest first.
void drop_needless(const ClosingProblem& problem, std::vector<Pick>& picks) {
    std::vector<Pick> dearest = picks;
    std::stable_sort(dearest.begin(), dearest.end(),
                     [&](const Pick& a, const Pick& b) { return problem[a].cost > problem[b].cost; });
    for (const Pick& pick : dearest) {
        std::vector<Pick> without;
        std::copy_if(picks.begin(), picks.end(), std::back_inserter(without), [&](const Pick& p) { return p != pick; });
        if (still_open_to(problem, without) == 0) picks = std::move(without);
    }
}

/// The cuts for one demand after another, what is bought already being free. Not always the cheapest.
std::vector<Pick> one_after_another(const ClosingProblem& problem, std::span<const Demand> demands) {
    std::vector<Pick> picks;
    for (const Demand& demand : demands) {
        ClosingProblem rest = problem;
        for (const Pick& pick : picks) rest.doorways[pick.doorway].open_to &= ~problem[pick].stops;
        const SingleCut single(rest, demand, full_prices(rest));
        for (const Pick& pick : single.picks()) {
            // A gap that has a treatment already gets one that stops all whom either was bought for.
            const auto same = std::find_if(picks.begin(), picks.end(), [&](const Pick& p) { return p.doorway == pick.doorway; });
            if (same == picks.end()) {
                picks.push_back(pick);
                continue;
            }
            const Doorway& doorway = problem.doorways[pick.doorway];
            const PestSet wanted = doorway.choices[same->choice].stops | (PestSet{1} << demand.pest);
            const Choice* both = doorway.cheapest_against(wanted);
            if (both == nullptr) both = &doorway.choices[pick.choice];
            same->choice = static_cast<std::uint32_t>(both - doorway.choices.data());
        }
    }
    std::sort(picks.begin(), picks.end());
    return picks;
}

/// Without choices that leave a gap open to some.
ClosingProblem only_joint_choices(const ClosingProblem& problem) {
    ClosingProblem strict = problem;
    for (Doorway& doorway : strict.doorways) {
        std::erase_if(doorway.choices, [&](const Choice& choice) { return (doorway.open_to & ~choice.stops) != 0; });
    }
    return strict;
}

/// The same picks by the choices of a problem that has more of them.
std::vector<Pick> picks_of(const ClosingProblem& problem, const ClosingProblem& strict, std::vector<Pick> picks) {
    for (Pick& pick : picks) {
        const std::vector<Choice>& choices = problem.doorways[pick.doorway].choices;
        const auto same = [&](const Choice& choice) { return choice.option == strict[pick].option; };
        pick.choice = static_cast<std::uint32_t>(std::find_if(choices.begin(), choices.end(), same) - choices.begin());
    }
    return picks;
}

/// A way in along gaps that no choice closes against all who get through; there is one where no plan is possible.
void find_open_path(const ClosingProblem& problem, Closings& closings) {
    const ClosingProblem hard = only_joint_choices(problem);
    const LeftOver prices = full_prices(hard);
    for (const Demand& demand : demands_of(hard)) {
        const SingleCut single(hard, demand, prices);
        closings.open_path = single.gaps(single.cut().open_path);
        closings.open_pest = demand.pest;
        if (!closings.open_path.empty()) break;
    }
    closings.possible = false;
}

}  // namespace

Closings cheapest_closing(const ClosingProblem& problem, std::size_t most_doorways) {
    Closings closings;
    const LeftOver prices = full_prices(problem);
    std::size_t doorways = 0;
    for (const Doorway& doorway : problem.doorways) doorways += static_cast<std::size_t>(std::popcount(doorway.open_to));
    std::vector<std::pair<Money, Demand>> dearest;
    for (const Demand& demand : demands_of(problem)) {
        const SingleCut single(problem, demand, prices);
        if (!single.cut().possible) {
            closings.possible = false;
            closings.open_path = single.gaps(single.cut().open_path);
            closings.open_pest = demand.pest;
            return closings;
        }
        dearest.emplace_back(single.cut().price, demand);
        std::vector<Pick> picks = single.picks();
        if (still_open_to(problem, picks) != 0) continue;
        closings.picks = std::move(picks);
        closings.cost = single.cut().price;
        closings.proof = {Proof::Kind::flow, single.cut().price, single.routes(), 0};
        return closings;
    }
    if (problem.pests.empty()) return closings;
    std::stable_sort(dearest.begin(), dearest.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<Demand> order;
    for (const auto& [price, demand] : dearest) order.push_back(demand);

    ProgramAnswer answer;
    answer.found = ProgramAnswer::Found::none_found;
    if (doorways <= most_doorways) answer = cheapest_by_program(problem);
    if (answer.found == ProgramAnswer::Found::none_exists) {
        find_open_path(problem, closings);
        return closings;
    }
    const bool by_program = answer.found == ProgramAnswer::Found::plan;
    closings.picks = by_program ? answer.picks : one_after_another(problem, order);
    if (!by_program && still_open_to(problem, closings.picks) != 0) {
        // Treatments for different animals got in each other's way: only such as stop all who get through a gap.
        const ClosingProblem strict = only_joint_choices(problem);
        if (closings.picks = one_after_another(strict, order); still_open_to(strict, closings.picks) != 0) {
            find_open_path(problem, closings);
            return closings;
        }
        closings.picks = picks_of(problem, strict, closings.picks);
    }
    closings.proof = lower_bound(problem, order, 24);
    const double bound = std::max(static_cast<double>(closings.proof.lower_bound.cents), by_program ? answer.bound : 0);
    drop_needless(problem, closings.picks);
    closings.cost = problem.cost_of(closings.picks);
    const auto cost = static_cast<double>(closings.cost.cents);
    if (cost > 0 && !(by_program && answer.proven)) closings.proof.solver_gap = std::max(0.0, (cost - bound) / cost);
    if (closings.proof.lower_bound == closings.cost) {
        closings.proof.solver_gap = 0;
        // One animal: its routes add up to the cost and overload nothing, whatever program the closings come from.
        if (problem.pests.size() == 1) closings.proof.kind = Proof::Kind::flow;
    }
    return closings;
}

}  // namespace seamward
