// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/width_tally.h"

#include <algorithm>
#include <bit>

namespace seamward {

WidthTallies::WidthTallies(Rank rank_count) : span_(std::bit_ceil(std::max<Rank>(1, rank_count))), nodes_(1) {}

WidthTallies::Tally WidthTallies::plus(Tally tally, Rank rank) {
    const std::uint64_t added = rank_key(rank);
    const auto copy = [&](Tally node) {
        nodes_.push_back(nodes_[node]);
        nodes_.back().key += added;
        nodes_.back().lowest = std::min(nodes_.back().lowest, rank);
        return static_cast<Tally>(nodes_.size() - 1);
    };
    const Tally root = copy(tally);
    Tally here = root;
    Rank begin = 0;
    for (Rank span = span_; span > 1; span /= 2) {
        const bool right = rank >= begin + span / 2;
        if (right) begin += span / 2;
        const Tally child = copy(right ? nodes_[here].right : nodes_[here].left);
        (right ? nodes_[here].right : nodes_[here].left) = child;
        here = child;
    }
    ++nodes_[here].left;
    return root;
}

std::strong_ordering WidthTallies::compare_further(const Sum& x, const Sum& y) const {
    if (equal(x, y)) return std::strong_ordering::equal;
    std::array<Tally, 2> at_x = x.parts;
    std::array<Tally, 2> at_y = y.parts;
    const auto child = [&](Tally node, bool right) { return right ? nodes_[node].right : nodes_[node].left; };
    Rank begin = 0;
    for (Rank span = span_; span > 1; span /= 2) {
        const Rank middle = begin + span / 2;
        const auto left_key = [&](const std::array<Tally, 2>& at, Rank extra) {
            const bool has_extra = extra >= begin && extra < middle;
            return nodes_[child(at[0], false)].key + nodes_[child(at[1], false)].key + (has_extra ? rank_key(extra) : 0);
        };
        const bool right = left_key(at_x, x.extra) == left_key(at_y, y.extra);
        for (std::array<Tally, 2>* at : {&at_x, &at_y}) *at = {child((*at)[0], right), child((*at)[1], right)};
        if (right) begin = middle;
    }
    const auto count = [&](const std::array<Tally, 2>& at, Rank extra) {
        return nodes_[at[0]].left + nodes_[at[1]].left + (extra == begin ? 1U : 0U);
    };
    return count(at_x, x.extra) <=> count(at_y, y.extra);
}

}  // namespace seamward
