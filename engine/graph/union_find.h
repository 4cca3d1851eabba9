// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <numeric>
#include <vector>

namespace seamward {

/// Disjoint sets of 0..n-1 by path halving; near-constant time a call.
class UnionFind {
public:
    explicit UnionFind(std::size_t n) : parent_(n) { std::iota(parent_.begin(), parent_.end(), 0U); }

    [[nodiscard]] std::uint32_t find(std::uint32_t i) {
        while (parent_[i] != i) {
            parent_[i] = parent_[parent_[i]];
            i = parent_[i];
        }
        return i;
    }
    /// Makes every element point at its root.
    void flatten() {
        for (std::uint32_t i = 0; i < parent_.size(); ++i) parent_[i] = find(i);
    }
    /// Whether two elements are in one set; only between flatten() and the next join().
    [[nodiscard]] bool same_in_flat(std::uint32_t i, std::uint32_t j) const { return parent_[i] == parent_[j]; }
    /// Puts the set of `child` under that of `root`; both must be roots.
    void join(std::uint32_t root, std::uint32_t child) { parent_[child] = root; }

private:
    std::vector<std::uint32_t> parent_;
};

}  // namespace seamward
