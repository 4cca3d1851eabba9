// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace seamward {

/// Takes out runs along walls that are shorter than what goes on them; at a short jog of the outline nothing is left of a run, or
/// less than nothing.
template <class Run>
void drop_short(std::vector<Run>& runs, double least) {
    std::erase_if(runs, [&](const Run& run) { return run.length() < least; });
}

/// How many of so many pieces go to each run, by its length among those left.
template <class Run>
[[nodiscard]] std::vector<std::uint32_t> shares_of(std::uint32_t pieces, const std::vector<Run>& runs) {
    double left = 0;
    for (const Run& run : runs) left += std::max(0.0, run.length());
    std::vector<std::uint32_t> shares;
    for (const Run& run : runs) {
        const double length = std::max(0.0, run.length());
        const double part = left > 0 ? std::round(pieces * std::min(1.0, length / left)) : 0;
        shares.push_back(std::min(pieces, static_cast<std::uint32_t>(part)));
        pieces -= shares.back();
        left -= length;
    }
    return shares;
}

}  // namespace seamward
