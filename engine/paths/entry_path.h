// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
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

/// What paths are ordered by: larger pinch first; then the next smallest clear width, and so on (a list that has run
/// out is a tie); then fewer gaps; then shorter, the line through the gaps' points, where all of them are known, and
/// before paths where one is not; then the list of gap ids; then the ids of the two end spaces.
class PathKey {
public:
    PathKey(const Survey& survey, const EntryPath& path);

    /// Whether `this` comes before `other`, both of the same survey.
    [[nodiscard]] bool before(const PathKey& other) const;
    [[nodiscard]] std::optional<std::int64_t> length() const { return length_; }

private:
    const Survey* survey_;
    EntryPath path_;
    std::vector<double> widths_;          ///< rising
    std::optional<std::int64_t> length_;  ///< nanometers
};

}  // namespace seamward
