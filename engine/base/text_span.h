// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>

namespace seamward {

/// Where a node stands in the text of its file, in bytes. Nothing stands where a value was left out: such a node begins and ends
/// after the colon or the dash. A block of lines ends with its last value.
struct Span {
    std::size_t begin = 0;
    std::size_t end = 0;
    bool in_brackets = false;  ///< of lists and mappings: written in brackets, not line by line
    bool anchored = false;     ///< an anchor or a tag stands before it, inside the span
};

/// Whether a document keeps where its nodes stand; 24 bytes more for each.
enum class Spans : std::uint8_t { dropped, kept };

}  // namespace seamward
