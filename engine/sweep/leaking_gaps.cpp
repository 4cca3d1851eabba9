// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/leaking_gaps.h"

#include "catalog/passage.h"
#include "network/network.h"
#include "network/on_ways.h"

namespace seamward {

namespace {

void mark(const Network& network, const std::vector<Roles>& roles, std::vector<bool>& leaks) {
    for (const Roles& ends : roles) {
        const std::vector<bool> on_way = links_on_ways(network, ends);
        for (std::size_t i = 0; i < on_way.size(); ++i) {
            if (on_way[i]) leaks[network.links()[i].gap.value] = true;
        }
    }
}

}  // namespace

std::vector<GapIndex> leaking_gaps(const Survey& survey, const std::vector<Pest>& animals) {
    const std::vector<Roles> roles = one_way_roles(survey);
    std::vector<bool> leaks(survey.gaps.size(), false);
    for (const Pest& animal : animals) {
        const auto passes = [&](const Gap& gap) { return lets_through(gap, animal.size, Sizing::with_plus_minus); };
        mark(make_network(survey, passes), roles, leaks);
    }
    if (animals.empty()) mark(make_network(survey, [](const Gap& gap) { return !is_shut(gap.shape); }), roles, leaks);
    std::vector<GapIndex> gaps;
    for (std::uint32_t i = 0; i < leaks.size(); ++i) {
        if (leaks[i]) gaps.push_back(GapIndex{i});
    }
    return gaps;
}

}  // namespace seamward
