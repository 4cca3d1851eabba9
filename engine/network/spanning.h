// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <functional>
#include <span>
#include <vector>

#include "network/network.h"
#include "graph/union_find.h"
#include "network/width_sort.h"

namespace seamward {

/// A width above which about `share` of the links of a network lie, from 257 of them.
[[nodiscard]] double width_above_which(const Network& network, double share);

/// Kruskal's algorithm for maximum spanning forests, with edges filtered before they are sorted (Osipov, Sanders,
/// Singler: The Filter-Kruskal Minimum Spanning Tree Algorithm, ALENEX 2009), and fair to ties.
///
/// `for_each_edge(wanted, sink)` calls `sink(Edge)` for every edge made from the links of `network` whose width is
/// `wanted(width)`; it is called twice, so that the many edges that wider ones make needless are never stored. `Edge` has `a`,
/// `b` (node numbers) and `width`. Calls `visit(class)` for classes of edges of equal width, wide to narrow. A class holds the
/// edges whose ends wider edges do not join: together the classes are the union of all maximum spanning forests. The visitor
/// joins the sets of `sets`. Linear in the links, near linear in what is left of them; O(m log m) at worst.
template <class Edge, class ForEachEdge, class Visit>
void visit_spanning_classes(const Network& network, UnionFind& sets, ForEachEdge&& for_each_edge, Visit&& visit) {
    // Twice as many wide edges as there are nodes join most of what can be joined.
    const double share = 2.0 * static_cast<double>(network.space_count()) / static_cast<double>(network.links().size() + 1);
    const double pivot = width_above_which(network, share);
    std::vector<Edge> edges;
    const auto visit_all = [&] {
        sort_wide_to_narrow(edges);
        for (std::size_t begin = 0; begin < edges.size();) {
            std::size_t open = begin;  // those still open are moved to the front of their class
            std::size_t end = begin;
            for (const double width = edges[begin].width; end < edges.size() && edges[end].width == width; ++end) {
                if (sets.find(edges[end].a) != sets.find(edges[end].b)) std::swap(edges[open++], edges[end]);
            }
            if (open > begin) visit(std::span<const Edge>(edges).subspan(begin, open - begin));
            begin = end;
        }
    };
    for_each_edge([&](double width) { return width > pivot; }, [&](const Edge& edge) { edges.push_back(edge); });
    visit_all();
    edges.clear();
    sets.flatten();
    for_each_edge([&](double width) { return width <= pivot; },
                  [&](const Edge& edge) {
                      if (!sets.same_in_flat(edge.a, edge.b)) edges.push_back(edge);
                  });
    visit_all();
}

}  // namespace seamward
