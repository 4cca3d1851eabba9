// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "base/survey.h"

namespace seamward {

/// Ways out of a space, each a point and the length of the rest of the way behind it: finds the shortest from a point.
/// A k-d tree whose nodes know their box and their least rest, so that thousands of equal gaps need not be tried one by
/// one. Lengths are whole nanometers, as nanometers_between() gives them.
class NearestExit {
public:
    struct Exit {
        Point at;
        std::int64_t rest = 0;
    };

    /// O(n log^2 n)
    explicit NearestExit(std::vector<Exit> exits);

    /// The least of distance + rest over all exits; there must be one. O(log n) for exits spread out.
    [[nodiscard]] std::int64_t shortest(const Point& from) const;
    /// The lowest number of an exit whose distance + rest is `length`, in the order that the exits were given in.
    [[nodiscard]] std::uint32_t first_of_length(const Point& from, std::int64_t length) const;

private:
    struct Node {
        Point low, high;
        std::int64_t least_rest = 0;
        std::uint32_t begin = 0, end = 0;   ///< of order_
        std::uint32_t left = 0, right = 0;  ///< 0: a leaf
    };

    std::uint32_t build(std::uint32_t begin, std::uint32_t end);
    /// No exit below a node is nearer than this.
    [[nodiscard]] std::int64_t bound(const Node& node, const Point& from) const;

    std::vector<Exit> exits_;
    std::vector<std::uint32_t> order_;
    std::vector<Node> nodes_;
};

}  // namespace seamward
