// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include "base/run_context.h"
#include "network/network.h"
#include "paths/entry_path.h"

namespace seamward {

/// The entry paths through a network, best first, one at a time.
///
/// Lawler's partition of the paths not yet told (1972), with Yen's deviations: the paths told form a trie, and each of
/// its nodes has one search pending, for the best path that follows the trie to that node and leaves it there by a
/// gap not yet taken. A search is run only when its lower bound comes up; it is A* with the exact best ways on
/// (RemainingWays) as its potential, which goes straight to the end unless the trie stands in the way.
///
/// The order is PathKey's as far as one network needs it: with `by_length` every gap of the network must have a
/// position; without, lengths are left out of the order.
/// Each path costs O(its spaces * arcs at each) bounds and in practice a few searches; nothing is listed in advance.
class RankedPaths {
public:
    /// All arguments must outlive the object.
    RankedPaths(const Survey& survey, const Network& network, const Roles& roles, bool by_length, const RunContext& context);
    ~RankedPaths();
    RankedPaths(RankedPaths&&) noexcept;
    RankedPaths& operator=(RankedPaths&&) noexcept;

    /// The next path, or nothing when all have been told.
    [[nodiscard]] std::optional<EntryPath> next();

private:
    class Search;
    std::unique_ptr<Search> search_;
};

}  // namespace seamward
