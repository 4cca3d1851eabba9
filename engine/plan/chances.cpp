// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/chances.h"

#include <algorithm>

#include "catalog/passage.h"
#include "network/network.h"

namespace seamward {

namespace {

/// The share of the widths from `shape` less `spread` to `shape` and `spread` that let the animal through.
double share_that_passes(const Shape& shape, double spread, const PassageSize& pest) {
    if (!passes(pest, widened(shape, spread))) return 0;
    const double least = std::max(-spread, -clear_width(shape));
    if (spread <= 0 || passes(pest, widened(shape, least))) return 1;
    // What gets through a width gets through a larger one.
    double too_little = least;
    double enough = spread;
    for (int halving = 0; halving < 60; ++halving) {
        const double middle = (too_little + enough) / 2;
        (passes(pest, widened(shape, middle)) ? enough : too_little) = middle;
    }
    return (spread - enough) / (spread - least);
}

}  // namespace

double chance_to_pass(const Gap& gap, const PassageSize& pest) {
    const double chance = share_that_passes(gap.shape, gap.evidence.plus_minus, pest);
    return gap.covered ? chance * share_that_passes(gap.covered->shape, gap.covered->plus_minus, pest) : chance;
}

std::optional<std::vector<PestChance>> open_chances(const Survey& survey, std::span<const Pest> pests, std::size_t most) {
    const std::vector<Roles> roles = one_way_roles(survey);
    if (roles.size() != 1) return std::nullopt;
    std::vector<std::uint32_t> from, to;
    for (const SpaceIndex space : roles.front().start_spaces()) from.push_back(space.value);
    for (const SpaceIndex space : roles.front().end_spaces()) to.push_back(space.value);
    const auto nodes = static_cast<std::uint32_t>(survey.spaces.size());
    std::vector<PestChance> chances;
    for (std::size_t i = 0; i < pests.size(); ++i) {
        std::vector<ChanceEdge> edges;
        std::vector<GapIndex> gaps;
        for (std::uint32_t gap = 0; gap < survey.gaps.size(); ++gap) {
            const Gap& of = survey.gaps[gap];
            const double passing = chance_to_pass(of, pests[i].size);
            if (passing <= 0) continue;
            edges.push_back({of.between[0].value, of.between[1].value, passing});
            gaps.push_back({gap});
        }
        PestChance chance{i, {}, {}};
        const Importance all = importance(nodes, edges, from, to);
        chance.open = all.now;
        for (std::size_t e = 0; e < edges.size(); ++e) {
            const double change = 2 * edges[e].open * (1 - edges[e].open) * all.birnbaum[e];
            if (change > 0) chance.measure.push_back({gaps[e], edges[e].open, all.birnbaum[e], change});
        }
        std::stable_sort(chance.measure.begin(), chance.measure.end(),
                         [](const WorthMeasuring& a, const WorthMeasuring& b) { return a.change > b.change; });
        if (chance.measure.size() > most) chance.measure.resize(most);
        chances.push_back(std::move(chance));
    }
    return chances;
}

}  // namespace seamward
