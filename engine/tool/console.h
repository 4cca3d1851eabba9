// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <ostream>
#include <string>
#include <string_view>
#include <vector>

namespace seamward {

/// Where a command writes: answers to `out`, everything else to `err`.
struct Console {
    std::ostream& out;
    std::ostream& err;
    std::size_t columns = 100;  ///< letters in a line of `out`
    bool styled = false;        ///< `out` is a terminal that understands bold and color

    /// The console of this process; its width from the terminal, else 100; no styles when NO_COLOR is set.
    [[nodiscard]] static Console of_process();

    /// The text in bold where styles are understood.
    [[nodiscard]] std::string bold(std::string_view text) const;
};

/// Letters of UTF-8 text, counted as characters.
[[nodiscard]] std::size_t letters(std::string_view text);

/// The text filled up with spaces to that many letters.
[[nodiscard]] std::string padded(std::string_view text, std::size_t width);

/// A paragraph that hangs from `lead`.
void print_paragraph(const std::string& lead, const std::string& text, const Console& console);

/// Lines of at most `width` letters broken at spaces; a longer word has a line of its own.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t width);

}  // namespace seamward
