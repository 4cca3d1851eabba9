// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/ladder_by_programs.h"

#include <algorithm>
#include <functional>
#include <set>

#include "plan/cheapest_closing.h"

namespace seamward {

CutLadder ladder_by_programs(std::span<const Roles> roles, std::size_t space_count, std::span<const PricedLink> links) {
    // One animal that gets through everything; a price is a choice that leaves nothing.
    ClosingProblem all{space_count, {roles.begin(), roles.end()}, {0}, {}};
    for (std::uint32_t i = 0; i < links.size(); ++i) {
        Doorway doorway{{i}, links[i].a, links[i].b, links[i].width, 1, {}};
        if (links[i].price) doorway.choices.push_back({0, *links[i].price, 0, 1, 0});
        all.doorways.push_back(std::move(doorway));
    }
    std::set<double, std::greater<>> widths;
    for (const PricedLink& link : links) widths.insert(link.width);
    CutLadder ladder;
    // Each width takes a program: of many, that many are looked at, evenly, the widest and the narrowest among them.
    constexpr std::size_t most_programs = 48;
    std::vector<double> looked_at(widths.begin(), widths.end());
    if (looked_at.size() > most_programs) {
        for (std::size_t i = 0; i < most_programs; ++i)
            looked_at[i] = looked_at[i * (looked_at.size() - 1) / (most_programs - 1)];
        looked_at.resize(most_programs);
        ladder.left_out = widths.size() - most_programs;
    }
    for (const double width : looked_at) {
        ClosingProblem wide = all;
        std::erase_if(wide.doorways, [&](const Doorway& doorway) { return doorway.width < width; });
        const Closings closings = cheapest_closing(wide);
        if (!closings.possible) {
            for (const GapIndex link : closings.open_path) ladder.stopped_by.push_back(link.value);
            break;
        }
        if (closings.cost.cents == 0 && ladder.rungs.empty()) continue;
        if (!ladder.rungs.empty() && ladder.rungs.back().price == closings.cost) ladder.rungs.pop_back();
        Rung rung{width, closings.cost, {}};
        for (const Pick& pick : closings.picks) rung.links.push_back(wide.doorways[pick.doorway].gap.value);
        std::sort(rung.links.begin(), rung.links.end());
        ladder.rungs.push_back(std::move(rung));
    }
    return ladder;
}

}  // namespace seamward
