// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <span>
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

    /// `widths` in any order, repeated or not.
    explicit WidthTallies(std::vector<double> widths);

    [[nodiscard]] Rank rank(double width) const;
    [[nodiscard]] Tally plus(Tally tally, Rank rank);

    /// Less is better: at the smallest width in which they differ, the better has fewer. So a path whose sorted
    /// widths are larger at the first difference comes first, and one that has run out ties or is better.
    [[nodiscard]] std::strong_ordering compare(const Sum& x, const Sum& y) const;
    [[nodiscard]] bool equal(const Sum& x, const Sum& y) const { return key(x) == key(y); }

private:
    /// A leaf holds its count in `left`.
    struct Node {
        std::uint64_t key = 0;
        std::uint32_t left = 0, right = 0;
        Rank lowest = no_rank;
    };

    [[nodiscard]] std::uint64_t key(const Sum& sum) const;
    [[nodiscard]] static std::uint64_t rank_key(Rank rank);
    [[nodiscard]] Rank lowest(const Sum& sum) const;

    std::vector<double> widths_;  ///< rising, distinct
    Rank span_ = 1;               ///< ranks under the root, a power of two
    std::vector<Node> nodes_;
};

}  // namespace seamward
