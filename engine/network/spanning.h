// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <span>

#include "network/union_find.h"

namespace seamward {

/// Kruskal's algorithm for maximum spanning forests, with edges filtered before they are sorted (Osipov, Sanders,
/// Singler: The Filter-Kruskal Minimum Spanning Tree Algorithm, ALENEX 2009), and fair to ties.
///
/// Calls `visit(class)` for classes of edges of equal width, wide to narrow. A class holds the edges whose ends
/// wider edges do not join: together the classes are the union of all maximum spanning forests. The visitor joins
/// the sets of `sets`. `Edge` has `a`, `b` (node numbers) and `width`; `edges` is reordered.
/// Expected O(m + n log n log(m / n)) for edges in random order.
template <class Edge, class Visit>
void visit_spanning_classes(std::span<Edge> edges, UnionFind& sets, std::size_t node_count, Visit&& visit) {
    constexpr std::size_t few = 2048;
    const auto open = [&](const Edge& edge) { return sets.find(edge.a) != sets.find(edge.b); };
    const auto keep_open = [&](std::span<Edge> part) {
        return part.first(static_cast<std::size_t>(std::partition(part.begin(), part.end(), open) - part.begin()));
    };
    const auto visit_class = [&](std::span<Edge> alike) {
        const std::span<Edge> rest = keep_open(alike);
        if (!rest.empty()) visit(rest);
    };
    if (edges.size() <= few) {
        std::sort(edges.begin(), edges.end(), [](const Edge& x, const Edge& y) { return x.width > y.width; });
        for (std::size_t begin = 0; begin < edges.size();) {
            std::size_t end = begin + 1;
            while (end < edges.size() && edges[end].width == edges[begin].width) ++end;
            visit_class(edges.subspan(begin, end - begin));
            begin = end;
        }
        return;
    }
    // A pivot that leaves about twice as many wide edges as there are nodes to join, but at most half of all.
    std::array<double, 257> sample;
    for (std::size_t i = 0; i < sample.size(); ++i) sample[i] = edges[i * (edges.size() - 1) / (sample.size() - 1)].width;
    std::sort(sample.begin(), sample.end(), std::greater<>());
    const double share = std::min(0.5, 2.0 * static_cast<double>(node_count) / static_cast<double>(edges.size()));
    const double pivot = sample[static_cast<std::size_t>(share * static_cast<double>(sample.size() - 1))];
    const auto middle = std::partition(edges.begin(), edges.end(), [&](const Edge& edge) { return edge.width > pivot; });
    const auto wide = static_cast<std::size_t>(middle - edges.begin());
    const auto below = std::partition(middle, edges.end(), [&](const Edge& edge) { return edge.width == pivot; });
    const auto alike = static_cast<std::size_t>(below - middle);
    visit_spanning_classes(edges.first(wide), sets, node_count, visit);
    visit_class(edges.subspan(wide, alike));
    visit_spanning_classes(keep_open(edges.subspan(wide + alike)), sets, node_count, visit);
}

}  // namespace seamward
