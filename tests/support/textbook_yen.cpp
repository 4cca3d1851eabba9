// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/textbook_yen.h"

#include <algorithm>
#include <map>
#include <optional>
#include <queue>
#include <set>

namespace seamward::test {

namespace {

/// Widths of a way, rising. Less means worse at the first difference; a list that has run out is the better one.
using Widths = std::vector<double>;

bool better(const Widths& x, const Widths& y) {
    const auto [a, b] = std::mismatch(x.begin(), x.end(), y.begin(), y.end());
    if (a != x.end() && b != y.end()) return *a > *b;
    return x.size() < y.size();
}

Widths with(Widths widths, double width) {
    widths.insert(std::upper_bound(widths.begin(), widths.end(), width), width);
    return widths;
}

struct Way {
    Widths widths;
    EntryPath path;
};

/// The best way from `from` on, avoiding spaces and first links; the beginning is in `begun`.
std::optional<Way> best_way(const Network& network, const Roles& roles, const Way& begun,
                            const std::set<std::uint32_t>& banned_links) {
    struct Worse {
        bool operator()(const Way& x, const Way& y) const { return better(y.widths, x.widths); }
    };
    std::priority_queue<Way, std::vector<Way>, Worse> waiting;
    std::vector<bool> done(network.space_count(), false);
    for (const SpaceIndex space : begun.path.spaces) done[space.value] = true;
    const auto spread = [&](const Way& way, bool first) {
        for (const Arc& arc : network.arcs(way.path.spaces.back())) {
            if (done[arc.to.value] || (first && banned_links.contains(arc.link))) continue;
            if (!roles.passable(arc.to) && !roles.ends(arc.to)) continue;
            Way next = way;
            next.widths = with(std::move(next.widths), network.links()[arc.link].width);
            next.path.spaces.push_back(arc.to);
            next.path.gaps.push_back(network.links()[arc.link].gap);
            waiting.push(std::move(next));
        }
    };
    spread(begun, true);
    while (!waiting.empty()) {
        const Way best = waiting.top();
        waiting.pop();
        const SpaceIndex here = best.path.spaces.back();
        if (roles.ends(here)) return best;
        if (done[here.value]) continue;
        done[here.value] = true;
        spread(best, false);
    }
    return std::nullopt;
}

}  // namespace

std::vector<EntryPath> textbook_yen(const Survey& survey, const Network& network, const Roles& roles, std::size_t k) {
    std::vector<std::uint32_t> link_of(survey.gaps.size());
    for (std::uint32_t i = 0; i < network.links().size(); ++i) link_of[network.links()[i].gap.value] = i;
    std::vector<Way> candidates;
    const auto offer = [&](std::optional<Way> way) {
        if (!way) return;
        const bool known =
            std::any_of(candidates.begin(), candidates.end(), [&](const Way& other) { return other.path == way->path; });
        if (!known) candidates.push_back(std::move(*way));
    };
    for (const SpaceIndex start : roles.start_spaces()) offer(best_way(network, roles, {{}, {{start}, {}}}, {}));
    std::vector<EntryPath> told;
    while (told.size() < k && !candidates.empty()) {
        const auto best = std::min_element(candidates.begin(), candidates.end(),
                                           [](const Way& x, const Way& y) { return better(x.widths, y.widths); });
        const EntryPath path = best->path;
        candidates.erase(best);
        told.push_back(path);
        Way begun{{}, {{path.spaces.front()}, {}}};
        for (std::size_t i = 0; i < path.gaps.size(); ++i) {
            std::set<std::uint32_t> banned;
            for (const EntryPath& other : told) {
                if (other.gaps.size() > i && std::equal(begun.path.gaps.begin(), begun.path.gaps.end(), other.gaps.begin()) &&
                    other.spaces.front() == path.spaces.front()) {
                    banned.insert(link_of[other.gaps[i].value]);
                }
            }
            offer(best_way(network, roles, begun, banned));
            begun.widths = with(std::move(begun.widths), clear_width(survey[path.gaps[i]].shape));
            begun.path.spaces.push_back(path.spaces[i + 1]);
            begun.path.gaps.push_back(path.gaps[i]);
        }
    }
    return told;
}

}  // namespace seamward::test
