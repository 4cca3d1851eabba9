// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/brute_force.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace seamward::test {

namespace {

bool is_start(const Space& space) { return space.kind == SpaceKind::outdoors || space.source; }
bool is_barrier(const Space& space) { return is_start(space) || space.kind == SpaceKind::living; }

struct Walker {
    const Survey& survey;
    std::span<const SpaceIndex> to;
    const std::function<bool(const Gap&)>& counts;
    std::vector<EntryPath> found = {};

    bool is_end(SpaceIndex space) const {
        if (to.empty()) return survey.spaces[space.value].kind == SpaceKind::living;
        return std::find(to.begin(), to.end(), space) != to.end();
    }

    void walk(EntryPath& path) {
        for (std::uint32_t g = 0; g < survey.gaps.size(); ++g) {
            const Gap& gap = survey.gaps[g];
            const SpaceIndex here = path.spaces.back();
            if (!counts(gap) || (gap.between[0] != here && gap.between[1] != here)) continue;
            const SpaceIndex next = gap.between[0] == here ? gap.between[1] : gap.between[0];
            if (std::find(path.spaces.begin(), path.spaces.end(), next) != path.spaces.end()) continue;
            path.spaces.push_back(next);
            path.gaps.push_back({g});
            if (is_end(next)) found.push_back(path);
            if (!is_barrier(survey.spaces[next.value])) walk(path);
            path.spaces.pop_back();
            path.gaps.pop_back();
        }
    }
};

double width_of(const Gap& gap) {
    if (const auto* slot = std::get_if<Slot>(&gap.shape)) return slot->width;
    if (const auto* hole = std::get_if<Hole>(&gap.shape)) return hole->diameter;
    if (const auto* ring = std::get_if<Ring>(&gap.shape)) return ring->width;
    return std::get<Mesh>(gap.shape).opening;
}

/// Everything that orders paths, as one tuple: sorted widths with infinity after them, negated.
auto key(const Survey& survey, const EntryPath& path) {
    std::vector<double> widths;
    double length = 0;
    bool located = true;
    std::vector<std::string> ids;
    for (std::size_t i = 0; i < path.gaps.size(); ++i) {
        const Gap& gap = survey.gaps[path.gaps[i].value];
        widths.push_back(width_of(gap));
        ids.push_back(gap.id);
        located = located && gap.at;
        if (located && i > 0) {
            const Point& p = *survey.gaps[path.gaps[i - 1].value].at;
            length += std::round(
                std::sqrt(std::pow(p.x - gap.at->x, 2) + std::pow(p.y - gap.at->y, 2) + std::pow(p.z - gap.at->z, 2)) * 1e9);
        }
    }
    std::sort(widths.begin(), widths.end());
    widths.resize(survey.gaps.size() + 1, HUGE_VAL);
    for (double& width : widths) width = -width;
    return std::tuple(widths, path.gaps.size(), !located, located ? length : 0, ids, survey.spaces[path.spaces.front().value].id,
                      survey.spaces[path.spaces.back().value].id);
}

}  // namespace

std::vector<EntryPath> all_paths(const Survey& survey, std::span<const SpaceIndex> to,
                                 const std::function<bool(const Gap&)>& counts) {
    Walker walker{survey, to, counts};
    for (std::uint32_t s = 0; s < survey.spaces.size(); ++s) {
        if (!is_start(survey.spaces[s])) continue;
        EntryPath path{{SpaceIndex{s}}, {}};
        walker.walk(path);
    }
    std::sort(walker.found.begin(), walker.found.end(),
              [&](const EntryPath& a, const EntryPath& b) { return key(survey, a) < key(survey, b); });
    return walker.found;
}

bool gets_through(const Gap& gap, const Pest& pest, bool with_plus_minus) {
    const double slit = pest.size.slit * 1000;
    const double hole = pest.size.hole * 1000;
    const double width = (width_of(gap) + (with_plus_minus ? gap.evidence.plus_minus : 0)) * 1000;
    constexpr double rounding = 1e-9;
    if (width <= 0) return false;
    if (const auto* slot = std::get_if<Slot>(&gap.shape))
        return slit <= width + rounding && hole <= slot->length * 1000 + rounding && slot->length > 0;
    if (const auto* ring = std::get_if<Ring>(&gap.shape)) {
        return slit <= width + rounding && hole <= 3.14159265358979323846 * (ring->around * 1000 + width) + rounding;
    }
    if (std::holds_alternative<Hole>(gap.shape)) return hole <= width + rounding;
    return std::sqrt((slit * slit + hole * hole) / 2) <= width + rounding;
}

std::string text(const Survey& survey, const EntryPath& path) {
    std::string text = survey.spaces[path.spaces.front().value].id;
    for (std::size_t i = 0; i < path.gaps.size(); ++i) {
        text += '>' + survey.gaps[path.gaps[i].value].id + '>' + survey.spaces[path.spaces[i + 1].value].id;
    }
    return text;
}

}  // namespace seamward::test
