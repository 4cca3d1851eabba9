// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/pinches.h"

#include <limits>

#include "network/spanning.h"

namespace seamward {

namespace {

struct Edge {
    std::uint32_t a, b;
    double width;
};

}  // namespace

std::vector<double> pinches(const Network& network, const Roles& roles) {
    // All starts are one node: a path uses one of them, and none stands in its middle.
    const auto outside = static_cast<std::uint32_t>(network.space_count());
    std::vector<double> pinch(network.space_count() + 1, no_way);
    std::vector<std::uint32_t> node(network.space_count());
    constexpr std::uint32_t nowhere = std::numeric_limits<std::uint32_t>::max();
    for (std::uint32_t i = 0; i < outside; ++i) node[i] = roles.starts({i}) ? outside : roles.passable({i}) ? i : nowhere;

    const auto for_each_edge = [&](auto&& wanted, auto&& sink) {
        for (const Link& link : network.links()) {
            if (!wanted(link.width)) continue;
            const std::uint32_t a = node[link.a.value];
            const std::uint32_t b = node[link.b.value];
            if (a != nowhere && b != nowhere && a != b) sink(Edge{a, b, link.width});
        }
    };
    // Sets are rings of `next`, so that all of a set can be told its pinch when it first joins the outside.
    UnionFind sets(outside + 1);
    std::vector<std::uint32_t> next(outside + 1);
    std::vector<std::uint32_t> size(outside + 1, 1);
    for (std::uint32_t i = 0; i <= outside; ++i) next[i] = i;
    visit_spanning_classes<Edge>(network, sets, for_each_edge, [&](std::span<const Edge> alike) {
        for (const Edge& edge : alike) {
            std::uint32_t a = sets.find(edge.a);
            std::uint32_t b = sets.find(edge.b);
            if (a == b) continue;
            const std::uint32_t out = sets.find(outside);
            if (a == out || b == out) {
                const std::uint32_t joining = a == out ? b : a;
                std::uint32_t member = joining;
                do {
                    pinch[member] = edge.width;
                    member = next[member];
                } while (member != joining);
            }
            if (size[a] < size[b]) std::swap(a, b);
            sets.join(a, b);
            size[a] += size[b];
            std::swap(next[a], next[b]);
        }
    });
    pinch.pop_back();
    // Living spaces stand at ends only.
    for (std::uint32_t i = 0; i < outside; ++i) {
        if (node[i] != nowhere) continue;
        for (const Arc& arc : network.arcs({i})) {
            const double width = network.links()[arc.link].width;
            if (roles.starts(arc.to))
                pinch[i] = std::max(pinch[i], width);
            else if (roles.passable(arc.to))
                pinch[i] = std::max(pinch[i], std::min(width, pinch[arc.to.value]));
        }
    }
    for (const SpaceIndex start : roles.start_spaces()) pinch[start.value] = std::numeric_limits<double>::infinity();
    return pinch;
}

}  // namespace seamward
