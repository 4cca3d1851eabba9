// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "paths/entry_path.h"

namespace seamward {

/// The last two rules of the order: the list of gap ids, compared as bytes, then the ids of the two end spaces. Negative
/// when x comes first. For paths of equal widths, which have equally many gaps.
[[nodiscard]] int compare_ids(const Survey& survey, const EntryPath& x, const EntryPath& y);

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
