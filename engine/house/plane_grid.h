// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <unordered_map>
#include <vector>

#include "base/plane.h"

namespace seamward {

/// Boxes in a plane, sorted into squares, to find those near a place. Numbers come back in rising order.
class PlaneGrid {
public:
    explicit PlaneGrid(double square) : square_(square) {}

    void add(std::size_t number, Point2 least, Point2 most) {
        const double across = (most.x - least.x) / square_ + 1, up = (most.y - least.y) / square_ + 1;
        if (!(across * up < most_squares)) {
            everywhere_.push_back(number);
            return;
        }
        for (std::int64_t x = index(least.x); x <= index(most.x); ++x) {
            for (std::int64_t y = index(least.y); y <= index(most.y); ++y) squares_[key(x, y)].push_back(number);
        }
    }

    /// All that may meet a box, and perhaps some more.
    [[nodiscard]] std::vector<std::size_t> near(Point2 least, Point2 most) const {
        std::vector<std::size_t> found = everywhere_;
        const double across = (most.x - least.x) / square_ + 1, up = (most.y - least.y) / square_ + 1;
        const auto take = [&](const std::vector<std::size_t>& numbers) {
            found.insert(found.end(), numbers.begin(), numbers.end());
        };
        if (across * up < static_cast<double>(squares_.size())) {
            for (std::int64_t x = index(least.x); x <= index(most.x); ++x) {
                for (std::int64_t y = index(least.y); y <= index(most.y); ++y) {
                    if (const auto here = squares_.find(key(x, y)); here != squares_.end()) take(here->second);
                }
            }
        } else {
            for (const auto& [square, numbers] : squares_) take(numbers);
        }
        std::sort(found.begin(), found.end());
        found.erase(std::unique(found.begin(), found.end()), found.end());
        return found;
    }

private:
    static constexpr double most_squares = 4096;  ///< what covers more is near to everything

    [[nodiscard]] std::int64_t index(double at) const { return static_cast<std::int64_t>(std::floor(at / square_)); }
    static std::int64_t key(std::int64_t x, std::int64_t y) { return x * 0x1'0000'0000 + y; }

    double square_;
    std::unordered_map<std::int64_t, std::vector<std::size_t>> squares_;
    std::vector<std::size_t> everywhere_;
};

}  // namespace seamward
