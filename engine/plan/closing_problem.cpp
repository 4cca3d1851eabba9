// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/closing_problem.h"

#include <algorithm>
#include <bit>
#include <map>
#include <stdexcept>
#include <tuple>

namespace seamward {

namespace {

/// Animals by what decides whether they get through; the more an animal gets through, the earlier it stands.
std::vector<std::size_t> different_ones(std::span<const Pest> pests) {
    using Kind = std::tuple<double, double, bool>;  // slit, hole, does not gnaw
    std::map<Kind, std::size_t> first;
    for (std::size_t i = 0; i < pests.size(); ++i)
        first.emplace(Kind{pests[i].size.slit, pests[i].size.hole, !pests[i].gnaws}, i);
    // In rising order of slit, an animal is outdone by an earlier one that needs no larger hole and gnaws if it does.
    std::vector<std::size_t> kept;
    double least_hole[2] = {std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
    for (const auto& [kind, pest] : first) {
        const auto& [slit, hole, tame] = kind;
        const double gnawing = least_hole[0];
        const double any = std::min(least_hole[0], least_hole[1]);
        if (hole >= (tame ? any : gnawing)) continue;
        kept.push_back(pest);
        least_hole[tame ? 1 : 0] = hole;
    }
    return kept;
}

/// What each of `pests` can do at one gap.
Doorway make_doorway(const Survey& survey, GapIndex index, std::span<const Pest> against, std::span<const std::size_t> pests,
                     const GapOptions& options, Sizing sizing, Choices choices) {
    const Gap& gap = survey[index];
    Doorway doorway{index, gap.between[0], gap.between[1], counted_width(gap, sizing), 0, {}};
    for (std::size_t i = 0; i < pests.size(); ++i) {
        if (lets_through(gap, against[pests[i]].size, sizing)) doorway.open_to |= PestSet{1} << i;
    }
    if (doorway.open_to == 0) return doorway;
    for (std::uint32_t o = 0; o < options.options.size(); ++o) {
        const Option& option = options.options[o];
        Gap treated = gap;
        close_gap(treated, option.opening);
        Choice choice{o, option.cost, counted_width(treated, sizing), 0, 0};
        for (std::size_t i = 0; i < pests.size(); ++i) {
            const Pest& pest = against[pests[i]];
            const PestSet bit = PestSet{1} << i;
            if ((doorway.open_to & bit) == 0) continue;
            if (option.gnawed && pest.gnaws)
                choice.gnaw |= bit;
            else if (!lets_through(treated, pest.size, sizing))
                choice.stops |= bit;
        }
        const bool narrows =
            choices == Choices::narrowing_too && choice.leaves < doorway.width && (doorway.open_to & ~choice.gnaw) != 0;
        if (choice.stops != 0 || narrows) doorway.choices.push_back(choice);
    }
    return doorway;
}

/// Leaves out choices for which another one does as much for no more money.
void drop_outdone(std::vector<Choice>& choices) {
    std::stable_sort(choices.begin(), choices.end(), [](const Choice& a, const Choice& b) { return a.cost < b.cost; });
    std::vector<Choice> kept;
    for (std::size_t i = 0; i < choices.size(); ++i) {
        bool outdone = false;
        for (std::size_t j = 0; j < choices.size() && !outdone; ++j) {
            if (j == i || choices[j].cost > choices[i].cost) continue;
            const bool as_good = (choices[i].stops & ~choices[j].stops) == 0 && choices[j].leaves <= choices[i].leaves &&
                                 (choices[j].gnaw & ~choices[i].gnaw) == 0;
            const bool same = choices[j].stops == choices[i].stops && choices[j].leaves == choices[i].leaves &&
                              choices[j].gnaw == choices[i].gnaw && choices[j].cost == choices[i].cost;
            outdone = as_good && (!same || j < i);
        }
        if (!outdone) kept.push_back(choices[i]);
    }
    choices = std::move(kept);
}

/// Whether an animal gets through wherever another does, and is stopped by nothing that does not stop the other too.
bool outdoes(const std::vector<Doorway>& doorways, std::size_t strong, std::size_t weak) {
    const PestSet strong_bit = PestSet{1} << strong;
    const PestSet weak_bit = PestSet{1} << weak;
    return std::all_of(doorways.begin(), doorways.end(), [&](const Doorway& doorway) {
        if ((doorway.open_to & weak_bit) == 0) return true;
        if ((doorway.open_to & strong_bit) == 0) return false;
        return std::all_of(doorway.choices.begin(), doorway.choices.end(), [&](const Choice& choice) {
            return (choice.stops & strong_bit) == 0 || (choice.stops & weak_bit) != 0;
        });
    });
}

PestSet renumbered(PestSet set, std::span<const std::size_t> kept) {
    PestSet result = 0;
    for (std::size_t i = 0; i < kept.size(); ++i) {
        if (((set >> kept[i]) & 1) != 0) result |= PestSet{1} << i;
    }
    return result;
}

/// Leaves out animals that another one stands for.
void drop_outdone_pests(ClosingProblem& problem, Choices choices) {
    std::vector<std::size_t> kept;
    for (std::size_t weak = 0; weak < problem.pests.size(); ++weak) {
        bool outdone = false;
        for (std::size_t strong = 0; strong < problem.pests.size() && !outdone; ++strong) {
            if (strong == weak || !outdoes(problem.doorways, strong, weak)) continue;
            outdone = strong < weak || !outdoes(problem.doorways, weak, strong);
        }
        if (!outdone) kept.push_back(weak);
    }
    std::vector<std::size_t> pests;
    for (const std::size_t pest : kept) pests.push_back(problem.pests[pest]);
    problem.pests = std::move(pests);
    for (Doorway& doorway : problem.doorways) {
        doorway.open_to = renumbered(doorway.open_to, kept);
        for (Choice& choice : doorway.choices) {
            choice.stops = renumbered(choice.stops, kept);
            choice.gnaw = renumbered(choice.gnaw, kept);
        }
        std::erase_if(doorway.choices, [&](const Choice& choice) {
            const bool narrows = choices == Choices::narrowing_too && (doorway.open_to & ~choice.gnaw) != 0;
            return choice.stops == 0 && !narrows;
        });
        drop_outdone(doorway.choices);
    }
    std::erase_if(problem.doorways, [](const Doorway& doorway) { return doorway.open_to == 0; });
}

/// Which doorways are stopped for which animals.
std::vector<PestSet> stopped_by(const ClosingProblem& problem, std::span<const Pick> picks) {
    std::vector<PestSet> stopped(problem.doorways.size(), 0);
    for (const Pick& pick : picks) stopped[pick.doorway] |= problem[pick].stops;
    return stopped;
}

/// Whether any path leads from a start to an end.
bool leads_through(const Network& network, const Roles& roles) {
    std::vector<bool> reached(network.space_count(), false);
    std::vector<SpaceIndex> waiting(roles.start_spaces().begin(), roles.start_spaces().end());
    for (const SpaceIndex start : waiting) reached[start.value] = true;
    for (std::size_t i = 0; i < waiting.size(); ++i) {
        for (const Arc& arc : network.arcs(waiting[i])) {
            if (reached[arc.to.value]) continue;
            if (roles.ends(arc.to)) return true;
            reached[arc.to.value] = true;
            if (roles.passable(arc.to)) waiting.push_back(arc.to);
        }
    }
    return false;
}

}  // namespace

const Choice* Doorway::cheapest_against(PestSet pests) const {
    const Choice* best = nullptr;
    for (const Choice& choice : choices) {
        if ((pests & ~choice.stops) != 0) continue;
        const bool better = best == nullptr || choice.cost < best->cost ||
                            (choice.cost == best->cost && std::popcount(choice.stops) > std::popcount(best->stops));
        if (better) best = &choice;
    }
    return best;
}

Money ClosingProblem::cost_of(std::span<const Pick> picks) const {
    Money sum;
    for (const Pick& pick : picks) sum = sum + (*this)[pick].cost;
    return sum;
}

ClosingProblem make_closing_problem(const Survey& survey, std::span<const Pest> against, std::span<const GapOptions> options,
                                    Sizing sizing, Choices choices) {
    ClosingProblem problem{survey.spaces.size(), one_way_roles(survey), different_ones(against), {}};
    if (problem.pests.size() > ClosingProblem::most_pests)
        throw std::length_error("more than " + std::to_string(ClosingProblem::most_pests) +
                                " animals of different sizes; plan against fewer at a time");
    for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) {
        Doorway doorway = make_doorway(survey, {i}, against, problem.pests, options[i], sizing, choices);
        if (doorway.open_to != 0) problem.doorways.push_back(std::move(doorway));
    }
    drop_outdone_pests(problem, choices);
    return problem;
}

ClosingProblem only_wider_than(const ClosingProblem& problem, double width) {
    ClosingProblem wider = problem;
    for (Doorway& doorway : wider.doorways) {
        if (doorway.width <= width) doorway.open_to = 0;  // it keeps its place, so that picks of both problems are alike
        for (Choice& choice : doorway.choices) choice.stops = choice.stops_above(width, doorway.open_to);
    }
    return wider;
}

PestSet still_open_to(const ClosingProblem& problem, std::span<const Pick> picks) {
    const std::vector<PestSet> stopped = stopped_by(problem, picks);
    PestSet open = 0;
    for (std::size_t pest = 0; pest < problem.pests.size(); ++pest) {
        std::vector<Link> links;
        for (std::size_t i = 0; i < problem.doorways.size(); ++i) {
            const Doorway& doorway = problem.doorways[i];
            if ((((doorway.open_to & ~stopped[i]) >> pest) & 1) != 0)
                links.push_back({doorway.a, doorway.b, doorway.gap, doorway.width});
        }
        const Network network(problem.space_count, std::move(links));
        const auto leads_in = [&](const Roles& roles) { return leads_through(network, roles); };
        if (std::any_of(problem.roles.begin(), problem.roles.end(), leads_in)) open |= PestSet{1} << pest;
    }
    return open;
}

}  // namespace seamward
