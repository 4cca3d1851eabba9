// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "base/document.h"

namespace seamward {

/// Finds things of one sort by their ids. The texts of the ids must outlive it.
class IdIndex {
public:
    explicit IdIndex(std::size_t expected) { positions_.reserve(expected); }

    /// Gives the id the next position, 0 for the first; false when it is there already (its position is used up then).
    bool add(std::string_view id) { return positions_.emplace(id, next_position_++).second; }
    [[nodiscard]] std::optional<std::uint32_t> find(std::string_view id) const;
    /// The position of the id in `node`; else reports it as an unknown `called` with the nearest known one.
    [[nodiscard]] std::optional<std::uint32_t> resolve(Node node, std::string_view called, Diagnostics& diagnostics) const;

private:
    /// Distances between words worked out for suggestions in all; a file full of wrong ids gets its first ones only.
    static constexpr std::size_t most_comparisons = 2'000'000;

    std::unordered_map<std::string_view, std::uint32_t> positions_;
    std::uint32_t next_position_ = 0;
    mutable std::vector<std::string_view> known_;  ///< in order of position, made at the first suggestion
    mutable std::size_t comparisons_ = 0;
};

}  // namespace seamward
