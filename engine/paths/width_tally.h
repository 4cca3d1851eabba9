// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <compare>
#include <cstdint>
#include <vector>

namespace seamward {

/// How often each clear width occurs along a path, for paths of any length, compared in O(log widths).
///
/// Widths are numbered by rank, 0 for the smallest. A tally is a persistent segment tree over the ranks whose
/// nodes carry a sum of one random 64-bit key per gap; equal sums are taken as equal tallies (two different tallies
/// meet with probability 2^-64). Adding a width shares all but O(log widths) nodes with the tally it is added to.
class WidthTallies {
public:
    using Tally = std::uint32_t;
    using Rank = std::uint32_t;
    static constexpr Tally empty = 0;
    static constexpr Rank no_rank = static_cast<Rank>(-1);

    /// Tallies put together without being merged, and one width more.
    struct Sum {
        std::array<Tally, 2> parts{empty, empty};
        Rank extra = no_rank;
    };

    /// For widths of that many different ranks.
    explicit WidthTallies(Rank rank_count);

    [[nodiscard]] Tally plus(Tally tally, Rank rank);

    /// Less is better: at the smallest width in which they differ, the better has fewer. So a path whose sorted
    /// widths are larger at the first difference comes first, and one that has run out ties or is better.
    [[nodiscard]] std::strong_ordering compare(const Sum& x, const Sum& y) const {
        const Rank x_lowest = lowest(x);
        const Rank y_lowest = lowest(y);
        return x_lowest == y_lowest ? compare_further(x, y) : y_lowest <=> x_lowest;
    }
    [[nodiscard]] bool equal(const Sum& x, const Sum& y) const { return key(x) == key(y); }

private:
    /// A leaf holds its count in `left`.
    struct Node {
        std::uint64_t key = 0;
        std::uint32_t left = 0, right = 0;
        Rank lowest = no_rank;
    };

    /// splitmix64 (Steele, Lea, Flood 2014), as a hash of the rank.
    [[nodiscard]] static std::uint64_t rank_key(Rank rank) {
        std::uint64_t z = (std::uint64_t{rank} + 1) * 0x9e3779b97f4a7c15ULL;
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
        return z ^ (z >> 31U);
    }
    [[nodiscard]] std::uint64_t key(const Sum& sum) const {
        return nodes_[sum.parts[0]].key + nodes_[sum.parts[1]].key + (sum.extra == no_rank ? 0 : rank_key(sum.extra));
    }
    [[nodiscard]] Rank lowest(const Sum& sum) const {
        return std::min(std::min(nodes_[sum.parts[0]].lowest, nodes_[sum.parts[1]].lowest), sum.extra);
    }
    [[nodiscard]] std::strong_ordering compare_further(const Sum& x, const Sum& y) const;

    Rank span_ = 1;  ///< ranks under the root, a power of two
    std::vector<Node> nodes_;
};

}  // namespace seamward
