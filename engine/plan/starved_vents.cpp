// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/starved_vents.h"

#include <algorithm>

#include "materials/ventilation.h"

namespace seamward {

std::vector<StarvingMesh> starving_meshes(const Survey& survey, std::span<const TreatedGap> treated, const VentLimits& limits,
                                          std::vector<Message>& doubts) {
    doubts.clear();
    const auto airs = [&](GapIndex gap) { return survey[gap].duty == Duty::vent || survey[gap].duty == Duty::combustion_air; };
    if (std::none_of(treated.begin(), treated.end(), [&](const TreatedGap& one) { return airs(one.gap); })) return {};
    Survey after = survey;
    for (const TreatedGap& one : treated) close_gap(after.gaps[one.gap.value], one.opening);
    std::vector<StarvingMesh> starving;
    const auto add = [&](const std::vector<VentCheck>& checks, Duty duty) {
        for (const VentCheck& check : checks) {
            if (check.doubtful) doubts.push_back(check.text);
            if (!check.starved) continue;
            for (const TreatedGap& one : treated) {
                const Gap& gap = survey[one.gap];
                const bool there = gap.between[0] == check.space || gap.between[1] == check.space;
                if (gap.duty == duty && one.opening > 0 && there)
                    starving.push_back({one.gap, one.opening, check.text, check.source});
            }
        }
    };
    add(check_ventilation(survey, after, limits.floors), Duty::vent);
    add(check_combustion_air(survey, after, limits.inputs), Duty::combustion_air);
    return starving;
}

}  // namespace seamward
