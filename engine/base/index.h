// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>
#include <limits>

namespace seamward {

/// A position in one particular array. Two kinds of index do not mix: an index of a space cannot be used
/// for a gap, because the program does not compile.
template <class Tag>
struct Index {
    std::uint32_t value = std::numeric_limits<std::uint32_t>::max();

    [[nodiscard]] constexpr bool valid() const { return value != std::numeric_limits<std::uint32_t>::max(); }
    friend constexpr auto operator<=>(Index, Index) = default;
};

using SpaceIndex = Index<struct SpaceTag>;
using GapIndex = Index<struct GapTag>;

}  // namespace seamward
