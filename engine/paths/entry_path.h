// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "base/survey.h"

namespace seamward {

/// Gaps and spaces in turn, from a space that starts paths to one that ends them: `spaces` has one more entry
/// than `gaps`.
struct EntryPath {
    std::vector<SpaceIndex> spaces;
    std::vector<GapIndex> gaps;

    [[nodiscard]] SpaceIndex from() const { return spaces.front(); }
    [[nodiscard]] SpaceIndex to() const { return spaces.back(); }
    friend bool operator==(const EntryPath&, const EntryPath&) = default;
};

/// The gap with the smallest clear width, the first such from the start.
[[nodiscard]] GapIndex pinch_gap(const Survey& survey, const EntryPath& path);

/// Distance from one gap's point to another's in whole nanometers, so that sums of it do not depend on their order.
[[nodiscard]] std::int64_t nanometers_between(const Point& a, const Point& b);

}  // namespace seamward
