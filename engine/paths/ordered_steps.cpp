// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/ordered_steps.h"

#include <algorithm>

namespace seamward {

OrderedSteps::OrderedSteps(const Survey& survey, const Network& network, const Roles& roles, const RemainingWays& ways)
    : survey_(survey), network_(network), roles_(roles), ways_(ways), steps_(network.space_count()) {}

std::span<const Step> OrderedSteps::from(SpaceIndex space) {
    std::unique_ptr<std::vector<Step>>& steps = steps_[space.value];
    if (steps) return *steps;
    steps = std::make_unique<std::vector<Step>>();
    for (const Arc& arc : network_.arcs(space)) {
        if (roles_.ends(arc.to)) steps->push_back({arc.link, arc.to, true});
        if (roles_.passable(arc.to) && ways_.open(arc.to)) steps->push_back({arc.link, arc.to, false});
    }
    std::sort(steps->begin(), steps->end(), [&](const Step& a, const Step& b) {
        const auto by_widths = ways_.tallies().compare(ways_.ahead(a), ways_.ahead(b));
        if (by_widths != 0) return by_widths < 0;
        return survey_[network_.links()[a.link].gap].id < survey_[network_.links()[b.link].gap].id;
    });
    return *steps;
}

}  // namespace seamward
