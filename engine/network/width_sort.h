// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>
#include <utility>
#include <vector>

namespace seamward {

/// Sorts edges by `width`, wide to narrow; widths must not be negative or NaN. A radix sort on the 22 leading bits in
/// which the widths differ (non-negative doubles are in the order of their bit patterns), then a comparison sort of
/// what shares all of them. O(n) for widths spread over their range, O(n log n) at worst.
template <class Edge>
void sort_wide_to_narrow(std::vector<Edge>& edges) {
    constexpr std::size_t few = 256;
    constexpr int digit_bits = 11;
    const auto wider = [](const Edge& x, const Edge& y) { return x.width > y.width; };
    if (edges.size() <= few) {
        std::sort(edges.begin(), edges.end(), wider);
        return;
    }
    const auto [narrowest, widest] =
        std::minmax_element(edges.begin(), edges.end(), [](const Edge& x, const Edge& y) { return x.width < y.width; });
    const auto top = std::bit_cast<std::uint64_t>(widest->width);
    const std::uint64_t range = top - std::bit_cast<std::uint64_t>(narrowest->width);
    const int shift = std::max(0, static_cast<int>(std::bit_width(range)) - 2 * digit_bits);
    // Rising distance from the widest is falling width.
    const auto key = [&](const Edge& edge) {
        return static_cast<std::uint32_t>((top - std::bit_cast<std::uint64_t>(edge.width)) >> shift);
    };

    constexpr std::uint32_t digits = 1U << digit_bits;
    std::array<std::array<std::uint32_t, digits>, 2> begin{};
    for (const Edge& edge : edges) {
        ++begin[0][key(edge) % digits];
        ++begin[1][key(edge) / digits];
    }
    for (auto& counts : begin) {
        std::uint32_t sum = 0;
        for (std::uint32_t& count : counts) sum += std::exchange(count, sum);
    }
    std::vector<Edge> other(edges.size());
    for (const Edge& edge : edges) other[begin[0][key(edge) % digits]++] = edge;
    for (const Edge& edge : other) edges[begin[1][key(edge) / digits]++] = edge;

    if (shift == 0) return;
    for (std::size_t from = 0; from < edges.size();) {
        std::size_t to = from + 1;
        while (to < edges.size() && key(edges[to]) == key(edges[from])) ++to;
        if (to - from > 1)
            std::sort(edges.begin() + static_cast<std::ptrdiff_t>(from), edges.begin() + static_cast<std::ptrdiff_t>(to), wider);
        from = to;
    }
}

}  // namespace seamward
